import sample from "../../data/scenarios/quiet-desk.json" with { type: "json" };
import type { FellOut } from "../choose/fell-out.ts";
import { type WhatIf, whatIf as whatIfOf } from "../choose/what-if.ts";
import type { Answer, AnswerValue } from "../parts/answers-file.ts";
import { type BuildFacts, emptyBuildFacts } from "../parts/build.ts";
import { partKinds } from "../parts/part-kinds.ts";
import { allQuestions, questionById } from "../questions/all-questions.ts";
import type { Question, QuestionContext, Reading } from "../questions/define-question.ts";
import { foldAnswers } from "../questions/fold-answers.ts";
import { readTyped } from "../questions/read-typed.ts";
import { whatIfWords } from "../sheet/what-if-words.ts";
import { marketOf } from "../walk/market-of.ts";
import { startWalk } from "../walk/walk-state.ts";
import { type Arguments, nearWords } from "./arguments.ts";
import { boardText, giveResult } from "./board-command.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { listedJson } from "./listed-json.ts";
import { loadAnswersOf, loadMarket } from "./load.ts";
import type { Streams } from "./streams.ts";

/**
 * `what-if QUESTION=ANSWER`: what one other answer would change, in words or with --json as what-if@1; with --to as .txt
 * or .json. No file of answers is changed.
 *
 * @throws CommandError with code 64 where there is no such question, or where it cannot have this answer
 */
export function whatIf(args: Arguments, streams: Streams): void {
	const [asked] = args.operands;
	if (asked === undefined || !asked.includes("="))
		throw new CommandError(
			exitCodes.usage,
			`Which answer? Such as: boardwalk what-if about/budget=150 --answers my.json. Questions: ${allQuestions.map(({ id }) => id).join(", ")}.`,
		);
	const at = asked.indexOf("=");
	const [name, text] = [asked.slice(0, at).trim(), asked.slice(at + 1).trim()];
	const question = questionById(name);
	if (!question) {
		const near = nearWords(
			name,
			allQuestions.map(({ id }) => id),
		);
		throw new CommandError(exitCodes.usage, `There is no question "${name}".${near}`);
	}
	const given = loadMarket(args, streams);
	const taken = args.answers === undefined ? null : loadAnswersOf(args, given, streams);
	const { ownParts, answers } = taken?.state ?? startWalk();
	const context: QuestionContext = {
		market: marketOf(given, ownParts),
		asOf: taken?.context.asOf ?? sample.asOf,
	};
	const answer = answerOf(question, text, context, foldAnswers(answers, context).facts);
	if (!taken) streams.err("Without --answers FILE nothing about your build is known, so little can change.\n");
	// A question keeps its newest id, whichever it was called by.
	const result = whatIfOf(context.market, answers, { questionId: question.id, answer }, context.asOf);
	giveResult(args, streams, (ending) => {
		if (ending === ".json") return `${JSON.stringify(whatIfJson(result, context), null, "\t")}\n`;
		if (ending === ".txt")
			return boardText({
				title: `What if: ${question.label}`,
				stopped: [],
				shows: "",
				picture: [],
				sections: whatIfWords(result, context),
				last: "",
			});
		throw new CommandError(exitCodes.usage, "The result is written as .txt or .json; the file's name must end so.");
	});
}

const unsure: ReadonlySet<string> = new Set(["not-sure", "not sure", "unsure"]);

/**
 * An answer as it is written behind "=": "not-sure", a value as answers files hold it (in JSON, or a word by itself), the
 * id of a part, several marks with commas, or what a person would type in the walk.
 *
 * @throws CommandError with code 64 where the question cannot have it, with what it takes
 */
export function answerOf(question: Question, text: string, context: QuestionContext, facts: BuildFacts): Answer {
	if (unsure.has(text.toLowerCase())) return { status: "not-sure" };
	const fits = (value: unknown): value is AnswerValue =>
		value !== undefined && value !== null && question.expected(value as AnswerValue, context) === null;
	const marks = text.split(",").flatMap((mark) => mark.trim() || []);
	const written = [
		jsonOf(text),
		text,
		...(question.partKind && question.kind === "part" ? [{ part: text }] : []),
		...(question.kind === "many" ? [text.toLowerCase() === "none" ? [] : marks] : []),
	].find(fits);
	if (written !== undefined) return { status: "answered", value: written };
	const typed = readTyped(question, text, context, facts);
	if ("value" in typed && fits(typed.value)) return { status: "answered", value: typed.value };
	throw new CommandError(
		exitCodes.usage,
		`"${question.label}" cannot be "${text}".${refusal(question, text, typed, context)}`,
	);
}

/** What was perhaps meant, and what the question takes. */
function refusal(question: Question, text: string, typed: Reading, context: QuestionContext): string {
	const { partKind, kind, options, expected } = question;
	const marks = kind === "many" ? text.split(",").map((mark) => mark.trim()) : [text];
	if (partKind) {
		const ids = context.market.parts[partKind].map(({ id }) => id);
		const strange = marks.find((mark) => !ids.includes(mark)) ?? text;
		const near = nearWords(strange.toLowerCase(), ids).replace(/^ See: .*/, "");
		const words = options(context, emptyBuildFacts).flatMap(({ value }) => (typeof value === "string" ? [value] : []));
		const what =
			kind === "many" ? `ids of a ${partKinds[partKind].noun} with commas` : `the id of a ${partKinds[partKind].noun}`;
		return `${near} It takes ${[what, ...words, kind === "many" ? "none" : "", "not-sure"].filter(Boolean).join(", or ")}.`;
	}
	if (question.read && "problem" in typed) return ` ${typed.problem} Or not-sure.`;
	// A value of no sort it knows, so that it says what it takes.
	const takes = expected(kind === "many" ? [""] : { part: "" }, context) ?? "another answer";
	return ` It takes ${takes}; or not-sure.`;
}

function jsonOf(text: string): unknown {
	try {
		return JSON.parse(text);
	} catch {
		return undefined;
	}
}

/**
 * A what-if as plain JSON, for other programs: `before` is with the answers as they are, `after` with the other one. Ids
 * and keys are stable; `words` are for people and may change. Points are whole, of 100; prices in the smallest unit.
 */
function whatIfJson(result: WhatIf, context: QuestionContext): object {
	const { questionId, before, after, counts, left, shortlists, leader, came, went, moved, isSame } = result;
	return {
		schema: "boardwalk/what-if@1",
		asOf: context.asOf,
		questionId,
		answers: { before: answerJson(before), after: answerJson(after) },
		counts,
		isSame,
		left,
		leader: { before: leader.before?.boardId ?? null, after: leader.after?.boardId ?? null },
		shortlists: { before: shortlists.before.map(listedJson), after: shortlists.after.map(listedJson) },
		came: came.map(({ stoppedBy, ...one }) => ({ ...listedJson(one), stoppedBy })),
		went: went.map(({ stoppedBy, ...one }) => ({ ...listedJson(one), stoppedBy })),
		moved: moved.map((one) => ({
			boardId: one.boardId,
			before: listedJson(one.before),
			after: listedJson(one.after),
		})),
		fallOut: result.fallOut.map(fellOutJson),
		comeBack: result.comeBack.map(fellOutJson),
		noLongerAsked: result.noLongerAsked,
		newlyAsked: result.newlyAsked,
		words: whatIfWords(result, context),
	};
}

function answerJson(answer: Answer | null): object | null {
	return answer && { status: answer.status, value: answer.value ?? null };
}

function fellOutJson({ ruleId, boards }: FellOut): object {
	return { ruleId, boardIds: boards.map(({ board }) => board.id) };
}
