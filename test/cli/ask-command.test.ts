import { copyFileSync, existsSync, readFileSync, writeFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readArguments } from "../../src/cli/arguments.ts";
import { ask, told } from "../../src/cli/ask-command.ts";
import { CommandError } from "../../src/cli/exit-codes.ts";
import { own } from "../../src/cli/own-parts-command.ts";
import { scenarioFile } from "../e2e/program.ts";
import { commandRuns } from "./run-command.ts";

const today = "2026-11-28";
const { path, run, refusal } = commandRuns("ask", ask);

/** What another command prints, with own parts in the test's folder. */
function other(command: typeof told, ...argv: readonly string[]): string {
	let out = "";
	const streams = {
		out: (text: string) => {
			out += text;
		},
		err: () => {},
	};
	command(readArguments(argv), streams, today, path("data", "boardwalk"));
	return out;
}

function refused(...argv: readonly string[]): string {
	try {
		other(told, "told", ...argv);
	} catch (error) {
		if (error instanceof CommandError) return `${error.code}: ${error.message}`;
		throw error;
	}
	throw new Error(`${argv.join(" ")} was taken`);
}

function walkOf(name: string): string {
	const file = path("walk.json");
	copyFileSync(scenarioFile(name), file);
	return file;
}

const kept = (file: string) => JSON.parse(readFileSync(file, "utf8"));

describe("boardwalk ask", () => {
	test("gives one message a board of the shortlist", () => {
		const file = scenarioFile("workbench");
		const { out, err } = run("--answers", file);
		const json = JSON.parse(run("--answers", file, "--json").out);
		expect(json.schema).toBe("boardwalk/ask@1");
		expect(json.boards.length).toBeGreaterThan(1);
		for (const { boardName, english, german } of json.boards) {
			expect(out).toContain(`== ${boardName} (invented) ==\n\n${english}\n`);
			expect(run("--answers", file, "--language", "de").out).toContain(german);
		}
		expect(err).toContain("boardwalk told ");
		expect(err).toContain("These boards are invented: no shop sells them.");
	});

	test("one board alone is a message to be sent as it is", () => {
		const { out } = run("fernquill-riddle", "--answers", scenarioFile("showpiece"));
		expect(out).toMatch(/^Hello,\n[\s\S]*Thank you very much!\n$/);
		const to = path("message.txt");
		expect(run("fernquill-riddle", "--answers", scenarioFile("showpiece"), "--to", to).err).toContain("Written: ");
		expect(readFileSync(to, "utf8")).toBe(out);
		expect(refusal("fernquill-riddle", "--answers", scenarioFile("showpiece"), "--to", to)).toMatchObject({ code: 73 });
	});

	test("also a board beside the shortlist", () => {
		const board = "oddment-toggle";
		expect(run(board, "--answers", scenarioFile("workbench")).out).toContain("Hello,");
	});

	test("refuses what it does not know, with near words", () => {
		const file = scenarioFile("showpiece");
		expect(refusal("fernquill-ridle", "--answers", file).message).toContain("Did you mean fernquill-riddle");
		expect(refusal("--answers", file, "--language", "fr").message).toContain("en or de");
		expect(refusal("fernquill-riddle")).toMatchObject({ code: 64 });
		expect(refusal("--answers", file, "--to", path("x.svg"))).toMatchObject({ code: 64 });
	});
});

