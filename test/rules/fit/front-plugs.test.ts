import type { PcCase } from "../../../src/parts/case.ts";
import { frontPlugs } from "../../../src/rules/fit/front-plugs.ts";
import { testRule } from "../test-rule.ts";

const plugs = [
	{ plug: "USB 9-pin", count: 1 },
	{ plug: "USB 19-pin", count: 1 },
	{ plug: "USB-C 20-pin", count: 1 },
	{ plug: "sound", count: 1 },
] satisfies NonNullable<PcCase["frontPlugs"]>;
const headers = { usb2: 1, usb5: 1, typeC: [{ gbps: 10 }], frontAudio: true };
const slowUsb = [{ plug: "USB 9-pin" as const, count: 1 }];

testRule(frontPlugs, {
	fits: {
		"a header for each": [{ board: { headers }, case: { frontPlugs: plugs } }, "all"],
		"headers it does not need are not asked for": [{ board: {}, case: { frontPlugs: [] } }, "noPlugs"],
		"as many 9-pin headers as things that want one": [
			{
				board: { headers: { usb2: 5 } },
				case: { frontPlugs: slowUsb, hubUsesUsb2: true },
				cooler: { headersUsed: { usb2: 1 } },
				addInCards: [
					{ id: "airwave", name: "Airwave", usesUsb2: true },
					{ id: "fiddle", name: "Fiddle" },
				],
				lights: ["maker's own", "5 V three-pin"],
			},
			"all",
		],
		"a cable as fast as the header": [
			{ board: { headers }, case: { frontPlugs: [{ plug: "USB-C 20-pin", count: 1, gbps: 10 }] } },
			"all",
		],
		"how fast the header is, is not known": [
			{ board: { headers: { typeC: [{}] } }, case: { frontPlugs: [{ plug: "USB-C 20-pin", count: 1, gbps: 10 }] } },
			"all",
		],
		"the case still to be bought": [{ board: { headers }, case: "open" }, "open", { part: "case" }],
	},
	cautions: {
		"no front USB-C header": [
			{ board: { headers: { ...headers, typeC: [] } }, case: { frontPlugs: plugs } },
			"plan-around",
			"dead",
			{ dead: ["front USB-C (20-pin plug)"], plugs: 1 },
		],
		"lights without a header are no plugs of the case": [
			{
				board: { headers: { ...headers, typeC: [], lights: [] } },
				case: { frontPlugs: plugs },
				lights: ["5 V three-pin"],
			},
			"plan-around",
			"dead",
			{ dead: ["front USB-C (20-pin plug)"], plugs: 1 },
		],
		"one 19-pin plug too many, and no sound": [
			{
				board: { headers: { ...headers, frontAudio: false } },
				case: {
					frontPlugs: [
						{ plug: "USB 19-pin", count: 2 },
						{ plug: "sound", count: 1 },
					],
				},
			},
			"plan-around",
			"dead",
			{ dead: ["one of 2 fast front USB (19-pin plug)", "front sound"], plugs: 2 },
		],
		"two of three, and one of two": [
			{
				board: { headers: { ...headers, typeC: [{ gbps: 10 }], usb5: 1 } },
				case: {
					frontPlugs: [
						{ plug: "USB 19-pin", count: 3 },
						{ plug: "USB-C 20-pin", count: 2 },
					],
				},
			},
			"plan-around",
			"dead",
			{ dead: ["2 of 3 fast front USB (19-pin plug)", "one of 2 front USB-C (20-pin plug)"], plugs: 3 },
		],
		"both of one kind": [
			{ board: { headers: { ...headers, usb5: 0 } }, case: { frontPlugs: [{ plug: "USB 19-pin", count: 2 }] } },
			"plan-around",
			"dead",
			{ dead: ["2 x fast front USB (19-pin plug)"], plugs: 2 },
		],
		"dead for certain, though of another header nobody knows": [
			{ board: { headers: { typeC: [] } }, case: { frontPlugs: plugs } },
			"plan-around",
			"dead",
			{ dead: ["front USB-C (20-pin plug)"], plugs: 1 },
		],
		"one thing more than 9-pin headers": [
			{
				board: { headers: { usb2: 1 } },
				case: { frontPlugs: slowUsb, hubUsesUsb2: true },
			},
			"plan-around",
			"tooFewNinePin",
			{ wanted: 2, headers: 1 },
		],
		"no 9-pin header for one plug": [
			{ board: { headers: { usb2: 0 } }, case: { frontPlugs: slowUsb } },
			"plan-around",
			"tooFewNinePin",
			{ wanted: 1, headers: 0 },
		],
		"no plugs at the case, but a pump wants a 9-pin header": [
			{ board: { headers: { usb2: 0 } }, case: { frontPlugs: [] }, cooler: { headersUsed: { usb2: 1 } } },
			"plan-around",
			"tooFewNinePin",
			{ wanted: 1, headers: 0 },
		],
		"a plug stays dead, and 9-pin headers are short": [
			{
				board: { headers: { ...headers, typeC: [] } },
				case: { frontPlugs: plugs },
				cooler: { headersUsed: { usb2: 1 } },
			},
			"plan-around",
			"deadAndFewNinePin",
			{ dead: ["front USB-C (20-pin plug)"], wanted: 2, headers: 1 },
		],
		"a faster cable than the header": [
			{
				board: { headers: { typeC: [{ gbps: 5 }] } },
				case: { frontPlugs: [{ plug: "USB-C 20-pin", count: 1, gbps: 10 }] },
			},
			"good-to-know",
			"slower",
			{ plug: "front USB-C (20-pin plug)", cableGbps: 10, headerGbps: 5 },
		],
		"a faster cable than a 19-pin header gives": [
			{ board: { headers: { usb5: 1 } }, case: { frontPlugs: [{ plug: "USB 19-pin", count: 1, gbps: 10 }] } },
			"good-to-know",
			"slower",
			{ plug: "fast front USB (19-pin plug)", cableGbps: 10, headerGbps: 5 },
		],
	},
	cannotTell: {
		"the page names no headers": [
			{ board: {}, case: { frontPlugs: plugs } },
			["board.headers.usb2", "board.headers.usb5", "board.headers.typeC", "board.headers.frontAudio"],
			"unsure",
		],
		"one header is not known": [
			{ board: { headers: { usb2: 1, usb5: 1, typeC: [{}] } }, case: { frontPlugs: plugs } },
			["board.headers.frontAudio"],
			"unsure",
		],
		"the case's plugs are not known": [{ board: { headers }, case: {} }, ["case.frontPlugs"]],
		"nobody has said which case": [{ board: { headers } }, ["case"]],
	},
	needs: {
		"the case's plugs": [
			{
				case: {
					frontPlugs: [
						{ plug: "USB 9-pin", count: 2 },
						{ plug: "sound", count: 1 },
					],
				},
			},
			"Places for: 2 x slow front USB (9-pin plug), front sound.",
		],
		"and other parts that want a 9-pin header": [
			{ case: { frontPlugs: slowUsb, hubUsesUsb2: true } },
			"Places for: slow front USB (9-pin plug). With your other parts that makes 2 headers for 9-pin USB in all.",
		],
		"no plugs": [{ case: { frontPlugs: [] } }, null],
		"nobody has said": [{}, null],
	},
});
