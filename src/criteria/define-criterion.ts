import type { FactsUnder } from "../parts/fact-path.ts";
import type { SourceId } from "../reference/sources.ts";

/** What a criterion measures for one board: a range (a point when all is known), and what it lacks to be a point. */
export interface Measure {
	readonly low: number;
	readonly high: number;
	/** Fact paths that would narrow the range. */
	readonly missing: readonly string[];
	/** What the number does not tell, in a few words, such as which aid is not there. */
	readonly note?: string;
}

/** A value scale, from the measure to 0..1: straight from corner to corner, level outside. */
export type Scale = readonly (readonly [measure: number, value: number])[];

/** One of the small scales that a criterion is made of. */
export interface SmallScale {
	/** What it measures, in a few words. */
	readonly name: string;
	readonly unit: string;
	/** Its part of the criterion, in points of 100. */
	readonly weight: number;
	readonly scale: Scale;
}

export interface CriterionWords {
	/** Same as the file's name. */
	readonly id: string;
	/** Ids it had before. */
	readonly formerly?: readonly string[];
	/** Short name in a sentence, such as "sockets and network". */
	readonly name: string;
	/** Asks how much it matters, by what happens with the weakest and the best. */
	readonly asks: string;
	readonly why: string;
	/** What the two ends mean for a person. */
	readonly ends: { readonly worst: string; readonly best: string };
	/** Unit of the measure as printed. */
	readonly unit: string;
	/**
	 * The value scale, from the measure to 0..1, fixed and never fitted to the boards at hand. It lies flat from "what
	 * was asked plus a small reserve" on, so that money cannot buy score for nothing.
	 */
	readonly scale: Scale;
	/** It is told as a plus from this value on, where what it says of a value below would be none; 0.9 unless said. */
	readonly plusFrom?: number;
	/** Where it is made of several things: their scales. The measure is then their sum in points (see sum-of-scales). */
	readonly madeOf?: readonly SmallScale[];
	/** The grounds of the scale. */
	readonly source: SourceId;
	readonly grounds: string;
}

/** Declares a criterion. `measure` answers null where the criterion says nothing about this build. */
export function defineCriterion<const Reads extends readonly string[]>(
	criterion: CriterionWords & {
		readonly reads: Reads;
		readonly measure: (facts: FactsUnder<never, Reads[number]>) => Measure | null;
		/** The measure in words, for a reason: "22 A a stage". */
		readonly says: (measure: Measure) => string;
	},
): Criterion {
	return criterion as unknown as Criterion;
}

/** A criterion with its types forgotten. */
export interface Criterion extends CriterionWords {
	readonly reads: readonly string[];
	readonly measure: (facts: Readonly<Record<string, unknown>>) => Measure | null;
	readonly says: (measure: Measure) => string;
}
