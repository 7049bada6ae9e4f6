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

/** Time constant with which stages, heat sinks and board warm up, in minutes (from memory: 5 to 15). */
export const warmUpMinutes = 10;

/** Room air on a hot evening, in degrees C (own convention: what the answers say in figures). */
export const roomC: Readonly<Record<SummerRoom, number>> = { cool: 25, warm: 30, "fan-on": 35 };

/** How much warmer it is inside a case under load, by its front, in K (common practice, no source). */
export const caseRiseK: Readonly<Record<NonNullable<PcCase["frontOpen"]>, number>> = { mesh: 5, slits: 10, solid: 15 };

/** Hot spot of the stages at which boards hold the processor back, in degrees C (common practice: 105 to 110). */
export const stageLimitC = 105;

/**
 * Highest watts over label watts where nobody gives the highest. From memory: it runs from about 1.35 to over 3 times;
 * twice is what this project counts with.
 */
export const guessedPeakOverBase = 2;

/** What raising the clock does to the watts of full load, as a factor (from memory: a tenth to a third more). */
export const clockRaise = { low: 1.1, high: 1.35 } as const;
