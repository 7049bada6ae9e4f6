import { allCriteria } from "../criteria/all-criteria.ts";
import type { Criterion, Measure } from "../criteria/define-criterion.ts";
import type { Interval } from "../maths/interval.ts";
import { valueOverInterval } from "../maths/piecewise-linear.ts";
import { type Build, type BuildFacts, emptyBuildFacts } from "../parts/build.ts";
import { lookUpFact, pathParts } from "../parts/fact-path.ts";
import type { Market } from "../parts/market.ts";
import { buildAround } from "../plan/around-board.ts";
import { allRules } from "../rules/all-rules.ts";
import type { Rule } from "../rules/define-rule.ts";
import { type RuleSubject, runRule } from "../rules/run-rule.ts";
import { subjectsWith } from "./findings-of-market.ts";
import { headersSee, planSees, powerSees } from "./remembered-plans.ts";
import { weightsFor } from "./score.ts";

/** What a board is worth in a build, in points of 100, unrounded; bounds are over all that is not known. */
export interface BoardPoints {
	readonly low: number;
	readonly mid: number;
	readonly high: number;
}

/** The boards of a market in one build, by their places in the market. */
export interface QuickValues {
	/** Share of the ways the open answers may turn out in which a board fits, 0 to 1; 0 is out. Worked out when asked for. */
	readonly fits: (place: number) => number;
	/** Points of some boards, scored together; those that are out have none. */
	readonly pointsOf: (places: readonly number[]) => readonly BoardPoints[];
}

/**
 * What of a build a rule or criterion sees, as a column: a part, a want, one wish, or what a plan sees. Two builds that
 * look alike in the columns of a rule have the same findings.
 */
interface Column {
	readonly name: string;
	/** Fields of the build that it may depend on: where these are the same, so is what is seen. */
	readonly fields: readonly (keyof BuildFacts)[];
	readonly see: (facts: BuildFacts) => unknown;
	/** It shows a field as it is. */
	readonly isField: boolean;
}

const fieldsOfPlan = Object.keys(buildAround(emptyBuildFacts)) as (keyof BuildFacts)[];
const fieldsOfPower = [
	"processor",
	"activities",
	"sessionLength",
	"clockPlan",
	"cooler",
	"case",
	"summerRoom",
	"caseFans",
];
const fieldsOfHeaders = ["case", "cooler", "addInCards", "lights", "caseFans", "laterThings"];

/** Fields of the build that what is measured depends on, by its root. A test holds them against what is read. */
export const fieldsMeasured = {
	plan: fieldsOfPlan,
	headers: fieldsOfHeaders as (keyof BuildFacts)[],
	power: fieldsOfPower as (keyof BuildFacts)[],
	load: [...fieldsOfPower, "graphicsCard", "supply"] as (keyof BuildFacts)[],
};

const columns: Column[] = [];
const columnByName = new Map<string, number>();

function columnOf(path: string): readonly number[] {
	const { root, inside } = pathParts(path);
	if (root === "board" || root === "platform") return [];
	const name = root === "wish" ? path : root;
	const known = columnByName.get(name) ?? columns.push(makeColumn(name, root, inside)) - 1;
	columnByName.set(name, known);
	return [known];
}

function makeColumn(name: string, root: string, inside: string): Column {
	if (root === "wish") return { name, fields: ["wishes"], see: ({ wishes }) => wishes[inside], isField: false };
	if (root === "plan") return { name, fields: fieldsMeasured.plan, see: planSees, isField: false };
	if (root === "headers") return { name, fields: fieldsMeasured.headers, see: headersSee, isField: false };
	if (root === "power") return { name, fields: fieldsMeasured.power, see: powerSees, isField: false };
	if (root === "load")
		return {
			name,
			fields: fieldsMeasured.load,
			see: (facts) => [powerSees(facts), facts.graphicsCard, facts.supply],
			isField: false,
		};
	const field = root as keyof BuildFacts;
	return { name, fields: [field], see: (facts) => facts[field], isField: true };
}

