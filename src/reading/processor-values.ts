import type { ReadAt } from "./part-reading.ts";
import { clocksIn, coresIn, wattsIn, yesOrNo } from "./processor-figures.ts";
import { channelsIn, correctionIn, memoryRatesIn, memoryTypesIn, mostMemoryIn } from "./processor-memory.ts";
import { clockWithoutName, type ProcessorNotes } from "./processor-notes.ts";
import { inProcessorTerms } from "./processor-terms.ts";
import {
	clockNamed,
	isOfGraphics,
	isOfMemory,
	isOfSmallCores,
	type ProcessorTopic,
	powerNamed,
} from "./processor-topics.ts";
import { bracketsOf } from "./quantities.ts";

/** A value, what it stands under, and where. */
export interface ProcessorValue {
	readonly value: string;
	/** Label, with the head over it. */
	readonly context: string;
	readonly label: string;
	readonly at: ReadAt;
}

/** Reads a value by what its label is about; false where it is not understood. */
export function readValue(topic: ProcessorTopic, one: ProcessorValue, notes: ProcessorNotes): boolean {
	if (ownWords.has(topic)) return readers[topic]?.(one, notes) ?? true;
	const [value, label] = [inProcessorTerms(one.value), inProcessorTerms(one.label)];
	const told = { value: withUnitOf(one.label, value), label, context: inProcessorTerms(one.context), at: one.at };
	return readers[topic]?.(told, notes) ?? true;
}

/** Topics whose value is a name. */
const ownWords: ReadonlySet<ProcessorTopic> = new Set<ProcessorTopic>(["name", "series", "generation", "codeName"]);

/** "TDP (W): 65": the unit stands in the label. */
function withUnitOf(label: string, value: string): string {
	const [, unit] = /[([,/]\s?(ghz|mhz|ггц|мгц|w|вт|watts?|gb|гб|tb|°\s?c|mt\/s|s)\s?[)\]]?$/iu.exec(label.trim()) ?? [];
	if (unit === undefined || !/^[~≤]?\s?\d+(?:[.,]\d+)?(?:\s?[-–/]\s?\d+(?:[.,]\d+)?)?$/.test(value.trim()))
		return value;
	return `${value.trim()} ${inProcessorTerms(`1 ${unit}`).slice(2)}`;
}

type Reader = (one: ProcessorValue, notes: ProcessorNotes) => boolean;

const text = (fact: "series" | "generation"): Reader => {
	return ({ value, at }, notes) => {
		const plain = value.replace(/[®™‡†*]|\((?:r|tm)\)/gi, "").trim();
		if (plain.length > 60 || !/[\p{L}\d]/u.test(plain) || yesOrNo(plain) !== undefined) return false;
		notes.found(fact, plain, at);
		return true;
	};
};

/** The one number of several ways to tell it, or a doubt. */
function oneOf(fact: string, values: readonly number[], at: ReadAt, notes: ProcessorNotes): boolean {
	const [first] = values;
	if (first === undefined) return false;
	if (values.length === 1) notes.found(fact, first, at);
	else notes.doubted(fact, values, at, "The line gives more than one number.");
	return true;
}

const count = (value: string): number | undefined => {
	const [, digits] = /^\s*(?:up to |bis zu )?(\d{1,4})(?![\w.,+-])/i.exec(value) ?? [];
	return digits === undefined ? undefined : Number(digits);
};

const readCores: Reader = ({ value, context, at }, notes) => {
	if (isOfGraphics(context) || isOfGraphics(value)) return true;
	const split = /^\s*(\d{1,3})\s?c?\s?\/\s?(\d{1,3})\s?t?\b/i.exec(value);
	if (split && /t\b|thread/i.test(value)) return readCoresAndThreads({ value, context, label: "", at }, notes);
	const threads = /(\d{1,4})[\s-]?(?:threads?\b|t\b)/i.exec(value);
	if (threads) notes.found("threads", Number(threads[1]), at);
	return oneOf("cores", coresIn(value), at, notes);
};

const readCoresAndThreads: Reader = ({ value, context, at }, notes) => {
	if (isOfGraphics(context)) return true;
	const threads = /(\d{1,4})[\s-]?(?:threads?\b|t\b)/i.exec(value);
	const [, first, second] = /^\s*(\d{1,3})\s?(?:c\w*|kerne?)?\s?[/|,&+]\s?(\d{1,4})\s?(?:t\w*)?\s*$/i.exec(value) ?? [];
	if (first && second) {
		notes.found("cores", Number(first), at);
		notes.found("threads", Number(second), at);
		return true;
	}
	if (threads) notes.found("threads", Number(threads[1]), at);
	const rest = threads ? value.slice(0, threads.index).replace(/[/,|&\s]+$/, "") : value;
	return oneOf("cores", coresIn(rest), at, notes) || threads !== null;
};

