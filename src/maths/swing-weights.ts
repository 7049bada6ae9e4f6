/**
 * Swing weights made to sum to 1. A swing says how much the lift from worst to best on one criterion matters beside
 * the lift that matters most (by custom 100).
 * Source: Goodwin & Wright, "Decision Analysis for Management Judgment", ch. 3.
 *
 * @param swings none negative, at least one above 0
 * @throws RangeError if a swing is negative or not a number, or all are 0
 */
export function swingWeights(swings: readonly number[]): number[] {
	for (const swing of swings) {
		if (!(swing >= 0 && Number.isFinite(swing))) throw new RangeError(`a swing must be 0 or more, not ${swing}`);
	}
	const total = swings.reduce((sum, swing) => sum + swing, 0);
	if (total === 0) throw new RangeError("at least one swing must be above 0");
	return swings.map((swing) => swing / total);
}
