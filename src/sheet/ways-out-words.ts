import { ownershipOf } from "../choose/firmness.ts";
import type { Judgement } from "../choose/judge.ts";
import type { AnswerChange, Repair, RepairedWayOut } from "../choose/repaired-answers.ts";
import type { AnswerValue } from "../parts/answers-file.ts";
import type { BuildPartKind } from "../parts/build.ts";
import { findPart } from "../parts/market.ts";
import { type Money, moneyText } from "../parts/money.ts";
import { partWords } from "../parts/part-words.ts";
import { titleInSentence } from "../parts/title-in-sentence.ts";
import { questionById } from "../questions/all-questions.ts";
import type { Question, QuestionContext } from "../questions/define-question.ts";
import { ruleById } from "../rules/all-rules.ts";
import { countWord } from "./demand-words.ts";
import { capital, listed, withCounts } from "./listed.ts";
import { ownershipWords } from "./ownership-words.ts";

/** More names than this end in a number. */
const mostNames = 3;

/**
 * One way out in sentences: what to change, which boards fit then, and of which nobody can tell. A second way to do it
 * follows. Where no change of answers is known to do it, what would have to give is named, and nothing is promised.
 */
export function repairedWayWords(way: RepairedWayOut, judgement: Judgement, context: QuestionContext): string {
	if (way.repairs.length > 0)
		return way.repairs
			.map((repair, index) => `${index > 0 ? "Or: " : ""}${repairWords(repair, judgement, context)}`)
			.join(" ");
	const changes = [...new Set(way.giveUp.map((id) => ruleById(id)?.wayOut ?? id))];
	const owned = way.giveUp.map((id) => ownershipWords(ruleById(id) ?? { reads: [] }, judgement.build.facts));
	const one = way.boardIds.length === 1;
	return [
		...(changes.length === 1
			? [`${countedBoards(way.boardIds.length)} would ask for ${changes[0]}: ${named(way.boardIds, judgement)}.`]
			: [
					`${countedBoards(way.boardIds.length)} ${one ? "comes" : "come"} back only with several changes at once: ${named(way.boardIds, judgement)}.`,
					// A long list is easier read as short sentences.
					...changes.map((change) => `${capital(change)}.`),
				]),
		"No single answer here does that yet.",
		...new Set(owned),
	]
		.filter((sentence) => sentence !== "")
		.join(" ");
}

/** A repair in sentences. */
export function repairWords(repair: Repair, judgement: Judgement, context: QuestionContext): string {
	const changes = repair.changes.map((change, index) => {
		const words = changeWords(change, judgement, context);
		return `${index === 0 ? capital(words) : `And ${words}`}.`;
	});
	return [...changes, broughtBackWords(repair, judgement), ...ownedWords(repair, judgement)].join(" ");
}

/** Which boards come back: those that fit and those of which nobody can tell, apart. */
export function broughtBackWords({ fits, cannotTell, leavesNothing }: Repair, judgement: Judgement): string {
	const [first, ...more] = leavesNothing;
	return [
		...(fits.length > 0
			? [`Then ${countedBoards(fits.length)} ${fits.length === 1 ? "fits" : "fit"}: ${named(fits, judgement)}.`]
			: []),
		...(cannotTell.length > 0
			? [`For ${countedBoards(cannotTell.length)} we can't tell yet: ${named(cannotTell, judgement)}.`]
			: []),
		// Told of one board: of several they mostly make one buy the same.
		...(first
			? [
					`Too little is left then for what ${named([first.boardId], judgement)} makes you buy besides. That is: ${listed(first.extras)}.${more.length > 0 ? ` So it is with ${countedBoards(more.length)} more.` : ""}`,
				]
			: []),
	].join(" ");
}

function countedBoards(count: number): string {
	return `${count} ${count === 1 ? "board" : "boards"}`;
}

/** In the order of their names, so that the order in which the boards were given changes no word. */
function named(ids: readonly string[], { market }: Judgement): string {
	const names = ids
		.map((id) => findPart(market, "board", id)?.name ?? id)
		.sort((one, other) => (one === other ? 0 : one < other ? -1 : 1));
	return names.length > mostNames + 1
		? `${names.slice(0, mostNames).join(", ")} and ${names.length - mostNames} more`
		: listed(names);
}

