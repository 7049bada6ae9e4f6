import type { BoardForm as BoardFormOfParts } from "../parts/vocabulary.ts";
import type { SourceId } from "./sources.ts";

/** The forms a board can have, by the names the parts use. */
export type BoardFormName = BoardFormOfParts;

/** The size and the usual slots of a board form. Width runs along the rear edge, depth from rear to front. */
export type BoardForm = {
	/** As printed, whole millimetres; with `isMaximum` a board of this form may be smaller. */
	readonly widthMm: number;
	readonly depthMm: number;
	/** The size the form is drawn in, from which hole distances are reckoned. */
	readonly widthIn: number;
	readonly depthIn: number;
	readonly isMaximum: boolean;
	/** Slots for add-in cards, at the most; null where the sources disagree. */
	readonly slotCount: number | null;
	readonly source: SourceId;
	readonly slotSource: SourceId;
	readonly note?: string;
};

export const boardForms: Readonly<Record<BoardFormName, BoardForm>> = {
	ATX: {
		widthMm: 305,
		depthMm: 244,
		widthIn: 12,
		depthIn: 9.6,
		isMaximum: true,
		slotCount: 7,
		source: "microatx-1.2",
		slotSource: "unsigned-secondary-text",
	},
	microATX: {
		widthMm: 244,
		depthMm: 244,
		widthIn: 9.6,
		depthIn: 9.6,
		isMaximum: true,
		slotCount: 4,
		source: "microatx-1.2",
		slotSource: "microatx-1.2",
		note: "the smallest usual board is 171.45 x 171.45 mm (read in a secondary text)",
	},
	"Mini-ITX": {
		widthMm: 170,
		depthMm: 170,
		// Defined in millimetres; the printed 6.7 in is rounded from 6.693.
		widthIn: 170 / 25.4,
		depthIn: 170 / 25.4,
		isMaximum: false,
		slotCount: 1,
		source: "mini-itx-addendum-1.1",
		slotSource: "unsigned-secondary-text",
	},
	DTX: {
		widthMm: 203,
		depthMm: 244,
		widthIn: 8,
		depthIn: 9.6,
		isMaximum: false,
		slotCount: 2,
		source: "encyclopaedia-mini-dtx",
		slotSource: "encyclopaedia-mini-dtx",
	},
	"Mini-DTX": {
		widthMm: 203,
		depthMm: 170,
		widthIn: 8,
		depthIn: 170 / 25.4,
		isMaximum: false,
		slotCount: 2,
		source: "encyclopaedia-mini-dtx",
		slotSource: "encyclopaedia-mini-dtx",
	},
	FlexATX: {
		widthMm: 229,
		depthMm: 191,
		widthIn: 9,
		depthIn: 7.5,
		isMaximum: false,
		slotCount: null,
		source: "encyclopaedia-flexatx",
		slotSource: "encyclopaedia-flexatx",
		note: "the sources give 3, 4 or 2 slots",
	},
	"E-ATX": {
		widthMm: 305,
		depthMm: 330,
		widthIn: 12,
		depthIn: 13,
		isMaximum: false,
		slotCount: null,
		source: "encyclopaedia-flexatx",
		slotSource: "encyclopaedia-flexatx",
		note: "a name of the trade, no ATX standard defines it; boards sold under it are often only 257 to 285 mm deep (common practice), so ask for the real depth; 7 to 8 slots",
	},
	"SSI CEB": {
		widthMm: 305,
		depthMm: 267,
		widthIn: 12,
		depthIn: 10.5,
		isMaximum: false,
		slotCount: 7,
		source: "encyclopaedia-flexatx",
		slotSource: "encyclopaedia-flexatx",
		note: "the size in inches is from memory",
	},
	"SSI EEB": {
		widthMm: 305,
		depthMm: 330,
		widthIn: 12,
		depthIn: 13,
		isMaximum: false,
		slotCount: 7,
		source: "ssi-eeb-3.0",
		slotSource: "ssi-eeb-3.0",
	},
};
