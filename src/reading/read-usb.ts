import { usbRates } from "../reference/usb-rates.ts";
import {
	bracketsOf,
	type Doubt,
	eachOnce,
	evenRun,
	itemsOf,
	known,
	onlyOf,
	quoteOf,
	someOfThem,
} from "./quantities.ts";

/** USB sockets of one sort, as a text tells of them. What it does not tell has no key. */
export type UsbReading = {
	readonly plug?: "A" | "C";
	/** Rate in Gb/s. */
	readonly gbps?: number;
	/** Sockets: at the back, or those that the headers give. */
	readonly count?: number;
	/** Connectors on the board, where the text counts those. */
	readonly headers?: number;
	readonly place?: "back" | "header";
	readonly quote: string;
};

const rateByName: ReadonlyMap<string, number> = new Map(
	Object.entries(usbRates).flatMap(([name, { gbitsPerSecond, otherNames }]) =>
		[name, ...otherNames].map((one) => [one.replace(/\s/g, "").toLowerCase(), gbitsPerSecond] as const),
	),
);

const standardRates: ReadonlySet<number> = new Set(Object.values(usbRates).map(({ gbitsPerSecond }) => gbitsPerSecond));

/** What a name that is not whole may stand for, in Gb/s: it was used for each of them. */
const halfNames: Readonly<Record<string, readonly number[]>> = {
	usb1: [0.012],
	"usb1.0": [0.012],
	usb2: [0.48],
	usb3: [5, 10, 20],
	"usb3.1": [5, 10],
	"usb3.2": [5, 10, 20],
	usb4: [20, 40],
	usb4v2: [40, 80],
	"usb3.2gen1x2": [10],
};

