import { wishRule } from "../wish-rule.ts";

/**
 * The wish for error-correcting memory. Only the board is judged here; the processor and the modules must play along,
 * and the correction inside each DDR5 chip is not it.
 */
export const errorCorrection = wishRule({
	id: "features/error-correction",
	label: "Error-correcting memory",
	wayOut: "ordinary memory",
	asks: "Does error-correcting memory work on this board?",
	why: "It finds a silent wrong number in memory before that number reaches your files.",
	source: "common-practice",
	severity: "stops",
	reads: ["board.memory.errorCorrection"],
	has: ({ "board.memory.errorCorrection": works }) => (works === undefined ? undefined : { has: works }),
	words: {
		notAsked: "You have not asked for error-correcting memory",
		has: () => "Error-correcting memory works on it, as long as the processor and the modules have it too",
		lacks: () => "It does nothing with error-correcting memory",
		whether: "error-correcting memory works on it",
		need: "Error-correcting memory works (ECC, not only on-chip), as its page or manual says",
	},
	advice: "Look for a board whose page says it in so many words, and see that the processor has it too.",
});
