import { onlyInventedBoards } from "../choose/only-invented-boards.ts";
import { mostAsked } from "../choose/when-to-stop.ts";
import type { Answer, AnswerValue } from "../parts/answers-file.ts";
import { questionById } from "../questions/all-questions.ts";
import { type Option, type Question, tierNames } from "../questions/define-question.ts";
import { askedQuestions } from "../questions/is-asked.ts";
import { readKinds } from "../reading/part-reading.ts";
import { boardsLeftBlocks } from "./boards-left.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Block, type Choice, heading, list, picture, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/**
 * One question: its options, not sure last, boards left beside it.
 *
 * @param soFar what stands there in place of the answer so far
 */
export function questionScreen(view: WalkView, id: string, soFar?: readonly Block[]): Screen {
	const question = questionById(id);
	if (!question) return plainScreen(view, { id: "question", title: "This question is no longer asked" });
	const answer = view.state.answers[question.id];
	const shown = question.shows?.(view.build().facts);
	return plainScreen(view, {
		id: `question:${question.id}`,
		place: placeWords(view, question),
		title: question.ask,
		body: [
			text(question.picture ? `${question.hint}. Press ? for a picture` : question.hint),
			...(shown ? [text(shown)] : []),
			...(soFar ?? []),
			// Where lines are marked, the marks say it.
			...(answer && !soFar && !(question.kind === "many" && answer.status === "answered" && isMarked(answer))
				? [text(`Your answer so far: ${answerWords(question, answer, view)}.`)]
				: []),
		],
		choices: choicesOf(question, answer, view),
		typing: typingWords(question),
		enter: answer ? { words: question.kind === "many" ? "go on" : "keep your answer", event: { type: "next" } } : null,
		side: boardsLeftBlocks(view),
		help: helpOf(question),
	});
}

/**
 * "Fit, question 2 of 5": counted within the tier, among the questions that apply. Nobody knows beforehand how many the
 * short walk asks, so there it is "Fit, question 7 of at most 18".
 */
function placeWords(view: WalkView, question: Question): string {
	const build = view.build();
	if (build.facts.walkLength === "short") {
		const dealtWith = Object.keys(view.state.answers);
		const at = dealtWith.includes(question.id) ? dealtWith.indexOf(question.id) : dealtWith.length;
		return at < mostAsked
			? `${tierNames[question.tier]}, question ${at + 1} of at most ${mostAsked}`
			: tierNames[question.tier];
	}
	const inTier = askedQuestions(build).filter(({ tier }) => tier === question.tier);
	const place = inTier.indexOf(question);
	// A question of the long walk, opened from the review of a short one, has no place in it.
	return place < 0
		? tierNames[question.tier]
		: `${tierNames[question.tier]}, question ${place + 1} of ${inTier.length}`;
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
		...(question.recipe ? [list(question.recipe)] : []),
		...(question.picture ? [picture(question.picture)] : []),
		heading("What your answer changes"),
		text(question.changes),
		heading("If you are not sure"),
		text(question.notSure),
	];
}

/** Letters that pick a line where numbers are answers; none of them is a command, and n is "not sure". */
const lineKeys = ["w", "x", "y", "z"];

function choicesOf(question: Question, answer: Answer | undefined, view: WalkView): readonly Choice[] {
	const { facts } = view.build();
	const options = question.options(view.context, facts).map((option, index): Choice => {
		if (question.kind === "many") return markedChoice(option, answer);
		const key = question.read ? lineKeys[index] : undefined;
		const chosen = answer?.status === "answered" && sameValue(answer.value, option.value);
		return {
			label: option.label,
			...(option.explanation ? { detail: option.explanation } : {}),
			...(option.group ? { group: option.group } : {}),
			// Where a number is the answer, lines are picked by letters.
			...(key ? { key } : {}),
			// "No card" stands apart from the names of cards, and stays in sight below a long list.
			...(question.partKind && typeof option.value === "string" ? { apart: true } : {}),
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
					detail: readKinds.some((kind) => kind === question.partKind)
						? "Paste its page, or type a few facts"
						: "A few facts from its page or label",
					apart: true,
					event: { type: "describe" },
				},
			]
		: [];
	const notSure: Choice = {
		label: "Not sure",
		isUnsure: true,
		key: "n",
		detail: question.notSure.replace(/\.$/, ""),
		apart: true,
		...(answer && answer.status !== "answered" ? { chosen: true } : {}),
		event: { type: "not-sure" },
	};
	const none: readonly Choice[] = question.none
		? [
				{
					label: question.none.label,
					detail: question.none.explanation,
					apart: true,
					...(answer?.status === "answered" && sameValue(answer.value, []) ? { chosen: true } : {}),
					event: { type: "answer", value: [] },
				},
			]
		: [];
	const done: readonly Choice[] =
		question.kind === "many" && answer && isMarked(answer)
			? [{ label: "That is all: go on", apart: true, event: { type: "next" } }]
			: [];
	return [...options, ...done, ...none, ...describe, notSure];
}

function isMarked({ value }: Answer): boolean {
	return Array.isArray(value) && value.length > 0;
}

/** A line that can be marked, with how often it is. */
function markedChoice({ value, label, explanation, most = 1, group }: Option, answer: Answer | undefined): Choice {
	const [one = ""] = value as readonly string[];
	const marked = answer?.status === "answered" && Array.isArray(answer.value) ? answer.value : [];
	return {
		label,
		detail: explanation,
		...(group ? { group } : {}),
		mark: { count: marked.filter((other) => other === one).length, most },
		event: { type: "mark", value: one, by: 1 },
	};
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
