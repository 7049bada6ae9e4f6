import type { Market } from "../parts/market.ts";
import { isCurrency, type Money, minorDigits, money, moneyText } from "../parts/money.ts";
import type { Wants } from "../parts/wants.ts";
import type { Question } from "./define-question.ts";
import { readMoney } from "./read-money.ts";

/** Less than this many units of money is a slip of a key (own convention). */
const leastUnits = 10;

type MoneyWant = "moneyInAll" | "moneySpent";

/** Declares a question answered by a sum of money; it sets one want. */
export function moneyQuestion(
	question: Omit<Question, "kind" | "options" | "expected" | "sets" | "says" | "read" | "applies"> & {
		readonly want: MoneyWant & keyof Wants;
		/** Whether 0 is an answer. */
		readonly zero: boolean;
		readonly applies?: Question["applies"];
	},
): Question {
	const { want, zero, ...plain } = question;
	return {
		applies: () => true,
		...plain,
		kind: "number",
		options: () => [],
		read: (text, { market }) => {
			const currency = currencyOf(market);
			if (zero && /^(0|none|nothing)$/i.test(text.trim())) return { value: { minor: 0, currency } };
			const read = readMoney(text, currency);
			if (read && read.minor < leastUnits * 10 ** minorDigits(read.currency))
				return { problem: `${moneyText(read)} is very little. Type the whole sum, such as 900.` };
			return read ? { value: read } : { problem: `Type the sum as a number, such as 900 or 900 ${currency}.` };
		},
		expected: (value, { market }) =>
			money.safeParse(value).success && isMoneyOf(market, value as Money) && (zero || (value as Money).minor > 0)
				? null
				: '{"minor": a whole number, "currency": a code such as "EUR"}',
		sets: (facts, value) => ({ ...facts, [want]: value }),
		says: (value) => moneyText(value as Money),
	};
}

/** Whether a sum is in a currency that exists, or in the one of the market. */
export function isMoneyOf(market: Market, { currency }: Money): boolean {
	return isCurrency(currency) || currency === currencyOf(market);
}

/** The currency most boards are priced in; EUR where no board has a price. */
export function currencyOf({ parts }: Market): string {
	const counts = new Map<string, number>();
	for (const { price } of parts.board) if (price) counts.set(price.currency, (counts.get(price.currency) ?? 0) + 1);
	return [...counts].sort((one, other) => other[1] - one[1])[0]?.[0] ?? "EUR";
}
