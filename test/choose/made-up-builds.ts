import fc from "fast-check";
import { type Board, board as boardSchema } from "../../src/parts/board.ts";
import {
	type Build,
	type BuildFacts,
	type BuildPartKind,
	emptyBuildFacts,
	ownerships,
	type World,
	wishStrengths,
} from "../../src/parts/build.ts";
import type { Market } from "../../src/parts/market.ts";
import type { Money } from "../../src/parts/money.ts";
import type { PartKind, PartOf } from "../../src/parts/part-kinds.ts";
import { pictureSockets } from "../../src/parts/vocabulary.ts";
import {
	activities,
	boughtLists,
	clockPlans,
	colourTastes,
	laterThings,
	lightPlugs,
	oldThings,
	rescueAids,
	sessionLengths,
	soundUses,
	summerRooms,
} from "../../src/parts/wants.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { scenarios, wholeDemo } from "./demo.ts";

/** One world, in which all is as the facts say. */
export const buildOf = (facts: BuildFacts): Build => ({ facts, worlds: [{ facts, choices: [] }] });

/** The demonstration market with these boards only. A new market each time, so that nothing is remembered of it. */
export const marketOf = (board: readonly Board[]): Market => ({ ...wholeDemo, parts: { ...wholeDemo.parts, board } });

/** A fact of a board: its path as keys and places in lists, and the same without places: "m2Sockets[].key". */
export interface FactPlace {
	readonly keys: readonly (string | number)[];
	readonly path: string;
}

const droppable = new Map<string, boolean>();

/** Every fact that a board gives and that its definition lets it leave out, inside lists too; evidence aside. */
export function factsGiven(board: Board): readonly FactPlace[] {
	return placesIn(board, { keys: [], path: "" }).filter((place) => {
		const known = droppable.get(place.path) ?? boardSchema.safeParse(withoutFacts(board, [place])).success;
		droppable.set(place.path, known);
		return known;
	});
}

function placesIn(value: unknown, at: FactPlace): readonly FactPlace[] {
	if (Array.isArray(value))
		return value.flatMap((item, index) => placesIn(item, { keys: [...at.keys, index], path: `${at.path}[]` }));
	if (typeof value !== "object" || value === null) return [];
	return Object.entries(value).flatMap(([key, inner]): readonly FactPlace[] => {
		if (key === "evidence") return [];
		const place = { keys: [...at.keys, key], path: at.path === "" ? key : `${at.path}.${key}` };
		return [place, ...placesIn(inner, place)];
	});
}

/** The board without these facts. */
export function withoutFacts(board: Board, places: readonly FactPlace[]): Board {
	const left = structuredClone(board);
	for (const { keys } of places) {
		const last = keys.at(-1) as string;
		const holder = keys.slice(0, -1).reduce<unknown>((inner, key) => (inner as Record<string, unknown>)?.[key], left);
		if (holder !== undefined) delete (holder as Record<string, unknown>)[last];
	}
	return left;
}

/** A board of the demonstration with some of its facts left out: a few, or any number. */
export const anyBoardAndFewer = (mayGo: (path: string) => boolean) =>
	fc.constantFrom(...wholeDemo.parts.board).chain((board) => {
		const places = factsGiven(board).filter(({ path }) => mayGo(path));
		const gone = fc.oneof(fc.subarray(places, { maxLength: 6 }), fc.subarray(places));
		return gone.map((without) => ({ board, fewer: withoutFacts(board, without), without }));
	});

/** A few boards of the demonstration, in any order; of some not all is known. */
export const someBoards: fc.Arbitrary<readonly Board[]> = fc.uniqueArray(
	fc.oneof(
		{ weight: 3, arbitrary: fc.constantFrom(...wholeDemo.parts.board) },
		{ weight: 1, arbitrary: anyBoardAndFewer(() => true).map(({ fewer }) => fewer) },
	),
	{ selector: ({ id }) => id, minLength: 3, maxLength: 6 },
);

const openKinds = ["processor", "case", "graphicsCard", "memory", "cooler", "supply"] as const;
const wishIds = allQuestions.filter(({ isWish }) => isWish).map(({ id }) => id);

const oneOf = <K extends PartKind>(kind: K): fc.Arbitrary<PartOf<K>> =>
	fc.constantFrom(...(wholeDemo.parts[kind] as readonly PartOf<K>[]));

/** Any part of the market, or none of it: to be bought, none at all, or nobody has said. */
const anyHave = <K extends BuildPartKind>(kind: K) =>
	fc.oneof(
		{
			weight: 4,
			arbitrary: fc.record({
				state: fc.constant("have" as const),
				part: oneOf(kind),
				ownership: fc.constantFrom(...ownerships),
			}),
		},
		{ weight: 3, arbitrary: fc.constantFrom({ state: "open" }, { state: "none" }, { state: "unknown" } as const) },
	);

