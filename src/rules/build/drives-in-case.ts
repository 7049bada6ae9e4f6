import type { Drive } from "../../parts/drive.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, type Outcome, pass, planAround } from "../outcome.ts";

const counted = (count: number, what: string) => `${count === 0 ? "no" : count} ${what}${count === 1 ? "" : "s"}`;

/**
 * Drives that want a place in the case, by size. A 2.5 inch drive goes into a 3.5 inch place with a frame, never the
 * other way round. Of older drives nobody has told the size: they are held against the places as either.
 */
export const drivesInCase = defineRule({
	id: "build/drives-in-case",
	scope: "build",
	label: "Places for drives",
	wayOut: "another case or fewer drives",
	asks: "Is there a place in the case for every drive?",
	why: "Small cases have few places for drives. A drive that hangs loose can short the board or break.",
	source: "common-practice",
	severity: "plan-around",
	reads: ["drives", "olderSataDrives", "case"],
	mayRead: ["case.driveBays.inch35", "case.driveBays.inch25"],
	messages: {
		noDrive: () => "No drive needs a place in the case; M.2 drives sit on the board.",
		noCase: ({ drives }: { drives: number }) =>
			`There is no case yet: choose one with a place for ${counted(drives, "drive")}.`,
		placed: ({ drives, places }: { drives: number; places: number }) =>
			`The case has ${counted(places, "place")} for drives; you need ${drives}.`,
		frames: ({ frames }: { frames: number }) =>
			frames === 1
				? "1 drive of 2.5 inch must go into a place for 3.5 inch, with a small frame."
				: `${frames} drives of 2.5 inch must go into places for 3.5 inch, with small frames.`,
		dependsOnSize: ({ unsure, inch35 }: { unsure: number; inch35: number }) =>
			`The size of ${counted(unsure, "drive")} is not known; the case has ${counted(inch35, "place")} for the large kind (3.5 inch).`,
		tooFewLarge: ({ large, inch35 }: { large: number; inch35: number }) =>
			`You have ${counted(large, "large drive")} (3.5 inch); the case has ${counted(inch35, "place")} of that size.`,
		tooFew: ({ drives, places }: { drives: number; places: number }) =>
			`You have ${counted(drives, "drive")} for the case; it has ${counted(places, "place")}.`,
	},
	advice: {
		frames: () => "A frame costs little; look whether the case comes with one.",
		dependsOnSize: () => "Measure them: about 10 by 15 cm is 3.5 inch, about 7 by 10 cm is 2.5 inch.",
		tooFewLarge: () => "Take another case, or copy old drives to one larger drive.",
		tooFew: () => "Take another case, or copy old drives to one larger drive.",
	},
	check(facts): Outcome {
		const { large, small, unsure } = sizesOf(facts.drives, facts.olderSataDrives);
		const drives = large + small + unsure;
		if (drives === 0) return pass("noDrive");
		if (facts.case === "open" || facts.case === "none") return pass("noCase", { drives });
		if (facts.case === "unknown") return cannotTell(["case"]);
		const [known35, known25] = [facts["case.driveBays.inch35"], facts["case.driveBays.inch25"]];
		const [inch35, inch25] = [known35 ?? 0, known25 ?? 0];
		const places = inch35 + inch25;
		const holds = (bigOnes: number) => bigOnes <= inch35 && drives <= places;
		if (holds(large + unsure) && small <= inch25) return pass("placed", { drives, places });
		if (known35 === undefined || known25 === undefined)
			return cannotTell([
				...(known35 === undefined ? ["case.driveBays.inch35"] : []),
				...(known25 === undefined ? ["case.driveBays.inch25"] : []),
			]);
		if (large > inch35) return fail("tooFewLarge", { large, inch35 });
		if (!holds(large)) return fail("tooFew", { drives, places });
		return holds(large + unsure)
			? planAround("frames", { frames: small - inch25 })
			: planAround("dependsOnSize", { unsure, inch35 });
	},
});

/** Drives outside the board by size; older drives and those whose shape nobody gives may be either. */
function sizesOf(drives: readonly Drive[], older: number): { large: number; small: number; unsure: number } {
	const countOf = (fits: (drive: Drive) => boolean) => drives.filter(fits).length;
	return {
		large: countOf(({ shape }) => shape === "3.5 inch"),
		small: countOf(({ shape }) => shape === "2.5 inch"),
		// A drive on PCI Express without a named shape is an M.2 stick in an ordinary computer.
		unsure: older + countOf(({ shape, link }) => shape === undefined && link !== "PCI Express"),
	};
}
