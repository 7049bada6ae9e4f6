import { measuresOfBuild } from "../../src/choose/findings-of-market.ts";
import { judge } from "../../src/choose/judge.ts";
import type { Board } from "../../src/parts/board.ts";
import type { Build } from "../../src/parts/build.ts";
import type { PartsFile } from "../../src/parts/market.ts";
import type { Platform } from "../../src/parts/platform.ts";
import { planFactsOf } from "../../src/plan/plan-facts.ts";
import { allRules } from "../../src/rules/all-rules.ts";
import type { Finding, Verdict } from "../../src/rules/outcome.ts";
import { runRule } from "../../src/rules/run-rule.ts";
import { buildOf, smallMarket } from "../choose/small-market.ts";
import type { GivenBuild } from "../rules/rule-subject.ts";

type Facts = Readonly<Record<string, unknown>>;
/** Facts of a part, a list of parts, or what is said of one: "open", "none", "unknown". */
type Given = Facts | readonly Facts[] | string;
/** Board, platform, parts, lists of parts and wants, each by its name. */
export type PuzzleParts = Readonly<Record<string, Given>>;

export interface Puzzle {
	readonly id: string;
	readonly title: string;
	readonly topic: string;
	readonly on?: "baseSmall";
	/** Facts of a part take the place of the base's; null takes one away. A list or a word stands for all of it. */
	readonly changes: Readonly<Record<string, Given>>;
	/** The author's; the program's answer has never changed one. */
	readonly verdict: Verdict | "fits-with-drawback";
	readonly because: string;
	readonly drawback?: string;
	/** Connectors that are off, with "and" between. */
	readonly switchesOff?: string;
	readonly source: string;
	/** What was put right in the puzzle after it was first judged, and why. */
	readonly amended?: string;
	/** Where the program says something else that stands; it counts as not agreeing. */
	readonly differs?: {
		readonly says: Verdict;
		/** What it says besides, each by rule and message. */
		readonly told: readonly string[];
		/** Connectors that are off in its plan. */
		readonly off?: readonly string[];
		readonly why: string;
	};
}

export interface PuzzleFile {
	readonly base: PuzzleParts;
	readonly baseSmall: PuzzleParts;
	readonly puzzles: readonly Puzzle[];
}

/** Everything of a puzzle: its base with its changes. */
export function puzzleParts({ base, baseSmall }: PuzzleFile, { on, changes }: Puzzle): PuzzleParts {
	const given = on === "baseSmall" ? baseSmall : base;
	const names = [...new Set([...Object.keys(given), ...Object.keys(changes)])];
	return Object.fromEntries(names.map((name) => [name, changed(given[name], changes[name])]));
}

function changed(given: Given | undefined, change: Given | undefined): Given {
	if (!isFacts(change)) return change ?? given ?? "unknown";
	const all = { ...(isFacts(given) ? given : {}), ...change };
	return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== null));
}

const isFacts = (given: Given | undefined): given is Facts => typeof given === "object" && !Array.isArray(given);

const oneEach = ["processor", "case", "graphicsCard", "memory", "cooler", "supply"] as const;

/** The parts as the file of parts that they would stand in. */
export function partsFileOf(parts: PuzzleParts): PartsFile {
	const list = (name: string) => {
		const given = parts[name];
		return Array.isArray(given) ? given : isFacts(given) ? [given] : [];
	};
	return {
		schema: "boardwalk/parts@1",
		boards: list("board"),
		platforms: list("platform"),
		processors: list("processor"),
		cases: list("case"),
		graphicsCards: list("graphicsCard"),
		memory: list("memory"),
		coolers: list("cooler"),
		supplies: list("supply"),
		drives: list("drives"),
		addInCards: list("addInCards"),
	} as unknown as PartsFile;
}

/** What the person has and wants, with nothing open. */
function buildOfParts(parts: PuzzleParts): Build {
	const { wishes: _, ...wants } = parts["wants"] as Facts;
	const haves = oneEach.map((kind) => [kind, parts[kind]]);
	return buildOf({
		...Object.fromEntries(haves),
		...wants,
		drives: parts["drives"],
		addInCards: parts["addInCards"],
	} as unknown as GivenBuild);
}

export interface PuzzleAnswer {
	/** Whether the whole goes together: the board's verdict, and that of every build rule that stops. */
	readonly verdict: Verdict;
	/** What the rules say of the board and of the parts among themselves. */
	readonly findings: readonly Finding[];
	/** Connectors that are off in the plan. */
	readonly off: readonly string[];
}

/** What the program says of a puzzle: a market of its one board, and a build of which nothing is open. */
export function answerTo(parts: PuzzleParts): PuzzleAnswer {
	const { boards = [], platforms = [] } = partsFileOf(parts);
	const build = buildOfParts(parts);
	const { facts } = build;
	const [judged] = judge(smallMarket(boards as readonly Board[], platforms as readonly Platform[]), build).boards;
	if (!judged) throw new Error("a puzzle without a board");
	const ofBuild = allRules
		.filter(({ scope }) => scope === "build")
		.map((rule) => ({ rule, finding: runRule(rule, { facts, assumed: [], measures: measuresOfBuild }) }));
	const stopping = ofBuild.filter(({ rule }) => rule.severity === "stops").map(({ finding }) => finding.verdict);
	return {
		verdict: worst([judged.verdict, ...stopping]),
		findings: [...judged.findings, ...ofBuild.map(({ finding }) => finding)],
		off: planFactsOf(judged.board, facts)
			.ends.filter(({ state }) => state === "off")
			.map(({ connector }) => connector.name),
	};
}

const worst = (verdicts: readonly Verdict[]): Verdict =>
	(["does-not-fit", "cannot-tell"] as const).find((verdict) => verdicts.includes(verdict)) ?? "fits";
