import { boardForm } from "../../../src/rules/fit/board-form.ts";
import { testRule } from "../test-rule.ts";

testRule(boardForm, {
	fits: {
		"the case lists it": [{ board: { form: "ATX" }, case: { boardForms: ["ATX"] } }, "listed", { form: "ATX" }],
		"exactly as deep and as wide as the case has room for": [
			{
				board: { form: "E-ATX", depthMm: 277, widthMm: 305 },
				case: { boardForms: ["E-ATX"], boardMaxDepthMm: 277, boardMaxWidthMm: 305 },
			},
			"listed",
			{ form: "E-ATX" },
		],
		"a smaller board with holes the larger has not": [
			{ board: { form: "microATX" }, case: { boardForms: ["ATX"] } },
			"smaller",
			{ form: "microATX", forms: ["ATX"] },
		],
		"a smaller board, all of whose holes the larger has": [
			{ board: { form: "Mini-ITX" }, case: { boardForms: ["ATX"] } },
			"smaller",
			{ form: "Mini-ITX", forms: ["ATX"] },
		],
		// The holes of an E-ATX board were read nowhere; those of the ATX board the case lists too are enough.
		"a smaller board in a case that lists two larger, whatever their order": [
			{ board: { form: "Mini-ITX" }, case: { boardForms: ["E-ATX", "ATX"] } },
			"smaller",
			{ form: "Mini-ITX", forms: ["E-ATX", "ATX"] },
		],
		"not listed, but there is room for its depth": [
			{ board: { form: "E-ATX", depthMm: 272 }, case: { boardForms: ["ATX"], boardMaxDepthMm: 272 } },
			"bySize",
			{ form: "E-ATX", depthMm: 272, maxDepthMm: 272 },
		],
		"a board of a listed form that is no deeper than ATX, where the case gives no depth": [
			{ board: { form: "E-ATX", depthMm: 244 }, case: { boardForms: ["E-ATX"] } },
			"listed",
			{ form: "E-ATX" },
		],
		"a case to be bought to suit": [{ board: { form: "ATX" }, case: "open" }, "open", { part: "case" }],
		"no case": [{ board: { form: "ATX" }, case: "none" }, "none", { part: "case" }],
	},
	fails: {
		"too large": [
			{ board: { form: "ATX" }, case: { boardForms: ["microATX", "Mini-ITX"] } },
			"tooLarge",
			{ form: "ATX", forms: ["microATX", "Mini-ITX"] },
		],
		"as wide, but deeper": [
			{ board: { form: "SSI CEB" }, case: { boardForms: ["ATX"] } },
			"tooLarge",
			{ form: "SSI CEB", forms: ["ATX"] },
		],
		"not listed, and the case gives no depth": [
			{ board: { form: "E-ATX", depthMm: 272 }, case: { boardForms: ["ATX"] } },
			"tooLarge",
			{ form: "E-ATX", forms: ["ATX"] },
		],
		"one millimetre too deep, though listed": [
			{ board: { form: "E-ATX", depthMm: 278 }, case: { boardForms: ["E-ATX"], boardMaxDepthMm: 277 } },
			"tooDeep",
			{ depthMm: 278, maxDepthMm: 277 },
		],
		"one millimetre too wide, though listed": [
			{ board: { form: "ATX", widthMm: 306 }, case: { boardForms: ["ATX"], boardMaxWidthMm: 305 } },
			"tooWide",
			{ widthMm: 306, maxWidthMm: 305 },
		],
		"an assumed depth of 170 mm, and a case of 169 mm": [
			{ board: { form: "Mini-ITX" }, case: { boardForms: ["Mini-ITX"], boardMaxDepthMm: 169 } },
			"tooDeep",
			{ depthMm: 170, maxDepthMm: 169 },
		],
	},
	cannotTell: {
		"a millimetre deeper than ATX, and the case that lists it gives no depth": [
			{ board: { form: "E-ATX", depthMm: 245 }, case: { boardForms: ["E-ATX"] } },
			["case.boardMaxDepthMm"],
			"caseDepthUnknown",
			{ form: "E-ATX" },
		],
		"of no known depth, and the case that lists it gives none either": [
			{ board: { form: "E-ATX" }, case: { boardForms: ["E-ATX"] } },
			["case.boardMaxDepthMm"],
			"caseDepthUnknown",
			{ form: "E-ATX" },
		],
		"no form on the board's page": [{ board: {}, case: { boardForms: ["ATX"] } }, ["board.form"]],
		"no list on the case's page": [{ board: { form: "ATX" }, case: {} }, ["case.boardForms"]],
		"nobody has said which case": [{ board: { form: "ATX" } }, ["case"]],
		"listed, but its depth is not known and the case gives one": [
			{ board: { form: "E-ATX" }, case: { boardForms: ["E-ATX"], boardMaxDepthMm: 277 } },
			["board.depthMm"],
			"depthUnknown",
			{ form: "E-ATX" },
		],
		"not listed, and its depth is not known": [
			{ board: { form: "E-ATX" }, case: { boardForms: ["ATX"], boardMaxDepthMm: 277 } },
			["board.depthMm"],
			"depthUnknown",
			{ form: "E-ATX" },
		],
	},
	assumed: {
		"a Mini-ITX board is 170 mm deep": [
			{ board: { form: "Mini-ITX" }, case: { boardForms: ["Mini-ITX"] } },
			"board.depthMm",
		],
		"a Mini-ITX board is 170 mm wide": [
			{ board: { form: "Mini-ITX" }, case: { boardForms: ["Mini-ITX"] } },
			"board.widthMm",
		],
	},
	needs: {
		"a list": [
			{ case: { boardForms: ["microATX", "Mini-ITX"] } },
			"microATX, Mini-ITX: the sizes your case takes, and nothing larger.",
		],
		"no list": [{ case: {} }, null],
		"to be bought to suit": [{ case: "open" }, null],
	},
});
