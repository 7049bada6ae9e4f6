import type { OwnPart } from "../parts/answers-file.ts";
import type { Board } from "../parts/board.ts";
import { checkParts } from "../parts/check-parts.ts";
import { cleanLine } from "../parts/clean-text.ts";
import { type Evidence, type FormDraft, valueIn, withoutValue, withValue } from "../parts/form-draft.ts";
import { type FormField, fieldAt } from "../parts/form-fields.ts";
import { wordsOf } from "../parts/form-words.ts";
import { findPart, type Market, partsFileSchemaName } from "../parts/market.ts";
import { rowsFor } from "../parts/support-rows.ts";
import { toldEvidence, toldOf, toldWhere, toldWords } from "../parts/told-evidence.ts";
import { marketOf } from "./market-of.ts";

/** A fact of a board that somebody told, such as a shop that was asked. */
export interface ToldFact {
	readonly boardId: string;
	/** Path of the fact inside the board, such as "power.processorPlugs"; see toldPath. */
	readonly path: string;
	/** As `readTold` gives it. */
	readonly value: unknown;
	/** Who told it. */
	readonly by: string;
	/** The answer as it came. */
	readonly quote?: string;
	/** ISO date. */
	readonly date: string;
	/** It counts even where another value is stated. */
	readonly replace?: boolean;
}

/** What is stated of a fact, and what was told instead; both as sentences to be shown. */
export interface Contradiction {
	readonly stated: string;
	readonly told: string;
}

type ToldResult =
	| { readonly ownParts: readonly OwnPart[]; readonly own: OwnPart }
	| { readonly problem: string; readonly contradiction?: Contradiction };

/** Longest name of somebody who tells a fact, in letters; as long as an answer's "by" may be. */
const longestTeller = 60;
const longestQuote = 400;
/** Facts by which a board is known, or which the program keeps; nobody tells these. */
const notTold: ReadonlySet<string> = new Set(["id", "name", "invented", "evidence"]);

/** The path of a fact as a person or a question names it; "board.memory.slots" is "memory.slots". Null: no such fact. */
export function toldPath(named: string): string | null {
	const path = named.trim().replace(/^board\./, "");
	return !notTold.has(path) && fieldOf(path) ? path : null;
}

/** The field of a fact that can be told; a group such as the support list is one. */
export function fieldOf(path: string): FormField | undefined {
	return /^[\w.]+$/.test(path) ? fieldAt("board", path.split(".")) : undefined;
}

/**
 * The parts of a walk with a fact that somebody told of a board: the board of the same id that takes the place of the
 * market's. What was assumed gives way. What is stated otherwise stays unless `replace` is set, and both are told.
 *
 * @param market without the walk's own parts
 */
export function toldFact(market: Market, ownParts: readonly OwnPart[], told: ToldFact): ToldResult {
	const board = findPart(marketOf(market, ownParts), "board", told.boardId);
	if (!board) return { problem: `There is no board "${cleanLine(told.boardId)}".` };
	const path = toldPath(told.path);
	const field = path === null ? undefined : fieldOf(path);
	if (path === null || !field) return { problem: `A board has no fact "${cleanLine(told.path)}" that could be told.` };
	const by = cleanLine(told.by);
	if (by === "" || by.length > longestTeller)
		return { problem: `Say who told it, in ${longestTeller} letters at most.` };
	if (told.value === undefined) return { problem: "Nothing was told, so nothing was noted." };
	const before = valueIn(board, path.split("."));
	const given = path === "powerDelivery.measurements" ? whoMeasured(told.value, by, told.date) : told.value;
	const meeting = meetingOf(path, before, given);
	const evidence: Readonly<Record<string, Evidence>> = board.evidence ?? {};
	const isStated = before !== undefined && evidence[path]?.standing !== "assumed";
	if (meeting.kind === "contradiction" && isStated && !told.replace)
		return {
			problem: "Something else is stated of this board.",
			contradiction: bothWords(field, path, board, told, by),
		};
	const value = meeting.kind === "contradiction" ? replaced(path, before, given) : meeting.value;
	const quote = told.quote === undefined ? "" : cleanLine(told.quote).slice(0, longestQuote).trim();
	const made = withValue(board as FormDraft, path.split("."), value);
	const part = {
		...(path === "price" ? { ...made, checkedOn: told.date } : made),
		evidence: { ...withoutInner(evidence, path), [path]: toldEvidence(by, told.date, quote === "" ? null : quote) },
	};
	const { faults } = checkParts({ schema: partsFileSchemaName, boards: [part] });
	const [fault] = faults;
	if (fault) return { problem: `${field.title} cannot be so: expected ${fault.expected}. Nothing was noted.` };
	const own: OwnPart = { kind: "board", part: part as unknown as Board };
	const isIt = (one: OwnPart) => one.kind === "board" && one.part.id === board.id;
	return {
		own,
		ownParts: ownParts.some(isIt) ? ownParts.map((one) => (isIt(one) ? own : one)) : [...ownParts, own],
	};
}

