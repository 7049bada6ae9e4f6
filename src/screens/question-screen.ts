import { onlyInventedBoards } from "../choose/only-invented-boards.ts";
import type { Answer, AnswerValue } from "../parts/answers-file.ts";
import { allQuestions, questionById } from "../questions/all-questions.ts";
import { type Option, type Question, tierNames } from "../questions/define-question.ts";
import { boardsLeftBlocks } from "./boards-left.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Choice, heading, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** One question: its options, not sure last, boards left beside it. */
export function questionScreen(view: WalkView, id: string): Screen {
	const question = questionById(id);
	if (!question) return plainScreen(view, { id: "question", title: "This question is no longer asked" });
	const answer = view.state.answers[question.id];
	return plainScreen(view, {
		id: `question:${question.id}`,
		place: placeWords(view, question),
		title: question.ask,
		body: [
			text(question.hint),
			...(answer ? [text(`Your answer so far: ${answerWords(question, answer, view)}.`)] : []),
		],
		choices: choicesOf(question, answer, view),
		typing: typingWords(question),
		enter: answer ? { words: "keep your answer", event: { type: "next" } } : null,
		side: boardsLeftBlocks(view),
		help: helpOf(question),
	});
}

/** "Fit, question 2 of 5": counted within the tier, among the questions that apply. */
function placeWords(view: WalkView, question: Question): string {
	const { facts } = view.judgement().build;
	const inTier = allQuestions.filter(({ tier, applies }) => tier === question.tier && applies(facts));
	return `${tierNames[question.tier]}, question ${inTier.indexOf(question) + 1} of ${inTier.length}`;
}

function typingWords({ kind, read }: Question): Screen["typing"] {
	if (kind === "part") return { kind: "words", words: "or some letters of a name" };
	return read ? { kind: "value", words: "type your answer" } : null;
}

function helpOf(question: Question) {
	return [
		heading("Why we ask"),
		text(question.why),
		heading("Where to find it"),
		text(question.whereToFind),
		heading("What your answer changes"),
		text(question.changes),
		heading("If you are not sure"),
		text(question.notSure),
	];
}

function choicesOf(question: Question, answer: Answer | undefined, view: WalkView): readonly Choice[] {
	const options = question.options(view.context).map((option): Choice => {
		const chosen = answer?.status === "answered" && sameValue(answer.value, option.value);
		return {
			label: option.label,
			...(option.explanation ? { detail: option.explanation } : {}),
			...(question.isWish && !onlyInventedBoards(view.judgement())
				? { count: countWords(question, option, view) }
				: {}),
			...(chosen ? { chosen } : {}),
			event: { type: "answer", value: option.value },
		};
	});
	const describe: readonly Choice[] = question.partKind
		? [
				{
					label: "Another one: I will describe it",
					detail: "A few facts from its page or label",
					apart: true,
					event: { type: "describe" },
				},
			]
		: [];
	const notSure: Choice = {
		label: "Not sure",
		isUnsure: true,
		...(question.read ? { key: "n" } : {}),
		detail: question.notSure.replace(/\.$/, ""),
		apart: true,
		...(answer && answer.status !== "answered" ? { chosen: true } : {}),
		event: { type: "not-sure" },
	};
	return [...options, ...describe, notSure];
}

/** How many boards a wish would leave, before it is chosen. */
function countWords(question: Question, option: Option, view: WalkView): string {
	const { counts } = view.judgementWith({
		...view.state.answers,
		[question.id]: { status: "answered", value: option.value },
	});
	const left = counts.all - counts.doesNotFit;
	return `leaves ${left} of ${counts.all} boards`;
}

/** An answer in words. */
export function answerWords(question: Question, answer: Answer, view: WalkView): string {
	if (answer.status !== "answered" || answer.value === undefined) return "not sure";
	return question.expected(answer.value, view.context) === null
		? question.says(answer.value, view.context)
		: "no longer possible here, so not sure";
}

function sameValue(one: AnswerValue | undefined, other: AnswerValue): boolean {
	if (typeof one === "object" && typeof other === "object" && "part" in one && "part" in other)
		return one.part === other.part;
	return JSON.stringify(one) === JSON.stringify(other);
}
