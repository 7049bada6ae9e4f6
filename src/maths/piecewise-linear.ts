import type { Interval } from "./interval.ts";

/** A corner of a piecewise-linear function. */
export type Breakpoint = readonly [x: number, y: number];

/**
 * The value at `x` of the function that runs straight from corner to corner and stays level outside them.
 *
 * @param breakpoints at least one corner, x strictly rising; y may rise, fall or turn
 * @throws RangeError if there is no corner or x does not rise: an error in the program, never in a person's data
 */
export function piecewiseLinear(breakpoints: readonly Breakpoint[], x: number): number {
	checkCorners(breakpoints);
	return valueAt(breakpoints, x);
}

/**
 * The least and the greatest value the function takes over an interval. Right for functions that turn, too: the
 * extremes of a function made of straight pieces lie at the interval's ends or at a corner between them.
 *
 * @throws RangeError as `piecewiseLinear`, or if the interval runs backwards
 */
export function valueOverInterval(breakpoints: readonly Breakpoint[], { low, high }: Interval): Interval {
	checkCorners(breakpoints);
	if (low > high) throw new RangeError(`the interval runs backwards: ${low} to ${high}`);
	const between = breakpoints.filter(([x]) => low < x && x < high).map(([, y]) => y);
	const values = [valueAt(breakpoints, low), ...between, valueAt(breakpoints, high)];
	return { low: Math.min(...values), high: Math.max(...values) };
}

function checkCorners(breakpoints: readonly Breakpoint[]): void {
	if (breakpoints.length === 0) throw new RangeError("a piecewise-linear function needs a breakpoint");
	for (const [index, [x]] of breakpoints.entries()) {
		const before = breakpoints[index - 1];
		if (before !== undefined && !(before[0] < x)) {
			throw new RangeError(`breakpoints must rise in x, but ${x} follows ${before[0]}`);
		}
	}
}

function valueAt(breakpoints: readonly Breakpoint[], x: number): number {
	if (Number.isNaN(x)) return x;
	const next = breakpoints.findIndex(([cornerX]) => x <= cornerX);
	const [rightX, rightY] = breakpoints.at(next) as Breakpoint;
	const left = breakpoints[next - 1];
	// Beyond the last corner findIndex gives -1, and at(-1) is that last corner: level outside, as before the first.
	// On a corner the corner's own y is given back, free of rounding.
	if (left === undefined || x === rightX) return rightY;
	const [leftX, leftY] = left;
	return leftY + ((rightY - leftY) * (x - leftX)) / (rightX - leftX);
}
