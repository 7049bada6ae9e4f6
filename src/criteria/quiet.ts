import { defineCriterion, type Measure } from "./define-criterion.ts";

/** What on a board makes a noise, or cannot keep others from making one. */
export const quiet = defineCriterion({
	id: "quiet",
	name: "quiet",
	asks: "How much would a small whining fan bother you?",
	why: "Few boards have a small fan, and those cannot be swapped for a quiet one. Fan headers (rows of pins) that slow any fan keep the rest quiet. What you hear most is the cooler on the processor.",
	ends: {
		worst: "a small fan on the board whines all day",
		best: "the board has no fan of its own, and can slow every other",
	},
	unit: "noisy things",
	scale: [
		[0, 1],
		[0.5, 0.85],
		[1.5, 0],
	],
	source: "own-convention",
	grounds:
		"A fan on the board is heard all the time and counts whole; a fan header that cannot slow every fan counts half.",
	reads: ["board.chipsetFan", "board.headers.fans"],
	measure({ "board.chipsetFan": chipsetFan, "board.headers.fans": headers }): Measure {
		const stubborn = headers?.some(({ use, control }) => use === "case" && control && control.length < 2);
		const isSilent = headers === undefined || headers.some(({ use, control }) => use === "case" && !control);
		const low = (chipsetFan ? 1 : 0) + (stubborn ? 0.5 : 0);
		const high = (chipsetFan === false ? 0 : 1) + (stubborn || isSilent ? 0.5 : 0);
		return {
			low,
			high,
			missing: [
				...(chipsetFan === undefined ? ["board.chipsetFan"] : []),
				...(isSilent && !stubborn ? ["board.headers.fans"] : []),
			],
		};
	},
	says: ({ low, high }) => {
		if (low >= 1) return "it has a small fan of its own, which is heard all day";
		if (high >= 1) return "whether it has a small fan of its own is not known";
		if (high === 0) return "it has no fan of its own, and its fan headers can slow every fan";
		return low === high
			? "some of its fan headers cannot slow every kind of fan"
			: "how its fan headers slow fans is not known";
	},
});
