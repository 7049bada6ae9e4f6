import { once } from "../maths/once.ts";
import type { Board } from "../parts/board.ts";
import type { BuildFacts } from "../parts/build.ts";
import { processorUseOf, type UseOfProcessor } from "./counted-watts.ts";
import type { AirOfBuild } from "./heat-path-range.ts";
import type { Delivery } from "./stage-range.ts";
import { type SteadyPower, steadyPowerOf } from "./steady-power.ts";
import { factsThatNarrow } from "./what-narrows.ts";

declare module "../parts/fact-path.ts" {
	interface MeasuredFacts {
		readonly power: PowerFacts;
	}
}

/** What the power and heat of a board tell the rules and criteria. */
export interface PowerFacts {
	/** Undefined where nothing is known of the processor's watts. */
	readonly steady: SteadyPower | undefined;
	/** Facts that would narrow the temperature, the one that narrows it most first. */
	readonly narrowing: readonly string[];
}

/** What power sees of a build: the rest changes nothing. */
export interface PowerOfBuild {
	readonly use: UseOfProcessor;
	readonly air: AirOfBuild;
}

/** What of a build decides the watts and the air. */
export function powerOfBuild(facts: BuildFacts): PowerOfBuild {
	const { cooler, summerRoom, caseFans } = facts;
	const pcCase = facts.case;
	return {
		use: processorUseOf(facts),
		air: {
			summerRoom: summerRoom ?? undefined,
			frontOpen: pcCase.state === "have" ? pcCase.part.frontOpen : undefined,
			// "none": the cooler that comes with the processor, which blows air down on the board.
			coolerKind: cooler.state === "have" ? cooler.part.kind : cooler.state === "none" ? "air" : undefined,
			caseFans: caseFans ?? undefined,
		},
	};
}

/** Power and heat of a board for a build; each part is worked out when it is first read, and then kept. */
export function powerFactsOf(board: Board, facts: BuildFacts): PowerFacts {
	return powerFactsAround(board.powerDelivery ?? {}, powerOfBuild(facts));
}

export function powerFactsAround(delivery: Delivery, { use, air }: PowerOfBuild): PowerFacts {
	const steady = steadyPowerOf({ delivery, use, air }) ?? undefined;
	const narrowing = once(() => (steady ? factsThatNarrow({ delivery, use, air }, steady) : []));
	return {
		steady,
		get narrowing() {
			return narrowing();
		},
	};
}
