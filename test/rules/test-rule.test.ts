import { expect, test } from "vitest";
import { defineRule } from "../../src/rules/define-rule.ts";
import { fail, pass } from "../../src/rules/outcome.ts";
import { type RuleTable, tableFaults, testRule } from "./test-rule.ts";

const deepEnough = defineRule({
	id: "fit/deep-enough",
	scope: "board",
	label: "Depth",
	wayOut: "another case",
	asks: "Is the board shallow enough?",
	why: "A deeper one meets the drives.",
	source: "own-convention",
	severity: "stops",
	reads: ["board.depthMm", "case.boardMaxDepthMm"],
	mayRead: [],
	messages: { shallow: () => "It is.", deep: () => "It is not.", need: () => "A shallow one." },
	check: ({ "board.depthMm": depth, "case.boardMaxDepthMm": most }) => (depth <= most ? pass("shallow") : fail("deep")),
	needs: ({ "case.boardMaxDepthMm": most }) => (most === undefined ? null : { messageId: "need", data: {} }),
});

const whole: RuleTable = {
	fits: { "at the limit": [{ board: { depthMm: 244 }, case: { boardMaxDepthMm: 244 } }, "shallow"] },
	fails: { "past it": [{ board: { depthMm: 245 }, case: { boardMaxDepthMm: 244 } }, "deep"] },
	cannotTell: { "no depth": [{ board: {}, case: { boardMaxDepthMm: 244 } }, ["board.depthMm"]] },
	needs: { "a case": [{ case: { boardMaxDepthMm: 244 } }, "A shallow one."] },
};

testRule(deepEnough, whole);

test.each<[string, RuleTable, string[]]>([
	["whole", whole, []],
	["without a fit", { ...whole, fits: {} }, ["no case fits", 'no case says "shallow"']],
	["without a failure", { ...whole, fails: {} }, ["no case fails or cautions", 'no case says "deep"']],
	["without a can't tell", { ...whole, cannotTell: {} }, ['no case is "can\'t tell"']],
	["without a can't tell, and it says why", { ...whole, cannotTell: {}, without: { cannotTell: "so" } }, []],
	[
		"which says it has none but has",
		{ ...whole, without: { cannotTell: "so" } },
		['says it has no "can\'t tell" but has'],
	],
	["without a need", { ...whole, needs: {} }, ["no case of what to look for", 'no case says "need"']],
	[
		"with one subject under two names",
		{ ...whole, fits: { ...whole.fits, again: whole.fits["at the limit"] as never } },
		['"again" is there already'],
	],
	[
		"with one subject both fitting and failing",
		{
			...whole,
			fails: { ...whole.fails, again: [{ board: { depthMm: 244 }, case: { boardMaxDepthMm: 244 } }, "deep"] },
		},
		['"again" is there already'],
	],
	[
		"with one name for a fit and a failure",
		{ ...whole, fails: { "at the limit": [{ board: { depthMm: 300 }, case: { boardMaxDepthMm: 244 } }, "deep"] } },
		['two cases are called "at the limit"'],
	],
	[
		"with a message the rule has not",
		{ ...whole, fits: { ...whole.fits, other: [{ board: { depthMm: 1 }, case: "open" }, "flat"] } },
		['"flat" is no message of the rule'],
	],
])("a table %s", (_, table, faults) => {
	expect(tableFaults(deepEnough, table)).toEqual(faults);
	if (faults.length > 0) expect(() => testRule(deepEnough, table)).toThrow(faults[0]);
});
