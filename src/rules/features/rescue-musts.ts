import type { FactsUnder } from "../../parts/fact-path.ts";
import type { RescueAid } from "../../parts/wants.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, type Outcome, pass } from "../outcome.ts";

const aidWords = {
	"fault-display": "lights or digits that name a fault",
	"flash-without-processor": "firmware updates without a processor",
	"reset-at-back": "a reset button at the back",
} as const satisfies Record<RescueAid, string>;

const aidPaths = {
	"fault-display": "board.recovery.faultDisplay",
	"flash-without-processor": "board.recovery.flashWithoutProcessor",
	"reset-at-back": "board.recovery.resetAtBack",
} as const satisfies Record<RescueAid, string>;

const mayRead = [
	"rescueMusts",
	"board.recovery.faultDisplay",
	"board.recovery.flashWithoutProcessor",
	"board.recovery.resetAtBack",
] as const;
type Facts = FactsUnder<never, (typeof mayRead)[number]>;

/** Helps for the day it does not start, of which the person says they must be there. */
export const rescueMusts = defineRule({
	id: "features/rescue-musts",
	scope: "board",
	label: "Help when it does not start",
	wayOut: "fewer aids on the board",
	asks: "Does the board have every aid that you must have?",
	why: "A board that shows what is wrong saves a first builder more time than anything else on it.",
	source: "common-practice",
	severity: "stops",
	reads: [],
	mayRead,
	messages: {
		notAsked: () => "You have named no aid that must be there.",
		has: () => "It has every aid that you must have.",
		lacks: ({ aids }: { aids: readonly string[] }) => `Missing: ${aids.join("; ")}.`,
		need: ({ aids }: { aids: readonly string[] }) => `It must have: ${aids.join("; ")}.`,
	},
	check(facts): Outcome {
		const musts = [...new Set(facts.rescueMusts ?? [])];
		if (musts.length === 0) return pass("notAsked");
		const lacking = musts.filter((aid) => hasAid(aid, facts) === false);
		if (lacking.length > 0) return fail("lacks", { aids: lacking.map((aid) => aidWords[aid]) });
		const unknown = musts.filter((aid) => hasAid(aid, facts) === undefined);
		return unknown.length > 0 ? cannotTell(unknown.map((aid) => aidPaths[aid])) : pass("has");
	},
	needs: ({ rescueMusts: musts = [] }) =>
		musts.length === 0 ? null : { messageId: "need", data: { aids: [...new Set(musts)].map((aid) => aidWords[aid]) } },
});

/** Undefined where the page does not say. */
function hasAid(aid: RescueAid, facts: Facts): boolean | undefined {
	if (aid === "flash-without-processor") return facts["board.recovery.flashWithoutProcessor"];
	if (aid === "reset-at-back") return facts["board.recovery.resetAtBack"];
	const display = facts["board.recovery.faultDisplay"];
	return display === undefined ? undefined : display !== "none";
}
