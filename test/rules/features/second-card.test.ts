import type { Board } from "../../../src/parts/board.ts";
import { secondCard } from "../../../src/rules/features/second-card.ts";
import { testRule } from "../test-rule.ts";

const wish = (strength: "must" | "would-like" | "dont-mind") => ({ wishes: { "features/second-card": strength } });
const slot = (facts: Partial<NonNullable<Board["cardSlots"]>[number]> = {}) => ({
	name: "SLOT",
	bus: "PCI Express" as const,
	lengthLanes: 16,
	wiredLanes: 16,
	from: "processor" as const,
	...facts,
});
const board = (...cardSlots: ReturnType<typeof slot>[]) => ({ cardSlots });

testRule(secondCard, {
	fits: {
		"exactly eight lanes in the second": [
			{ board: board(slot(), slot({ wiredLanes: 8 })), ...wish("must") },
			"has",
			{ slots: 2 },
		],
		"three of them": [{ board: board(slot(), slot(), slot()), ...wish("would-like") }, "has", { slots: 3 }],
		"a slot of which the kind is not said": [
			{ board: board(slot({ bus: undefined }), slot()), ...wish("must") },
			"has",
			{ slots: 2 },
		],
		"not wished for": [{ board: board(slot()), ...wish("dont-mind") }, "notAsked"],
		"nobody has said": [{ board: board(slot()) }, "notAsked"],
	},
	cautions: {
		"would be nice": [{ board: board(slot()), ...wish("would-like") }, "good-to-know", "wouldLike"],
		"would be nice, and the page is silent": [{ board: {}, ...wish("would-like") }, "good-to-know", "silent"],
		"would be nice, and the lanes of the second are not known": [
			{ board: board(slot(), slot({ wiredLanes: undefined })), ...wish("would-like") },
			"good-to-know",
			"silent",
		],
	},
	fails: {
		"one slot": [{ board: board(slot()), ...wish("must") }, "lacks"],
		"seven lanes in the second": [{ board: board(slot(), slot({ wiredLanes: 7 })), ...wish("must") }, "lacks"],
		"the second is short": [
			{ board: board(slot(), slot({ lengthLanes: 8, wiredLanes: 8 })), ...wish("must") },
			"lacks",
		],
		"the second hangs on the chipset": [{ board: board(slot(), slot({ from: "chipset" })), ...wish("must") }, "lacks"],
		"the second hangs on the chipset, its lanes not known": [
			{ board: board(slot(), slot({ from: "chipset", wiredLanes: undefined })), ...wish("must") },
			"lacks",
		],
		"the second is of the old kind": [{ board: board(slot(), slot({ bus: "PCI" })), ...wish("must") }, "lacks"],
	},
	cannotTell: {
		"needed, and the page is silent": [{ board: {}, ...wish("must") }, ["board.cardSlots"]],
	},
	needs: {
		needed: [wish("must"), "A second full-length slot with at least 8 lanes from the processor."],
		"would be nice": [
			wish("would-like"),
			"A second full-length slot with at least 8 lanes from the processor, if it costs little.",
		],
		"not wished for": [wish("dont-mind"), null],
	},
});
