import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { sheet } from "../../src/cli/commands.ts";
import { scenarioFile } from "../e2e/program.ts";
import { commandRuns, flat } from "./run-command.ts";

const { path, run, refusal } = commandRuns("sheet", sheet);
const answers = ["--answers", scenarioFile("showpiece")] as const;
const titleIn = (written: string) => /<title>([^<]*)<\/title>/.exec(written)?.[1];

describe("boardwalk sheet --to board.svg", () => {
	test("draws the first board of the shortlist, and tells where it lies", () => {
		const to = path("board.svg");
		const { out, err } = run(...answers, "--to", to);
		expect([out, err]).toEqual(["", `Written: ${to}\n`]);
		const shortlist = JSON.parse(run(...answers, "--json").out).shortlist as { readonly name: string }[];
		expect(titleIn(readFileSync(to, "utf8"))).toBe(`Paper board: ${shortlist[0]?.name} (invented)`);
	});

	test("draws another board that is named, also one that does not fit", () => {
		const to = path("board.svg");
		run(...answers, "--board", "pennywhistle-gavotte", "--to", to);
		expect(titleIn(readFileSync(to, "utf8"))).toBe("Paper board: Pennywhistle Gavotte (invented)");
		const out = path("out.svg");
		run("--answers", scenarioFile("tight-budget"), "--board", "brindlecroft-honesty", "--to", out);
		expect(flat(readFileSync(out, "utf8"))).toContain("This board does not fit: It is stopped by: ");
	});

	test("replaces nothing unless told to", () => {
		const to = path("board.svg");
		writeFileSync(to, "mine");
		const { code, message } = refusal(...answers, "--to", to);
		expect([code, message]).toEqual([73, expect.stringContaining("--replace")]);
		expect(readFileSync(to, "utf8")).toBe("mine");
		run(...answers, "--to", to, "--replace");
		expect(readFileSync(to, "utf8")).toMatch(/^<svg /);
	});

	test("a folder that is not there: a clear word", () => {
		const { code, message } = refusal(...answers, "--to", path("nowhere", "board.svg"));
		expect([code, message]).toEqual([73, expect.stringContaining("cannot be written")]);
	});
});

describe("boardwalk sheet --paper", () => {
	test.each([
		["a4", "A4"],
		["letter", "letter"],
		["A4", "A4"],
	])("%s writes sheets of that paper", (paper, size) => {
		const to = path("board.html");
		const { err } = run(...answers, "--paper", paper, "--to", to);
		expect(err).toBe(`Written: ${to}\n`);
		const html = readFileSync(to, "utf8");
		expect(html).toContain(`@page{size:${size} portrait`);
		expect(html).toContain("Sheet 1 of ");
		expect(refusal(...answers, "--paper", paper, "--to", to).code).toBe(73);
	});

	test("goes to standard output where that is asked for", () => {
		const { out, err } = run(...answers, "--paper", "a4", "--board", "pennywhistle-gavotte", "--to", "-");
		expect(out).toMatch(/^<!doctype html>/);
		expect(titleIn(out)).toBe("Paper board: Pennywhistle Gavotte (invented)");
		expect(err).toBe("");
	});

	test("without it an .html is the sheet itself", () => {
		const to = path("sheet.html");
		run(...answers, "--to", to);
		const html = readFileSync(to, "utf8");
		expect(html).toMatch(/^<!doctype html>/);
		expect(html).not.toContain("Paper board: ");
	});
});

describe("what cannot be", () => {
	const svg = () => ["--to", path("board.svg")];
	const putParts = (parts: object) =>
		writeFileSync(path("parts.json"), JSON.stringify({ schema: "boardwalk/parts@1", ...parts }));

	test.each<[string, () => readonly string[], string]>([
		[
			"a paper that nobody knows",
			() => ["--paper", "a5", "--to", path("b.html")],
			'There is no paper "a5". Take a4 or letter',
		],
		["a word of every object", () => ["--paper", "constructor", "--to", path("b.html")], "There is no paper"],
		["a paper without a file", () => ["--paper", "a4"], "--paper needs a file to write to"],
		["a paper with another ending", () => ["--paper", "a4", ...svg()], "must end in .html"],
		["a board without a file", () => ["--board", "pennywhistle-gavotte"], "A board at true size is written as .svg"],
		[
			"a board as text",
			() => ["--board", "pennywhistle-gavotte", "--to", path("b.md")],
			"A board at true size is written as",
		],
		[
			"a board that there is not",
			() => ["--board", "pennywhistle-gavote", ...svg()],
			"Did you mean pennywhistle-gavotte",
		],
		["a board of another market", () => ["--board", "my-own-board", ...svg()], 'There is no board "my-own-board".'],
	])("%s: 64, and a word", (_, more, words) => {
		const { code, message } = refusal(...answers, ...more());
		expect([code, message]).toEqual([64, expect.stringContaining(words)]);
	});

	test("a board of unknown size is told and not drawn", () => {
		const to = path("board.svg");
		putParts({ boards: [{ id: "big", name: "Big", form: "E-ATX", widthMm: 305 }] });
		const { code, message } = refusal(...answers, "--parts", path("parts.json"), "--board", "big", "--to", to);
		expect([code, message]).toEqual([65, expect.stringContaining("Big cannot be drawn at true size: how deep it is")]);
		expect(() => readFileSync(to)).toThrow();
	});

	test("no board left, and none named: a word", () => {
		putParts({});
		const { code, message } = refusal(...answers, "--parts", path("parts.json"), ...svg());
		expect([code, message]).toEqual([64, expect.stringContaining("The shortlist is empty")]);
	});
});
