import type { Interval } from "../maths/interval.ts";
import type { BuildFacts } from "../parts/build.ts";
import { countedWatts, fullLoadWatts } from "../power/counted-watts.ts";

/** What the uses named so far come to in watts, in two sentences; null where the processor's watts are not known. */
export function wattsWords({ processor, activities, sessionLength, clockPlan }: BuildFacts): string | null {
	if (processor.state !== "have") return null;
	const { sustainedW, baseW, peakW, limitPolicy, name } = processor.part;
	const use = { sustainedW, baseW, peakW, limitPolicy };
	const full = fullLoadWatts(use);
	const counted = countedWatts({
		...use,
		activities: activities ?? undefined,
		sessionLength: sessionLength ?? undefined,
		raisesClock: clockPlan === "done-before" && processor.part.unlocked !== false,
	});
	if (!full || !counted) return null;
	const load = `At full load the ${name} takes ${rangeWords(full)}.`;
	if (!activities) return `${load} To be on the safe side, we count ${rangeWords(counted)} for the board to feed.`;
	return counted.high < full.high
		? `${load} What you named needs only part of it: we count ${rangeWords(counted)} for the board to feed.`
		: `${load} For what you named, we count ${rangeWords(counted)} for the board to feed.`;
}

function rangeWords({ low, high }: Interval): string {
	const [from, to] = [Math.round(low), Math.round(high)];
	return from === to ? `about ${from} W` : `${from} to ${to} W`;
}
