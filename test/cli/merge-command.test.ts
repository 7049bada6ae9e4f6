import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { merge } from "../../src/cli/merge-command.ts";
import type { Answer, AnswersFile } from "../../src/parts/answers-file.ts";
import { answersTemplate } from "../../src/parts/answers-in-html.ts";
import { walkOf } from "../walk/made-up-walks.ts";
import { commandRuns, flat } from "./run-command.ts";

const { path, run, refusal } = commandRuns("merge", merge);

const start = walkOf("quiet-desk");
const withAnswers = (answers: Readonly<Record<string, Answer>>, more: Partial<AnswersFile> = {}): AnswersFile => ({
	...start,
	answers: { ...start.answers, ...answers },
	...more,
});
const budget = (minor: number, by: string): Answer => ({ status: "answered", value: { minor, currency: "EUR" }, by });

function put(name: string, walk: object | string): string {
	const file = path(name);
	writeFileSync(file, typeof walk === "string" ? walk : JSON.stringify(walk));
	return file;
}
const read = (name: string): AnswersFile => JSON.parse(readFileSync(path(name), "utf8"));

describe("boardwalk merge", () => {
	test("writes one walk of two, and tells in words what is to be decided and what came from where", () => {
		const { "about/quiet": _, ...rest } = start.answers;
		const mine = put("mine.json", { ...start, answers: { ...rest, "about/budget": budget(15_000, "builder") } });
		const mias = put("mias.json", withAnswers({ "about/budget": budget(25_000, "Mia") }, { name: "For Oma" }));
		const { out, err } = run(mine, mias, "--to", path("both.json"));
		expect(err).toBe(`Written: ${path("both.json")}\n`);
		const words = flat(out);
		expect(words).toContain("mine.json and mias.json, merged");
		expect(words).toContain("1 question is answered in two ways. It counts as not sure until you decide");
		expect(words).toContain(
			"Most the board may cost: EUR 150.00 (by the builder) in mine.json, EUR 250.00 (by Mia) in mias.json.",
		);
		expect(words).toContain("Taken from mias.json - Quiet matters: A lot (by the builder).");
		expect(words).toContain(
			'mine.json has no name, and mias.json is called "For Oma"; together they are called "For Oma".',
		);
		expect(words).toContain("What is open is shown in the walk under Suggestions");
		for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(78);
		expect(read("both.json")).toMatchObject({
			schema: "boardwalk/answers@2",
			name: "For Oma",
			answers: { "about/budget": { status: "not-sure" }, "about/quiet": start.answers["about/quiet"] },
			suggestions: [
				{ rival: true, state: "open" },
				{ rival: true, state: "open" },
			],
		});
	});

	test("from a start takes what was changed, without a question", () => {
		put("start.json", start);
		const mine = put("mine.json", withAnswers({ "about/budget": budget(15_000, "builder") }));
		const mias = put("mias.json", withAnswers({ "about/quiet": { status: "not-sure", by: "Mia" } }));
		const { out } = run(mine, mias, "--from", path("start.json"), "--to", path("both.json"));
		expect(flat(out)).toContain("No two answers contradict each other.");
		expect(flat(out)).toContain("Quiet matters: not sure (by Mia). The other walk had: A lot.");
		expect(read("both.json").answers).toMatchObject({
			"about/budget": budget(15_000, "builder"),
			"about/quiet": { status: "not-sure", by: "Mia" },
		});
		expect(read("both.json")).not.toHaveProperty("suggestions");
	});

	test("is the same whichever file is named first", () => {
		const mine = put("mine.json", withAnswers({ "about/budget": budget(15_000, "builder") }));
		const mias = put("mias.json", withAnswers({ "about/budget": budget(25_000, "Mia") }));
		run(mine, mias, "--to", path("one.json"));
		run(mias, mine, "--to", path("other.json"));
		const sorted = (walk: AnswersFile) => ({
			...walk,
			suggestions: walk.suggestions?.map((one) => JSON.stringify(one)).sort(),
		});
		expect(sorted(read("other.json"))).toEqual(sorted(read("one.json")));
	});

	test("takes sheets too, and leaves them as they are", () => {
		const mine = put("mine.json", start);
		const sheet = put("sheet.html", `<!doctype html>${answersTemplate(withAnswers({}, { name: "Mia" }))}`);
		const text = readFileSync(sheet, "utf8");
		run(sheet, mine, "--to", path("both.json"));
		expect(read("both.json").name).toBe("Mia");
		expect(readFileSync(sheet, "utf8")).toBe(text);
	});

	test("tells of parts that contradict each other, and keeps both", () => {
		const gatepost = (length: number) => ({
			parts: [{ kind: "case", part: { id: "gatepost", name: "Gatepost", cardMaxLengthMm: length } }],
		});
		const mine = put("mine.json", { ...start, ...gatepost(300) });
		const mias = put("mias.json", { ...start, ...gatepost(360) });
		const { out } = run(mine, mias, "--to", path("both.json"));
		expect(flat(out)).toContain(
			"Gatepost (case, gatepost): the two walks contradict each other, so both are kept. That of mias.json is now gatepost-2.",
		);
		expect(read("both.json").parts.map(({ part }) => part.id)).toEqual(["gatepost", "gatepost-2"]);
	});

	test("says no name that could run wild on a terminal", () => {
		const mine = put(
			"mine.json",
			withAnswers({ "about/budget": budget(1, "\u001b[31mMia") }, { name: "a\u001b]0;x\u0007\nb" }),
		);
		const mias = put("mias.json", withAnswers({ "about/budget": budget(2, "Oma\u202e") }, { name: "c" }));
		const { out } = run(mine, mias, "--to", path("both.json"));
		for (const letter of ["\u001b", "\u0007", "\u202e"]) expect(out).not.toContain(letter);
		expect(flat(out)).toContain("a b and c, merged");
	});
});

