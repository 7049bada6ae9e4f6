import type { Answers, OwnPart } from "../../src/parts/answers-file.ts";
import type { Market } from "../../src/parts/market.ts";
import { viewWalk, type WalkView } from "../../src/screens/walk-view.ts";
import { htmlSheet } from "../../src/sheet/html-sheet.ts";
import { markdownSheet } from "../../src/sheet/markdown-sheet.ts";
import { sheetJson } from "../../src/sheet/sheet-json.ts";
import { shortlistCsv } from "../../src/sheet/shortlist-csv.ts";
import { textSheet } from "../../src/sheet/text-sheet.ts";
import { savedWalk } from "../../src/walk/saved-walk.ts";
import { startWalk, type WalkContext, type WalkState } from "../../src/walk/walk-state.ts";
import { asOf } from "./any-answers.ts";

/** A walk in a market, as far as its answers and own parts make it. */
export interface Walk {
	readonly context: WalkContext;
	readonly state: WalkState;
}

export const walkIn = (market: Market, answers: Answers, ownParts: readonly OwnPart[] = []): Walk => ({
	context: { market, asOf },
	state: startWalk(answers, ownParts),
});

export const viewOf = ({ context, state }: Walk): WalkView => viewWalk(context, state);

/** The five forms of a walk's sheet. */
export function formsOf(walk: Walk, view: WalkView = viewOf(walk)) {
	const sheet = view.sheet();
	const kept = savedWalk(walk.context, walk.state);
	return {
		text: textSheet(sheet),
		markdown: markdownSheet(sheet),
		html: htmlSheet(sheet, kept),
		json: sheetJson(sheet, kept),
		csv: shortlistCsv(sheet),
	};
}
