import type { MemoryType } from "../parts/vocabulary.ts";
import { type Doubt, eachOnce, evenRun, known, onlyOf } from "./quantities.ts";

/** What a text tells of a board's memory. What it does not tell has no key. */
export type MemoryReading = {
	readonly type?: MemoryType;
	readonly form?: "DIMM" | "SO-DIMM" | "CAMM2";
	readonly slots?: number;
	readonly channels?: number;
	readonly maxGb?: number;
	readonly maxGbPerModule?: number;
	/** Highest rate named, in MT/s; pages write MHz for it. */
	readonly highestMtPerS?: number;
};

/** Rates that modules of a type are sold with; outside, the figure is something else (own convention). */
const plausibleRates: Readonly<Record<MemoryType, readonly [number, number]>> = {
	DDR3: [800, 3200],
	DDR4: [1600, 5600],
	DDR5: [3600, 12000],
};

const channelWords: readonly (readonly [RegExp, number])[] = [
	[/\b(?:single|one|ein(?:zel)?)[\s-]?(?:channel|kanal)/i, 1],
	[/\b(?:dual|two|zwei)[\s-]?(?:channel|kanal)/i, 2],
	[/\b(?:quad|four|vier)[\s-]?(?:channel|kanal)/i, 4],
	[/\b(?:octa|eight|acht)[\s-]?(?:channel|kanal)/i, 8],
];

const slotForms: readonly RegExp[] = [
	/(?<![\w.,])(\d{1,2})\s?x\s?(?=(?:(?!\d+\s?[gt]i?b)[^\s,;:()]{1,15}\s){0,3}(?:(?:so|u|r|cu|lr)?-?dimm|camm2?|(?:memory|ram)\s?(?:slots?|sockets?)|speicher|steckpl|ddr[345]))/gi,
	/(?<![\w.,])(\d{1,2})\s(?![gt]i?b\b|x\s)(?=(?:(?!per\b|pro\b|je\b)[\w-]+\s){0,2}(?:(?:so-?)?dimms?\b(?:[\s-]?(?:slots?|sockets?|steckpl))?(?!\s?(?:per|pro|je)\b)|(?:memory|ram|speicher)[\s-]?(?:slots?|sockets?|steckpl)))/gi,
	/(?:dimm|memory|ram|speicher)[\s-]?(?:slots?|sockets?|steckpl[aä]tze?|bänke)\s{0,2}[:=]?\s{0,2}(?:x\s?)?(\d{1,2})(?![\w.,])(?!\s?(?:x|gb|tb|dimm|ddr))/gi,
	/^\s{0,3}(\d{1,2})\s?x?\s{0,2}(?:slots?|sockets?|steckpl[aä]tze?)/gi,
	/(?<![\w.,])(\d{1,2})\s(?:x\s)?(?:ddr[345]\s(?:slots?|sockets?|steckpl[aä]tze?)|(?:slots?|sockets?)\s(?:[^\s,;]{1,12}\s)?(?:dimm|ddr[345]))/gi,
];

const sizeMark = /(?<![\w.,])(\d{1,5})\s?(g|t)(?:b|ib)?(?![\w/]|\s?\/\s?s)/gi;
const perModule =
	/^\s{0,2}(?:\w+\s){0,2}(?:per|pro|je|each|a|\/)\s?(?:single\s)?(?:dimm|slot|module?|riegel|stick|socket|steckplatz)/i;
const moduleBefore =
	/(?:(?:single|each|tek)\s(?:dimm|module)|per\s(?:dimm|slot|module)|(?:pro|je)\s(?:modul|riegel|steckplatz|dimm))[\w\s,:]{0,30}$/i;
const mostBefore =
	/(?:max(?:imum|imal|\.)?|up\sto|bis(?:\szu)?|~|most|höchstens|total|insgesamt|capacity|kapazität|gesamt)[\w\s.:,()]{0,30}$/i;
