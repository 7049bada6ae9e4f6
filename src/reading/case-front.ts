import { type Doubt, evenRun } from "./quantities.ts";
import { readUsb } from "./read-usb.ts";

/** One sort of socket at the front. */
export interface FrontSocket {
	/** As the text names it, in one spelling: "USB 3.2 Gen 2 Type-C", "sound", "microphone". */
	readonly name: string;
	readonly count: number;
	readonly usb?: { readonly plug?: "A" | "C"; readonly gbps?: number };
}

export interface FrontRead {
	readonly sockets: readonly FrontSocket[];
	/** Items that could mean two things. */
	readonly unclear: readonly string[];
}

type Plug = "USB 9-pin" | "USB 19-pin" | "USB-C 20-pin" | "sound";
export interface FrontPlug {
	readonly plug: Plug;
	readonly count: number;
	readonly gbps?: number;
}

/** More sockets than this no line lists (own convention). */
const mostItems = 40;
const itemStart =
	/[;|+\n]|,(?!\d)|\s\/\s|\s(?:and|und|sowie|plus|as\swell\sas|&|&amp;)\s|\/(?=\s?(?:usb|audio|hd\b|mic|\d\s?x)|(?:headphone|kopfh))|(?<=(?:x\s?|\d\s)\d{1,2})\s(?=(?:\d\s?x\s?)?(?:usb|hd\b|audio|mic))|(?<=\S)\s(?=\d{1,2}\s?x\s?(?:usb|type|typ|hd\b|audio|mic|headphone|combo|3[.,]5))/gi;
