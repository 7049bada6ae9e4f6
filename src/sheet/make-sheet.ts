import type { Advice, Reason, ShortlistEntry } from "../choose/advise.ts";
import { conflictsOf } from "../choose/conflicts.ts";
import { findOut } from "../choose/find-out.ts";
import { measuresOfBuild } from "../choose/findings-of-market.ts";
import { ownershipOf } from "../choose/firmness.ts";
import type { BoardJudgement, BuildFinding, Judgement } from "../choose/judge.ts";
import { worthsWhenAsked } from "../choose/next-question.ts";
import { onlyInventedBoards } from "../choose/only-invented-boards.ts";
import { repairedWays } from "../choose/repaired-answers.ts";
import { once } from "../maths/once.ts";
import type { Answers } from "../parts/answers-file.ts";
import type { Board } from "../parts/board.ts";
import type { Build, BuildFacts } from "../parts/build.ts";
import { partWords } from "../parts/part-words.ts";
import { measurePlan } from "../plan/measure-plan.ts";
import { allQuestions } from "../questions/all-questions.ts";
import type { Question, QuestionContext } from "../questions/define-question.ts";
import { askedQuestions, isAsked } from "../questions/is-asked.ts";
import { partKindsOfBuild } from "../questions/owned-parts.ts";
import { cautions } from "../reference/cautions.ts";
import { type SourceId, sourceById } from "../reference/sources.ts";
import { allRules, ruleById } from "../rules/all-rules.ts";
import type { Rule } from "../rules/define-rule.ts";
import { findingAdvice, findingWords, needWords } from "../rules/finding-words.ts";
import type { Finding } from "../rules/outcome.ts";
import { needOf } from "../rules/run-rule.ts";
import { leadWords, neverFirst, pointsWords, reasonsWords } from "./choice-words.ts";
import { conflictWords } from "./demand-words.ts";
import { findOutWords } from "./find-out-words.ts";
import { howToFindOut } from "./how-to-find-out.ts";
import { ownershipWords } from "./ownership-words.ts";
import { pictureShape, planPicture } from "./plan-picture.ts";
import { planWords } from "./plan-words.ts";
import { powerGauge } from "./power-gauge.ts";
import { powerSentence, powerToldOf, powerWordsInShort } from "./power-words.ts";
import { priceWords } from "./price-words.ts";
import { reasonWords, roleWords, scoreWords, verdictWords } from "./reason-words.ts";
import type { Sheet, SheetAnswer, SheetBoard, SheetNeed, SheetOfAll, SheetOpen, SheetPlan } from "./sheet.ts";
import { shortFacts } from "./short-facts.ts";
import { groundWords, sourceWords } from "./source-words.ts";
import { repairedWayWords } from "./ways-out-words.ts";