const mostAfter = /^\s{0,2}(?:at\smost|höchstens|\(?max|maximum|maximal|in\stotal|insgesamt)/i;
const kitBefore = /\d\s?x\s?$/i;

type MemoryRead = { readonly memory: MemoryReading; readonly doubts: readonly Doubt[] };

/** Rates in a text: figures with MHz, MT/s or OC, those beside the type, and those in a row with slashes. */
function ratesIn(text: string): readonly number[] {
	const figures = [...text.matchAll(/(?<![\w.,])([1-9]\d{2,4}|[1-9]\d?[.,]\d{3})(?![\d])(?![.,]\d)/g)];
	const chain = /(?<![\w.,])((?:[1-9]\d{3,4}\s?\/\s?)+[1-9]\d{3,4})\s?(?:mhz|mt\/?s)/i.exec(text)?.[1] ?? "";
	const unit = /^\s?\+?\s?(?:\(?\s?o\.?\s?c\.?|m(?:hz|t\/?s|bps|t\b)|mt\/s)/i;
	const rates = figures.flatMap(({ 1: figure = "", index }) => {
		const before = text.slice(Math.max(0, index - 40), index);
		const after = text.slice(index + figure.length, index + figure.length + 20);
		const value = Number(figure.replace(/[.,]/, ""));
		if (value < 800 || value > 12000 || /^\s?(?:gb|tb|mb|g\b|-?pin|-?pol|w\b|mm)/i.test(after)) return [];
		if (/(?:pc\d-?|pc\d\s)$/i.test(before)) return [];
		const beside = /ddr[345][a-z]?(?:[\s:~-]|\()*(?:(?:up\sto|bis(?:\szu)?|memory|max\.?|oc)\s)*$/i.test(before);
		const inRow =
			/[/,]\s{0,2}$/.test(before) && /\d{3}[^a-z]*(?:\(?o\.?c\.?\)?|mhz|mt\/s)?\)?\s?[/,]\s{0,2}$/i.test(before);
		const upTo = /(?:up\sto|bis(?:\szu)?)\s{0,2}$/i.test(before) && /ddr[345]/i.test(text);
		return unit.test(after) || beside || inRow || upTo ? [value] : [];
	});
	return eachOnce([
		...rates,
		...[...chain.matchAll(/\d{4,5}/g)]
			.map(([figure]) => Number(figure))
			.filter((value) => value >= 800 && value <= 12000),
		// The type glued to its rate has no border in front of the figure.
		...[...text.matchAll(/ddr[345][-~_\s]?(\d{4,5})(?!\d|\s?gb)/gi)]
			.map(([, figure]) => Number(figure))
			.filter((value) => value >= 800 && value <= 12000),
	]);
}

/**
 * What a run of text tells of a board's memory: one row of a page, or its whole section. Never throws; what could mean
 * two things is a doubt and has no value.
 */
export function readMemory(text: string): MemoryRead {
	// "2133,2400,2666 MHz" is a row of rates.
	const even = evenRun(text).replace(/(?<=(?<!\d)\d{4}),(?=\d{4}(?!\d))/g, "/");
	const quote = text.slice(0, even.length).trim();
	const doubts: Doubt[] = [];
	const single = <T extends number | string>(about: string, values: readonly T[], why: string): T | undefined => {
		const each = eachOnce(values);
		if (each.length > 1) doubts.push({ about, quote, might: each, why });
		return onlyOf(each);
	};

	const type = single(
		"type",
		[...even.matchAll(/(?<![a-z])(?:lp)?ddr[\s-]?([345])(?!\d(?!\d))/gi)]
			.filter(([all]) => !/^lp/i.test(all))
			.map(([, figure]) => `DDR${figure}` as MemoryType),
		"The text names more than one type of memory.",
	);
	const form = single(
		"form",
		[
			...(/\bso-?dimm/i.test(even) ? (["SO-DIMM"] as const) : []),
			...(/\bcamm2\b/i.test(even) ? (["CAMM2"] as const) : []),
			...(/(?<!so-?)\b(?:[urc]|cu|lr)?-?dimms?\b/i.test(even.replace(/so-dimm/gi, "")) ? (["DIMM"] as const) : []),
		],
		"The text names more than one form of module.",
	);
	const slots = single(
		"slots",
		slotForms
			.flatMap((slotForm) => [...even.matchAll(slotForm)])
			.map(([, figure]) => Number(figure))
			.filter((count) => count > 0),
		"The text gives more than one count of slots.",
	);
	const channels = single(
		"channels",
		[
			...channelWords.filter(([words]) => words.test(even)).map(([, count]) => count),
			...[...even.matchAll(/(?<![\w.,])([1-9]|1[0-2])\s?-?\s?(?:x\s)?(?:memory\s)?(?:channels?|kan[aä]le?)\b/gi)].map(
				([, figure]) => Number(figure),
			),
		],
		"The text gives more than one count of channels.",
	);

	const sizes = [...even.matchAll(sizeMark)].map(({ 0: all, 1: figure, 2: unit = "", index }) => ({
		gb: Number(figure) * (unit.toLowerCase() === "t" ? 1024 : 1),
		before: even.slice(Math.max(0, index - 50), index),
		after: even.slice(index + all.length, index + all.length + 40),
	}));
	const ofModule = sizes.filter(({ before, after }) => perModule.test(after) || moduleBefore.test(before));
	const rest = sizes.filter((size) => size.gb > 0 && !ofModule.includes(size) && !kitBefore.test(size.before));
	const most = rest.filter(({ before, after }) => mostBefore.test(before) || mostAfter.test(after));
	const maxGb = single(
		"most memory",
		most.map(({ gb }) => gb),
		"The text gives more than one size as the most.",
	);
	if (most.length === 0 && rest.length > 0) {
		doubts.push({
			about: "most memory",
			quote,
			might: eachOnce(rest.map(({ gb }) => gb)),
			why: "The text gives a size and does not say that it is the most.",
		});
	}
	const maxGbPerModule = single(
		"largest module",
		ofModule.map(({ gb }) => gb).filter((gb) => gb > 0),
		"The text gives more than one size of a module.",
	);
	const clashes =
		maxGb !== undefined && maxGbPerModule !== undefined && slots !== undefined && maxGbPerModule * slots !== maxGb;
	if (clashes) {
		doubts.push({
			about: "most memory",
			quote,
			might: [maxGb],
			why: "The slots times the largest module do not make the most memory.",
		});
	}

	const rates = ratesIn(even);
	const highest = rates.length > 0 ? Math.max(...rates) : undefined;
	const [least, top] = (type && plausibleRates[type]) ?? [800, 12000];
	const isPlausible = highest !== undefined && highest >= least && highest <= top;
	if (highest !== undefined && !isPlausible) {
		doubts.push({
			about: "highest rate",
			quote,
			might: [highest],
			why: "This is no usual rate of this memory; it may be a clock, half of the rate.",
		});
	}
	return {
		memory: known({
			type,
			form,
			slots,
			channels,
			maxGb: clashes ? undefined : maxGb,
			maxGbPerModule: clashes ? undefined : maxGbPerModule,
			highestMtPerS: isPlausible ? highest : undefined,
		}),
		doubts,
	};
}
