import type { DocumentBlock } from "./document-block.ts";
import { item, labelled, page, paragraph, sectionOf } from "./document-blocks.ts";
import { fittingBlocks } from "./fit-page.ts";
import type { Sheet, SheetBoard, SheetNeed } from "./sheet.ts";

/** How fully the page tells; what it leaves out stands in the annex. */
interface Fullness {
	/** Each wish with its words, or all of them by name in one line. */
	readonly wishesInFull: boolean;
	/** So many boards are told with their reasons, the rest in a line each. */
	readonly boardsInFull: number;
	/** So many boards stand on the page at all. */
	readonly boards: number;
	/** The why of each demand, up to so many characters. */
	readonly whyUpTo: number;
	/** So many faults of the person's own parts with what to do, the rest counted; the annex has all. */
	readonly faults: number;
}

/** From the fullest to the shortest; the first that fits its page is taken. */
const fullnesses: readonly Fullness[] = [
	{ wishesInFull: true, boardsInFull: 5, boards: 5, whyUpTo: 120, faults: 9 },
	{ wishesInFull: true, boardsInFull: 3, boards: 5, whyUpTo: 120, faults: 5 },
	{ wishesInFull: false, boardsInFull: 3, boards: 5, whyUpTo: 120, faults: 5 },
	{ wishesInFull: false, boardsInFull: 3, boards: 5, whyUpTo: 80, faults: 5 },
	{ wishesInFull: false, boardsInFull: 2, boards: 4, whyUpTo: 80, faults: 4 },
	{ wishesInFull: false, boardsInFull: 1, boards: 4, whyUpTo: 60, faults: 4 },
	{ wishesInFull: false, boardsInFull: 1, boards: 3, whyUpTo: 40, faults: 3 },
	{ wishesInFull: false, boardsInFull: 0, boards: 3, whyUpTo: 0, faults: 3 },
	{ wishesInFull: false, boardsInFull: 0, boards: 2, whyUpTo: 0, faults: 2 },
];

/** So many ways out stand on the page; all of them in the annex. */
const mostWaysOut = 4;

/** What is taken to the shop: one sheet of paper. */
export function shopPage(sheet: Sheet): readonly DocumentBlock[] {
	return fittingBlocks(
		"shop",
		fullnesses.map((fullness) => () => pageOf(sheet, fullness)),
	);
}

function pageOf(sheet: Sheet, fullness: Fullness): readonly DocumentBlock[] {
	const { boards, wishesInFull, faults } = fullness;
	const stopping = sheet.partsDisagree.filter(({ isStopped }) => isStopped);
	return [
		page("shop", "At the shop"),
		...sheet.forWhom.map(({ label, text }) => item(text, { label })),
		...sectionOf("In short", sheet.inShort.map(paragraph)),
		...sectionOf("Your parts disagree, whatever the board", [
			...stopping.slice(0, faults).map(({ text, advice }) => item(advice ? `${text} ${firstSentence(advice)}` : text)),
			...(stopping.length > faults
				? [item(`${stopping.length - faults} more of these: see the annex before you buy anything.`)]
				: []),
		]),
		...sectionOf(
			"Nothing fits: what to give up",
			sheet.nothingFits.slice(0, mostWaysOut).map((text) => item(text)),
		),
		...sectionOf(
			"Before you pay",
			sheet.beforeYouPay.map((text) => item(text, { box: true })),
		),
		...sectionOf(
			"The board must have",
			sheet.mustHave.map((need) => needItem(need, fullness)),
		),
		...sectionOf(
			"Wished for; no board is taken out for it",
			wishesInFull || sheet.niceToHave.length === 0
				? sheet.niceToHave.map(({ label, text }) => item(text, { label, box: true }))
				: [paragraph(`${sheet.niceToHave.map(({ label }) => label).join("; ")}. The annex says which.`)],
		),
		...sectionOf(
			"Shortlist",
			sheet.shortlist.slice(0, boards).flatMap((board, index) => boardItems(board, index < fullness.boardsInFull)),
		),
	];
}

function needItem({ label, text, why }: SheetNeed, { whyUpTo }: Fullness): DocumentBlock {
	const short = firstSentence(why);
	return item(text, { label, box: true, ...(short.length <= whyUpTo ? { why: short } : {}) });
}

/** Enough to know a board by, what speaks for it and against it most, and what it makes one buy. */
function boardItems(board: SheetBoard, isFull: boolean): readonly DocumentBlock[] {
	const { score } = board;
	const range = score.low === score.high ? "" : ` (${score.low} to ${score.high})`;
	const name = `${board.name}${board.invented ? " (invented)" : ""}`;
	const short = `${name}, ${board.priceWords}, ${score.mid} points${range}. ${board.verdictWords}.`;
	const reasons = isFull
		? [
				...board.for.slice(0, 1),
				...(board.mind.length > 0 ? [] : board.against.slice(0, 1)).map((text) => `But: ${firstSentence(text)}`),
				...board.unknown.slice(0, 1).map((text) => `Not known: ${firstSentence(text)}`),
			]
		: [];
	// What keeps it from starting without a thought stands with every board, however short the page is.
	return labelled(board.roleWords, [short, ...board.mind.map((text) => `Mind: ${text}`), ...reasons, ...board.forced]);
}

/** Up to the first full stop that ends a sentence. */
export function firstSentence(text: string): string {
	return /^.*?[.!?](?=\s+\p{Lu}|$)/su.exec(text)?.[0] ?? text;
}
