import { type PartOf, partKinds } from "../parts/part-kinds.ts";

/** The kinds of part whose pages can be read. */
export const readKinds = ["board", "processor", "case"] as const;
export type ReadKind = (typeof readKinds)[number];

/** Where in the text something stands. */
export interface ReadAt {
	/** Line of the pasted text, from 1. */
	readonly line: number;
	/** The words of the text, as they stand there. */
	readonly quote: string;
}

/** One fact that the text gives. */
export interface ReadFact extends ReadAt {
	/** Path of the fact in the part; an entry of a list has its number, such as "m2Sockets[0]". */
	readonly fact: string;
	/** As the part's schema has it. */
	readonly value: unknown;
	/** "assumed": it follows from a standard that the text names. */
	readonly standing: "stated" | "assumed";
	/** Keys within the value that are not stated and follow from a standard, where the rest is stated. */
	readonly assumed?: readonly string[];
	/** USB sockets that the headers give, where the text counts these. */
	readonly ports?: number;
}

/** Something the text leaves open or tells in two ways. A fact in doubt is not in the part. */
export interface ReadDoubt extends ReadAt {
	/** Path of the fact, as in ReadFact. */
	readonly fact: string;
	/** Values it might have, as the part's schema has them; empty where the text gives no hint. */
	readonly might: readonly unknown[];
	/** Why it is open, one sentence. */
	readonly why: string;
}

export interface UnreadLine {
	readonly line: number;
	readonly text: string;
}

/** What was read of one part. */
export interface PartReading<K extends ReadKind = ReadKind> {
	readonly kind: K;
	/** Valid by its schema: what is not known has no key. */
	readonly part: PartOf<K>;
	readonly facts: readonly ReadFact[];
	readonly doubts: readonly ReadDoubt[];
	/** Lines that were not understood; lines that tell nothing of a fact known here are among them. */
	readonly unread: readonly UnreadLine[];
}

/**
 * The part that facts make. Facts whose value the schema refuses are left out and given back in `refused`.
 *
 * @param name as the text prints it, or undefined
 */
export function partOf<K extends ReadKind>(
	kind: K,
	name: string | undefined,
	facts: readonly ReadFact[],
): { readonly part: PartOf<K>; readonly refused: readonly ReadFact[] } {
	const { schema, noun } = partKinds[kind];
	const shownName = name ?? `A ${noun} read from its page`;
	const start = { id: idOf(shownName, noun), name: shownName };
	const refused: ReadFact[] = [];
	// Nearly always all facts are good, so they are tried together, and in halves only where the schema refuses some.
	const keeping = (before: readonly ReadFact[], some: readonly ReadFact[]): readonly ReadFact[] => {
		const all = [...before, ...some];
		if (some.length === 0 || schema.safeParse(withFacts(start, all)).success) return all;
		if (some.length === 1) {
			refused.push(...some);
			return before;
		}
		const half = Math.ceil(some.length / 2);
		return keeping(keeping(before, some.slice(0, half)), some.slice(half));
	};
	const kept = keeping([], facts);
	const evidence: Record<string, { standing: "stated" | "assumed"; quote: string }> = {};
	for (const { fact, standing, quote, assumed } of kept) {
		const path = fact.replace(/\[\d+\].*$/, "");
		const before = evidence[path];
		const words = before === undefined || before.quote.includes(quote) ? quote : `${before.quote} / ${quote}`;
		evidence[path] = {
			// One entry that is only assumed makes the whole list no more than that.
			standing: before?.standing === "assumed" || (assumed?.length ?? 0) > 0 ? "assumed" : standing,
			quote: words.replace(/\s+/g, " ").trim().slice(0, 400),
		};
	}
	const whole = { ...withFacts(start, kept), ...(kept.length > 0 ? { evidence } : {}) };
	return { part: schema.parse(whole) as PartOf<K>, refused };
}

type Plain = { [key: string]: unknown };

function withFacts(start: Plain, facts: readonly ReadFact[]): Plain {
	const part = structuredClone(start);
	for (const { fact, value } of facts) {
		const keys = fact.split(".");
		let group = part;
		for (const key of keys.slice(0, -1)) {
			group[key] ??= {};
			group = group[key] as Plain;
		}
		const [, key = "", place] = /^([^[]*)(?:\[(\d+)\])?$/.exec(keys.at(-1) ?? "") ?? [];
		if (place === undefined) group[key] = value;
		else {
			group[key] ??= [];
			(group[key] as unknown[]).push(value);
		}
	}
	return part;
}

/** A short name for files from a part's name. */
export function idOf(name: string, noun: string): string {
	const short = name
		.normalize("NFKD")
		.toLowerCase()
		.replace(/[^a-z0-9]+/g, "-")
		.replace(/^-+|-+$/g, "")
		.slice(0, 60)
		.replace(/-+$/, "");
	return short === "" ? `own-${noun.replace(/\s/g, "-")}` : short;
}
