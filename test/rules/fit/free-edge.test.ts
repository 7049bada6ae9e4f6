import { freeEdge } from "../../../src/rules/fit/free-edge.ts";
import { testRule } from "../test-rule.ts";

/** Rows of holes: SSI EEB 3.0, figure 1: 6.1 and 8.95 in from the datum, which is 0.4 in from the rear edge. */
testRule(freeEdge, {
	fits: {
		"a full-size ATX board: 6.5 mm past its screws": [{ board: { form: "ATX", depthMm: 244, widthMm: 305 } }, "held"],
		"exactly 25 mm past the middle row, 165.1 mm from the rear": [
			{ board: { depthMm: 190.1, holes: ["C", "F", "H", "J"] } },
			"held",
		],
		"a depth that is not known": [{ board: { form: "ATX" } }, "held"],
		"holes that are not known": [{ board: { form: "E-ATX", depthMm: 280 } }, "held"],
	},
	cautions: {
		"a tenth of a millimetre more": [
			{ board: { depthMm: 190.2, holes: ["C", "F", "H", "J"] } },
			"good-to-know",
			"hangs",
			{ freeMm: 25.1 },
		],
		"an ATX board without its last row": [
			{ board: { form: "ATX", depthMm: 225, widthMm: 305, holes: ["A", "C", "F", "G", "H", "J"] } },
			"good-to-know",
			"hangs",
			{ freeMm: 59.9 },
		],
		"assumed holes past the edge do not hold it": [
			{ board: { form: "ATX", depthMm: 225, widthMm: 305 } },
			"good-to-know",
			"hangs",
			{ freeMm: 59.9 },
		],
		"a deep board on the holes of ATX": [
			{ board: { form: "E-ATX", depthMm: 280, holes: ["F", "J", "M", "L"] } },
			"good-to-know",
			"hangs",
			{ freeMm: 42.5 },
		],
	},
	assumed: { "holes of the form": [{ board: { form: "ATX", depthMm: 244 } }, "board.holes"] },
	without: { cannotTell: "it only says where to put a hand, so what is not known is left out" },
});