/** Makes the requirement sheet. Without any board in the market it is the sheet "what to look for". */
export function makeSheet(judgement: Judgement, advice: Advice, answers: Answers, context: QuestionContext): Sheet {
	const needs = needsOf(judgement.build);
	const isWish = ({ ruleId }: SheetNeed) => isNiceToHave(ruleId, judgement.build);
	const whole = advice.shortlist.map((entry) => boardOf(entry, judgement, context));
	const ofAll = reasonsOfAll(whole);
	const shortlist = whole.map((board) => withoutReasons(board, ofAll));
	const boardName = (id: string) => judgedOf(id, judgement)?.board.name ?? id;
	const open = once(() => openOf(answers, judgement, advice, context));
	return {
		title: "What to look for in a board",
		asOf: context.asOf,
		market: judgement.market.version,
		hasInventedParts: shortlist.some(({ invented }) => invented),
		inShort: inShort(judgement, advice, shortlist),
		partsDisagree: [...advice.buildFindings].sort(byWeight).map(({ finding, certain }) => ({
			text: certain ? findingWords(finding) : `It may be that: ${findingWords(finding)}`,
			isStopped: finding.verdict === "does-not-fit",
			advice: adviceWords(finding, judgement.build.facts),
		})),
		beforeYouPay: beforeYouPay(judgement, advice, context),
		mustHave: needs.filter((need) => !isWish(need)),
		niceToHave: needs.filter(isWish),
		shortlist,
		lead: advice.lead ? [...leadWords(advice.lead, boardName), ...openQuestionsWords(answers, judgement)] : [],
		ofAll,
		nothingFits: onlyInventedBoards(judgement)
			? []
			: [
					...new Set(conflictsOf(advice.waysOut).map((ruleIds) => conflictWords(ruleIds, judgement))),
					...repairedWays(judgement, answers, advice.waysOut).map((way) => repairedWayWords(way, judgement, context)),
				],
		plan: drawn(advice, judgement, planDrawn),
		power: drawn(advice, judgement, powerDrawn),
		// Takes a while where much is open, and is on no screen but the sheet's own.
		get open() {
			return open();
		},
		answers: allQuestions
			.filter((question) => isAsked(question, judgement.build) || answers[question.id])
			.map((question) => answerOf(question.id, answers, context)),
		cautions: cautions.map(({ text, source }) => ({ text, ground: groundWords(sourceById(source)) })),
		sources: sourcesOf(judgement).map((id) => sourceWords(sourceById(id))),
	};
}

/** Demands that cost no board its place: something would do instead, or the wish may be given up. */
function isNiceToHave(ruleId: string, { facts }: Build): boolean {
	return facts.wishes[ruleId] === "would-like" || ruleById(ruleId)?.severity !== "stops";
}

function needsOf(build: Build): readonly SheetNeed[] {
	return allRules
		.filter(({ scope }) => scope === "board")
		.flatMap((rule): SheetNeed[] => {
			const text = needTexts(rule, build);
			return text === null ? [] : [{ ruleId: rule.id, label: rule.label, text, why: rule.why }];
		});
}

/** One line where all worlds agree; else what each open answer would ask for. */
function needTexts(rule: Rule, build: Build): string | null {
	const byText = new Map<string, string>();
	for (const { facts, choices } of build.worlds) {
		const need = needOf(rule, { facts, measures: measuresOfBuild });
		const text = need ? needWords(rule, need) : "";
		if (!byText.has(text)) byText.set(text, choices.map(({ label }) => label).join(", "));
	}
	const texts = [...byText.keys()];
	if (texts.length === 1) return texts[0] || null;
	const differing = texts.filter((text) => text !== "");
	return differing.length > 3
		? "This depends on answers that are still open; find those out first."
		: `Find out first: ${differing.join(" Or: ")}`;
}

function boardOf(entry: ShortlistEntry, judgement: Judgement, { asOf }: QuestionContext): SheetBoard {
	const judged = judgedOf(entry.boardId, judgement);
	const { low, mid, high } = entry.score;
	return {
		boardId: entry.boardId,
		name: judged?.board.name ?? entry.boardId,
		invented: judged?.board.invented === true,
		role: entry.role,
		roleWords: roleWords(entry),
		verdictWords: verdictWords(entry),
		score: { low: Math.round(low), mid: Math.round(mid), high: Math.round(high) },
		scoreWords: scoreWords(entry),
		pointsWords: pointsWords(entry.score),
		behind: entry.behind
			? [
					...reasonsWords(entry.behind, (id) => judgedOf(id, judgement)?.board.name ?? id),
					...(entry.canLead === false ? [neverFirst] : []),
				]
			: [],
		priceWords: priceWords(judged?.subject.board, asOf),
		power: judged ? powerInShort(judged, judgement.build) : null,
		facts: judged ? shortFacts(judged.subject.board ?? judged.board) : "",
		for: entry.for.map(reasonWords),
		against: entry.against.map(reasonWords),
		unknown: entry.unknown.map(reasonWords),
	};
}

