import { expect, test } from "vitest";
import { factCollector } from "../../src/reading/fact-collector.ts";

const at = (line: number) => ({ line, quote: `line ${line}` });

test("what is told twice counts once, with its first line", () => {
	const all = factCollector();
	all.found("socket", "KT7", at(1));
	all.found("socket", "KT7", at(2));
	expect(all.settled()).toEqual({
		facts: [{ fact: "socket", value: "KT7", standing: "stated", ...at(1) }],
		doubts: [],
	});
});

test("two values are a doubt with both, and no fact", () => {
	const all = factCollector();
	all.found("socket", "KT7", at(1));
	all.found("socket", "KT9", at(3));
	const { facts, doubts } = all.settled();
	expect(facts).toEqual([]);
	expect(doubts).toEqual([
		{
			fact: "socket",
			might: ["KT7", "KT9"],
			line: 1,
			quote: "line 1 / line 3",
			why: "The text gives more than one value.",
		},
	]);
});

test("lists are alike by what is in them", () => {
	const all = factCollector();
	all.found("wiredGbps", [1, 2.5], at(1));
	all.found("wiredGbps", [1, 2.5], at(2));
	expect(all.settled().facts).toHaveLength(1);
});

test("what is stated goes before what is assumed", () => {
	const all = factCollector();
	all.found("widthMm", 305, at(1), "assumed");
	all.found("widthMm", 300, at(2));
	expect(all.settled()).toEqual({
		facts: [{ fact: "widthMm", value: 300, standing: "stated", ...at(2) }],
		doubts: [],
	});
});

test("a clear line settles what another left open, if both can be right", () => {
	const open = (value: number) => {
		const all = factCollector();
		all.doubted("memory.maxGb", [64, 128], at(1), "Which is it?");
		all.doubted("memory.maxGb", [64, 128], at(1), "Which is it?");
		all.found("memory.maxGb", value, at(2));
		return all.settled();
	};
	expect(open(128)).toMatchObject({ facts: [{ value: 128 }], doubts: [] });
	expect(open(32)).toMatchObject({ facts: [], doubts: [{ might: [32, 64, 128], why: "Which is it?" }] });
});

test("a doubt alone stays, once", () => {
	const all = factCollector();
	all.doubted("form", [], at(1), "Why?");
	all.doubted("form", [], at(1), "Why?");
	expect(all.settled()).toEqual({ facts: [], doubts: [{ fact: "form", might: [], ...at(1), why: "Why?" }] });
});

test("a hundred thousand values take no time", () => {
	const all = factCollector();
	const before = performance.now();
	for (let value = 0; value < 100_000; value++) all.found("socket", `KT${value}`, at(value));
	expect(all.settled().facts).toEqual([]);
	expect(performance.now() - before).toBeLessThan(2000);
});
