import { test as base, describe, expect } from "vitest";
import { Machine } from "./program.ts";

const test = base.extend<{ machine: Machine }>({
	machine: async ({ task: _task }, use) => {
		const machine = new Machine();
		await use(machine);
		machine.remove();
	},
});
const board = "cobblestoat-gingerbread";

describe.concurrent("boardwalk plan", () => {
	test("draws the board and says the same in words", async ({ machine }) => {
		const answers = machine.putScenario("workbench");
		const { exitCode, stdout, stderr } = await machine.run(["plan", board, "--answers", answers]);
		expect([exitCode, stderr]).toEqual([0, ""]);
		expect(stdout).toContain("SLOT_2       Dapplegate Postcard");
		expect(stdout).toContain("memory: A2, B2 filled; A1, B1 empty");
		expect(stdout.replace(/\s+/g, " ")).toContain(
			"M2_3, SATA_1 and SATA_2 share the chipset's link to the processor, 7.88 GB/s.",
		);
		for (const line of stdout.split("\n")) expect(line.length).toBeLessThanOrEqual(78);
	});

	test("says it in words alone for whoever has it read out", async ({ machine }) => {
		const answers = machine.putScenario("workbench");
		const { stdout } = await machine.run(["plan", board, "--answers", answers, "--plain"]);
		expect(stdout).not.toMatch(/^[+|#]/m);
		expect(stdout).toContain("- Pump of Puddlewink Brook on PUMP.");
	});

	test("tells other programs the same as JSON", async ({ machine }) => {
		const answers = machine.putScenario("workbench");
		const { stdout } = await machine.run(["plan", board, "--answers", answers, "--json"]);
		const plan = JSON.parse(stdout);
		expect(plan).toMatchObject({ schema: "boardwalk/plan@1", boardId: board, unplaced: [] });
		expect(plan.placed).toContainEqual(
			expect.objectContaining({ name: "Pantryshelf Dart", connector: "M2_3", lanes: 4, isBuried: false }),
		);
		expect(plan.headers.placed).toContainEqual(expect.objectContaining({ kind: "pump", header: "PUMP" }));
		expect(plan.memory).toEqual({ modules: 2, fill: ["A2", "B2"], empty: ["A1", "B1"] });
	});

	test("says first that a board does not fit at all", async ({ machine }) => {
		const answers = machine.putScenario("tight-budget");
		const { exitCode, stdout } = await machine.run(["plan", "brindlecroft-honesty", "--answers", answers]);
		expect(exitCode).toBe(0);
		expect(stdout.split("\n").slice(1, 5).join(" ").replace(/\s+/g, " ").trim()).toBe(
			"This board does not fit: socket, processor support, memory for the processor, memory and price. The plan shows only where things would go.",
		);
		expect(stdout.replace(/\s+/g, " ")).toContain("Not in this plan: the plugs of the power supply");
	});

	test("writes a picture, and does not write over it", async ({ machine }) => {
		const answers = machine.putScenario("workbench");
		const written = await machine.run(["plan", board, "--answers", answers, "--to", "plan.svg"]);
		expect([written.exitCode, written.stdout]).toEqual([0, ""]);
		expect(machine.read("plan.svg")).toMatch(/^<svg /);
		const again = await machine.run(["plan", board, "--answers", answers, "--to", "plan.svg"]);
		expect([again.exitCode, again.stderr]).toEqual([73, expect.stringContaining("--replace")]);
	});

	test("says what was wrong and what was expected", async ({ machine }) => {
		const answers = machine.putScenario("workbench");
		const near = await machine.run(["plan", "cobblestoat-gingerbred", "--answers", answers]);
		expect([near.exitCode, near.stderr]).toEqual([64, expect.stringContaining(`Did you mean ${board}?`)]);
		const none = await machine.run(["plan", "--answers", answers]);
		expect([none.exitCode, none.stderr]).toEqual([64, expect.stringContaining("Of which board?")]);
		const ending = await machine.run(["plan", board, "--answers", answers, "--to", "plan.png"]);
		expect([ending.exitCode, ending.stderr]).toEqual([64, expect.stringContaining(".svg")]);
	});

	test("names every fault of a board's connectors with file and path", async ({ machine }) => {
		const file = machine.put("parts/boards.json", {
			schema: "boardwalk/parts@1",
			boards: [
				{
					id: "a-board",
					name: "A board",
					invented: true,
					m2Sockets: [{ name: "M2_1" }],
					sharing: [{ members: ["M2_1", "SATA_9"], modes: [{ on: { M2_1: 4 } }] }],
				},
			],
		});
		const { exitCode, stderr } = await machine.run(["check", file]);
		expect(exitCode).toBe(65);
		expect(stderr).toContain("boards.json");
		expect(stderr).toContain("SATA_9");
	});
});
