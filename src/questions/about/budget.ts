import type { Market } from "../../parts/market.ts";
import { isCurrency, type Money, money, moneyText } from "../../parts/money.ts";
import type { Question } from "../define-question.ts";
import { readMoney } from "../read-money.ts";

const noLimit = "no-limit";

export const budget: Question = {
	id: "about/budget",
	tier: "about",
	kind: "number",
	ask: "How much may the board cost at most?",
	hint: "A sum, such as 180; type 0 for no limit",
	label: "Most the board may cost",
	why: "Boards above your limit are taken out, so that you do not fall for one you cannot pay.",
	whereToFind:
		"Take your whole budget, and take off what the other parts cost. Many builders give the board 10 to 15 percent of it (common practice, no source).",
	changes: "A board that costs more than the sum is taken out. The price never counts in the score.",
	notSure: "No board is taken out for its price.",
	howToFindOut: "Add up what the other parts cost and see what is left.",
	applies: () => true,
	options: () => [],
	read: (text, { market }) => {
		if (/^(0|no limit|none)$/i.test(text.trim())) return { value: noLimit };
		const read = readMoney(text, currencyOf(market));
		return read
			? { value: read }
			: { problem: `Type the sum as a number, such as 180 or 180 ${currencyOf(market)}; or 0 for no limit.` };
	},
	expected: (value, { market }) =>
		value === noLimit || (money.safeParse(value).success && isMoneyOf(market, value as Money))
			? null
			: '{"minor": a whole number, "currency": a code such as "EUR"} or "no-limit"',
	sets: (facts, value) => ({ ...facts, priceCap: value === noLimit ? null : (value as Money) }),
	says: (value) => (value === noLimit ? "No limit" : moneyText(value as Money)),
};

function isMoneyOf(market: Market, { currency }: Money): boolean {
	return isCurrency(currency) || currency === currencyOf(market);
}

/** The currency most boards are priced in; EUR where no board has a price. */
export function currencyOf({ parts }: Market): string {
	const counts = new Map<string, number>();
	for (const { price } of parts.board) if (price) counts.set(price.currency, (counts.get(price.currency) ?? 0) + 1);
	return [...counts].sort((one, other) => other[1] - one[1])[0]?.[0] ?? "EUR";
}
