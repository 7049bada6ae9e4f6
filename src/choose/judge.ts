import { inclusionMinimal } from "../maths/minimal-sets.ts";
import { once } from "../maths/once.ts";
import type { Board } from "../parts/board.ts";
import type { Build, BuildFacts, World } from "../parts/build.ts";
import type { Market } from "../parts/market.ts";
import { allRules } from "../rules/all-rules.ts";
import type { Rule } from "../rules/define-rule.ts";
import type { Finding, Verdict } from "../rules/outcome.ts";
import { type RuleSubject, runRule } from "../rules/run-rule.ts";
import { type FindingOnBoard, findingsOfMarket, measuresOfBuild, seenBy, subjectsWith } from "./findings-of-market.ts";
import { isMeasured } from "./is-measured.ts";

/**
 * What the rules say of one board. The verdict is worked out at once, all else when it is first asked for: most boards
 * of a market fall out by a cheap rule, and nobody looks at the rest of what could be said of them.
 */
export interface BoardJudgement {
	readonly board: Board;
	readonly verdict: Verdict;
	/** One finding a rule: the plainest over the worlds in which the board may fit, or over all where it fits in none. */
	readonly findings: readonly Finding[];
	/** Rules whose verdict is not the same in every possible world, and with which answers they pass. */
	readonly depending: readonly Depending[];
	/** Rules that find something else in another of those worlds: what they say holds only if open answers turn out so. */
	readonly unsettledRuleIds: readonly string[];
	/** Of the rules that take the board out the one that is told first, the quick ones before those that plan; or null. */
	readonly stoppedBy: string | null;
	/** Rules under which the board fits in no possible world; where none alone does, those that together leave none. */
	readonly failedRuleIds: readonly string[];
	/** The smallest sets of rules without which the board would fit in some world; none unless it does not fit. */
	readonly corrections: readonly ReadonlySet<string>[];
	/** Questions whose answer decides, where the verdict differs from world to world. */
	readonly dependsOn: readonly string[];
	/** Indexes of build.worlds in which no rule fails. */
	readonly possibleWorlds: readonly number[];
	readonly subject: RuleSubject;
}

/** A rule that passes with some answers to an open question and fails with others. */
export interface Depending {
	readonly ruleId: string;
	readonly questionId: string;
	/** The ways the question may turn out, in words. */
	readonly fitsWith: readonly string[];
	readonly notWith: readonly string[];
}

export interface Judgement {
	readonly build: Build;
	readonly market: Market;
	readonly boards: readonly BoardJudgement[];
	readonly counts: {
		readonly all: number;
		readonly fits: number;
		readonly cannotTell: number;
		readonly doesNotFit: number;
	};
	/** Findings of the build rules that are not plain fits: parts that disagree with each other. */
	readonly buildFindings: readonly BuildFinding[];
}

export interface BuildFinding {
	readonly finding: Finding;
	/** Whether it holds however the open questions turn out. */
	readonly certain: boolean;
}

/** Judges every board of the market against the build. Pure; the order of boards is kept and changes nothing. */
export function judge(market: Market, build: Build): Judgement {
	const plans = rulePlans(market, build.worlds);
	const subjectAt = subjectsWith(market, build.facts);
	const boards = market.parts.board.map((board, index) => judgeBoard(board, index, subjectAt(index), build, plans));
	const count = (verdict: Verdict) => boards.filter((judged) => judged.verdict === verdict).length;
	return {
		build,
		market,
		boards,
		counts: {
			all: boards.length,
			fits: count("fits"),
			cannotTell: count("cannot-tell"),
			doesNotFit: count("does-not-fit"),
		},
		buildFindings: buildFindings(build),
	};
}

const boardRules = allRules.filter(({ scope }) => scope === "board").map((rule) => ({ rule, seen: seenBy(rule) }));

/** Worlds that look alike to a rule are judged once. */
interface RulePlan {
	readonly rule: Rule;
	/** What the rule says of a board in one world of each group, and which group each world belongs to. */
	readonly groups: readonly FindingOnBoard[];
	readonly groupOfWorld: readonly number[];
	/** Whether the rule can stop any board in each world. */
	readonly mayStop: readonly boolean[];
}

