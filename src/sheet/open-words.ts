import type { Advice, Reason } from "../choose/advise.ts";
import { type FindOut, findOut } from "../choose/find-out.ts";
import type { Judgement } from "../choose/judge.ts";
import { worthsWhenAsked } from "../choose/next-question.ts";
import type { Answers } from "../parts/answers-file.ts";
import { allQuestions } from "../questions/all-questions.ts";
import type { QuestionContext } from "../questions/define-question.ts";
import { findOutWords } from "./find-out-words.ts";
import { howToFindOut } from "./how-to-find-out.ts";
import { boardNameOf } from "./judged-board.ts";
import { saidOf } from "./said-words.ts";
import type { SheetOpen } from "./sheet.ts";

/** Everything that is still open and bears on the shortlist, worked out from the answers that count. */
export function openThings(
	answers: Answers,
	judgement: Judgement,
	advice: Advice,
	context: QuestionContext,
): readonly FindOut[] {
	// An answer that the question can no longer have is as open as none.
	const counted = Object.fromEntries(
		Object.entries(answers).filter(([id]) => {
			const question = allQuestions.find((one) => one.id === id);
			return question && saidOf(question, answers, context) !== null;
		}),
	);
	return findOut(judgement, advice, counted, worthsWhenAsked(answers, context));
}

/** The same in words, and how to find it out: what could change most stands first. */
export function openOf(
	open: readonly FindOut[],
	judgement: Judgement,
	{ shortlist }: Pick<Advice, "shortlist">,
): readonly SheetOpen[] {
	const boardName = boardNameOf(judgement);
	const inOrder = open.flatMap((one): SheetOpen[] => {
		const words = findOutWords(one, boardName);
		return words ? [{ what: words.what, how: words.how, changes: words.changes }] : [];
	});
	// Rules that can take no board out lack facts too; these come last.
	const rest = shortlist.flatMap(({ boardId, unknown }) =>
		[...new Set(unknown.flatMap(missingOf))].flatMap((path): SheetOpen[] => {
			const found = howToFindOut(path);
			return found
				? [{ what: `${found.ofBoard ? `${boardName(boardId)}: ` : ""}${found.what}`, how: found.how, changes: "" }]
				: [];
		}),
	);
	const seen = new Set<string>();
	return [...inOrder, ...rest].filter(({ what }) => !seen.has(what) && seen.add(what));
}

function missingOf(reason: Reason): readonly string[] {
	if (reason.kind === "finding") return reason.finding.missing;
	return reason.kind === "criterion" ? reason.part.measure.missing : [];
}