const columnsOf = (paths: readonly string[]) => [...new Set(paths.flatMap(columnOf))];
const isMeasured = (paths: readonly string[]) => paths.some((path) => pathParts(path).root in fieldsMeasured);

/** Only what can stop a board; the quick ones before those that plan. */
const stopping = allRules
	.filter(({ scope, severity }) => scope === "board" && severity === "stops")
	.map((rule) => ({ rule, columns: columnsOf([...rule.reads, ...rule.mayRead]) }))
	.sort((one, other) => Number(isMeasured(one.rule.reads)) - Number(isMeasured(other.rule.reads)));
const scoring = allCriteria.map((criterion) => ({ criterion, columns: columnsOf(criterion.reads) }));

const fields = [...new Set(columns.flatMap((column) => column.fields))];
const fieldPlaces = columns.map((column) => column.fields.map((field) => fields.indexOf(field)));

/** What is remembered of a market: what was seen, by field and column, and what rules and criteria made of it, by board. */
interface Memory {
	readonly fieldNumbers: readonly Map<unknown, number>[];
	readonly seen: readonly Map<unknown, number>[];
	/** What a column shows, by the numbers of the fields it depends on. */
	readonly seenByFields: readonly Map<string, number>[];
	readonly fails: Map<string, Int8Array>;
	readonly values: Map<string, (Interval | null | undefined)[]>;
}

const memories = new WeakMap<Market, Memory>();
/** Most findings kept of a market, a line for all boards each; then all is forgotten (own convention). */
const mostKept = 6000;

function memoryOf(market: Market): Memory {
	const known = memories.get(market);
	if (known && known.fails.size + known.values.size < mostKept) return known;
	const made: Memory = {
		fieldNumbers: fields.map(() => new Map()),
		seen: columns.map(() => new Map()),
		seenByFields: columns.map(() => new Map()),
		fails: new Map(),
		values: new Map(),
	};
	memories.set(market, made);
	return made;
}

/** What is seen of a build and its worlds, in numbers: the same number in a column where the same is seen. */
interface SeenWorlds {
	/** By column; in one in which the worlds differ, the build's own. */
	readonly ofBuild: readonly number[];
	/** By column, then by world; null where all worlds look as the build does. */
	readonly ofWorlds: readonly (readonly number[] | null)[];
}

const texts = new WeakMap<object, string>();

/** What is in a value, as text. A part is an object of the market: it is written once, however often it is picked. */
function textOf(value: object): string {
	const { part, ...rest } = value as { readonly part?: object };
	if (part === undefined) return JSON.stringify(value);
	const known = texts.get(part) ?? JSON.stringify(part);
	texts.set(part, known);
	return JSON.stringify(rest) + known;
}

/** The same number for the same value; objects are told apart by what is in them. */
function numberOf(numbers: Map<unknown, number>, value: unknown): number {
	const key = typeof value === "object" && value !== null ? textOf(value) : value;
	const known = numbers.get(key);
	if (known !== undefined) return known;
	numbers.set(key, numbers.size);
	return numbers.size - 1;
}

function seenWorlds({ fieldNumbers, seen, seenByFields }: Memory, { facts, worlds }: Build): SeenWorlds {
	const numberIn = (at: number, of: BuildFacts) =>
		numberOf(fieldNumbers[at] as Map<unknown, number>, of[fields[at] as keyof BuildFacts]);
	const seenIn = (column: number, of: BuildFacts, numbers: (at: number) => number) => {
		const places = fieldPlaces[column] as readonly number[];
		const { isField, see } = columns[column] as Column;
		if (isField) return numbers(places[0] as number);
		const byFields = seenByFields[column] as Map<string, number>;
		let key = "";
		for (const at of places) key += `${numbers(at)},`;
		const known = byFields.get(key) ?? numberOf(seen[column] as Map<unknown, number>, see(of));
		byFields.set(key, known);
		return known;
	};
	const ofFields = fields.map((_, at) => numberIn(at, facts));
	const ofBuild = columns.map((_, column) => seenIn(column, facts, (at) => ofFields[at] as number));
	// The worlds differ from the build in a few fields only.
	const differ = fields.flatMap((field, at) =>
		worlds.some((world) => world.facts[field] !== facts[field]) ? [at] : [],
	);
	const fieldsOfWorlds = new Map(differ.map((at) => [at, worlds.map((world) => numberIn(at, world.facts))]));
	const ofWorlds = columns.map((_, column) => {
		if (!(fieldPlaces[column] as readonly number[]).some((at) => fieldsOfWorlds.has(at))) return null;
		return worlds.map((world, nth) =>
			seenIn(column, world.facts, (at) => fieldsOfWorlds.get(at)?.[nth] ?? (ofFields[at] as number)),
		);
	});
	return { ofBuild, ofWorlds };
}

