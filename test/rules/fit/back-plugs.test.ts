import { backPlugs } from "../../../src/rules/fit/back-plugs.ts";
import { testRule } from "../test-rule.ts";

const onBack = { name: "Hidden Thing", connectorsOnBack: true, connectorsOnBackPattern: "Backstitch A" } as const;

testRule(backPlugs, {
	fits: {
		"an ordinary board in a case with cut-outs": [
			{ board: { connectorsOnBack: false }, case: { backCutOuts: true } },
			"ordinary",
		],
		"of which nothing is said": [{ board: {}, case: { backCutOuts: false } }, "ordinary"],
	},
	cautions: {
		"the case names the pattern": [
			{ board: onBack, case: { backCutOuts: true, backCutOutPatterns: ["Backstitch B", "backstitch-A"] } },
			"good-to-know",
			"named",
			{ pattern: "backstitch-A" },
		],
		"the case names the board": [
			{ board: onBack, case: { backCutOuts: true, backCutOutPatterns: ["Hidden Thing"] } },
			"good-to-know",
			"named",
			{ pattern: "Hidden Thing" },
		],
		"a case still to choose": [{ board: onBack, case: "open" }, "good-to-know", "chooseCase"],
	},
	fails: {
		"no cut-outs": [{ board: onBack, case: { backCutOuts: false } }, "noCutOuts"],
	},
	cannotTell: {
		"nobody has said which case": [{ board: onBack }, ["case"], "cutOutsUnknown"],
		"the case's page is silent": [{ board: onBack, case: {} }, ["case.backCutOuts"], "cutOutsUnknown"],
		"cut-outs of no known pattern": [
			{ board: onBack, case: { backCutOuts: true } },
			["case.backCutOutPatterns"],
			"notNamed",
		],
		"cut-outs for another pattern": [
			{ board: onBack, case: { backCutOuts: true, backCutOutPatterns: ["Backstitch B"] } },
			["case.backCutOutPatterns"],
			"otherPattern",
			{ patterns: ["Backstitch B"] },
		],
	},
});
