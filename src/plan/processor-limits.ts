import { kleeneAnd, type ThreeValued } from "../maths/kleene.ts";
import type { Board } from "../parts/board.ts";
import type { HaveState } from "../parts/build.ts";
import { canonicalName } from "../parts/canonical-name.ts";
import type { Leaning } from "./connector.ts";

type Condition = NonNullable<Board["conditions"]>[number];

/** What the limits of a board ask of a processor, and what the processor itself gives. */
export interface ProcessorOfLimits {
	readonly state: HaveState;
	readonly series: string | undefined;
	readonly generation: string | undefined;
	readonly graphics: boolean | undefined;
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
	conditions: readonly Condition[],
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

function limited<C extends Limited>(connector: C, { dead, wiredLanes, generation }: Condition): C {
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
	conditions: readonly Condition[],
	processor: ProcessorOfLimits,
): readonly string[] {
	const open = conditions.filter(
		(condition) => names.includes(condition.connector) && limitHolds(condition, processor) === "unknown",
	);
	if (open.length === 0) return [];
	if (processor.state === "unknown") return ["processor"];
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
