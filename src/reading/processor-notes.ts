import type { MemoryType } from "../parts/vocabulary.ts";
import { factCollector } from "./fact-collector.ts";
import type { ReadAt, ReadDoubt, ReadFact } from "./part-reading.ts";
import type { RateRead } from "./processor-memory.ts";

interface Noted<T> {
	readonly value: T;
	readonly at: ReadAt;
}

/** What the lines of a processor's page tell, gathered until all of them are read. */
export interface ProcessorNotes {
	found(fact: string, value: unknown, at: ReadAt): void;
	doubted(fact: string, might: readonly unknown[], at: ReadAt, why: string): void;
	/** A hint that counts only where no line tells the fact clearly. */
	hinted(fact: string, might: readonly unknown[], at: ReadAt, why: string): void;
	/** Counts where no line tells the fact with its own label. */
	otherwise(fact: string, value: unknown, at: ReadAt): void;
	/** One of several figures of which the highest is the fact. Two that are told in plain words must agree. */
	highest(fact: string, value: number, at: ReadAt, isPlain?: boolean): void;
	/** The one clock that a line gives without a name: the base clock where another is told as the boost. */
	plainClock(value: number, at: ReadAt): void;
	/** The most power by a label that may also mean the label watts: the peak where these are told apart. */
	mostPower(value: number, at: ReadAt): void;
	/** Whether so many more pieces of sentences are read; a page of more is rubbish. */
	mayRead(pieces: number): boolean;
	/** Done when all lines are read. */
	later(task: () => void): void;
	/** A part of all cores. */
	coresOfKind(kind: "fast" | "small", count: number, at: ReadAt): void;
	memoryType(type: MemoryType, at: ReadAt): void;
	memoryRate(rate: RateRead, at: ReadAt): void;
	laneCount(count: number): void;
	/** Lanes of the graphics card's slot, and of what is behind the plus sign. */
	laneSetup(setup: { readonly graphics: number; readonly others: number | undefined }, at: ReadAt): void;
	/** The only memory type so far, if there is one. */
	onlyMemoryType(): MemoryType | undefined;
	settled(): { readonly facts: readonly ReadFact[]; readonly doubts: readonly ReadDoubt[] };
}

