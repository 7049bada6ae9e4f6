import type { FactEntry } from "../parts/fact-list.ts";

/** Spellings of units, small, and what one of them is in the unit of the fact. */
const spellings: Readonly<Record<string, Readonly<Record<string, number>>>> = {
	mm: {
		mm: 1,
		millimetre: 1,
		millimeter: 1,
		cm: 10,
		m: 1000,
		in: 25.4,
		inch: 25.4,
		inches: 25.4,
		zoll: 25.4,
		'"': 25.4,
		"″": 25.4,
	},
	W: { w: 1, watt: 1, watts: 1, kw: 1000 },
	GB: { gb: 1, gib: 1 },
	"MT/s": { "mt/s": 1, mts: 1 },
	A: { a: 1, amp: 1, amps: 1, ampere: 1, ma: 0.001 },
	mohm: { mohm: 1, mω: 1 },
	"%": { "%": 1, percent: 1 },
	kHz: { khz: 1, mhz: 1000 },
	nH: { nh: 1 },
	"K/W": { "k/w": 1, "°c/w": 1 },
	oz: { oz: 1 },
	s: { s: 1, sec: 1, seconds: 1, sekunden: 1 },
	"degrees C": { "°c": 1, c: 1, "degrees c": 1, celsius: 1, grad: 1 },
	g: { g: 1, gram: 1, gramm: 1, kg: 1000 },
	V: { v: 1, volt: 1, volts: 1 },
	Hz: { hz: 1, hertz: 1 },
	years: {
		years: 1,
		year: 1,
		y: 1,
		jahre: 1,
		jahr: 1,
		months: 1 / 12,
		month: 1 / 12,
		monate: 1 / 12,
		monat: 1 / 12,
	},
};

/** In rates only the case of one letter tells bits (Gb/s) from bytes (GB/s). */
const rates: Readonly<Record<string, RegExp>> = {
	"Gb/s": /^[Gg](?:b|[Bb]it)(?:ps|\/s)$/,
	"GB/s": /^[Gg](?:B|[Bb]yte)(?:ps|\/s)$/,
	"MB/s": /^[Mm](?:B|[Bb]yte)(?:ps|\/s)$/,
};

/**
 * By what a figure in this unit is multiplied to be in the unit of the fact.
 *
 * @returns null when the two measure different things, or the spelling is not known
 */
export function unitFactor({ path, unit }: FactEntry, spelling: string): number | null {
	if (unit === undefined) return null;
	const rate = rates[unit];
	if (rate) return rate.test(spelling) ? 1 : null;
	const small = spelling.normalize("NFC").toLowerCase();
	// Drives are sold by powers of ten, memory by powers of two.
	if (unit === "GB" && small === "tb") return path === "gb" ? 1000 : 1024;
	const known = spellings[unit] ?? {};
	return Object.hasOwn(known, small) ? (known[small] ?? null) : null;
}
