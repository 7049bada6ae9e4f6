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
		"only used ones, the cheapest exactly at the limit": [
			{
				board: {
					offers: [
						{ price: eur(20_000), condition: "opened" },
						{ price: eur(18_000), condition: "used" },
						{ price: { minor: 1, currency: "GBP" }, condition: "used" },
					],
				},
				priceCap: eur(18_000),
			},
			"within",
			{ price: "EUR 180.00", cap: "EUR 180.00" },
		],
		"no limit": [{ board: { price: eur(99_999) } }, "noCap"],
		"no limit and no price": [{ board: {} }, "noCap"],
		"exactly what is left": [
			{ board: { price: eur(18_000) }, moneyInAll: eur(100_000), moneySpent: eur(82_000) },
			"withinLeft",
			{ price: "EUR 180.00", left: "EUR 180.00" },
		],
		"nobody has said what is spent": [
			{ board: { price: eur(18_000) }, moneyInAll: eur(18_000) },
			"withinLeft",
			{ price: "EUR 180.00", left: "EUR 180.00" },
		],
		"within both, less is left than the limit": [
			{ board: { price: eur(15_000) }, priceCap: eur(18_000), moneyInAll: eur(16_000), moneySpent: eur(0) },
			"withinLeft",
			{ price: "EUR 150.00", left: "EUR 160.00" },
		],
		"within both, the limit is the stricter": [
			{ board: { price: eur(15_000) }, priceCap: eur(16_000), moneyInAll: eur(18_000), moneySpent: eur(0) },
			"within",
			{ price: "EUR 150.00", cap: "EUR 160.00" },
		],
		"spent, but nobody has said of how much": [{ board: { price: eur(99_999) }, moneySpent: eur(100) }, "noCap"],
		"all the money in one currency, what is spent in another": [
			{ board: { price: eur(99_999) }, moneyInAll: eur(10_000), moneySpent: { minor: 1, currency: "GBP" } },
			"noCap",
		],
	},
	fails: {
		"a new one over the limit, whatever used ones cost": [
			{
				board: { price: eur(18_001), offers: [{ price: eur(9_000), condition: "used" }] },
				priceCap: eur(18_000),
			},
			"over",
			{ price: "EUR 180.01", cap: "EUR 180.00", overMinor: 1, over: "EUR 0.01", digits: 2 },
		],
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
		"one cent more than is left": [
			{ board: { price: eur(18_001) }, moneyInAll: eur(100_000), moneySpent: eur(82_000) },
			"overLeft",
			{ price: "EUR 180.01", left: "EUR 180.00", overMinor: 1, over: "EUR 0.01", digits: 2 },
		],
		"more is spent than there was": [
			{ board: { price: eur(5_000) }, moneyInAll: eur(80_000), moneySpent: eur(82_000) },
			"overLeft",
			{ price: "EUR 50.00", left: "EUR 0.00", overMinor: 5_000, over: "EUR 50.00", digits: 2 },
		],
		"within the limit, but not what is left": [
			{ board: { price: eur(15_000) }, priceCap: eur(18_000), moneyInAll: eur(14_000), moneySpent: eur(0) },
			"overLeft",
			{ price: "EUR 150.00", left: "EUR 140.00", overMinor: 1_000, over: "EUR 10.00", digits: 2 },
		],
		"over both, the limit is the stricter": [
			{ board: { price: eur(15_000) }, priceCap: eur(13_000), moneyInAll: eur(14_000), moneySpent: eur(0) },
			"over",
			{ price: "EUR 150.00", cap: "EUR 130.00", overMinor: 2_000, over: "EUR 20.00", digits: 2 },
		],
		"the limit in another currency, and more than is left": [
			{ board: { price: eur(15_000) }, priceCap: { minor: 1, currency: "GBP" }, moneyInAll: eur(14_000) },
			"overLeft",
			{ price: "EUR 150.00", left: "EUR 140.00", overMinor: 1_000, over: "EUR 10.00", digits: 2 },
		],
	},
	cannotTell: {
		"no price, and money left": [
			{ board: {}, moneyInAll: eur(100_000), moneySpent: eur(82_000) },
			["board.price"],
			"noPriceLeft",
			{ left: "EUR 180.00" },
		],
		"no price, a limit and less left": [
			{ board: {}, priceCap: eur(18_000), moneyInAll: eur(10_000) },
			["board.price"],
			"noPriceLeft",
			{ left: "EUR 100.00" },
		],
		"money left in another currency": [
			{ board: { price: { minor: 100, currency: "GBP" } }, moneyInAll: eur(18_000) },
			["board.price"],
			"otherCurrencyLeft",
			{ price: "GBP 1.00", left: "EUR 180.00" },
		],
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
		"money left once the parts that were picked are paid": [
			{ moneyInAll: eur(100_000), moneySpent: eur(50_000), moneyPlanned: eur(32_000) },
			"At most EUR 180.00, postage included: that is left once the parts you picked are paid.",
		],
		"money left": [
			{ moneyInAll: eur(100_000), moneySpent: eur(82_000) },
			"At most EUR 180.00, postage included: no more of your money is left.",
		],
		"a limit, and less left": [
			{ priceCap: eur(18_000), moneyInAll: eur(10_000) },
			"At most EUR 100.00, postage included: no more of your money is left.",
		],
		"a limit, and more left": [
			{ priceCap: eur(18_000), moneyInAll: eur(20_000) },
			"At most EUR 180.00, postage included.",
		],
		"a limit, and money left in another currency": [
			{ priceCap: eur(18_000), moneyInAll: { minor: 1, currency: "GBP" } },
			"At most EUR 180.00, postage included.",
		],
		"no limit": [{}, null],
	},
});
