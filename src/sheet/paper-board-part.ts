import type { Board } from "../parts/board.ts";
import type { AssumedFact } from "../reference/assumed-facts.ts";
import type { SourceId } from "../reference/sources.ts";
import type { PaperShape } from "./paper-board-shapes.ts";

/** Under which heading a sentence on the paper stands. */
export type PaperHeading = "mind" | "drawn" | "assumed" | "unknown";

export interface PaperNote {
	readonly under: PaperHeading;
	readonly text: string;
}

/** What one thing adds to the paper: lines, sentences, and the sources of its figures. */
export interface PaperPart {
	readonly shapes: readonly PaperShape[];
	readonly notes: readonly PaperNote[];
	readonly sources: readonly SourceId[];
}

export const nothingDrawn: PaperPart = { shapes: [], notes: [], sources: [] };

/** A board with its assumed facts filled in, and the list of them. */
export interface BoardOfPaper {
	readonly board: Board;
	readonly assumed: readonly Pick<AssumedFact, "path">[];
}

/** Whether a fact of the board only follows from a standard, by us or by whoever noted it. */
export function isAssumed({ board, assumed }: BoardOfPaper, path: string): boolean {
	return assumed.some((one) => one.path === path) || board.evidence?.[path]?.standing === "assumed";
}

export function note(under: PaperHeading, text: string): PaperNote {
	return { under, text };
}

/** A length as it is written: at most one decimal. */
export function mm(length: number): string {
	return `${Math.round(length * 10) / 10} mm`;
}
