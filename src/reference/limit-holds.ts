import { kleeneAnd, type ThreeValued } from "../maths/kleene.ts";
import type { Board } from "../parts/board.ts";
import type { HaveState } from "../parts/build.ts";
import { canonicalName } from "../parts/canonical-name.ts";

export type BoardLimit = NonNullable<Board["conditions"]>[number];

/** What the limits of a board ask of a processor. */
export interface ProcessorOfLimits {
	readonly state: HaveState;
	readonly series: string | undefined;
	readonly generation: string | undefined;
	readonly graphics: boolean | undefined;
}

/** The facts of the processor that would settle these limits; none where all are settled. */
export function factsThatSettle(limits: readonly BoardLimit[], processor: ProcessorOfLimits): readonly string[] {
	const open = limits.filter((limit) => limitHolds(limit, processor) === "unknown");
	return [
		...(open.some(({ when }) => when.processorSeries && !processor.series) ? ["processor.series"] : []),
		...(open.some(({ when }) => when.processorGenerations && !processor.generation) ? ["processor.generation"] : []),
		...(open.some(({ when }) => when.processorGraphics !== undefined && processor.graphics === undefined)
			? ["processor.graphics"]
			: []),
	];
}

/** Whether a limit of a board holds with this processor; a processor still to be bought is bought so that none does. */
export function limitHolds(
	{ when }: BoardLimit,
	{ state, series, generation, graphics }: ProcessorOfLimits,
): ThreeValued {
	if (state === "open") return "no";
	const { processorSeries, processorGenerations, processorGraphics } = when;
	return kleeneAnd(
		isAmong(series, processorSeries),
		isAmong(generation, processorGenerations),
		isAmong(graphics, processorGraphics === undefined ? undefined : [processorGraphics]),
	);
}

/** Whether a fact is one of those named; where none are named, it does not matter. */
function isAmong(value: string | boolean | undefined, named: readonly (string | boolean)[] | undefined): ThreeValued {
	if (!named) return "yes";
	if (value === undefined) return "unknown";
	return named.some((one) => canonicalName(String(one)) === canonicalName(String(value))) ? "yes" : "no";
}