const any = <T>(values: readonly T[]) => fc.option(fc.constantFrom(...values));
const several = <T>(values: fc.Arbitrary<T>, maxLength: number) => fc.option(fc.array(values, { maxLength }));
const marked = <T>(values: readonly T[]) => fc.option(fc.shuffledSubarray([...values]));
const sum = (min: number, max: number): fc.Arbitrary<Money | null> =>
	fc.option(fc.integer({ min, max }).map((minor) => ({ minor, currency: "EUR" })));

/** How each fact of a build may be. What only tells of the person, and no rule may read, is left as it is. */
const fields: { readonly [K in keyof BuildFacts]?: fc.Arbitrary<unknown> } = {
	processor: anyHave("processor"),
	case: anyHave("case"),
	graphicsCard: anyHave("graphicsCard"),
	memory: anyHave("memory"),
	cooler: anyHave("cooler"),
	supply: anyHave("supply"),
	priceCap: fc.oneof(sum(4000, 60_000), fc.constant({ minor: 20_000, currency: "USD" })),
	moneyInAll: sum(60_000, 400_000),
	moneySpent: sum(0, 150_000),
	moneyPlanned: sum(0, 150_000),
	boughtLists: marked(boughtLists),
	activities: marked(activities),
	sessionLength: any(sessionLengths),
	summerRoom: any(summerRooms),
	drives: several(oneOf("drive"), 5),
	olderSataDrives: any([0, 1, 2, 5]),
	addInCards: several(oneOf("addInCard"), 4),
	memoryGb: any([8, 16, 32, 64, 128, 192, 256]),
	screens: several(fc.constantFrom(...pictureSockets), 4),
	oldThings: marked(oldThings),
	rearDevices: any([0, 3, 8, 14]),
	routerGbps: any([0.1, 1, 2.5, 10]),
	clockPlan: any(clockPlans),
	rescueMusts: marked(rescueAids),
	caseFans: any([0, 1, 3, 6, 12]),
	lights: several(fc.constantFrom(...lightPlugs), 4),
	soundUses: marked(soundUses),
	colourTaste: any(colourTastes),
	laterThings: several(fc.constantFrom(...laterThings), 4),
	yearsKept: any([2, 5, 8]),
	wishes: fc.record(Object.fromEntries(wishIds.map((id) => [id, fc.constantFrom(...wishStrengths)])), {
		requiredKeys: [],
	}),
};
const fieldNames = Object.keys(fields) as (keyof BuildFacts)[];
const wantNames = fieldNames.filter((name) => !openKinds.some((kind) => kind === name));

const factsOf = (names: readonly (keyof BuildFacts)[]) =>
	fc.record(Object.fromEntries(names.map((name) => [name, fields[name] as fc.Arbitrary<unknown>]))) as fc.Arbitrary<
		Partial<BuildFacts>
	>;

/** What the invented people have and want; with them boards of every verdict are left. */
const people: readonly BuildFacts[] = scenarios.map(
	({ file }) => foldAnswers(file.answers, { market: wholeDemo, asOf: file.asOf }).facts,
);

const open = { state: "open" } as const;
/** Every part will be bought to suit the board: with this most boards fit, so that what is changed decides. */
export const allOpen: BuildFacts = {
	...emptyBuildFacts,
	processor: open,
	case: open,
	graphicsCard: open,
	memory: open,
	cooler: open,
	supply: open,
};

/** Facts of a build: anything at all, which leaves hardly ever a board, or a build that leaves some with a few changed. */
export const anyFacts: fc.Arbitrary<BuildFacts> = fc.oneof(
	{ weight: 1, arbitrary: factsOf(fieldNames).map((facts) => ({ ...emptyBuildFacts, ...facts })) },
	{ weight: 2, arbitrary: withSomeChanged(fc.constantFrom(emptyBuildFacts, ...people), fieldNames) },
	{ weight: 2, arbitrary: withSomeChanged(fc.constant(allOpen), fieldNames) },
	// Wishes and musts decide much and are one field of thirty.
	{
		weight: 2,
		arbitrary: withSomeChanged(withSomeChanged(fc.constant(allOpen), ["wishes", "rescueMusts"]), wantNames),
	},
);

function withSomeChanged(given: fc.Arbitrary<BuildFacts>, names: readonly (keyof BuildFacts)[]) {
	return fc
		.tuple(given, fc.subarray([...names], { maxLength: Math.min(names.length, 7) }).chain(factsOf))
		.map(([facts, changed]): BuildFacts => ({ ...facts, ...changed }));
}

/** A kind of part that is not sure, and the ways it may turn out. */
const anyOpenPart = fc
	.constantFrom(...openKinds)
	.chain((kind) => fc.tuple(fc.constant(kind), fc.array(anyHave(kind), { minLength: 2, maxLength: 3 })));

