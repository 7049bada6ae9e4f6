import type { Drive } from "../../parts/drive.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type Outcome, pass } from "../outcome.ts";

const plugsInWords = (count: number) => `${count} SATA power plug${count === 1 ? "" : "s"}`;

/** Each SATA drive outside the board takes one flat SATA power plug of the supply. */
export const drivePower = defineRule({
	id: "build/drive-power",
	scope: "build",
	label: "Power for the drives",
	wayOut: "another power supply or fewer drives",
	asks: "Does the supply have a power plug for every drive?",
	why: "Each SATA drive needs a flat power plug of the supply, beside its data cable.",
	source: "common-practice",
	severity: "plan-around",
	reads: ["drives", "olderSataDrives", "supply"],
	mayRead: ["supply.sataPlugs"],
	messages: {
		noDrive: () => "No drive needs a power plug of its own.",
		noSupply: ({ drives }: { drives: number }) =>
			`There is no supply yet: choose one with ${plugsInWords(drives)} or more.`,
		fed: ({ drives, plugs }: { drives: number; plugs: number }) =>
			`The supply has ${plugsInWords(plugs)}; your drives take ${drives}.`,
		noneLeft: ({ plugs }: { plugs: number }) =>
			plugs === 1
				? "Your drive takes the supply's only SATA power plug."
				: `Your drives take all ${plugs} SATA power plugs of the supply.`,
		tooFew: ({ drives, plugs }: { drives: number; plugs: number }) =>
			`Your drives need ${plugsInWords(drives)}; the supply has ${plugs === 0 ? "none" : plugs}.`,
	},
	advice: {
		noneLeft: () => "A hub for fans or lights often wants one as well: look at its cables.",
		tooFew: () =>
			"Ask the supply's maker for one more cable for this very model. Cables of another supply can kill drives, and cheap adapters can melt.",
	},
	check(facts): Outcome {
		const drives = facts.olderSataDrives + facts.drives.filter(takesSataPower).length;
		if (drives === 0) return pass("noDrive");
		if (facts.supply === "open" || facts.supply === "none") return pass("noSupply", { drives });
		if (facts.supply === "unknown") return cannotTell(["supply"]);
		const plugs = facts["supply.sataPlugs"];
		if (plugs === undefined) return cannotTell(["supply.sataPlugs"]);
		if (drives > plugs) return fail("tooFew", { drives, plugs });
		return drives === plugs ? goodToKnow("noneLeft", { plugs }) : pass("fed", { drives, plugs });
	},
});

/** An M.2 drive is fed by the board, also one with a SATA link; a drive of unknown link outside the board is a SATA one. */
function takesSataPower({ shape, link }: Drive): boolean {
	if (shape === "M.2") return false;
	return link === "SATA" || (link === undefined && shape !== undefined);
}
