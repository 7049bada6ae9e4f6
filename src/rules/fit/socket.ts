import { canonicalSocket } from "../../parts/canonical-name.ts";
import { defineRule } from "../define-rule.ts";
import { fail, pass } from "../outcome.ts";

/** The processor must have the socket the board has; spellings of one socket are one. */
export const socket = defineRule({
	id: "fit/socket",
	scope: "board",
	label: "Socket",
	asks: "Does the processor go into this board's socket?",
	why: "A processor fits one socket only. Pressed into another it bends contacts, and both are lost.",
	source: "common-practice",
	severity: "stops",
	reads: ["board.socket", "processor.socket"],
	mayRead: ["processor.name"],
	messages: {
		same: ({ socket }: { socket: string }) => `Board and processor both have socket ${socket}.`,
		other: ({ board, processor }: { board: string; processor: string }) =>
			`The board has socket ${board}; the processor needs ${processor}.`,
		need: ({ socket, processor }: { socket: string; processor: string }) =>
			`Socket ${socket}, because the ${processor} goes into no other.`,
	},
	check: ({ "board.socket": board, "processor.socket": processor }) =>
		canonicalSocket(board) === canonicalSocket(processor)
			? pass("same", { socket: board })
			: fail("other", { board, processor }),
	needs: ({ "processor.socket": socket, "processor.name": processor }) =>
		socket ? { messageId: "need", data: { socket, processor: processor ?? "processor" } } : null,
});