/** A build with one to nine worlds: none, one or two kinds of part are not sure. */
export const anyBuild: fc.Arbitrary<Build> = fc
	.tuple(anyFacts, fc.uniqueArray(anyOpenPart, { selector: ([kind]) => kind, maxLength: 2 }))
	.map(([given, open]) => {
		const unknown = Object.fromEntries(open.map(([kind]) => [kind, { state: "unknown" }]));
		const facts: BuildFacts = { ...given, ...unknown };
		const worlds = open.reduce<readonly World[]>(
			(before, [kind, ways]) =>
				before.flatMap((world) =>
					ways.map((way, index) => ({
						facts: { ...world.facts, [kind]: way } as BuildFacts,
						choices: [...world.choices, { questionId: `fit/${kind}`, label: `way ${index + 1}` }],
					})),
				),
			[{ facts, choices: [] }],
		);
		return { facts, worlds };
	});

/** The same change in every world. */
export function inEveryWorld({ facts, worlds }: Build, change: (facts: BuildFacts) => BuildFacts): Build {
	return { facts: change(facts), worlds: worlds.map((world) => ({ ...world, facts: change(world.facts) })) };
}

/** A way to ask for less. */
export interface Less {
	/** Of what less is asked: the name of a want, or a wish's id. */
	readonly of: string;
	readonly what: string;
	readonly change: (facts: BuildFacts) => BuildFacts;
}

/**
 * Every way to ask for less by one step: a wish weakened or gone, a limit raised or lifted, one thing fewer, a lower
 * figure. Parts stay as they are: another part is another build, and no smaller one.
 */
export function waysToAskLess(facts: BuildFacts): readonly Less[] {
	return [
		...Object.entries(facts.wishes).flatMap(([id, strength]): Less[] => [
			...wishStrengths.slice(wishStrengths.indexOf(strength) + 1).map((weaker) => ({
				of: id,
				what: `${id}: ${strength} to ${weaker}`,
				change: (all: BuildFacts) => ({ ...all, wishes: { ...all.wishes, [id]: weaker } }),
			})),
			{
				of: id,
				what: `${id}: ${strength} to nothing`,
				change: (all) => ({
					...all,
					wishes: Object.fromEntries(Object.entries(all.wishes).filter(([other]) => other !== id)),
				}),
			},
		]),
		...(["priceCap", "moneyInAll"] as const).flatMap((name) => [
			...setTo(facts, name, [null]),
			...setTo(facts, name, facts[name] ? [{ ...facts[name], minor: facts[name].minor + 5000 }] : []),
		]),
		...(["moneySpent", "moneyPlanned"] as const).flatMap((name) =>
			setTo(facts, name, facts[name] ? [{ ...facts[name], minor: Math.floor(facts[name].minor / 2) }] : []),
		),
		...listNames.flatMap((name) => [
			...setTo(facts, name, [null]),
			...(facts[name] ?? []).map((_, index) => ({
				of: name,
				what: `${name}: without number ${index + 1}`,
				change: (all: BuildFacts) => ({ ...all, [name]: all[name]?.filter((__, at) => at !== index) ?? null }),
			})),
		]),
		...numberNames.flatMap((name) => setTo(facts, name, [null, ...(facts[name] ? [Math.floor(facts[name] / 2)] : [])])),
		...setTo(facts, "clockPlan", [...clockPlans.slice(0, clockPlans.indexOf(facts.clockPlan ?? "no")), null]),
		...setTo(facts, "colourTaste", [null]),
	];
}

/** Lists of a build of which one thing can be left out. */
const listNames = [
	"drives",
	"addInCards",
	"screens",
	"oldThings",
	"rescueMusts",
	"lights",
	"soundUses",
	"laterThings",
] as const satisfies readonly (keyof BuildFacts)[];
/** Lists of a build that may as well stand in another order. */
export const orderedLists = [...listNames, "activities", "boughtLists"] as const;

const numberNames = ["olderSataDrives", "memoryGb", "rearDevices", "routerGbps", "caseFans"] as const;

function setTo<K extends keyof BuildFacts>(facts: BuildFacts, name: K, values: readonly BuildFacts[K][]): Less[] {
	if (facts[name] === null) return [];
	return values.map((value) => ({
		of: name,
		what: `${name}: ${JSON.stringify(value)}`,
		change: (all) => ({ ...all, [name]: value }),
	}));
}

/** One to five steps of asking for less: of what first, then how, each chosen from what is left. */
export const anyWayToAskLess: fc.Arbitrary<(facts: BuildFacts) => readonly Less[]> = fc
	.array(fc.tuple(fc.nat(), fc.nat()), { minLength: 1, maxLength: 5 })
	.map((picks) => (facts) => {
		const steps: Less[] = [];
		let left = facts;
		for (const [pickOf, pickHow] of picks) {
			const ways = waysToAskLess(left);
			// So that a long list of drives does not crowd the wishes out.
			const kinds = [...new Set(ways.map(({ of }) => of))];
			const some = ways.filter(({ of }) => of === kinds[pickOf % kinds.length]);
			const step = some[pickHow % Math.max(1, some.length)];
			if (!step) break;
			steps.push(step);
			left = step.change(left);
		}
		return steps;
	});
