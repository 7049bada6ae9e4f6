import { type Interval, scaleInterval } from "../maths/interval.ts";
import {
	type ProcessorClass,
	processorClasses,
	processorInput,
	restOfPlatform,
	stagesPassOn,
} from "../reference/supply-budget.ts";
import { peakOfUse, type UseOfProcessor } from "./counted-watts.ts";

/** What hangs on the 12 V output of a supply. */
export interface SupplyLoad {
	readonly processorA: number;
	readonly cardW: number;
	/** Board, memory, drives and fans. */
	readonly restA: number;
}

/** The 12 V current that all parts together ask for, in A: processor + card / 12 V + the rest. */
export function budgetAmps({ processorA, cardW, restA }: SupplyLoad): number {
	return processorA + cardW / 12 + restA;
}

/**
 * The 12 V current a processor takes at its highest watts, losses of the board's stages included.
 *
 * @returns A as a range, and whether it is guessed from the label; null where the page gives no watts at all
 */
export function processorAmps(use: UseOfProcessor): (Interval & { readonly guessed: boolean }) | null {
	const peak = peakOfUse(use);
	if (!peak) return null;
	return { ...scaleInterval(peak, 1 / (stagesPassOn.share * processorInput.volts)), guessed: peak.guessed };
}

/** The heaviest class of the guide that is not above the label watts; null below all of them, or where nobody knows. */
export function processorClass(labelW: number | undefined): ProcessorClass | null {
	return processorClasses.classes.findLast((one) => labelW !== undefined && one.labelW <= labelW) ?? null;
}

/**
 * What the rest of the platform takes at 12 V, in A: simple without a graphics card, median with one. A large one is
 * never assumed (own convention).
 */
export function restAmps(hasCard: boolean): number {
	return hasCard ? restOfPlatform.medianA : restOfPlatform.simpleA;
}
