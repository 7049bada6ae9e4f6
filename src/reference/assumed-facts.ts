import type { Board } from "../parts/board.ts";
import type { Platform } from "../parts/platform.ts";
import { boardForms } from "./board-forms.ts";
import { holesOfForm } from "./board-holes.ts";
import type { SourceId } from "./sources.ts";

/** A fact that no page states but that follows from a standard the page names. */
export interface AssumedFact {
	/** Fact path inside the board. */
	readonly path: string;
	readonly value: unknown;
	readonly source: SourceId;
	/** What it follows from, as words: "a board sold as microATX". */
	readonly because: string;
}

/**
 * What may be assumed of a board from the form it is sold as. Only facts the board does not state are returned. A size
 * is assumed only where the form fixes it (Mini-ITX); elsewhere the form gives a largest size, not the size.
 */
export function assumedBoardFacts(board: Board): readonly AssumedFact[] {
	const assumed: AssumedFact[] = [];
	if (board.form) {
		const because = `a board sold as ${board.form}`;
		const size = boardForms[board.form];
		const holes = holesOfForm(board.form);
		if (!board.holes && holes) assumed.push({ path: "holes", value: holes.letters, source: holes.source, because });
		if (board.form === "Mini-ITX") {
			if (board.widthMm === undefined)
				assumed.push({ path: "widthMm", value: size.widthMm, source: size.source, because });
			if (board.depthMm === undefined)
				assumed.push({ path: "depthMm", value: size.depthMm, source: size.source, because });
		}
	}
	if (!board.power?.mainPlug)
		assumed.push({
			path: "power.mainPlug",
			value: "24-pin",
			source: "atx-3.0-guide-2.01",
			because: "a desktop board of today",
		});
	return assumed;
}

/** What the table row of a board's chipset tells where the board's own page is silent. */
export function assumedFromPlatform(board: Board, platform: Platform): readonly AssumedFact[] {
	const because = `a board with chipset ${platform.chipset}`;
	return raisables.flatMap((what): AssumedFact[] => {
		const value = platform.raises?.[what];
		return board.raises?.[what] !== undefined || value === undefined
			? []
			: [{ path: `raises.${what}`, value, source: "common-practice", because }];
	});
}

const raisables = ["processorClock", "memoryRate"] as const;

/** The board with its assumed facts filled in. */
export function withAssumedFacts(board: Board, assumed: readonly AssumedFact[]): Board {
	return assumed.reduce<Board>((filled, { path, value }) => setAt(filled, path.split("."), value) as Board, board);
}

function setAt(target: object, [key = "", ...rest]: readonly string[], value: unknown): object {
	const inner = (target as Record<string, unknown>)[key];
	return { ...target, [key]: rest.length === 0 ? value : setAt((inner ?? {}) as object, rest, value) };
}
