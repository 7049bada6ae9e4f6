import type { Drive } from "../../../src/parts/drive.ts";
import { drivesInCase } from "../../../src/rules/build/drives-in-case.ts";
import { testRule } from "../test-rule.ts";

const drive = (facts: Partial<Drive>): Drive => ({ id: "a-drive", name: "Pickle", ...facts });
const stick = drive({ shape: "M.2", link: "PCI Express" });
const small = drive({ shape: "2.5 inch", link: "SATA" });
const large = drive({ shape: "3.5 inch", link: "SATA" });
const build = (drives: Drive[], olderSataDrives: number, inch35: number, inch25: number) => ({
	drives,
	olderSataDrives,
	case: { driveBays: { inch35, inch25 } },
});

testRule(drivesInCase, {
	fits: {
		"as many places as drives": [build([large, small, small], 0, 1, 2), "placed", { drives: 3, places: 3 }],
		"older drives have a place, whatever their size": [build([small], 2, 2, 1), "placed", { drives: 3, places: 3 }],
		"small ones only, and the large places are not known": [
			{ drives: [small, small], olderSataDrives: 0, case: { driveBays: { inch25: 2 } } },
			"placed",
			{ drives: 2, places: 2 },
		],
		"M.2 drives only, whatever the case": [{ drives: [stick, stick], olderSataDrives: 0 }, "noDrive"],
		"a drive on PCI Express whose shape is not known is a stick": [
			{ drives: [drive({ link: "PCI Express" })], olderSataDrives: 0 },
			"noDrive",
		],
		"one drive, and a case to be bought to suit": [
			{ drives: [large], olderSataDrives: 0, case: "open" },
			"noCase",
			{ drives: 1 },
		],
		"no case": [{ drives: [large], olderSataDrives: 2, case: "none" }, "noCase", { drives: 3 }],
	},
	cautions: {
		"a small one goes into a large place": [build([small, small], 0, 1, 1), "plan-around", "frames", { frames: 1 }],
		"two small ones go into large places": [build([small, small], 0, 2, 0), "plan-around", "frames", { frames: 2 }],
		"an older drive that may be large, and no large place is left": [
			build([large], 1, 1, 1),
			"plan-around",
			"dependsOnSize",
			{ unsure: 1, inch35: 1 },
		],
		"a SATA drive whose shape is not known": [
			build([drive({ link: "SATA" })], 1, 0, 2),
			"plan-around",
			"dependsOnSize",
			{ unsure: 2, inch35: 0 },
		],
	},
	fails: {
		"a large one with small places only": [build([large], 0, 0, 2), "tooFewLarge", { large: 1, inch35: 0 }],
		"one drive more than places": [build([large, small], 1, 1, 1), "tooFew", { drives: 3, places: 2 }],
	},
	cannotTell: {
		"the case's places are not known": [
			{ drives: [large], olderSataDrives: 0, case: {} },
			["case.driveBays.inch35", "case.driveBays.inch25"],
		],
		"a small one too many, and the large places are not known": [
			{ drives: [small, small], olderSataDrives: 0, case: { driveBays: { inch25: 1 } } },
			["case.driveBays.inch35"],
		],
		"nobody has said which case": [{ drives: [large], olderSataDrives: 0 }, ["case"]],
		"nobody has said whether older drives come along": [
			{ drives: [large], case: { driveBays: { inch35: 1 } } },
			["olderSataDrives"],
		],
		"nobody has said which drives": [{ olderSataDrives: 1 }, ["drives"]],
	},
});
