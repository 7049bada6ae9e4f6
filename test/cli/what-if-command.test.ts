import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { answerOf, whatIf } from "../../src/cli/what-if-command.ts";
import { allQuestions, questionById } from "../../src/questions/all-questions.ts";
import { demoContext, settledFacts, valuesFor } from "../choose/demo.ts";
import { scenarioFile } from "../e2e/program.ts";
import { commandRuns, flat } from "./run-command.ts";

const { path, run, refusal } = commandRuns("what-if", whatIf);

const quiet = scenarioFile("quiet-desk");

describe("boardwalk what-if", () => {
	test("says what changes, within the width of a page", () => {
		const { out, err } = run("about/budget=110", "--answers", quiet);
		expect(err).toBe("");
		expect(out).toMatch(/^What if: Most the board may cost\n\nIn short\n- /);
		expect(flat(out)).toContain('- Most the board may cost: "EUR 110.00" instead of "EUR 200.00".');
		expect(out).toContain("\nYour shortlist now\n");
		expect(out).toContain("\nWith the other answer\n");
		for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(78);
	});

	test("leaves the file of answers as it is", () => {
		const before = readFileSync(quiet, "utf8");
		run("about/budget=110", "--answers", quiet);
		expect(readFileSync(quiet, "utf8")).toBe(before);
	});

	test("tells other programs the same as JSON", () => {
		const json = JSON.parse(run("about/budget=110", "--answers", quiet, "--json").out);
		expect(json).toMatchObject({
			schema: "boardwalk/what-if@1",
			questionId: "about/budget",
			answers: {
				before: { status: "answered", value: { minor: 20_000, currency: "EUR" } },
				after: { status: "answered", value: { minor: 11_000, currency: "EUR" } },
			},
			counts: true,
			isSame: false,
			comeBack: [],
		});
		expect(json.leader.before).toBe(json.shortlists.before[0].boardId);
		expect(json.leader.after).toBe(json.shortlists.after[0].boardId);
		const fallen = json.fallOut.flatMap(({ boardIds }: { boardIds: readonly string[] }) => boardIds);
		expect(json.left.after).toBe(json.left.before - fallen.length);
		for (const { boardId, stoppedBy } of json.went) expect(fallen.includes(boardId)).toBe(stoppedBy !== null);
		expect(flat(run("about/budget=110", "--answers", quiet).out)).toContain(json.words[0].lines[1]);
	});

	test("writes to a file, in the form of its name's ending", () => {
		const to = path("what-if.json");
		expect(run("about/budget=110", "--answers", quiet, "--to", to).err).toContain("Written: ");
		expect(JSON.parse(readFileSync(to, "utf8")).schema).toBe("boardwalk/what-if@1");
		expect(refusal("about/budget=110", "--answers", quiet, "--to", path("a.svg"))).toMatchObject({
			code: 64,
			message: "The result is written as .txt or .json; the file's name must end so.",
		});
	});

	test("without answers little can change, and it says so", () => {
		const { out, err } = run("fit/case=larkspur-wardrobe");
		expect(err).toBe("Without --answers FILE nothing about your build is known, so little can change.\n");
		expect(flat(out)).toContain('- Case: "Larkspur Wardrobe" instead of "not answered yet".');
	});

	test.each([
		[[], "Which answer? Such as: boardwalk what-if about/budget=150 --answers my.json. Questions: about/walk-length,"],
		[["about/budget"], "Which answer?"],
		[["about/budgt=150"], 'There is no question "about/budgt". Did you mean about/budget'],
		[["zzz=1"], 'There is no question "zzz". See: boardwalk --help'],
		[
			["about/quiet=loud"],
			'"Quiet matters" cannot be "loud". It takes one of a-lot, somewhat, a-little, not-at-all; or not-sure.',
		],
		[["about/budget=plenty"], '"Most the board may cost" cannot be "plenty". Type '],
		[["fit/case=larkspur-wardrob"], "Did you mean larkspur-wardrobe"],
		[["fit/case=qqqqqq"], '"Case" cannot be "qqqqqq". It takes the id of a case, or open, or not-sure.'],
		[
			["fit/drives=pantryshelf-dart,pantryshelf-drt"],
			"Did you mean pantryshelf-dart? It takes ids of a drive with commas, or none,",
		],
		[["features/rear-devices=keybord"], 'It takes a list of "keyboard",'],
		[["fit/case="], '"Case" cannot be ""'],
	])("%j is refused with what was wrong and what it takes", (argv, words) => {
		expect(refusal(...argv, "--answers", quiet)).toMatchObject({ code: 64, message: expect.stringContaining(words) });
	});
});

describe("an answer behind =", () => {
	const read = (id: string, text: string) => {
		const question = questionById(id);
		if (!question) throw new Error(`${id} is a question`);
		return answerOf(question, text, demoContext, settledFacts);
	};

	test.each<[string, string, unknown]>([
		["about/budget", "150", { minor: 15_000, currency: "EUR" }],
		["about/budget", '{"minor": 15000, "currency": "EUR"}', { minor: 15_000, currency: "EUR" }],
		["about/budget", "no-limit", "no-limit"],
		["fit/case", "larkspur-wardrobe", { part: "larkspur-wardrobe" }],
		["fit/case", "Larkspur Wardrobe", { part: "larkspur-wardrobe" }],
		[
			"fit/case",
			'{"part": "larkspur-wardrobe", "ownership": "bought"}',
			{ part: "larkspur-wardrobe", ownership: "bought" },
		],
		["fit/graphics-card", "none", "none"],
		["fit/older-drives", "2", 2],
		["fit/memory-size", "32 GB", 32],
		["features/rear-devices", "keyboard, mouse", ["keyboard", "mouse"]],
		["features/rear-devices", "none", []],
		["features/rear-devices", '["drive", "drive"]', ["drive", "drive"]],
		["fit/drives", "pantryshelf-dart", ["pantryshelf-dart"]],
		["quality/rescue", "a-lot", "a-lot"],
		["quality/rescue", "a lot", "a-lot"],
	])("%s=%s", (id, text, value) => {
		expect(read(id, text)).toEqual({ status: "answered", value });
	});

	test.each(["not-sure", "Not sure", "NOT-SURE"])("%s is not sure", (text) => {
		expect(read("fit/case", text)).toEqual({ status: "not-sure" });
	});

	test("every value that a file may hold can be written as JSON", () => {
		for (const question of allQuestions)
			for (const value of valuesFor(question))
				expect(answerOf(question, JSON.stringify(value), demoContext, settledFacts)).toEqual({
					status: "answered",
					value,
				});
	});
});
