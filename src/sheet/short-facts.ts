import type { Board } from "../parts/board.ts";

/** The facts by which a board is known in a shop, in one line; what is not known is left out. */
export function shortFacts({ maker, revision, form, socket, chipset, memory }: Board): string {
	const slots = memory?.slots === undefined ? "" : `, ${memory.slots} slots`;
	return [
		maker && `by ${maker}`,
		revision && `revision ${revision}`,
		form,
		socket && `socket ${socket.replace(/^socket\s+/i, "")}`,
		chipset && `chipset ${chipset}`,
		memory?.type && `${memory.type}${slots}`,
	]
		.filter(Boolean)
		.join("; ");
}
