import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, pass } from "../outcome.ts";

/** Raising the clock takes a processor that lets it; no board can cure one that does not. */
export const clockLocked = defineRule({
	id: "build/clock-locked",
	scope: "build",
	label: "A processor whose clock can be raised",
	wayOut: "the clock as the maker set it",
	asks: "Does your processor let its clock be raised?",
	why: "Only some processors let it. A board that would allow it is then paid for in vain.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead: ["clockPlan", "processor", "processor.unlocked"],
	messages: {
		notAsked: () => "You do not plan to raise the processor's clock.",
		lets: () => "The processor lets its clock be raised.",
		open: () => "Your processor is still to be bought: take one that lets its clock be raised.",
		locked: () => "Your processor does not let its clock be raised, whatever the board.",
	},
	advice: { locked: () => "Leave the clock as it is, and save on the board; or take another processor." },
	check({ clockPlan, processor, "processor.unlocked": unlocked }) {
		if (clockPlan !== "done-before") return pass("notAsked");
		if (unlocked !== undefined) return unlocked ? pass("lets") : fail("locked");
		return processor === "have" ? cannotTell(["processor.unlocked"]) : pass("open");
	},
});