const isUsb = /usb|\btype?[\s-]?[ac]\b/i;
const versionOf =
	/usb\s?-?(?:(?=[(\s]*\d)|(?:type?[\s-]?)?[ac]?[\s-]?(?=[(\s]*\d(?:\.\d|\s?gen)))\(?\s?([1-4](?:\.\d)?)(?![\d.]|\s?[gm]b)(?:\s?\(?gen\.?\s?-?(\d)(?:(\s?x\s?)(\d)(?!\d))?)?/i;
const rateOf = /(?<![\d.,])(\d{1,2})\s?gb(?:it)?\s?(?:ps|\/s)/i;
const soundWord = /audio|sound|head\s?-?(?:phone|set)|kopfhörer|ear\s?-?phone|\bline[\s-]?out\b|\bton\b/i;
const microphoneWord = /\bmic\b|\bmics\b|microphone|mikrofon|mikrophon|\bmicro\b/i;
/** One socket for both. */
const combined =
	/\b(?:hd\s)?(?:audio|head\s?phones?|headset)(?:[\s-]?(?:out|in))?\s?(?:\/|&|and|und|\+|-)\s?mic(?:rophone)?s?(?:[\s-]?in)?(?=[^,;|]{0,14}\b(?:comb\w*|kombi\w*|jack\b|shared))|\b(?:combo|combined|kombi\w*)\s(?:audio|head\s?phones?)(?:\s?(?:\/|&|and|\+)\s?mic(?:rophone)?s?)?/gi;
const noSocket = /\bhubs?\b|\bheaders?\b|\bfan|lüfter|\bled\b|\bbutton|\bknopf|\btaste|\bswitch|\bkey\b/i;

/** Sockets at the front of a case that a run of text lists. */
export function frontSocketsIn(text: string): FrontRead {
	const sockets: FrontSocket[] = [];
	const unclear: string[] = [];
	const run = evenRun(text).replace(combined, "audio combo");
	for (const whole of itemsOutsideBrackets(run)) {
		// "The front panel has 2 USB 3.0": the count begins the item.
		const item = whole
			.replace(/^[^\d(]{3,60}?(?=\b\d{1,2}\s(?:x\s)?(?:[a-z-]+\s)?(?:usb|type))/i, (words) =>
				isUsb.test(words) ? words : "",
			)
			.replace(/(type-?[ac]|usb-?[ac])(?=x\s?\d)/i, "$1 ");
		if (isUsb.test(item)) {
			if (/\bhubs?\b|\bheaders?\b|\bcables?\b|kabel/i.test(item)) continue;
			const socket = usbSocket(item);
			if (socket === undefined) unclear.push(item.trim());
			else sockets.push(socket);
			continue;
		}
		const isSound = soundWord.test(item);
		const isMicrophone = microphoneWord.test(item);
		if ((isSound || isMicrophone) && noSocket.test(item.replace(/head\w+/gi, ""))) continue;
		// "Combo" and "headset" are one socket for both.
		if (isSound && isMicrophone && !/combo|kombi|combined/i.test(item)) {
			sockets.push({ name: soundName(item), count: 1 }, { name: "microphone", count: 1 });
		} else if (isMicrophone && !isSound) sockets.push({ name: "microphone", count: 1 });
		else if (isSound || /3[.,]5\s?-?\s?mm/i.test(item))
			sockets.push({ name: isMicrophone ? "sound" : soundName(item), count: 1 });
	}
	return { sockets, unclear };
}

const soundName = (item: string): string =>
	/head\s?-?phone|kopfhörer|ear\s?-?phone/i.test(item) && !/audio|sound|combo|kombi/i.test(item)
		? "headphone"
		: "sound";

function itemsOutsideBrackets(text: string): readonly string[] {
	const cuts: number[] = [];
	let depth = 0;
	let at = 0;
	for (const found of text.matchAll(itemStart)) {
		for (; at < found.index; at++) depth += text[at] === "(" ? 1 : text[at] === ")" ? -1 : 0;
		if (depth <= 0) cuts.push(found.index);
	}
	return [0, ...cuts]
		.slice(0, mostItems)
		.map((from, index) => text.slice(from, cuts[index] ?? text.length).replace(/^[\s;|+,/&]+/, ""))
		.filter((item) => item.trim() !== "");
}

const generationRates: Readonly<Record<string, number>> = { "1": 5, "2": 10 };

/** "2 x USB", "USB 3.0 x 2", "USB 3.0 (2)". */
function countOf(item: string): number | undefined {
	const found =
		/^\W*(\d{1,2})\s?x\s?(?!\d)/i.exec(item) ??
		/^\W*(\d{1,2})\s(?=(?:[a-z-]+\s){0,2}?(?:usb|type))/i.exec(item) ??
		/(?<!gen\.?\s?-?\d)x\s?(\d)\W*$/i.exec(item) ??
		/\(\s?(\d)\s?x?\s?\)/i.exec(item);
	return found?.[1] === undefined ? undefined : Number(found[1]);
}

function usbSocket(item: string): FrontSocket | undefined {
	// The reader of boards knows rates, shapes and counts; "Type-C" alone is a socket here.
	const asked = readUsb(/usb/i.test(item) ? item : `USB ${item}`);
	const [first, ...others] = asked.usb;
	const isOpen = asked.doubts.some(({ about }: Doubt) => about !== "rate");
	const version = versionOf.exec(item);
	const isSpaced = version?.[3] !== undefined && version[3].length > 1;
	// "Gen 2 x 2" may be two lanes or two sockets; no front has the two lanes of "Gen 1 x 2". "3.0/2.0" is no name.
	const isTwoWays = isSpaced && version?.[2] === "2" && version[4] === "2";
	if (others.length > 0 || (isOpen && !isSpaced) || isTwoWays) return undefined;
	if (/\d\.\d\s?\/\s?\d\.\d/.test(item)) return undefined;
	const rate = rateOf.exec(item)?.[1];
	const { plug } = first ?? {};
	const [, digits, generation, , timesOrLanes] = version ?? [];
	const lanes = isSpaced ? undefined : timesOrLanes;
	const gbps = isSpaced ? generationRates[generation ?? ""] : first?.gbps;
	const count = countOf(item) ?? first?.count;
	const stem =
		digits !== undefined
			? `USB ${digits}${generation ? ` Gen ${generation}${lanes ? `x${lanes}` : ""}` : ""}`
			: rate !== undefined
				? `USB ${rate}Gbps`
				: undefined;
	const name = stem === undefined ? (plug ? `USB-${plug}` : "USB") : plug ? `${stem} Type-${plug}` : stem;
	return {
		name,
		count: count ?? 1,
		usb: { ...(plug && { plug }), ...(gbps !== undefined && { gbps }) },
	};
}

/**
 * The loose plugs that lead to these sockets, as the standards for internal cables have them: two sockets of USB 2.0 a
 * 9-pin plug, two of USB 5Gbps a 19-pin, one USB-C of 10 Gb/s or more a 20-pin. Nothing where one of them is not clear.
 */
export function frontPlugsOf(sockets: readonly FrontSocket[]): readonly FrontPlug[] | undefined {
	const counts = { two: 0, three: 0, threeUnknownRate: 0, sound: 0 };
	const shaped: FrontPlug[] = [];
	for (const { name, count, usb } of sockets) {
		if (!usb) {
			counts.sound = 1;
			continue;
		}
		const { plug, gbps } = usb;
		if (plug === "C") {
			if (gbps === undefined || gbps < 10) return undefined;
			shaped.push({ plug: "USB-C 20-pin", count, gbps });
		} else if (gbps === 0.48) counts.two += count;
		else if (gbps === 5) counts.three += count;
		else if (gbps === undefined && /^USB 3/.test(name) && (plug === "A" || name === "USB 3"))
			counts.threeUnknownRate += count;
		else return undefined;
	}
	const pairs = (sockets: number) => Math.ceil(sockets / 2);
	const plugs: FrontPlug[] = [...shaped];
	if (counts.three > 0 && counts.threeUnknownRate > 0) return undefined;
	if (counts.three > 0) plugs.push({ plug: "USB 19-pin", count: pairs(counts.three), gbps: 5 });
	if (counts.threeUnknownRate > 0) plugs.push({ plug: "USB 19-pin", count: pairs(counts.threeUnknownRate) });
	if (counts.two > 0) plugs.push({ plug: "USB 9-pin", count: pairs(counts.two), gbps: 0.48 });
	if (counts.sound > 0) plugs.push({ plug: "sound", count: 1 });
	return plugs;
}
