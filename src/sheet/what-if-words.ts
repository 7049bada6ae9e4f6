import type { FellOut } from "../choose/fell-out.ts";
import type { Listed, Outcome, WhatIf } from "../choose/what-if.ts";
import type { Answer } from "../parts/answers-file.ts";
import { moneyText } from "../parts/money.ts";
import { titleInSentence } from "../parts/title-in-sentence.ts";
import { questionById } from "../questions/all-questions.ts";
import type { QuestionContext } from "../questions/define-question.ts";
import { ruleById } from "../rules/all-rules.ts";
import { listed } from "./listed.ts";
import { roleWords, verdictWords } from "./reason-words.ts";

/** A heading and what stands under it, one sentence a line. */
export interface WordsUnder {
	readonly heading: string;
	readonly lines: readonly string[];
}

/** What one other answer would change: in short, both shortlists one after the other, and what differs between them. */
export function whatIfWords(result: WhatIf, context: QuestionContext): readonly WordsUnder[] {
	const { shortlists, outcomes } = result;
	const [now, other] = [listWords(shortlists.before, outcomes.before), listWords(shortlists.after, outcomes.after)];
	const isOneList = now.join("\n") === other.join("\n");
	const sections: readonly WordsUnder[] = [
		{ heading: "In short", lines: shortWords(result, context) },
		{
			heading: isOneList ? "Your shortlist, with either answer" : "Your shortlist now",
			lines: now,
		},
		...(isOneList ? [] : [{ heading: "With the other answer", lines: other }]),
		{ heading: "What would change on the shortlist", lines: changeWords(result) },
		{ heading: "What would be taken out, and why", lines: result.fallOut.map(fallOutWords) },
		{ heading: "What would come back", lines: result.comeBack.map(comeBackWords) },
		{ heading: "The questions", lines: questionWords(result) },
	];
	return sections.filter(({ lines }) => lines.length > 0);
}

/** What is compared: "Older drives: 5 instead of 3." */
export function changeOfAnswerWords(
	{ questionId, before, after }: Pick<WhatIf, "questionId" | "before" | "after">,
	context: QuestionContext,
): string {
	const label = questionById(questionId)?.label ?? questionId;
	const [was, would] = [before, after].map((answer) => answerSaid(questionId, answer, context));
	return was === would ? `${label}: ${would}, which is your answer now.` : `${label}: ${would} instead of ${was}.`;
}

/** An answer in words; null where there is none yet. */
function answerSaid(questionId: string, answer: Answer | null, context: QuestionContext): string {
	if (!answer) return '"not answered yet"';
	const { status, value } = answer;
	const question = questionById(questionId);
	if (status !== "answered" || value === undefined || question?.expected(value, context) !== null) return '"not sure"';
	const said = question.says(value, context);
	// What is said in several words is held together, so that "instead of" does not run into it.
	return /[ ,]/.test(said) ? `"${said}"` : said;
}

function shortWords(result: WhatIf, context: QuestionContext): readonly string[] {
	const first = changeOfAnswerWords(result, context);
	const counts = result.counts ? [] : ["With your other answers this is not asked, so it counts for nothing."];
	if (result.isSame)
		return [
			first,
			...counts,
			`Nothing changes: ${result.left.after === 0 ? "no board is left either way" : "the same boards are left, and your shortlist stays as it is"}.`,
		];
	return [first, ...counts, leftWords(result), leaderWords(result)];
}

function leftWords({ left: { before, after, all } }: WhatIf): string {
	return before === after
		? `As many boards would be left as now: ${after} of ${all}.`
		: `${after} of ${all} boards would be left instead of ${before}.`;
}

function leaderWords({ leader: { before, after }, outcomes }: WhatIf): string {
	if (!after) return "No board would be left, so none would lead.";
	const name = nameIn(outcomes.after, after.boardId);
	if (!before) return `${name} would lead your shortlist; now no board is left.`;
	if (after.boardId !== before.boardId)
		return `${name} would lead your shortlist in place of ${nameIn(outcomes.before, before.boardId)}.`;
	return after.points === before.points
		? `${name} would still lead, with ${pointsWords(after.points)} as now.`
		: `${name} would still lead, with ${pointsWords(after.points)} instead of ${before.points}.`;
}