/** What the tries leave out: answers that nobody has given change what is asked of a board, not how it is weighed. */
function openQuestionsWords(answers: Answers, { build }: Judgement): readonly string[] {
	const open = askedQuestions(build).filter(({ id }) => answers[id]?.status !== "answered").length;
	if (open === 0) return [];
	return [
		`${open === 1 ? "1 open question is" : `${open} open questions are`} not in these tries: ${open === 1 ? "its answer" : "their answers"} can still change the order.`,
	];
}

/** Reasons that stand with every board of a list of several. */
function reasonsOfAll(boards: readonly SheetBoard[]): SheetOfAll {
	const [first, ...others] = boards;
	const shared = (of: (board: SheetBoard) => readonly string[]) =>
		first && others.length > 0 ? of(first).filter((text) => others.every((board) => of(board).includes(text))) : [];
	return {
		for: shared((board) => board.for),
		against: shared((board) => board.against),
		unknown: shared((board) => board.unknown),
	};
}

function withoutReasons(board: SheetBoard, ofAll: SheetOfAll): SheetBoard {
	const own = (of: (one: SheetOfAll) => readonly string[]) => of(board).filter((text) => !of(ofAll).includes(text));
	return {
		...board,
		for: own((one) => one.for),
		against: own((one) => one.against),
		unknown: own((one) => one.unknown),
	};
}

/** A picture and words of the first board of the shortlist; null where there is none. */
function drawn(
	{ shortlist }: Pick<Advice, "shortlist">,
	judgement: Judgement,
	draw: (board: Board, build: Build) => Omit<SheetPlan, "boardName">,
): SheetPlan | null {
	const [first] = shortlist;
	const judged = first && judgedOf(first.boardId, judgement);
	if (!judged) return null;
	const board = judged.subject.board ?? judged.board;
	return { boardName: board.name, ...draw(board, judgement.build) };
}

function planDrawn(board: Board, { facts }: Build): Omit<SheetPlan, "boardName"> {
	const measure = measurePlan(board, facts);
	return {
		picture: measure.plan.ends.length > 0 ? planPicture(measure.plan, pictureShape(board, measure)) : [],
		sections: planWords(measure),
	};
}

function powerDrawn(board: Board, build: Build): Omit<SheetPlan, "boardName"> {
	const told = powerToldOf(board, build.facts, build.worlds);
	// Without any processor in mind there is nothing to tell yet, and the sheet lists that question anyway.
	if (told.processor.state !== "have" && told.candidates.length === 0) return { picture: [], sections: [] };
	return { picture: told.steady ? powerGauge(told.steady) : [], sections: powerWordsInShort(told, board.id) };
}

/** Power and heat of a board as a sentence; null where nothing is known of the processor's watts. */
function powerInShort(judged: BoardJudgement, { facts }: Build): string | null {
	const steady = judged.subject.measures?.power?.(facts).steady;
	return steady ? powerSentence(steady, facts.sessionLength) : null;
}

function judgedOf(boardId: string, { boards }: Judgement): BoardJudgement | undefined {
	return boards.find(({ board }) => board.id === boardId);
}