function planOf(rule: Rule, seen: (facts: BuildFacts) => string, market: Market, worlds: readonly World[]): RulePlan {
	const places = new Map<string, number>();
	const groups: FindingOnBoard[] = [];
	const groupOfWorld = worlds.map(({ facts }) => {
		const key = seen(facts);
		const known = places.get(key);
		if (known !== undefined) return known;
		places.set(key, groups.length);
		return groups.push(findingsOfMarket(market, rule, facts, key)) - 1;
	});
	const mayStop = worlds.map(({ facts }) => rule.severity === "stops" && (rule.mayStop?.(facts) ?? true));
	return { rule, groups, groupOfWorld, mayStop };
}

/** The rules of one judgement: all of them, those that can stop a board, and these with the quick ones first. */
interface RulePlans {
	readonly all: readonly RulePlan[];
	readonly stopping: readonly RulePlan[];
	readonly quickFirst: readonly RulePlan[];
}

function rulePlans(market: Market, worlds: readonly World[]): RulePlans {
	const all = boardRules.map(({ rule, seen }) => planOf(rule, seen, market, worlds));
	// What can stop no board cannot make its fit uncertain either; advise tells of it all the same.
	const stopping = all.filter(({ rule }) => rule.severity === "stops");
	const [quick, measured] = [false, true].map((last) => stopping.filter(({ rule }) => isMeasured(rule) === last));
	return { all, stopping, quickFirst: [...(quick ?? []), ...(measured ?? [])] };
}

function judgeBoard(
	given: Board,
	index: number,
	subject: RuleSubject,
	build: Build,
	{ all, stopping, quickFirst }: RulePlans,
): BoardJudgement {
	const inWorld = ({ groups, groupOfWorld }: RulePlan, world: number) =>
		(groups[groupOfWorld[world] ?? 0] as FindingOnBoard)(index);
	const worlds = build.worlds.map((_, world) => world);
	const isStopped = (plan: RulePlan, world: number) =>
		plan.mayStop[world] === true && inWorld(plan, world).verdict === "does-not-fit";
	const stopIn = worlds.map((world) => quickFirst.find((plan) => isStopped(plan, world)));
	const possible = worlds.filter((world) => !stopIn[world]);
	const certain = possible.filter((world) => quickFirst.every((plan) => inWorld(plan, world).verdict === "fits"));
	const verdict = possible.length === 0 ? "does-not-fit" : certain.length === worlds.length ? "fits" : "cannot-tell";
	// What would be found with answers under which the board is out anyhow is no word about it.
	const told = possible.length > 0 ? possible : worlds;
	const findingsBy = once(() =>
		all.map(({ groups, groupOfWorld }) =>
			[...new Set(told.map((world) => groupOfWorld[world] ?? 0))].map((group) =>
				(groups[group] as FindingOnBoard)(index),
			),
		),
	);
	const verdictsOf = (plan: RulePlan) => worlds.map((world) => inWorld(plan, world).verdict);
	const findings = once(() => findingsBy().map(plainest));
	const depending = once(() => all.flatMap((plan) => dependingOn(plan.rule.id, build.worlds, verdictsOf(plan))));
	const unsettled = once(() =>
		all
			.filter((_, at) => new Set(findingsBy()[at]?.map(({ messageId }) => messageId)).size > 1)
			.map(({ rule }) => rule.id),
	);
	const stoppedBy = once(() => {
		if (verdict !== "does-not-fit") return null;
		const alone = quickFirst.find((plan) => worlds.every((world) => isStopped(plan, world)));
		return (alone ?? stopIn[0])?.rule.id ?? null;
	});
	const failed = once(() =>
		verdict === "does-not-fit"
			? failedRules(stopping.map((plan) => ({ id: plan.rule.id, verdicts: verdictsOf(plan) })))
			: [],
	);
	const corrections = once(() => {
		const failedIn = (world: number) =>
			new Set(stopping.filter((plan) => isStopped(plan, world)).map(({ rule }) => rule.id));
		return verdict === "does-not-fit" ? inclusionMinimal(worlds.map(failedIn)) : [];
	});
	const deciding = once(() =>
		verdict === "cannot-tell" ? decidingQuestions(build.worlds, new Set(possible), new Set(certain)) : [],
	);
	return {
		board: given,
		verdict,
		get stoppedBy() {
			return stoppedBy();
		},
		get findings() {
			return findings();
		},
		get depending() {
			return depending();
		},
		get unsettledRuleIds() {
			return unsettled();
		},
		get failedRuleIds() {
			return failed();
		},
		get corrections() {
			return corrections();
		},
		get dependsOn() {
			return deciding();
		},
		possibleWorlds: possible,
		subject,
	};
}

