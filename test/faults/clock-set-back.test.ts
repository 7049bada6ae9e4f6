import { readdirSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Ended, Machine } from "../e2e/program.ts";

/** The program as it is on a machine whose clock goes wrong: only Date is shifted, as the system's clock would be. */
class OddMachine extends Machine {
	shiftedDays = 0;

	override environment(): NodeJS.ProcessEnv {
		const shift = `const Real = Date; const by = ${this.shiftedDays} * 864e5;
			globalThis.Date = class extends Real {
				constructor(...given) { super(...(given.length ? given : [Real.now() + by])); }
				static now() { return Real.now() + by; }
			};`;
		return {
			...super.environment(),
			XDG_DATA_HOME: join(this.folder, "data"),
			NODE_OPTIONS: `--import=data:text/javascript,${encodeURIComponent(shift)}`,
		};
	}
}

let machine: OddMachine;
beforeEach(() => {
	machine = new OddMachine();
});
afterEach(() => machine.remove());

const flat = (text: string) => text.replace(/\s+/g, " ");
const dayIn = (days: number) => new Date(Date.now() + days * 864e5).toISOString().slice(0, 10);
const noSlips = ({ stdout, stderr }: Ended) => {
	const said = flat(stdout + stderr);
	expect(said).not.toMatch(/-\d+ days?|in -|NaN|undefined|Invalid|fault of its own|damaged/);
	return said;
};

describe("a clock that was set back, or forth", () => {
	test("hides no walk, names new ones apart from old, and tells no age below nothing", async () => {
		machine.shiftedDays = 40;
		for (const days of [40, -400, 0]) {
			machine.shiftedDays = days;
			const walk = machine.start("--plain");
			await walk.waitFor("\n> ");
			walk.type(/(\d+) {2}Start\b/.exec(walk.said.stdout)?.[1] ?? "");
			for (const line of ["1", "1", "s"]) {
				await walk.waitFor("\n> ");
				walk.type(line);
			}
			noSlips(await walk.ended);
		}
		const names = machine.keptWalks();
		expect(names).toHaveLength(3);
		expect(names.every((name) => /^walk-\d{4}-\d\d-\d\d\.json$/.test(name))).toBe(true);
		// Files from the time to come, for any program that looks at when they were written.
		const later = Date.now() / 1000 + 90 * 86400;
		for (const name of names) utimesSync(join(machine.walks, name), later, later);
		const listed = noSlips(await machine.run(["walks"]));
		for (const name of names) expect(listed).toContain(name);
		const start = noSlips(await machine.run(["--plain"], ["1", "s"]));
		expect(start).toMatch(new RegExp(`on ${dayIn(40)}|on ${dayIn(41)}|on ${dayIn(39)}`));
	});

	test("brings back the walk that was removed last, not the one of the latest day", async () => {
		machine.shiftedDays = 300;
		await machine.run(["--plain"], ["1", "1", "1", "s"]);
		const [late = ""] = machine.keptWalks();
		expect((await machine.run(["walks", "remove", join(machine.walks, late)])).exitCode).toBe(0);
		machine.shiftedDays = 0;
		await machine.run(["--plain"], ["1", "1", "1", "s"]);
		const [early = ""] = machine.keptWalks().filter((name) => name.endsWith(".json"));
		expect((await machine.run(["walks", "remove", join(machine.walks, early)])).exitCode).toBe(0);
		expect(flat((await machine.run(["walks", "undo"])).stdout)).toContain(early);
		expect(flat((await machine.run(["walks", "undo"])).stdout)).toContain(late);
		expect(machine.keptWalks()).toEqual([early, late].sort());
	});

	test("takes a lock for what it is, however old it seems", async () => {
		const file = machine.putScenario("quiet-desk");
		const first = machine.start("--plain", "--answers", file);
		await first.waitFor("\n> ");
		const ago = Date.now() / 1000 - 4000 * 86400;
		utimesSync(`${file}.lock`, ago, ago);
		expect(flat((await machine.run(["--plain", "--answers", file], ["s"])).stdout)).toContain("open in another window");
		first.type("s");
		await first.ended;
		writeFileSync(`${file}.lock`, "999999999");
		utimesSync(`${file}.lock`, Date.now() / 1000 + 1e6, Date.now() / 1000 + 1e6);
		expect(flat((await machine.run(["--plain", "--answers", file], ["s"])).stdout)).not.toContain("another window");
		expect(readdirSync(machine.desk)).toEqual(["quiet-desk.json"]);
	});

	test("tells prices, offers and facts from days to come without an age below nothing", async () => {
		const table = machine.put(
			"t.csv",
			"Name,Maker,Socket,Form factor,Price\nTidewater Lantern,Tidewater,Harbour 2,ATX,99 EUR\n",
		);
		machine.shiftedDays = 50;
		expect((await machine.run(["own", "import", table, "--kind", "board", "--yes"])).exitCode).toBe(0);
		await machine.run(["own", "offer", "tidewater-lantern", "--price", "90 EUR", "--seller", "the corner shop"]);
		const file = machine.putScenario("quiet-desk");
		await machine.run(["told", "tidewater-lantern", "memory.slots", "4", "--by", "the corner shop", "--answers", file]);
		machine.shiftedDays = 0;
		for (const words of [
			["own"],
			["own", "show", "tidewater-lantern"],
			["shortlist", "--answers", file],
			["sheet", "--answers", file],
			["ask", "--answers", file],
			["price-line", "--answers", file],
		]) {
			const ended = await machine.run(words);
			expect(ended.exitCode).toBe(0);
			noSlips(ended);
		}
	});
});
