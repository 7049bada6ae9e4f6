import type { Board } from "../../src/parts/board.ts";
import { type BuildFacts, emptyBuildFacts } from "../../src/parts/build.ts";
import type { Cooler } from "../../src/parts/cooler.ts";
import { assumedBoardFacts, withAssumedFacts } from "../../src/reference/assumed-facts.ts";
import { type NoPaperBoard, type PaperBoard, paperBoard } from "../../src/sheet/paper-board.ts";
import { slot, withGraphics } from "../plan/made-up-problem.ts";

/** A build with nothing on the board. */
export const bareFacts: BuildFacts = {
	...emptyBuildFacts,
	graphicsCard: { state: "none" },
	drives: [],
	olderSataDrives: 0,
	addInCards: [],
	boughtLists: ["drives", "addInCards"],
};

/** A card three rows thick that reaches past the front edge of a full-size board. */
export const thickCard = withGraphics({ thicknessMm: 55, lengthMm: 300, generation: 4 });

export const withCooler = (part: Partial<Cooler>): Pick<BuildFacts, "cooler"> => ({
	cooler: { state: "have", ownership: "bought", part: { id: "chimney", name: "Chimney", kind: "air", ...part } },
});

/** Boards of three sizes that state all that is drawn of them. */
export const statedBoards = {
	ATX: {
		form: "ATX",
		widthMm: 305,
		depthMm: 244,
		holes: ["A", "C", "F", "G", "H", "J", "K", "L", "M"],
		cardSlots: [slot("X16", 1, 16), slot("X4", 5, 4), slot("X1", 7, 1)],
	},
	microATX: {
		form: "microATX",
		widthMm: 244,
		depthMm: 244,
		holes: ["B", "C", "F", "H", "J", "L", "M", "R", "S"],
		cardSlots: [slot("X16", 1, 16), slot("X1", 4, 1)],
	},
	"Mini-ITX": {
		form: "Mini-ITX",
		widthMm: 170,
		depthMm: 170,
		holes: ["C", "F", "H", "J"],
		cardSlots: [slot("X16", 1, 16)],
	},
} as const satisfies Record<string, Partial<Board>>;

/** Draws a board as the program does: with what its form settles filled in. */
export function drawnOrNot(board: Partial<Board>, facts: Partial<BuildFacts> = {}): PaperBoard | NoPaperBoard {
	const given: Board = { id: "a-board", name: "A board", ...board };
	const assumed = assumedBoardFacts(given);
	return paperBoard({ board: withAssumedFacts(given, assumed), assumed }, { ...bareFacts, ...facts });
}

/** The same for a board that can be drawn. */
export function drawn(board: Partial<Board>, facts: Partial<BuildFacts> = {}): PaperBoard {
	const paper = drawnOrNot(board, facts);
	if ("unknown" in paper) throw new Error(paper.unknown);
	return paper;
}
