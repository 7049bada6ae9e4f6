import { describe, expect, test } from "vitest";
import { emptyBuildFacts } from "../../../src/parts/build.ts";
import type { Money } from "../../../src/parts/money.ts";
import { budget } from "../../../src/questions/about/budget.ts";
import { contextOf } from "../made-up-question.ts";

const context = contextOf();
const options = (moneyInAll: Money | null) => budget.options(context, { ...emptyBuildFacts, moneyInAll });
const shares = (moneyInAll: Money | null) => options(moneyInAll).filter(({ value }) => value !== "no-limit");

test("there are none while nobody has said how much there is in all", () => {
	expect(shares(null)).toEqual([]);
});

test.each([[null], [{ minor: 90_000, currency: "EUR" }]])("of %o no limit at all is the last line", (whole) => {
	const last = options(whole).at(-1);
	expect(last).toMatchObject({ value: "no-limit", label: "No limit" });
	expect(options(whole)).toHaveLength(shares(whole).length + 1);
	expect(budget.says("no-limit", context)).toBe("No limit");
});

// 10, 15 and 20 percent: common practice, no source.
describe("10, 15 and 20 per cent of the whole, in whole units of the currency", () => {
	test.each<[string, Money, readonly string[]]>([
		["900 euros", { minor: 90_000, currency: "EUR" }, ["EUR 90.00", "EUR 135.00", "EUR 180.00"]],
		["round up: 10.50 is 11", { minor: 10_500, currency: "EUR" }, ["EUR 11.00", "EUR 16.00", "EUR 21.00"]],
		["round down: 10.40 is 10", { minor: 10_400, currency: "EUR" }, ["EUR 10.00", "EUR 16.00", "EUR 21.00"]],
		["money without small coins", { minor: 123_456, currency: "JPY" }, ["JPY 12346", "JPY 18518", "JPY 24691"]],
		[
			"money with a thousand small coins",
			{ minor: 300_000, currency: "KWD" },
			["KWD 30.000", "KWD 45.000", "KWD 60.000"],
		],
	])("%s", (_, whole, labels) => {
		expect(shares(whole).map(({ label }) => label)).toEqual(labels);
	});

	test("each is a sum the question takes, and sets as the limit", () => {
		const lines = shares({ minor: 123_400, currency: "USD" });
		expect(lines.map(({ value }) => value)).toEqual([
			{ minor: 12_300, currency: "USD" },
			{ minor: 18_500, currency: "USD" },
			{ minor: 24_700, currency: "USD" },
		]);
		for (const { value, label } of lines) {
			expect(budget.expected(value, context)).toBeNull();
			expect(budget.sets(emptyBuildFacts, value, context).priceCap).toEqual(value);
			expect(budget.says(value, context)).toBe(label);
		}
	});

	test("each says which share it is", () => {
		expect(shares({ minor: 90_000, currency: "EUR" }).map(({ explanation }) => explanation.split(".")[0])).toEqual([
			"10 per cent of the whole",
			"15 per cent of the whole",
			"20 per cent of the whole",
		]);
	});
});
