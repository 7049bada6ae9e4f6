import fc from "fast-check";
import type * as z from "zod";
import type { Board } from "../../src/parts/board.ts";
import { checkParts } from "../../src/parts/check-parts.ts";
import { cleanLine } from "../../src/parts/clean-text.ts";
import { factsOf } from "../../src/parts/fact-list.ts";
import { partsFileSchemaName } from "../../src/parts/market.ts";
import { type PartKind, type PartOf, partKinds } from "../../src/parts/part-kinds.ts";
import { anyDate, anyLine, anyVersion, hardIds, poolOf } from "./any-words.ts";

/** How full a drawn part is. */
export interface Fullness {
	/** Of so many optional facts one is left out; 1: every one is given, 2: every other one is left out. */
	readonly oneLeftOutOf: number;
	/** Longest list; the schema's own limit where that is less. */
	readonly mostEntries: number;
}

export const sparse: Fullness = { oneLeftOutOf: 2, mostEntries: 2 };
export const full: Fullness = { oneLeftOutOf: 8, mostEntries: 4 };
/** Every fact given and every list as long as the schema lets it be. */
export const atTheLimits: Fullness = { oneLeftOutOf: 1, mostEntries: Number.POSITIVE_INFINITY };

/** One check of a zod schema, such as a bound. */
interface Check {
	readonly check: string;
	readonly value?: number;
	readonly minimum?: number;
	readonly maximum?: number;
	readonly pattern?: RegExp;
}

/** The inner shape of a zod schema, as far as parts use it. */
interface Inner {
	readonly def: {
		readonly type: string;
		readonly innerType?: Inner;
		readonly element?: Inner;
		readonly shape?: Readonly<Record<string, Inner>>;
		readonly valueType?: Inner;
		readonly options?: readonly Inner[];
		readonly entries?: Readonly<Record<string, string>>;
		readonly values?: readonly unknown[];
		readonly format?: string;
		readonly checks?: readonly { readonly _zod: { readonly def: Check } }[];
	};
}

/** What the checks of a schema come to. */
interface Bounds {
	readonly least?: number;
	readonly most?: number;
	readonly isWhole: boolean;
	readonly pattern?: RegExp;
}

function boundsOf({ def }: Inner): Bounds {
	const checks = (def.checks ?? []).map(({ _zod }) => _zod.def);
	const of = (name: string) => checks.find(({ check }) => check === name);
	const least = of("greater_than")?.value ?? of("min_length")?.minimum;
	const most = of("less_than")?.value ?? of("max_length")?.maximum;
	const pattern = of("string_format")?.pattern;
	return {
		...(least === undefined ? {} : { least }),
		...(most === undefined ? {} : { most }),
		...(pattern === undefined ? {} : { pattern }),
		isWhole: of("number_format") !== undefined,
	};
}

/** Where in a part something is drawn: its kind and the keys down to it. */
interface At {
	readonly kind: PartKind;
	readonly keys: readonly string[];
}

/**
 * Anything that a schema lets through, by its own definition: bounds of numbers often, lists empty and long, words from
 * small pools where parts must name the same thing to meet each other.
 */
function anyOf(schema: Inner, at: At, fullness: Fullness): fc.Arbitrary<unknown> {
	const { def } = schema;
	const bounds = boundsOf(schema);
	switch (def.type) {
		case "optional":
			return anyOf(def.innerType as Inner, at, fullness);
		case "object":
			return anyObject(def.shape ?? {}, at, fullness);
		case "array":
			return anyList(def.element as Inner, at, fullness, bounds);
		case "record":
			return anyRecord(def.valueType as Inner, at, fullness);
		case "union":
			return fc.oneof(...(def.options ?? []).map((option) => anyOf(option, at, fullness)));
		case "enum":
			return fc.constantFrom(...Object.values(def.entries ?? {}));
		case "literal":
			return fc.constantFrom(...(def.values ?? []));
		case "boolean":
			return fc.boolean();
		case "number":
			return anyNumber(bounds);
		case "string":
			return def.format === "date" ? anyDate : anyString(bounds, at);
		default:
			throw new Error(`a schema of a sort that no part had so far: ${def.type} at ${at.keys.join(".")}`);
	}
}

