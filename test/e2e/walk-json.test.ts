import { afterEach, beforeEach, expect, test } from "vitest";
import { Machine } from "./program.ts";

let machine: Machine;
beforeEach(() => {
	machine = new Machine();
});
afterEach(() => machine.remove());

test("with --json the walk is asked on standard error, and the result alone stands on standard output", async () => {
	const file = machine.putScenario("quiet-desk");
	const walk = await machine.run(["--plain", "--json", "--answers", file], ["m", "the shortlist so far", "s"]);
	expect(walk).toMatchObject({ exitCode: 0 });
	expect(JSON.parse(walk.stdout)).toMatchObject({ schema: "boardwalk/advice@1" });
	expect(walk.stderr).toContain("Your shortlist");
	expect(walk.stderr).toContain("\n> ");
});
