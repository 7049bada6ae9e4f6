import { describe, expect, test } from "vitest";
import { caseFans } from "../../../src/rules/features/case-fans.ts";
import { testRule } from "../test-rule.ts";

type Use = "processor" | "pump" | "case";
const board = (uses: readonly Use[], amps?: number) => ({
	headers: {
		fans: uses.map((use, index) => ({ name: `FAN_${index + 1}`, use, ...(amps === undefined ? {} : { amps }) })),
	},
});
/** Headers for case fans that give so many A, beside the processor's. */
const boardOf = (...amps: number[]) => ({
	headers: {
		fans: [
			{ name: "COOLER", use: "processor" as const },
			...amps.map((one, index) => ({ name: `FAN_${index + 1}`, use: "case" as const, amps: one })),
		],
	},
});
const usual = board(["processor", "pump", "case", "case"], 2);

testRule(caseFans, {
	fits: {
		"nobody has said": [{ board: board([]) }, "notAsked"],
		"no case fans": [{ board: {}, caseFans: 0 }, "notAsked"],
		"as many headers as fans, the pump's among them": [
			{ board: usual, caseFans: 3, cooler: { kind: "air" } },
			"enough",
			{ fans: 3, headers: 3 },
		],
		"a liquid cooler takes the pump's": [
			{ board: usual, caseFans: 2, cooler: { kind: "liquid" } },
			"enough",
			{ fans: 2, headers: 2 },
		],
		"and enough for later": [
			{ board: usual, caseFans: 1, laterThings: ["fan", "memory", "fan"] },
			"enough",
			{ fans: 1, headers: 3 },
		],
		"a second processor header takes the cooler's second fan": [
			{ board: board(["processor", "processor", "case"]), caseFans: 1, cooler: { headersUsed: { fan: 2 } } },
			"enough",
			{ fans: 1, headers: 1 },
		],
		"none now, and one for later": [
			{ board: board(["processor", "case"]), caseFans: 0, laterThings: ["fan"] },
			"enough",
			{ fans: 0, headers: 1 },
		],
	},
	// That usual fans take up to 0.3 A is from memory; 1 A for a header that says nothing is common practice.
	cautions: {
		"one fan more than headers": [
			{ board: usual, caseFans: 4, cooler: { kind: "air" } },
			"plan-around",
			"splitter",
			{ fans: 4, headers: 3, onOne: 2, amps: 2 },
		],
		"one more beside a liquid cooler": [
			{ board: usual, caseFans: 3, cooler: { kind: "liquid" } },
			"plan-around",
			"splitter",
			{ fans: 3, headers: 2, onOne: 2, amps: 2 },
		],
		"the cooler's second fan takes one": [
			{ board: board(["processor", "case", "case"]), caseFans: 2, cooler: { headersUsed: { fan: 2 } } },
			"plan-around",
			"splitter",
			{ fans: 2, headers: 1, onOne: 2, amps: 1 },
		],
		"no header for the pump, so it takes a case fan's": [
			{ board: board(["processor", "case", "case"], 2), caseFans: 2, cooler: { headersUsed: { fan: 1, pump: 1 } } },
			"plan-around",
			"splitter",
			{ fans: 2, headers: 1, onOne: 2, amps: 2 },
		],
		"only the pump's is left, and gives what it says": [
			{ board: board(["processor", "pump"], 3), caseFans: 2, cooler: { kind: "air" } },
			"plan-around",
			"splitter",
			{ fans: 2, headers: 1, onOne: 2, amps: 3 },
		],
		"three usual fans on a header that says nothing": [
			{ board: board(["processor", "case"]), caseFans: 3 },
			"plan-around",
			"splitter",
			{ fans: 3, headers: 1, onOne: 3, amps: 1 },
		],
		"four are more than it is sure to feed": [
			{ board: board(["processor", "case"]), caseFans: 4 },
			"plan-around",
			"tooManyShare",
			{ fans: 4, headers: 1, onOne: 4, amps: 1 },
		],
		"two on a header that gives just enough, one on a weaker": [
			{ board: boardOf(0.6, 0.5), caseFans: 3 },
			"plan-around",
			"splitter",
			{ fans: 3, headers: 2, onOne: 2, amps: 0.6 },
		],
		"two on a header that gives a little less": [
			{ board: boardOf(0.59, 0.5), caseFans: 3 },
			"plan-around",
			"tooManyShare",
			{ fans: 3, headers: 2, onOne: 2, amps: 0.59 },
		],
		"those for later do not count on a splitter of today": [
			{ board: board(["processor", "case"]), caseFans: 3, laterThings: ["fan", "fan"] },
			"plan-around",
			"splitter",
			{ fans: 3, headers: 1, onOne: 3, amps: 1 },
		],
		"no header is left": [
			{ board: board(["processor"]), caseFans: 1, laterThings: ["fan"] },
			"plan-around",
			"hub",
			{ fans: 1 },
		],
		"no header is left, and the case brings a hub": [
			{ board: board(["processor"]), caseFans: 1, case: { hubUsesUsb2: true } },
			"plan-around",
			"hub",
			{ fans: 1, ownHub: true },
		],
		"the case's hub is known to take no 9-pin header, so nobody knows of any": [
			{ board: board(["processor"]), caseFans: 1, case: { hubUsesUsb2: false } },
			"plan-around",
			"hub",
			{ fans: 1 },
		],
		"four are too many to share, and the case brings a hub": [
			{ board: board(["processor", "case"]), caseFans: 4, case: { hubUsesUsb2: true } },
			"plan-around",
			"tooManyShare",
			{ fans: 4, headers: 1, onOne: 4, amps: 1, ownHub: true },
		],
		"none for later, and the case brings a hub": [
			{ board: board(["processor"]), laterThings: ["fan"], case: { hubUsesUsb2: true } },
			"good-to-know",
			"noReserveHub",
			{ fans: 0, headers: 0, later: 1, ownHub: true },
		],
		"enough now, and too few for later": [
			{ board: usual, caseFans: 3, laterThings: ["fan"] },
			"good-to-know",
			"noReserve",
			{ fans: 3, headers: 3, later: 1, onOne: 2, amps: 2 },
		],
		"enough now, and too many for later to share": [
			{ board: board(["processor", "case"]), caseFans: 1, laterThings: ["fan", "fan", "fan"] },
			"good-to-know",
			"noReserveHub",
			{ fans: 1, headers: 1, later: 3 },
		],
		"none now, and no header for later": [
			{ board: board(["processor"]), laterThings: ["fan", "fan"] },
			"good-to-know",
			"noReserveHub",
			{ fans: 0, headers: 0, later: 2 },
		],
	},
	cannotTell: { "the page is silent": [{ board: {}, caseFans: 1 }, ["board.headers.fans"]] },
	needs: {
		"one fan": [{ caseFans: 1 }, "1 header for case fans."],
		"and one for later": [{ caseFans: 2, laterThings: ["fan"] }, "3 headers for case fans, 1 of them for later."],
		"nobody has said": [{}, null],
	},
});

