import type { HoleLetter } from "../parts/vocabulary.ts";
import { type BoardFormName, boardForms } from "./board-forms.ts";
import { mmOfInches } from "./inches.ts";
import type { SourceId } from "./sources.ts";

/**
 * Where a hole's centre lies, component side up and rear (I/O) edge at the top: x runs right from hole A towards the
 * I/O side, y runs from hole A towards the front edge.
 */
export type HolePosition = {
	readonly letter: HoleLetter;
	readonly xIn: number;
	readonly yIn: number;
	readonly xMm: number;
	readonly yMm: number;
	readonly source: SourceId;
	readonly note?: string;
};

/** The holes of a board form. */
export type HoleSet = {
	readonly letters: readonly HoleLetter[];
	readonly source: SourceId;
	readonly note?: string;
};

/** The edges of a board on the same axes as its holes. */
export type BoardEdges = {
	readonly leftMm: number;
	readonly rightMm: number;
	readonly rearMm: number;
	readonly frontMm: number;
};

/** The edges that are the same for every form. */
export const sharedEdges = {
	rearIn: -0.4,
	/** -0.650 in, the left edge of a full ATX board, plus its 12 in. */
	rightIn: 11.35,
	source: "ssi-eeb-3.0",
} as const satisfies { rearIn: number; rightIn: number; source: SourceId };

export const holeDiameter = {
	diameterMm: 3.96,
	source: "parametric-case",
	note: "0.156 in; the ATX specification says the same (from memory)",
} as const satisfies { diameterMm: number; source: SourceId; note: string };

// The grid of columns and rows is SSI's figure 1; which letter sits where is the open-source file's.
const columnsIn = { agk: 0, r: 2.3, bs: 3.1, chl: 4.9, fjm: 11.1 };
const rowsIn = { abc: 0, f: 0.9, ghjrs: 6.1, klm: 8.95 };

const positions: Readonly<Record<HoleLetter, HolePosition>> = {
	A: hole("A", columnsIn.agk, rowsIn.abc),
	B: hole("B", columnsIn.bs, rowsIn.abc),
	C: hole("C", columnsIn.chl, rowsIn.abc),
	F: hole("F", columnsIn.fjm, rowsIn.f),
	G: hole("G", columnsIn.agk, rowsIn.ghjrs),
	H: hole("H", columnsIn.chl, rowsIn.ghjrs),
	J: hole("J", columnsIn.fjm, rowsIn.ghjrs),
	K: hole("K", columnsIn.agk, rowsIn.klm),
	L: hole("L", columnsIn.chl, rowsIn.klm),
	M: hole("M", columnsIn.fjm, rowsIn.klm),
	R: {
		...hole("R", columnsIn.r, rowsIn.ghjrs),
		source: "tsolo-hole-file",
		note: "less sure: its x rests on one open-source file and on geometry",
	},
	S: hole("S", columnsIn.bs, rowsIn.ghjrs),
};

const holeSets: Readonly<Record<BoardFormName, HoleSet | null>> = {
	ATX: { letters: ["A", "C", "F", "G", "H", "J", "K", "L", "M"], source: "microatx-1.2", note: "ATX 2.1 and later" },
	microATX: {
		letters: ["B", "C", "F", "H", "J", "L", "M", "R", "S"],
		source: "microatx-1.2",
		note: "on a full-width board R is required and S optional; a smaller board may use any of them",
	},
	"Mini-ITX": { letters: ["C", "F", "H", "J"], source: "parametric-case" },
	DTX: {
		letters: ["C", "F", "H", "J", "L", "M"],
		source: "own-convention",
		note: "derived from the board's size and the hole places; less sure",
	},
	"Mini-DTX": {
		letters: ["C", "F", "H", "J"],
		source: "own-convention",
		note: "derived from the board's size and the hole places; less sure",
	},
	FlexATX: { letters: ["B", "C", "F", "H", "J", "S"], source: "encyclopaedia-flexatx", note: "all six required" },
	"E-ATX": null,
	"SSI CEB": null,
	"SSI EEB": null,
};

/** Where this hole is, on the axes `HolePosition` describes. */
export function holePosition(letter: HoleLetter): HolePosition {
	return positions[letter];
}

/** The holes of this form, or null where its letters were not read anywhere. */
export function holesOfForm(form: BoardFormName): HoleSet | null {
	return holeSets[form];
}

/** The edges of the largest board of this form. */
export function edgesOfForm(form: BoardFormName): BoardEdges {
	const { widthIn, depthIn } = boardForms[form];
	return {
		leftMm: mmOfInches(sharedEdges.rightIn - widthIn),
		rightMm: mmOfInches(sharedEdges.rightIn),
		rearMm: mmOfInches(sharedEdges.rearIn),
		frontMm: mmOfInches(sharedEdges.rearIn + depthIn),
	};
}

/** How far a board reaches, in mm from the right and from the rear edge. */
export type BoardReach = {
	readonly widthMm: number;
	readonly depthMm: number;
};

/** Whether this hole's centre lies on a board that reaches so far. */
export function isHoleWithin(letter: HoleLetter, { widthMm, depthMm }: BoardReach): boolean {
	return fromRightEdgeMm(letter) <= widthMm && fromRearEdgeMm(letter) <= depthMm;
}

/** From the right edge of any board, seen from above with the rear edge at the top, to the centre of this hole, in mm. */
export function fromRightEdgeMm(letter: HoleLetter): number {
	return mmOfInches(sharedEdges.rightIn) - positions[letter].xMm;
}

/** From the rear edge of any board to the centre of this hole, in mm. */
export function fromRearEdgeMm(letter: HoleLetter): number {
	return positions[letter].yMm - mmOfInches(sharedEdges.rearIn);
}

/** Whether the centre of this hole lies on the largest board of this form. */
export function isHoleOnBoard(letter: HoleLetter, form: BoardFormName): boolean {
	const { xMm, yMm } = positions[letter];
	const { leftMm, rightMm, rearMm, frontMm } = edgesOfForm(form);
	return leftMm < xMm && xMm < rightMm && rearMm < yMm && yMm < frontMm;
}

function hole(letter: HoleLetter, xIn: number, yIn: number): HolePosition {
	return { letter, xIn, yIn, xMm: mmOfInches(xIn), yMm: mmOfInches(yIn), source: "ssi-eeb-3.0" };
}
