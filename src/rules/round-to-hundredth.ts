/** A rate in GB/s to two decimals: the finest that sums and printed lines tell apart. */
export function roundToHundredth(value: number): number {
	return Math.round(value * 100) / 100;
}
