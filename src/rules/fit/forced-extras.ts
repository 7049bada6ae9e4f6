import type { FactsUnder } from "../../parts/fact-path.ts";
import { type Money, moneyText } from "../../parts/money.ts";
import { defineRule } from "../define-rule.ts";
import { extrasOf, extrasRead } from "../extras-of.ts";
import { moneyLeft } from "../money-left.ts";
import { fail, goodToKnow, type Outcome, pass } from "../outcome.ts";

/** Less than this part of the board's price for each extra is a tight reserve (own convention). */
const reserveAnExtra = 0.1;

const mayRead = [...extrasRead, "board.price", "priceCap", "moneyInAll", "moneySpent", "moneyPlanned"] as const;
type Facts = FactsUnder<never, (typeof mayRead)[number]>;

interface Words {
	readonly extras: readonly string[];
	readonly price: string;
	readonly reserve: string;
}

/**
 * What a board makes its buyer pay besides its own price, where another board would not. What such things cost is on no
 * page of the board, so the reserve below the limit is told beside them and no sum is made up.
 */
export const forcedExtras = defineRule({
	id: "fit/forced-extras",
	scope: "board",
	label: "What must be bought besides",
	wayOut: "a board that has more on it",
	asks: "What does this board make you buy besides, and is money left for it?",
	why: "A cheap board can turn out the dearer one, once adapters and hubs are added.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead,
	saysNothing: ["none"],
	messages: {
		none: () => "Nothing has to be bought besides, as far as is known.",
		noLimit: ({ extras }: { extras: readonly string[] }) =>
			`Its price is not all you pay. To be bought besides: ${extras.join(", ")}.`,
		covered: ({ extras, price, reserve }: Words) =>
			`It costs ${price}, which leaves ${reserve}. To be bought besides: ${extras.join(", ")}.`,
		tight: ({ extras, price, reserve }: Words) =>
			`It costs ${price}, so only ${reserve} of your limit is left. You must also buy: ${extras.join(", ")}.`,
	},
	advice: {
		tight: () => "Ask what they cost before you decide.",
	},
	check(facts): Outcome {
		const extras = extrasOf(facts).map(({ words }) => words);
		if (extras.length === 0) return pass("none");
		const [price, limit] = [facts["board.price"], limitOf(facts)];
		if (!price || !limit || limit.currency !== price.currency || limit.minor < price.minor)
			return goodToKnow("noLimit", { extras });
		const reserveMinor = limit.minor - price.minor;
		const reserve = moneyText({ minor: reserveMinor, currency: price.currency });
		const words = { extras, price: moneyText(price), reserve };
		return reserveMinor < reserveAnExtra * extras.length * price.minor
			? fail("tight", words)
			: goodToKnow("covered", words);
	},
});

/** The stricter of the board's own limit and the money left; two currencies bind nothing here. */
function limitOf({ priceCap, moneyInAll, moneySpent, moneyPlanned }: Facts): Money | null {
	const left = moneyLeft(moneyInAll, moneySpent, moneyPlanned);
	if (!priceCap || !left) return priceCap ?? left;
	return left.currency === priceCap.currency && left.minor < priceCap.minor ? left : priceCap;
}
