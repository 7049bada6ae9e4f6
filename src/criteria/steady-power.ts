import { ampleK } from "../reference/activity-loads.ts";
import { defineCriterion, type Measure } from "./define-criterion.ts";

/** How far below and past the line is told; beyond that every limit is passed, in K. */
const furthestK = 60;

/** How cool the stages that feed the processor stay in the heaviest work: degrees left to the comfortable line. */
export const steadyPower = defineCriterion({
	id: "steady-power",
	formerly: ["stage-load"],
	name: "steady power for hours",
	asks: "How much would a slowdown in long, heavy work bother you?",
	why: "The power stages beside the socket feed the processor. When they get too hot, the board holds the processor back, and parts that stay hot for years wear out.",
	ends: {
		worst: "hot power stages hold the processor back",
		best: "its power stages stay cool, for hours and for years",
	},
	unit: "degrees to spare",
	scale: [
		[0, 0],
		[15, 0.7],
		[30, 1],
	],
	source: "own-convention",
	grounds:
		"A hottest stage of 90 degrees C counts as the end of comfortable (common practice). 15 degrees below it are plenty, and past 30 nothing is gained.",
	reads: ["power.steady", "processor"],
	measure({ "power.steady": steady, processor }): Measure | null {
		// Without the processor's watts anything may be, for every board alike: left out, it would make the rest look sure.
		if (!steady)
			return { low: -furthestK, high: furthestK, missing: [processor === "have" ? "processor.baseW" : "processor"] };
		const { spareK, missing } = steady;
		const [low, high] = [clamp(spareK.low), clamp(spareK.high)];
		return {
			low,
			high,
			// Where all of the range is plenty, or all of it too hot, a fact more would change nothing.
			missing: low < ampleK && high > 0 ? missing : [],
		};
	},
	says: ({ low, high, missing }) => {
		if (low === -furthestK && high === furthestK && missing.every((path) => path.startsWith("processor")))
			return "how cool its power stages stay is not known";
		// Downward, as the rule on power and heat does: nobody is promised a degree that is not there.
		const [from, to] = [Math.floor(low), Math.floor(high)];
		if (from >= 0) return `its power stages have ${degrees(from, to)} to spare under your load`;
		if (to <= 0)
			return from <= -furthestK
				? `its power stages get ${-to} degrees or more too hot under your load`
				: `its power stages get ${degrees(-to, -from)} too hot under your load`;
		return `its power stages may have ${to} degrees to spare under your load, or be ${from <= -furthestK ? "far too hot" : `${degrees(-from, -from)} too hot`}`;
	},
});

function clamp(kelvin: number): number {
	return Math.max(-furthestK, Math.min(furthestK, kelvin));
}

function degrees(from: number, to: number): string {
	return from === to ? `${from} ${from === 1 ? "degree" : "degrees"}` : `${from} to ${to} degrees`;
}
