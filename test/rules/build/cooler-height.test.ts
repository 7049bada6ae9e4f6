import { coolerHeight } from "../../../src/rules/build/cooler-height.ts";
import { testRule } from "../test-rule.ts";

const pair = (heightMm: number, maxMm: number) => ({
	cooler: { kind: "air" as const, heightMm },
	case: { coolerMaxHeightMm: maxMm },
});

// The 2 mm are common practice, no source.
testRule(coolerHeight, {
	fits: {
		"just 2 mm to spare": [pair(158, 160), "low", { heightMm: 158, maxMm: 160 }],
		"just 2 mm to spare, without binary noise": [pair(158.1, 160.1), "low", { heightMm: 158.1, maxMm: 160.1 }],
		"a liquid cooler, whatever the case": [{ cooler: { kind: "liquid", heightMm: 58 } }, "liquid"],
		"a case to be bought to suit": [{ cooler: { kind: "air", heightMm: 165 }, case: "open" }, "noCase"],
		"no case": [{ cooler: { kind: "air" }, case: "none" }, "noCase"],
		"the cooler from the box": [{ cooler: "none", case: { coolerMaxHeightMm: 70 } }, "none", { part: "cooler" }],
	},
	cautions: {
		"less than 2 mm to spare": [pair(158.1, 160), "plan-around", "tight", { heightMm: 158.1, maxMm: 160 }],
		"exactly as high as there is room": [pair(160, 160), "plan-around", "tight", { heightMm: 160, maxMm: 160 }],
	},
	fails: {
		"a tenth higher": [pair(160.1, 160), "tooHigh", { heightMm: 160.1, maxMm: 160, overMm: 0.1 }],
		"a tower in a small case": [pair(165, 70), "tooHigh", { heightMm: 165, maxMm: 70, overMm: 95 }],
	},
	cannotTell: {
		"the kind is not known": [{ cooler: { heightMm: 158 }, case: { coolerMaxHeightMm: 160 } }, ["cooler.kind"]],
		"the case's page is silent": [{ cooler: { kind: "air", heightMm: 158 }, case: {} }, ["case.coolerMaxHeightMm"]],
		"both pages are silent": [{ cooler: { kind: "air" }, case: {} }, ["cooler.heightMm", "case.coolerMaxHeightMm"]],
		"nobody has said which case": [{ cooler: { kind: "air", heightMm: 158 } }, ["case"]],
		"nobody has said which cooler": [{ case: { coolerMaxHeightMm: 160 } }, ["cooler"]],
	},
});
