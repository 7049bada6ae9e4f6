import { listsPublished } from "../../../src/rules/quality/lists-published.ts";
import { testRule } from "../test-rule.ts";

const lists = (processors?: boolean, memory?: boolean) => ({
	board: {
		listsPublished: {
			...(processors === undefined ? {} : { processors }),
			...(memory === undefined ? {} : { memory }),
		},
	},
});

testRule(listsPublished, {
	fits: {
		"both lists": [lists(true, true), "both"],
		"nobody has looked": [{ board: {} }, "notAsked"],
		"one is there, the other nobody has looked for": [lists(true), "notAsked"],
		"the other way round": [lists(undefined, true), "notAsked"],
	},
	cautions: {
		"no list of memory": [lists(true, false), "good-to-know", "noMemory"],
		"no list of memory, and nobody has looked for the other": [lists(undefined, false), "good-to-know", "noMemory"],
		"no list of processors": [lists(false, true), "good-to-know", "noProcessors"],
		"no list of processors, and nobody has looked for the other": [lists(false), "good-to-know", "noProcessors"],
		"neither list": [lists(false, false), "good-to-know", "neither"],
	},
	without: { cannotTell: "where nobody has looked, nothing counts against the board" },
});
