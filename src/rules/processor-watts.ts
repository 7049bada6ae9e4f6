import type { Processor } from "../parts/processor.ts";
import { guessedPeakOverBase } from "../reference/activity-loads.ts";

/** What pages and tests say of a processor's watts. */
export interface ProcessorWatts {
	readonly baseW?: number | undefined;
	readonly sustainedW?: number | undefined;
	readonly peakW?: number | undefined;
	readonly limitPolicy?: Processor["limitPolicy"] | undefined;
}

/** The highest watts, stated or guessed from the label; null where the page gives neither. */
export function peakWatts({
	peakW,
	baseW,
}: ProcessorWatts): { readonly watts: number; readonly guessed: boolean } | null {
	if (peakW !== undefined) return { watts: peakW, guessed: false };
	return baseW === undefined ? null : { watts: baseW * guessedPeakOverBase, guessed: true };
}

/**
 * The watts a processor may hold for hours, from the least to the most. Label watts are the sustained watts only where
 * its limit is fixed: elsewhere boards may hold the highest for ever, and newer firmware may stop that again.
 *
 * @returns null where not even the label watts are known
 */
export function heldWatts(
	processor: ProcessorWatts,
): { readonly lowW: number; readonly highW: number; readonly guessed: boolean } | null {
	const { sustainedW, baseW, limitPolicy } = processor;
	if (sustainedW !== undefined) return { lowW: sustainedW, highW: sustainedW, guessed: false };
	const peak = peakWatts(processor);
	if (baseW === undefined || !peak) return null;
	if (limitPolicy === "fixed") return { lowW: baseW, highW: baseW, guessed: false };
	return { lowW: baseW, highW: Math.max(baseW, peak.watts), guessed: peak.guessed };
}
