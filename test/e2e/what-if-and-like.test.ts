import { test as base, describe, expect } from "vitest";
import { Machine } from "./program.ts";

const test = base.extend<{ machine: Machine }>({
	machine: async ({ task: _task }, use) => {
		const machine = new Machine();
		await use(machine);
		machine.remove();
	},
});

describe.concurrent("boardwalk what-if", () => {
	test("says what one other answer would change, and changes nothing", async ({ machine }) => {
		const answers = machine.putScenario("quiet-desk");
		const before = machine.read("quiet-desk.json");
		const { exitCode, stdout, stderr } = await machine.run(["what-if", "about/budget=110", "--answers", answers]);
		expect([exitCode, stderr]).toEqual([0, ""]);
		expect(stdout).toContain("What if: Most the board may cost\n\nIn short\n");
		expect(stdout).toContain("\nWith the other answer\n");
		expect(machine.read("quiet-desk.json")).toBe(before);
		expect(machine.onDesk()).toEqual(["quiet-desk.json"]);
	});

	test("tells other programs the same as JSON", async ({ machine }) => {
		const answers = machine.putScenario("quiet-desk");
		const { exitCode, stdout } = await machine.run(["what-if", "fit/case=not-sure", "--answers", answers, "--json"]);
		expect(exitCode).toBe(0);
		expect(JSON.parse(stdout)).toMatchObject({
			schema: "boardwalk/what-if@1",
			answers: { after: { status: "not-sure", value: null } },
		});
	});

	test("says what was wrong and what was expected", async ({ machine }) => {
		const answers = machine.putScenario("quiet-desk");
		const near = await machine.run(["what-if", "about/budgt=110", "--answers", answers]);
		expect([near.exitCode, near.stdout, near.stderr]).toEqual([64, "", expect.stringContaining("about/budget")]);
		const missing = await machine.run(["what-if", "about/budget=110", "--answers", "no-such.json"]);
		expect(missing.exitCode).toBe(66);
	});

	test("in the walk: tried line by line, then taken", async ({ machine }) => {
		const answers = machine.putScenario("quiet-desk");
		const walk = machine.start("--plain", "--answers", answers);
		await walk.waitFor("more; s: save");
		walk.type("m");
		await walk.waitFor("What if one answer were another?");
		walk.type("What if one answer were another?");
		await walk.waitFor("Pick a question to try another answer.");
		walk.type("Most the board may cost");
		await walk.waitFor("Try another answer. Nothing is kept until you say so.");
		walk.type("110");
		await walk.waitFor("With the other answer");
		expect(JSON.parse(machine.read("quiet-desk.json")).answers["about/budget"].value.minor).toBe(20_000);
		walk.type("t");
		await walk.waitFor("The other answer is now yours.");
		walk.type("q");
		expect((await walk.ended).exitCode).toBe(0);
		expect(JSON.parse(machine.read("quiet-desk.json")).answers["about/budget"].value.minor).toBe(11_000);
	});
});

describe.concurrent("boardwalk like", () => {
	test("finds what is better in one way, and what it costs", async ({ machine }) => {
		const answers = machine.putScenario("quiet-desk");
		const { exitCode, stdout, stderr } = await machine.run([
			"like",
			"pennywhistle-hornpipe",
			"cheaper",
			"--answers",
			answers,
		]);
		expect([exitCode, stderr]).toEqual([0, ""]);
		expect(stdout).toMatch(
			/^Like Pennywhistle Hornpipe, but cheaper\n\nIn short\n- \d+ of the other boards left are cheaper\./,
		);
		expect(stdout.replace(/\s+/g, " ")).toMatch(/- It is EUR \d+\.\d\d cheaper/);
	});

	test("as JSON, and with its faults", async ({ machine }) => {
		const answers = machine.putScenario("quiet-desk");
		const json = await machine.run(["like", "pennywhistle-hornpipe", "cooler", "--answers", answers, "--json"]);
		expect(JSON.parse(json.stdout)).toMatchObject({ schema: "boardwalk/like@1", direction: "cooler" });
		const wrong = await machine.run(["like", "pennywhistle-hornpipe", "nicer", "--answers", answers]);
		expect([wrong.exitCode, wrong.stderr]).toEqual([
			64,
			expect.stringContaining("cheaper, cooler, smaller, more-ports"),
		]);
	});
});
