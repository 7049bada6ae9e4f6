import type { Board } from "../parts/board.ts";
import type { BuildFacts, HaveState } from "../parts/build.ts";
import { buildAround } from "./around-board.ts";
import { planBothWays } from "./both-ways.ts";
import type { Device } from "./device.ts";
import { type HeaderPlan, headerPlanOf } from "./header-plan.ts";
import { type LaterPlaces, laterPlaces } from "./later-places.ts";
import { type MemorySlots, memorySlotsOf } from "./memory-slots.ts";
import type { Plan } from "./plan.ts";
import type { PlanProblem } from "./problem.ts";
import { type UplinkLoad, uplinkLoad } from "./uplink.ts";
import { type Blocking, whatBlocks } from "./what-blocks.ts";
import { type WayToFit, whoMustGo } from "./who-must-go.ts";

/** What goes where on a board, and how sure that is, with all that is needed to tell it. */
export interface PlanMeasure {
	readonly problem: PlanProblem;
	/** With everything that is not known turning out well. */
	readonly plan: Plan;
	/** Things of which it is not known whether they find a place. */
	readonly mayLackPlace: readonly Device[];
	/** Paths of facts that would settle that. */
	readonly missing: readonly string[];
	readonly blocking: readonly Blocking[];
	/** What else might go so that all the rest fits; none where everything does. */
	readonly waysToFit: readonly WayToFit[];
	readonly uplink: UplinkLoad;
	/** Things named for later, and those that would still find a place at a useful speed beside all the rest. */
	readonly later: LaterPlaces;
	readonly headers: HeaderPlan;
	/** Modules of the memory and the slots they go into; null where no kit is named, slots null where no manual is read. */
	readonly memory: { readonly modules: number; readonly slots: MemorySlots | null } | null;
	/** Cables are plugged in from behind the board. */
	readonly hasPlugsOnBack: boolean;
	/** Whether a graphics card gives the picture, or the board does. */
	readonly graphicsCard: HaveState;
	/** Null where no processor is named. */
	readonly processorName: string | null;
}

/** Plans a board for a build: at best and at worst, so that what is not known shows. */
export function measurePlan(board: Board, facts: BuildFacts): PlanMeasure {
	const build = buildAround(facts);
	const both = planBothWays(board, build);
	const { problem, best } = both;
	return {
		problem,
		plan: best,
		mayLackPlace: both.unsure,
		missing: both.missing,
		blocking: both.without.map((device) => whatBlocks(problem, best, device)),
		waysToFit: both.without.length > 0 ? whoMustGo(problem, best.unplaced) : [],
		uplink: uplinkLoad(best.placed, board.chipsetUplink),
		later: laterPlaces(board, build, both),
		headers: headerPlanOf(board, facts),
		memory: memoryOf(board, facts),
		hasPlugsOnBack: board.connectorsOnBack === true,
		graphicsCard: facts.graphicsCard.state,
		processorName: facts.processor.state === "have" ? facts.processor.part.name : null,
	};
}

function memoryOf(board: Board, { memory }: BuildFacts): PlanMeasure["memory"] {
	const modules = memory.state === "have" ? memory.part.modules : undefined;
	return modules === undefined ? null : { modules, slots: memorySlotsOf(board, modules) };
}
