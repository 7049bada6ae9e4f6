import { cleanLine } from "../../parts/clean-text.ts";
import type { TypedReading } from "./typed-fact.ts";

/** A line of text, cleaned. */
export function readLine(most: number): (text: string) => TypedReading {
	return (text) => {
		const value = cleanLine(text);
		if (value === "") return { problem: "Type the words as the page prints them." };
		return value.length <= most ? { value } : { problem: `Type at most ${most} letters; this has ${value.length}.` };
	};
}

/** A whole number with or without a unit behind it. */
export function readWhole(least: number, most: number, unit = ""): (text: string) => TypedReading {
	return (text) => {
		const match = new RegExp(`^\\s*(\\d{1,6})\\s*(?:${unit || "x"})?\\s*$`, "i").exec(text);
		const value = Number(match?.[1]);
		return match && value >= least && value <= most
			? { value }
			: { problem: `Type a whole number from ${least} to ${most}${unit ? `, in ${unit}` : ""}.` };
	};
}

/** A length in mm; "17 cm", "170mm" and "6.7 in" are understood, to a tenth of a millimetre. */
export function readMillimetres(least: number, most: number): (text: string) => TypedReading {
	const factors: Readonly<Record<string, number>> = {
		mm: 1,
		cm: 10,
		m: 1000,
		in: 25.4,
		inch: 25.4,
		inches: 25.4,
		'"': 25.4,
	};
	return (text) => {
		const match = /^\s*(\d{1,5}(?:[.,]\d{1,3})?)\s*(mm|cm|m|inches|inch|in|")?\s*$/i.exec(text);
		const factor = factors[(match?.[2] ?? "mm").toLowerCase()] ?? 1;
		const value = Math.round(Number(match?.[1]?.replace(",", ".")) * factor * 10) / 10;
		return match && value >= least && value <= most
			? { value }
			: { problem: `Type a length from ${least} to ${most} mm, such as 320 mm or 32 cm.` };
	};
}
