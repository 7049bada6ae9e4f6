import { picture } from "../../../src/rules/fit/picture.ts";
import { testRule } from "../test-rule.ts";

const withoutCard = { graphicsCard: "none", processor: { graphics: true } } as const;

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
		"a socket for each screen": [
			{ board: { pictureSockets: ["HDMI", "DisplayPort"] }, ...withoutCard, screens: ["DisplayPort", "HDMI"] },
			"socket",
			{ sockets: ["HDMI", "DisplayPort"] },
		],
		"no screen yet": [
			{ board: { pictureSockets: ["HDMI"] }, ...withoutCard, screens: [] },
			"socket",
			{ sockets: ["HDMI"] },
		],
		"with a card the screens are the card's": [
			{ board: { pictureSockets: ["HDMI"] }, graphicsCard: {}, processor: { graphics: true }, screens: ["VGA", "DVI"] },
			"card",
		],
		"nobody has said of a card, so nothing is said of the screens": [
			{ board: { pictureSockets: ["HDMI"] }, processor: { graphics: true }, screens: ["VGA"] },
			"socket",
			{ sockets: ["HDMI"] },
		],
	},
	cautions: {
		"one screen more than sockets": [
			{ board: { pictureSockets: ["HDMI", "DisplayPort"] }, ...withoutCard, screens: ["HDMI", "DisplayPort", "HDMI"] },
			"plan-around",
			"tooFewSockets",
			{ screens: 3, sockets: 2 },
		],
		"two screens and one socket": [
			{ board: { pictureSockets: ["HDMI"] }, ...withoutCard, screens: ["HDMI", "HDMI"] },
			"plan-around",
			"tooFewSockets",
			{ screens: 2, sockets: 1 },
		],
		"a screen of another shape": [
			{ board: { pictureSockets: ["HDMI", "DisplayPort"] }, ...withoutCard, screens: ["HDMI", "DVI"] },
			"plan-around",
			"otherShape",
			{ screens: ["DVI"], sockets: ["DisplayPort"] },
		],
		"two screens of one shape, one such socket": [
			{ board: { pictureSockets: ["HDMI", "DisplayPort"] }, ...withoutCard, screens: ["HDMI", "HDMI"] },
			"plan-around",
			"otherShape",
			{ screens: ["HDMI"], sockets: ["DisplayPort"] },
		],
		"two screens of other shapes, one of them VGA": [
			{ board: { pictureSockets: ["HDMI", "DisplayPort"] }, ...withoutCard, screens: ["VGA", "USB-C"] },
			"plan-around",
			"otherShape",
			{ screens: ["VGA", "USB-C"], sockets: ["HDMI", "DisplayPort"] },
		],
		"a VGA screen": [
			{ board: { pictureSockets: ["HDMI"] }, ...withoutCard, screens: ["VGA"] },
			"plan-around",
			"vga",
			{ sockets: ["HDMI"] },
		],
	},
	fails: {
		"no socket at all for a screen": [{ board: { pictureSockets: [] }, ...withoutCard, screens: ["HDMI"] }, "noSocket"],
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
		"no card, and two screens": [
			{ ...withoutCard, screens: ["HDMI", "DVI"] },
			"Picture sockets at the back for your screens (HDMI, DVI), because you have no graphics card.",
		],
		"no card and no graphics in the processor": [{ graphicsCard: "none", processor: { graphics: false } }, null],
		"a card": [{ graphicsCard: {} }, null],
		"nobody has said": [{}, null],
	},
});
