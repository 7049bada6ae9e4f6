import { advise } from "../choose/advise.ts";
import { judge } from "../choose/judge.ts";
import { type Listed, listOf, type Outcome } from "../choose/what-if.ts";
import type { Answer, Answers, OwnPart } from "../parts/answers-file.ts";
import { sortedJson } from "../parts/fingerprint.ts";
import { allQuestions } from "../questions/all-questions.ts";
import type { QuestionContext } from "../questions/define-question.ts";
import { foldAnswers } from "../questions/fold-answers.ts";
import { inOrderAsked } from "./answer-said.ts";

/** One of two walks that are compared. */
export interface ComparedSide {
	readonly answers: Answers;
	readonly ownParts: readonly OwnPart[];
	/** With the walk's own parts. */
	readonly context: QuestionContext;
}

/** A board on both shortlists. */
export interface OnBoth {
	readonly boardId: string;
	readonly one: Listed;
	readonly other: Listed;
}

/** What two walks have alike, and what not. */
export interface WalksCompared {
	/** Questions to which both say something, and not the same. */
	readonly differ: readonly AnswersOfBoth[];
	/** Questions that one walk alone has dealt with. */
	readonly onlyOne: readonly AnswersOfBoth[];
	readonly onlyOther: readonly AnswersOfBoth[];
	/** Questions answered alike, by whomever. */
	readonly alike: number;
	/** Own parts of one walk alone, and those of which the two know different facts. */
	readonly parts: {
		readonly one: readonly OwnPart[];
		readonly other: readonly OwnPart[];
		/** `facts`: first keys of the facts that differ. */
		readonly differ: readonly { readonly one: OwnPart; readonly other: OwnPart; readonly facts: readonly string[] }[];
	};
	readonly outcomes: { readonly one: Outcome; readonly other: Outcome };
	readonly shortlists: { readonly one: readonly Listed[]; readonly other: readonly Listed[] };
	readonly onBoth: readonly OnBoth[];
}

export interface AnswersOfBoth {
	readonly questionId: string;
	readonly one: Answer | null;
	readonly other: Answer | null;
}

/** Compares two walks and what they lead to. Pure. */
export function compareWalks(one: ComparedSide, other: ComparedSide): WalksCompared {
	const ids = [...new Set([...Object.keys(one.answers), ...Object.keys(other.answers)])];
	const all = inOrderAsked(
		ids.map((questionId): AnswersOfBoth => ({ questionId, one: at(one, questionId), other: at(other, questionId) })),
		allQuestions,
	);
	const both = all.filter((pair) => pair.one && pair.other);
	const outcomes = { one: outcomeOf(one), other: outcomeOf(other) };
	const shortlists = { one: listOf(outcomes.one), other: listOf(outcomes.other) };
	return {
		differ: both.filter((pair) => !saysTheSame(pair)),
		onlyOne: all.filter((pair) => !pair.other),
		onlyOther: all.filter((pair) => !pair.one),
		alike: both.filter(saysTheSame).length,
		parts: {
			one: one.ownParts.filter((own) => !sameOf(own, other.ownParts)),
			other: other.ownParts.filter((own) => !sameOf(own, one.ownParts)),
			differ: one.ownParts.flatMap((own) => {
				const theirs = sameOf(own, other.ownParts);
				const facts = theirs ? factsThatDiffer(own.part, theirs.part) : [];
				return theirs && facts.length > 0 ? [{ one: own, other: theirs, facts }] : [];
			}),
		},
		outcomes,
		shortlists,
		onBoth: shortlists.one.flatMap((listed) => {
			const theirs = shortlists.other.find(({ boardId }) => boardId === listed.boardId);
			return theirs ? [{ boardId: listed.boardId, one: listed, other: theirs }] : [];
		}),
	};
}

function at({ answers }: ComparedSide, questionId: string): Answer | null {
	return Object.hasOwn(answers, questionId) ? (answers[questionId] ?? null) : null;
}

function outcomeOf({ answers, context }: ComparedSide): Outcome {
	const judgement = judge(context.market, foldAnswers(answers, context));
	return { judgement, advice: advise(judgement, answers) };
}

/** Passed over counts as not sure. */
function saysTheSame({ one, other }: AnswersOfBoth): boolean {
	const said = (answer: Answer | null) => sortedJson(answer?.status === "answered" ? [answer.value] : []);
	return said(one) === said(other);
}

function sameOf({ kind, part }: OwnPart, parts: readonly OwnPart[]): OwnPart | undefined {
	return parts.find((own) => own.kind === kind && own.part.id === part.id);
}

function factsThatDiffer(one: object, other: object): readonly string[] {
	const textAt = (part: object, key: string) => sortedJson((part as Record<string, unknown>)[key] ?? null);
	const keys = [...new Set([...Object.keys(one), ...Object.keys(other)])].filter((key) => key !== "evidence");
	return keys.filter((key) => textAt(one, key) !== textAt(other, key)).sort();
}
