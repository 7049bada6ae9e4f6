import { rearUsbC } from "../../../src/rules/features/rear-usb-c.ts";
import { testRule } from "../test-rule.ts";

const wish = (strength: "must" | "would-like" | "dont-mind") => ({ wishes: { "features/rear-usb-c": strength } });
const flatOnly = { rearUsb: [{ plug: "A" as const, count: 6 }] };

testRule(rearUsbC, {
	fits: {
		"one socket": [
			{
				board: {
					rearUsb: [
						{ plug: "A", count: 4 },
						{ plug: "C", count: 1 },
					],
				},
				...wish("must"),
			},
			"has",
			{ count: 1 },
		],
		"several rows are added up": [
			{
				board: {
					rearUsb: [
						{ plug: "C", count: 2, gbps: 10 },
						{ plug: "C", count: 1 },
					],
				},
				...wish("would-like"),
			},
			"has",
			{ count: 3 },
		],
		"not wished for": [{ board: flatOnly, ...wish("dont-mind") }, "notAsked"],
		"nobody has said": [{ board: flatOnly }, "notAsked"],
	},
	cautions: {
		"would be nice, and the page is silent": [{ board: {}, ...wish("would-like") }, "good-to-know", "silent"],
		"would be nice": [{ board: flatOnly, ...wish("would-like") }, "good-to-know", "wouldLike"],
	},
	fails: {
		"a must": [{ board: flatOnly, ...wish("must") }, "lacks"],
		"a must, and no socket at all": [{ board: { rearUsb: [] }, ...wish("must") }, "lacks"],
	},
	cannotTell: {
		"a must, and the page is silent": [{ board: {}, ...wish("must") }, ["board.rearUsb"]],
	},
	needs: {
		"a must": [wish("must"), "At least one USB-C socket at the back."],
		"would be nice": [wish("would-like"), "A USB-C socket at the back, if it costs little."],
		"not wished for": [wish("dont-mind"), null],
		"nobody has said": [{}, null],
	},
});
