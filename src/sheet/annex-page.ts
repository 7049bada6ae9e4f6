import type { DocumentBlock } from "./document-block.ts";
import { item, labelled, page, paragraph, sectionOf } from "./document-blocks.ts";
import { notInThePlan } from "./plan-words.ts";
import type { Sheet, SheetBoard, SheetOpen, SheetPlan } from "./sheet.ts";

/** What is looked up: everything in full, and the record. */
export function annexPage(sheet: Sheet): readonly DocumentBlock[] {
	return [
		page("annex", "Annex"),
		...sectionOf("Not sure yet, and how to find out", openBlocks(sheet.open)),
		...sectionOf(
			"To ask the shop",
			sheet.askTheShop.flatMap(({ boardName, english, german }, index): readonly DocumentBlock[] => [
				{ kind: "subsection", text: boardName },
				...linesOf(english),
				// One in both languages shows what can be had; all of them would fill pages.
				...(index === 0 ? linesOf(german) : []),
			]),
		),
		...sectionOf(
			"Nothing fits: all ways out",
			sheet.nothingFits.map((text) => item(text)),
		),
		...sectionOf(
			"What to plan around",
			sheet.planAround.map(({ boardNames, text }) => item(text, { label: boardNames.join(", "), box: true })),
		),
		...sectionOf("Shortlist, board by board", [...ofAllBlocks(sheet), ...sheet.shortlist.flatMap(boardBlocks)]),
		...sectionOf(
			"Every demand and wish, and why",
			[...sheet.mustHave, ...sheet.niceToHave].map(({ label, text, why }) => item(text, { label, why })),
		),
		...planBlocks("What plugs in where, in words", sheet.plan, false, [notInThePlan]),
		...planBlocks("Power and heat", sheet.power, true, []),
		...sectionOf(
			"Your own parts: good to know",
			sheet.partsDisagree.map(({ text, advice }) => item(advice ? `${text} ${advice}` : text)),
		),
		...sectionOf("What others said", [
			...toldItems(sheet, true),
			...sheet.suggestions.map(({ label, text, by, state }) =>
				item(`Suggested by ${by}: ${text}. ${stateWords[state]}`, { label }),
			),
		]),
		...sectionOf("Told of boards not on the list", toldItems(sheet, false)),
		...sectionOf("Your answers", answersBlocks(sheet)),
		...sectionOf("Sources", [
			...sheet.sources.map((text) => item(text)),
			item(madeWords(sheet), { label: "This sheet" }),
		]),
	];
}

function linesOf(message: string): readonly DocumentBlock[] {
	return message.split("\n").filter(Boolean).map(paragraph);
}

const stateWords: Readonly<Record<Sheet["suggestions"][number]["state"], string>> = {
	open: "Nobody has decided yet.",
	taken: "Taken.",
	left: "Left as it was.",
};

/** From what and when it was made. */
export function madeWords({ asOf, market, hasInventedParts }: Sheet): string {
	return `Made with boardwalk on ${asOf}, from: ${market}.${hasInventedParts ? " Boards marked as invented cannot be bought." : ""}`;
}

function toldItems({ told }: Sheet, ofListed: boolean): readonly DocumentBlock[] {
	return told
		.filter(({ isListed }) => isListed === ofListed)
		.map(({ boardName, text }) => item(text, { label: boardName }));
}

/** So few open things without effect are told one by one. */
const fewOpen = 3;

/**
 * What could change something one by one; the rest by name in one item. Where nothing is known of what could change
 * anything, as without any board, each is told with how to find it out.
 */
function openBlocks(open: readonly SheetOpen[]): readonly DocumentBlock[] {
	const changing = open.filter(({ changes }) => changes !== "");
	const others = open.filter(({ changes }) => changes === "");
	const isFolded = changing.length > 0 && others.length > fewOpen;
	return [
		...(isFolded ? changing : open).map(({ what, how, changes }) =>
			item([changes, how].filter(Boolean).join(" "), { label: what }),
		),
		...(isFolded
			? [item(`${others.map(({ what }) => what).join("; ")}.`, { label: "Open too, with less weight" })]
			: []),
	];
}

function answersBlocks({ answers }: Sheet): readonly DocumentBlock[] {
	if (answers.length === 0) return [];
	return [
		{
			kind: "table",
			heads: ["Question", "Answer", "Said by"],
			rows: answers.map(({ label, value, by }) => [label, value, by]),
		},
	];
}

function planBlocks(
	title: string,
	plan: SheetPlan | null,
	isDrawn: boolean,
	last: readonly string[],
): readonly DocumentBlock[] {
	if (!plan || plan.sections.length === 0) return [];
	return sectionOf(`${title}: ${plan.boardName}`, [
		...(isDrawn && plan.picture.length > 0
			? [{ kind: "picture", lines: plan.picture, ...(plan.svg ? { svg: plan.svg } : {}) } as const]
			: []),
		...plan.sections.flatMap(({ heading, lines }): readonly DocumentBlock[] => [
			{ kind: "subsection", text: heading },
			...lines.map((text) => item(text)),
		]),
		// Items, since a paragraph right behind a list would belong to its last item (CommonMark 0.31.2, section 5.2).
		...last.map((text) => item(text)),
	]);
}

/** How sure the lead is, and what holds for all of them, before the boards one by one. */
function ofAllBlocks({ lead, ofAll }: Sheet): readonly DocumentBlock[] {
	return [
		...labelled("How sure", lead),
		...labelled("For all of them", ofAll.for),
		...labelled("Against all of them", ofAll.against),
		...labelled("Not known of all of them", ofAll.unknown),
	];
}

function boardBlocks(board: SheetBoard): readonly DocumentBlock[] {
	return [
		{ kind: "subsection", text: `${board.roleWords}: ${board.name}${board.invented ? " (invented)" : ""}` },
		item(board.verdictWords, { label: "Fit" }),
		...(board.facts ? [item(board.facts, { label: "Which one" })] : []),
		item(board.priceWords, { label: "Price" }),
		...labelled("To buy besides", board.forced),
		item(board.scoreWords, { label: "Score" }),
		...(board.pointsWords ? [item(`${board.pointsWords}.`, { label: "Its points" })] : []),
		...labelled("Beside the first", board.behind),
		...(board.power === null ? [] : [item(board.power, { label: "Power and heat" })]),
		...labelled("For it", board.for),
		...labelled("Against it", board.against),
		...labelled("Not known", board.unknown),
	];
}
