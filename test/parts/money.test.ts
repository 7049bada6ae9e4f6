import { expect, test } from "vitest";
import { isCurrency, minorDigits, money, moneyText } from "../../src/parts/money.ts";

// ISO 4217, by the runtime's own table.
test.each([
	["EUR", 2, 18_900, "EUR 189.00"],
	["EUR", 2, 5, "EUR 0.05"],
	["EUR", 2, 0, "EUR 0.00"],
	["JPY", 0, 18_900, "JPY 18900"],
	["BHD", 3, 18_900, "BHD 18.900"],
	["EUR", 2, 1_000_000_000, "EUR 10000000.00"],
])("%s prints %i digits: %i is %s", (currency, digits, minor, text) => {
	expect(minorDigits(currency)).toBe(digits);
	expect(moneyText({ minor, currency })).toBe(text);
});

test.each(["EUR", "USD", "GBP", "JPY", "BHD", "CHF", "PLN"])("%s is a currency", (code) => {
	expect(isCurrency(code)).toBe(true);
});

test.each(["MAX", "eur", "", "EURO", "€"])("%j is none", (code) => {
	expect(isCurrency(code)).toBe(false);
});

test.each([
	{ minor: 1.5, currency: "EUR" },
	{ minor: -1, currency: "EUR" },
	{ minor: 1_000_000_001, currency: "EUR" },
	{ minor: Number.POSITIVE_INFINITY, currency: "EUR" },
	{ minor: 1, currency: "eur" },
	{ minor: 1, currency: "EURO" },
	{ minor: 1 },
	{ currency: "EUR" },
	{ minor: 1, currency: "EUR", cents: 2 },
	189,
])("%o is no sum of money", (value) => {
	expect(money.safeParse(value).success).toBe(false);
});