export function processorNotes(): ProcessorNotes {
	const collector = factCollector();
	const told = new Set<string>();
	const hints: { fact: string; might: readonly unknown[]; at: ReadAt; why: string }[] = [];
	const others: { fact: string; value: unknown; at: ReadAt }[] = [];
	const highest = new Map<string, Noted<number>[]>();
	const kinds = new Map<"fast" | "small", Noted<number>[]>();
	const types: Noted<MemoryType>[] = [];
	const rates: Noted<RateRead>[] = [];
	const setups: Noted<{ readonly graphics: number; readonly others: number | undefined }>[] = [];
	const laneCounts: number[] = [];
	const plainBoosts: Noted<number>[] = [];
	const plainClocks: Noted<number>[] = [];
	const mostPowers: Noted<number>[] = [];
	const tasks: (() => void)[] = [];
	let pieces = 0;
	const isNew = onceOnly();
	const found = (fact: string, value: unknown, at: ReadAt, standing?: "assumed") => {
		told.add(fact);
		if (isNew(fact, [value, standing])) collector.found(fact, value, at, standing);
	};
	const doubted = (fact: string, might: readonly unknown[], at: ReadAt, why: string) => {
		told.add(fact);
		if (isNew(`${fact} open`, [might, why])) collector.doubted(fact, might, at, why);
	};
	/** Adds to a list what is not there yet. */
	const note = <T>(list: Noted<T>[], name: string, value: T, at: ReadAt) => {
		if (isNew(name, value)) list.push({ value, at });
	};

	const settleCores = () => {
		const [fast = [], small = []] = [kinds.get("fast"), kinds.get("small")];
		const [first, other] = [fast[0], small[0]];
		if (told.has("cores") || !first) return;
		const at = { line: first.at.line, quote: other ? `${first.at.quote} / ${other.at.quote}` : first.at.quote };
		const isOne = [fast, small].every((list) => list.every(({ value }) => value === list[0]?.value));
		if (other && isOne) found("cores", first.value + other.value, at);
		else if (other) doubted("cores", [], at, "The text counts kinds of cores in more than one way.");
		else doubted("cores", [], at, "The text counts the performance cores only, not all.");
	};
	const settleMemory = () => {
		const [first] = types;
		if (first) found("memory.types", [...new Set(types.map(({ value }) => value))], first.at);
		const rows: Noted<{ row: object; key: string; mtPerS: number; isStated: boolean }>[] = [];
		const channels = collector.settled().facts.find(({ fact }) => fact === "memory.channels")?.value;
		for (const { value, at } of rates) {
			const { type, mtPerS, modules, ranks } = value;
			const spread = modules !== undefined && typeof channels === "number" ? modules / channels : undefined;
			if (spread !== undefined && !Number.isInteger(spread)) continue;
			if (modules !== undefined && spread === undefined) {
				// Nobody knows how these share the channels; with one module a channel none is slower.
				const least = Math.min(...rates.filter((one) => one.value.type === type).map((one) => one.value.modules ?? 99));
				const rest = rates.filter((one) => one.value.type === type && one.value.modules === least);
				if (value.mtPerS !== Math.max(...rest.map((one) => one.value.mtPerS)) || modules !== least) continue;
				const row = { type, modulesPerChannel: 1, mtPerS };
				rows.push({ value: { row, key: `${type} 1`, mtPerS, isStated: false }, at });
				continue;
			}
			const given = value.modulesPerChannel ?? spread;
			const modulesPerChannel = given ?? 1;
			if (modulesPerChannel < 1 || modulesPerChannel > 4) continue;
			const row = { type, modulesPerChannel, ...(ranks === undefined ? {} : { ranks }), mtPerS };
			const key = `${type} ${modulesPerChannel}${ranks === undefined ? "" : ` ${ranks}`}`;
			rows.push({ value: { row, key, mtPerS, isStated: given !== undefined }, at });
		}
		// Where a table tells how many modules, a plain "up to" adds nothing.
		const isTable = (type: string) => rows.some(({ value }) => value.isStated && value.key.startsWith(type));
		const kept = rows.filter(({ value }) => value.isStated === isTable(value.key.slice(0, 4)));
		const byKey = new Map<string, typeof kept>();
		for (const one of kept) byKey.set(one.value.key, [...(byKey.get(one.value.key) ?? []), one]);
		let place = 0;
		for (const all of byKey.values()) {
			const [one] = all;
			if (!one) continue;
			if (all.every(({ value }) => value.mtPerS === one.value.mtPerS))
				// "Up to" holds with the fewest modules, one a channel.
				collector.found(`memory.rates[${place++}]`, one.value.row, one.at, one.value.isStated ? "stated" : "assumed");
			else
				collector.doubted(
					"memory.rates",
					all.map(({ value }) => [value.row]),
					one.at,
					"The text gives more than one rate for this memory.",
				);
		}
	};
	const knownValue = (fact: string) => collector.settled().facts.find((one) => one.fact === fact)?.value;
	const settleClock = () => {
		const boost = knownValue("boostGhz");
		const values = plainClocks.filter(({ value }) => value !== boost);
		const [first] = values;
		if (!first || told.has("baseGhz")) return;
		if (values.length === 1 && typeof boost === "number" && first.value < boost)
			found("baseGhz", first.value, first.at);
		else for (const { value, at } of values) hints.push({ fact: "baseGhz", might: [value], at, why: clockWithoutName });
	};
	const settlePower = () => {
		const base = knownValue("baseW");
		for (const { value, at } of mostPowers) {
			if (value === base || told.has("peakW")) continue;
			if (typeof base === "number" && value > base) found("peakW", value, at);
			else hints.push({ fact: "peakW", might: [value], at, why: "The most power may also be the label watts." });
		}
		// Bare watts that another line calls the peak are no label watts.
		const peak = knownValue("peakW");
		for (let at = others.length - 1; at >= 0; at--)
			if (others[at]?.fact === "baseW" && others[at]?.value === peak) others.splice(at, 1);
	};
	const settleLanes = () => {
		const isTotal = ({ value }: (typeof setups)[number]) =>
			laneCounts.length === 0 || laneCounts.includes(value.graphics + (value.others ?? 0));
		for (const setup of setups.filter(isTotal)) {
			found("lanes.graphics", setup.value.graphics, setup.at);
			if (setup.value.others !== undefined) found("lanes.storage", setup.value.others, setup.at, "assumed");
		}
	};

	return {
		found,
		doubted,
		hinted(fact, might, at, why) {
			if (isNew(`${fact} hint`, might)) hints.push({ fact, might, at, why });
		},
		otherwise(fact, value, at) {
			if (isNew(`${fact} otherwise`, value)) others.push({ fact, value, at });
		},
		highest(fact, value, at, isPlain = false) {
			if (isPlain && fact === "boostGhz") note(plainBoosts, "plain boost", value, at);
			const all = highest.get(fact) ?? [];
			highest.set(fact, all);
			note(all, `${fact} highest`, value, at);
		},
		plainClock: (value, at) => note(plainClocks, "plain clock", value, at),
		mostPower: (value, at) => note(mostPowers, "most power", value, at),
		mayRead(more) {
			pieces += more;
			return pieces <= mostPieces;
		},
		later: (task) => {
			if (tasks.length < mostTasks) tasks.push(task);
		},
		coresOfKind(kind, value, at) {
			const all = kinds.get(kind) ?? [];
			kinds.set(kind, all);
			note(all, `${kind} cores`, value, at);
		},
		memoryType: (value, at) => note(types, "type", value, at),
		memoryRate: (value, at) => note(rates, "rate", value, at),
		laneCount(count) {
			if (isNew("lanes", count)) laneCounts.push(count);
		},
		laneSetup: (value, at) => note(setups, "setup", value, at),
		onlyMemoryType: () => {
			const [first] = types;
			return types.every(({ value }) => value === first?.value) ? first?.value : undefined;
		},
		settled() {
			for (const task of tasks) task();
			settlePower();
			for (const { fact, value, at } of others.filter((one) => !told.has(one.fact))) found(fact, value, at);
			settleCores();
			// Where a page tells of several processors, the highest figure may be another's.
			const isOfSeveral = collector
				.settled()
				.doubts.some(({ fact, might }) => ["cores", "threads", "socket"].includes(fact) && might.length > 1);
			for (const [fact, all] of highest) {
				const most = Math.max(...all.map(({ value }) => value));
				const plain = fact === "boostGhz" && plainBoosts.length > 1 ? plainBoosts : [];
				for (const { value, at } of plain) found(fact, value, at);
				for (const { value, at } of all) if (isOfSeveral || value === most) found(fact, value, at);
			}
			settleClock();
			settleMemory();
			settleLanes();
			const plain = collector.settled().facts;
			for (const { fact, might, at, why } of hints) {
				const known = plain.filter((one) => [fact, partner[fact]].includes(one.fact)).map(({ value }) => value);
				// A bare figure that is one of the two known ones tells nothing new.
				if (told.has(fact) || might.some((value) => known.includes(value))) continue;
				collector.doubted(fact, might, at, why);
			}
			return inOrder(collector.settled());
		},
	};
}