describe("files are safe", () => {
	test("one that is there is kept, and so are the two, unless --replace is given", () => {
		const mine = put("mine.json", start);
		const mias = put("mias.json", withAnswers({}, { name: "Mia" }));
		for (const to of [mine, mias, put("both.json", "other")])
			expect(refusal(mine, mias, "--to", to)).toMatchObject({
				code: 73,
				message: `${to} is there already and was kept. Take another name, or add --replace.`,
			});
		expect(read("mine.json")).toEqual(start);
		expect(readFileSync(path("both.json"), "utf8")).toBe("other");
		run(mine, mias, "--to", mine, "--replace");
		expect(read("mine.json").name).toBe("Mia");
	});

	test("one that another window has open is not replaced", () => {
		const mine = put("mine.json", start);
		put("mine.json.lock", String(process.ppid));
		const words = expect.stringContaining("open in another window");
		expect(refusal(mine, mine, "--to", mine, "--replace")).toMatchObject({ code: 73, message: words });
	});

	test.each([
		["a newer program's", JSON.stringify({ ...start, schema: "boardwalk/answers@3" }), 65, "a newer boardwalk"],
		["rubbish", "{", 65, "no sound JSON"],
		["no answers", '{"schema": "boardwalk/parts@1"}', 65, "schema"],
	])("with %s nothing is written", (_, text, code, words) => {
		const mine = put("mine.json", start);
		const other = put("other.json", text);
		expect(refusal(mine, other, "--to", path("both.json"))).toMatchObject({
			code,
			message: expect.stringContaining(words),
		});
		expect(refusal(mine, mine, "--from", other, "--to", path("both.json"))).toMatchObject({ code });
		expect(readdirSync(path()).sort()).toEqual(["mine.json", "other.json"]);
	});

	test("more suggestions than a file may hold are not cut, but refused", () => {
		const many = (by: string) =>
			Array.from({ length: 300 }, (_, index) => ({
				questionId: "about/quiet",
				status: "not-sure",
				by,
				why: `reason ${index}`,
				on: "2026-11-24",
				state: "open",
			}));
		const mine = put("mine.json", { ...start, suggestions: many("Mia") });
		const mias = put("mias.json", { ...start, suggestions: many("Oma") });
		expect(refusal(mine, mias, "--to", path("both.json"))).toMatchObject({
			code: 65,
			message: "Merged, the two have 600 suggestions, and a walk holds 500 at most. Nothing was written.",
		});
		expect(readdirSync(path()).sort()).toEqual(["mias.json", "mine.json"]);
	});

	test("a folder that is not there is not made", () => {
		const mine = put("mine.json", start);
		expect(refusal(mine, mine, "--to", path("nowhere", "both.json"))).toMatchObject({
			code: 73,
			message: expect.stringContaining("there is no such file or folder"),
		});
	});
});

test.each([
	[[], "Which two files, and where to write?"],
	[["a.json", "b.json"], "Which two files, and where to write?"],
	[["a.json", "--to", "c.json"], "Which two files, and where to write?"],
	[["a.json", "b.json", "--to", "c.html"], "A walk is written as .json; the file's name behind --to must end so."],
])("%j is refused with what was wrong", (argv, words) => {
	expect(refusal(...argv)).toMatchObject({ code: 64, message: expect.stringContaining(words) });
});
