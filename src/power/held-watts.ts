import { exactly, type Interval } from "../maths/interval.ts";
import type { Processor } from "../parts/processor.ts";
import { labelHeldAfterBoost, leastOfPeakHeld, peakOverBase } from "../reference/activity-loads.ts";

/** What pages and tests say of a processor's watts. */
export type ProcessorWatts = {
	readonly [K in "baseW" | "sustainedW" | "peakW" | "limitPolicy"]?: Processor[K] | undefined;
};

/**
 * The highest watts a processor takes: stated, or guessed from its label, which leaves them wide open; without a label
 * from what a test saw it hold, since no label is above that.
 *
 * @returns watts as a range; null where nothing is known
 */
export function peakWatts({
	peakW,
	baseW,
	sustainedW = 0,
}: ProcessorWatts): (Interval & { readonly guessed: boolean }) | null {
	if (peakW !== undefined) return { ...exactly(peakW), guessed: false };
	const label = baseW ?? sustainedW;
	if (label === 0) return null;
	const low = baseW === undefined ? sustainedW : Math.max(sustainedW, peakOverBase.low * baseW);
	return { low, high: Math.max(low, peakOverBase.high * label), guessed: true };
}

/**
 * The watts a processor may hold for hours at full load. A measured figure goes before all. The label alone never tells:
 * a fixed limit and a limit that the board lifts are both held at the top, a timed boost falls back to the label, and
 * where newer firmware enforces a limit again it depends on the firmware.
 *
 * @returns watts as a range; null where nothing is known
 */
export function heldWatts(processor: ProcessorWatts): Interval | null {
	const { sustainedW, baseW, limitPolicy } = processor;
	if (sustainedW !== undefined) return exactly(sustainedW);
	const peak = peakWatts(processor);
	if (!peak) return null;
	const label = baseW ?? peak.low / peakOverBase.high;
	// A page may give a peak below the label watts; that is no reason to fail, only to be unsure.
	const [least, most] = [Math.min(label, peak.low), Math.max(label, peak.high)];
	switch (limitPolicy) {
		case "fixed":
			return { low: peak.guessed ? least : peak.low, high: most };
		case "lifted-by-board":
			return { low: peak.guessed ? least : Math.max(least, leastOfPeakHeld * peak.low), high: most };
		case "timed-boost":
			return baseW === undefined
				? { low: least, high: most }
				: { low: least, high: Math.min(most, labelHeldAfterBoost * label) };
		default:
			return { low: least, high: most };
	}
}