const ofKind = (kind: "fast" | "small"): Reader => {
	return ({ value, context, at }, notes) => {
		const number = count(value) ?? coresIn(value)[0];
		if (number === undefined || isOfGraphics(context)) return false;
		notes.coresOfKind(kind, number, at);
		return true;
	};
};

/** Words that tell of which boost a figure is: a boost told so need not be the highest. */
const boostOfKind =
	/all|alle|core|kern|performance|velocity|technology|\b[12]\b|single|multi|\bp\b|\bt[bv]b|ii\b|[23]\.0/i;

const readClock = (kind: "base" | "boost" | "both" | undefined): Reader => {
	return ({ value, context, label, at }, notes) => {
		const clocks = clocksIn(value);
		if (clocks.length === 0) return false;
		if (isOfGraphics(context) || isOfMemory(context) || isOfSmallCores(context)) return true;
		const figures = clocks.filter(
			({ words }) => clockNamed(words) !== "other" && !isOfSmallCores(words) && !/^e$/i.test(words),
		);
		const bare = figures.filter(({ words }) => clockNamed(words) === undefined);
		const hasBoost = figures.some(({ words }) => clockNamed(words) === "boost");
		const boosts = (ghz: number, words: string) =>
			notes.highest("boostGhz", ghz, at, !boostOfKind.test(`${context} ${words}`) && figures.length === 1);
		if (kind === "both") {
			const [first, second = first] = bare;
			const [low, high] = [first?.value, first?.to ?? (bare.length === 2 ? second?.value : undefined)];
			if (figures.length === bare.length && low !== undefined && high !== undefined && low !== high) {
				// The lower one is the base, whichever the label names first.
				notes.found("baseGhz", Math.min(low, high), at);
				notes.highest("boostGhz", Math.max(low, high), at);
				return true;
			}
		}
		const sure = kind === "both" ? undefined : kind;
		for (const { value: ghz, to, words } of figures) {
			const named = clockNamed(words) ?? sure ?? (hasBoost && bare.length === 1 ? "base" : undefined);
			if (named === "boost" || (sure === "boost" && named !== "base")) boosts(to ?? ghz, words);
			else if (named === "base" && ghz < 0.5) continue;
			else if (named === "base" && sure === "base" && bare.length > 1) {
				const all = bare.map((one) => one.value);
				notes.doubted("baseGhz", all, at, "The line gives more than one base clock.");
			} else if (named === "base" && to === undefined) notes.found("baseGhz", ghz, at);
			else if (to !== undefined && to > ghz && named === undefined && figures.length === 1) {
				notes.found("baseGhz", ghz, at);
				notes.highest("boostGhz", to, at);
			} else if (to === undefined) {
				if (figures.length === 1) notes.plainClock(ghz, at);
				else notes.hinted("baseGhz", [ghz], at, clockWithoutName);
			} else notes.doubted("baseGhz", [ghz, to], at, "The line gives a range.");
		}
		return label !== "" || figures.length > 0;
	};
};

const barePower = "The text gives watts and does not say which.";

const readPower = (kind: "base" | "peak" | "both" | undefined): Reader => {
	return ({ value, context, at }, notes) => {
		const figures = wattsIn(value).filter(({ words }) => powerNamed(words) !== "other");
		if (isOfGraphics(context)) return true;
		if (figures.length === 0) {
			// "TDP: 65", where the label is sure.
			const bare = count(value);
			if (bare === undefined || !/^\s*\d+\s*$/.test(value) || (kind !== "base" && kind !== "peak")) return false;
			notes.found(kind === "base" ? "baseW" : "peakW", bare, at);
			return true;
		}
		const fact = { base: "baseW", peak: "peakW" } as const;
		const nameless = figures.filter(({ words }) => powerNamed(words) === undefined);
		for (const { value: watts, words, to } of figures) {
			const named = powerNamed(words);
			if (named === "base" || named === "peak") {
				if (to === undefined) notes.found(fact[named], watts, at);
				else notes.doubted(fact[named], [watts, to], at, "The line gives a range.");
			}
		}
		const bare = nameless.flatMap(({ value: watts, to }) => (to === undefined ? [watts] : [watts, to]));
		const [first, second] = bare;
		if (first === undefined) return true;
		if (kind === "both" && second !== undefined && bare.length === 2) {
			// The lower one is the base, whichever the label names first.
			notes.found("baseW", Math.min(first, second), at);
			notes.found("peakW", Math.max(first, second), at);
		} else if ((kind === "base" || kind === "peak") && bare.length === 1) {
			if (!figures.some(({ words }) => powerNamed(words) === kind)) notes.found(fact[kind], first, at);
		} else if (kind === "base" || kind === "peak") {
			notes.doubted(fact[kind], bare, at, "The line gives more than one figure.");
		} else if (bare.length === 2 && second !== undefined && first < second) {
			const why = "The text gives a range of watts and does not say what its ends are.";
			notes.hinted("baseW", [first], at, why);
			notes.hinted("peakW", [second], at, why);
		} else notes.hinted("baseW", bare, at, barePower);
		return true;
	};
};

