import { kleeneAnd, type ThreeValued } from "../maths/kleene.ts";
import type { Board } from "../parts/board.ts";
import type { HaveState } from "../parts/build.ts";
import { canonicalName } from "../parts/canonical-name.ts";
import type { FactsUnder } from "../parts/fact-path.ts";

type Condition = NonNullable<Board["conditions"]>[number];

/** How to take what is not known: as it would turn out best, or worst. Both alike: the answer is certain. */
export type Leaning = "best" | "worst";

/** What the limits of a board ask of a processor. */
export interface ProcessorOfLimits {
	readonly state: HaveState;
	readonly series: string | undefined;
	readonly generation: string | undefined;
	readonly graphics: boolean | undefined;
}

/** That processor, from the facts a rule has read. */
export function processorOfLimits(
	facts: FactsUnder<never, "processor" | "processor.series" | "processor.generation" | "processor.graphics">,
): ProcessorOfLimits {
	return {
		state: facts.processor ?? "unknown",
		series: facts["processor.series"],
		generation: facts["processor.generation"],
		graphics: facts["processor.graphics"],
	};
}

/** A slot or socket, as far as a limit touches it. */
interface Limited {
	readonly name: string;
	readonly wiredLanes?: number | undefined;
}

/**
 * The connectors as they are with this processor: without those that do not work with it, and with the lanes they then
 * have. A limit of which nobody knows whether it holds is taken by the leaning. A processor that is still to be bought
 * is bought so that no limit holds.
 */
export function withProcessorLimits<C extends Limited>(
	connectors: readonly C[],
	conditions: readonly Condition[],
	processor: ProcessorOfLimits,
	leaning: Leaning,
): readonly C[] {
	return connectors.flatMap((connector) => {
		const touching = conditions.filter((condition) => condition.connector === connector.name);
		return touching.reduce<C | null>((left, condition) => left && limited(left, condition), connector) ?? [];
	});

	function limited(connector: C, condition: Condition): C | null {
		const holds = limitHolds(condition, processor);
		if (holds === "no") return connector;
		const { dead, wiredLanes } = condition;
		const then = dead ? null : wiredLanes === undefined ? connector : { ...connector, wiredLanes };
		if (holds === "yes") return then;
		if (then === null) return leaning === "best" ? connector : null;
		const thenIsLess = (then.wiredLanes ?? 0) < (connector.wiredLanes ?? Number.POSITIVE_INFINITY);
		return thenIsLess === (leaning === "best") ? connector : then;
	}
}

/** The facts of the processor that would settle the limits of these connectors. */
export function factsThatSettleLimits(
	connectors: readonly Limited[] | undefined,
	conditions: readonly Condition[] | undefined,
	processor: ProcessorOfLimits,
): readonly string[] {
	if (processor.state === "unknown") return conditions?.length ? ["processor"] : [];
	const open = (conditions ?? []).filter(
		(condition) =>
			connectors?.some(({ name }) => name === condition.connector) && limitHolds(condition, processor) === "unknown",
	);
	return [
		...(open.some(({ when }) => when.processorSeries && !processor.series) ? ["processor.series"] : []),
		...(open.some(({ when }) => when.processorGenerations && !processor.generation) ? ["processor.generation"] : []),
		...(open.some(({ when }) => when.processorGraphics !== undefined && processor.graphics === undefined)
			? ["processor.graphics"]
			: []),
	];
}

function limitHolds({ when }: Condition, { state, series, generation, graphics }: ProcessorOfLimits): ThreeValued {
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
