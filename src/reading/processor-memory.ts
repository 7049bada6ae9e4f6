import type { MemoryType } from "../parts/vocabulary.ts";
import { bracketsOf } from "./quantities.ts";

/** A rate that a page gives for a type of memory. */
export interface RateRead {
	readonly type: MemoryType;
	readonly mtPerS: number;
	/** Only where the page says so. */
	readonly modules?: number;
	readonly modulesPerChannel?: number;
	readonly ranks?: number;
}

/** Rates that modules of a type are sold with; a figure outside is a clock or something else (own convention). */
const plausible: Readonly<Record<MemoryType, readonly [number, number]>> = {
	DDR3: [800, 2133],
	DDR4: [1600, 4000],
	DDR5: [3200, 10000],
};

const typeMark = /(?<!\p{L})ddr[\s-]?([345])(?:[lu](?!\p{L}))?(?!\d(?!\d))/giu;
const denied = /\b(?:no|not|nicht|kein\w*|ohne|without|no longer|incompatible)\b/i;
const overclocked = /\bo\.?c\.?\b|overclock|expo\b|xmp\b|übertakt/i;

/** Types of memory that a text names as such; that of graphics and soldered phones' memory is none. */
export function memoryTypesIn(text: string): readonly MemoryType[] {
	if (denied.test(text.replace(/non-?ecc|no ecc|ohne ecc|without ecc/gi, ""))) return [];
	return [...new Set([...text.matchAll(typeMark)].map(([, digit]) => `DDR${digit}` as MemoryType))];
}

/**
 * Rates beside the types in a text: "DDR5-5600", "Up to DDR5 5600 MT/s", "2x1R DDR5-5200", "DDR5 (1DPC): 5600 MT/s".
 *
 * @param only the type that figures without one belong to
 */
export function memoryRatesIn(text: string, only: MemoryType | undefined): readonly RateRead[] {
	const found: RateRead[] = [];
	// "DDR4 up to 3200 MHz (OC 4400 MHz)": what is in brackets is another rate.
	const plain = text
		.slice(0, 2000)
		.replace(/\((?=[^()]{0,40}\d{4})[^()]{0,40}\b(?:o\.?c|overclock\w{0,4}|xmp|expo)\b[^()]{0,40}\)/gi, " ");
	const pieces = plain.split(/[;|]|,(?!\d)|\s(?:or|oder|and|und|hoặc|ou|o)\s/i);
	let last = only;
	for (const piece of pieces) {
		if (overclocked.test(piece)) continue;
		const types = memoryTypesIn(piece);
		if (types.length > 1 && !/\/\s?(?:lp)?ddr/i.test(piece)) continue;
		for (const part of types.length > 1 ? piece.split("/") : [piece]) {
			const [type = last] = memoryTypesIn(part);
			if (!type) continue;
			last = type;
			const [least, most] = plausible[type];
			const rates = [...part.matchAll(/(?<![\d.,])(\d{4,5}|\d[.,]\d{3}|800)(?![\d])(?!\s?(?:gb|mb|tb|x\s))/gi)]
				.filter(({ index }) => !/pc\d?l?-?$/i.test(part.slice(Math.max(0, index - 5), index)))
				.map(([, digits = ""]) => Number(digits.replace(/[.,]/, "")))
				.filter((rate) => rate >= least && rate <= most);
			if (rates.length === 0) continue;
			const perChannel =
				/(?<![\w.])([12])\s?dpc\b|(?<![\w.])([12]) (?:dimms?|modules?|riegel) (?:per|a|pro|je) (?:channel|kanal)/i.exec(
					part,
				);
			const [, modules, rank] = /(?<![\w.])(\d)\s?x\s?([1248])r\b/i.exec(part) ?? [];
			found.push({
				type,
				mtPerS: Math.max(...rates),
				...(perChannel ? { modulesPerChannel: Number(perChannel[1] ?? perChannel[2]) } : {}),
				...(modules ? { modules: Number(modules), ranks: Number(rank) } : {}),
			});
		}
	}
	// A list of rates in one line ends with the highest.
	const key = ({ type, modules, modulesPerChannel, ranks }: RateRead) =>
		`${type} ${modules} ${modulesPerChannel} ${ranks}`;
	return found.filter((one) => !found.some((other) => key(one) === key(other) && other.mtPerS > one.mtPerS));
}

const mostWord =
	/(?:max\w*\.?|up to|bis(?: zu)?|tối đa|jusqu'à|hasta|fino a|до|maks\w*\.?|až|höchstens)[\s:]{0,3}(?:\p{L}+\s){0,1}$/iu;

/**
 * Sizes of memory in GB.
 *
 * @param labelSays the label already says that it is the most
 */
export function mostMemoryIn(text: string, labelSays: boolean): readonly number[] {
	const sizes = [
		...text.slice(0, 500).matchAll(/(?<![\w.,])(\d{1,5})\s?(g|t|г|т)(?:i?b|o|б)(?![\p{L}/])(?!\s?\/\s?s)/giu),
	];
	return [
		...new Set(
			sizes
				.filter(({ index, 0: all }) => {
					const before = text.slice(Math.max(0, index - 30), index);
					const after = text.slice(index + all.length, index + all.length + 25);
					if (/\d\s?[x×]\s?$/i.test(before) || /^\s?(?:per|pro|je|a|\/)\s?(?:dimm|modul|slot|riegel)/i.test(after))
						return false;
					return labelSays || mostWord.test(before) || /^\s?\(?max/i.test(after);
				})
				.map(([, digits, unit = ""]) => Number(digits) * (/[tт]/i.test(unit) ? 1024 : 1))
				.filter((size) => size > 0),
		),
	];
}

/** Channels by word or number; `labelSays` that a bare number counts them. */
export function channelsIn(text: string, labelSays: boolean): readonly number[] {
	const words: readonly (readonly [RegExp, number])[] = [
		[/\b(?:single|ein(?:zel)?)/i, 1],
		[/\b(?:dual|two|zwei)/i, 2],
		[/\b(?:quad|four|vier)/i, 4],
		[/\b(?:octa|eight|acht)/i, 8],
	];
	const { outside } = bracketsOf(text.slice(0, 500));
	const near = labelSays ? "" : "[\\s-]?(?:channel|kanal)";
	const found = words.filter(([word]) => new RegExp(word.source + near, "i").test(outside)).map(([, count]) => count);
	const digits = labelSays
		? /^\s*(\d{1,2})(?![\w.,])/.exec(outside)
		: /(?<![\w.,])(\d{1,2})[\s-]?(?:x\s)?(?:memory[\s-])?(?:channels?\b|kan[aä]le?\b)/i.exec(outside);
	if (digits) found.push(Number(digits[1]));
	return [...new Set(found)];
}

/** Whether error-correcting memory works, by a value that speaks of it; "open" where it depends on something. */
export function correctionIn(text: string): boolean | "open" | undefined {
	const plain = text.replace(/on[\s-]?die[\s-]?ecc/gi, "");
	if (!/\becc\b/i.test(plain)) return undefined;
	if (/\b(?:depend|abhängig|je nach|optional)/i.test(plain)) return "open";
	const without = /\bnon-?\s?ecc\b|\bno ecc\b|ohne ecc|without ecc|kein ecc|\becc[^,;]{0,15}(?:not|nicht|no\b|nein)/gi;
	const rest = plain.replace(without, "");
	return /\becc\b/i.test(rest);
}
