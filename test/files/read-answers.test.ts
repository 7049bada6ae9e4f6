import { symlinkSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { NewerFile } from "../../src/files/newer-file.ts";
import { holdsAnswers, isThere, readAnswers, readWalk } from "../../src/files/read-answers.ts";
import { answersTemplate } from "../../src/parts/answers-in-html.ts";
import { scenarios } from "../walk/walk-in-demo.ts";
import { ownFolder } from "./own-folder.ts";

const { path, write } = ownFolder();
const walk = scenarios.find(({ name }) => name === "typed-in")?.file ?? null;

describe("a file of answers", () => {
	test.each(scenarios)("of $name is read as it was written, and as an older program wrote it", ({ file }) => {
		expect(readAnswers(write("a.json", JSON.stringify(file)))).toEqual({ value: file, faults: [] });
		const older = JSON.stringify({ ...file, schema: "boardwalk/answers@1" });
		expect(readAnswers(write("b.json", older))).toEqual({ value: file, faults: [] });
	});

	test.each<[string, object, string]>([
		["another schema", { schema: "boardwalk/parts@1" }, "schema"],
		["a day that is none", { asOf: "2026-02-30" }, "asOf"],
		["an unknown status", { answers: { "fit/case": { status: "perhaps" } } }, "answers.fit/case.status"],
		["a part of no kind", { parts: [{ kind: "chair", part: { id: "a", name: "A" } }] }, "parts[0].kind"],
		["a part with a slip in it", { parts: [{ kind: "case", part: { id: "A!", name: "A" } }] }, "parts[0].part.id"],
		["a name that is too long", { name: "a".repeat(81) }, "name"],
	])("with %s is refused at its path", (_, change, at) => {
		const { value, faults } = readAnswers(write("a.json", JSON.stringify({ ...scenarios[0]?.file, ...change })));
		expect(value).toBeNull();
		expect(faults.map(({ path: told }) => told)).toContain(at);
	});
});

describe("a newer program's file", () => {
	test.each([
		["answers", { schema: "boardwalk/answers@3" }, /a newer boardwalk \(boardwalk\/answers@3, .* up to @2\)/],
		["a sheet", { schema: "boardwalk/sheet@9", answersFile: walk }, /a newer boardwalk \(boardwalk\/sheet@9, .* @1\)/],
		[
			"answers in a sheet",
			{ schema: "boardwalk/sheet@1", answersFile: { ...walk, schema: "boardwalk/answers@3" } },
			/boardwalk\/answers@3/,
		],
	])("of %s is told by its version", (_, json, words) => {
		const file = write("a.json", JSON.stringify(json));
		expect(() => readAnswers(file)).toThrow(NewerFile);
		expect(() => readAnswers(file)).toThrow(words);
		expect(holdsAnswers(file)).toBe(true);
	});
});

describe("a sheet", () => {
	const inJson = () => JSON.stringify({ schema: "boardwalk/sheet@1", title: "whatever", answersFile: walk });
	const inPage = () => `\uFEFF\n<!doctype html><title>x</title>${walk && answersTemplate(walk)}<p>and more</p>`;

	test.each([
		["JSON", "sheet.json", inJson],
		["HTML", "sheet.html", inPage],
		["HTML under another name", "sheet.json", inPage],
		["JSON under another name", "sheet.html", inJson],
	])("of %s gives its answers, and is known as a sheet", (_, name, text) => {
		const file = write(name, text());
		expect(readWalk(file)).toEqual({ checked: { value: walk, faults: [] }, inSheet: true });
		expect(holdsAnswers(file)).toBe(true);
	});

	test("that an older walk stands in is taken to today's form", () => {
		const older = { schema: "boardwalk/sheet@1", answersFile: { ...walk, schema: "boardwalk/answers@1" } };
		expect(readAnswers(write("a.json", JSON.stringify(older))).value).toEqual(walk);
	});

	test.each([
		["a page of something else", "<html><p>Hello</p>", /no sheet of boardwalk/],
		["a sheet without answers", '{"schema": "boardwalk/sheet@1", "answersFile": null}', /carries no answers/],
		["a page cut short", '<html><template id="boardwalk-answers">{"schema"', /no sheet of boardwalk/],
		["a page with rubbish in it", '<html><template id="boardwalk-answers">{"schema"</template>', /no sound JSON/],
	])("that is %s says so", (_, text, words) => {
		expect(() => readAnswers(write("a.html", text))).toThrow(words);
	});

	test("of rubbish where the answers should be is refused at its path, and reaches no prototype", () => {
		const page = '<html><template id="boardwalk-answers">{"__proto__":{"schema":"x"},"asOf":7}</template>';
		const { value, faults } = readAnswers(write("a.html", page));
		expect(value).toBeNull();
		expect(faults.map(({ path: at }) => at)).toEqual(expect.arrayContaining(["schema", "asOf"]));
		expect(({} as { schema?: string }).schema).toBeUndefined();
	});
});

test("a walk's own file is no sheet, and a file of parts holds no answers", () => {
	const file = write("a.json", JSON.stringify(walk));
	expect(readWalk(file).inSheet).toBe(false);
	expect(holdsAnswers(file)).toBe(true);
	expect(holdsAnswers(write("b.json", '{"schema": "boardwalk/parts@1"}'))).toBe(false);
});

test("something is there, or not; a link to nothing is not", () => {
	expect(isThere(path())).toBe(true);
	expect(isThere(write("a.json", ""))).toBe(true);
	expect(isThere(path("b.json"))).toBe(false);
	symlinkSync(path("nowhere"), path("c.json"));
	expect(isThere(path("c.json"))).toBe(false);
});
