import { fanControl } from "../../../src/rules/features/fan-control.ts";
import { testRule } from "../test-rule.ts";

type Control = "4-pin PWM" | "3-pin voltage";
const [pwm, voltage]: readonly [Control[], Control[]] = [["4-pin PWM"], ["3-pin voltage"]];
const both = [...pwm, ...voltage];
const header = (name: string, control?: Control[], use: "pump" | "case" = "case") => ({
	name,
	use,
	...(control ? { control } : {}),
});
const board = (...fans: ReturnType<typeof header>[]) => ({
	headers: { fans: [{ name: "COOLER", use: "processor" as const, control: pwm }, ...fans] },
});

testRule(fanControl, {
	fits: {
		"nobody has said": [{ board: board(header("A", pwm)) }, "notAsked"],
		"no case fans": [{ board: board(header("A", pwm)), caseFans: 0 }, "notAsked"],
		"both ways": [{ board: board(header("A", both), header("B", both)), caseFans: 2 }, "any"],
		"the processor's header is the cooler's": [{ board: board(header("A", both)), caseFans: 1 }, "any"],
		"a header that stays empty is no matter": [
			{ board: board(header("A", both), header("B", pwm)), caseFans: 1 },
			"any",
		],
		"nor one that a fan for later takes": [
			{ board: board(header("A", both), header("B", pwm)), caseFans: 1, laterThings: ["fan"] },
			"any",
		],
		"a fan that shares has the ways of its header": [{ board: board(header("A", both)), caseFans: 2 }, "any"],
		"no header is left for them": [{ board: board(), caseFans: 2 }, "noHeader"],
	},
	cautions: {
		"4-pin fans only": [
			{ board: board(header("A", pwm)), caseFans: 1 },
			"good-to-know",
			"fourPinOnly",
			{ headers: ["A"], better: [] },
		],
		"one of two, and others are free": [
			{
				board: board(header("A", both), header("B", pwm), header("C", pwm), header("D", both), header("E")),
				caseFans: 2,
			},
			"good-to-know",
			"fourPinOnly",
			{ headers: ["B"], better: ["D"] },
		],
		"a free pump header is not advised": [
			{ board: board(header("A", pwm), header("P", both, "pump")), caseFans: 1 },
			"good-to-know",
			"fourPinOnly",
			{ headers: ["A"], better: [] },
		],
		"on the pump's header": [
			{ board: board(header("A", both), header("P", pwm, "pump")), caseFans: 2 },
			"good-to-know",
			"fourPinOnly",
			{ headers: ["P"], better: [] },
		],
		"two headers of one name are told apart": [
			{ board: board(header("A", both), header("A", pwm)), caseFans: 2 },
			"good-to-know",
			"fourPinOnly",
			{ headers: ["A (2)"], better: [] },
		],
		"fewer volts only": [
			{ board: board(header("A", voltage), header("B", both)), caseFans: 1 },
			"good-to-know",
			"voltageOnly",
			{ headers: ["A"], better: ["B"] },
		],
		"no way to slow a fan": [
			{ board: board(header("A", pwm), header("B", [])), caseFans: 2 },
			"good-to-know",
			"none",
			{ headers: ["B"], better: [] },
		],
		"one is known and one not": [
			{ board: board(header("A"), header("B", pwm)), caseFans: 2 },
			"good-to-know",
			"fourPinOnly",
			{ headers: ["B"], better: [] },
		],
	},
	cannotTell: {
		"the page is silent": [{ board: {}, caseFans: 1 }, ["board.headers.fans"]],
		"how a header slows fans is not known": [
			{ board: board(header("A", both), header("B"), header("C")), caseFans: 2 },
			["board.headers.fans"],
			"unsure",
			{ headers: ["B"] },
		],
	},
});
