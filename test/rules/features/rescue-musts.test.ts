import { rescueAids } from "../../../src/parts/wants.ts";
import { rescueMusts } from "../../../src/rules/features/rescue-musts.ts";
import { testRule } from "../test-rule.ts";

const full = { flashWithoutProcessor: true, faultDisplay: "lights", resetAtBack: true } as const;
const bare = { flashWithoutProcessor: false, faultDisplay: "none", resetAtBack: false } as const;

testRule(rescueMusts, {
	fits: {
		"nobody has said": [{ board: { recovery: bare } }, "notAsked"],
		"none that must be there": [{ board: {}, rescueMusts: [] }, "notAsked"],
		"all of them": [{ board: { recovery: full }, rescueMusts: rescueAids }, "has"],
		"digits show it as well": [
			{ board: { recovery: { faultDisplay: "digits" } }, rescueMusts: ["fault-display"] },
			"has",
		],
		"what is not a must may be missing": [
			{ board: { recovery: { ...bare, resetAtBack: true } }, rescueMusts: ["reset-at-back"] },
			"has",
		],
	},
	fails: {
		"none of them": [
			{ board: { recovery: bare }, rescueMusts: rescueAids },
			"lacks",
			{
				aids: [
					"lights or digits that name a fault",
					"firmware updates without a processor",
					"a reset button at the back",
				],
			},
		],
		"one missing, of another nobody knows": [
			{ board: { recovery: { resetAtBack: false } }, rescueMusts: ["fault-display", "reset-at-back"] },
			"lacks",
			{ aids: ["a reset button at the back"] },
		],
	},
	cannotTell: {
		"the page is silent": [
			{ board: {}, rescueMusts: rescueAids },
			["board.recovery.faultDisplay", "board.recovery.flashWithoutProcessor", "board.recovery.resetAtBack"],
		],
		"one is there, of another nobody knows": [
			{ board: { recovery: { resetAtBack: true } }, rescueMusts: ["reset-at-back", "flash-without-processor"] },
			["board.recovery.flashWithoutProcessor"],
		],
	},
	needs: {
		"two musts": [
			{ rescueMusts: ["fault-display", "reset-at-back"] },
			"It must have: lights or digits that name a fault; a reset button at the back.",
		],
		"nobody has said": [{}, null],
	},
});
