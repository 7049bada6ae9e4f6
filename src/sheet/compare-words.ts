import type { Listed } from "../choose/what-if.ts";
import { factAt } from "../parts/fact-list.ts";
import { type Money, moneyText } from "../parts/money.ts";
import { type PartKind, partKinds } from "../parts/part-kinds.ts";
import { titleInSentence } from "../parts/title-in-sentence.ts";
import { ruleById } from "../rules/all-rules.ts";
import type { Side } from "../walk/merged-walks.ts";
import { answerSaid, byWords, questionLabel } from "./answer-said.ts";
import type { AnswersOfBoth, ComparedSide, OnBoth, WalksCompared } from "./compared-walks.ts";
import { listed } from "./listed.ts";
import type { SideNames } from "./merge-words.ts";
import { listWords, type WordsUnder } from "./what-if-words.ts";

/** What two walks have alike and what not, one sentence a line. */
export function compareWords(
	result: WalksCompared,
	sides: { readonly one: ComparedSide; readonly other: ComparedSide },
	names: SideNames,
): readonly WordsUnder[] {
	const said = (pair: AnswersOfBoth, side: Side) =>
		answerSaid(pair.questionId, pair[side], sides[side].context) + byWords(pair[side]);
	const both = (pair: AnswersOfBoth) =>
		`${questionLabel(pair.questionId)}: ${said(pair, "one")} in ${names.one}, ${said(pair, "other")} in ${names.other}.`;
	const only = (side: Side) => (pair: AnswersOfBoth) => `${questionLabel(pair.questionId)}: ${said(pair, side)}.`;
	const sections: readonly WordsUnder[] = [
		{ heading: "In short", lines: shortWords(result, names) },
		{ heading: "Answers that differ", lines: result.differ.map(both) },
		{ heading: `Answered in ${names.one} alone`, lines: result.onlyOne.map(only("one")) },
		{ heading: `Answered in ${names.other} alone`, lines: result.onlyOther.map(only("other")) },
		{ heading: "Parts of your own", lines: partWords(result, names) },
		{ heading: `The shortlist of ${names.one}`, lines: listWords(result.shortlists.one, result.outcomes.one) },
		{ heading: `The shortlist of ${names.other}`, lines: listWords(result.shortlists.other, result.outcomes.other) },
		{ heading: "Boards on both", lines: result.onBoth.map((pair) => onBothWords(pair, result, names)) },
		{
			heading: "Boards on one alone",
			lines: (["one", "other"] as const).flatMap((side) => onOneWords(side, result, names)),
		},
	];
	return sections.filter(({ lines }) => lines.length > 0);
}

function shortWords(result: WalksCompared, names: SideNames): readonly string[] {
	const { differ, onlyOne, onlyOther, alike, shortlists } = result;
	const only = onlyOne.length + onlyOther.length;
	const [mine, theirs] = [shortlists.one[0], shortlists.other[0]];
	return [
		`${numberOf(alike, "answer")} the same, ${differ.length} ${differ.length === 1 ? "differs" : "differ"}, and ${only} ${only === 1 ? "stands" : "stand"} in one walk alone.`,
		leaderWords(mine, theirs, result, names),
	];
}

function leaderWords(
	mine: Listed | undefined,
	theirs: Listed | undefined,
	result: WalksCompared,
	names: SideNames,
): string {
	const leads = (one: Listed | undefined, side: Side) =>
		one ? `${nameOn(side, one.boardId, result)} leads` : "no board is left";
	if (!mine && !theirs) return "No board is left in either.";
	if (mine && theirs && mine.boardId === theirs.boardId)
		return mine.points === theirs.points
			? `${nameOn("one", mine.boardId, result)} leads both shortlists, with ${pointsWords(mine.points)} each time.`
			: `${nameOn("one", mine.boardId, result)} leads both shortlists: with ${pointsWords(mine.points)} in ${names.one}, and ${theirs.points} in ${names.other}.`;
	return `In ${names.one} ${leads(mine, "one")}; in ${names.other} ${leads(theirs, "other")}.`;
}

function partWords({ parts }: WalksCompared, names: SideNames): readonly string[] {
	const only = (side: Side) =>
		parts[side].map(({ kind, part }) => `${part.name} (${partKinds[kind].noun}) is in ${names[side]} alone.`);
	return [
		...parts.differ.map(({ one: { kind, part }, facts }) => {
			const titles = facts.map((key) => titleInSentence(factTitle(kind, key)));
			return `${part.name} (${partKinds[kind].noun}): the two walks know different things of it, namely ${listed(titles)}.`;
		}),
		...only("one"),
		...only("other"),
	];
}

/** The title of a fact, or of a group by its key. */
function factTitle(kind: PartKind, key: string): string {
	return factAt(kind, key)?.title ?? key.replace(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`);
}

function onBothWords({ boardId, one, other }: OnBoth, result: WalksCompared, names: SideNames): string {
	const name = nameOn("one", boardId, result);
	const place =
		one.place === other.place
			? `place ${one.place} on both`
			: `place ${one.place}, and ${other.place} in ${names.other}`;
	const gap = Math.abs(one.points - other.points);
	const more = one.points > other.points ? names.one : names.other;
	const points = gap === 0 ? `${pointsWords(one.points)} in both` : `${pointsWords(gap)} more in ${more}`;
	return `${name}: ${place}; ${points}; ${priceWords(one.price, other.price, names)}.`;
}

function priceWords(one: Money | null, other: Money | null, names: SideNames): string {
	if (!one && !other) return "price not known";
	if (!one || !other)
		return `${moneyText((one ?? other) as Money)} in ${one ? names.one : names.other}, else not known`;
	if (one.currency !== other.currency)
		return `${moneyText(one)} in ${names.one}, ${moneyText(other)} in ${names.other}`;
	if (one.minor === other.minor) return `${moneyText(one)} in both`;
	const gap = { ...one, minor: Math.abs(one.minor - other.minor) };
	return `${moneyText(gap)} dearer in ${one.minor > other.minor ? names.one : names.other}`;
}

/** Boards that one shortlist has alone, and what stands against them in the other walk. */
function onOneWords(side: Side, result: WalksCompared, names: SideNames): readonly string[] {
	const otherSide = side === "one" ? "other" : "one";
	return result.shortlists[side]
		.filter(({ boardId }) => !result.onBoth.some((pair) => pair.boardId === boardId))
		.map(({ boardId }) => {
			const there = judgedIn(otherSide, boardId, result);
			const rule = there?.stoppedBy ? (ruleById(there.stoppedBy)?.label ?? there.stoppedBy) : null;
			const why = !there ? "does not know it" : rule === null ? "puts others before it" : `takes it out by "${rule}"`;
			return `${nameOn(side, boardId, result)} is on the shortlist of ${names[side]}; ${names[otherSide]} ${why}.`;
		});
}

function judgedIn(side: Side, boardId: string, { outcomes }: WalksCompared) {
	return outcomes[side].judgement.boards.find(({ board }) => board.id === boardId);
}

function nameOn(side: Side, boardId: string, result: WalksCompared): string {
	return judgedIn(side, boardId, result)?.board.name ?? boardId;
}

function pointsWords(points: number): string {
	return `${points} ${points === 1 ? "point" : "points"}`;
}

/** "1 answer is", "3 answers are". */
function numberOf(count: number, noun: string): string {
	return count === 1 ? `1 ${noun} is` : `${count} ${noun}s are`;
}