/** "Most power: 92 W", or "from 60 W to 89 W": what is below the most may be the label watts or another limit. */
const readMostPower: Reader = (one, notes) => {
	const bare = wattsIn(one.value).filter(({ words }) => powerNamed(words) === undefined);
	const all = bare.flatMap(({ value, to }) => (to === undefined ? [value] : [value, to]));
	const [first, second] = all;
	const isAlone = wattsIn(one.value).length === bare.length;
	if (isOfGraphics(one.context) || first === undefined || !isAlone) return readPower(undefined)(one, notes);
	if (second === undefined) notes.mostPower(first, one.at);
	else if (all.length === 2 && second > first) {
		notes.found("peakW", second, one.at);
		notes.hinted("baseW", [first], one.at, "The text gives a range of watts and does not say what its lower end is.");
	} else notes.hinted("peakW", all, one.at, barePower);
	return true;
};

const noGraphics =
	/graphics card (?:\p{L}{1,7} )?(?:required|needed)|(?:required|requires|needs) (?:a |\p{L}{1,4} )?graphics card|without (?:integrated )?graphics|(?:discrete|dedicated|separate|graphics|dedizierte|separate|eigene)\s?(?:graphics|grafik)?\s?-?(?:card|karte)?\s?(?:is |wird )?(?:required|needed|erforderlich|benötigt|notwendig)|grafikkarte (?:ist |wird )?(?:erforderlich|benötigt|notwendig)|(?:no|without|ohne|keine?) (?:integrated |integrierte |onboard |interne |own |eigene )?(?:graphics|grafik|i?gpu|igp)(?! card)/iu;

const readGraphics: Reader = ({ value, context, at }, notes) => {
	const plain = value.trim();
	if (noGraphics.test(plain) || yesOrNo(plain) === false) {
		notes.found("graphics", false, at);
		return true;
	}
	if (/^[-–—]+$/.test(plain)) {
		notes.doubted("graphics", [false], at, "The page leaves the place empty.");
		return true;
	}
	if (yesOrNo(plain)) {
		notes.found("graphics", true, at);
		return true;
	}
	const isOther = /pci|slot|x16|card|karte|\b(?:discrete|dedicated|dediziert|separat)/i.test(plain);
	if (isOther || !/\p{L}{3}/u.test(plain)) return false;
	if (/\b(?:not?|nicht|keine?|without|ohne|depend|abhängig|optional)\b/i.test(plain)) {
		notes.doubted("graphics", [true, false], at, "The line can be read both ways.");
		return true;
	}
	if (/support|unterstütz/i.test(context)) return false;
	notes.found("graphics", true, at);
	return true;
};

const readCooler = (isSure: boolean): Reader => {
	return ({ value, at }, notes) => {
		const plain = value.trim();
		const saysNo =
			/\b(?:no|not|pas|nie|není|без|ne) (?:\S+ )?(?:includ|supplied|box)|\b(?:not (?:included|in)|nicht (?:enthalten|im|dabei|inkl)|without|ohne|sold separately|separat|tray)\b/i;
		const saysYes = /(?<!not )\binclud|lieferumfang|enthalten|\binkl|\bmit\b|\bwith\b|in (?:the )?box|boxed/i;
		if (/recommend|empfohlen|require|erforderlich/i.test(plain)) return false;
		const first = yesOrNo(plain);
		if (saysNo.test(plain) || first === false) notes.found("coolerInBox", false, at);
		else if (first || saysYes.test(plain) || (isSure && /\p{L}{3}/u.test(plain))) notes.found("coolerInBox", true, at);
		else if (/\p{L}{3}/u.test(plain))
			notes.hinted("coolerInBox", [true], at, "The line names a cooler and does not say that it is in the box.");
		else return false;
		return true;
	};
};