interface Group<T> {
	readonly facts: BuildFacts;
	readonly kept: T;
}

/** Worlds that look alike to a rule or criterion: one fact sheet a group, and the group of each world. */
interface Groups<T> {
	readonly groups: readonly Group<T>[];
	/** Null: all worlds are in the first. */
	readonly groupOf: readonly number[] | null;
}

function groupsOf<T>(
	id: string,
	seenBy: readonly number[],
	{ ofBuild, ofWorlds }: SeenWorlds,
	{ worlds, facts }: Build,
	kept: Map<string, T>,
	make: () => T,
): Groups<T> {
	const remembered = (key: string) => {
		const known = kept.get(key) ?? make();
		kept.set(key, known);
		return known;
	};
	const keyIn = (world: number) => {
		let key = id;
		for (const column of seenBy) key += `,${ofWorlds[column]?.[world] ?? ofBuild[column]}`;
		return key;
	};
	const factsOf = (world: number) => worlds[world]?.facts ?? facts;
	if (seenBy.every((column) => ofWorlds[column] === null))
		return { groups: [{ facts: factsOf(0), kept: remembered(keyIn(0)) }], groupOf: null };
	const places = new Map<string, number>();
	const groups: { facts: BuildFacts; kept: T }[] = [];
	const groupOf = worlds.map((_, world) => {
		const key = keyIn(world);
		const known = places.get(key);
		if (known !== undefined) return known;
		places.set(key, groups.length);
		return groups.push({ facts: factsOf(world), kept: remembered(key) }) - 1;
	});
	return { groups, groupOf: groups.length > 1 ? groupOf : null };
}

const notRun = 0;
const passes = 1;
const fails = 2;

/**
 * Which boards of a market fit in a build, and what they are worth: the verdicts and scores of judge and rankBoards
 * without anything that is told of them. A rule runs and a criterion measures only where it sees what it has not seen
 * before on that board, so that many answers cost little more than one.
 */
export function quickValues(market: Market, build: Build): QuickValues {
	const memory = memoryOf(market);
	const seen = seenWorlds(memory, build);
	const count = market.parts.board.length;
	const plans = stopping.map(({ rule, columns: seenBy }) => ({
		rule,
		...groupsOf(rule.id, seenBy, seen, build, memory.fails, () => new Int8Array(count)),
	}));
	const isStopped = (rule: Rule, { facts, kept }: Group<Int8Array>, place: number) => {
		if (kept[place] === notRun) {
			const { verdict } = runRule(rule, subjectsWith(market, facts)(place));
			kept[place] = verdict === "does-not-fit" ? fails : passes;
		}
		return kept[place] === fails;
	};
	const alike = plans.filter(({ groupOf }) => groupOf === null);
	const differing = plans.filter(({ groupOf }) => groupOf !== null);
	// Many boards are left in the same worlds: each such list is made once.
	const lists = new Map<string, readonly number[]>();
	const worldsOf = (place: number): readonly number[] | null => {
		for (const { rule, groups } of alike) if (isStopped(rule, groups[0] as Group<Int8Array>, place)) return [];
		let stops = "";
		for (const [at, { rule, groups }] of differing.entries()) {
			for (let group = 0; group < groups.length; group++) {
				if (isStopped(rule, groups[group] as Group<Int8Array>, place)) stops += `${at}.${group} `;
			}
		}
		if (stops === "") return null;
		const known =
			lists.get(stops) ??
			build.worlds.flatMap((_, world) => {
				const isOut = differing.some(({ groups, groupOf }) => {
					const { kept } = groups[groupOf?.[world] ?? 0] as Group<Int8Array>;
					return kept[place] === fails;
				});
				return isOut ? [] : [world];
			});
		lists.set(stops, known);
		return known;
	};
	const possible: (readonly number[] | null | undefined)[] = [];
	/** The worlds in which a board fits; null for all. */
	const possibleFor = (place: number) => {
		const known = possible[place];
		if (known !== undefined) return known;
		const worlds = worldsOf(place);
		possible[place] = worlds;
		return worlds;
	};
	return {
		fits: (place) => {
			const worlds = possibleFor(place);
			return worlds === null ? 1 : worlds.length / build.worlds.length;
		},
		pointsOf: (places) => pointsOf(places, possibleFor, market, build, memory, seen),
	};
}

