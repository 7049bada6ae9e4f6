import type { PcCase } from "../parts/case.ts";
import type { SummerRoom } from "../parts/wants.ts";
import { countedWatts, processorUse, processorUsePaths } from "../power/counted-watts.ts";
import { caseRiseK, roomC, stageLimitC } from "../reference/activity-loads.ts";
import { defineCriterion, type Measure } from "./define-criterion.ts";

/** Core voltage under load; from memory, examples in power controllers' data sheets run from 1.2 to 1.3 V. */
const coreVolts = 1.2;
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
	reads: ["board.powerDelivery.coreStages", ...processorUsePaths, "summerRoom", "case.frontOpen"],
	measure(facts): Measure | null {
		const watts = countedWatts(processorUse(facts));
		if (!watts) return null;
		const stages = facts["board.powerDelivery.coreStages"];
		const range = stages === undefined ? unpublishedStages : { low: stages, high: stages };
		const heat = heatFactor(facts.summerRoom, facts["case.frontOpen"]);
		return {
			low: (heat * watts.low) / coreVolts / range.high,
			high: (heat * watts.high) / coreVolts / range.low,
			missing: [
				...(stages === undefined ? ["board.powerDelivery.coreStages"] : []),
				...(watts.low < watts.high ? ["processor.sustainedW"] : []),
			],
		};
	},
	says: ({ low, high }) => {
		const [from, to] = [Math.round(low), Math.round(high)];
		return `each power stage carries ${from === to ? `about ${from}` : `${from} to ${to}`} A in your room; up to 20 A is normal, heat sinks not counted`;
	},
});

/**
 * What warm air does to a stage, as more current: loss rises with the square of the current, and the warmer the air,
 * the less loss it takes to the limit. 1 in a warm room behind narrow slits, which also stand for "not known".
 */
function heatFactor(summerRoom: SummerRoom = "warm", frontOpen: NonNullable<PcCase["frontOpen"]> = "slits"): number {
	const usualC = roomC.warm + caseRiseK.slits;
	return Math.sqrt((stageLimitC - usualC) / (stageLimitC - roomC[summerRoom] - caseRiseK[frontOpen]));
}
