import { describe, expect, test } from "vitest";
import { allSources, type SourceId, type SourceKind, sourceById } from "../../src/reference/sources.ts";

const kinds: Record<SourceKind, true> = {
	standard: true,
	handbook: true,
	"application note": true,
	paper: true,
	"common practice": true,
	"from memory": true,
};

const textFields = ["number", "revision", "section", "publisher", "note"] as const;

describe("every source", () => {
	test.each(allSources().map((source) => [source.id, source] as const))("%s is well formed", (id, source) => {
		expect(id).toMatch(/^[a-z0-9]+([-.][a-z0-9]+)*$/);
		expect(source.title.trim()).not.toBe("");
		expect(Object.keys(kinds)).toContain(source.kind);
		for (const field of textFields) {
			// Unknown is an absent field, never an empty one.
			if (field in source) expect(source[field]?.trim(), field).toBeTruthy();
		}
		if (source.year !== undefined) expect(Number.isInteger(source.year)).toBe(true);
		const known: string[] = ["id", "title", "kind", "year", ...textFields];
		expect(Object.keys(source).filter((field) => !known.includes(field))).toEqual([]);
	});

	test("no two say the same", () => {
		const texts = allSources().map(({ id: _, ...rest }) => JSON.stringify(rest));
		expect(new Set(texts).size).toBe(texts.length);
	});

	test("is the one that its id finds", () => {
		for (const source of allSources()) expect(sourceById(source.id)).toEqual(source);
	});
});

test("the three sources that are no document say so", () => {
	expect(sourceById("common-practice").kind).toBe("common practice");
	expect(sourceById("own-convention").kind).toBe("common practice");
	expect(sourceById("from-memory").kind).toBe("from memory");
});

test("a document keeps number, revision and year apart", () => {
	expect(sourceById("atx-3.0-guide-2.01")).toMatchObject({ number: "336521", revision: "2.01", year: 2023 });
});

test("a wrong id does not compile", () => {
	// @ts-expect-error no such source
	const wrong: SourceId = "no-such-source";
	expect(allSources().map(({ id }) => id)).not.toContain(wrong);
});
