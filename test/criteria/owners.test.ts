import { expect, test } from "vitest";
import { allCriteria } from "../../src/criteria/all-criteria.ts";
import { hasOwner, ownersTable } from "../../src/criteria/owners.ts";
import { ownersPage } from "../../src/sheet/rule-book.ts";

test.each([
	["board.rearUsb", true],
	["plan.things", true],
	["power.steady", true],
	["headers.without", true],
	["platform.generations", true],
	["memory.mtPerS", false],
	["wish.features/wireless", false],
	["laterThings", false],
	["boards", false],
])("%s has an owner: %s", (path, expected) => {
	expect(hasOwner(path)).toBe(expected);
});

test("each criterion owns what it reads of a board, and owns something", () => {
	const table = ownersTable();
	expect(table.map(({ criterion }) => criterion)).toEqual(allCriteria);
	for (const { criterion, owns } of table) {
		expect(owns.length, criterion.id).toBeGreaterThan(0);
		for (const path of owns) expect(criterion.reads).toContain(path);
	}
	expect(table.find(({ criterion }) => criterion.id === "connections")?.owns).toEqual([
		"board.rearUsb",
		"board.wiredGbps",
	]);
});

test("the page names every fact once, beside its owner", () => {
	const lines = ownersPage().split("\n");
	for (const { criterion, owns } of ownersTable()) {
		const [line, ...others] = lines.filter((one) => one.startsWith(`- ${criterion.id} (`));
		expect(others).toEqual([]);
		expect(line).toBe(`- ${criterion.id} (${criterion.name}): ${owns.join(", ")}`);
	}
});
