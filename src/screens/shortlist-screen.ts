import type { SheetBoard, SheetOfAll } from "../sheet/sheet.ts";
import { leftWords, nothingLeft } from "./boards-left.ts";
import { exampleChoice } from "./example-choice.ts";
import { nothingFits } from "./nothing-fits-screen.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Block, type Choice, heading, pairs, type Screen, text } from "./screen.ts";
import { goOnWords } from "./short-walk-words.ts";
import type { WalkView } from "./walk-view.ts";

/** The shortlist by role, with reasons; or, when nothing fits, what to give up. */
export function shortlistScreen(view: WalkView): Screen {
	const judgement = view.judgement();
	const nothing = nothingLeft(judgement) ? nothingFits(view, view.advice().waysOut) : null;
	const { shortlist, partsDisagree, lead, ofAll } = view.sheet();
	const stopped = partsDisagree.filter(({ isStopped }) => isStopped);
	const goOn = goOnWords(view);
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
			...(lead.length > 0 ? [pairs([["How sure", lead.join(" ")]])] : []),
			...shortlist.flatMap(boardBlocks),
			...ofAllBlocks(ofAll),
			...(nothing?.blocks ?? []),
		],
		choices: [
			...(nothing?.choices ?? []),
			...(goOn !== null ? [{ label: goOn, event: { type: "go-on" as const } }] : []),
			...exampleChoice(view.state),
			{ label: "Make the sheet for the shop", event: { type: "sheet" } },
			...open,
			...(shortlist.length > 0
				? [
						{ label: "What could still change the shortlist", event: { type: "find-out" as const } },
						{ label: "What more money buys", event: { type: "price-line" as const } },
						{ label: "What if one answer were another?", event: { type: "what-if" as const } },
					]
				: []),
			{ label: "Paste a board's page", event: { type: "paste-part", what: "board" } },
			{ label: "Type in a board from its page", event: { type: "describe-board" } },
			{ label: "Boards left, and boards taken out", event: { type: "fell-out" } },
			{ label: "Change an answer", event: { type: "review" } },
			{ label: "Leave", event: { type: "leave" } },
		],
		enter:
			goOn !== null
				? { words: "go on with the questions", event: { type: "go-on" } }
				: { words: "make the sheet", event: { type: "sheet" } },
	});
}

/** What holds for every board of the list decides nothing between them, and stands once. */
function ofAllBlocks(ofAll: SheetOfAll): readonly Block[] {
	const rows = (
		[
			["For", ofAll.for],
			["Against", ofAll.against],
			["Not known", ofAll.unknown],
		] as const
	).filter(([, texts]) => texts.length > 0);
	return rows.length > 0
		? [heading("True of all of these"), pairs(rows.map(([label, texts]) => [label, texts.join(" ")]))]
		: [];
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
			...row("Points", board.pointsWords ? [`${board.pointsWords}.`] : []),
			...row("Beside", board.behind),
			...row("For it", board.for),
			...row("Against it", board.against),
			...row("Not known", board.unknown),
		]),
	];
}
