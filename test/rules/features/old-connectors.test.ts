import { oldThings as allThings } from "../../../src/parts/wants.ts";
import { oldConnectors } from "../../../src/rules/features/old-connectors.ts";
import { testRule } from "../test-rule.ts";

/** A system is no thing with a plug: build/moved-system speaks of it. */
const oldThings = allThings.filter((thing) => thing !== "installed system");

/** A board with a place for every old thing. */
const museum = {
	rearOld: ["PS/2" as const, "serial" as const, "parallel" as const],
	cardSlots: [{ name: "OLD", bus: "PCI" as const }],
	drivePorts: [{ name: "IDE_1", kind: "IDE" as const }],
};
/** A board of today. */
const modern = {
	rearOld: [],
	headers: { serial: 0 },
	cardSlots: [{ name: "SLOT_1", bus: "PCI Express" as const }, { name: "SLOT_2" }],
	drivePorts: [{ name: "SATA_1", kind: "SATA" as const }],
};

testRule(oldConnectors, {
	fits: {
		"nobody has said": [{ board: modern }, "notAsked"],
		"none of these": [{ board: {}, oldThings: [] }, "notAsked"],
		"only a system from another computer": [{ board: modern, oldThings: ["installed system"] }, "notAsked"],
		"all of them": [{ board: museum, oldThings }, "has"],
		"a serial header does as well": [
			{ board: { rearOld: [], headers: { serial: 1 } }, oldThings: ["serial device"] },
			"has",
		],
		"a serial header alone is known": [{ board: { headers: { serial: 1 } }, oldThings: ["serial device"] }, "has"],
	},
	cautions: {
		"none of them": [{ board: modern, oldThings }, "plan-around", "lacks", { things: oldThings }],
		"one of two": [
			{ board: { ...modern, rearOld: ["PS/2"] }, oldThings: ["PS/2 keyboard or mouse", "IDE drive"] },
			"plan-around",
			"lacks",
			{ things: ["IDE drive"] },
		],
		"missing for certain, though of another nobody knows": [
			{ board: { rearOld: [] }, oldThings: ["PCI card", "parallel printer"] },
			"plan-around",
			"lacks",
			{ things: ["parallel printer"] },
		],
	},
	cannotTell: {
		"the page is silent": [{ board: {}, oldThings }, ["board.rearOld", "board.drivePorts", "board.cardSlots"]],
		"no serial socket at the back, and nobody knows of a header": [
			{ board: { rearOld: [] }, oldThings: ["serial device"] },
			["board.headers.serial"],
		],
		"no serial header, and nobody knows of the back": [
			{ board: { headers: { serial: 0 } }, oldThings: ["serial device"] },
			["board.rearOld"],
		],
	},
	needs: {
		"two things": [{ oldThings: ["IDE drive", "PCI card"] }, "Sockets for these, or an adapter: IDE drive, PCI card."],
		"nobody has said": [{}, null],
	},
});
