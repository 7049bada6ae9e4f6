import type { Board } from "../../../src/parts/board.ts";
import { usedOffer } from "../../../src/rules/quality/used-offer.ts";
import { testRule } from "../test-rule.ts";

type Offer = NonNullable<Board["offers"]>[number];

const euros = (minor: number) => ({ minor, currency: "EUR" });
const offer = (condition: Offer["condition"], minor: number, more: Partial<Offer> = {}): Offer => ({
	condition,
	price: euros(minor),
	...more,
});
const dollars = (minor: number) => ({ price: { minor, currency: "USD" } });
const used = (price: string, back = "") => ({ condition: "used", price, back });

// The twentieth is this project's own convention.
testRule(usedOffer, {
	fits: {
		"no offers": [{ board: { price: euros(20_000) } }, "notAsked"],
		"new ones only": [{ board: { price: euros(20_000), offers: [offer("new", 19_000)] } }, "notAsked"],
		"a cent less than a twentieth saved": [
			{ board: { price: euros(20_000), offers: [offer("used", 19_001)] } },
			"little",
			{ price: "EUR 190.01", fresh: "EUR 200.00" },
		],
		"dearer than new": [
			{ board: { price: euros(10_000), offers: [offer("opened", 10_500)] } },
			"little",
			{ price: "EUR 105.00", fresh: "EUR 100.00" },
		],
		"both cost nothing": [
			{ board: { price: euros(0), offers: [offer("used", 0)] } },
			"little",
			{ price: "EUR 0.00", fresh: "EUR 0.00" },
		],
		"a new offer below the price noted": [
			{ board: { price: euros(20_000), offers: [offer("used", 15_000), offer("new", 15_500)] } },
			"little",
			{ price: "EUR 150.00", fresh: "EUR 155.00" },
		],
		"used and new in two currencies": [
			{ board: { price: euros(20_000), offers: [offer("used", 0, dollars(10_000))] } },
			"otherCurrency",
			used("USD 100.00"),
		],
	},
	cautions: {
		"just a twentieth saved": [
			{ board: { price: euros(20_000), offers: [offer("used", 19_000)] } },
			"good-to-know",
			"saves",
			{ ...used("EUR 190.00"), saved: "EUR 10.00" },
		],
		"opened, with a day until which it can go back": [
			{ board: { price: euros(15_900), offers: [offer("opened", 13_900, { returnableUntil: "2026-12-20" })] } },
			"good-to-know",
			"saves",
			{ condition: "opened", price: "EUR 139.00", back: "2026-12-20", saved: "EUR 20.00" },
		],
		"the cheapest of several, against the cheapest new one": [
			{
				board: {
					offers: [offer("new", 20_000), offer("opened", 17_000), offer("used", 15_000), offer("new", 18_000)],
				},
			},
			"good-to-know",
			"saves",
			{ ...used("EUR 150.00"), saved: "EUR 30.00" },
		],
		"what is asked in another currency is left out": [
			{ board: { price: euros(20_000), offers: [offer("used", 0, dollars(100)), offer("used", 15_000)] } },
			"good-to-know",
			"saves",
			{ ...used("EUR 150.00"), saved: "EUR 50.00" },
		],
		"a new one in another currency is left out": [
			{ board: { price: euros(20_000), offers: [offer("new", 0, dollars(100)), offer("used", 15_000)] } },
			"good-to-know",
			"saves",
			{ ...used("EUR 150.00"), saved: "EUR 50.00" },
		],
		"used ones only": [
			{ board: { offers: [offer("used", 6600), offer("used", 5800, { returnableUntil: "2026-12-03" })] } },
			"plan-around",
			"onlyUsed",
			used("EUR 58.00", "2026-12-03"),
		],
		"used ones only, in two currencies: the first counts": [
			{ board: { offers: [offer("used", 6600), offer("opened", 0, dollars(100))] } },
			"plan-around",
			"onlyUsed",
			used("EUR 66.00"),
		],
		"opened ones only": [
			{ board: { offers: [offer("opened", 6600)] } },
			"plan-around",
			"onlyUsed",
			{ condition: "opened", price: "EUR 66.00", back: "" },
		],
	},
	without: { cannotTell: "an offer that nobody has noted is none" },
});
