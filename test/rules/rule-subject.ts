import type { Board } from "../../src/parts/board.ts";
import { type BuildFacts, type BuildPartKind, emptyBuildFacts, type WishStrength } from "../../src/parts/build.ts";
import type { PartOf } from "../../src/parts/part-kinds.ts";
import type { Platform } from "../../src/parts/platform.ts";
import { type Wants, wantNames } from "../../src/parts/wants.ts";
import { headerPlanOf } from "../../src/plan/header-plan.ts";
import { planFactsOf } from "../../src/plan/plan-facts.ts";
import { loadFactsOf } from "../../src/power/load-facts.ts";
import { powerFactsOf } from "../../src/power/power-facts.ts";
import { assumedBoardFacts, withAssumedFacts } from "../../src/reference/assumed-facts.ts";
import type { RuleSubject } from "../../src/rules/run-rule.ts";

/** What the person has of one kind: facts of the part, or why there is no part. Left out: nobody has said. */
type Given<K extends BuildPartKind> = Partial<PartOf<K>> | "open" | "none" | "unknown";

export type GivenBuild = { readonly [K in BuildPartKind]?: Given<K> } & Partial<Wants> & {
		readonly wishes?: Readonly<Record<string, WishStrength>>;
		readonly importance?: BuildFacts["importance"];
	};

export type GivenSubject = GivenBuild & {
	readonly board?: Partial<Board>;
	readonly platform?: Pick<Platform, "generations"> & Partial<Platform>;
};

export const partNames = {
	processor: "Piccolo",
	case: "Bandbox",
	graphicsCard: "Carousel",
	memory: "Mittens",
	cooler: "Chimney",
	supply: "Lantern",
} as const satisfies Record<BuildPartKind, string>;

/** A build of which only the given facts are known. Parts given without a name get one of their own. */
export function buildFacts({ wishes, importance, ...given }: GivenBuild): BuildFacts {
	const isWant = (name: string) => wantNames.includes(name as keyof Wants);
	const wants = Object.entries(given).filter(([name]) => isWant(name));
	const parts = Object.entries(given).filter(([name]) => !isWant(name));
	const haves = parts.map(([kind, part]) => [
		kind,
		typeof part === "string"
			? { state: part }
			: {
					state: "have",
					ownership: "planned",
					part: { id: `a-${kind.toLowerCase()}`, name: partNames[kind as BuildPartKind], ...(part as object) },
				},
	]);
	return {
		...emptyBuildFacts,
		...Object.fromEntries(haves),
		...Object.fromEntries(wants),
		...(wishes ? { wishes } : {}),
		...(importance ? { importance } : {}),
	};
}

/** A board of which only the given facts are known, and those its form lets assume, in a build. */
export function subjectOf({ board, platform, ...build }: GivenSubject): RuleSubject {
	const facts = buildFacts(build);
	if (!board) return { facts, assumed: [], measures: { load: loadFactsOf } };
	const given: Board = { id: "a-board", name: "A board", ...board };
	const assumed = assumedBoardFacts(given);
	const row: Platform = {
		id: "a-row",
		name: "A row",
		socket: "Kettle 7",
		chipset: "Ladle 3",
		generations: [],
		...platform,
	};
	const whole = withAssumedFacts(given, assumed);
	const measures = {
		plan: (around: BuildFacts) => planFactsOf(whole, around),
		headers: (around: BuildFacts) => headerPlanOf(whole, around),
		power: (around: BuildFacts) => powerFactsOf(whole, around),
		load: loadFactsOf,
	};
	return { facts, assumed, board: whole, measures, ...(platform ? { platform: row } : {}) };
}
