import type { Answer, Answers } from "../parts/answers-file.ts";
import type { Market } from "../parts/market.ts";
import type { Money } from "../parts/money.ts";
import { allQuestions, questionById } from "../questions/all-questions.ts";
import { foldAnswers } from "../questions/fold-answers.ts";
import { isAsked, makesSense } from "../questions/is-asked.ts";
import { type Advice, advise, type Role } from "./advise.ts";
import { type FellOut, fellOutBetween } from "./fell-out.ts";
import { type Judgement, judge } from "./judge.ts";

/** One answer in place of the one given. */
export interface AnswerChange {
	readonly questionId: string;
	readonly answer: Answer;
}

/** All that some answers lead to. */
export interface Outcome {
	readonly judgement: Judgement;
	readonly advice: Advice;
}

/** A board on a shortlist. */
export interface Listed {
	readonly boardId: string;
	/** From 1 on. */
	readonly place: number;
	readonly role: Role;
	/** Whole points of 100. */
	readonly points: number;
	readonly price: Money | null;
}

/** A board that stands on one of two shortlists alone. */
export interface OnOneList extends Listed {
	/** The rule that takes it out with the other answer; null where other boards stand before it there. */
	readonly stoppedBy: string | null;
}

/** What one other answer would change. "Before" is with the answers as they are, "after" with the other one. */
export interface WhatIf {
	readonly questionId: string;
	/** Null where the question is not answered yet. */
	readonly before: Answer | null;
	readonly after: Answer;
	/** Whether the answers count at all: the other answers may leave the question without sense. */
	readonly counts: boolean;
	readonly left: { readonly before: number; readonly after: number; readonly all: number };
	readonly shortlists: { readonly before: readonly Listed[]; readonly after: readonly Listed[] };
	/** The first of each shortlist. */
	readonly leader: { readonly before: Listed | null; readonly after: Listed | null };
	readonly came: readonly OnOneList[];
	readonly went: readonly OnOneList[];
	/** Boards on both, at another place or in another role. */
	readonly moved: readonly { readonly boardId: string; readonly before: Listed; readonly after: Listed }[];
	/** Boards that are left before and not after, by the rule that is told first. */
	readonly fallOut: readonly FellOut[];
	/** Boards that are left after and not before, by the rule that took them out. */
	readonly comeBack: readonly FellOut[];
	/** Questions that were answered and make no more sense; their answers count no more. */
	readonly noLongerAsked: readonly string[];
	/** Questions that are asked only after the change, and have no answer yet. */
	readonly newlyAsked: readonly string[];
	/** The same boards are left, each as sure as before, with one shortlist: places, roles and whole points. */
	readonly isSame: boolean;
	readonly outcomes: { readonly before: Outcome; readonly after: Outcome };
}

/**
 * What changes if one answer were another one. Pure; the answer must be one that the question can have, another counts
 * as not sure.
 *
 * @param market with the person's own parts
 * @param asOf ISO date
 */
export function whatIf(market: Market, answers: Answers, change: AnswerChange, asOf: string): WhatIf {
	const { questionId, answer } = change;
	const outcomeOf = (given: Answers): Outcome => {
		const judgement = judge(market, foldAnswers(given, { market, asOf }));
		return { judgement, advice: advise(judgement, given) };
	};
	const changed = { ...answers, [questionId]: answer };
	const [before, after] = [outcomeOf(answers), outcomeOf(changed)];
	const lists = { before: listOf(before), after: listOf(after) };
	const [builds, question] = [
		{ before: before.judgement.build, after: after.judgement.build },
		questionById(questionId),
	];
	return {
		questionId,
		before: answers[questionId] ?? null,
		after: answer,
		counts: question !== undefined && makesSense(question, builds.after),
		left: {
			before: leftOf(before).length,
			after: leftOf(after).length,
			all: after.judgement.counts.all,
		},
		shortlists: lists,
		leader: { before: lists.before[0] ?? null, after: lists.after[0] ?? null },
		came: onlyOn(lists.after, lists.before, before),
		went: onlyOn(lists.before, lists.after, after),
		moved: lists.after.flatMap((now) => {
			const then = lists.before.find(({ boardId }) => boardId === now.boardId);
			const isMoved = then && (then.place !== now.place || then.role !== now.role);
			return isMoved ? [{ boardId: now.boardId, before: then, after: now }] : [];
		}),
		fallOut: fellOutBetween(before.judgement, after.judgement),
		comeBack: fellOutBetween(after.judgement, before.judgement),
		noLongerAsked: allQuestions
			.filter((one) => answers[one.id]?.status === "answered" && one.id !== questionId)
			.filter((one) => makesSense(one, builds.before) && !makesSense(one, builds.after))
			.map(({ id }) => id),
		newlyAsked: allQuestions
			.filter((one) => !changed[one.id] && isAsked(one, builds.after) && !isAsked(one, builds.before))
			.map(({ id }) => id),
		isSame: JSON.stringify(whatIsTold(before)) === JSON.stringify(whatIsTold(after)),
		outcomes: { before, after },
	};
}

/** The shortlist that some answers lead to. */
export function listOf({ advice }: Outcome): readonly Listed[] {
	return advice.shortlist.map(({ boardId, role, score, price }, index) => ({
		boardId,
		place: index + 1,
		role,
		points: Math.round(score.mid),
		price,
	}));
}

function leftOf({ judgement }: Outcome) {
	return judgement.boards.filter(({ verdict }) => verdict !== "does-not-fit");
}

/** Boards of one list that another has not, and what takes them out there. */
function onlyOn(list: readonly Listed[], other: readonly Listed[], { judgement }: Outcome): readonly OnOneList[] {
	return list
		.filter(({ boardId }) => !other.some((listed) => listed.boardId === boardId))
		.map((listed) => {
			const judged = judgement.boards.find(({ board }) => board.id === listed.boardId);
			return { ...listed, stoppedBy: judged?.stoppedBy ?? null };
		});
}

function whatIsTold(outcome: Outcome): unknown {
	return [leftOf(outcome).map(({ board, verdict }) => [board.id, verdict]), listOf(outcome)];
}
