import { canonicalSocket } from "../../parts/canonical-name.ts";
import { defineRule } from "../define-rule.ts";
import { fail, pass } from "../outcome.ts";

/** The processor must have the socket the board has; spellings of one socket are one. */
export const socket = defineRule({
	id: "fit/socket",
	scope: "board",
	label: "Socket",
	wayOut: "another processor",
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
			`${socket}, because the ${processor} goes into no other.`,
	},
	check: ({ "board.socket": board, "processor.socket": processor }) =>
		canonicalSocket(board) === canonicalSocket(processor)
			? pass("same", { socket: socketWords(board) })
			: fail("other", { board: socketWords(board), processor: socketWords(processor) }),
	needs: ({ "processor.socket": socket, "processor.name": processor }) =>
		socket ? { messageId: "need", data: { socket: socketWords(socket), processor: processor ?? "processor" } } : null,
});

/** The name without the word "socket" in front, which the sentences bring themselves. */
function socketWords(name: string): string {
	return name.replace(/^socket\s+(?=\S)/i, "");
}