/** A shortlist, a sentence a board. */
export function listWords(list: readonly Listed[], outcome: Outcome): readonly string[] {
	if (list.length === 0) return ["No board is left."];
	return list.map((one) => {
		const price = one.price ? moneyText(one.price) : "price not known";
		return `${one.place}. ${nameIn(outcome, one.boardId)}: ${roleSaid(one, outcome)}, ${pointsWords(one.points)}, ${price}.`;
	});
}

function roleSaid({ boardId, role }: Listed, outcome: Outcome): string {
	const verdict = judgedIn(outcome, boardId)?.verdict === "fits" ? "fits" : "cannot-tell";
	return titleInSentence(roleWords({ role, verdict }));
}

function changeWords({ came, went, moved, outcomes }: WhatIf): readonly string[] {
	const { before, after } = outcomes;
	return [
		...came.map((one) => {
			const why = one.stoppedBy === null ? "" : `; now it is taken out by "${ruleLabel(one.stoppedBy)}"`;
			return `New: ${nameIn(after, one.boardId)}, at place ${one.place}${why}.`;
		}),
		...went.map((one) => {
			const why =
				one.stoppedBy === null
					? "others would stand before it"
					: `it would be taken out by "${ruleLabel(one.stoppedBy)}"`;
			return `Gone: ${nameIn(before, one.boardId)}; ${why}.`;
		}),
		...moved.map(({ boardId, before: was, after: would }) => {
			const place = was.place === would.place ? "" : `place ${would.place} instead of ${was.place}`;
			const [roleWas, role] = [roleSaid(was, before), roleSaid(would, after)];
			const roles = role === roleWas ? "" : `"${role}" instead of "${roleWas}"`;
			return `${nameIn(after, boardId)}: ${[place, roles].filter((words) => words !== "").join(", ")}.`;
		}),
		...turnedWords(outcomes),
	].filter((line) => !line.endsWith(": ."));
}

/** Boards that are left with either answer, and of which it would be surer or less sure that they fit. */
function turnedWords({ before, after }: WhatIf["outcomes"]): readonly string[] {
	return after.judgement.boards.flatMap((judged) => {
		const was = judgedIn(before, judged.board.id)?.verdict;
		if (was === "cannot-tell" && judged.verdict === "fits") return [`${judged.board.name} would surely fit.`];
		if (was !== "fits" || judged.verdict !== "cannot-tell") return [];
		const said = verdictWords({ verdict: judged.verdict, dependsOn: judged.dependsOn });
		return [`${judged.board.name} would no longer surely fit. ${said}.`];
	});
}

function fallOutWords({ ruleId, boards }: FellOut): string {
	return `${ruleLabel(ruleId)}: ${few(boards.map(({ board }) => board.name))}.`;
}

function comeBackWords({ ruleId, boards }: FellOut): string {
	return `${few(boards.map(({ board }) => board.name))}: now taken out by "${ruleLabel(ruleId)}".`;
}

function questionWords({ noLongerAsked, newlyAsked }: WhatIf): readonly string[] {
	const labels = (ids: readonly string[]) => few(ids.map((id) => titleInSentence(questionById(id)?.label ?? id)));
	return [
		...(noLongerAsked.length > 0 ? [`No longer asked, so no longer counted: ${labels(noLongerAsked)}.`] : []),
		...(newlyAsked.length > 0 ? [`Asked as well, and still open: ${labels(newlyAsked)}.`] : []),
	];
}

/** At most four of a list, and how many more there are. */
function few(words: readonly string[]): string {
	return words.length > 5 ? `${words.slice(0, 4).join(", ")} and ${words.length - 4} more` : listed(words);
}

function ruleLabel(ruleId: string): string {
	return ruleById(ruleId)?.label ?? ruleId;
}

function pointsWords(points: number): string {
	return `${points} ${points === 1 ? "point" : "points"}`;
}

function judgedIn({ judgement }: Outcome, boardId: string) {
	return judgement.boards.find(({ board }) => board.id === boardId);
}

function nameIn(outcome: Outcome, boardId: string): string {
	return judgedIn(outcome, boardId)?.board.name ?? boardId;
}
