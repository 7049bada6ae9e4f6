import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, pass } from "../outcome.ts";

/** Finding errors in memory takes three: the board, the processor, and modules made for it. This looks at the last two. */
export const errorCorrection = defineRule({
	id: "build/error-correction",
	scope: "build",
	label: "Error-correcting memory in your parts",
	wayOut: "memory that finds no errors",
	asks: "Do your processor and memory correct errors, as you wished?",
	why: "Modules without the extra chips find no errors, whatever the board. On-chip correction is not the same.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead: ["wish.features/error-correction", "memory.errorCorrection", "memory", "processor.memory.errorCorrection"],
	messages: {
		notAsked: () => "You have not asked for error-correcting memory.",
		both: () => "Processor and memory both find errors in memory.",
		open: () => "Your memory is still to be bought: look for modules sold as ECC.",
		kit: () => "Your memory does not find its errors, whatever the board: it has no or only on-chip correction.",
		processor: () => "Your processor does nothing with error-correcting memory, whatever the board.",
	},
	advice: {
		kit: () => "Take modules sold as ECC, of the kind the board's memory list names, or give the wish up.",
		processor: () => "Take another processor, or give the wish up: money for it would be lost.",
	},
	check(facts) {
		const wish = facts["wish.features/error-correction"];
		if (!wish || wish === "dont-mind") return pass("notAsked");
		const [byProcessor, byKit] = [facts["processor.memory.errorCorrection"], facts["memory.errorCorrection"]];
		if (byProcessor === false) return fail("processor");
		if (byKit === "none" || byKit === "on-chip") return fail("kit");
		if (facts.memory !== "have") return pass("open");
		const missing = [
			...(byProcessor === undefined ? ["processor.memory.errorCorrection"] : []),
			...(byKit === undefined ? ["memory.errorCorrection"] : []),
		];
		return missing.length > 0 ? cannotTell(missing) : pass("both");
	},
});