/**
 * The parts of a walk without a fact that somebody told; what the market states of it counts again. An invented board of
 * which nothing told is left is the market's own again.
 *
 * @param market without the walk's own parts
 */
export function untold(market: Market, ownParts: readonly OwnPart[], boardId: string, path: string): ToldResult {
	const isIt = (one: OwnPart) => one.kind === "board" && one.part.id === boardId;
	const board = ownParts.find(isIt)?.part as Board | undefined;
	const evidence: Readonly<Record<string, Evidence>> = board?.evidence ?? {};
	if (!board || !Object.hasOwn(evidence, path) || !toldOf(evidence[path]))
		return { problem: "Nobody told this of the board, so there is nothing to take back." };
	const keys = path.split(".");
	const base = findPart(market, "board", boardId);
	const baseEvidence = (base?.evidence as typeof evidence | undefined)?.[path];
	const value = base && !toldOf(baseEvidence) ? valueIn(base, keys) : undefined;
	const { [path]: _, ...others } = evidence;
	const kept = value !== undefined && baseEvidence ? { ...others, [path]: baseEvidence } : others;
	const { evidence: _all, ...facts } = (
		value === undefined ? withoutValue(board as FormDraft, keys) : withValue(board as FormDraft, keys, value)
	) as FormDraft & { readonly evidence?: unknown };
	const part = { ...facts, ...(Object.keys(kept).length > 0 ? { evidence: kept } : {}) };
	if (checkParts({ schema: partsFileSchemaName, boards: [part] }).faults.length > 0)
		return { problem: "Another fact of the board rests on this one. Take that back first." };
	const own: OwnPart = { kind: "board", part: part as unknown as Board };
	const isAsBefore = base?.invented === true && !Object.values(kept).some((one) => toldOf(one));
	return {
		own,
		ownParts: isAsBefore ? ownParts.filter((one) => !isIt(one)) : ownParts.map((one) => (isIt(one) ? own : one)),
	};
}

/** What was noted of facts inside goes when the whole is told. */
function withoutInner(evidence: Readonly<Record<string, Evidence>>, path: string): Readonly<Record<string, Evidence>> {
	return Object.fromEntries(Object.entries(evidence).filter(([of]) => !of.startsWith(`${path}.`)));
}

/** How a told value meets the known one: it can stand, by itself or joined with the known one, or it cannot. */
type Meeting = { readonly kind: "value"; readonly value: unknown } | { readonly kind: "contradiction" };

const contradiction: Meeting = { kind: "contradiction" };
const stands = (value: unknown): Meeting => ({ kind: "value", value });

function meetingOf(path: string, before: unknown, told: unknown): Meeting {
	if (before === undefined || sameValue(before, told)) return stands(told);
	switch (path) {
		case "supportList":
			return joinedLists(before as SupportList, told as SupportList);
		case "offers":
			return joinedOffers(before as Offers, told as Offers);
		case "powerDelivery.measurements":
			return stands(joinedMeasurements(before as Measurements, told as Measurements));
		default:
			return saysNoMore(before, told) ? stands(before) : contradiction;
	}
}

/** Whether a list of things is only a shorter telling of the known one: as many, and nothing said of them that differs. */
function saysNoMore(before: unknown, told: unknown): boolean {
	if (!Array.isArray(before) || !Array.isArray(told) || before.length !== told.length) return false;
	const left = [...before];
	// Of which most is said finds its match first.
	const bySize = told.toSorted((one, other) => sizeOf(other) - sizeOf(one));
	return bySize.every((entry) => {
		const at = left.findIndex((known) => holdsAll(known, entry));
		if (at >= 0) left.splice(at, 1);
		return at >= 0;
	});
}

function sizeOf(entry: unknown): number {
	return entry !== null && typeof entry === "object" ? Object.keys(entry).length : 0;
}

