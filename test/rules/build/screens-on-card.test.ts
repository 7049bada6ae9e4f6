import type { PictureSocket } from "../../../src/parts/vocabulary.ts";
import { screensOnCard } from "../../../src/rules/build/screens-on-card.ts";
import { testRule } from "../test-rule.ts";

const build = (screens: PictureSocket[], pictureSockets: PictureSocket[]) => ({
	screens,
	graphicsCard: { pictureSockets },
});

// Which adapters there are is common practice, no source.
testRule(screensOnCard, {
	fits: {
		"one screen on its own socket": [build(["HDMI"], ["DisplayPort", "HDMI"]), "direct", { screens: ["HDMI"] }],
		"as many screens as sockets": [
			build(["HDMI", "DisplayPort", "DisplayPort"], ["DisplayPort", "DisplayPort", "HDMI"]),
			"direct",
			{ screens: ["HDMI", "DisplayPort", "DisplayPort"] },
		],
		"no screen yet": [build([], ["HDMI"]), "noScreen"],
		"no card": [{ screens: ["HDMI"], graphicsCard: "none" }, "none", { part: "graphicsCard" }],
		"a card to be bought to suit": [{ screens: ["HDMI"], graphicsCard: "open" }, "open", { part: "graphicsCard" }],
	},
	cautions: {
		"DVI from HDMI": [build(["DVI"], ["HDMI"]), "plan-around", "plain", { adapters: ["HDMI to DVI"] }],
		"two alike are named once": [
			build(["HDMI", "HDMI", "HDMI"], ["DisplayPort", "DisplayPort", "HDMI"]),
			"plan-around",
			"plain",
			{ adapters: ["DisplayPort to HDMI"] },
		],
		"VGA from HDMI": [build(["VGA"], ["HDMI"]), "plan-around", "active", { adapters: ["HDMI to VGA"] }],
		"what needs a chip is named before what does not": [
			build(["VGA", "DVI"], ["DisplayPort", "DisplayPort"]),
			"plan-around",
			"active",
			{ adapters: ["DisplayPort to VGA"] },
		],
	},
	fails: {
		"one screen more than sockets": [
			build(["HDMI", "DVI", "HDMI"], ["HDMI", "DisplayPort"]),
			"tooMany",
			{ screens: 3, sockets: 2 },
		],
		"one screen on a card for computing": [build(["HDMI"], []), "tooMany", { screens: 1, sockets: 0 }],
		"two screens on one socket": [build(["HDMI", "HDMI"], ["HDMI"]), "tooMany", { screens: 2, sockets: 1 }],
		"a USB-C screen without a USB-C socket": [
			build(["USB-C", "HDMI"], ["HDMI", "DisplayPort"]),
			"noWay",
			{ screens: ["USB-C"] },
		],
	},
	cannotTell: {
		"the card's page is silent": [{ screens: ["HDMI"], graphicsCard: {} }, ["graphicsCard.pictureSockets"]],
		"nobody has said which screens": [{ graphicsCard: { pictureSockets: ["HDMI"] } }, ["screens"]],
		"nobody has said anything": [{}, ["screens", "graphicsCard"]],
	},
});