/** What is in the box; a list without a cooler does not say that there is none. */
const readContents: Reader = ({ value, at }, notes) => {
	for (const piece of value.slice(0, 1000).split(/[,;+•]|\s(?:and|und|et|y|e|i|та|и|a|ve|en)\s/i)) {
		if (!/cooler|cooling|kühler|heat ?sink|\bfan\b|lüfter/i.test(piece)) continue;
		const isNot = /\b(?:not?|without|ohne|nicht|kein\w*|pas|nie|none|separate\w*|separat\w*)\b/i.test(piece);
		notes.found("coolerInBox", !isNot, at);
	}
	return true;
};

/** Names of sockets in a value. What is soldered has no socket; "FC" tells how the chip is mounted. */
export function socketsIn(value: string): readonly string[] {
	const { outside, inside } = bracketsOf(value.slice(0, 200));
	const named = namesOfSockets(outside);
	// "Lantern 4 (LGA1432)" is one socket with two names; the first is the one boards print.
	return named.length > 0 ? named : namesOfSockets(inside.join(","));
}

function namesOfSockets(value: string): readonly string[] {
	return value
		.split(/[,;/|]|\s(?:and|und|or|oder)\s/i)
		.map((part) =>
			part
				.replace(/\b(?:cpu[\s-]*)?(?:socket|sockel)\b/gi, " ")
				.replace(/[®™‡†*]/g, "")
				.replace(/^\s*1\s?[x×]\s/i, "")
				.trim()
				.replace(/^FC-?(?=[LPB]GA)/i, "")
				.replace(/^([LPB])GA[\s-]*(?=\d)/i, (_all, letter: string) => `${letter.toUpperCase()}GA`)
				.replace(/\s+/g, " ")
				// The maker's name stands before it.
				.replace(/^(?:\p{Lu}\p{Ll}\p{L}+\s)+(?=[A-Z]{1,4}\d{1,4}\+?$)/u, ""),
		)
		.filter(
			(name) =>
				name !== "" &&
				name.length <= 40 &&
				!/^[µu]?BGA/i.test(name) &&
				/\d/.test(name) &&
				!/\d[\s-]?pins?\b|€|\$|ddr|pci|usb|hz\b|\d\s?[gmt]b\b|\bmax\b|[:=()]|\b(?:not|no|nicht|kein|from|ab|boards?)\b/i.test(
					name,
				),
		);
}

const readSocket: Reader = ({ value, at }, notes) => {
	if (/\b\d\s?s only|\d\s?mm\b/i.test(value)) return false;
	const names = socketsIn(value).filter(
		(name) => !/^\d{1,2}$/.test(name) && name.split(" ").length <= 3 && !/\d\s?(?:[gm]hz|w|nm|mm)\b/i.test(name),
	);
	for (const name of names) {
		if (/^\d{3,5}$/.test(name))
			notes.hinted("socket", [`LGA${name}`, name], at, "The page gives the number of a socket without its letters.");
		else notes.found("socket", name, at);
	}
	return names.length > 0;
};

const readPackage: Reader = (one, notes) => {
	const names = socketsIn(one.value).filter((name) => /^[LP]GA-?\d/i.test(name));
	for (const name of names) notes.found("socket", name, one.at);
	return names.length > 0;
};

/** Memory types, rates, channels and the most, wherever a text tells them. */
export const readMemoryWords: Reader = ({ value, label, at }, notes) => {
	const types = memoryTypesIn(value);
	for (const type of types) notes.memoryType(type, at);
	// "Memory speed (DDR5), 2 DPC: 4400 MT/s"
	const isInLabel = types.length === 0 || /dpc\b|\dr\b|per channel|je kanal|pro kanal/i.test(label);
	if (types.length === 0 && yesOrNo(value) !== false && /\d{4}|yes|ja/i.test(value))
		for (const type of memoryTypesIn(label)) notes.memoryType(type, at);
	const whole = isInLabel ? `${label.replace(/[,;|]/g, " ")} ${value}` : value;
	const rates = memoryRatesIn(whole, notes.onlyMemoryType());
	for (const rate of rates) notes.memoryRate(rate, at);
	// The line with the type may stand below.
	if (rates.length === 0 && types.length === 0 && label !== "" && /\d{4}/.test(value))
		notes.later(() => {
			for (const rate of memoryRatesIn(whole, notes.onlyMemoryType())) notes.memoryRate(rate, at);
		});
	const channels = oneOf("memory.channels", channelsIn(value, false), at, notes);
	const most = types.length > 0 || /memory|speicher/i.test(value) || rates.length > 0;
	const sizes = most ? oneOf("memory.maxGb", mostMemoryIn(value, false), at, notes) : false;
	return noteCorrection(correctionIn(value), at, notes) || types.length > 0 || rates.length > 0 || channels || sizes;
};

