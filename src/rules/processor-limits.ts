import type { FactsUnder } from "../parts/fact-path.ts";
import { type BoardLimit, factsThatSettle, limitHolds, type ProcessorOfLimits } from "../reference/limit-holds.ts";

/** How to take what is not known: as it would turn out best, or worst. Both alike: the answer is certain. */
export type Leaning = "best" | "worst";

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
	conditions: readonly BoardLimit[],
	processor: ProcessorOfLimits,
	leaning: Leaning,
): readonly C[] {
	return connectors.flatMap((connector) => {
		const touching = conditions.filter((condition) => condition.connector === connector.name);
		return touching.reduce<C | null>((left, condition) => left && limited(left, condition), connector) ?? [];
	});

	function limited(connector: C, condition: BoardLimit): C | null {
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
	conditions: readonly BoardLimit[] | undefined,
	processor: ProcessorOfLimits,
): readonly string[] {
	if (processor.state === "unknown") return conditions?.length ? ["processor"] : [];
	const touching = (conditions ?? []).filter(({ connector }) => connectors?.some(({ name }) => name === connector));
	return factsThatSettle(touching, processor);
}
