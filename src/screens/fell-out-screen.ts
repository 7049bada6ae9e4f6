import type { BoardJudgement } from "../choose/judge.ts";
import { ruleById } from "../rules/all-rules.ts";
import { verdictWords } from "../sheet/reason-words.ts";
import { fellOutLines, leftWords } from "./boards-left.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Choice, heading, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** Every board: those left first, then those that fell out with why; found by typing, opened one by one. */
export function fellOutScreen(view: WalkView): Screen {
	const judgement = view.judgement();
	const left = judgement.boards.filter(({ verdict }) => verdict !== "does-not-fit");
	const fallen = judgement.boards.filter(({ verdict }) => verdict === "does-not-fit");
	return plainScreen(view, {
		id: "fell-out",
		title: "Boards left, and boards taken out",
		body: [
			text(leftWords(judgement)),
			...(fallen.length > 0 ? [heading("What was taken out, and why"), ...fellOutLines(judgement)] : []),
		],
		choices: [...left, ...fallen].map(choiceOf),
		typing: { kind: "words", words: "or some letters of a name" },
		enter: { words: "go back", event: { type: "back" } },
	});
}

function choiceOf({ board, verdict, dependsOn, failedRuleIds }: BoardJudgement): Choice {
	const labels = failedRuleIds.map((id) => ruleById(id)?.label ?? id);
	// The board's own page tells all of them.
	const rules =
		labels.length > 4 ? `${labels.slice(0, 3).join(", ")} and ${labels.length - 3} more` : labels.join(", ");
	return {
		label: board.name,
		detail: verdict === "does-not-fit" ? `Taken out by: ${rules}` : verdictWords({ verdict, dependsOn }),
		event: { type: "board", boardId: board.id },
	};
}
