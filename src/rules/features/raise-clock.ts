import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type Outcome, pass } from "../outcome.ts";

/**
 * Raising the clock takes a board and a processor that both let it. Only who has done it before counts it as a must; who
 * may try one day is told. A processor that does not let it is no fault of the board's.
 */
export const raiseClock = defineRule({
	id: "features/raise-clock",
	scope: "board",
	label: "Raising the processor's clock",
	wayOut: "the clock as the maker set it",
	asks: "Does the board let you raise the processor's clock?",
	why: "The clock is the processor's pace, and many chipsets lock it. Raising it brings little today, and can cost the warranty.",
	source: "common-practice",
	severity: "stops",
	reads: [],
	mayRead: ["clockPlan", "board.raises.processorClock", "processor", "processor.unlocked"],
	messages: {
		notAsked: () => "You do not plan to raise the processor's clock.",
		lets: () => "The board lets the processor's clock be raised.",
		locked: () => "The board does not let the processor's clock be raised.",
		lockedForMaybe: () => "The board does not let the processor's clock be raised; you said you may try it.",
		processorLocked: () => "Your processor does not let its clock be raised, whatever the board.",
		need: () => "A chipset that lets the processor's clock be raised.",
	},
	advice: {
		lockedForMaybe: () => "You lose little: today's processors raise their clock by themselves as far as is safe.",
	},
	check(facts): Outcome {
		const [plan, lets, unlocked] = [facts.clockPlan, facts["board.raises.processorClock"], facts["processor.unlocked"]];
		if (plan === "maybe" && lets === false) return goodToKnow("lockedForMaybe");
		if (plan !== "done-before") return pass("notAsked");
		if (unlocked === false) return pass("processorLocked");
		if (lets) return pass("lets");
		if (lets === undefined) return cannotTell(["board.raises.processorClock"]);
		// A processor still to be bought will be one that lets it; of another the answer is needed first.
		if (unlocked || facts.processor === "open") return fail("locked");
		return cannotTell(["processor.unlocked"]);
	},
	needs: ({ clockPlan, "processor.unlocked": unlocked }) =>
		clockPlan === "done-before" && unlocked !== false ? { messageId: "need", data: {} } : null,
});
