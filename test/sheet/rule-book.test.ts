import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { allCriteria } from "../../src/criteria/all-criteria.ts";
import { allRules } from "../../src/rules/all-rules.ts";
import { ruleBook } from "../../src/sheet/rule-book.ts";

const book = ruleBook();

test("the page in src/rules is this book: npm run docs remakes it", () => {
	const page = readFileSync(fileURLToPath(new URL("../../src/rules/README.md", import.meta.url)), "utf8");
	expect(page).toBe(book);
});

describe("every rule and criterion stands in it once", () => {
	test.each([...allRules, ...allCriteria])("$id", ({ id, asks, why }) => {
		const chapter = book.split("\n### ").filter((one) => one.startsWith(`${id}: `));
		expect(chapter).toHaveLength(1);
		expect(chapter[0]).toContain(`${asks} ${why}`);
		expect(chapter[0]).toMatch(/\n- It reads: \S/);
		expect(chapter[0]).toMatch(/\n- Source: \S/);
	});
});

test("no path stands without words of its own", () => {
	const reads = [...book.matchAll(/^- It reads: (.*)$/gm)].flatMap(([, line = ""]) => line.split("; "));
	const bare = reads.filter((one) => one.includes(".") && !one.includes("(") && !one.startsWith("wish."));
	expect(bare).toEqual([]);
});
