import { beforePeaks, cardPeak, excursionLimits, processorClasses } from "../reference/supply-budget.ts";
import { budgetAmps, processorClass, type SupplyLoad } from "./supply-budget.ts";

/** What decides which peaks a supply must stand. */
export interface SupplyOfPeaks {
	readonly ratedW: number;
	/** Whether it has a 12V-2x6 lead of its own. */
	readonly hasWideLead: boolean;
	/** Unknown counts as made when the guides ask for peaks (own convention). */
	readonly bornIn?: number | undefined;
}

/**
 * How much of its rating a supply must stand for so many seconds, 1 or more. Nothing above the rating is promised for
 * longer than the guide's longest peak.
 */
export function peakShare({ ratedW, hasWideLead, bornIn }: SupplyOfPeaks, seconds: number): number {
	const { strongAboveW, strong, usual } = excursionLimits;
	const limit = (ratedW > strongAboveW && hasWideLead ? strong : usual).find((one) => seconds <= one.seconds);
	if (!limit) return 1;
	return promisesPeaks(bornIn) ? limit.share : beforePeaks.share;
}

/** Whether a supply of that year was made for short peaks. */
export function promisesPeaks(bornIn: number | undefined): boolean {
	return bornIn === undefined || bornIn >= beforePeaks.promisedFrom;
}

/**
 * The steady load between peaks with which a supply's load, squared and averaged, just comes to its rating.
 *
 * @param duty part of the time that peaks take, 0 to below 1
 * @returns watts; 0 where the peaks alone come to the rating or above
 */
export function lowBetweenPeaks(ratedW: number, peakW: number, duty: number): number {
	return Math.sqrt(Math.max(0, ratedW ** 2 - duty * peakW ** 2) / (1 - duty));
}

/** A moment in which one part takes more than its steady most. */
export interface ShortPeak {
	readonly whose: "card" | "processor";
	/** All parts together, at 12 V. */
	readonly watts: number;
	readonly seconds: number;
}

/**
 * The short peaks of a load: the card at its own, then the processor at its own, all else steady. Both at one moment are
 * rare, so they are not added (own convention). A processor's peak over its steady current is that of its class; where
 * the label is below all classes or unknown it is the least of the table.
 */
export function shortPeaks(load: SupplyLoad, labelW: number | undefined): readonly ShortPeak[] {
	const { processorA, cardW } = load;
	const watts = (more: Partial<SupplyLoad>) => budgetAmps({ ...load, ...more }) * 12;
	return [
		{ whose: "card", watts: watts({ cardW: cardW * cardPeak.overRated }), seconds: cardPeak.seconds },
		{
			whose: "processor",
			watts: watts({ processorA: processorA * processorPeakOverSteady(labelW) }),
			seconds: processorClasses.peakSeconds,
		},
	];
}

function processorPeakOverSteady(labelW: number | undefined): number {
	const known = processorClass(labelW);
	const classes = known ? [known] : processorClasses.classes;
	return Math.min(...classes.map(({ peakA, continuousA }) => peakA / continuousA));
}