function inShort(
	judgement: Judgement,
	{ shortlist: entries }: Advice,
	shortlist: readonly SheetBoard[],
): readonly string[] {
	const { counts } = judgement;
	if (counts.all === 0)
		return [
			"No boards were given, so this sheet says what to look for in any board.",
			"Take it to the shop, and hold each board against it.",
		];
	if (onlyInventedBoards(judgement))
		return [
			"The demonstration's boards are invented, and none suits your own processor. This sheet says what to look for.",
			"Take it to the shop, and hold each board against it.",
		];
	const left = counts.all - counts.doesNotFit;
	const best = shortlist[0];
	if (!best) return [`None of the ${counts.all} boards fits. Shortlist and sheet say what to change.`];
	const leftWords = `${left} of ${counts.all} boards ${left === 1 ? "is" : "are"} left`;
	const open = counts.cannotTell > 0 ? `; for ${counts.cannotTell} of them something is not known yet` : "";
	const hangsOnProcessor = entries.every(({ dependsOn }) => dependsOn.join() === "fit/candidates");
	if (counts.fits === 0 && hangsOnProcessor)
		return [
			`${leftWords}; which of them fit depends on the processor you take.`,
			`${best.roleWords}: ${best.name}, ${best.priceWords}. It has ${best.scoreWords}.`,
			"Settle on a processor, then look here again: the choice among your candidates stays yours.",
		];
	return [
		`${leftWords}${counts.fits === 0 ? ", but whether any of them fits is not known yet" : open}.`,
		`${best.roleWords}: ${best.name}, ${best.priceWords}. It has ${best.scoreWords}.`,
		entries[0]?.verdict === "fits"
			? "The sheet lists what to check before you pay."
			: "Find out what is still unknown before you pay: it decides whether this board fits.",
	];
}

function beforeYouPay(
	{ market, build, boards }: Judgement,
	{ shortlist }: Advice,
	{ asOf }: QuestionContext,
): readonly string[] {
	const processor = build.facts.processor.state === "have" ? build.facts.processor.part.name : "your processor";
	const advices = shortlist.flatMap(({ boardId }) => {
		const judged = boards.find(({ board }) => board.id === boardId);
		return (judged?.findings ?? []).flatMap((finding) => {
			const advice = finding.verdict === "fits" && finding.severity ? findingAdvice(finding) : undefined;
			return advice && judged ? [{ advice: `${findingWords(finding)} ${advice}`, name: judged.board.name }] : [];
		});
	});
	const byAdvice = new Map<string, string[]>();
	for (const { advice, name } of advices) byAdvice.set(advice, [...(byAdvice.get(advice) ?? []), name]);
	return [
		`Open the board maker's support page and find ${processor} in the processor list. Note the firmware version beside it, and ask the shop which version the box holds.`,
		"Compare name and revision on the box with the page, letter by letter: boards of nearly one name differ.",
		...twinWords(
			shortlist.map(({ boardId }) => boardId),
			market.parts.board,
		),
		"Ask until when the board can go back, and whether that is after the day you will build.",
		...returnWords(build.facts),
		"See what is in the box: the shield for the back, screws for M.2 drives, drive cables, aerials.",
		...[...byAdvice].map(([advice, names]) => `${[...new Set(names)].join(", ")}: ${advice}`),
		...(market.parts.board.length > 0 ? [`Look at today's prices: those here were noted before ${asOf}.`] : []),
	];
}

/** Boards of nearly one name differ in what is fitted; each pair with a board of the shortlist is named. */
function twinWords(boardIds: readonly string[], boards: readonly Board[]): readonly string[] {
	return boardIds.flatMap((id) => {
		const board = boards.find((one) => one.id === id);
		if (!board) return [];
		const isTwin = ({ name, maker }: Board) =>
			maker === board.maker && name !== board.name && (name.startsWith(board.name) || board.name.startsWith(name));
		const twins = boards.filter((other) => other.id !== id && (isTwin(other) || other.name === board.name));
		const names = twins.map(({ name, revision }) => (revision ? `${name} (revision ${revision})` : name));
		const own = board.revision ? `${board.name} (revision ${board.revision})` : board.name;
		return names.length > 0
			? [`${own} is not ${names.join(" or ")}: compare memory type, wireless and revision, since the names are alike.`]
			: [];
	});
}

/** Until when parts already bought can go back: what does not fit must be known before that day. */
function returnWords({ returnableUntil, ...facts }: BuildFacts): readonly string[] {
	const kinds = partKindsOfBuild.filter((kind) => ownershipOf({ returnableUntil, ...facts }, kind) === "returnable");
	if (kinds.length === 0) return [];
	const nouns = kinds.map((kind) => partWords[kind] ?? kind).join(", ");
	return [
		returnableUntil
			? `What you bought can go back until ${returnableUntil} (${nouns}): try the parts together before that day, if a tried part may still go back.`
			: `Ask until when your ${nouns} can go back, and try the parts together before that day.`,
	];
}