describe("boardwalk told", () => {
	test("writes the fact into the file and says what it changed; nothing else in it but the day changes", () => {
		const file = walkOf("showpiece");
		const before = kept(file);
		const out = other(
			told,
			...["told", "fernquill-riddle", "m2Sockets", "3 x PCIe 4.0 x4", "--by", "the shop", "--answers", file],
		);
		expect(out).toMatch(/^Noted for Fernquill Riddle: M\.2 sockets, 3 /);
		expect(out).toMatch(/Fernquill Riddle has \d+ points instead of \d+\./);
		const { parts, schema, ...others } = kept(file);
		const { parts: partsBefore, schema: _, ...othersBefore } = before;
		expect(schema).toMatch(/^boardwalk\/answers@/);
		// The file says how the world stood on the day of its last word.
		expect(others).toEqual({ ...othersBefore, asOf: today });
		expect(parts).toHaveLength(partsBefore.length + 1);
		expect(parts.at(-1).part).toMatchObject({ id: "fernquill-riddle", invented: true });
		expect(parts.at(-1).part.evidence.m2Sockets).toEqual({
			standing: "stated",
			quote: "3 x PCIe 4.0 x4",
			where: "told by the shop",
			date: today,
			by: "the shop",
		});
		const asked = JSON.parse(run("fernquill-riddle", "--answers", file, "--json").out).boards[0];
		expect(JSON.stringify(asked)).not.toContain("m2Sockets");
	});

	test("what is stated otherwise stays, and both are said; --replace takes what was told", () => {
		const file = walkOf("showpiece");
		const fact = ["fernquill-riddle", "board.memory.slots"] as const;
		other(told, "told", ...fact, "4", "--by", "Ada", "--answers", file);
		const before = readFileSync(file, "utf8");
		const words = refused(...fact, "2", "--by", "Ben", "--answers", file);
		expect(words).toContain(`64: Memory slots, told by Ada on ${today}: 4. Ben says: 2.`);
		expect(words).toContain("--replace");
		expect(readFileSync(file, "utf8")).toBe(before);
		other(told, "told", ...fact, "2", "--by", "Ben", "--quote", "two", "--replace", "--answers", file);
		expect(kept(file).parts.at(-1).part).toMatchObject({
			memory: { slots: 2 },
			evidence: { "memory.slots": { by: "Ben", quote: "two" } },
		});
	});

	test("unknown with --replace takes back what was told", () => {
		const file = walkOf("showpiece");
		const fact = ["told", "fernquill-riddle", "memory.slots"] as const;
		other(told, ...fact, "4", "--by", "Ada", "--answers", file);
		const out = other(told, ...fact, "unknown", "--by", "Ada", "--replace", "--answers", file);
		expect(out).toMatch(/^Taken back for Fernquill Riddle: memory slots\./);
		expect(kept(file).parts).toEqual(kept(scenarioFile("showpiece")).parts);
	});

	test("a board of the person's own has the fact for all walks", () => {
		const parts = path("boards.json");
		const schema = "boardwalk/parts@1";
		writeFileSync(parts, JSON.stringify({ schema, boards: [{ id: "my-board", name: "My Board", form: "ATX" }] }));
		other(own, "own", "import", parts, "--yes");
		const file = walkOf("showpiece");
		other(told, "told", "my-board", "memory.slots", "4", "--by", "the shop", "--answers", file);
		expect(JSON.parse(other(own, "own", "show", "my-board", "--json"))).toMatchObject({
			memory: { slots: 4 },
			evidence: { "memory.slots": { where: "told by the shop" } },
		});
		expect(kept(file).parts.some(({ part }: { part: { id: string } }) => part.id === "my-board")).toBe(true);
	});

	test.each([
		[["fernquill-riddle", "memory.slots", "plenty", "--by", "Ada"], "Type a whole number"],
		[["fernquill-riddle", "memory.slots", "don't know", "--by", "Ada"], "no answer yet"],
		[["fernquill-riddle", "memory.slotz", "4", "--by", "Ada"], "Did you mean memory.slots"],
		[["fernquill-riddle", "__proto__", "4", "--by", "Ada"], "has no fact"],
		[["fernquill-riddle", "invented", "no", "--by", "Ada"], "has no fact"],
		[["fernquill-ridle", "memory.slots", "4", "--by", "Ada"], "Did you mean fernquill-riddle"],
		[["fernquill-riddle", "memory.slots", "4"], "Add --by"],
		[["fernquill-riddle", "memory.slots"], "It is: boardwalk told"],
	])("%j is refused, and the file stays as it is", (argv, words) => {
		const file = walkOf("showpiece");
		const before = readFileSync(file, "utf8");
		expect(refused(...argv, "--answers", file)).toContain(words);
		expect(readFileSync(file, "utf8")).toBe(before);
		expect(existsSync(`${file}.lock`)).toBe(false);
	});

	test("a walk that another program has open is left alone", () => {
		const file = walkOf("showpiece");
		writeFileSync(`${file}.lock`, String(process.ppid));
		expect(refused("fernquill-riddle", "memory.slots", "4", "--by", "Ada", "--answers", file)).toContain(
			"open in another window",
		);
		expect(kept(file).parts).toHaveLength(kept(scenarioFile("showpiece")).parts.length);
	});
});
