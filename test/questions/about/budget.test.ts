import { describe, expect, test } from "vitest";
import type { AnswerValue } from "../../../src/parts/answers-file.ts";
import { emptyBuildFacts } from "../../../src/parts/build.ts";
import type { Market } from "../../../src/parts/market.ts";
import { budget } from "../../../src/questions/about/budget.ts";
import { currencyOf } from "../../../src/questions/money-question.ts";
import { demo, demoContext } from "../../choose/demo.ts";

const pricedIn = (...currencies: (string | null)[]): Market => ({
	...demo,
	parts: {
		...demo.parts,
		board: currencies.map((currency, index) => ({
			id: `board-${index}`,
			name: "A",
			...(currency ? { price: { minor: 100, currency } } : {}),
		})),
	},
});

test.each([
	["180", { minor: 18_000, currency: "EUR" }],
	["180 USD", { minor: 18_000, currency: "USD" }],
	["0", "no-limit"],
	["No limit", "no-limit"],
	[" none ", "no-limit"],
])("%j is read", (text, value) => {
	expect(budget.read?.(text, demoContext)).toEqual({ value });
	expect(budget.expected(value, demoContext)).toBeNull();
});

test.each(["", "a lot", "max 180", "-5", "00"])("%j is not", (text) => {
	expect(budget.read?.(text, demoContext)).toEqual({
		problem: 'Type the sum as a number, such as 180 or 180 EUR; or "no limit".',
	});
});

describe("a value from a file", () => {
	test.each<[AnswerValue]>([
		["unlimited"],
		[180],
		[{ minor: -1, currency: "EUR" }],
		[{ minor: 100, currency: "QQQ" }],
		[{ part: "a" }],
	])("not %o", (value) => {
		expect(budget.expected(value, demoContext)).toContain('"no-limit"');
	});

	test("a code that the runtime does not know yet, but the market's prices have", () => {
		const value = { minor: 100, currency: "QQQ" };
		expect(budget.expected(value, { ...demoContext, market: pricedIn("QQQ") })).toBeNull();
	});
});

test.each<[AnswerValue, object | null, string]>([
	[{ minor: 18_000, currency: "EUR" }, { minor: 18_000, currency: "EUR" }, "EUR 180.00"],
	["no-limit", null, "No limit"],
])("%o sets the cap", (value, priceCap, words) => {
	expect(
		budget.sets({ ...emptyBuildFacts, priceCap: { minor: 1, currency: "EUR" } }, value, demoContext).priceCap,
	).toEqual(priceCap);
	expect(budget.says(value, demoContext)).toBe(words);
});

test.each<[string, Market, string]>([
	["most prices decide", pricedIn("USD", "EUR", "USD", null), "USD"],
	["no price", pricedIn(null), "EUR"],
	["no board", pricedIn(), "EUR"],
	["as many of both: the first", pricedIn("GBP", "USD"), "GBP"],
])("the market's currency: %s", (_, market, currency) => {
	expect(currencyOf(market)).toBe(currency);
});
