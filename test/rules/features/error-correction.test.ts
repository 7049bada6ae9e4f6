import { errorCorrection } from "../../../src/rules/features/error-correction.ts";
import { testRule } from "../test-rule.ts";

const wish = (strength: "must" | "would-like" | "dont-mind") => ({ wishes: { "features/error-correction": strength } });
const board = (works: boolean) => ({ memory: { errorCorrection: works } });

testRule(errorCorrection, {
	fits: {
		"it works": [{ board: board(true), ...wish("must") }, "has"],
		// The processor is a matter among the parts; no board is taken out for it.
		"it works, but not with this processor": [
			{ board: board(true), processor: { memory: { errorCorrection: false } }, ...wish("must") },
			"has",
		],
		"not wished for": [{ board: board(false), ...wish("dont-mind") }, "notAsked"],
		"nobody has said": [{ board: board(false) }, "notAsked"],
	},
	cautions: {
		"would be nice": [{ board: board(false), ...wish("would-like") }, "good-to-know", "wouldLike"],
		"would be nice, and the page is silent": [{ board: {}, ...wish("would-like") }, "good-to-know", "silent"],
	},
	fails: { "it does not work": [{ board: board(false), ...wish("must") }, "lacks"] },
	cannotTell: { "needed, and the page is silent": [{ board: {}, ...wish("must") }, ["board.memory.errorCorrection"]] },
	needs: {
		needed: [wish("must"), "Error-correcting memory works (ECC, not only on-chip), as its page or manual says."],
		"would be nice": [
			wish("would-like"),
			"Error-correcting memory works (ECC, not only on-chip), as its page or manual says, if it costs little.",
		],
		"nobody has said": [{}, null],
	},
});
