/** Why the short walk asks no more. */
export type WhyStopped =
	/** No answer to any question left would put another board first. */
	| "nothing-changes-the-lead"
	/** What is left could change it, but for little: less than half a point, and the lead is sure enough. */
	| "little-to-gain"
	/** So many questions were asked as a short walk may have. */
	| "enough-asked";

/** A question is worth asking from so many points of 100 on, on average (own convention). */
export const leastWorth = 0.5;
/** The most questions of a short walk (own convention): a quarter of an hour at less than a minute each. */
export const mostAsked = 18;
/** In such a share of all draws the leader has to be ahead of every other board to be sure (own convention). */
export const sureShare = 0.95;
/** Or no choice of another board could bring more than so many points of 100 (own convention). */
export const smallRegret = 3;

/** A question as far as stopping looks at it. */
export interface OpenWorth {
	/** Points of 100 that an answer brings on average, times the chance of one; null where it cannot be valued. */
	readonly gain: number | null;
	/** Whether some answer puts another board first. */
	readonly changesTheLeader: boolean;
	/** Whether the short walk asks it however little it brings. */
	readonly isShort: boolean;
}

/**
 * Whether a short walk ends, and why. A single question's worth says nothing of two together, so a worth below half a
 * point alone does not end it: the lead must be sure too, or nothing marked for the short walk is left that can change it.
 *
 * @param dealtWith number of questions asked so far
 * @param leadIsSure asked for only where it decides
 */
export function whyStopped(
	open: readonly OpenWorth[],
	dealtWith: number,
	leadIsSure: () => boolean,
): WhyStopped | null {
	if (!open.some(({ changesTheLeader }) => changesTheLeader)) return "nothing-changes-the-lead";
	if (dealtWith >= mostAsked) return "enough-asked";
	const asked = open.filter(isWorthAsking);
	if (asked.length === 0) return "little-to-gain";
	if (asked.some(({ gain }) => gain === null || gain >= leastWorth)) return null;
	return leadIsSure() ? "little-to-gain" : null;
}

/** Whether a short walk asks a question: it can change the leader, and is marked as short or worth half a point. */
export function isWorthAsking({ gain, changesTheLeader, isShort }: OpenWorth): boolean {
	return changesTheLeader && (isShort || (gain !== null && gain >= leastWorth));
}