/** What the parts given up are to the person, so that nobody sends back what cannot go back. */
function ownedWords({ changes }: Repair, { build }: Judgement): readonly string[] {
	const kinds = changes.flatMap(({ questionId }) => questionById(questionId)?.partKind ?? []);
	return kinds.flatMap((kind) => {
		if (kind === "drive") return build.facts.boughtLists?.includes("drives") ? ["Your drives are paid for."] : [];
		if (kind === "addInCard")
			return build.facts.boughtLists?.includes("addInCards") ? ["Your other cards are paid for."] : [];
		const words = ownershipWords({ reads: [kind] }, build.facts);
		return words === "" ? [] : [words];
	});
}

/** One change as part of a sentence: "EUR 15.00 more for the board: EUR 225.00 instead of EUR 210.00". */
export function changeWords(change: AnswerChange, judgement: Judgement, context: QuestionContext): string {
	const { questionId, from, to } = change;
	const question = questionById(questionId);
	if (!question) return questionId;
	if (to === null) return anotherPart(change, question, judgement);
	if (question.kind === "part") return `a ${partWords[question.partKind ?? ""] ?? "part"} after all`;
	if (isMoney(from) && isMoney(to)) {
		const more = moneyText({ minor: to.minor - from.minor, currency: to.currency });
		const what = questionId === "about/budget" ? "for the board" : "in all";
		return `${more} more ${what}: ${moneyText(to)} instead of ${moneyText(from)}`;
	}
	if (Array.isArray(from) && Array.isArray(to)) return shorterList(question, from, to, context);
	const before = from === null ? "not sure" : question.says(from, context);
	const label = titleInSentence(question.label);
	return typeof to === "number"
		? `${label}: ${question.says(to, context)} instead of ${before}`
		: `${label}: "${question.says(to, context)}" instead of "${before}"`;
}

/** The same as something to do, for a line that can be chosen. */
export function actionWords({ questionId, from, to }: AnswerChange, context: QuestionContext): string {
	const question = questionById(questionId);
	if (!question) return questionId;
	const noun = partWords[question.partKind ?? ""] ?? "part";
	if (to === null) return question.partKind === "memory" ? "choose other memory" : `choose another ${noun}`;
	if (question.kind === "part") return `take a ${noun}`;
	if (isMoney(to))
		return questionId === "about/budget" ? `let the board cost ${moneyText(to)}` : `put in ${moneyText(to)} in all`;
	if (Array.isArray(from) && Array.isArray(to)) return `leave out ${listed(leftOut(question, from, to, context))}`;
	return `answer "${question.says(to, context)}" to ${titleInSentence(question.label)}`;
}

function isMoney(value: AnswerValue | null): value is Money {
	return typeof value === "object" && value !== null && "minor" in value;
}

function anotherPart({ from, partIds }: AnswerChange, question: Question, { build, market }: Judgement): string {
	const kind = question.partKind as BuildPartKind;
	const noun = partWords[kind] ?? kind;
	const have = build.facts[kind];
	const instead = have?.state === "have" ? ` instead of the ${have.part.name}` : "";
	const what = kind === "memory" ? "other memory" : `another ${noun}`;
	if (from !== null && have?.state === "have" && ownershipOf(build.facts, kind) === "bought")
		return `${what}${instead}`;
	const names = partIds.map((id) => `the ${findPart(market, kind, id)?.name ?? id}`);
	return names.length === 0
		? `${what}${instead}`
		: `${what}${instead}, such as ${names.length === 1 ? names[0] : `${names.slice(0, -1).join(", ")} or ${names.at(-1)}`}`;
}

const listNouns: Readonly<Record<string, string>> = {
	"fit/drives": "drive",
	"fit/cards": "other card",
	"fit/screens": "screen",
	"features/rescue-musts": "help",
};

function shorterList(
	question: Question,
	from: readonly string[],
	to: readonly string[],
	context: QuestionContext,
): string {
	const noun = listNouns[question.id];
	const without = `without ${listed(leftOut(question, from, to, context))}`;
	if (!noun) return `${titleInSentence(question.label)} ${without}`;
	return `${countWord(to.length)} ${noun}${to.length === 1 ? "" : "s"} instead of ${countWord(from.length)}, ${without}`;
}

/** What a list loses, as its lines are called. */
function leftOut(
	question: Question,
	from: readonly string[],
	to: readonly string[],
	context: QuestionContext,
): readonly string[] {
	const left = [...to];
	const gone = from.filter((item) => {
		const at = left.indexOf(item);
		if (at >= 0) left.splice(at, 1);
		return at < 0;
	});
	const names = gone.map((item) => {
		const said = question.says([item], context);
		return question.partKind ? `the ${said}` : `"${said}"`;
	});
	return withCounts(names);
}
