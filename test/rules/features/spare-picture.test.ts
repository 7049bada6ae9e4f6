import type { Board } from "../../../src/parts/board.ts";
import { sparePicture } from "../../../src/rules/features/spare-picture.ts";
import { testRule } from "../test-rule.ts";

const both = { graphicsCard: {}, processor: { graphics: true } } as const;
const bare = { pictureSockets: [], rearUsb: [] } satisfies Partial<Board>;
const oval = (modes?: string[]): Partial<Board> => ({
	pictureSockets: [],
	rearUsb: [{ plug: "C", count: 1, ...(modes ? { modes } : {}) }],
});

testRule(sparePicture, {
	fits: {
		"no card: the picture is judged elsewhere": [
			{ board: bare, graphicsCard: "none", processor: { graphics: true } },
			"notAsked",
		],
		"nobody has said whether there will be a card": [{ board: bare, processor: { graphics: true } }, "notAsked"],
		"the processor has no graphics": [{ board: bare, graphicsCard: {}, processor: { graphics: false } }, "notAsked"],
		"the processor is still to be bought": [{ board: bare, graphicsCard: {}, processor: "open" }, "notAsked"],
		"there will be no processor": [{ board: bare, graphicsCard: {}, processor: "none" }, "notAsked"],
		"a picture socket": [{ board: { pictureSockets: ["HDMI"] }, ...both }, "spareOfYours"],
		"a card still to be bought": [
			{ board: { pictureSockets: ["VGA"] }, graphicsCard: "open", processor: { graphics: true } },
			"spareOfYours",
		],
		"a picture over USB-C": [{ board: oval(["picture"]), ...both }, "spareOfYours"],
		"a picture socket, whatever the processor has": [
			{ board: { pictureSockets: ["HDMI"] }, graphicsCard: {}, processor: {} },
			"spare",
		],
	},
	cautions: {
		"no picture socket": [{ board: bare, ...both }, "good-to-know", "noSocket"],
		"no picture socket, and a card still to be bought": [
			{ board: bare, graphicsCard: "open", processor: { graphics: true } },
			"good-to-know",
			"noSocket",
		],
		"USB-C without a picture": [{ board: oval(["charging 15 W"]), ...both }, "good-to-know", "noSocket"],
	},
	cannotTell: {
		"the board's page is silent": [{ board: {}, ...both }, ["board.pictureSockets"], "unsure"],
		"what the USB-C socket can do is not known": [{ board: oval(), ...both }, ["board.rearUsb"], "unsure"],
		"the USB sockets are not known": [{ board: { pictureSockets: [] }, ...both }, ["board.rearUsb"], "unsure"],
		"the processor's page is silent": [
			{ board: bare, graphicsCard: {}, processor: {} },
			["processor.graphics"],
			"unsure",
		],
		"nobody has said which processor, and the board's page is silent": [
			{ board: {}, graphicsCard: {} },
			["processor", "board.pictureSockets"],
			"unsure",
		],
	},
});
