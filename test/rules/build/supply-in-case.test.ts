import { supplyInCase } from "../../../src/rules/build/supply-in-case.ts";
import { testRule } from "../test-rule.ts";

type Form = "ATX" | "SFX" | "SFX-L" | "TFX";

const pair = (form: Form, lengthMm: number, supplyForms: readonly Form[], supplyMaxLengthMm: number) => ({
	supply: { form, lengthMm },
	case: { supplyForms: [...supplyForms], supplyMaxLengthMm },
});

testRule(supplyInCase, {
	fits: {
		"exactly as long as there is room": [
			pair("ATX", 160, ["ATX"], 160),
			"fits",
			{ form: "ATX", lengthMm: 160, maxMm: 160 },
		],
		"the shorter kind in a place for the longer": [
			pair("SFX", 100, ["SFX-L"], 130),
			"fits",
			{ form: "SFX", lengthMm: 100, maxMm: 130 },
		],
		"its own place before a bracket": [
			pair("SFX", 100, ["ATX", "SFX"], 160),
			"fits",
			{ form: "SFX", lengthMm: 100, maxMm: 160 },
		],
		"to be bought to suit": [{ supply: "open", case: { supplyForms: ["SFX"] } }, "open", { part: "supply" }],
		"a case to be bought to suit": [{ supply: { form: "ATX", lengthMm: 160 }, case: "open" }, "open", { part: "case" }],
	},
	cautions: {
		"a small one in an ATX place": [pair("SFX", 100, ["ATX"], 160), "plan-around", "withBracket", { form: "SFX" }],
		"the longer small one in an ATX place": [
			pair("SFX-L", 130, ["ATX"], 160),
			"plan-around",
			"withBracket",
			{ form: "SFX-L" },
		],
		"the longer kind where there is just room": [
			pair("SFX-L", 130, ["SFX"], 130),
			"plan-around",
			"longerKind",
			{ form: "SFX-L", lengthMm: 130, maxMm: 130 },
		],
	},
	fails: {
		"a millimetre longer": [pair("ATX", 161, ["ATX"], 160), "tooLong", { lengthMm: 161, maxMm: 160, overMm: 1 }],
		"the longer kind where there is no room": [
			pair("SFX-L", 130, ["SFX"], 129.9),
			"tooLong",
			{ lengthMm: 130, maxMm: 129.9, overMm: 0.1 },
		],
		"a large one in a small place": [
			pair("ATX", 140, ["SFX", "SFX-L"], 200),
			"otherForm",
			{ form: "ATX", forms: ["SFX", "SFX-L"] },
		],
		"a flat one in an ATX place, lengths not known": [
			{ supply: { form: "TFX" }, case: { supplyForms: ["ATX"] } },
			"otherForm",
			{ form: "TFX", forms: ["ATX"] },
		],
		"a case without a place": [pair("ATX", 140, [], 200), "otherForm", { form: "ATX", forms: [] }],
	},
	cannotTell: {
		"the supply's form is not known": [{ supply: {}, case: { supplyForms: ["ATX"] } }, ["supply.form"]],
		"the case's forms are not known": [{ supply: { form: "ATX" }, case: {} }, ["case.supplyForms"]],
		"neither length is known": [
			{ supply: { form: "ATX" }, case: { supplyForms: ["ATX"] } },
			["supply.lengthMm", "case.supplyMaxLengthMm"],
		],
		"the room is not known": [
			{ supply: { form: "ATX", lengthMm: 160 }, case: { supplyForms: ["ATX"] } },
			["case.supplyMaxLengthMm"],
		],
		"its length is not known": [
			{ supply: { form: "ATX" }, case: { supplyForms: ["ATX"], supplyMaxLengthMm: 160 } },
			["supply.lengthMm"],
		],
		"nobody has said which case": [{ supply: { form: "ATX" } }, ["case"]],
	},
});