/** Of a rule's findings over the worlds, the one that says most: a failure, then can't tell, then a caution, then a fit. */
function plainest(findings: readonly Finding[]): Finding {
	const weight = ({ verdict, severity }: Finding) =>
		verdict === "does-not-fit" ? 3 : verdict === "cannot-tell" ? 2 : severity ? 1 : 0;
	return findings.reduce((most, finding) => (weight(finding) > weight(most) ? finding : most));
}

function failedRules(rules: readonly { id: string; verdicts: readonly Verdict[] }[]): readonly string[] {
	const alone = rules.filter(({ verdicts }) => verdicts.every((verdict) => verdict === "does-not-fit"));
	const failing = alone.length > 0 ? alone : rules.filter(({ verdicts }) => verdicts.includes("does-not-fit"));
	return failing.map(({ id }) => id);
}

/** Open questions of which one choice differs from another in whether the board possibly or certainly fits. */
function decidingQuestions(
	worlds: readonly World[],
	possible: ReadonlySet<number>,
	certain: ReadonlySet<number>,
): readonly string[] {
	const questionIds = [...new Set(worlds.flatMap(({ choices }) => choices.map(({ questionId }) => questionId)))];
	const standing = (index: number) => (certain.has(index) ? 2 : possible.has(index) ? 1 : 0);
	return questionIds.filter((questionId) => {
		const standings = new Map<string, Set<number>>();
		worlds.forEach(({ choices }, index) => {
			const rest = choices.map((choice) => (choice.questionId === questionId ? "" : choice.label)).join("|");
			standings.set(rest, (standings.get(rest) ?? new Set()).add(standing(index)));
		});
		return [...standings.values()].some((seen) => seen.size > 1);
	});
}

/** The open questions that alone decide a rule: each way they may turn out has one verdict, and not all the same. */
function dependingOn(ruleId: string, worlds: readonly World[], verdicts: readonly Verdict[]): readonly Depending[] {
	if (new Set(verdicts).size < 2) return [];
	const questionIds = worlds[0]?.choices.map(({ questionId }) => questionId) ?? [];
	return questionIds.flatMap((questionId, position): Depending[] => {
		const seenBy = new Map<string, Set<Verdict>>();
		worlds.forEach(({ choices }, index) => {
			const label = choices[position]?.label ?? "";
			seenBy.set(label, (seenBy.get(label) ?? new Set()).add(verdicts[index] ?? "cannot-tell"));
		});
		const labelsOf = (verdict: Verdict) =>
			[...seenBy].filter(([, seen]) => seen.size === 1 && seen.has(verdict)).map(([label]) => label);
		const [fitsWith, notWith] = [labelsOf("fits"), labelsOf("does-not-fit")];
		return fitsWith.length > 0 && notWith.length > 0 ? [{ ruleId, questionId, fitsWith, notWith }] : [];
	});
}

function buildFindings(build: Build): readonly BuildFinding[] {
	return allRules
		.filter(({ scope }) => scope === "build")
		.flatMap((rule): BuildFinding[] => {
			const findings = build.worlds.map(({ facts }) =>
				runRule(rule, { facts, assumed: [], measures: measuresOfBuild }),
			);
			const finding = plainest(findings);
			if (finding.verdict !== "does-not-fit" && finding.severity === null) return [];
			const certain = findings.every(
				({ verdict, severity }) => verdict === finding.verdict && severity === finding.severity,
			);
			// What is good to know only if an answer turns out so can wait for that answer.
			return certain || finding.severity !== "good-to-know" ? [{ finding, certain }] : [];
		});
}
