import type { BuildFacts } from "../parts/build.ts";
import type { Supply } from "../parts/supply.ts";
import { processorUseOf } from "./counted-watts.ts";
import { peakShare, type ShortPeak, shortPeaks } from "./power-excursions.ts";
import { budgetAmps, processorAmps, restAmps, type SupplyLoad } from "./supply-budget.ts";

/** What the parts of a build ask of their supply at 12 V, in W. */
export interface SupplyDemand {
	/** With the least that is certain; what nobody knows counts as nothing. */
	readonly leastW: number;
	/** With the most the processor may take; null where nothing is known of its watts. */
	readonly mostW: number | null;
	/** Whether the processor's highest watts are only guessed from its label. */
	readonly guessed: boolean;
	/** What else comes with a graphics card, beside its own watts. */
	readonly besideCardW: number;
	/** What the supply gives at 12 V; null where its rating is not known. */
	readonly outputW: number | null;
	/** Moments of more, with what the supply must stand for as long; none while a figure is missing. */
	readonly peaks: readonly (ShortPeak & { readonly standsW: number })[];
}

/** The 12 V budget of a build: processor, graphics card and the rest. */
export function supplyDemandOf(facts: BuildFacts): SupplyDemand {
	const { graphicsCard, supply } = facts;
	const use = processorUseOf(facts);
	const amps = processorAmps(use);
	const load = (processorA: number): SupplyLoad => ({
		processorA,
		cardW: (graphicsCard.state === "have" ? graphicsCard.part.watts : undefined) ?? 0,
		restA: restAmps(graphicsCard.state === "have"),
	});
	const wattsOf = (processorA: number) => roundedWatts(budgetAmps(load(processorA)) * 12);
	const outputW = supply.state === "have" ? outputOf(supply.part) : null;
	return {
		leastW: wattsOf(amps?.low ?? 0),
		mostW: amps && wattsOf(amps.high),
		guessed: amps?.guessed ?? false,
		besideCardW: (restAmps(true) - restAmps(false)) * 12,
		outputW,
		peaks:
			amps && outputW !== null && supply.state === "have"
				? shortPeaks(load(amps.high), use.baseW).map((peak) => ({
						...peak,
						standsW: roundedWatts(outputW * shareStood(supply.part, peak)),
					}))
				: [],
	};
}

/** No more than its rating, and no more than its label says of 12 V. */
function outputOf({ watts, twelveVoltA }: Supply): number | null {
	return watts === undefined ? null : Math.min(watts, (twelveVoltA ?? Number.POSITIVE_INFINITY) * 12);
}

/** Where nobody names the leads, a supply has those the guide asks for. */
function shareStood({ watts = 0, native12V2x6, bornIn }: Supply, { seconds }: ShortPeak): number {
	const hasWideLead = native12V2x6 === undefined || native12V2x6.length > 0;
	return peakShare({ ratedW: watts, hasWideLead, bornIn }, seconds);
}

/** To a hundredth of a watt, so that a sum of whole amperes comes out even. */
function roundedWatts(watts: number): number {
	return Math.round(watts * 100) / 100;
}
