import { minorDigits, moneyText } from "../../parts/money.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, pass } from "../outcome.ts";

/** The price may not exceed what the person can spend; it is a cap and never part of a score. */
export const priceCap = defineRule({
	id: "fit/price-cap",
	scope: "board",
	label: "Price",
	wayOut: "a higher limit for the price",
	asks: "Is the board within your money?",
	why: "Money spent on the board is missing elsewhere, and past your limit it is not on offer at all.",
	source: "own-convention",
	severity: "stops",
	reads: [],
	mayRead: ["board.price", "priceCap"],
	messages: {
		noCap: () => "You have set no limit.",
		noPrice: ({ cap }: { cap: string }) => `Its price is not known; your limit is ${cap}.`,
		within: ({ price, cap }: { price: string; cap: string }) => `It costs ${price}; your limit is ${cap}.`,
		over: ({ price, cap, over }: { price: string; cap: string; over: string }) =>
			`It costs ${price}, ${over} more than your limit of ${cap}.`,
		otherCurrency: ({ price, cap }: { price: string; cap: string }) =>
			`Its price is ${price}, your limit ${cap}: two currencies, and none is converted here.`,
		need: ({ cap }: { cap: string }) => `At most ${cap}, postage included.`,
	},
	check({ "board.price": price, priceCap: cap }) {
		if (!cap) return pass("noCap");
		if (!price) return cannotTell(["board.price"], "noPrice", { cap: moneyText(cap) });
		const words = { price: moneyText(price), cap: moneyText(cap) };
		if (price.currency !== cap.currency) return cannotTell(["board.price"], "otherCurrency", words);
		if (price.minor <= cap.minor) return pass("within", words);
		const overMinor = price.minor - cap.minor;
		return fail("over", {
			...words,
			overMinor,
			over: moneyText({ minor: overMinor, currency: cap.currency }),
			digits: minorDigits(cap.currency),
		});
	},
	needs: ({ priceCap: cap }) => (cap ? { messageId: "need", data: { cap: moneyText(cap) } } : null),
});
