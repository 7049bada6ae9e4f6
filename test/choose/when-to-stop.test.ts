import { describe, expect, test } from "vitest";
import { isWorthAsking, mostAsked, type OpenWorth, whyStopped } from "../../src/choose/when-to-stop.ts";

const sure = () => true;
const unsure = () => false;
const open = (gain: number | null, isShort = true): OpenWorth => ({ gain, isShort, changesTheLeader: gain !== 0 });

describe("a short walk stops", () => {
	test.each<[string, readonly OpenWorth[], number, () => boolean, ReturnType<typeof whyStopped>]>([
		["nothing is left", [], 3, unsure, "nothing-changes-the-lead"],
		["nothing changes the lead", [open(0), open(0, false)], 3, unsure, "nothing-changes-the-lead"],
		["nothing changes the lead, at the limit too", [open(0)], mostAsked, sure, "nothing-changes-the-lead"],
		["the limit is reached", [open(9)], mostAsked, unsure, "enough-asked"],
		["one below the limit", [open(9)], mostAsked - 1, sure, null],
		["half a point is to be gained", [open(0.5)], 3, sure, null],
		["less is, and the lead is sure", [open(0.49)], 3, sure, "little-to-gain"],
		["less is, and the lead is not sure", [open(0.49)], 3, unsure, null],
		["less is, and by no question of the short walk", [open(0.49, false)], 3, unsure, "little-to-gain"],
		["half a point is, by a question of the long walk", [open(0.5, false)], 3, sure, null],
		["something cannot be valued", [open(null)], 3, sure, null],
		["only what the long walk asks cannot be valued", [open(null, false)], 3, unsure, "little-to-gain"],
	])("or not where %s", (_, questions, dealtWith, leadIsSure, why) => {
		expect(whyStopped(questions, dealtWith, leadIsSure)).toBe(why);
	});
});

test.each<[number | null, boolean, boolean]>([
	[0, true, false],
	[0.01, true, true],
	[0.49, false, false],
	[0.5, false, true],
	[null, true, true],
	[null, false, false],
])("a question worth %j, marked for the short walk: %j, is asked: %j", (gain, isShort, asked) => {
	expect(isWorthAsking(open(gain, isShort))).toBe(asked);
});
