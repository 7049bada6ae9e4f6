import { chmodSync, copyFileSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { beforeEach, describe, expect, test } from "vitest";
import { schema, sheet } from "../../src/cli/commands.ts";
import { scenarioFile } from "../e2e/program.ts";
import { commandRuns } from "./run-command.ts";

const { path, run, refusal } = commandRuns("sheet", sheet);
const answers = readFileSync(scenarioFile("first-guess"), "utf8");

beforeEach(() => {
	mkdirSync(path("desk"));
	copyFileSync(scenarioFile("first-guess"), path("mine.json"));
});

const to = (name: string, ...more: readonly string[]) =>
	["--answers", path("mine.json"), "--to", path("desk", name), ...more] as const;
const onDesk = () => readdirSync(path("desk")).sort();

/** What each form begins with. */
const beginnings: Readonly<Record<string, RegExp>> = {
	".txt": /^WHAT TO LOOK FOR/,
	".md": /^# What to look for/,
	".html": /^<!doctype html>/,
	".htm": /^<!doctype html>/,
	".HTML": /^<!doctype html>/,
	".json": /^\{\n\t"schema": "boardwalk\/sheet@1"/,
	".csv": /^\uFEFF?role,board,/,
	".svg": /^<svg |^<\?xml /,
};

test.each(Object.entries(beginnings))(
	"a sheet as %s is one file where it was asked for, and nothing else",
	(ending, beginning) => {
		const name = `sheet${ending}`;
		expect(run(...to(name))).toEqual({ out: "", err: `Written: ${path("desk", name)}\n` });
		expect(onDesk()).toEqual([name]);
		expect(readdirSync(path()).sort()).toEqual(["desk", "mine.json"]);
		expect(readFileSync(path("desk", name), "utf8")).toMatch(beginning);
		expect(readFileSync(path("mine.json"), "utf8")).toBe(answers);
	},
);

describe.each([".html", ".csv", ".svg"])("a sheet as %s", (ending) => {
	const name = `sheet${ending}`;
	const beginning = beginnings[ending] ?? /^$/;

	test("takes no file's place, unless that is asked for", () => {
		writeFileSync(path("desk", name), "something dear");
		const { code, message } = refusal(...to(name));
		expect(code).toBe(73);
		expect(message).toBe(`${path("desk", name)} is there already and was kept. Take another name, or add --replace.`);
		expect(readFileSync(path("desk", name), "utf8")).toBe("something dear");
		run(...to(name, "--replace"));
		expect(readFileSync(path("desk", name), "utf8")).toMatch(beginning);
		expect(onDesk()).toEqual([name]);
	});

	test("never takes the place of a walk, whatever it is called", () => {
		writeFileSync(path("desk", name), answers);
		const { code, message } = refusal(...to(name, "--replace"));
		expect(code).toBe(73);
		expect(message).toContain("holds the answers of a walk, and was kept");
		expect(readFileSync(path("desk", name), "utf8")).toBe(answers);
	});

	test("follows no link: a link is kept like a file, and what it leads to is never written", () => {
		writeFileSync(path("elsewhere"), "something dear");
		symlinkSync(path("elsewhere"), path("desk", name));
		expect(refusal(...to(name)).code).toBe(73);
		run(...to(name, "--replace"));
		expect(readFileSync(path("desk", name), "utf8")).toMatch(beginning);
		expect(readFileSync(path("elsewhere"), "utf8")).toBe("something dear");
		symlinkSync(path("nowhere"), path("desk", `other${ending}`));
		expect(refusal(...to(`other${ending}`)).code).toBe(73);
		expect(readdirSync(path()).sort()).toEqual(["desk", "elsewhere", "mine.json"]);
	});

	test("makes no folder: that there is none is told, and below a file too", () => {
		writeFileSync(path("desk", "a.txt"), "a file");
		for (const [where, why] of [
			[`gone/${name}`, "there is no such file or folder"],
			[`a.txt/${name}`, "part of the path is a file, not a folder"],
		] as const) {
			const { code, message } = refusal(...to(where));
			expect([code, message]).toEqual([73, `${path("desk", where)} cannot be written: ${why}.`]);
		}
		expect(onDesk()).toEqual(["a.txt"]);
	});

	test("does not take the place of a file that is protected against writing, even where it may replace", () => {
		writeFileSync(path("desk", name), "kept");
		chmodSync(path("desk", name), 0o444);
		const { code, message } = refusal(...to(name, "--replace"));
		expect([code, message]).toEqual([73, `${path("desk", name)} cannot be written: it is protected against writing.`]);
		expect(readFileSync(path("desk", name), "utf8")).toBe("kept");
	});

	test("does not take the place of a folder, even where it may replace", () => {
		mkdirSync(path("desk", name));
		writeFileSync(path("desk", name, "kept"), "");
		for (const more of [[], ["--replace"]]) expect(refusal(...to(name, ...more)).code).toBe(73);
		expect(refusal(...to(name, "--replace")).message).toBe(
			`${path("desk", name)} cannot be written: this is a folder.`,
		);
		expect(onDesk()).toEqual([name]);
		expect(readdirSync(path("desk", name))).toEqual(["kept"]);
	});

	test.skipIf(process.getuid?.() === 0)("in a folder that can only be read is refused with a clear word", () => {
		chmodSync(path("desk"), 0o500);
		const { code, message } = refusal(...to(name));
		chmodSync(path("desk"), 0o700);
		expect([code, message]).toEqual([73, `${path("desk", name)} cannot be written: this user is not allowed to.`]);
		expect(onDesk()).toEqual([]);
	});
});

test.each(["sheet", "sheet.pdf", "sheet.html.", ".", "sheet.md/"])("no form is known for %j", (name) => {
	const { code, message } = refusal(...to(name));
	expect(code).toBe(64);
	for (const form of [".html", ".md", ".txt", ".json", ".csv"]) expect(message).toContain(form);
	expect(onDesk()).toEqual([]);
});

describe("the schema of a sheet as JSON", () => {
	const { run: print } = commandRuns("schema", schema);

	test("is published, with the answers that it carries", () => {
		const published = JSON.parse(print("sheet").out);
		expect(published.properties.schema.const).toBe("boardwalk/sheet@1");
		expect(published.required).toEqual(expect.arrayContaining(["schema", "shortlist", "answersFile"]));
		expect(JSON.stringify(published.properties.answersFile)).toContain("boardwalk/answers@2");
	});
});
