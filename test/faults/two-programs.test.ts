import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { Machine } from "../e2e/program.ts";
import { pty, skipped } from "../e2e/real-terminal.ts";
import { terminalsOfATest } from "../e2e/terminals-of-a-test.ts";

const elsewhere = "This walk is open in another window";
const pairs = 30;

describe("two programs that begin one walk at the same moment, line by line", () => {
	let machine: Machine;
	beforeEach(() => {
		machine = new Machine();
	});
	afterEach(() => machine.remove());

	test(`${pairs} times: exactly one has it, the other says so, and neither loses an answer`, {
		timeout: 240_000,
	}, async () => {
		for (let pair = 0; pair < pairs; pair++) {
			const name = `walk-of-pair-${pair}.json`;
			const file = machine.put(name, readFileSync(machine.putScenario("quiet-desk"), "utf8"));
			const before = JSON.parse(readFileSync(file, "utf8")).answers;
			const walks = [machine.start("--plain", "--answers", file), machine.start("--plain", "--answers", file)];
			await Promise.all(walks.map((walk) => walk.waitFor("\n> ")));
			const late = walks.filter(({ said }) => said.stdout.replace(/\s+/g, " ").includes(elsewhere));
			expect(late).toHaveLength(1);
			for (const walk of walks) walk.type("not sure");
			await Promise.all(walks.map((walk) => walk.waitFor("\n> ")));
			for (const walk of walks) walk.type("s");
			await Promise.all(walks.map(({ ended }) => ended));
			const after = JSON.parse(readFileSync(file, "utf8")).answers;
			expect(Object.keys(after)).toEqual(expect.arrayContaining(Object.keys(before)));
		}
		// What the late ones were told went into walks of their own.
		const kept = machine.keptWalks();
		for (const name of kept)
			expect(JSON.parse(readFileSync(join(machine.walks, name), "utf8")).answers).toBeTypeOf("object");
		expect(readdirSync(machine.desk).filter((name) => /\.lock|\.tmp/.test(name))).toEqual([]);
	});

	test("new walks: each gets a file of its own, and all answers are there", { timeout: 120_000 }, async () => {
		for (let pair = 0; pair < 5; pair++) {
			const walks = [machine.start("--plain"), machine.start("--plain")];
			await Promise.all(walks.map((walk) => walk.waitFor("\n> ")));
			for (const walk of walks) walk.type(/(\d+) {2}Start\b/.exec(walk.said.stdout)?.[1] ?? "");
			await Promise.all(walks.map((walk) => walk.waitFor("\n> ")));
			for (const walk of walks) walk.type("1");
			const said = await Promise.all(
				walks.map(async (walk) => {
					await walk.waitFor("\n> ");
					walk.type("s");
					return (await walk.ended).stdout;
				}),
			);
			expect(said.join("")).not.toContain("cannot be kept");
			expect(machine.keptWalks().filter((name) => name.endsWith(".json"))).toHaveLength(2 * (pair + 1));
		}
		expect(machine.keptWalks().filter((name) => !name.endsWith(".json"))).toEqual([]);
	});
});

describe.skipIf(!pty)("a walk that is open in one face", () => {
	const { home, start } = terminalsOfATest();
	if (!pty) console.warn(skipped);

	test("is told as taken in another window, and both keep what they are told", async () => {
		const first = start({ words: ["--answers", "walk.json"] });
		await first.waitFor("Find the right board");
		first.press("\r");
		await first.waitFor("How much time do you have");
		first.press("\r");
		await first.waitFor("Who gives the answers?");
		const second = start({ words: ["--plain", "--answers", "walk.json"] });
		// On a small screen the beginning of the sentence is scrolled away.
		await second.waitFor(/file\s+of\s+its\s+own/);
		const third = start({ words: ["--answers", "walk.json"] });
		await third.waitFor(/file\s+of\s+its\s+own/);
		first.press("\r");
		await first.waitFor("What will you do");
		expect(Object.keys(JSON.parse(readFileSync(join(home().desk, "walk.json"), "utf8")).answers)).toHaveLength(2);
	});
});
