import { type Interval, scaleInterval } from "../maths/interval.ts";
import type { BuildFacts } from "../parts/build.ts";
import type { Processor } from "../parts/processor.ts";
import type { Activity, SessionLength } from "../parts/wants.ts";
import { activityLoad, clockRaise, idleW, sessionMinutes, usualAveragingS } from "../reference/activity-loads.ts";
import { boostSeconds } from "./boost-seconds.ts";
import { heldWatts, type ProcessorWatts, peakWatts } from "./held-watts.ts";

/** What is known of a processor's watts and of its use; whatever is missing is counted on the safe side. */
export interface UseOfProcessor extends ProcessorWatts {
	readonly averagingS?: Processor["averagingS"] | undefined;
	/** Unknown counts as full load; an empty list as the lightest. */
	readonly activities?: readonly Activity[] | undefined;
	/** Unknown counts as all day for heat, and as short for a boost. */
	readonly sessionLength?: SessionLength | undefined;
	/** Whether the clock will be raised above what the maker set. */
	readonly raisesClock?: boolean | undefined;
}

/** The use that a build tells of. A clock that the processor does not let be raised is not raised. */
export function processorUseOf({ processor, activities, sessionLength, clockPlan }: BuildFacts): UseOfProcessor {
	const part = processor.state === "have" ? processor.part : undefined;
	return {
		sustainedW: part?.sustainedW,
		baseW: part?.baseW,
		peakW: part?.peakW,
		averagingS: part?.averagingS,
		limitPolicy: part?.limitPolicy,
		activities: activities ?? undefined,
		sessionLength: sessionLength ?? undefined,
		raisesClock: clockPlan === "done-before" && part?.unlocked !== false,
	};
}

/**
 * The watts a board must feed for as long as the heaviest use lasts: full load by the processor's facts, times the share
 * of it that the heaviest activity takes.
 *
 * @returns watts as a range; null where nothing is known of the processor's watts
 */
export function countedWatts(use: UseOfProcessor): Interval | null {
	const full = fullLoadWatts(use);
	return full && scaleInterval(full, loadShare(use.activities));
}

/**
 * The watts of full load for as long as a session lasts. Raising the clock lifts the limits, so it counts on top of the
 * highest watts; in a short session the boost at its start weighs more.
 */
export function fullLoadWatts(use: UseOfProcessor): Interval | null {
	const held = heldWatts(use);
	if (!held) return null;
	const peak = peakOfUse(use);
	if (use.raisesClock)
		return { low: held.low * clockRaise.low, high: Math.max(held.high * clockRaise.high, peak?.high ?? 0) };
	const share = boostShare(use, held, peak);
	return { low: held.low, high: held.high + share * Math.max(0, (peak?.high ?? 0) - held.high) };
}

/** The most a processor takes as it will be used: raising its clock lifts that too. Null where nothing is known. */
export function peakOfUse(use: UseOfProcessor): (Interval & { readonly guessed: boolean }) | null {
	const peak = peakWatts(use);
	if (!peak || !use.raisesClock) return peak;
	return { ...peak, low: peak.low * clockRaise.low, high: peak.high * clockRaise.high };
}

/** The longest part of a session that a timed boost can take, 0 to 1. */
function boostShare(
	{ limitPolicy, averagingS = usualAveragingS.high, sessionLength }: UseOfProcessor,
	held: Interval,
	peak: Interval | null,
): number {
	if (limitPolicy !== "timed-boost" || !peak || peak.high <= held.high) return 0;
	const seconds = boostSeconds({ peakW: peak.high, heldW: held.high, beforeW: idleW, averagingS });
	// Of a length nobody gives the shortest counts here: that is the safe side for a boost, as without end is for heat.
	return Math.min(1, seconds / (60 * sessionMinutes[sessionLength ?? "minutes"]));
}

/** The share of full load that the heaviest of the activities takes, 0 to 1. */
function loadShare(activities: readonly Activity[] | undefined): number {
	if (!activities) return 1;
	return Math.max(activityLoad.writing, ...activities.map((activity) => activityLoad[activity]));
}
