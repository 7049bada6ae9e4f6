import { isCurrency, type Money, minorDigits } from "../parts/money.ts";

/** In letters; a thousand millions with its currency takes fewer. Longer ones need not be gone through. */
const longestSum = 40;

/**
 * Reads a sum as people type it: "180", "180.50", "180,50", "EUR 180", "1 200 EUR", "1.200,00 EUR". A single point or
 * comma before one or two last digits is a decimal sign, else it groups thousands.
 *
 * @returns null when it is no sum, or larger than any part costs
 */
export function readMoney(text: string, defaultCurrency: string): Money | null {
	const told = text.trim().replace(/\s+/g, " ");
	if (told.length > longestSum) return null;
	const match = /^(?<before>[A-Za-z]{3}|€|\$|£)?\s?(?<figure>\d[\d\s.,']*)(?<after>[A-Za-z]{3}|€|\$|£)?$/.exec(told);
	const { before, figure, after } = match?.groups ?? {};
	if (!figure || (before && after)) return null;
	const currency = codeOf(before ?? after, defaultCurrency);
	const amount = amountOf(figure);
	if (currency === null || amount === null) return null;
	const minor = Math.round(amount * 10 ** minorDigits(currency));
	return minor > 0 && minor <= 1_000_000_000 ? { minor, currency } : null;
}

function codeOf(sign: string | undefined, defaultCurrency: string): string | null {
	if (!sign) return defaultCurrency;
	const signs: Readonly<Record<string, string>> = { "€": "EUR", $: "USD", "£": "GBP" };
	const code = signs[sign] ?? sign.toUpperCase();
	return isCurrency(code) || code === defaultCurrency ? code : null;
}

function amountOf(figure: string): number | null {
	const digits = figure.trim().replace(/[\s']/g, "_");
	const decimal = /^(?<whole>.*?)(?:[.,](?<fraction>\d{1,2}))?$/.exec(digits)?.groups;
	const whole = decimal?.["whole"] ?? "";
	if (!/^\d+$|^\d{1,3}(?<sign>[.,_])\d{3}(?:\k<sign>\d{3})*$/.test(whole)) return null;
	return Number(`${whole.replace(/\D/g, "")}.${decimal?.["fraction"] ?? "0"}`);
}
