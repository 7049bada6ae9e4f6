import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, type Outcome, pass } from "../outcome.ts";

/** Whoever counts on the cooler from the processor's box needs a box with a cooler in it. */
export const coolerMissing = defineRule({
	id: "build/cooler-missing",
	scope: "build",
	label: "A cooler at all",
	wayOut: "a cooler",
	asks: "Is there a cooler for the processor?",
	why: "A processor gets too hot within seconds without a cooler. Not every processor's box has one in it.",
	source: "common-practice",
	severity: "plan-around",
	reads: ["cooler"],
	mayRead: ["processor.coolerInBox", "processor.name"],
	messages: {
		own: () => "You have a cooler for the processor.",
		toBuy: () => "You plan to buy a cooler to suit.",
		inBox: ({ processor }: { processor: string }) => `A cooler comes in the box of the ${processor}.`,
		notInBox: ({ processor }: { processor: string }) =>
			`You count on the cooler from the box, but the ${processor} comes without one.`,
		unknown: () => "Whether there is a cooler for the processor is not known.",
	},
	advice: {
		inBox: () => "It must be the whole box: a used processor, or one sold loose, often comes without its cooler.",
		notInBox: () => "Plan a cooler that lists your socket. Never switch on without one, not even for a moment.",
	},
	check(facts): Outcome {
		if (facts.cooler === "have") return pass("own");
		if (facts.cooler === "open") return pass("toBuy");
		const processor = facts["processor.name"] ?? "processor";
		const inBox = facts["processor.coolerInBox"];
		if (inBox) return pass("inBox", { processor });
		if (facts.cooler === "unknown") return cannotTell(["cooler"], "unknown");
		return inBox === false ? fail("notInBox", { processor }) : cannotTell(["processor.coolerInBox"], "unknown");
	},
});