/** All worlds stand for one where they look alike. */
const one: readonly number[] = [0];
const nothing: BoardPoints = { low: 0, mid: 0, high: 0 };

function pointsOf(
	places: readonly number[],
	possibleFor: (place: number) => readonly number[] | null,
	market: Market,
	build: Build,
	memory: Memory,
	seen: SeenWorlds,
): readonly BoardPoints[] {
	const left = places.filter((place) => possibleFor(place)?.length !== 0);
	const all = build.worlds.map((_, world) => world);
	const valued = scoring.map(({ criterion, columns: seenBy }) => {
		const { groups, groupOf } = groupsOf(criterion.id, seenBy, seen, build, memory.values, () => []);
		const valueIn = (group: number, place: number) => {
			const { facts, kept } = groups[group] as Group<(Interval | null | undefined)[]>;
			const known = kept[place];
			if (known !== undefined) return known;
			const measure = measureIn(criterion, subjectsWith(market, facts)(place));
			const value = measure && valueOverInterval(criterion.scale, measure);
			kept[place] = value;
			return value;
		};
		const byBoard = left.map((place) =>
			groupOf === null
				? summary(one, () => valueIn(0, place))
				: summary(possibleFor(place) ?? all, (world) => valueIn(groupOf[world] ?? 0, place)),
		);
		return { criterion, byBoard };
	});
	const counting = valued.filter(({ byBoard }) => byBoard.some((value) => value !== null));
	const weights = weightsFor(
		build.facts,
		counting.map(({ criterion }) => criterion),
	);
	const points = left.map((_, at) => {
		let [low, mid, high] = [0, 0, 0];
		for (const { criterion, byBoard } of counting) {
			const weight = 100 * (weights.get(criterion.id) ?? 0);
			const value = byBoard[at] ?? { low: 0, mid: 0.5, high: 1 };
			low += weight * value.low;
			mid += weight * value.mid;
			high += weight * value.high;
		}
		return { low, mid, high };
	});
	const byPlace = new Map(left.map((place, at) => [place, points[at] as BoardPoints]));
	return places.map((place) => byPlace.get(place) ?? nothing);
}

/** What a criterion comes to over some worlds; null where it says nothing in any of them. As scoreOf does it. */
function summary(worlds: readonly number[], valueIn: (world: number) => Interval | null): BoardPoints | null {
	let [low, high, sum, known] = [1, 0, 0, 0];
	for (const world of worlds) {
		const value = valueIn(world);
		if (!value) continue;
		if (value.low < low) low = value.low;
		if (value.high > high) high = value.high;
		sum += (value.low + value.high) / 2;
		known++;
	}
	if (known === 0) return null;
	// Where it says nothing it may be anything between what it says elsewhere.
	return { low, high, mid: (sum + ((worlds.length - known) * (low + high)) / 2) / worlds.length };
}

function measureIn(criterion: Criterion, subject: RuleSubject): Measure | null {
	const values: Record<string, unknown> = {};
	for (const path of criterion.reads) {
		const found = lookUpFact(subject, path);
		if (found.known) values[path] = found.value;
	}
	return criterion.measure(values);
}
