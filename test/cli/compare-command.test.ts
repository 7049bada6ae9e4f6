import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { compare } from "../../src/cli/compare-command.ts";
import type { Answer, AnswersFile } from "../../src/parts/answers-file.ts";
import { scenarioFile } from "../e2e/program.ts";
import { walkOf } from "../walk/made-up-walks.ts";
import { commandRuns, flat } from "./run-command.ts";

const { path, run, refusal } = commandRuns("compare", compare);

const start = walkOf("quiet-desk");
const withAnswers = (answers: Readonly<Record<string, Answer>>, more: Partial<AnswersFile> = {}): AnswersFile => ({
	...start,
	answers: { ...start.answers, ...answers },
	...more,
});
function put(name: string, walk: object): string {
	writeFileSync(path(name), JSON.stringify(walk));
	return path(name);
}

describe("boardwalk compare", () => {
	test("finds nothing between a walk and itself", () => {
		const { out, err } = run(scenarioFile("quiet-desk"), put("copy.json", start));
		expect(err).toBe("");
		expect(out).toMatch(/^quiet-desk\.json and copy\.json, compared\n\nIn short\n/);
		expect(flat(out)).toMatch(/\d+ answers are the same, 0 differ, and 0 stand in one walk alone\./);
		expect(flat(out)).toMatch(/ leads both shortlists, with \d+ points each time\./);
		expect(out).not.toContain("Answers that differ");
		expect(out).not.toContain("Boards on one alone");
		for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(78);
	});

	test("tells which answers differ, by whom, and which one walk has alone", () => {
		const { "about/quiet": quiet, ...rest } = start.answers;
		const mine = put("mine.json", { ...start, name: "The desk" });
		const mias = put("mias.json", {
			...start,
			name: "For Oma",
			answers: {
				...rest,
				"about/budget": { status: "answered", value: { minor: 12_000, currency: "EUR" }, by: "Mia" },
				"fit/case": { status: "not-sure", by: "Mia" },
			},
		});
		expect(quiet).toBeDefined();
		const words = flat(run(mine, mias).out);
		expect(words).toContain("The desk and For Oma, compared");
		expect(words).toContain("2 differ, and 1 stands in one walk alone.");
		expect(words).toContain(
			"Answers that differ - Most the board may cost: EUR 200.00 (by the builder) in The desk, EUR 120.00 (by Mia) in For Oma.",
		);
		expect(words).toMatch(/- Case: \S.* \(by the builder\) in The desk, not sure \(by Mia\) in For Oma\./);
		expect(words).toContain("Answered in The desk alone - Quiet matters: A lot (by the builder).");
		expect(words).not.toContain("Answered in For Oma alone");
	});

	test("who gave an answer makes no difference, and passed over is not sure", () => {
		const quiet = start.answers["about/quiet"];
		if (!quiet) throw new Error("nothing to compare");
		const mine = put("mine.json", withAnswers({ "features/room": { status: "skipped" } }));
		const mias = put(
			"mias.json",
			withAnswers({ "about/quiet": { ...quiet, by: "Mia" }, "features/room": { status: "not-sure", by: "Mia" } }),
		);
		expect(flat(run(mine, mias).out)).toContain("0 differ, and 0 stand in one walk alone.");
	});

	test("tells both shortlists, what is on both and by how much, and why a board is on one alone", () => {
		const mine = put("mine.json", start);
		const cheap = { status: "answered", value: { minor: 12_000, currency: "EUR" }, by: "builder" } as const;
		const mias = put("mias.json", withAnswers({ "about/budget": cheap }));
		const { shortlists, onBoth } = JSON.parse(run(mine, mias, "--json").out);
		const words = flat(run(mine, mias).out);
		expect(shortlists.other.every(({ priceMinor }: { priceMinor: number }) => priceMinor <= 12_000)).toBe(true);
		for (const [heading, list] of [
			["The shortlist of mine.json", shortlists.one],
			["The shortlist of mias.json", shortlists.other],
		]) {
			const [, after = ""] = words.split(heading);
			for (const { place, points } of list)
				expect(after).toMatch(new RegExp(`- ${place}\\. [^.]+: .*?, ${points} points?,`));
		}
		expect(onBoth.length).toBeGreaterThan(0);
		const [first] = shortlists.one;
		expect(shortlists.other.some(({ boardId }: { boardId: string }) => boardId === first.boardId)).toBe(false);
		expect(words).toMatch(/is on the shortlist of mine\.json; mias\.json takes it out by "[^"]+"\./);
	});

	test("tells the same to other programs", () => {
		const mine = put("mine.json", { ...start, name: "The desk" });
		const mias = put("mias.json", withAnswers({ "about/quiet": { status: "not-sure", by: "Mia", note: "who knows" } }));
		const json = JSON.parse(run(mine, mias, "--json").out);
		expect(json).toMatchObject({
			schema: "boardwalk/compare@1",
			walks: { one: { file: mine, name: "The desk" }, other: { file: mias, name: null, called: "mias.json" } },
			answers: {
				differ: [
					{
						questionId: "about/quiet",
						one: { status: "answered", value: "a-lot", by: "builder", note: null },
						other: { status: "not-sure", value: null, by: "Mia", note: "who knows" },
					},
				],
				onlyOne: [],
				onlyOther: [],
			},
		});
		const text = flat(run(mine, mias).out);
		for (const { lines } of json.words) for (const line of lines) expect(text).toContain(flat(line));
		run(mine, mias, "--to", path("out.json"));
		expect(JSON.parse(readFileSync(path("out.json"), "utf8"))).toEqual(json);
	});

	test("tells own parts of one walk alone, and those of which the two know different things", () => {
		const gatepost = (length: number) => ({
			kind: "case",
			part: { id: "gatepost", name: "Gatepost", cardMaxLengthMm: length },
		});
		const barn = { kind: "case", part: { id: "barn", name: "Barn" } };
		const mine = put("mine.json", { ...start, parts: [gatepost(300)] });
		const mias = put("mias.json", { ...start, parts: [gatepost(360), barn] });
		const words = flat(run(mine, mias).out);
		expect(words).toMatch(/- Gatepost \(case\): the two walks know different things of it, namely [a-z]/);
		expect(words).toContain("- Barn (case) is in mias.json alone.");
		expect(JSON.parse(run(mine, mias, "--json").out).parts).toEqual({
			onlyOne: [],
			onlyOther: [{ kind: "case", id: "barn" }],
			differ: [{ kind: "case", id: "gatepost", facts: ["cardMaxLengthMm"] }],
		});
	});

	test("changes no file", () => {
		const mine = put("mine.json", { ...start, schema: "boardwalk/answers@1" });
		const text = readFileSync(mine, "utf8");
		run(mine, put("mias.json", start));
		expect(readFileSync(mine, "utf8")).toBe(text);
	});

	test("calls two files of one name by their paths", () => {
		const one = put("a.json", start);
		expect(run(one, scenarioFile("quiet-desk")).out).toContain("a.json and quiet-desk.json, compared");
		expect(run(one, one).out).toContain("the first and the second, compared");
	});
});

test.each([
	[[], "Which two files? Such as: boardwalk compare mine.json mias.json"],
	[[scenarioFile("quiet-desk")], "Which two files?"],
	[[scenarioFile("quiet-desk"), scenarioFile("quiet-desk"), "--to", "a.svg"], "The result is written as .txt or .json"],
])("%j is refused with what was wrong", (argv, words) => {
	expect(refusal(...argv)).toMatchObject({ code: 64, message: expect.stringContaining(words) });
});
