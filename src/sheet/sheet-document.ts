import { notInThePlan } from "./plan-words.ts";
import type { Sheet, SheetBoard, SheetPlan } from "./sheet.ts";

/** The sheet as a document: sections of paragraphs and items, from which text and Markdown are written alike. */
export type DocumentBlock =
	| { readonly kind: "section"; readonly text: string }
	| { readonly kind: "subsection"; readonly text: string }
	| { readonly kind: "paragraph"; readonly text: string }
	/** Lines to be kept as they are, in letters of one width. */
	| { readonly kind: "picture"; readonly lines: readonly string[] }
	/** `box`: an empty box to tick. `label` stands out in front. */
	| { readonly kind: "item"; readonly text: string; readonly label?: string; readonly box?: boolean };

const section = (text: string): DocumentBlock => ({ kind: "section", text });
const paragraph = (text: string): DocumentBlock => ({ kind: "paragraph", text });
const item = (text: string, label?: string): DocumentBlock => ({ kind: "item", text, ...(label ? { label } : {}) });
const box = (text: string, label?: string): DocumentBlock => ({
	kind: "item",
	text,
	box: true,
	...(label ? { label } : {}),
});

/** All that the sheet says, in the order it is read: at the shop first, the record last. Empty sections are left out. */
export function sheetDocument(sheet: Sheet): readonly DocumentBlock[] {
	const when = (blocks: readonly DocumentBlock[], head: DocumentBlock) => (blocks.length > 0 ? [head, ...blocks] : []);
	return [
		paragraph(
			`Made with boardwalk on ${sheet.asOf}, from: ${sheet.market}.${sheet.hasInventedParts ? " Boards marked as invented cannot be bought." : ""}`,
		),
		...when(
			sheet.inShort.map((text) => paragraph(text)),
			section("In short"),
		),
		...when(
			sheet.partsDisagree.flatMap(({ text, advice }) => [item(advice ? `${text} ${advice}` : text)]),
			section(
				sheet.partsDisagree.some(({ isStopped }) => isStopped)
					? "Your parts disagree, whatever the board"
					: "Your own parts: good to know",
			),
		),
		...when(
			sheet.nothingFits.map((text) => item(text)),
			section("Nothing fits: what to give up"),
		),
		...when(
			sheet.mustHave.map(({ label, text, why }) => box(`${text} ${why}`, label)),
			section("The board must have"),
		),
		...when(
			sheet.niceToHave.map(({ label, text }) => box(text, label)),
			section("Wished for; no board falls out for it"),
		),
		...when(
			sheet.beforeYouPay.map((text) => box(text)),
			section("Before you pay"),
		),
		...when([...ofAllBlocks(sheet), ...sheet.shortlist.flatMap(boardBlocks)], section("Shortlist")),
		...pictureBlocks("What plugs in where", sheet.plan, [notInThePlan]),
		...pictureBlocks("Power and heat", sheet.power, []),
		...when(
			sheet.open.map(({ what, how }) => item(how, what)),
			section("Not sure yet, and how to find out"),
		),
		...when(
			sheet.cautions.map(({ text, ground }) => item(`${text} (${ground})`)),
			section("With care"),
		),
		...when(
			sheet.answers.map(({ label, value, by }) => item(by && by !== "builder" ? `${value} (${by})` : value, label)),
			section("Your answers"),
		),
		...when(
			sheet.sources.map((text) => item(text)),
			section("Sources"),
		),
	];
}

function pictureBlocks(title: string, plan: SheetPlan | null, last: readonly string[]): readonly DocumentBlock[] {
	if (!plan || plan.sections.length === 0) return [];
	return [
		section(`${title}: ${plan.boardName}`),
		...(plan.picture.length > 0 ? [{ kind: "picture", lines: plan.picture } as const] : []),
		...plan.sections.flatMap(({ heading, lines }): readonly DocumentBlock[] => [
			{ kind: "subsection", text: heading },
			...lines.map((text) => item(text)),
		]),
		// Items, since a paragraph right behind a list would belong to its last item (CommonMark 0.31.2, section 5.2).
		...last.map((text) => item(text)),
	];
}

/** How sure the lead is, and what holds for all of them, before the boards one by one. */
function ofAllBlocks({ lead, ofAll }: Sheet): readonly DocumentBlock[] {
	const lines = (label: string, texts: readonly string[]) => (texts.length > 0 ? [item(texts.join(" "), label)] : []);
	return [
		...lines("How sure", lead),
		...lines("For all of them", ofAll.for),
		...lines("Against all of them", ofAll.against),
		...lines("Not known of all of them", ofAll.unknown),
	];
}

function boardBlocks(board: SheetBoard): readonly DocumentBlock[] {
	const lines = (label: string, texts: readonly string[]) => (texts.length > 0 ? [item(texts.join(" "), label)] : []);
	return [
		{ kind: "subsection", text: `${board.roleWords}: ${board.name}${board.invented ? " (invented)" : ""}` },
		item(board.verdictWords, "Fit"),
		...(board.facts ? [item(board.facts, "Which one")] : []),
		item(board.priceWords, "Price"),
		item(board.scoreWords, "Score"),
		...(board.pointsWords ? [item(`${board.pointsWords}.`, "Its points")] : []),
		...lines("Beside the first", board.behind),
		...(board.power === null ? [] : [item(board.power, "Power and heat")]),
		...lines("For it", board.for),
		...lines("Against it", board.against),
		...lines("Not known", board.unknown),
	];
}