export const clockWithoutName = "The text gives a clock and does not say which.";

/** Pieces of sentences on one page; own convention, for rubbish. */
const mostPieces = 8000;

/** Lines that wait for others; own convention, for rubbish. */
const mostTasks = 200;

/** More different values for one fact come from no page of a processor; own convention, for rubbish. */
const mostValues = 40;

/** Whether a value is told of a fact for the first time, and there are not too many. */
function onceOnly(): (fact: string, value: unknown) => boolean {
	const seen = new Map<string, Set<string>>();
	return (fact, value) => {
		const all = seen.get(fact) ?? new Set();
		seen.set(fact, all);
		const key = JSON.stringify(value);
		if (all.has(key) || all.size >= mostValues) return false;
		all.add(key);
		return true;
	};
}

/** A bare clock or bare watts may be either of two facts. */
const partner: Readonly<Record<string, string>> = {
	baseGhz: "boostGhz",
	boostGhz: "baseGhz",
	baseW: "peakW",
	peakW: "baseW",
};

/** A base above its highest figure: one of the two is read wrongly, and nobody can tell which. */
function inOrder({ facts, doubts }: ReturnType<ProcessorNotes["settled"]>): ReturnType<ProcessorNotes["settled"]> {
	const wrong = (
		[
			["baseGhz", "boostGhz"],
			["baseW", "peakW"],
			["cores", "threads"],
		] as const
	).flatMap(([low, high]) => {
		const pair = [low, high].map((name) => facts.find(({ fact }) => fact === name));
		const [one, other] = pair;
		return one && other && Number(one.value) > Number(other.value) ? [one, other] : [];
	});
	return {
		facts: facts.filter((fact) => !wrong.includes(fact)),
		doubts: [
			...doubts,
			...wrong.map(({ fact, value, line, quote }) => ({
				fact,
				might: [value],
				line,
				quote,
				why: "The lower figure is above the higher one.",
			})),
		],
	};
}
