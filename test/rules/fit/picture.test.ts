import type { Board } from "../../../src/parts/board.ts";
import { picture } from "../../../src/rules/fit/picture.ts";
import { testRule } from "../test-rule.ts";

/** A board with no picture socket of its own, and USB-C sockets at the back. */
const oval = (count: number, modes?: string[], more: Partial<Board> = { pictureSockets: [] }): Partial<Board> => ({
	...more,
	rearUsb: [
		{ plug: "A", count: 4, modes: ["no picture here"] },
		{ plug: "C", count, ...(modes ? { modes } : {}) },
	],
});
const bare: Partial<Board> = { pictureSockets: [], rearUsb: [{ plug: "A", count: 4 }] };

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
		"a screen that takes USB-C": [
			{ board: oval(1, ["USB 40Gbps", "picture"]), ...withoutCard, screens: ["USB-C"] },
			"socket",
			{ sockets: ["USB-C"] },
		],
		"a screen that takes USB-C, and the other sockets are not known": [
			{ board: oval(1, ["DP 1.4"], {}), ...withoutCard, screens: ["USB-C"] },
			"socket",
			{ sockets: ["USB-C"] },
		],
		"USB-C in both lists is one socket, and one more than is listed there": [
			{
				board: oval(2, ["DisplayPort"], { pictureSockets: ["HDMI", "USB-C"] }),
				...withoutCard,
				screens: ["HDMI", "USB-C", "USB-C"],
			},
			"socket",
			{ sockets: ["HDMI", "USB-C"] },
		],
		"a picture over USB-C, whether or not there will be a card": [
			{ board: oval(1, ["picture"]), processor: { graphics: true } },
			"socket",
			{ sockets: ["USB-C"] },
		],
		"nobody has said of a card, so nothing is said of the screens": [
			{ board: { pictureSockets: ["HDMI"] }, processor: { graphics: true }, screens: ["VGA"] },
			"socket",
			{ sockets: ["HDMI"] },
		],
	},
	cautions: {
		"a picture over USB-C only": [
			{ board: oval(1, ["USB 40Gbps", "picture", "charging 15 W"]), ...withoutCard },
			"plan-around",
			"usbC",
		],
		"USB-C among the picture sockets only": [
			{ board: { pictureSockets: ["USB-C"] }, ...withoutCard, screens: [] },
			"plan-around",
			"usbC",
		],
		"a picture over USB-C, and the other sockets are not known": [
			{ board: oval(1, ["DisplayPort 1.4"], {}), ...withoutCard, screens: ["HDMI", "HDMI"] },
			"plan-around",
			"usbC",
		],
		"USB-C only, and a screen of another shape": [
			{ board: oval(1, ["picture"]), ...withoutCard, screens: ["HDMI"] },
			"plan-around",
			"otherShape",
			{ adapters: ["USB-C to HDMI"] },
		],
		"a USB-C socket counted once, and one screen more": [
			{
				board: oval(1, ["picture"], { pictureSockets: ["HDMI", "USB-C"] }),
				...withoutCard,
				screens: ["HDMI", "USB-C", "USB-C"],
			},
			"plan-around",
			"tooFewSockets",
			{ screens: 3, sockets: 2 },
		],
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
			{ adapters: ["DisplayPort to DVI"] },
		],
		"two screens of one shape, one such socket": [
			{ board: { pictureSockets: ["HDMI", "DisplayPort"] }, ...withoutCard, screens: ["HDMI", "HDMI"] },
			"plan-around",
			"otherShape",
			{ adapters: ["DisplayPort to HDMI"] },
		],
		"two screens of other shapes, one of them VGA": [
			{ board: { pictureSockets: ["HDMI", "DisplayPort"] }, ...withoutCard, screens: ["VGA", "DVI"] },
			"plan-around",
			"otherShape",
			{ adapters: ["DisplayPort to VGA", "HDMI to DVI"], active: ["DisplayPort to VGA"] },
		],
		"two screens that want the same adapter": [
			{ board: { pictureSockets: ["HDMI", "HDMI"] }, ...withoutCard, screens: ["DVI", "DVI"] },
			"plan-around",
			"otherShape",
			{ adapters: ["2 x HDMI to DVI"] },
		],
		"DisplayPort from HDMI wants a chip inside": [
			{ board: { pictureSockets: ["HDMI"] }, ...withoutCard, screens: ["DisplayPort"] },
			"plan-around",
			"otherShape",
			{ adapters: ["HDMI to DisplayPort"], active: ["HDMI to DisplayPort"] },
		],
		"no DVI socket feeds a VGA screen, so the screens change places": [
			{ board: { pictureSockets: ["HDMI", "DVI"] }, ...withoutCard, screens: ["HDMI", "VGA"] },
			"plan-around",
			"otherShape",
			{ adapters: ["DVI to HDMI", "HDMI to VGA"], active: ["HDMI to VGA"] },
		],
		"a screen that no adapter helps": [
			{ board: { pictureSockets: ["HDMI", "DisplayPort"] }, ...withoutCard, screens: ["HDMI", "USB-C"] },
			"plan-around",
			"noWay",
			{ screens: ["USB-C"] },
		],
		"a VGA screen": [
			{ board: { pictureSockets: ["HDMI"] }, ...withoutCard, screens: ["VGA"] },
			"plan-around",
			"vga",
			{ socket: "HDMI" },
		],
	},
	fails: {
		"no socket at all for a screen": [{ board: bare, ...withoutCard, screens: ["HDMI"] }, "noSocket"],
		"no card and no socket": [{ board: bare, graphicsCard: "none", processor: { graphics: true } }, "noSocket"],
		"USB-C with other modes": [{ board: oval(2, ["charging 60 W"]), ...withoutCard }, "noSocket"],
		"USB-C with no modes at all": [{ board: oval(1, []), ...withoutCard }, "noSocket"],
		"USB-C said to carry none": [{ board: oval(1, ["no picture"]), ...withoutCard }, "noSocket"],
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
			{ board: bare, graphicsCard: "none", processor: {} },
			["processor.graphics"],
			"unknown",
		],
		"no picture socket, and what USB-C can do is not known": [
			{ board: oval(1), ...withoutCard },
			["board.rearUsb"],
			"unknown",
		],
		"no picture socket, and the USB sockets are not known": [
			{ board: { pictureSockets: [] }, ...withoutCard },
			["board.rearUsb"],
			"unknown",
		],
		"neither processor nor USB-C is known": [
			{ board: oval(1), graphicsCard: "none", processor: {} },
			["processor.graphics", "board.rearUsb"],
			"unknown",
		],
		"a picture over USB-C, and the processor's page is silent": [
			{ board: oval(1, ["picture"], {}), graphicsCard: "none", processor: {} },
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
			"2 picture sockets at the back, because you have no graphics card. Your screens have: HDMI, DVI. A socket of another shape needs an adapter.",
		],
		"no card and no graphics in the processor": [{ graphicsCard: "none", processor: { graphics: false } }, null],
		"a card": [{ graphicsCard: {} }, null],
		"nobody has said": [{}, "A picture socket at the back (HDMI or DisplayPort), in case you have no graphics card."],
		"nobody has said, and a screen is there": [
			{ screens: ["HDMI"] },
			"A picture socket at the back, in case you have no graphics card. Your screens have: HDMI. A socket of another shape needs an adapter.",
		],
	},
});
