import type { BuildFacts } from "../../parts/build.ts";
import { type Money, minorDigits, money, moneyText } from "../../parts/money.ts";
import type { Option, Question } from "../define-question.ts";
import { currencyOf, isMoneyOf } from "../money-question.ts";
import { readMoney } from "../read-money.ts";

const noLimit = "no-limit";
/** Less than this many units of money is no price of a board (own convention). */
const leastUnits = 10;
/** Shares of the whole sum that builders give the board (common practice, no source): usual, and for many wishes. */
const shares = [
	{ percent: 10, explanation: "Enough for a plain, sound board" },
	{ percent: 15, explanation: "What many builders give the board" },
	{ percent: 20, explanation: "If you want much from the board" },
];

export const budget: Question = {
	id: "about/budget",
	tier: "about",
	short: true,
	kind: "number",
	ask: "How much may the board cost at most?",
	hint: "A sum, such as 180, or one of the lines below",
	label: "Most the board may cost",
	why: "Boards above your limit are taken out, so that money is left for the other parts.",
	whereToFind:
		"Take your whole budget, and take off what the other parts cost. Many builders give the board 10 to 15 per cent of it (common practice, no source). With a dear graphics card the share is smaller.",
	changes: "A board that costs more than the sum is taken out. The price never counts in the score.",
	notSure: "No board is taken out for its price, unless it costs more than you have left.",
	howToFindOut: "Add up what the other parts cost and see what is left.",
	applies: () => true,
	options: (_, facts) => [
		...shareOptions(facts),
		{ value: noLimit, label: "No limit", explanation: "The price then only decides between equals" },
	],
	read: (text, { market }) => {
		if (/^(0|no limit|none)$/i.test(text.trim())) return { value: noLimit };
		const read = readMoney(text, currencyOf(market));
		// A single figure is the number of a line by mistake: no board costs so little.
		if (read && read.minor < leastUnits * 10 ** minorDigits(read.currency))
			return { problem: `No board costs ${moneyText(read)}. Type the sum, or go down to a line and take it.` };
		return read
			? { value: read }
			: { problem: `Type the sum as a number, such as 180 or 180 ${currencyOf(market)}; or "no limit".` };
	},
	expected: (value, { market }) =>
		value === noLimit || (money.safeParse(value).success && isMoneyOf(market, value as Money))
			? null
			: '{"minor": a whole number, "currency": a code such as "EUR"} or "no-limit"',
	sets: (facts, value) => ({ ...facts, priceCap: value === noLimit ? null : (value as Money) }),
	says: (value) => (value === noLimit ? "No limit" : moneyText(value as Money)),
};

/** Usual shares of the whole sum, in whole units of the currency. */
function shareOptions({ moneyInAll }: BuildFacts): readonly Option[] {
	if (!moneyInAll) return [];
	const { minor, currency } = moneyInAll;
	const unit = 10 ** minorDigits(currency);
	return shares.flatMap(({ percent, explanation }) => {
		const value = { minor: Math.round((minor * percent) / 100 / unit) * unit, currency };
		// Of a very small sum a share is no price of any board.
		return value.minor > 0
			? [{ value, label: moneyText(value), explanation: `${percent} per cent of the whole. ${explanation}` }]
			: [];
	});
}
