import { colour } from "../../../src/rules/features/colour.ts";
import { testRule } from "../test-rule.ts";

testRule(colour, {
	fits: {
		"nobody has said": [{ board: { colour: "white" } }, "notAsked"],
		"no matter": [{ board: { colour: "white" }, colourTaste: "plain" }, "notAsked"],
		"dark as liked": [{ board: { colour: "Matt Black" }, colourTaste: "dark" }, "nothingAgainst"],
		"light as liked": [{ board: { colour: "white and silver" }, colourTaste: "light" }, "nothingAgainst"],
		"both at once": [{ board: { colour: "black and white" }, colourTaste: "light" }, "nothingAgainst"],
		"light grey is no plain dark": [{ board: { colour: "light grey" }, colourTaste: "light" }, "nothingAgainst"],
		"a colour that is neither": [{ board: { colour: "bare green" }, colourTaste: "dark" }, "nothingAgainst"],
		"part of a word does not count": [{ board: { colour: "blackcurrant" }, colourTaste: "light" }, "nothingAgainst"],
		"the page is silent": [{ board: {}, colourTaste: "light" }, "nothingAgainst"],
	},
	cautions: {
		"white, where dark is liked": [
			{ board: { colour: "white" }, colourTaste: "dark" },
			"good-to-know",
			"other",
			{ colour: "white", taste: "dark" },
		],
		"dark grey, where light is liked": [
			{ board: { colour: "Dark grey" }, colourTaste: "light" },
			"good-to-know",
			"other",
			{ colour: "Dark grey", taste: "light" },
		],
	},
	needs: {
		light: [{ colourTaste: "light" }, "A light board, where all else is equal."],
		"no matter": [{ colourTaste: "plain" }, null],
		"nobody has said": [{}, null],
	},
	without: { cannotTell: "looks are never worth finding out for" },
});
