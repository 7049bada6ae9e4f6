import { raiseClock } from "../../../src/rules/features/raise-clock.ts";
import { testRule } from "../test-rule.ts";

const lets = { raises: { processorClock: true } };
const locked = { raises: { processorClock: false } };

testRule(raiseClock, {
	fits: {
		"nobody has said": [{ board: locked }, "notAsked"],
		no: [{ board: locked, clockPlan: "no" }, "notAsked"],
		"maybe, and the board lets it": [{ board: lets, clockPlan: "maybe" }, "notAsked"],
		"maybe, and the page is silent": [{ board: {}, clockPlan: "maybe" }, "notAsked"],
		"done before, and both let it": [{ board: lets, clockPlan: "done-before", processor: { unlocked: true } }, "lets"],
		// No board cures it, so it is held against none.
		"a processor that does not let it, on a board that does": [
			{ board: lets, clockPlan: "done-before", processor: { unlocked: false } },
			"processorLocked",
		],
		"a processor that does not let it, which no board cures": [
			{ board: locked, clockPlan: "done-before", processor: { unlocked: false } },
			"processorLocked",
		],
		"done before, and nobody knows of the processor": [{ board: lets, clockPlan: "done-before" }, "lets"],
	},
	cautions: {
		"maybe, and the board does not let it": [{ board: locked, clockPlan: "maybe" }, "good-to-know", "lockedForMaybe"],
	},
	fails: {
		"done before, and the board does not let it": [
			{ board: locked, clockPlan: "done-before", processor: { unlocked: true } },
			"locked",
		],
		"the processor is still to be bought": [{ board: locked, clockPlan: "done-before", processor: "open" }, "locked"],
	},
	cannotTell: {
		"the page is silent": [
			{ board: {}, clockPlan: "done-before", processor: { unlocked: true } },
			["board.raises.processorClock"],
		],
		// With a processor that does not let it either the board would not be at fault.
		"the board does not let it, and the processor's page is silent": [
			{ board: locked, clockPlan: "done-before", processor: {} },
			["processor.unlocked"],
		],
	},
	needs: {
		"done before": [{ clockPlan: "done-before" }, "A chipset that lets the processor's clock be raised."],
		"a processor that does not let it": [{ clockPlan: "done-before", processor: { unlocked: false } }, null],
		maybe: [{ clockPlan: "maybe" }, null],
	},
});