function anyObject(shape: Readonly<Record<string, Inner>>, at: At, fullness: Fullness): fc.Arbitrary<unknown> {
	const entries = Object.entries(shape).map(([key, inner]) => {
		const value = anyOf(inner, { ...at, keys: [...at.keys, key] }, fullness);
		const mayLack = inner.def.type === "optional" && fullness.oneLeftOutOf > 1;
		return [key, mayLack ? fc.option(value, { nil: undefined, freq: fullness.oneLeftOutOf }) : value] as const;
	});
	return fc
		.record(Object.fromEntries(entries))
		.map((object) => Object.fromEntries(Object.entries(object).filter(([, value]) => value !== undefined)));
}

function anyList(element: Inner, at: At, fullness: Fullness, { least = 0, most = 24 }: Bounds): fc.Arbitrary<unknown> {
	const maxLength = Math.max(least, Math.min(most, fullness.mostEntries));
	const minLength = fullness.oneLeftOutOf === 1 ? maxLength : least;
	return fc.array(anyOf(element, at, fullness), { minLength, maxLength, size: "max" });
}

function anyRecord(value: Inner, at: At, fullness: Fullness): fc.Arbitrary<unknown> {
	const [name] = at.keys.slice(-1);
	const key =
		name === "evidence"
			? fc.constantFrom(...factsOf(at.kind).map(({ path }) => path))
			: name === "slotOrder"
				? fc.constantFrom("1", "2", "4", "0", "99")
				: poolOf("connector");
	return fc.dictionary(key, anyOf(value, at, fullness), { maxKeys: 3 });
}

function anyNumber({ least: minimum = 0, most: maximum = 1e9, isWhole }: Bounds): fc.Arbitrary<number> {
	const ends = fc.constantFrom(minimum, maximum);
	const low = Math.ceil(minimum);
	const near = fc.integer({ min: low, max: Math.max(low, Math.min(Math.floor(maximum), low + 8)) });
	const whole = fc.integer({ min: low, max: Math.max(low, Math.floor(maximum)) });
	if (isWhole)
		return fc.oneof({ weight: 1, arbitrary: ends }, { weight: 3, arbitrary: near }, { weight: 2, arbitrary: whole });
	// Added to nothing, so that there is no zero below zero.
	// As a page or a person gives it: two places behind the point.
	const broken = fc
		.double({ min: minimum, max: maximum, noNaN: true })
		.map((value) => Math.min(maximum, Math.max(minimum, Math.round(value * 100) / 100)) + 0);
	const inTenths = broken.map((value) => Math.min(maximum, Math.max(minimum, Math.round(value * 10) / 10)) + 0);
	return fc.oneof(
		{ weight: 1, arbitrary: ends },
		{ weight: 2, arbitrary: whole.map((value) => Math.min(maximum, Math.max(minimum, value))) },
		{ weight: 2, arbitrary: inTenths },
		{ weight: 1, arbitrary: broken },
	);
}

function anyString({ most = 80, pattern }: Bounds, { kind, keys }: At): fc.Arbitrary<string> {
	const name = keys.at(-1) ?? "";
	if (name === "id") return fc.oneof(fc.stringMatching(/^[a-z0-9][a-z0-9._-]{0,12}$/), fc.constantFrom(...hardIds));
	if (name === "currency") return poolOf("currency");
	if (pattern) return fc.stringMatching(pattern);
	if (/^(?:fromVersion|version|startsFrom|safeFrom|oldestInShops)$/.test(name)) return anyVersion;
	const inPool = poolFor(name, kind, keys);
	const words = anyLine(most);
	return inPool ? fc.oneof({ weight: 5, arbitrary: inPool }, { weight: 1, arbitrary: words }) : words;
}

/** Names by which parts know each other come from few words, else no board would suit any processor. */
function poolFor(name: string, kind: PartKind, keys: readonly string[]): fc.Arbitrary<string> | null {
	if (name === "socket") return poolOf("socket");
	if (name === "chipset") return poolOf("chipset");
	if (name === "generation" || name === "processorGenerations") return poolOf("generation");
	if (name === "series" || name === "processorSeries") return poolOf("series");
	if (name === "processor" || (name === "name" && kind === "processor")) return poolOf("processor");
	if (/^(?:members|connector)$/.test(name) || (name === "name" && keys.length > 1)) return poolOf("connector");
	if (name === "slotOrder") return poolOf("memorySlot");
	return null;
}

