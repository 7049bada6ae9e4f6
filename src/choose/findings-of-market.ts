import { withAskedPrice } from "../parts/asked-price.ts";
import type { Board } from "../parts/board.ts";
import type { BuildFacts } from "../parts/build.ts";
import { canonicalName, canonicalSocket } from "../parts/canonical-name.ts";
import { pathParts } from "../parts/fact-path.ts";
import type { Market } from "../parts/market.ts";
import type { Platform } from "../parts/platform.ts";
import { type LoadFacts, loadFactsOf } from "../power/load-facts.ts";
import { assumedBoardFacts, assumedFromPlatform, withAssumedFacts } from "../reference/assumed-facts.ts";
import type { Rule } from "../rules/define-rule.ts";
import type { Finding } from "../rules/outcome.ts";
import { type RuleSubject, runRule } from "../rules/run-rule.ts";
import {
	headersSee,
	planSees,
	powerSees,
	rememberedHeaders,
	rememberedPlan,
	rememberedPower,
} from "./remembered-plans.ts";

/** A board as rules see it, with its price, its assumed facts and its chipset row; the build is still to be added. */
export type BoardSubject = Omit<RuleSubject, "facts"> & { readonly board: Board };

const loads = new WeakMap<BuildFacts, LoadFacts>();

/** What is measured of a build without any board; worked out once a build. */
export const measuresOfBuild = {
	load: (facts: BuildFacts) => {
		const known = loads.get(facts) ?? loadFactsOf(facts);
		loads.set(facts, known);
		return known;
	},
};

const subjects = new WeakMap<Market, readonly BoardSubject[]>();
const findings = new WeakMap<Market, Map<string, FindingOnBoard>>();
/** Most sets of findings kept for one market: enough for a walk to go back and forth, and no more. */
const mostKept = 400;

/** Every board of a market as rules see it, in the market's order. Worked out once a market: markets never change. */
export function boardSubjects(market: Market): readonly BoardSubject[] {
	const known = subjects.get(market);
	if (known) return known;
	const platformOf = platformsBySocket(market);
	const made = market.parts.board.map((given): BoardSubject => {
		const priced = withAskedPrice(given);
		const platform = platformOf(priced);
		const assumed = [...assumedBoardFacts(priced), ...(platform ? assumedFromPlatform(priced, platform) : [])];
		const board = withAssumedFacts(priced, assumed);
		const measures = {
			plan: (facts: BuildFacts) => rememberedPlan(board, facts),
			headers: (facts: BuildFacts) => rememberedHeaders(board, facts),
			power: (facts: BuildFacts) => rememberedPower(board, facts),
			...measuresOfBuild,
		};
		return { board, assumed, measures, ...(platform ? { platform } : {}) };
	});
	subjects.set(market, made);
	return made;
}

/** What a rule says of the board at this place of the market; worked out when it is first asked for. */
export type FindingOnBoard = (index: number) => Finding;

/**
 * What one rule says of each board of a market. A rule sees only what it reads: as long as that stays the same, its
 * findings are those of before, so that an answer runs only the rules that read it.
 *
 * @param seen what the rule reads of the build, as text; see seenBy
 */
export function findingsOfMarket(market: Market, rule: Rule, facts: BuildFacts, seen: string): FindingOnBoard {
	const known = findings.get(market) ?? new Map<string, FindingOnBoard>();
	findings.set(market, known);
	const key = `${rule.id} ${seen}`;
	const found = known.get(key) ?? findingOnBoard(market, rule, facts);
	// What was used last stays longest.
	known.delete(key);
	known.set(key, found);
	const [oldest] = known.keys();
	if (known.size > mostKept && oldest !== undefined) known.delete(oldest);
	return found;
}

function findingOnBoard(market: Market, rule: Rule, facts: BuildFacts): FindingOnBoard {
	const subjectAt = subjectsWith(market, facts);
	const found: (Finding | undefined)[] = [];
	return (index) => {
		const known = found[index] ?? runRule(rule, subjectAt(index));
		found[index] = known;
		return known;
	};
}

const subjectsOfBuild = new WeakMap<Market, WeakMap<BuildFacts, RuleSubject[]>>();

/** Each board of a market with a build; one for all rules, since each finding holds on to its own. */
export function subjectsWith(market: Market, facts: BuildFacts): (index: number) => RuleSubject {
	const boards = boardSubjects(market);
	const ofMarket = subjectsOfBuild.get(market) ?? new WeakMap<BuildFacts, RuleSubject[]>();
	subjectsOfBuild.set(market, ofMarket);
	const made = ofMarket.get(facts) ?? [];
	ofMarket.set(facts, made);
	return (index) => {
		const known = made[index] ?? { ...(boards[index] as BoardSubject), facts };
		made[index] = known;
		return known;
	};
}

/** The parts of a build that a rule reads, as text that is the same where they are. */
export function seenBy({ reads, mayRead }: Pick<Rule, "reads" | "mayRead">): (facts: BuildFacts) => string {
	// Of the wishes only its own: another one changes nothing for it.
	const seen = [...reads, ...mayRead].map((path) => (path.startsWith("wish.") ? path : pathParts(path).root));
	const ofBuild = [...new Set(seen)].filter((root) => root !== "board" && root !== "platform");
	return (facts) => ofBuild.map((root) => seenUnder(root, facts)).join("\n");
}

function seenUnder(root: string, facts: BuildFacts): string {
	if (root === "plan") return planSees(facts);
	if (root === "headers") return headersSee(facts);
	if (root === "power") return powerSees(facts);
	if (root === "load") return [powerSees(facts), textOf(facts.graphicsCard), textOf(facts.supply)].join("\n");
	const { root: first, inside } = pathParts(root);
	return textOf(first === "wish" ? facts.wishes[inside] : (facts as unknown as Record<string, unknown>)[root]);
}

const texts = new WeakMap<object, string>();

function textOf(value: unknown): string {
	if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "";
	const known = texts.get(value) ?? JSON.stringify(value);
	texts.set(value, known);
	return known;
}

/** The table rows by socket and chipset, whatever the spelling; of two alike the first. */
function platformsBySocket(market: Market): (board: Board) => Platform | undefined {
	const keyOf = (socket: string, chipset: string) => `${canonicalSocket(socket)} ${canonicalName(chipset)}`;
	const rows = new Map<string, Platform>();
	for (const row of market.parts.platform) {
		const key = keyOf(row.socket, row.chipset);
		if (!rows.has(key)) rows.set(key, row);
	}
	return ({ socket, chipset }) => (socket && chipset ? rows.get(keyOf(socket, chipset)) : undefined);
}