describe("what hangs on one header, in words", () => {
	test("a splitter is advised with the sum of usual fans", () => {
		for (const messageId of ["splitter", "noReserve"])
			expect(caseFans.advice?.[messageId]?.({ onOne: 3, amps: 1 })).toContain(
				"3 usual fans take at most 0.9 A together, and one header gives 1 A.",
			);
	});

	test.each(["hub", "tooManyShare", "noReserveHub", "splitter", "noReserve"])(
		"%s: the case's own hub is asked for first, where it has one",
		(messageId) => {
			const advice = (more: object) => caseFans.advice?.[messageId]?.({ onOne: 2, amps: 1, ...more });
			expect(advice({ ownHub: true })).toMatch(/^Look first whether the hub of your case takes them\. /);
			expect(advice({})).not.toContain("hub of your case");
		},
	);

	test("a hub is advised where they take more", () => {
		expect(caseFans.messages["tooManyShare"]?.({ fans: 5, headers: 2, onOne: 4, amps: 1 })).toBe(
			"5 case fans want a header each. Only 2 headers are left. 4 usual fans take at most 1.2 A together, and one header gives 1 A.",
		);
		expect(caseFans.advice?.["tooManyShare"]?.({ onOne: 4, amps: 1 })).toContain("Take a fan hub fed by the supply");
	});
});
