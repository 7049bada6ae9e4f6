/** A length or weight to one decimal, so that sums and differences are compared and printed without binary noise. */
export function roundToTenth(value: number): number {
	return Math.round(value * 10) / 10;
}
