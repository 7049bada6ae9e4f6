import { defineCriterion, type Measure } from "./define-criterion.ts";

/** Core voltage under load; from memory, examples in power controllers' data sheets run from 1.2 to 1.3 V. */
const coreVolts = 1.2;
/** Hours of load lie between the label watts and this many times as much, where nobody has measured them (from memory). */
const mostSustainedOverBase = 2;
/** Stages on boards whose maker does not publish them (common practice, no source). */
const unpublishedStages = { low: 4, high: 16 };

/** How hard the stages that feed the processor have to work: ampere a stage under hours of load. */
export const stageLoad = defineCriterion({
	id: "stage-load",
	name: "load on the power stages",
	asks: "How much would a slowdown in long, heavy work bother you?",
	why: "The power stages beside the socket feed the processor. The more current each carries, the hotter it gets, and hot stages make the board hold the processor back.",
	ends: {
		worst: "the stages work at their limit and the board may hold the processor back",
		best: "the stages hardly get warm, for hours",
	},
	unit: "A a stage",
	// ISL6219A, p. 12: 15 to 20 A a phase is the most economical, up to 30 A needs heat sinks and forced air.
	scale: [
		[12, 1],
		[20, 0.8],
		[30, 0.4],
		[45, 0],
	],
	source: "isl6219a",
	grounds:
		"15 to 20 A a stage is usual, up to 30 A needs heat sinks and moving air; 12 A and 45 A are this project's own ends.",
	reads: [
		"board.powerDelivery.coreStages",
		"processor.sustainedW",
		"processor.baseW",
		"processor.peakW",
		"processor.limitPolicy",
	],
	measure(facts): Measure | null {
		const watts = sustainedWatts(
			facts["processor.sustainedW"],
			facts["processor.baseW"],
			facts["processor.peakW"],
			facts["processor.limitPolicy"] === "fixed",
		);
		if (!watts) return null;
		const stages = facts["board.powerDelivery.coreStages"];
		const range = stages === undefined ? unpublishedStages : { low: stages, high: stages };
		return {
			low: watts.low / coreVolts / range.high,
			high: watts.high / coreVolts / range.low,
			missing: [
				...(stages === undefined ? ["board.powerDelivery.coreStages"] : []),
				...(watts.low < watts.high ? ["processor.sustainedW"] : []),
			],
		};
	},
	says: ({ low, high }) => {
		const [from, to] = [Math.round(low), Math.round(high)];
		return `each power stage carries ${from === to ? `about ${from}` : `${from} to ${to}`} A under load; up to 20 A is normal`;
	},
});

/** Label watts alone never are the sustained watts: boards lift limits, and newer firmware enforces them again. */
function sustainedWatts(
	sustainedW: number | undefined,
	baseW: number | undefined,
	peakW: number | undefined,
	fixed: boolean,
): { low: number; high: number } | null {
	if (sustainedW !== undefined) return { low: sustainedW, high: sustainedW };
	if (baseW === undefined) return peakW === undefined ? null : { low: peakW / mostSustainedOverBase, high: peakW };
	if (fixed) return { low: baseW, high: baseW };
	// A page may give a peak below the label watts; that is no reason to fail, only to be unsure.
	const peak = peakW ?? baseW * mostSustainedOverBase;
	return { low: Math.min(baseW, peak), high: Math.max(baseW, peak) };
}
