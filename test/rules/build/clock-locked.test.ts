import { clockLocked } from "../../../src/rules/build/clock-locked.ts";
import { testRule } from "../test-rule.ts";

testRule(clockLocked, {
	fits: {
		"nobody plans it": [{ processor: { unlocked: false } }, "notAsked"],
		"perhaps one day": [{ clockPlan: "maybe", processor: { unlocked: false } }, "notAsked"],
		"the processor lets it": [{ clockPlan: "done-before", processor: { unlocked: true } }, "lets"],
		"still to be bought": [{ clockPlan: "done-before", processor: "unknown" }, "open"],
	},
	fails: { "the processor does not let it": [{ clockPlan: "done-before", processor: { unlocked: false } }, "locked"] },
	cannotTell: {
		"its page does not say": [{ clockPlan: "done-before", processor: { socket: "Kettle 7" } }, ["processor.unlocked"]],
	},
});
