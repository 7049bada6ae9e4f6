import { symlinkSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { isThere, readAnswers } from "../../src/files/read-answers.ts";
import { scenarios } from "../walk/walk-in-demo.ts";
import { ownFolder } from "./own-folder.ts";

const { path, write } = ownFolder();

describe("a file of answers", () => {
	test.each(scenarios)("of $name is read as it was written", ({ file }) => {
		expect(readAnswers(write("a.json", JSON.stringify(file)))).toEqual({ value: file, faults: [] });
	});

	test.each<[string, object, string]>([
		["another schema", { schema: "boardwalk/answers@2" }, "schema"],
		["a day that is none", { asOf: "2026-02-30" }, "asOf"],
		["an unknown status", { answers: { "fit/case": { status: "perhaps" } } }, "answers.fit/case.status"],
		["a part of no kind", { parts: [{ kind: "chair", part: { id: "a", name: "A" } }] }, "parts[0].kind"],
		["a part with a slip in it", { parts: [{ kind: "case", part: { id: "A!", name: "A" } }] }, "parts[0].part.id"],
	])("with %s is refused at its path", (_, change, at) => {
		const { value, faults } = readAnswers(write("a.json", JSON.stringify({ ...scenarios[0]?.file, ...change })));
		expect(value).toBeNull();
		expect(faults.map(({ path: told }) => told)).toContain(at);
	});
});

test("something is there, or not; a link to nothing is not", () => {
	expect(isThere(path())).toBe(true);
	expect(isThere(write("a.json", ""))).toBe(true);
	expect(isThere(path("b.json"))).toBe(false);
	symlinkSync(path("nowhere"), path("c.json"));
	expect(isThere(path("c.json"))).toBe(false);
});
