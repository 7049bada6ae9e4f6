import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { moneyText } from "../../src/parts/money.ts";
import { readMoney } from "../../src/questions/read-money.ts";

describe("sums as people type them", () => {
	test.each([
		["180", "EUR", 18_000],
		["  180  ", "EUR", 18_000],
		["180.50", "EUR", 18_050],
		["180,50", "EUR", 18_050],
		["180.5", "EUR", 18_050],
		["EUR 180", "EUR", 18_000],
		["180 EUR", "EUR", 18_000],
		["eur180", "EUR", 18_000],
		["180€", "EUR", 18_000],
		["€ 180,00", "EUR", 18_000],
		["$180", "USD", 18_000],
		["£1,200", "GBP", 120_000],
		["1 200 EUR", "EUR", 120_000],
		["1.200,00 EUR", "EUR", 120_000],
		["1,200.00 USD", "USD", 120_000],
		["1'200 CHF", "CHF", 120_000],
		["1.234.567", "EUR", 123_456_700],
		["1 234 567,89", "EUR", 123_456_789],
		["1,234", "EUR", 123_400],
		["0.01", "EUR", 1],
		["10000000", "EUR", 1_000_000_000],
		["30000 JPY", "JPY", 30_000],
		["30,000 JPY", "JPY", 30_000],
		["60 BHD", "BHD", 60_000],
		["60.5 BHD", "BHD", 60_500],
	])("%j is %s %i in the smallest unit", (text, currency, minor) => {
		expect(readMoney(text, "EUR")).toEqual({ minor, currency });
	});

	test("a bare number is in the currency of the market, whichever that is", () => {
		expect(readMoney("180", "JPY")).toEqual({ minor: 180, currency: "JPY" });
		expect(readMoney("180 zzq", "ZZQ")).toEqual({ minor: 18_000, currency: "ZZQ" });
	});
});

test.each([
	["nothing", ""],
	["words", "a lot"],
	["zero", "0"],
	["less than a cent", "0.00"],
	["minus", "-180"],
	["more than any part costs", "10000000.01"],
	["a word that is no currency", "max 180"],
	["another", "180 all in"],
	["one more", "180 abc"],
	["two currencies", "EUR 180 USD"],
	["a sign and a code that differ", "€180 USD"],
	["a range", "150-180"],
	["two decimal signs", "1.2.3"],
	["groups of two", "1,23,456"],
	["a space where a point was meant", "180 50"],
	["three digits behind four", "1234.567"],
	["two signs between groups", "1.234,567"],
	["a sign at the end", "180."],
	["an unknown sign", "¤180"],
	["a number in words of a computer", "1e3"],
	["hexadecimal", "0x10"],
])("%s is no sum: %j", (_, text) => {
	expect(readMoney(text, "EUR")).toBeNull();
});

test("what is printed is read back as the same sum", () => {
	fc.assert(
		fc.property(fc.integer({ min: 1, max: 1_000_000_000 }), fc.constantFrom("EUR", "USD", "JPY"), (minor, currency) => {
			expect(readMoney(moneyText({ minor, currency }), "GBP")).toEqual({ minor, currency });
		}),
	);
});

test("no text makes it throw, and what it gives is a sum of money", () => {
	const typed = fc
		.array(fc.constantFrom("1", "80", ".", ",", " ", "'", "EUR", "€", "x", "-", "0"))
		.map((all) => all.join(""));
	fc.assert(
		fc.property(fc.oneof(fc.string(), typed), (text) => {
			const money = readMoney(text, "EUR");
			if (money) {
				expect(Number.isInteger(money.minor) && money.minor > 0).toBe(true);
				expect(money.currency).toMatch(/^[A-Z]{3}$/);
			}
		}),
	);
});

test("ten thousand line ends behind a sum take no time, and no sum is that long", () => {
	expect(readMoney(`1 234${"\r\n".repeat(5000)}`, "EUR")).toEqual({ minor: 123_400, currency: "EUR" });
	expect(readMoney(`1${" 2".repeat(5000)}`, "EUR")).toBeNull();
	expect(readMoney(`1${"'".repeat(20_000)}!`, "EUR")).toBeNull();
});
