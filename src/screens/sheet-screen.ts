import { plainScreen } from "./plain-screen.ts";
import { list, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** The sheet in short, and where to write it. */
export function sheetScreen(view: WalkView): Screen {
	const sheet = view.sheet();
	return plainScreen(view, {
		id: "sheet",
		place: "Before you pay",
		title: "The sheet for shop and bench",
		body: [
			...sheet.inShort.map(text),
			...(sheet.mustHave.length > 0
				? [text("The board must have:"), list(sheet.mustHave.map(({ label, text: words }) => `${label}: ${words}`))]
				: [text("So far nothing is known that the board must have; every answer adds to it.")]),
			text(
				`The sheet also holds the shortlist with reasons and ${sheet.beforeYouPay.length} checks before you pay. A second page is for the bench; the annex has all the rest.`,
			),
		],
		isMenu: true,
		choices: [
			{
				label: "Write it as board-sheet.html",
				detail: "A page to print, or to read on a phone",
				event: { type: "write-sheet", to: "board-sheet.html", orNext: true },
			},
			{ label: "Write it as board-sheet.md", event: { type: "write-sheet", to: "board-sheet.md", orNext: true } },
			{
				label: "Draw the board at true size: board.svg",
				detail: "On paper it goes into the case before you buy; for checking only",
				event: { type: "write-sheet", to: "board.svg", orNext: true },
			},
			{ label: "Write it as board-sheet.txt", event: { type: "write-sheet", to: "board-sheet.txt", orNext: true } },
			{ label: "Read it here", detail: "Nothing is written", event: { type: "sheet", page: "all" } },
			{ label: "Back to the shortlist", event: { type: "shortlist" } },
			{ label: "Leave", event: { type: "leave" } },
		],
		typing: { kind: "free", words: "or type another file name, ending in .html, .md, .txt, .json, .csv or .svg" },
	});
}
