import { test as base, describe, expect } from "vitest";
import { Machine, type Running } from "./program.ts";

const test = base.extend<{ machine: Machine }>({
	machine: async ({ task: _task }, use) => {
		const machine = new Machine();
		await use(machine);
		machine.remove();
	},
});

/** Types one line after the other, each once the words before it are on screen. */
async function typed(walk: Running, steps: readonly (readonly [seen: string, line: string])[]): Promise<void> {
	for (const [seen, line] of steps) {
		await walk.waitFor(seen);
		walk.type(line);
	}
}

const flat = (text: string) => text.replace(/\s+/g, " ");

describe("a walk passed back and forth, line by line", () => {
	test("twice: no answer is lost or silently changed, and each stays with who gave it", async ({ machine }) => {
		const file = machine.putScenario("quiet-desk");
		const read = () => JSON.parse(machine.read("quiet-desk.json"));
		const before = read().answers;

		const helper = machine.start("coach", file, "--plain");
		await typed(helper, [
			["Who helps here?", "Ida"],
			["All answers", "r"],
			["yours is a suggestion", "Most the board may cost"],
			["What you answer is a suggestion", "150"],
			["Why do you suggest this?", "Memory matters more."],
			['You suggest for "Most', "q"],
		]);
		const helped = await helper.ended;
		expect(helped.exitCode).toBe(0);
		expect(helped.stderr).toContain(file);
		expect(read().answers).toEqual(before);
		expect(read().suggestions).toMatchObject([{ questionId: "about/budget", by: "Ida", state: "open" }]);

		const builder = machine.start("--plain", "--answers", file);
		await typed(builder, [
			["Ida suggests one thing", "Look at what others suggest"],
			["Pick one to see what it would change", "Most the board may cost"],
			["Memory matters more.", "Take it"],
			["Taken: Most the board may cost.", "q"],
		]);
		await builder.ended;
		const taken = read();
		expect(taken.answers["about/budget"]).toEqual({
			status: "answered",
			value: { minor: 15_000, currency: "EUR" },
			by: "Ida",
		});
		expect({ ...taken.answers, "about/budget": before["about/budget"] }).toEqual(before);

		const again = machine.start("coach", file, "--plain");
		await typed(again, [
			["Helping, as Ida", "r"],
			["yours is a suggestion", "Most the board may cost"],
			["What you answer is a suggestion", "170"],
			["Why do you suggest this?", "1"],
			['You suggest for "Most', "q"],
		]);
		await again.ended;
		expect(read().answers).toEqual(taken.answers);

		const done = machine.start("--plain", "--answers", file);
		await typed(done, [
			["Ida suggests one thing", "Look at what others suggest"],
			["Pick one to see what it would change", "Most the board may cost"],
			["Take it", "Leave it as it is"],
			["Left as it is: Most the board may cost.", "q"],
		]);
		await done.ended;
		expect(read().answers).toEqual(taken.answers);
		expect(read().suggestions.map(({ state }: { state: string }) => state)).toEqual(["taken", "left"]);
	});

	test("the word sources shows numbers and sources on any screen, until it is typed again", async ({ machine }) => {
		const file = machine.putScenario("quiet-desk");
		const { stdout } = await machine.run(["--plain", "--answers", file], ["r", "sources", "Processor", "sources", "q"]);
		const screens = flat(stdout).split("> ");
		expect(screens.filter((screen) => screen.includes("Numbers and sources"))).toHaveLength(2);
		expect(flat(stdout)).toMatch(/Question: fit\/processor .*fit\/socket: /);
	});
});
