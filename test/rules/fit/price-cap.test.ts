import { priceCap } from "../../../src/rules/fit/price-cap.ts";
import { testRule } from "../test-rule.ts";

const eur = (minor: number) => ({ minor, currency: "EUR" });

testRule(priceCap, {
	fits: {
		"exactly the limit": [
			{ board: { price: eur(18_000) }, priceCap: eur(18_000) },
			"within",
			{ price: "EUR 180.00", cap: "EUR 180.00" },
		],
		"one cent below": [
			{ board: { price: eur(17_999) }, priceCap: eur(18_000) },
			"within",
			{ price: "EUR 179.99", cap: "EUR 180.00" },
		],
		"given away": [{ board: { price: eur(0) }, priceCap: eur(1) }, "within", { price: "EUR 0.00", cap: "EUR 0.01" }],
		"no limit": [{ board: { price: eur(99_999) } }, "noCap"],
		"no limit and no price": [{ board: {} }, "noCap"],
	},
	fails: {
		"one cent over": [
			{ board: { price: eur(18_001) }, priceCap: eur(18_000) },
			"over",
			{ price: "EUR 180.01", cap: "EUR 180.00", overMinor: 1, over: "EUR 0.01", digits: 2 },
		],
		"a currency without a smaller unit": [
			{ board: { price: { minor: 30_001, currency: "JPY" } }, priceCap: { minor: 30_000, currency: "JPY" } },
			"over",
			{ price: "JPY 30001", cap: "JPY 30000", overMinor: 1, over: "JPY 1", digits: 0 },
		],
	},
	cannotTell: {
		"no price": [{ board: {}, priceCap: eur(18_000) }, ["board.price"], "noPrice", { cap: "EUR 180.00" }],
		"two currencies": [
			{ board: { price: { minor: 100, currency: "GBP" } }, priceCap: eur(18_000) },
			["board.price"],
			"otherCurrency",
			{ price: "GBP 1.00", cap: "EUR 180.00" },
		],
	},
	needs: {
		"a limit": [{ priceCap: eur(18_000) }, "At most EUR 180.00, postage included."],
		"no limit": [{}, null],
	},
});
