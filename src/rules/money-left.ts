import type { Money } from "../parts/money.ts";

/**
 * What is left of all the money, never less than nothing. Who has not said what is spent has all of it; two currencies
 * cannot be taken from each other, so nothing is known then.
 */
export function moneyLeft(
	inAll: Money | undefined,
	spent: Money | undefined,
	planned: Money | undefined,
): Money | null {
	if (!inAll || (spent && spent.currency !== inAll.currency)) return null;
	// The parts that were picked must be paid too; their sum is in the same currency by its making.
	const gone = (spent?.minor ?? 0) + (planned?.minor ?? 0);
	return { minor: Math.max(0, inAll.minor - gone), currency: inAll.currency };
}
