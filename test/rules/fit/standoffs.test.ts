import { standoffs } from "../../../src/rules/fit/standoffs.ts";
import { testRule } from "../test-rule.ts";

const atxPosts = ["A", "C", "F", "G", "H", "J", "K", "L", "M"] as const;
const allPosts = [...atxPosts, "B", "R", "S"] as const;
const small = { form: "microATX", widthMm: 226, depthMm: 185, holes: ["B", "C", "F", "H", "J", "S"] } as const;

/** Holes of each form: microATX Motherboard Interface Specification 1.2, fig. 2, p. 10; that S is optional, p. 9-10. */
testRule(standoffs, {
	fits: {
		"nobody looked": [{ board: { form: "ATX" }, case: { boardForms: ["ATX"] } }, "notLooked"],
		"no case is known": [{ board: { form: "ATX" } }, "notLooked"],
		"an ATX board on the nine of ATX": [{ board: { form: "ATX" }, case: { standoffs: [...atxPosts] } }, "held"],
		"a Mini-ITX board in an ATX case: A, G and K lie beside it, L and M in front": [
			{ board: { form: "Mini-ITX" }, case: { standoffs: [...atxPosts] } },
			"held",
		],
		"a small microATX board on all twelve: R lies 3.9 mm beside it": [
			{ board: { ...small, holes: [...small.holes] }, case: { standoffs: [...allPosts] } },
			"held",
		],
		"an ATX board on all twelve, which can be unscrewed": [
			{ board: { form: "ATX" }, case: { standoffs: [...allPosts], standoffsRemovable: true } },
			"takeOut",
			{ posts: ["B", "R", "S"] },
		],
		"S is left to the board's maker": [
			{ board: { form: "microATX" }, case: { standoffs: ["B", "C", "F", "H", "J", "L", "M", "R"] } },
			"held",
		],
		"holes past the edge of a small board do not count": [
			{ board: { form: "microATX", widthMm: 226, depthMm: 185 }, case: { standoffs: ["B", "C", "F", "H", "J"] } },
			"held",
		],
	},
	cautions: {
		"holes of an E-ATX board stand in no standard, and whether standoffs come out was not tried": [
			{ board: { form: "E-ATX", depthMm: 280 }, case: { standoffs: [...atxPosts] } },
			"good-to-know",
			"holesUnknown",
		],
		"microATX holes without a standoff in a case with the nine of ATX": [
			{ board: { form: "microATX" }, case: { standoffs: [...atxPosts] } },
			"good-to-know",
			"bareHoles",
			{ holes: ["B", "R"] },
		],
		"whether they come out was not tried": [
			{ board: { form: "ATX" }, case: { standoffs: [...atxPosts, "B"] } },
			"good-to-know",
			"leftOver",
			{ posts: ["B"] },
		],
		// R is 229.87 mm from the right edge.
		"a board that ends 3.37 mm before a standoff: its rim touches": [
			{ board: { ...small, holes: [...small.holes], widthMm: 226.5 }, case: { standoffs: [...allPosts] } },
			"good-to-know",
			"leftOver",
			{ posts: ["R"] },
		],
		"one hole without": [
			{ board: { form: "Mini-ITX" }, case: { standoffs: ["C", "F", "H"] } },
			"good-to-know",
			"bareHoles",
			{ holes: ["J"] },
		],
	},
	fails: {
		"they do not come out": [
			{ board: { form: "ATX" }, case: { standoffs: [...atxPosts, "R"], standoffsRemovable: false } },
			"fixed",
			{ posts: ["R"] },
		],
	},
	cannotTell: {
		"holes of an E-ATX board stand in no standard, and the standoffs stay": [
			{ board: { form: "E-ATX", depthMm: 280 }, case: { standoffs: [...atxPosts], standoffsRemovable: false } },
			["board.holes"],
			"holesUnknown",
		],
	},
	assumed: {
		"holes of the form": [{ board: { form: "ATX" }, case: { standoffs: [...atxPosts] } }, "board.holes"],
	},
});
