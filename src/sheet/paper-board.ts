import type { BuildFacts } from "../parts/build.ts";
import { factAt } from "../parts/fact-list.ts";
import { type SourceId, sourceById } from "../reference/sources.ts";
import { listed } from "./listed.ts";
import { cardsPart } from "./paper-board-cards.ts";
import { loosePiece, processorLinePart } from "./paper-board-cooler.ts";
import { holesPart } from "./paper-board-holes.ts";
import { edgesOf, outlinePart } from "./paper-board-outline.ts";
import type { BoardOfPaper, PaperHeading, PaperNote, PaperPart } from "./paper-board-part.ts";
import { openingPart, rowsPart } from "./paper-board-rows.ts";
import type { PaperShape } from "./paper-board-shapes.ts";
import { shortened } from "./plan-picture.ts";
import { groundWords, sourceWords } from "./source-words.ts";

/** A board at true size, to be laid into the case on paper: lengths in mm on the axes of its holes. */
export interface PaperBoard {
	/** "Chandelier (invented)". */
	readonly boardName: string;
	/** What is drawn on the board and over it. */
	readonly shapes: readonly PaperShape[];
	/** A piece of its own beside the board, round the middle of the processor; null where nothing is known of it. */
	readonly loose: readonly PaperShape[] | null;
	readonly sections: readonly PaperSection[];
}

interface PaperSection {
	readonly heading: string;
	readonly lines: readonly string[];
}

/** A board that cannot be drawn, and why in words. */
export interface NoPaperBoard {
	readonly unknown: string;
}

const nameColumns = 60;

/** What to do with the paper, step by step. */
const howTo: readonly string[] = [
	"Print at 100 %, with no fit to page. Measure the bar first: it must be 100 mm long.",
	"Cut the paper along the outline. A part of a card that reaches past the front edge may stay on.",
	"Lay the empty case flat, its open side up, its back away from you. No cable may be connected.",
	"Lay the paper in, printed side up, its back edge at the back of the case.",
	"Look whether the holes lie over the standoffs, and the rows at the openings for cards.",
	"Look what the front edge and the cards come near to: fans, drives, cables.",
];

const always: readonly string[] = [
	"This paper is for checking only. It is no drilling guide: never drill, file or bend anything by it.",
	"Pull the supply's plug from the wall before you reach into the case. Edges of sheet metal are sharp.",
	"Standoffs belong only where the board has holes. One that touches the board elsewhere can short it.",
	"Paper stretches, and printers err by a millimetre or two. Where it is as close as that, ask the maker.",
];

const lines: readonly string[] = [
	"Solid lines: known of this board and these parts. Short dashes: assumed from a standard.",
	"Long dashes: past the front edge, or above the board. Thin lines: only to find one's way.",
];

const headings: readonly (readonly [PaperHeading, string, readonly string[]])[] = [
	["mind", "Mind", always],
	["drawn", "What is drawn", lines],
	["assumed", "From standards and usual practice, not from the board's page", []],
	["unknown", "Not known", []],
];

/**
 * Draws a board at true size with what this build puts on it. What is not known is told and never drawn; what follows
 * from a standard is marked so.
 *
 * @param stopped labels of the rules that stop the board; none where it may fit
 */
export function paperBoard(
	of: BoardOfPaper,
	build: BuildFacts,
	stopped: readonly string[] = [],
): PaperBoard | NoPaperBoard {
	const edges = edgesOf(of);
	const { name, invented } = of.board;
	const boardName = `${shortened(name, nameColumns)}${invented ? " (invented)" : ""}`;
	if ("missing" in edges) return { unknown: unknownSize(of, boardName, edges.missing) };
	const standoffs = build.case.state === "have" ? build.case.part.standoffs : undefined;
	const loose = loosePiece(of, build);
	const parts: readonly PaperPart[] = [
		outlinePart(of, edges),
		openingPart(edges),
		rowsPart(of.board, edges),
		cardsPart(of, edges, build),
		processorLinePart(of, edges, build),
		holesPart(of, edges, standoffs),
	];
	const all = loose ? [...parts, loose] : parts;
	return {
		boardName,
		shapes: parts.flatMap(({ shapes }) => shapes),
		loose: loose?.shapes ?? null,
		sections: [
			...(stopped.length > 0
				? [
						{
							heading: "This board does not fit",
							lines: [`It is stopped by: ${listed(stopped)}. The paper shows only its size.`],
						},
					]
				: []),
			{ heading: "How to use it", lines: howTo },
			...headings.flatMap(([under, heading, before]) => {
				const told = [...before, ...textsUnder(under, all)];
				return told.length > 0 ? [{ heading, lines: told }] : [];
			}),
			{ heading: "Grounds", lines: grounds(all) },
		],
	};
}

function textsUnder(under: PaperHeading, parts: readonly PaperPart[]): readonly string[] {
	const notes = parts.flatMap((part) => part.notes).filter((one: PaperNote) => one.under === under);
	return notes.map(({ text }) => text);
}

function grounds(parts: readonly PaperPart[]): readonly string[] {
	const ids: readonly SourceId[] = [...new Set(parts.flatMap(({ sources }) => sources))];
	return ids.map((id) => {
		const source = sourceById(id);
		return source.kind === "from memory" || source.kind === "common practice"
			? groundWords(source)
			: sourceWords(source);
	});
}

function unknownSize({ board }: BoardOfPaper, boardName: string, missing: readonly ("widthMm" | "depthMm")[]): string {
	const what = missing.map((path) => (path === "widthMm" ? "how wide" : "how deep"));
	const form = board.form === "E-ATX" ? " E-ATX is a name of the trade and no fixed size." : "";
	const where = factAt("board", missing[0] ?? "depthMm")?.whereToFind ?? "";
	return `${boardName} cannot be drawn at true size: ${what.join(" and ")} it is, is not known.${form} Where to look: ${where}`;
}
