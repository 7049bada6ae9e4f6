import { heavyCooler } from "../../../src/rules/build/heavy-cooler.ts";
import { testRule } from "../test-rule.ts";

const air = { kind: "air" as const };

// 1000 g and 100 mm are own conventions.
testRule(heavyCooler, {
	fits: {
		"just 1000 g": [{ cooler: { ...air, weightG: 1000 } }, "light", { weightG: 1000 }],
		"low, and its weight not known": [{ cooler: { ...air, heightMm: 100 } }, "low", { heightMm: 100 }],
		"a liquid cooler, however heavy": [{ cooler: { kind: "liquid", weightG: 1350 } }, "liquid"],
		"the cooler from the box": [{ cooler: "none" }, "none", { part: "cooler" }],
		"to be bought to suit": [{ cooler: "open" }, "open", { part: "cooler" }],
	},
	fails: {
		"one gram more": [{ cooler: { ...air, weightG: 1001 } }, "heavy", { weightG: 1001 }],
		"low and heavy: the weight counts": [
			{ cooler: { ...air, weightG: 1080, heightMm: 90 } },
			"heavy",
			{ weightG: 1080 },
		],
	},
	cannotTell: {
		"a tower of which no weight is known": [{ cooler: { ...air, heightMm: 101 } }, ["cooler.weightG"]],
		"nothing but its kind is known": [{ cooler: air }, ["cooler.weightG"]],
		"the kind is not known": [{ cooler: { weightG: 1350 } }, ["cooler.kind"]],
		"nobody has said which cooler": [{}, ["cooler"]],
	},
});
