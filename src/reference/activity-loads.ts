import type { PcCase } from "../parts/case.ts";
import type { Activity, SessionLength, SummerRoom } from "../parts/wants.ts";

/** Share of its full load that a processor takes in an activity (from memory; own convention where uses differ). */
export const activityLoad: Readonly<Record<Activity, number>> = {
	writing: 0.3,
	films: 0.3,
	"sound-recording": 0.4,
	"always-on": 0.3,
	games: 0.6,
	pictures: 0.8,
	building: 1,
};

/** Minutes that stand for a length of heavy work. */
export const sessionMinutes: Readonly<Record<SessionLength, number>> = {
	minutes: 8,
	"an-hour": 60,
	"all-day": Number.POSITIVE_INFINITY,
};

/** How long heavy work lasts, within a sentence. */
export const sessionWords: Readonly<Record<SessionLength, string>> = {
	minutes: "for some minutes",
	"an-hour": "for an hour",
	"all-day": "for hours",
};

/** Time constant with which stages, heat sinks and board warm up, in minutes (from memory). */
export const warmUpMinutes = { low: 5, high: 15 } as const;

/** Room air on a hot evening, in degrees C (own convention: what the answers say in figures). */
export const roomC: Readonly<Record<SummerRoom, number>> = { cool: 25, warm: 30, "fan-on": 35 };

/** How much warmer it is inside a case under load, by its front, in K (common practice, no source). */
export const caseRiseK: Readonly<Record<NonNullable<PcCase["frontOpen"]>, number>> = { mesh: 5, slits: 10, solid: 15 };

/** Hot spot of the stages up to which a board is at ease for years, in degrees C (common practice, no source). */
export const comfortableC = 90;

/** Hot spot of the stages at which boards hold the processor back, in degrees C (common practice: 105 to 110). */
export const holdingBackC = 105;

/** A stage hotter than this is past every limit, so how much hotter does not matter, in degrees C (own convention). */
export const hottestToldC = 150;

/** So far below the comfortable line there is plenty to spare, in K (own convention). */
export const ampleK = 15;

/**
 * Highest watts over label watts where nobody gives the highest. From memory: from about 1.35 to over 3 times. The ATX
 * 3.0 guide, rev. 2.0, table 2-1, leaves up to 3.45 times the label behind the stages, for its class of 65 W (derived).
 */
export const peakOverBase = { low: 1.35, high: 3.5 } as const;

/** Where a board lifts the limit, full load takes at least this part of the highest watts (from memory). */
export const leastOfPeakHeld = 0.85;

/** After a timed boost a processor holds its label watts, and up to a tenth more (own convention: limits are not exact). */
export const labelHeldAfterBoost = 1.1;

/** Averaging time of a power limit where nobody gives it, in seconds (from memory: 28 and 56 s are common). */
export const usualAveragingS = { low: 28, high: 56 } as const;

/** What a processor takes while nothing is done, in watts (from memory). */
export const idleW = 10;

/** What raising the clock does to the watts of full load, as a factor (from memory: a tenth to a third more). */
export const clockRaise = { low: 1.1, high: 1.35 } as const;