function noteCorrection(works: boolean | "open" | undefined, at: ReadAt, notes: ProcessorNotes): boolean {
	if (works === "open")
		notes.doubted("memory.errorCorrection", [true, false], at, "The page says that it depends on something.");
	else if (works !== undefined) notes.found("memory.errorCorrection", works, at);
	return works !== undefined;
}

const readCorrection: Reader = ({ value, at }, notes) => {
	const works = /\b(?:depend|abhängig|je nach|optional)/i.test(value) ? "open" : yesOrNo(value);
	return noteCorrection(works ?? correctionIn(value), at, notes);
};

const readMemoryRow: Reader = (one, notes) => {
	const isMemory = readMemoryWords(one, notes);
	if (isMemory || !/max|most|size|höchst|größe|maximal/i.test(one.label)) return isMemory;
	return oneOf("memory.maxGb", mostMemoryIn(one.value, true), one.at, notes);
};

const readMost: Reader = (one, notes) => {
	const isMost = oneOf("memory.maxGb", mostMemoryIn(one.value, true), one.at, notes);
	return readMemoryWords({ ...one, value: one.value.replace(/\d+\s?[gt]i?b/gi, "") }, notes) || isMost;
};

/** PCI Express generations: "5.0", "PCIe 4", "Gen 5". */
export function generationsIn(value: string): readonly number[] {
	const form =
		/(?<![\w.,])([1-7])\.0(?![\w.,]?\d)|\b(?:pcie|pci[ -]?express|pci-e|gen(?:eration)?)\s?\.?\s?([1-7])(?![\w,]|\.\d)/gi;
	return [...value.slice(0, 300).matchAll(form)].map(([, one, other]) => Number(one ?? other));
}

const readLaneGeneration: Reader = ({ value, context, at }, notes) => {
	if (isOfGraphics(context) || /chipset|chipsatz/i.test(value)) return true;
	const found = generationsIn(value);
	const single = /^\s*([1-7])\s*$/.exec(value);
	for (const generation of single ? [Number(single[1])] : found) notes.highest("lanes.generation", generation, at);
	return found.length > 0 || single !== null;
};

const readLanes: Reader = (one, notes) => {
	const all = [...one.value.matchAll(/(?<![\w.,])(\d{1,3})(?![\w.]|,\d)/g)].map(([, digits]) => Number(digits));
	for (const lanes of all) notes.laneCount(lanes);
	if (/pci/i.test(one.value)) readLaneGeneration(one, notes);
	return all.length > 0 || /pci/i.test(one.value);
};

const readLaneSetup: Reader = ({ value, at }, notes) => {
	const [first = ""] = value.split(/,|\bor\b|\boder\b|;/i);
	const [, rest] = /(?:^|\s)1\s?x\s?16((?:\s?\+\s?(?:\d{1,2}\s?x\s?)?\d{1,2})*)\s*$/i.exec(first) ?? [];
	if (rest === undefined) return false;
	const others = [...rest.matchAll(/\+\s?(?:(\d{1,2})\s?x\s?)?(\d{1,2})/gi)].reduce(
		(sum, [, times, lanes]) => sum + Number(times ?? 1) * Number(lanes),
		0,
	);
	notes.laneSetup({ graphics: 16, others: others === 0 ? undefined : others }, at);
	return true;
};

const readUplink: Reader = ({ value, label, at }, notes) => {
	const [, wide] = /\bx\s?(\d{1,2})(?!\d)/i.exec(value) ?? [];
	const [, lanes] =
		(/lane/i.test(label) ? /^\s*(\d{1,2})(?![\w.,])/ : /(?<![\w.,])(\d{1,2}) lanes?\b/i).exec(value) ?? [];
	return oneOf(
		"lanes.uplink",
		[Number(wide ?? lanes)].filter((number) => number >= 1),
		at,
		notes,
	);
};

