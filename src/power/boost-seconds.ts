/**
 * How long a processor may hold its highest watts before the average of its power limit reaches the lower limit. The
 * average is exponentially weighted, so it starts from what was taken before: t = tau ln((peak - before) / (peak - held)).
 *
 * @param limits watts: the peak, the limit held after it, and what was taken before; tau in seconds
 * @returns seconds; infinite where the peak is no more than the limit, else 0 where the average is at the limit already
 */
export function boostSeconds(limits: {
	readonly peakW: number;
	readonly heldW: number;
	readonly beforeW: number;
	readonly averagingS: number;
}): number {
	const { peakW, heldW, beforeW, averagingS } = limits;
	if (peakW <= heldW) return Number.POSITIVE_INFINITY;
	if (beforeW >= heldW) return 0;
	return averagingS * Math.log((peakW - beforeW) / (peakW - heldW));
}
