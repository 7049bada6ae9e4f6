import { fellOut } from "../choose/fell-out.ts";
import type { Score } from "../choose/score.ts";
import { allCriteria, criterionById } from "../criteria/all-criteria.ts";
import type { Criterion, Scale } from "../criteria/define-criterion.ts";
import type { AnswerValue } from "../parts/answers-file.ts";
import { type BuildFacts, emptyBuildFacts } from "../parts/build.ts";
import { pathParts } from "../parts/fact-path.ts";
import { allQuestions, questionById } from "../questions/all-questions.ts";
import type { Question } from "../questions/define-question.ts";
import { type SourceId, sourceById } from "../reference/sources.ts";
import { allRules, ruleById } from "../rules/all-rules.ts";
import type { FactRead, Finding } from "../rules/outcome.ts";
import { capital } from "../sheet/listed.ts";
import { severityWords } from "../sheet/rule-book.ts";
import { groundWords } from "../sheet/source-words.ts";
import { giverWords } from "../sheet/suggestion-words.ts";
import { ownPart } from "../walk/own-parts-list.ts";
import { answerTo } from "../walk/suggestions.ts";
import type { Place } from "../walk/walk-state.ts";
import { type Block, heading, list, pairs, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** So many rules are told one by one; the rule book has all of them (own convention). */
const mostRules = 12;

/**
 * Numbers and sources of what is on screen, for who explains it: ids, weights, facts with how they are known, and where
 * figures come from.
 */
export function sourceBlocks(view: WalkView): readonly Block[] {
	const { market, context } = view;
	const boards = market.parts.board.length;
	return [
		heading("Numbers and sources"),
		...blocksAt(view, view.state.place),
		text(`Parts: ${market.version}. Boards: ${boards}. Day: ${context.asOf}.`),
	];
}

function blocksAt(view: WalkView, place: Place): readonly Block[] {
	switch (place.at) {
		case "question":
		case "what-if-question":
		case "coach-question":
		case "coach-why":
			return questionBlocks(view, place.id);
		case "what-if-answer":
			return [...questionBlocks(view, place.id), ...weightBlocks(view)];
		case "suggestion":
			return questionBlocks(view, place.questionId);
		case "shortlist":
		case "like":
			return shortlistBlocks(view);
		case "price-line":
			return [
				text("Points are those of the shortlist. A price is the noted one, else the cheapest offer."),
				...exactPoints(view),
			];
		case "board":
			return boardBlocks(view, place.boardId, place.page);
		case "tier-end":
		case "fell-out":
		case "parts-disagree":
			return fellOutBlocks(view);
		case "find-out":
		case "coach":
			return [
				text("Worth: what you gain on average by choosing after you know it, in points of 100."),
				...weightBlocks(view),
			];
		case "review":
		case "suggestions":
			return answerBlocks(view);
		case "sheet":
			return needBlocks();
		case "own-part":
			return evidenceBlocks(view, place);
		default:
			return [];
	}
}

function questionBlocks(view: WalkView, id: string): readonly Block[] {
	const question = questionById(id);
	if (!question) return [];
	const answer = answerTo(view.state.answers, id);
	const { importance, paths } = setBy(question, view);
	const reads = (read: readonly string[]) => read.some((path) => paths.has(path) || paths.has(pathParts(path).root));
	const rules = allRules.filter((rule) => reads([...rule.reads, ...rule.mayRead]));
	const criteria = allCriteria.filter((criterion) => importance.has(criterion.id) || reads(criterion.reads));
	return [
		pairs([
			["Question", id],
			...(answer ? [["Answered by", giverWords(answer.by)] as const] : []),
			["Why", question.why],
			["Where to find it", question.whereToFind],
			["What it changes", question.changes],
		]),
		...(rules.length > 0
			? [
					heading("Rules that read it"),
					list([
						...rules.slice(0, mostRules).map((one) => `${one.id}: ${one.label}. ${sourceSaid(one.source)}`),
						...(rules.length > mostRules ? [`${rules.length - mostRules} more: boardwalk why all.`] : []),
					]),
				]
			: []),
		...(criteria.length > 0 ? [heading("Criteria that read it"), list(criteria.map(criterionSaid))] : []),
	];
}

/** What the answers of a question set: facts by path, and criteria whose importance they say. */
function setBy(question: Question, { context, judgement }: WalkView) {
	const paths = new Set<string>();
	const importance = new Set<string>();
	const typed = question.read ? ["5", "200", "none"] : [];
	const values = [
		...question.options(context, judgement().build.facts).map(({ value }) => value),
		...typed.flatMap((words): AnswerValue[] => {
			const reading = question.read?.(words, context);
			return reading && "value" in reading ? [reading.value] : [];
		}),
	].filter((value) => question.expected(value, context) === null);
	for (const value of values.slice(0, 12)) {
		const before = emptyBuildFacts;
		const after = question.sets(before, value, context);
		for (const key of Object.keys(after) as (keyof BuildFacts)[]) {
			if (after[key] === before[key]) continue;
			if (key === "importance") for (const id of Object.keys(after.importance)) importance.add(id);
			else if (key === "wishes") for (const id of Object.keys(after.wishes)) paths.add(`wish.${id}`);
			else paths.add(key);
		}
	}
	return { paths, importance };
}

/** What a criterion measures, and the ends of its scale. */
function criterionSaid({ id, name, unit, scale, madeOf, source }: Criterion): string {
	const ends = (of: Scale, inUnit: string): string =>
		[of[0], of.at(-1)].flatMap((end) => (end ? [`${end[0]} ${inUnit} is ${pointsOf(end[1])}.`] : [])).join(" ");
	const scales = madeOf
		? madeOf.map((part) => `${part.weight} of 100 for ${part.name}. ${ends(part.scale, part.unit)}`)
		: [`Its scale: ${ends(scale, unit)}`];
	return [`${id}: ${name}.`, ...scales, sourceSaid(source)].join(" ");
}

function pointsOf(value: number): string {
	return `${Math.round(100 * value)} points`;
}

/** A source in a sentence, without its sections: those stand under "boardwalk why". */
function sourceSaid(id: SourceId): string {
	const source = sourceById(id);
	const more = [source.number, source.revision && `rev. ${source.revision}`].filter(Boolean);
	return `Source: ${[groundWords(source), ...(source.title === groundWords(source) ? more : [])].join(", ")}.`;
}

function shortlistBlocks(view: WalkView): readonly Block[] {
	const { shortlist } = view.advice();
	const nameOf = boardNames(view);
	return [
		...weightBlocks(view),
		...shortlist.flatMap(({ boardId, score }) => [heading(nameOf(boardId)), list(partsSaid(score))]),
	];
}

function boardNames({ judgement }: WalkView): (id: string) => string {
	const { boards } = judgement();
	return (id) => boards.find(({ board }) => board.id === id)?.board.name ?? id;
}

/** What each criterion weighs, on which scale. They are the same for all boards left. */
function weightBlocks(view: WalkView): readonly Block[] {
	const [first] = view.advice().ranking;
	if (!first || first.score.parts.length === 0) return [text("Without a board left there are no points.")];
	return [
		heading("Weights, in points of 100"),
		text("They follow from how much you said each thing matters. A score is the sum of weight times value."),
		list(
			first.score.parts
				.toSorted((one, other) => other.weight - one.weight)
				.flatMap(({ criterionId, weight }) => {
					const criterion = criterionById(criterionId);
					return criterion ? [`Weighs ${oneDecimal(100 * weight)}: ${criterionSaid(criterion)}`] : [];
				}),
		),
	];
}

/** What a board measures on each criterion, and the points that gives. */
function partsSaid({ parts, low, mid, high }: Score): readonly string[] {
	return [
		`Score ${oneDecimal(mid)}, from ${oneDecimal(low)} to ${oneDecimal(high)}.`,
		...parts.map(({ criterionId, weight, value, measure }) => {
			const criterion = criterionById(criterionId);
			const missing = measure.missing.length > 0 ? ` Not known: ${measure.missing.slice(0, 4).join(", ")}.` : "";
			const said = criterion ? ` ${capital(criterion.says(measure))}.` : "";
			const points = `${oneDecimal(100 * weight * value.mid)} of ${oneDecimal(100 * weight)}`;
			return `${points} for ${criterion?.name ?? criterionId}.${said}${missing}`;
		}),
	];
}

function exactPoints(view: WalkView): readonly Block[] {
	const nameOf = boardNames(view);
	const { ranking } = view.advice();
	if (ranking.length === 0) return [];
	return [
		list(
			ranking
				.slice(0, mostRules)
				.map(
					({ boardId, score: { low, mid, high } }) =>
						`${nameOf(boardId)}: ${oneDecimal(mid)} points, from ${oneDecimal(low)} to ${oneDecimal(high)}.`,
				),
		),
	];
}

function oneDecimal(value: number): string {
	return String(Math.round(10 * value) / 10);
}

/** What rules found for a board: what they read, how that is known, and where the rule stands. */
function boardBlocks(view: WalkView, boardId: string, page: "facts" | "plan" | "power" | undefined): readonly Block[] {
	const judged = view.judgement().boards.find(({ board }) => board.id === boardId);
	if (!judged) return [];
	const roots = page === "plan" ? ["plan", "headers"] : page === "power" ? ["power", "load"] : null;
	const findings = judged.findings.filter(({ ruleId }) => {
		const rule = ruleById(ruleId);
		return (
			roots === null ||
			[...(rule?.reads ?? []), ...(rule?.mayRead ?? [])].some((path) => roots.includes(pathParts(path).root))
		);
	});
	const score = view.advice().ranking.find((one) => one.boardId === boardId)?.score;
	const evidence = (judged.subject.board ?? judged.board).evidence ?? {};
	return [
		...(page === undefined && score ? [heading("Points"), list(partsSaid(score))] : []),
		...(page !== "facts" && findings.length > 0
			? [heading("What each rule read"), list(findings.map((finding) => findingSaid(finding)))]
			: []),
		...(page === "plan" || page === "power" || Object.keys(evidence).length === 0
			? []
			: [heading("How facts are known"), list(Object.entries(evidence).map(evidenceSaid))]),
		...(page === "facts" && judged.subject.assumed.length > 0
			? [
					heading("Assumed facts"),
					list(judged.subject.assumed.map((one) => `${one.path}: ${one.because}. ${sourceSaid(one.source)}`)),
				]
			: []),
	];
}

function findingSaid({ ruleId, verdict, severity, facts, missing }: Finding): string {
	const rule = ruleById(ruleId);
	const said = verdict === "fits" ? "fits" : verdict === "cannot-tell" ? "can't tell" : "does not fit";
	return [
		`${ruleId}: ${said}${severity ? `, ${severityWords[severity]}` : ""}.`,
		...facts.map(factSaid),
		...(missing.length > 0 ? [`Not known: ${missing.slice(0, 6).join(", ")}.`] : []),
		...(rule ? [sourceSaid(rule.source)] : []),
	].join(" ");
}

function factSaid({ path, value, standing, because }: FactRead): string {
	const { root, inside } = pathParts(path);
	if (measuredRoots.includes(root))
		return isTold(value) ? `${path} = ${valueSaid(value)} (worked out).` : `${path} (worked out).`;
	// What is no fact of a part has been answered.
	if (inside === "" || root === "wish") return `${path} = ${valueSaid(value)} (answered).`;
	const ground = standing === "assumed" && because ? `: ${because}` : "";
	return `${path} = ${valueSaid(value)} (${standing}${ground}).`;
}

/** What is worked out of a whole build, by the root of its path. */
const measuredRoots: readonly string[] = ["plan", "headers", "power", "load"];

function isTold(value: unknown): boolean {
	return typeof value !== "object" || Array.isArray(value);
}

/** A value in few words: lists of things only by their number. */
function valueSaid(value: unknown): string {
	if (typeof value === "boolean") return value ? "yes" : "no";
	if (typeof value === "number") return String(Math.round(1000 * value) / 1000);
	if (typeof value === "string") return value.length > 60 ? `${value.slice(0, 57)}...` : value;
	if (!Array.isArray(value)) return "worked out";
	const isShort = value.length <= 6 && value.every((one) => typeof one !== "object");
	return value.length === 0 ? "none" : isShort ? value.join(", ") : `a list of ${value.length}`;
}

function evidenceSaid([path, { standing, where, date, by }]: readonly [
	string,
	{
		readonly standing: string;
		readonly where?: string | undefined;
		readonly date?: string | undefined;
		readonly by?: string | undefined;
	},
]): string {
	const told = [standing, where, by && `by ${by}`, date && `on ${date}`].filter(Boolean);
	return `${path}: ${told.join(", ")}.`;
}

function evidenceBlocks({ state }: WalkView, { kind, id }: Extract<Place, { at: "own-part" }>): readonly Block[] {
	const evidence = (ownPart(state, kind, id)?.part as { evidence?: Record<string, never> } | undefined)?.evidence ?? {};
	return Object.keys(evidence).length === 0
		? [text("Nothing is kept of where its facts come from.")]
		: [heading("How facts are known"), list(Object.entries(evidence).map(evidenceSaid))];
}

function fellOutBlocks(view: WalkView): readonly Block[] {
	const judgement = view.judgement();
	const groups = fellOut(judgement);
	const ofBuild = judgement.buildFindings.map(({ finding }) => finding);
	return [
		...(groups.length > 0
			? [
					heading("Rules that took boards out"),
					list(
						groups.map(({ ruleId, boards }) => {
							const rule = ruleById(ruleId);
							return `${ruleId}: ${boards.length}. ${rule ? `${rule.asks} ${sourceSaid(rule.source)}` : ""}`;
						}),
					),
				]
			: [text("No rule has taken a board out.")]),
		...(ofBuild.length > 0 ? [heading("Rules about your parts"), list(ofBuild.map(findingSaid))] : []),
	];
}

function answerBlocks({ state }: WalkView): readonly Block[] {
	const given = allQuestions.flatMap(({ id }) => {
		const answer = answerTo(state.answers, id);
		return answer?.status === "answered" ? [`${id}: by ${giverWords(answer.by)}.`] : [];
	});
	return given.length > 0 ? [heading("Who gave which answer"), list(given)] : [];
}

/** The rules that lines of the sheet come from. */
function needBlocks(): readonly Block[] {
	const rules = allRules.filter(({ needs }) => needs !== undefined);
	return [
		heading("Rules behind the must-haves"),
		list(rules.map(({ id, label, source }) => `${label}: ${id}. ${sourceSaid(source)}`)),
	];
}
