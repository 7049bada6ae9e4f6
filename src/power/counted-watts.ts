import { exactly, type Interval } from "../maths/interval.ts";
import type { FactsUnder } from "../parts/fact-path.ts";
import type { Processor } from "../parts/processor.ts";
import type { Activity, SessionLength } from "../parts/wants.ts";
import {
	activityLoad,
	clockRaise,
	guessedPeakOverBase,
	sessionMinutes,
	warmUpMinutes,
} from "../reference/activity-loads.ts";

/** What is known of a processor's watts and of its use; whatever is missing is counted on the safe side. */
export interface UseOfProcessor {
	readonly sustainedW?: number | undefined;
	readonly baseW?: number | undefined;
	readonly peakW?: number | undefined;
	readonly limitPolicy?: Processor["limitPolicy"] | undefined;
	/** Unknown counts as full load; an empty list as the lightest. */
	readonly activities?: readonly Activity[] | undefined;
	/** Unknown counts as all day. */
	readonly sessionLength?: SessionLength | undefined;
	/** Whether the clock will be raised above what the maker set. */
	readonly raisesClock?: boolean | undefined;
}

/** Facts that tell how a processor will be used, by path. */
export const processorUsePaths = [
	"processor.sustainedW",
	"processor.baseW",
	"processor.peakW",
	"processor.limitPolicy",
	"processor.unlocked",
	"activities",
	"sessionLength",
	"clockPlan",
] as const;

/** The use that facts tell of. A clock that the processor does not let be raised is not raised. */
export function processorUse(facts: FactsUnder<never, (typeof processorUsePaths)[number]>): UseOfProcessor {
	return {
		sustainedW: facts["processor.sustainedW"],
		baseW: facts["processor.baseW"],
		peakW: facts["processor.peakW"],
		limitPolicy: facts["processor.limitPolicy"],
		activities: facts.activities,
		sessionLength: facts.sessionLength,
		raisesClock: facts.clockPlan === "done-before" && facts["processor.unlocked"] !== false,
	};
}

/**
 * The watts a board must feed for as long as the heaviest use lasts, as a steady load that warms it alike: full load by
 * the processor's facts, times the share of it that the heaviest activity takes, times how far the stages warm up.
 *
 * @returns watts as a range; null where nothing is known of the processor's watts
 */
export function countedWatts(use: UseOfProcessor): Interval | null {
	const full = fullLoadWatts(use);
	if (!full) return null;
	const factor = loadShare(use.activities) * warmUp(use.sessionLength);
	const raised = use.raisesClock ? clockRaise : { low: 1, high: 1 };
	return { low: full.low * factor * raised.low, high: full.high * factor * raised.high };
}

/** Label watts alone never are the sustained watts: boards lift limits, and newer firmware enforces them again. */
export function fullLoadWatts({ sustainedW, baseW, peakW, limitPolicy }: UseOfProcessor): Interval | null {
	if (sustainedW !== undefined) return exactly(sustainedW);
	if (baseW === undefined) return peakW === undefined ? null : { low: peakW / guessedPeakOverBase, high: peakW };
	if (limitPolicy === "fixed") return exactly(baseW);
	// A page may give a peak below the label watts; that is no reason to fail, only to be unsure.
	const peak = peakW ?? baseW * guessedPeakOverBase;
	return { low: Math.min(baseW, peak), high: Math.max(baseW, peak) };
}

/** The share of full load that the heaviest of the activities takes, 0 to 1. */
function loadShare(activities: readonly Activity[] | undefined): number {
	if (!activities) return 1;
	return Math.max(activityLoad.writing, ...activities.map((activity) => activityLoad[activity]));
}

/** How far a body warms up in a session: 1 - exp(-t / tau), the step response of a first-order system. */
function warmUp(sessionLength: SessionLength | undefined): number {
	const minutes = sessionMinutes[sessionLength ?? "all-day"];
	return 1 - Math.exp(-minutes / warmUpMinutes);
}
