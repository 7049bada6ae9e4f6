import type { Interval } from "../maths/interval.ts";
import type { BuildFacts } from "../parts/build.ts";
import { countedWatts, peakOfUse, processorUseOf } from "./counted-watts.ts";
import { heldWatts } from "./held-watts.ts";
import { type SupplyDemand, supplyDemandOf } from "./supply-demand.ts";

declare module "../parts/fact-path.ts" {
	interface MeasuredFacts {
		readonly load: LoadFacts;
	}
}

/** What a build takes, whatever the board; undefined where nothing is known of the processor's watts. */
export interface LoadFacts {
	/** For as long as the heaviest use lasts, in W. */
	readonly counted: Interval | undefined;
	/** For hours at full load, in W. */
	readonly held: Interval | undefined;
	/** At the most, in W; with its clock raised, if it will be. */
	readonly peak: (Interval & { readonly guessed: boolean }) | undefined;
	/** Of the supply, by all parts together. */
	readonly supply: SupplyDemand;
}

/** What a build takes, of its board and of its supply. */
export function loadFactsOf(facts: BuildFacts): LoadFacts {
	const use = processorUseOf(facts);
	return {
		counted: countedWatts(use) ?? undefined,
		held: heldWatts(use) ?? undefined,
		peak: peakOfUse(use) ?? undefined,
		supply: supplyDemandOf(facts),
	};
}