/** Any valid part of a kind. */
export function anyPart<K extends PartKind>(kind: K, fullness: Fullness = full): fc.Arbitrary<PartOf<K>> {
	return anyOf(partKinds[kind].schema as unknown as Inner, { kind, keys: [] }, fullness).map((drawn) =>
		kind === "board" ? (soundBoard(drawn as Board) as PartOf<K>) : sound(kind, drawn as PartOf<K>),
	);
}

/** The drawn part as a file would give it. What no file may hold is a fault of what draws, and is told. */
function sound<K extends PartKind>(kind: K, drawn: PartOf<K>): PartOf<K> {
	const { schema, list } = partKinds[kind];
	const { faults } = checkParts({ schema: partsFileSchemaName, [list]: [drawn] });
	if (faults.length > 0) throw new Error(`a part drawn that is none: ${JSON.stringify(faults.slice(0, 3))}`);
	return (schema as z.ZodType).parse(drawn) as PartOf<K>;
}

/** A board whose connectors have names of their own, and whose footnotes speak of these. */
export const soundBoard = (drawn: Board): Board => sound("board", mended(drawn));

/** Rows of the forms whose number is fixed; see parts/board-connector-faults. */
const rows: Readonly<Record<string, number>> = { ATX: 7, microATX: 4, "Mini-ITX": 1 };

function mended(board: Board): Board {
	const taken = new Set<string>();
	const own = <T extends { readonly name: string }>(list: readonly T[]): T[] =>
		list.map((one, index) => {
			const name = taken.has(one.name) ? cleanLine(`${one.name.slice(0, 30)} ${taken.size}-${index}`) : one.name;
			taken.add(name);
			return { ...one, name };
		});
	const most = board.form === undefined ? undefined : rows[board.form];
	const slots = board.cardSlots?.map((slot) =>
		slot.row === undefined || most === undefined ? slot : { ...slot, row: Math.min(slot.row, most) },
	);
	const lists = {
		...(slots ? { cardSlots: own(slots) } : {}),
		...(board.m2Sockets ? { m2Sockets: own(board.m2Sockets) } : {}),
		...(board.drivePorts ? { drivePorts: own(board.drivePorts) } : {}),
	};
	const names = [...taken];
	const headers = board.headers && {
		...board.headers,
		...(board.headers.fans ? { fans: own(board.headers.fans) } : {}),
		...(board.headers.lights ? { lights: own(board.headers.lights) } : {}),
	};
	const oneOf = (word: string) =>
		names[[...word].reduce((sum, sign) => sum + (sign.codePointAt(0) ?? 0), 0) % names.length];
	const { sharing, conditions, powerDelivery, ...rest } = board;
	const groups = (sharing ?? []).flatMap(({ members, modes }) => {
		const known = members.flatMap((word, index) => oneOf(`${word}${index}`) ?? []);
		const inModes = modes.map(({ on }) => ({
			on: Object.fromEntries(Object.entries(on).map(([, lanes], index) => [known[index % known.length] ?? "", lanes])),
		}));
		return known.length < 2 ? [] : [{ members: known, modes: inModes }];
	});
	const limits = (conditions ?? []).flatMap((one) => {
		const connector = oneOf(one.connector);
		return connector === undefined ? [] : [{ ...one, connector }];
	});
	return {
		...rest,
		...lists,
		...(headers ? { headers } : {}),
		...(sharing ? { sharing: groups } : {}),
		...(conditions ? { conditions: limits } : {}),
		...(powerDelivery ? { powerDelivery: warmerThanTheRoom(powerDelivery) } : {}),
	} as Board;
}

function warmerThanTheRoom(delivery: NonNullable<Board["powerDelivery"]>): NonNullable<Board["powerDelivery"]> {
	if (!delivery.measurements) return delivery;
	const measurements = delivery.measurements.map((test) => ({
		...test,
		stageC: test.stageC > test.airC ? test.stageC : test.airC + 1,
	}));
	return { ...delivery, measurements };
}