const readGraphicsLanes: Reader = ({ value, at }, notes) => {
	const [, lanes] = /^\s*(?:1\s?x\s?|x\s?)?(\d{1,3})(?![\w.,])/i.exec(value) ?? [];
	return oneOf("lanes.graphics", lanes === undefined ? [] : [Number(lanes)], at, notes);
};

const readHottest: Reader = ({ value, label, at }, notes) => {
	const range = /(-?\d{1,3})\s?°?\s?c?\s?(?:-|–|~|to|bis)\s?\+?(\d{2,3})\s?°?\s?c(?![\p{L}])/iu.exec(value);
	const figures = range
		? [Number(range[2])]
		: [...value.matchAll(/(?<![\w.,-])(\d{2,3})(?:[.,]\d)?\s?(?:°\s?c?|degrees? c|grad|c)(?![\p{L}])/giu)].map(
				([, digits]) => Number(digits),
			);
	const bare = /^\s*(\d{2,3})\s*$/.exec(value);
	const [first] = bare ? [Number(bare[1])] : figures;
	if (first === undefined || first < 40 || first > 130) return false;
	const isMost = /tj|junction|max|höchst/i.test(label) && !/case/i.test(label);
	if (isMost && figures.length < 2) notes.found("hottestC", first, at);
	else notes.hinted("hottestC", [first], at, "The text gives a temperature and does not say that it is the highest.");
	return true;
};

const readAveraging: Reader = ({ value, at }, notes) => {
	const [, seconds] = /(?<![\w.,])(\d{1,3}(?:[.,]\d{1,3})?)\s?(?:s|sec\w*|sek\w*)(?![\p{L}])/iu.exec(value) ?? [];
	return oneOf("averagingS", seconds === undefined ? [] : [Number(seconds.replace(",", "."))], at, notes);
};

const readUnlocked: Reader = ({ value, label, at }, notes) => {
	const isLockLabel = /\blocked|gesperrt/i.test(label);
	if (/memory|speicher|ram\b/i.test(`${label} ${value}`)) return false;
	const says = yesOrNo(value);
	if (says === undefined) return false;
	notes.found("unlocked", isLockLabel ? !says : says, at);
	return true;
};

const readers: Partial<Readonly<Record<ProcessorTopic, Reader>>> = {
	series: text("series"),
	generation: text("generation"),
	codeName: ({ value, at }, notes) => {
		const name = value.replace(/^products? formerly /i, "").trim();
		if (name === "" || name.length > 60 || !/\p{L}/u.test(name)) return false;
		notes.otherwise("generation", name, at);
		return true;
	},
	socket: readSocket,
	package: readPackage,
	cores: readCores,
	coresAndThreads: readCoresAndThreads,
	fastCores: ofKind("fast"),
	smallCores: ofKind("small"),
	threads: ({ value, context, at }, notes) => {
		const threads = /(?<![\w.,])(\d{1,4})[\s-]?(?:threads?\b|t\b)/i.exec(value)?.[1];
		const number = threads === undefined ? count(value) : Number(threads);
		if (number === undefined || isOfGraphics(context)) return false;
		notes.found("threads", number, at);
		return true;
	},
	baseClock: readClock("base"),
	boostClock: readClock("boost"),
	clock: readClock(undefined),
	baseBoostClock: readClock("both"),
	unlocked: readUnlocked,
	graphics: readGraphics,
	graphicsDetail: ({ value, at }, notes) => {
		// Units and clocks of graphics are there only where graphics are.
		if (/^\s*[1-9]|\d\s?[gm]hz/i.test(value)) notes.hinted("graphics", [true], at, "The page tells of graphics.");
		return true;
	},
	graphicsLanes: readGraphicsLanes,
	cooler: readCooler(false),
	coolerInBox: readCooler(true),
	contents: readContents,
	basePower: readPower("base"),
	peakPower: readPower("peak"),
	basePeakPower: readPower("both"),
	power: readPower(undefined),
	mostPower: readMostPower,
	hottest: readHottest,
	averaging: readAveraging,
	memory: readMemoryRow,
	memoryMost: readMost,
	memoryChannels: (one, notes) => {
		const most = readMemoryWords(one, notes);
		return most && channelsIn(one.value, false).length > 0
			? true
			: oneOf("memory.channels", channelsIn(one.value, true), one.at, notes) || most;
	},
	memoryCorrection: readCorrection,
	uplink: readUplink,
	lanes: readLanes,
	laneSetup: readLaneSetup,
	laneGeneration: readLaneGeneration,
};

/** Words outside any label that say there are no graphics. */
export const saysNoGraphics = (words: string): boolean => noGraphics.test(words);
