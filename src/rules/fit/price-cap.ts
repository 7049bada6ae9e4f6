import { type Money, minorDigits, moneyText } from "../../parts/money.ts";
import { partPrice } from "../../parts/part-price.ts";
import { defineRule } from "../define-rule.ts";
import { moneyLeft } from "../money-left.ts";
import { cannotTell, fail, type Outcome, pass } from "../outcome.ts";

/**
 * The price may not exceed what the person can spend; it is a cap and never part of a score. Two limits may stand: the
 * one set for the board, and what is left of all the money for the computer. The stricter one decides.
 */
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
	mayRead: ["board.price", "board.offers", "priceCap", "moneyInAll", "moneySpent", "moneyPlanned"],
	saysNothing: ["noCap"],
	messages: {
		noCap: () => "You have set no limit.",
		noPrice: ({ cap }: { cap: string }) => `Its price is not known; your limit is ${cap}.`,
		noPriceLeft: ({ left }: { left: string }) => `Its price is not known; of your money ${left} is left.`,
		within: ({ price, cap }: { price: string; cap: string }) => `It costs ${price}; your limit is ${cap}.`,
		withinLeft: ({ price, left }: { price: string; left: string }) =>
			`It costs ${price}; of your money ${left} is left for it.`,
		over: ({ price, cap, over }: { price: string; cap: string; over: string }) =>
			`It costs ${price}, ${over} more than your limit of ${cap}.`,
		overLeft: ({ price, left, over }: { price: string; left: string; over: string }) =>
			`It costs ${price}; of your money ${left} is left for it, ${over} too little.`,
		otherCurrency: ({ price, cap }: { price: string; cap: string }) =>
			`Its price is ${price}, your limit ${cap}: two currencies, and none is converted here.`,
		otherCurrencyLeft: ({ price, left }: { price: string; left: string }) =>
			`Its price is ${price}, and you have ${left} left: two currencies, and none is converted here.`,
		need: ({ cap }: { cap: string }) => `At most ${cap}, postage included.`,
		needLeftAfter: ({ left }: { left: string }) =>
			`At most ${left}, postage included: that is left once the parts you picked are paid.`,
		needLeft: ({ left }: { left: string }) => `At most ${left}, postage included: no more of your money is left.`,
	},
	check({ "board.price": asked, "board.offers": offers = [], priceCap: cap, moneyInAll, moneySpent, moneyPlanned }) {
		// What a used or opened one costs, where no new one is noted; quality/used-offer says what to look at.
		const price = partPrice({ price: asked, offers })?.price;
		const left = moneyLeft(moneyInAll, moneySpent, moneyPlanned);
		const outcomes = [
			...(cap ? [heldAgainst(cap, price, capMessages)] : []),
			...(left ? [heldAgainst(left, price, leftMessages)] : []),
		];
		if (cap && left && left.minor < cap.minor) outcomes.reverse();
		// Over one limit is out, whatever the other one says; where both say the same, the stricter one is named.
		const [plainest] = ["fail", "unknown", "pass"].flatMap((kind) => outcomes.filter((one) => one.kind === kind));
		return plainest ?? pass("noCap");
	},
	needs({ priceCap: cap, moneyInAll, moneySpent, moneyPlanned }) {
		const left = moneyLeft(moneyInAll, moneySpent, moneyPlanned);
		if (left && (!cap || (left.currency === cap.currency && left.minor < cap.minor)))
			return { messageId: moneyPlanned ? "needLeftAfter" : "needLeft", data: { left: moneyText(left) } };
		return cap ? { messageId: "need", data: { cap: moneyText(cap) } } : null;
	},
});

/** The messages about one limit, and the name of the limit in their data. */
interface LimitMessages {
	readonly name: "cap" | "left";
	readonly within: string;
	readonly over: string;
	readonly noPrice: string;
	readonly otherCurrency: string;
}

const capMessages: LimitMessages = {
	name: "cap",
	within: "within",
	over: "over",
	noPrice: "noPrice",
	otherCurrency: "otherCurrency",
};
const leftMessages: LimitMessages = {
	name: "left",
	within: "withinLeft",
	over: "overLeft",
	noPrice: "noPriceLeft",
	otherCurrency: "otherCurrencyLeft",
};

function heldAgainst(limit: Money, price: Money | undefined, messages: LimitMessages): Outcome {
	const limitWords = { [messages.name]: moneyText(limit) };
	if (!price) return cannotTell(["board.price"], messages.noPrice, limitWords);
	const words = { price: moneyText(price), ...limitWords };
	if (price.currency !== limit.currency) return cannotTell(["board.price"], messages.otherCurrency, words);
	if (price.minor <= limit.minor) return pass(messages.within, words);
	const overMinor = price.minor - limit.minor;
	return fail(messages.over, {
		...words,
		overMinor,
		over: moneyText({ minor: overMinor, currency: limit.currency }),
		digits: minorDigits(limit.currency),
	});
}
