import type { BoardForm } from "../parts/vocabulary.ts";
import { boardForms } from "../reference/board-forms.ts";
import { sharedEdges } from "../reference/board-holes.ts";
import { mmOfInches } from "../reference/inches.ts";
import { type BoardOfPaper, isAssumed, mm, note, type PaperNote, type PaperPart } from "./paper-board-part.ts";
import { rectangle, words } from "./paper-board-shapes.ts";

/** The edges of a board on the axes of its holes (see reference/board-holes), in mm, and how surely they lie there. */
export interface PaperEdges {
	readonly left: number;
	readonly right: number;
	readonly rear: number;
	readonly front: number;
	readonly widthMm: number;
	readonly depthMm: number;
	/** Whether width and depth are both the board's own. */
	readonly isSure: boolean;
	/** Whether holes, slots and the opening lie where the standards of this family say. */
	readonly isOnGrid: boolean;
}

/** A name of the trade and no size. */
const withoutSize: BoardForm = "E-ATX";

/** The edges of a board, or which of its two figures nobody knows. */
export function edgesOf(of: BoardOfPaper): PaperEdges | { readonly missing: readonly ("widthMm" | "depthMm")[] } {
	const { form, holes, widthMm: ownWidth, depthMm: ownDepth } = of.board;
	const usual = form === undefined || form === withoutSize ? undefined : boardForms[form];
	const [widthMm, depthMm] = [ownWidth ?? usual?.widthMm, ownDepth ?? usual?.depthMm];
	if (widthMm === undefined || depthMm === undefined)
		return {
			missing: [
				...(widthMm === undefined ? (["widthMm"] as const) : []),
				...(depthMm === undefined ? (["depthMm"] as const) : []),
			],
		};
	const [right, rear] = [mmOfInches(sharedEdges.rightIn), mmOfInches(sharedEdges.rearIn)];
	const isKnown = (own: number | undefined, path: string) => own !== undefined && !isAssumed(of, path);
	return {
		left: right - widthMm,
		right,
		rear,
		front: rear + depthMm,
		widthMm,
		depthMm,
		isSure: isKnown(ownWidth, "widthMm") && isKnown(ownDepth, "depthMm"),
		isOnGrid: form !== undefined || holes !== undefined,
	};
}

/** The board's outline with its edges named. */
export function outlinePart(of: BoardOfPaper, edges: PaperEdges): PaperPart {
	const { left, right, rear, front, widthMm, depthMm, isSure } = edges;
	return {
		shapes: [
			rectangle("outline", isSure ? "sure" : "assumed", { left, top: rear, width: widthMm, height: depthMm }),
			words({ x: right - 45, y: front - 2.5 }, `front edge, ${mm(widthMm)} long`, { from: "middle" }),
			words({ x: right - 5, y: (rear + front) / 2 }, `${mm(depthMm)} deep`, { from: "middle", isTurned: true }),
		],
		notes: sizeNotes(of, edges),
		sources: ["ssi-eeb-3.0", ...(of.board.form ? [boardForms[of.board.form].source] : [])],
	};
}

function sizeNotes(of: BoardOfPaper, { widthMm, depthMm, isSure, isOnGrid }: PaperEdges): readonly PaperNote[] {
	const { form } = of.board;
	const size = `${mm(widthMm)} along the back edge, ${mm(depthMm)} deep`;
	const drawn = note("drawn", `The outline: ${size}.`);
	const unplaced = isOnGrid
		? []
		: [note("unknown", "Which form this board has is not known, so neither holes nor slot rows are drawn.")];
	if (isSure || form === undefined) return [drawn, ...unplaced];
	return [
		drawn,
		note(
			"assumed",
			boardForms[form].isMaximum
				? `The size: its page does not give both figures, so this is the largest ${form} board. Many are smaller.`
				: `The size: it follows from the form ${form}.`,
		),
	];
}