/** Names do not count: a reader makes them up where an answer has none. */
function holdsAll(known: unknown, told: unknown): boolean {
	if (typeof known !== "object" || typeof told !== "object" || known === null || told === null) return false;
	return Object.entries(told).every(([key, value]) => key === "name" || sameValue(valueIn(known, [key]), value));
}

/** The same, whatever the order of a list of plain words or figures. */
function sameValue(one: unknown, other: unknown): boolean {
	const plain = (value: unknown) =>
		JSON.stringify(
			Array.isArray(value) && value.every((entry) => typeof entry !== "object") ? value.toSorted() : value,
		);
	return plain(one) === plain(other);
}

type SupportList = NonNullable<Board["supportList"]>;

/** A list with the rows told of it. What a list says clearly of a processor, or that it is not on it, is not undone. */
function joinedLists(list: SupportList, told: SupportList): Meeting {
	if (!told.partial) return contradiction;
	let rows = list.rows;
	for (const row of told.rows) {
		const known = rowsFor(rows, row.processor);
		if (known.length === 0 && !list.partial) return contradiction;
		const isClear = known.some(({ versionOpen, fromVersion }) => versionOpen !== true && fromVersion !== undefined);
		if (isClear && !known.some(({ fromVersion }) => fromVersion === (row.fromVersion ?? fromVersion)))
			return contradiction;
		if (!isClear) rows = [...rows.filter((one) => !known.includes(one)), row];
	}
	return stands({ ...list, rows });
}

/** What counts where somebody takes what was told: of a list of processors the rows of the one that was told of. */
function replaced(path: string, before: unknown, told: unknown): unknown {
	if (path !== "supportList" || before === undefined || !(told as SupportList).partial) return told;
	const list = before as SupportList;
	const { rows } = told as SupportList;
	const about = rows.flatMap(({ processor }) => rowsFor(list.rows, processor));
	return { ...list, rows: [...list.rows.filter((row) => !about.includes(row)), ...rows] };
}

type Measurements = NonNullable<NonNullable<Board["powerDelivery"]>["measurements"]>;

/** Each figure with who told it: others of the same board may come from published tests. */
function whoMeasured(told: unknown, by: string, date: string): unknown {
	return Array.isArray(told)
		? told.map((one) => (typeof one === "object" && one !== null ? { ...one, where: toldWhere(by), date } : one))
		: told;
}

/** One more measurement stands beside those known: each was another day, with another load. */
function joinedMeasurements(before: Measurements, told: Measurements): Measurements {
	const figures = ({ loadW, airC, stageC }: Measurements[number]) => `${loadW} ${airC} ${stageC}`;
	const known = new Set(before.map(figures));
	return [...before, ...told.filter((one) => !known.has(figures(one)))];
}

type Offers = NonNullable<Board["offers"]>;

/** Offers that differ only in a day that was not known before, and perhaps one more. */
function joinedOffers(before: Offers, told: Offers): Meeting {
	const isMore =
		before.length <= told.length &&
		before.every((offer, index) => {
			const { returnableUntil: then, ...facts } = offer;
			const { returnableUntil: now, ...others } = told[index] ?? offer;
			return JSON.stringify(facts) === JSON.stringify(others) && (then === undefined || then === now);
		});
	return isMore ? stands(told) : contradiction;
}

function bothWords(field: FormField, path: string, board: Board, { value }: ToldFact, by: string): Contradiction {
	const before = valueIn(board, path.split("."));
	const evidence = (board.evidence as Readonly<Record<string, Evidence>> | undefined)?.[path];
	const earlier = toldOf(evidence);
	const where = earlier ? toldWords(earlier) : (evidence?.where ?? "as known until now");
	return {
		stated: `${field.title}, ${where}: ${toldValue(path, before)}.`,
		told: `${by} says: ${toldValue(path, value)}.`,
	};
}

/** The value of a fact in words, as somebody would tell it. */
export function toldValue(path: string, value: unknown): string {
	const field = fieldOf(path);
	if (!field) return "";
	if (path === "supportList") {
		const { rows } = value as SupportList;
		const [row, ...more] = rows;
		if (!row || more.length > 0) return `${rows.length} processors`;
		return row.fromVersion ? `${row.processor}, from firmware ${row.fromVersion}` : row.processor;
	}
	if (path === "offers") {
		const days = (value as Offers).flatMap(({ returnableUntil }) => returnableUntil ?? []);
		if (days.length > 0) return `can go back until ${[...new Set(days)].toSorted().join(" or ")}`;
	}
	return wordsOf(field, value);
}
