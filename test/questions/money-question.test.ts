import { describe, expect, test } from "vitest";
import type { AnswerValue } from "../../src/parts/answers-file.ts";
import { emptyBuildFacts } from "../../src/parts/build.ts";
import { isMoneyOf, moneyQuestion } from "../../src/questions/money-question.ts";
import { contextOf, madeUpWords } from "./made-up-question.ts";

const inEuro = contextOf();
const inFrancs = contextOf({ boards: [{ id: "a", name: "A", price: { minor: 9_900, currency: "CHF" } }] });
const newMoney = contextOf({ boards: [{ id: "a", name: "A", price: { minor: 9_900, currency: "QQQ" } }] });
const all = moneyQuestion({ ...madeUpWords, want: "moneyInAll", zero: false });
const spent = moneyQuestion({ ...madeUpWords, want: "moneySpent", zero: true });

test("is typed, with nothing to pick, and asked of everybody unless it says otherwise", () => {
	expect(all.kind).toBe("number");
	expect(all.options(inEuro, emptyBuildFacts)).toEqual([]);
	expect(all.applies(emptyBuildFacts)).toBe(true);
	const never = moneyQuestion({ ...madeUpWords, want: "moneySpent", zero: true, applies: () => false });
	expect(never.applies(emptyBuildFacts)).toBe(false);
});

describe("what is typed", () => {
	test.each([
		["900", { minor: 90_000, currency: "EUR" }],
		["1.250,50", { minor: 125_050, currency: "EUR" }],
		["900 USD", { minor: 90_000, currency: "USD" }],
	])("%j", (text, value) => {
		for (const question of [all, spent]) expect(question.read?.(text, inEuro)).toEqual({ value });
	});

	test("counts in the currency of the market's prices where none is named", () => {
		expect(all.read?.("900", inFrancs)).toEqual({ value: { minor: 90_000, currency: "CHF" } });
		expect(spent.read?.("0", inFrancs)).toEqual({ value: { minor: 0, currency: "CHF" } });
	});

	test.each(["0", "none", " Nothing "])("%j is a sum only where nothing can be one", (text) => {
		expect(spent.read?.(text, inEuro)).toEqual({ value: { minor: 0, currency: "EUR" } });
		expect(all.read?.(text, inEuro)).toHaveProperty("problem");
	});

	test.each(["", "much", "-5", "900 QQQ"])("%j is no sum", (text) => {
		for (const question of [all, spent])
			expect(question.read?.(text, inEuro)).toEqual({
				problem: "Type the sum as a number, such as 900 or 900 EUR.",
			});
		expect(all.read?.("much", inFrancs)).toEqual({ problem: expect.stringContaining("900 CHF") });
	});
});

describe("a value from a file", () => {
	test("is a sum in a currency there is, or in the market's own", () => {
		expect(all.expected({ minor: 1, currency: "JPY" }, inEuro)).toBeNull();
		expect(all.expected({ minor: 1, currency: "QQQ" }, newMoney)).toBeNull();
		expect(isMoneyOf(newMoney.market, { minor: 1, currency: "QQQ" })).toBe(true);
		expect(isMoneyOf(inEuro.market, { minor: 1, currency: "QQQ" })).toBe(false);
	});

	test("is nothing only where that can be", () => {
		const nothing = { minor: 0, currency: "EUR" };
		expect(spent.expected(nothing, inEuro)).toBeNull();
		expect(all.expected(nothing, inEuro)).toMatch(/"minor"/);
	});

	test.each<[AnswerValue]>([
		[900],
		["900"],
		["no-limit"],
		[{ minor: -1, currency: "EUR" }],
		[{ minor: 1.5, currency: "EUR" }],
		[{ minor: 100, currency: "eur" }],
		[{ minor: 100, currency: "QQQ" }],
		[{ part: "a" }],
		[[]],
	])("not %o", (value) => {
		for (const question of [all, spent])
			expect(question.expected(value, inEuro)).toBe('{"minor": a whole number, "currency": a code such as "EUR"}');
	});
});

test("sets its own want and no other, and is said with the currency in front", () => {
	const value = { minor: 90_050, currency: "EUR" };
	expect(all.sets(emptyBuildFacts, value, inEuro)).toEqual({ ...emptyBuildFacts, moneyInAll: value });
	expect(spent.sets(emptyBuildFacts, value, inEuro)).toEqual({ ...emptyBuildFacts, moneySpent: value });
	expect(all.says(value, inEuro)).toBe("EUR 900.50");
	expect(all.says({ minor: 90_050, currency: "JPY" }, inEuro)).toBe("JPY 90050");
});
