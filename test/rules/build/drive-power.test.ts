import type { Drive } from "../../../src/parts/drive.ts";
import { drivePower } from "../../../src/rules/build/drive-power.ts";
import { testRule } from "../test-rule.ts";

const drive = (facts: Partial<Drive>): Drive => ({ id: "a-drive", name: "Pickle", ...facts });
const large = drive({ shape: "3.5 inch", link: "SATA" });
const small = drive({ shape: "2.5 inch" });
const stick = drive({ shape: "M.2", link: "SATA" });
const build = (drives: Drive[], olderSataDrives: number, sataPlugs: number) => ({
	drives,
	olderSataDrives,
	supply: { sataPlugs },
});

testRule(drivePower, {
	fits: {
		"one plug more than drives": [build([large, small], 1, 4), "fed", { drives: 3, plugs: 4 }],
		"sticks on the board take none, whatever the supply": [{ drives: [stick], olderSataDrives: 0 }, "noDrive"],
		"neither do drives with another link": [
			build([drive({ shape: "3.5 inch", link: "IDE" }), drive({ link: "PCI Express" })], 0, 0),
			"noDrive",
		],
		"to be bought to suit": [{ drives: [large], olderSataDrives: 0, supply: "open" }, "noSupply", { drives: 1 }],
		"no supply": [{ drives: [large], olderSataDrives: 1, supply: "none" }, "noSupply", { drives: 2 }],
	},
	cautions: {
		"as many plugs as drives": [build([large, small], 2, 4), "good-to-know", "noneLeft", { plugs: 4 }],
		"the only plug": [build([large], 0, 1), "good-to-know", "noneLeft", { plugs: 1 }],
	},
	fails: {
		"one plug too few": [build([large, small], 2, 3), "tooFew", { drives: 4, plugs: 3 }],
		"no plug at all": [build([drive({ link: "SATA" })], 0, 0), "tooFew", { drives: 1, plugs: 0 }],
	},
	cannotTell: {
		"the supply's plugs are not known": [{ drives: [large], olderSataDrives: 0, supply: {} }, ["supply.sataPlugs"]],
		"nobody has said which supply": [{ drives: [large], olderSataDrives: 0 }, ["supply"]],
		"nobody has said whether older drives come along": [
			{ drives: [large], supply: { sataPlugs: 4 } },
			["olderSataDrives"],
		],
		"nobody has said which drives": [{ olderSataDrives: 2, supply: { sataPlugs: 4 } }, ["drives"]],
	},
});
