import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import quietDesk from "../../data/scenarios/quiet-desk.json" with { type: "json" };
import { commandNames } from "../../src/cli/command-table.ts";
import { Machine } from "./program.ts";
import { keys, pty, skipped } from "./real-terminal.ts";
import { terminalsOfATest } from "./terminals-of-a-test.ts";

if (!pty) console.warn(skipped);

let machine: Machine;
beforeEach(() => {
	machine = new Machine();
});
afterEach(() => machine.remove());

describe("help", () => {
	test("behind a command and in front of it is that command's page", async () => {
		for (const name of ["plan", "own", "doctor"]) {
			const behind = await machine.run([name, "--help"]);
			expect(behind).toMatchObject({ exitCode: 0, stderr: "" });
			expect(behind.stdout).toMatch(new RegExp(`^boardwalk ${name}\n`));
			expect((await machine.run(["help", name])).stdout).toBe(behind.stdout);
		}
		const whole = (await machine.run(["--help"])).stdout;
		for (const name of commandNames) expect(whole).toContain(`\n  boardwalk ${name}`);
		expect((await machine.run(["help"])).stdout).toBe(whole);
	});

	test("for a command that is not there ends with 64 and near ones", async () => {
		expect(await machine.run(["help", "docter"])).toEqual({
			exitCode: 64,
			signal: null,
			stdout: "",
			stderr: 'There is no command "docter". Did you mean doctor?\n',
		});
	});

	test("a flag that a command does not take is refused before anything is done", async () => {
		const file = machine.putScenario("quiet-desk");
		const { exitCode, stdout, stderr } = await machine.run(["shortlist", "--answers", file, "--to", "out.txt"]);
		expect([exitCode, stdout]).toEqual([64, ""]);
		expect(stderr).toBe("shortlist does not take --to. See: boardwalk shortlist --help\n");
		expect(machine.onDesk()).toEqual(["quiet-desk.json"]);
	});
});

describe("--no-input over pipes", () => {
	test("prints the shortlist of --answers, also where --plain would ask", async () => {
		const file = machine.putScenario("quiet-desk");
		const shortlist = await machine.run(["shortlist", "--answers", file]);
		for (const words of [["--no-input"], ["--no-input", "--plain"]])
			expect(await machine.run([...words, "--answers", file], ["1", "2"])).toEqual(shortlist);
		expect(machine.keptWalks()).toEqual([]);
	});

	test("names the flag that is missing, and ends with 64", async () => {
		const { exitCode, stdout, stderr } = await machine.run(["--no-input"], ["1"]);
		expect([exitCode, stdout]).toEqual([64, ""]);
		expect(stderr).toBe("Without asking, this needs --answers FILE: the file that a walk wrote.\n");
	});

	test("a page still comes in on standard input", async () => {
		const { exitCode, stdout } = await machine.run(
			["read", "board", "--no-input"],
			["Wobblestone Orchard", "Socket: Orchard 5", "Form factor: ATX", "Memory: 4 x DDR5"],
		);
		expect(exitCode).toBe(0);
		expect(stdout).toContain("Wobblestone Orchard");
	});
});

const { home, start } = terminalsOfATest();

describe.skipIf(!pty)("in a real terminal", () => {
	test("doctor tells the terminal's size, and that the walk would be drawn; it makes nothing", async () => {
		const terminal = start({ words: ["doctor"], columns: 100, rows: 50 });
		expect(await terminal.ended()).toBe(0);
		const text = terminal.text();
		expect(text).toContain("Standard output: a terminal, 100 columns and 50 rows");
		expect(text).toContain("The walk: drawn, one screen at a time");
		expect(text).toContain("Colour: yes");
		expect(text).toContain("Characters: Unicode (LANG is C.UTF-8)");
		expect(readdirSync(home().folder)).toEqual(["desk"]);
	});

	test.each<[Record<string, string>, string[], RegExp]>([
		[{ TERM: "dumb" }, [], /The walk: line by line \(TERM is dumb\)[\s\S]*Colour: no \(TERM is dumb\)/],
		[
			{ NO_COLOR: "1" },
			["--plain"],
			/The walk: line by line \(the flag --plain\)[\s\S]*Colour: no \(NO_COLOR is set\)/,
		],
		[{ LANG: "C", FORCE_COLOR: "1" }, [], /Colour: yes \(FORCE_COLOR is 1\)\s+Characters: ASCII only \(LANG is C\)/],
	])("doctor with %j %j", async (environment, words, wanted) => {
		const terminal = start({ words: ["doctor", ...words], columns: 100, rows: 50, environment });
		await terminal.ended();
		expect(terminal.text()).toMatch(wanted);
	});

	test("what doctor says of the walk is what the walk does", async () => {
		const [said, walk] = [start({ words: ["doctor"], columns: 39 }), start({ columns: 39 })];
		await said.ended();
		expect(said.history().replace(/\s+/g, " ")).toContain("line by line (the terminal has 39 columns and 24 rows");
		await walk.waitFor(/^> /m);
		expect(walk.isAlternate()).toBe(false);
		walk.press("q\r");
		await walk.ended();
	});

	test("--no-input asks nothing: neither the walk, nor read, nor coach", async () => {
		const file = join(home().desk, "mine.json");
		writeFileSync(file, JSON.stringify(quietDesk));
		const bare = start({ words: ["--no-input"] });
		expect(await bare.ended()).toBe(64);
		expect(bare.text()).toContain("--answers FILE");
		const read = start({ words: ["read", "board", "--no-input"] });
		expect(await read.ended()).toBe(64);
		expect(read.text()).toContain("read needs a FILE behind it");
		const walk = start({ words: ["--no-input", "--answers", file], rows: 200 });
		expect(await walk.ended()).toBe(0);
		expect(walk.text()).toContain("Your shortlist");
		const coach = start({ words: ["coach", file, "--no-input"], rows: 200 });
		expect(await coach.ended()).toBe(0);
		expect(coach.isAlternate()).toBe(false);
		expect(readFileSync(file, "utf8")).toBe(JSON.stringify(quietDesk));
	});

	test("--record writes every step of the drawn walk, and replay comes to the same answers", async () => {
		const record = join(home().desk, "steps.jsonl");
		const terminal = start({ words: ["--record", record] });
		await terminal.waitFor("Start");
		terminal.press(keys.enter);
		await terminal.waitFor("How much time do you have");
		terminal.press(keys.enter);
		await terminal.waitFor("Who gives the answers?");
		terminal.press(keys.enter);
		await terminal.waitFor("What will you do");
		terminal.press(keys.interrupt);
		await terminal.ended();
		expect(terminal.history()).toContain("Every step is recorded in");
		expect(statSync(record).mode & 0o777).toBe(0o600);
		const again = await machine.run(["replay", record, "--json"]);
		expect(again.exitCode).toBe(0);
		expect(JSON.parse(again.stdout).answers).toEqual(home().keptWalks()[0]?.answers);
		expect((await machine.run(["replay", record])).stdout).toContain("(The walk was left before a shortlist.)");
		const refused = start({ words: ["--record", record] });
		expect(await refused.ended()).toBe(73);
		expect(refused.isAlternate()).toBe(false);
		expect(existsSync(record)).toBe(true);
	});
});
