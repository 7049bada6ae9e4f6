import { askedQuestions } from "../questions/is-asked.ts";
import { wayOutWords } from "../sheet/make-sheet.ts";
import type { SheetBoard } from "../sheet/sheet.ts";
import { leftWords, nothingLeft } from "./boards-left.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Block, type Choice, heading, list, pairs, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** The shortlist by role, with reasons; or, when nothing fits, what to give up. */
export function shortlistScreen(view: WalkView): Screen {
	const judgement = view.judgement();
	const { waysOut } = view.advice();
	const { shortlist, partsDisagree } = view.sheet();
	const stopped = partsDisagree.filter(({ isStopped }) => isStopped);
	const unasked = askedQuestions(judgement.build).filter(({ id }) => !view.state.answers[id]).length;
	const open: readonly Choice[] = shortlist.map(({ boardId, name }) => ({
		label: `Look at ${name}`,
		event: { type: "board", boardId },
	}));
	return plainScreen(view, {
		id: "shortlist",
		title:
			shortlist.length > 0
				? "Your shortlist"
				: nothingLeft(judgement)
					? "Nothing fits all your answers"
					: "What to look for",
		body: [
			text(leftWords(judgement)),
			...(stopped.length > 0
				? [text(`Your parts disagree: ${stopped.map(({ text: words }) => words).join(" ")}`)]
				: []),
			...shortlist.flatMap(boardBlocks),
			...(nothingLeft(judgement)
				? [
						text("That is no dead end. Each line below would make a board fit:"),
						list(waysOut.map(({ giveUp, boardIds }) => wayOutWords(giveUp, boardIds, judgement))),
					]
				: []),
		],
		choices: [
			...(unasked > 0
				? [{ label: `Go on with the questions: ${unasked} left`, event: { type: "go-on" as const } }]
				: []),
			{ label: "Make the sheet for the shop", event: { type: "sheet" } },
			...open,
			{ label: "Paste a board's page", event: { type: "paste-part", what: "board" } },
			{ label: "Type in a board from its page", event: { type: "describe-board" } },
			{ label: "See each board, and why some fell out", event: { type: "fell-out" } },
			{ label: "Change an answer", event: { type: "review" } },
			{ label: "Leave", event: { type: "leave" } },
		],
		enter:
			unasked > 0
				? { words: "go on with the questions", event: { type: "go-on" } }
				: { words: "make the sheet", event: { type: "sheet" } },
	});
}

function boardBlocks(board: SheetBoard): readonly Block[] {
	const row = (label: string, texts: readonly string[]): readonly (readonly [string, string])[] =>
		texts.length > 0 ? [[label, texts.join(" ")]] : [];
	return [
		heading(`${board.roleWords}: ${board.name}${board.invented ? " (invented)" : ""}`),
		pairs([
			["Fit", board.verdictWords],
			["Price", board.priceWords],
			["Score", board.scoreWords],
			...row("For it", board.for),
			...row("Against it", board.against),
			...row("Not known", board.unknown),
		]),
	];
}
