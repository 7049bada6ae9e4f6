import { test as base, describe, expect } from "vitest";
import { Machine } from "./program.ts";

const test = base.extend<{ machine: Machine }>({
	machine: async ({ task: _task }, use) => {
		const machine = new Machine();
		await use(machine);
		machine.remove();
	},
});

describe("boardwalk price-line", () => {
	test("tells what more money buys, and ends well", async ({ machine }) => {
		const answers = machine.putScenario("quiet-desk");
		const { exitCode, stdout, stderr } = await machine.run(["price-line", "--answers", answers, "--ascii"]);
		expect([exitCode, stderr]).toEqual([0, ""]);
		expect(stdout).toMatch(/^ +\+-{55}$/m);
		expect(stdout.replace(/\s+/g, " ")).toMatch(
			/For EUR [\d.]+ more: from .+ - It buys \d+ points\. Each further point costs about EUR/,
		);
	});

	test("also where no board is left", async ({ machine }) => {
		const answers = machine.putScenario("handed-down");
		const { exitCode, stdout } = await machine.run(["price-line", "--answers", answers]);
		expect(exitCode).toBe(0);
		expect(stdout).toContain("No boards are left");
	});

	test("refuses a width that is none", async ({ machine }) => {
		const answers = machine.putScenario("quiet-desk");
		const { exitCode, stderr } = await machine.run(["price-line", "--answers", answers, "--width", "wide"]);
		expect(exitCode).toBe(64);
		expect(stderr).toBe('--width takes 40 to 200, and not "wide".\n');
	});
});
