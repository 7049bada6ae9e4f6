import { type BoardLimit, factsThatSettle, limitHolds, type ProcessorOfLimits } from "../reference/limit-holds.ts";
import type { Leaning } from "./connector.ts";

/** The processor a plan is made for: what limits ask of it, and what it gives. */
export interface ProcessorOfPlan extends ProcessorOfLimits {
	/** Lanes for the graphics card, and the generation of all its lanes. */
	readonly graphicsLanes: number | undefined;
	readonly linkGeneration: number | undefined;
}

/** A slot or socket, as far as a limit touches it. */
export interface Limited {
	readonly name: string;
	readonly lanes: number;
	readonly generation: number | null;
	readonly isDead: boolean;
}

/**
 * The connector as it is with this processor. A limit of which nobody knows whether it holds is taken by the leaning. A
 * processor that is still to be bought is bought so that no limit holds.
 */
export function withProcessorLimits<C extends Limited>(
	connector: C,
	conditions: readonly BoardLimit[],
	processor: ProcessorOfLimits,
	leaning: Leaning,
): C {
	return conditions
		.filter((condition) => condition.connector === connector.name)
		.reduce((left, condition) => {
			const holds = limitHolds(condition, processor);
			return holds === "yes" || (holds === "unknown" && leaning === "worst") ? limited(left, condition) : left;
		}, connector);
}

function limited<C extends Limited>(connector: C, { dead, wiredLanes, generation }: BoardLimit): C {
	if (dead || wiredLanes === 0) return { ...connector, lanes: 0, isDead: true };
	return {
		...connector,
		lanes: Math.min(connector.lanes, wiredLanes ?? connector.lanes),
		generation:
			generation === undefined ? connector.generation : Math.min(connector.generation ?? generation, generation),
	};
}

/** The facts of the processor that would settle the limits of these connectors. */
export function factsThatSettleLimits(
	names: readonly string[],
	conditions: readonly BoardLimit[],
	processor: ProcessorOfLimits,
): readonly string[] {
	const touching = conditions.filter(({ connector }) => names.includes(connector));
	const isOpen = touching.some((limit) => limitHolds(limit, processor) === "unknown");
	return processor.state === "unknown" && isOpen ? ["processor"] : factsThatSettle(touching, processor);
}
