import { warranty } from "../../../src/rules/quality/warranty.ts";
import { testRule } from "../test-rule.ts";

const wish = (strength: "must" | "would-like" | "dont-mind") => ({ wishes: { "quality/warranty": strength } });

testRule(warranty, {
	fits: {
		"exactly three years": [{ board: { warrantyYears: 3 }, ...wish("must") }, "has", { years: 3 }],
		"five years": [{ board: { warrantyYears: 5 }, ...wish("would-like") }, "has", { years: 5 }],
		"not wished for": [{ board: { warrantyYears: 1 }, ...wish("dont-mind") }, "notAsked"],
		"nobody has said": [{ board: { warrantyYears: 1 } }, "notAsked"],
	},
	cautions: {
		"would be nice": [
			{ board: { warrantyYears: 2 }, ...wish("would-like") },
			"good-to-know",
			"wouldLike",
			{ years: 2 },
		],
		"would be nice, and the page is silent": [{ board: {}, ...wish("would-like") }, "good-to-know", "silent"],
	},
	fails: {
		"just below three years": [{ board: { warrantyYears: 2.9 }, ...wish("must") }, "lacks", { years: 2.9 }],
		"one year": [{ board: { warrantyYears: 1 }, ...wish("must") }, "lacks", { years: 1 }],
	},
	cannotTell: { "needed, and the page is silent": [{ board: {}, ...wish("must") }, ["board.warrantyYears"]] },
	needs: {
		needed: [wish("must"), "A maker's warranty of at least 3 years."],
		"would be nice": [wish("would-like"), "A maker's warranty of at least 3 years, if it costs little."],
		"nobody has said": [{}, null],
	},
});
