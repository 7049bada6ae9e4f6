import { expect, test } from "vitest";
import { daysBetween, priceWords } from "../../src/sheet/price-words.ts";

const board = (more: object) => ({ id: "a-board", name: "A Board", ...more });
const price = { minor: 18_900, currency: "EUR" };

test.each([
	["no board", undefined, "price not known"],
	["no price", board({ checkedOn: "2026-11-20" }), "price not known"],
	["a price of no day", board({ price }), "EUR 189.00"],
	["a price of today", board({ price, checkedOn: "2026-11-24" }), "EUR 189.00"],
	["a price of tomorrow", board({ price, checkedOn: "2026-11-25" }), "EUR 189.00"],
	["a price sixty days old", board({ price, checkedOn: "2026-09-25" }), "EUR 189.00"],
	["one day more", board({ price, checkedOn: "2026-09-24" }), "EUR 189.00 (seen 61 days ago: look again)"],
	["a free board", board({ price: { minor: 0, currency: "EUR" } }), "EUR 0.00"],
	["a currency without cents", board({ price: { minor: 18_900, currency: "JPY" } }), "JPY 18900"],
	["a currency with thousandths", board({ price: { minor: 18_900, currency: "KWD" } }), "KWD 18.900"],
])("%s", (_, given, words) => {
	expect(priceWords(given, "2026-11-24")).toBe(words);
});

test("days between dates, over months, leap days and backwards", () => {
	expect(daysBetween("2026-11-24", "2026-11-24")).toBe(0);
	expect(daysBetween("2028-02-28", "2028-03-01")).toBe(2);
	expect(daysBetween("2027-02-28", "2027-03-01")).toBe(1);
	expect(daysBetween("2026-01-01", "2027-01-01")).toBe(365);
	expect(daysBetween("2026-03-02", "2026-03-01")).toBe(-1);
});
