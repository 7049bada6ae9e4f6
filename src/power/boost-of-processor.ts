import type { Interval } from "../maths/interval.ts";
import { idleW, labelHeldAfterBoost, usualAveragingS } from "../reference/activity-loads.ts";
import { boostSeconds } from "./boost-seconds.ts";
import type { UseOfProcessor } from "./counted-watts.ts";

/** How long a processor holds its highest watts from the start of heavy work, and what follows. */
export interface Boost {
	readonly peakW: number;
	/** Null where it has no end. */
	readonly seconds: Interval | null;
	/** Watts after it; null where it has no end. */
	readonly thenW: number | null;
	/** "may fall back": newer firmware enforces the limit, older does not. */
	readonly after: "falls back" | "may fall back" | "holds";
}

/** Light work before heavy work takes up to this part of the limit (own convention). */
const lightShare = 0.3;

/** Null where the page does not give what is needed: the highest watts, the label and how the limit behaves. */
export function boostOf({ peakW, baseW, averagingS, limitPolicy, raisesClock }: UseOfProcessor): Boost | null {
	if (peakW === undefined || limitPolicy === undefined) return null;
	if (raisesClock || limitPolicy === "fixed" || limitPolicy === "lifted-by-board")
		return { peakW, seconds: null, thenW: null, after: "holds" };
	if (baseW === undefined || peakW <= baseW) return null;
	const tau = averagingS === undefined ? usualAveragingS : { low: averagingS, high: averagingS };
	const from = (beforeW: number, averaging: number, heldW: number) =>
		boostSeconds({ peakW, heldW, beforeW, averagingS: averaging });
	return {
		peakW,
		seconds: {
			low: from(Math.max(idleW, lightShare * baseW), tau.low, baseW),
			high: from(idleW, tau.high, Math.min(baseW * labelHeldAfterBoost, (peakW + baseW) / 2)),
		},
		thenW: baseW,
		after: limitPolicy === "timed-boost" ? "falls back" : "may fall back",
	};
}
