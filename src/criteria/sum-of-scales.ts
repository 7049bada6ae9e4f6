import { valueOverInterval } from "../maths/piecewise-linear.ts";
import type { Measure, Scale, SmallScale } from "./define-criterion.ts";

/** A measure on one of the small scales; missing are facts that would narrow it. */
export interface MeasuredPart {
	readonly of: SmallScale;
	readonly low: number;
	readonly high: number;
	readonly missing: readonly string[];
}

/** What a criterion of small scales is measured in: its points, from none to all. */
export const pointsScale: Scale = [
	[0, 0],
	[100, 1],
];

/**
 * The parts put together, in points of 100: each part's value counts by its weight. A part that says nothing of a build
 * is left out, and the others share its weight. A fact stays missing even where it could change no value: what is good
 * on a guess is not known to be good.
 *
 * @param parts at least one
 */
export function sumOfScales(parts: readonly MeasuredPart[]): Measure {
	const weights = parts.reduce((sum, { of }) => sum + of.weight, 0);
	const valued = parts.map(({ of, low, high }) => ({
		weight: of.weight,
		...valueOverInterval(of.scale, { low, high }),
	}));
	const sum = (end: "low" | "high") => (100 * valued.reduce((all, one) => all + one.weight * one[end], 0)) / weights;
	return {
		low: sum("low"),
		high: sum("high"),
		missing: [...new Set(parts.flatMap(({ missing }) => missing))],
	};
}
