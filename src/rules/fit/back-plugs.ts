import { canonicalName } from "../../parts/canonical-name.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type Outcome, pass } from "../outcome.ts";

/**
 * Some boards have their power and drive plugs on the back, so that no cable is seen. Only a case with cut-outs at those
 * very places takes one, and there is no common standard for the places. Pages say it loudly, so a board of which
 * nothing is said counts as an ordinary one: common practice, no source.
 */
export const backPlugs = defineRule({
	id: "fit/back-plugs",
	scope: "board",
	label: "Plugs on the board's back",
	wayOut: "an ordinary board, or a case with cut-outs for this one",
	asks: "If the board has its plugs on the back, has the case cut-outs for them?",
	why: "Such a board goes only into a case with holes at the same places. An ordinary board goes into both kinds of case.",
	source: "common-practice",
	severity: "stops",
	reads: [],
	mayRead: [
		"board.connectorsOnBack",
		"board.connectorsOnBackPattern",
		"board.name",
		"case",
		"case.backCutOuts",
		"case.backCutOutPatterns",
	],
	saysNothing: ["ordinary"],
	messages: {
		ordinary: () => "Its plugs are on the front, as on nearly every board.",
		chooseCase: () => "Its plugs are on the back: it needs a case with cut-outs for this very board.",
		named: ({ pattern }: { pattern: string }) =>
			`Its plugs are on the back, and the case's page names its pattern: ${pattern}.`,
		noCutOuts: () => "The board has its plugs on the back; the case has no cut-outs for them.",
		cutOutsUnknown: () => "The board has its plugs on the back; whether the case has cut-outs for them is not known.",
		notNamed: () =>
			"The board has its plugs on the back. The case has cut-outs, but its page names neither board nor pattern.",
		otherPattern: ({ patterns }: { patterns: readonly string[] }) =>
			`The board has its plugs on the back. The case's cut-outs are made for: ${patterns.join(", ")}.`,
	},
	advice: {
		chooseCase: () => "Choose board and case together: the case's page must name this board or its pattern.",
		named: () =>
			"Lay the cables behind the cut-outs, screw the board in, then push the plugs in from behind. The supply stays unplugged from the mains.",
		noCutOuts: () =>
			"Take another board, or a case with these cut-outs. Never cut the case: metal chips can destroy the board.",
		cutOutsUnknown: () => "Look for the board's name or pattern on the case maker's page.",
		notNamed: () => "Ask the case's maker whether the cut-outs suit this very board, before you pay for either.",
		otherPattern: () => "Ask the case's maker whether the cut-outs suit this very board, before you pay for either.",
	},
	check(facts): Outcome {
		if (!facts["board.connectorsOnBack"]) return pass("ordinary");
		if (facts.case === "open" || facts.case === "none") return goodToKnow("chooseCase");
		if (facts.case !== "have") return cannotTell(["case"], "cutOutsUnknown");
		const { "case.backCutOuts": cutOuts, "case.backCutOutPatterns": patterns } = facts;
		if (cutOuts === false) return fail("noCutOuts");
		if (cutOuts === undefined) return cannotTell(["case.backCutOuts"], "cutOutsUnknown");
		const names = [facts["board.connectorsOnBackPattern"], facts["board.name"]];
		const wanted = names.flatMap((name) => (name === undefined ? [] : [canonicalName(name)]));
		const pattern = patterns?.find((listed) => wanted.includes(canonicalName(listed)));
		if (pattern !== undefined) return goodToKnow("named", { pattern });
		return patterns && patterns.length > 0
			? cannotTell(["case.backCutOutPatterns"], "otherPattern", { patterns })
			: cannotTell(["case.backCutOutPatterns"], "notNamed");
	},
});