/** What stops it first, then what is to be planned around, then what is good to know. */
function byWeight({ finding: one }: BuildFinding, { finding: other }: BuildFinding): number {
	const weight = ({ verdict, severity }: Finding) =>
		verdict === "does-not-fit" ? 0 : severity === "plan-around" ? 1 : 2;
	return weight(one) - weight(other);
}

/** What to do about parts that disagree, and which of them can still go back. */
function adviceWords(finding: Finding, facts: BuildFacts): string | null {
	const rule = ruleById(finding.ruleId);
	// What only wants a thought needs no part to go back.
	const owned = rule && finding.verdict === "does-not-fit" ? ownershipWords(rule, facts) : "";
	const words = [findingAdvice(finding) ?? "", owned];
	return words.filter((sentence) => sentence !== "").join(" ") || null;
}

function openOf(
	answers: Answers,
	judgement: Judgement,
	advice: Advice,
	context: QuestionContext,
): readonly SheetOpen[] {
	// An answer that the question can no longer have is as open as none.
	const counted = Object.fromEntries(
		Object.entries(answers).filter(([id]) => {
			const question = allQuestions.find((one) => one.id === id);
			return question && saidOf(question, answers, context) !== null;
		}),
	);
	const boardName = (id: string) => judgedOf(id, judgement)?.board.name ?? id;
	const inOrder = findOut(judgement, advice, counted, worthsWhenAsked(answers, context)).flatMap((one): SheetOpen[] => {
		const words = findOutWords(one, boardName);
		return words ? [{ what: words.what, how: [words.how, words.changes].filter(Boolean).join(" ") }] : [];
	});
	// Rules that can take no board out lack facts too; these come last.
	const rest = advice.shortlist.flatMap(({ boardId, unknown }) =>
		[...new Set(unknown.flatMap(missingOf))].flatMap((path): SheetOpen[] => {
			const found = howToFindOut(path);
			return found ? [{ what: `${found.ofBoard ? `${boardName(boardId)}: ` : ""}${found.what}`, how: found.how }] : [];
		}),
	);
	const seen = new Set<string>();
	return [...inOrder, ...rest].filter(({ what }) => !seen.has(what) && seen.add(what));
}

function missingOf(reason: Reason): readonly string[] {
	if (reason.kind === "finding") return reason.finding.missing;
	return reason.kind === "criterion" ? reason.part.measure.missing : [];
}

function answerOf(questionId: string, answers: Answers, context: QuestionContext): SheetAnswer {
	const question = allQuestions.find(({ id }) => id === questionId);
	const answer = answers[questionId];
	const said = question ? saidOf(question, answers, context) : null;
	const value = said ?? (answer ? "Not sure" : "Not sure (not asked yet)");
	return { questionId, label: question?.label ?? questionId, value, by: answer?.by ?? "" };
}

/** The answer in words; null where it is not sure, not given, or no longer one the question can have. */
function saidOf({ id, expected, says }: Question, answers: Answers, context: QuestionContext): string | null {
	const answer = answers[id];
	const value = answer?.status === "answered" ? answer.value : undefined;
	return value !== undefined && expected(value, context) === null ? says(value, context) : null;
}

/** The sources of every rule that had something to say, and of the facts that were assumed. */
function sourcesOf({ boards }: Judgement): readonly SourceId[] {
	const ids = new Set<SourceId>(allRules.filter(({ scope }) => scope === "board").map(({ source }) => source));
	for (const { findings } of boards)
		for (const { facts } of findings) for (const { source } of facts) if (source) ids.add(source);
	for (const { source } of cautions) ids.add(source);
	return [...ids].sort();
}
