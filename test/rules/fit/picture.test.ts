import { picture } from "../../../src/rules/fit/picture.ts";
import { testRule } from "../test-rule.ts";

testRule(picture, {
	fits: {
		"a card": [{ board: { pictureSockets: [] }, graphicsCard: {} }, "card"],
		"a card not chosen yet": [{ board: {}, graphicsCard: "open" }, "card"],
		"a socket at the back": [
			{ board: { pictureSockets: ["HDMI"] }, graphicsCard: "none", processor: { graphics: true } },
			"socket",
			{ sockets: ["HDMI"] },
		],
		"two sockets of one kind are named once": [
			{
				board: { pictureSockets: ["HDMI", "DisplayPort", "HDMI"] },
				graphicsCard: "none",
				processor: { graphics: true },
			},
			"socket",
			{ sockets: ["HDMI", "DisplayPort"] },
		],
		"whether or not there will be a card": [
			{ board: { pictureSockets: ["VGA"] }, processor: { graphics: true } },
			"socket",
			{ sockets: ["VGA"] },
		],
		"a processor without graphics, which no board cures": [
			{ board: { pictureSockets: [] }, graphicsCard: "none", processor: { graphics: false } },
			"notTheBoard",
		],
	},
	fails: {
		"no card and no socket": [
			{ board: { pictureSockets: [] }, graphicsCard: "none", processor: { graphics: true } },
			"noSocket",
		],
	},
	cannotTell: {
		"nobody has said whether there will be a card": [
			{ board: { pictureSockets: [] }, processor: { graphics: true } },
			["graphicsCard"],
			"unknown",
		],
		"the board's page is silent": [
			{ board: {}, graphicsCard: "none", processor: { graphics: true } },
			["board.pictureSockets"],
			"unknown",
		],
		"the processor's page is silent": [
			{ board: { pictureSockets: ["HDMI"] }, graphicsCard: "none", processor: {} },
			["processor.graphics"],
			"unknown",
		],
		// With graphics in the processor the board would be at fault, without them it would not.
		"no socket, and the processor's page is silent": [
			{ board: { pictureSockets: [] }, graphicsCard: "none", processor: {} },
			["processor.graphics"],
			"unknown",
		],
		"both pages are silent": [
			{ board: {}, graphicsCard: "none", processor: {} },
			["processor.graphics", "board.pictureSockets"],
			"unknown",
		],
		"nobody has said which processor": [
			{ board: { pictureSockets: ["HDMI"] }, graphicsCard: "none" },
			["processor.graphics"],
			"unknown",
		],
	},
	needs: {
		"no card": [
			{ graphicsCard: "none", processor: { graphics: true } },
			"A picture socket at the back (HDMI or DisplayPort), because you have no graphics card.",
		],
		"no card, processor open": [
			{ graphicsCard: "none", processor: "open" },
			"A picture socket at the back (HDMI or DisplayPort), because you have no graphics card.",
		],
		"no card and no graphics in the processor": [{ graphicsCard: "none", processor: { graphics: false } }, null],
		"a card": [{ graphicsCard: {} }, null],
		"nobody has said": [{}, null],
	},
});