const nameOfUsb =
	/usb(?:[\s-]?(?:type?[\s-]?)?[ac][®™]?(?![a-z]))?\s?-?([1-4](?:\.\d)?)(?!\.?\d|\s?[gm]b)(?:\s?v(?:er(?:sion)?\.?)?\s?(2)(?:\.0)?)?(?:\s?\(?gen\.?\s?-?(\d)(?:(\s?x\s?)(\d))?)?/gi;
const spelledRate = /(?<![\d.,])(\d{1,3}(?:[.,]\d)?)\s?(?:(m|g)b(?:it)?\s?(?:ps|\/s)|(g)(?![a-z0-9]))/gi;
const plugWord = /(?:\btyp(?:e)?|usb)[\s-]?([ac])(?![a-z0-9])/gi;
const backWord =
	/\brear|\bback\b|back[\s-]?panel|\bexternal\b|\bhinten|rückseit|rueckseit|\bi\/o[\s-]?(?:panel|blende)|anschlussfeld/i;
const frontWord =
	/\bfront|\bheaders?\b|\binternal|\bintern(?:e[nrs]?)?\b|on-?board|\bvorne?\b|stiftleiste|pfostenstecker|steckleiste|gehäusefront/i;
/** Where the thing counted is the header itself; behind "by" or "via" it only tells the way. */
const headerNoun =
	/(?<!\b(?:by|via|through|from|per|über|mit|the)\s(?:an?\s|the\s|einen?\s|internal\s|interne[nr]?\s|usb[\s-]){0,3})(?:\bheaders?\b|stiftleisten?|pfostenstecker|steckleisten?|\b(?:9|19|20)[\s-]?pin\b|\bconnectors?\s(?:internal|front)\b|(?:front|internal|intern\w*)[\w\s-]{0,20}\bconnectors?\b)/i;
/** In brackets: "19-pin", "front header"; behind "by" it only tells the way. */
const namesHeader = /\b(?:9|19|20)[\s-]?pin\b|^[^\d]{0,24}\bheaders?\s*$|,\s[^\d]{0,16}\bheader\s*$/i;
const wayWord = /\b(?:via|by|through|from|per|über)\b/i;
const givesWord =
	/\bsupport(?:s|ing)?\b|\bfor\b|\bfür\b|\b(?:per|para|pour|pro|dla|voor)\b|unterstütz\w*|\bgives?\b|\badditional\b|\bzusätzlich\w*/i;
const itemStart =
	/(?<!(?:support|supports|for|für|gives|unterstützt|to)\s{0,3})(?<![\w.])\d{1,2}\s?x\s?(?=[^\d,;()\n]{0,30}usb)|,(?=\s{0,3}\d{1,2}\s{1,3}usb)/gi;

/** In brackets behind a header: how many sockets it gives, "4 ports" or "4 x USB 2.0". */
const givenAlone =
	/^\s{0,3}(?:(?:\d{1,2}[\s-]?pin,\s)?\d{1,2}\s?ports?(?:\seach)?|[^()]{0,40}\b\d{1,2}\s?x\s?usb\b[^()]{0,20}|\d{1,2}\susb\s?[234]\b[^(),]{0,20})\s{0,3}$/i;

/** All that a name may stand for, in Gb/s; nothing for a name that no USB has. */
function ratesOfName(version: string, second?: string, generation?: string, lanes?: string): readonly number[] {
	const name = `usb${version}${second ? "v2" : ""}${generation ? `gen${generation}` : ""}${lanes ? `x${lanes}` : ""}`;
	const short = name.replace(/^usb4\.0/, "usb4");
	const rate = rateByName.get(short);
	return halfNames[short] ?? (rate === undefined ? [] : [rate]);
}

/** Rates that a piece of text names, in Gb/s; each name with all it may stand for. */
function ratesIn(text: string): readonly (readonly number[])[] {
	return [...text.matchAll(nameOfUsb)]
		.map(([, version = "", second, generation, times, lanes]) =>
			// "Gen 1 x 2" may be two lanes or two sockets.
			times === undefined || times.length === 1
				? ratesOfName(version, second, generation, lanes)
				: eachOnce([...ratesOfName(version, second, generation), ...ratesOfName(version, second, generation, lanes)]),
		)
		.filter((rates) => rates.length > 0);
}

function spelledRatesIn(text: string): readonly number[] {
	return [...text.matchAll(spelledRate)].map(([, figure = "", unit = "g"]) => {
		const value = Number(figure.replace(",", "."));
		return unit.toLowerCase() === "m" ? value / 1000 : value;
	});
}

function plugsIn(text: string): readonly ("A" | "C")[] {
	return eachOnce([...text.matchAll(plugWord)].map(([, letter]) => (letter?.toUpperCase() === "A" ? "A" : "C")));
}

function placeIn(text: string): "back" | "header" | "both" | undefined {
	const back = backWord.test(text);
	const front = frontWord.test(text);
	if (back && front) return "both";
	return back ? "back" : front ? "header" : undefined;
}

const countForms: readonly RegExp[] = [
	/(?<![\w.,])(\d{1,2})\s?x(?!\s?\d)/gi,
	/(?<![\w.]|(?<!x)\d\s)x\s?(\d{1,2})(?![\w.,]\d|\w)/gi,
	/(?<![\w.,]|gen\s|usb\s|type\s)(\d{1,2})\s{1,3}(?!gb|mb|g\b)(?=(?:[a-zäöü]+[\s-]){0,3}(?:ports?\b|usb|type|typ\b|anschl|buchse|sockets?\b|headers?\b|stiftleist))/gi,
	/[:=]\s{0,3}(\d{1,2})\s{0,2}[^\d\s,;:]{0,8}\s{0,3}$/gi,
];

/** Counts that a piece of text gives, each value once. */
function countsIn(text: string): readonly number[] {
	return eachOnce(countForms.flatMap((form) => [...text.matchAll(form)].map(([, figure]) => Number(figure)))).filter(
		(count) => count > 0,
	);
}

type Part = {
	readonly count: number;
	readonly place?: "back" | "header";
	readonly plug?: "A" | "C";
	/** "2 internal by 1 header". */
	readonly headers?: number;
};

/** "2 rear, 2 front", "3 x Type-A + 1 x Type-C": parts that have a count each; nothing where one has none. */
function partsOf(text: string): readonly Part[] {
	const pieces = text.split(/[,;+&]|\s(?:and|und)\s|\/(?=\s?\d)/i).filter((piece) => piece.trim() !== "");
	const parts = pieces.flatMap((piece): Part[] => {
		const leading =
			piece.match(/^[\s:]{0,3}(\d{1,2})(?![\d.,])\s?x?(?!\s?(?:gb|mb|g\b))/i)?.[1] ??
			piece.match(/(?<!gen|usb|type)[\sx](\d{1,2})\s{0,3}$/i)?.[1];
		const place = placeIn(piece);
		const plugs = plugsIn(piece);
		if (leading === undefined || Number(leading) === 0 || place === "both" || plugs.length > 1) return [];
		if (place === undefined && plugs.length === 0) return [];
		const headers =
			/\b(?:via|by|through|over|per|über)\s(?:an?|(\d))\s(?:x\s)?(?:internal\s|front\s|usb\s)?headers?\b/i.exec(piece);
		return [
			known({
				count: Number(leading),
				place,
				plug: plugs[0],
				headers: headers ? Number(headers[1] ?? 1) : undefined,
			}) as Part,
		];
	});
	if (parts.length !== pieces.length) return [];
	// "1 x Type-A + 1 x Type-C at the back, 1 x Type-C by header": a place goes back to those before it without one.
	const isMixed = parts.some(({ place }) => place !== undefined) && parts.some(({ place }) => place === undefined);
	return isMixed
		? parts.map((part, index) => {
				const next = parts.slice(index).find(({ place }) => place !== undefined)?.place;
				return part.place === undefined && next !== undefined ? { ...part, place: next } : part;
			})
		: parts;
}

/** Whether a text divides by counts, be it in words of another language. */
const looksDivided = (text: string): boolean =>
	text.split(/[,;+]/).filter((piece) => /^\s{0,3}\d{1,2}\s(?!gb)/i.test(piece)).length > 1;

const sumOf = (parts: readonly Part[]): number => parts.reduce((sum, { count }) => sum + count, 0);

type Asked = { readonly usb: readonly UsbReading[]; readonly doubts: readonly Doubt[] };

function readItem(item: string, quote: string, around: "back" | "header" | undefined): Asked {
	const doubts: Doubt[] = [];
	const doubt = (about: string, might: readonly (number | string)[], why: string) =>
		doubts.push({ about, quote, might: eachOnce(might), why });

	const spelled = eachOnce(spelledRatesIn(item));
	const names = ratesIn(item);
	// "USB 2.0/1.1" tells that the old one works too.
	const certain = eachOnce(names.filter((rates) => rates.length === 1).flat());
	const open = names.filter((rates) => rates.length > 1);
	let gbps: number | undefined;
	if (spelled.length > 1 || certain.length > 1) {
		doubt("rate", [...spelled, ...certain], "The text names more than one rate.");
	} else if (spelled.length === 1) {
		const [rate] = spelled as [number];
		const agrees = names.every((rates) => rates.includes(rate));
		if (!standardRates.has(rate)) doubt("rate", [rate, ...names.flat()], "No USB has this rate.");
		else if (agrees) gbps = rate;
		else doubt("rate", [rate, ...names.flat()], "The name and the rate beside it do not agree.");
	} else if (certain.length === 1) {
		gbps = certain[0];
		if (open.some((rates) => !rates.includes(gbps as number))) {
			doubt("rate", [...certain, ...open.flat()], "The text names more than one rate.");
			gbps = undefined;
		}
	} else if (open.length > 0) {
		doubt("rate", open.flat(), "This name was used for more than one rate.");
	}

	const brackets = bracketsOf(item);
	const tailAt = [...brackets.outside.matchAll(/[:,-](?=\s?\d{1,2}\s)/g)]
		.map(({ index }) => index)
		.find((index) => {
			const [before, after] = [brackets.outside.slice(0, index), brackets.outside.slice(index + 1)];
			const mayBeOne = brackets.outside[index] === ":" && /usb/i.test(before) && !headerNoun.test(after);
			return partsOf(after).length > (mayBeOne ? 0 : 1);
		});
	const tail = tailAt === undefined ? "" : brackets.outside.slice(tailAt + 1);
	const whole = brackets.outside.slice(0, tailAt);
	const gives = whole.search(givesWord);
	const noun = gives < 0 ? whole : whole.slice(0, gives);
	const isHeader =
		headerNoun.test(noun) ||
		(around === "header" && !backWord.test(item) && /\bconnectors?\b/i.test(noun) && !/\bports?\b/i.test(noun)) ||
		brackets.inside.some((text) => namesHeader.test(text) && !wayWord.test(text));
	const head = isHeader && gives >= 0 ? whole.slice(0, gives) : whole;
	const dividers = [...brackets.inside, tail];
	const splits = dividers.map(partsOf).filter((parts) => parts.length > 0);

	const plugs = eachOnce([...plugsIn(item)]);
	const headPlace = placeIn(head);
	const bracketPlaces = eachOnce(brackets.inside.filter((text) => partsOf(text).length === 0).map(placeIn)).filter(
		(place) => place !== undefined,
	);
	const place = isHeader ? "header" : (headPlace ?? onlyOf(bracketPlaces) ?? around);
	const headCounts = countsIn(head);
	const bracketCounts = brackets.inside.flatMap((text) => {
		const alone = text.match(/^\s?x?\s?(\d{1,2})\s?x?\s?(?:ports?|stück)?\s?$/i)?.[1];
		return alone === undefined ? [] : [Number(alone)];
	});
	const counts = eachOnce(headCounts.length > 0 ? headCounts : bracketCounts);
	const total = onlyOf(counts);
	if (counts.length > 1) doubt("count", counts, "The text gives more than one count.");

	const plug = onlyOf(plugs);
	const base = { gbps, plug };
	const make = (facts: { readonly [K in keyof UsbReading]?: UsbReading[K] | undefined }): UsbReading =>
		({ ...known(facts), quote }) as UsbReading;

	if (someOfThem.test(item)) {
		doubt("some of them", [...certain, ...plugs], "The text speaks of some of the sockets only.");
		return { usb: [make({ place: place === "both" ? undefined : place, count: total })], doubts };
	}
	// "4 x USB 2.0 (2 x 9-pin headers)": the count before it is of sockets.
	const byHeaders = brackets.inside
		.map((text) => /^\s*(\d)\s?x\s[^(),]{0,30}headers?\s*$/i.exec(text)?.[1])
		.find((figure) => figure !== undefined);
	if (byHeaders !== undefined && total !== undefined && place !== "back")
		return { usb: [make({ ...base, place: "header", headers: Number(byHeaders), count: total })], doubts };
	if (isHeader) {
		const givenIn = [
			gives < 0 ? "" : whole.slice(gives),
			...brackets.inside.filter((text) => givesWord.test(text) || givenAlone.test(text)),
		];
		// "2 ports each" is said of every header.
		const times = givenIn.some((text) => /\beach\b|\bjeweils\b|\bje\b|\bcada\b|\bchacun\b|\bciascun/i.test(text))
			? (total ?? 1)
			: 1;
		const given = eachOnce(givenIn.flatMap(countsIn)).map((count) => count * times);
		if (given.length > 1) doubt("count", given, "The text gives more than one count of sockets.");
		if (plugs.length > 1) doubt("plug", plugs, "The text names both shapes.");
		return { usb: [make({ ...base, place: "header", headers: total, count: onlyOf(given) })], doubts };
	}
	if (place === "both" && splits.length === 0) {
		doubt("place", ["back", "header"], "The text names both places and does not say how many are at each.");
		return { usb: [make(base)], doubts };
	}
	const sidePlace = place === "both" ? undefined : place;
	if (splits.length === 0 && dividers.some(looksDivided)) {
		doubt("place", ["back", "header"], "The text divides the sockets in words that are not understood.");
		return { usb: [make({ ...base, count: total })], doubts };
	}
	const split = splits.find((parts) => parts.length > 1) ?? splits[0];
	if (split === undefined) {
		if (plugs.length > 1) doubt("plug", plugs, "The text names both shapes and does not say how many of each.");
		return { usb: [make({ ...base, place: sidePlace, count: total })], doubts };
	}
	const wholes = [total, ...splits.map(sumOf)].filter((sum) => sum !== undefined);
	if (onlyOf(wholes) === undefined) {
		const stated = [total, ...splits.flat().map(({ count }) => count)].filter((count) => count !== undefined);
		doubt("count", stated, "The parts do not add up to the whole.");
		return { usb: [make({ gbps, place: sidePlace })], doubts };
	}
	const rivals = splits.filter((parts) => parts.length > 1);
	if (rivals.length > 1) {
		doubt("plug", plugs, "The text divides the sockets in two ways and does not say which are which.");
	}
	const single = splits.find((parts) => parts !== split && parts.length === 1)?.[0];
	const sharedPlug = rivals.length > 1 || split.some((part) => part.plug !== undefined) ? undefined : plug;
	return {
		usb: split.map((part) =>
			make({
				gbps,
				plug: part.plug ?? sharedPlug,
				place: part.place ?? single?.place ?? sidePlace,
				count: part.count,
				headers: part.headers,
			}),
		),
		doubts,
	};
}

/**
 * USB sockets that a run of text tells of: shape, rate in Gb/s, count and place. `around` is the place that the section
 * head gives, if any. Never throws; what could mean two things is a doubt and has no value.
 */
export function readUsb(text: string, around?: "back" | "header"): Asked {
	const even = evenRun(text);
	let head = around;
	let last = 0;
	const read: Asked[] = [];
	for (const item of itemsOf(even, itemStart)) {
		// "Rear: 2 x USB ..., 4 x USB ...": the head stands for all behind it on its line.
		if (even.slice(last, item.from + 1).includes("\n")) head = around;
		last = item.to;
		const place = /:\s{0,9}$/.test(item.text) && countsIn(item.text).length === 0 ? placeIn(item.text) : undefined;
		if (place !== undefined) {
			head = place === "both" ? around : place;
			continue;
		}
		const isUsb = /usb/i.test(item.text) || partsOf(item.text.replace(/^[^:]*:/, "")).length > 0;
		if (!isUsb || /\bhubs?\b/i.test(item.text)) continue;
		read.push(readItem(item.text.replace(/^,/, " "), quoteOf(text, item), head));
	}
	return {
		usb: read.flatMap(({ usb }) => usb).filter((one) => Object.keys(one).length > 1),
		doubts: read.flatMap(({ doubts }) => doubts),
	};
}
