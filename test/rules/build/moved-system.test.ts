import type { Drive } from "../../../src/parts/drive.ts";
import { movedSystem } from "../../../src/rules/build/moved-system.ts";
import { testRule } from "../test-rule.ts";

const drive = (name: string, system?: boolean): Drive => ({
	id: name.toLowerCase(),
	name,
	...(system === undefined ? {} : { system }),
});

testRule(movedSystem, {
	fits: {
		"nobody has said": [{}, "notAsked"],
		"no drives": [{ drives: [] }, "notAsked"],
		"an empty one": [{ drives: [drive("Loaf", false)] }, "notAsked"],
		"other old things": [{ oldThings: ["PCI card"] }, "notAsked"],
		"nobody has said whether it holds one": [{ drives: [drive("Loaf")] }, "notAsked"],
	},
	fails: {
		"one of two": [{ drives: [drive("Loaf"), drive("Fruitcake", true)] }, "moves", { drives: ["Fruitcake"] }],
		"brought along, on no drive that is named": [{ oldThings: ["installed system"] }, "movesOne"],
		"brought along, on one that is named": [
			{ drives: [drive("Loaf", true)], oldThings: ["installed system"] },
			"moves",
			{ drives: ["Loaf"] },
		],
		"two, and two of one name": [
			{ drives: [drive("Loaf", true), drive("Fruitcake", true), drive("Loaf", true)] },
			"moves",
			{ drives: ["Loaf", "Fruitcake"] },
		],
	},
	without: { cannotTell: "it is not asked of every drive, and most that are planned are empty" },
});
