import * as z from "zod";
import { fact } from "./fact.ts";

/**
 * Money as it was seen: a whole number of the currency's smallest unit and its ISO 4217 code. It is never converted;
 * two amounts in different currencies cannot be compared.
 */
export const money = z.strictObject({
	minor: fact(z.number().int().min(0).max(1_000_000_000), {
		title: "Sum in the smallest unit",
		whereToFind: "The shop's page: EUR 189.00 is 18900.",
	}),
	currency: fact(z.string().regex(/^[A-Z]{3}$/, "three capital letters, such as EUR"), {
		title: "Currency code",
		whereToFind: "The shop's page; the code of ISO 4217.",
	}),
});
export type Money = z.infer<typeof money>;

/** Whether the runtime's own table of ISO 4217 has this code. */
export function isCurrency(code: string): boolean {
	return currencies.has(code);
}

const currencies = new Set(Intl.supportedValuesOf("currency"));

/** Digits after the point that a currency prints, by the runtime's own table (2 for EUR, 0 for JPY). */
export function minorDigits(currency: string): number {
	const known = digitsOf.get(currency);
	if (known !== undefined) return known;
	const digits =
		new Intl.NumberFormat("en", { style: "currency", currency, currencyDisplay: "code" }).resolvedOptions()
			.maximumFractionDigits ?? 2;
	digitsOf.set(currency, digits);
	return digits;
}

/** Making a formatter takes far longer than using what it knows, and every price of a market asks. */
const digitsOf = new Map<string, number>();

/** "EUR 189.00" with the code in front, the same in every terminal and on paper. */
export function moneyText({ minor, currency }: Money): string {
	const digits = minorDigits(currency);
	return `${currency} ${(minor / 10 ** digits).toFixed(digits)}`;
}
