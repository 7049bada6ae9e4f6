import type { Interval } from "../maths/interval.ts";
import type { BuildFacts } from "../parts/build.ts";
import { countedWatts, fullLoadWatts, processorUseOf } from "../power/counted-watts.ts";
import { warmedUp } from "../power/heat-path.ts";
import { sessionMinutes, warmUpMinutes } from "../reference/activity-loads.ts";

/** What the uses named so far come to in watts, in two or three sentences; null where the watts are not known. */
export function wattsWords(facts: BuildFacts): string | null {
	if (facts.processor.state !== "have") return null;
	const use = processorUseOf(facts);
	const [full, counted] = [fullLoadWatts(use), countedWatts(use)];
	if (!full || !counted) return null;
	const load = `At full load the ${facts.processor.part.name} takes ${rangeWords(full)}.`;
	const warm = warmWords(facts);
	if (!facts.activities)
		return `${load} To be on the safe side, we count ${rangeWords(counted)} for the board to feed.${warm}`;
	return counted.high < full.high
		? `${load} What you named needs only part of it: we count ${rangeWords(counted)} for the board to feed.${warm}`
		: `${load} For what you named, we count ${rangeWords(counted)} for the board to feed.${warm}`;
}

/** How far the stages warm up in a short session; nothing to say where they get as warm as they ever will. */
function warmWords({ sessionLength }: BuildFacts): string {
	if (sessionLength !== "minutes") return "";
	const [low, high] = [warmUpMinutes.high, warmUpMinutes.low].map((constant) =>
		Math.round(100 * warmedUp(sessionMinutes.minutes, constant)),
	);
	return ` Work that ends after ${sessionMinutes.minutes} minutes warms the parts that feed the processor only ${low} to ${high} per cent as much as work for hours.`;
}

function rangeWords({ low, high }: Interval): string {
	const [from, to] = [Math.round(low), Math.round(high)];
	return from === to ? `about ${from} W` : `${from} to ${to} W`;
}
