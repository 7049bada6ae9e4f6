import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ListEntry, wholeList, withoutRepeats } from "../../src/reading/list-blocks.ts";

const entry = (facts: Readonly<Record<string, unknown>>, more: Partial<ListEntry> = {}): ListEntry => ({
	line: 1,
	quote: JSON.stringify(facts),
	block: "Storage",
	facts,
	...more,
});
const factsOf = (list: readonly ListEntry[]) => list.map(({ facts }) => facts);

test("entries of one block stay as they are", () => {
	const list = [entry({ generation: 5 }), entry({ generation: 4 }, { line: 2 }), entry({ generation: 4 }, { line: 3 })];
	expect(wholeList(list)).toEqual({ entries: list, rivals: [] });
	expect(wholeList([])).toEqual({ entries: [], rivals: [] });
});

test("the same list in two blocks counts once, with what each tells", () => {
	const { entries, rivals } = wholeList([
		entry({ lanes: 4, generation: 5 }),
		entry({ lanes: 4 }, { block: "Details", name: "M2_1" }),
	]);
	expect(rivals).toEqual([]);
	expect(entries).toMatchObject([{ name: "M2_1", facts: { lanes: 4, generation: 5 } }]);
});

test("two lists that do not agree are rivals", () => {
	const { entries, rivals } = wholeList([
		entry({ lanes: 4, generation: 5 }),
		entry({ lanes: 2 }, { block: "Details" }),
	]);
	expect([factsOf(entries), rivals.map(factsOf)]).toEqual([[{ lanes: 4, generation: 5 }], [[{ lanes: 2 }]]]);
});

test("a summary may leave things out, another list may not", () => {
	const whole = [entry({ lanes: 4 }), entry({ lanes: 4 }, { line: 2 })];
	const summary = entry({ lanes: 4 }, { block: "Features", isOverview: true });
	expect(wholeList([...whole, summary]).rivals).toEqual([]);
	expect(wholeList([...whole, { ...summary, isOverview: false }]).rivals).toHaveLength(1);
});

test("things of one name are one thing", () => {
	const { entries } = wholeList([
		entry({ generation: 4 }, { name: "M2_1" }),
		entry({ generation: 5, lanes: 4 }, { name: "M2_1", line: 2 }),
	]);
	expect(factsOf(entries)).toEqual([{ generation: 5, lanes: 4 }]);
});

test("what holds for one processor and the other is one thing, with the better of each", () => {
	const { entries, rivals } = wholeList([
		entry({ generation: 5, lanes: 8 }, { series: "9000" }),
		entry({ generation: 4, lanes: 16 }, { series: "8000", line: 2 }),
		entry({ generation: 3 }, { line: 3 }),
	]);
	expect([factsOf(entries), rivals]).toEqual([[{ generation: 5, lanes: 16 }, { generation: 3 }], []]);
});

test("with a processor that leaves some unused, the longer list has the best case of each", () => {
	const { entries, rivals } = wholeList([
		entry({ lanes: 16 }, { series: "9000" }),
		entry({ lanes: 8 }, { series: "8000", line: 2 }),
		entry({ lanes: 4 }, { series: "8000", line: 3 }),
	]);
	expect([factsOf(entries), rivals]).toEqual([[{ lanes: 16 }, { lanes: 4 }], []]);
});

test("other things by name with another processor are rivals", () => {
	const { rivals } = wholeList([
		entry({ lanes: 8 }, { series: "9000", name: "PCIE1" }),
		entry({ lanes: 8 }, { series: "8000", line: 2, name: "PCIE2" }),
		entry({ lanes: 4 }, { series: "8000", line: 3, name: "PCIE3" }),
	]);
	expect(rivals).toHaveLength(1);
});

test("a count without any facts, beside as many things with facts, is their sum", () => {
	const bare = { quote: "2 x M.2", line: 1 };
	const { entries } = wholeList([
		entry({}, bare),
		entry({}, bare),
		entry({ generation: 5 }, { line: 2 }),
		entry({ generation: 4 }, { line: 3 }),
	]);
	expect(factsOf(entries)).toEqual([{ generation: 5 }, { generation: 4 }]);
});

test("what one list assumes the other may state", () => {
	const { entries } = wholeList([
		entry({ plug: "A", gbps: 5 }, { assumed: ["plug"] }),
		entry({ plug: "C" }, { block: "Details" }),
	]);
	expect(entries[0]).toMatchObject({ facts: { plug: "C", gbps: 5 } });
	expect(entries[0]).not.toHaveProperty("assumed");
});

test("a thing of which less is told is paired with its like, not with a fuller one", () => {
	const list = (block: string) => [
		entry({ plug: "A" }, { block }),
		entry({ plug: "A", gbps: 0.48 }, { block, line: 2 }),
	];
	const { entries, rivals } = wholeList([...list("Back"), ...list("Details")]);
	expect([factsOf(entries), rivals]).toEqual([[{ plug: "A" }, { plug: "A", gbps: 0.48 }], []]);
});

describe("a line that stands twice in one block", () => {
	const line = (quote: string, at: number) => entry({ quote }, { quote, line: at });
	test("next to itself means two things", () => {
		const list = [line("1 x SATA", 1), line("1 x SATA", 2)];
		expect(withoutRepeats(list)).toEqual(list);
		expect(wholeList(list)).toEqual({ entries: list, rivals: [] });
	});
	test("further down, by itself, leaves it open", () => {
		const { entries, rivals } = wholeList([line("1 x SATA", 1), line("1 x SATA", 9)]);
		expect([entries.length, rivals.map((list) => list.length)]).toEqual([1, [2]]);
	});
	test("further down with all others of its list is a second print", () => {
		const list = [line("1 x SATA", 1), line("1 x U.2", 2), line("1 x SATA", 9), line("1 x U.2", 10)];
		expect(wholeList(list)).toEqual({ entries: list.slice(0, 2), rivals: [] });
	});
});

test("never more entries than told, and none that was not", () => {
	const any = fc.record({
		generation: fc.integer({ min: 3, max: 5 }),
		block: fc.constantFrom("a", "b"),
		line: fc.integer({ min: 1, max: 9 }),
		name: fc.option(fc.constantFrom("M2_1", "M2_2"), { nil: undefined }),
	});
	fc.assert(
		fc.property(fc.array(any, { maxLength: 12 }), (all) => {
			const list = all.map(({ generation, name, ...more }) =>
				entry({ generation }, { ...more, ...(name === undefined ? {} : { name }) }),
			);
			const { entries } = wholeList(list);
			expect(entries.length).toBeLessThanOrEqual(list.length);
			for (const { facts } of entries)
				expect(list.map((one) => one.facts["generation"])).toContain(facts["generation"]);
		}),
	);
});
