import type { Board } from "../parts/board.ts";
import type { BuildFacts } from "../parts/build.ts";
import { buildAround } from "./around-board.ts";
import { type Plan, planFor } from "./plan.ts";
import { type PlanProblem, problemOf } from "./problem.ts";
import { factsThatSettleLimits } from "./processor-limits.ts";
import { type UplinkLoad, uplinkLoad } from "./uplink.ts";
import { type Blocking, whatBlocks } from "./what-blocks.ts";
import { type Going, whoMustGo } from "./who-must-go.ts";

/** What goes where on a board, and how sure that is. */
export interface PlanMeasure {
	readonly problem: PlanProblem;
	/** With everything that is not known taken well; where `differs` is false it holds whatever turns out. */
	readonly plan: Plan;
	/** Things that find a place at best and none at worst. */
	readonly mayLackPlace: readonly string[];
	/** Paths of facts that would settle that. */
	readonly missing: readonly string[];
	readonly blocking: readonly Blocking[];
	readonly goings: readonly (readonly Going[])[];
	readonly uplink: UplinkLoad;
	/** Things named for later, and those that would still find a place at a useful speed beside all the rest. */
	readonly later: { readonly wanted: number; readonly placed: number };
}

/** Plans a board for a build: at best and at worst, so that what is not known shows. */
export function measurePlan(board: Board, facts: BuildFacts): PlanMeasure {
	const build = buildAround(facts);
	const problem = problemOf(board, build, { leaning: "best" });
	const plan = planFor(problem);
	const worst = planFor(problemOf(board, build, { leaning: "worst" }));
	const lacking = new Set(plan.unplaced.map(({ id }) => id));
	const mayLackPlace = worst.unplaced.filter(({ id }) => !lacking.has(id)).map(({ name }) => name);
	const grown = planFor(problemOf(board, build, { leaning: "best", withLater: true }));
	const isLater = ({ id }: { readonly id: string }) => id.startsWith("later-");
	return {
		problem,
		plan,
		mayLackPlace,
		missing: mayLackPlace.length > 0 ? missingOf(board, facts) : [],
		blocking: plan.unplaced.map((device) => whatBlocks(problem, plan, device)),
		goings: plan.unplaced.length > 0 ? whoMustGo(problem) : [],
		uplink: uplinkLoad(plan.placed, board.chipsetUplink),
		later: {
			wanted: [...grown.placed.map(({ device }) => device), ...grown.unplaced].filter(isLater).length,
			placed: grown.placed.filter(({ device }) => isLater(device)).length,
		},
	};
}

/** Facts that a plan reads and that are not there. */
function missingOf(board: Board, facts: BuildFacts): readonly string[] {
	const card = facts.graphicsCard;
	const connectors = [...(board.cardSlots ?? []), ...(board.m2Sockets ?? [])].map(({ name }) => name);
	return [
		...(board.sharing === undefined ? ["board.sharing"] : []),
		...(board.cardSlots === undefined ? ["board.cardSlots"] : []),
		...(board.m2Sockets === undefined ? ["board.m2Sockets"] : []),
		...(board.drivePorts === undefined ? ["board.drivePorts"] : []),
		...factsThatSettleLimits(connectors, board.conditions ?? [], buildAround(facts).processor),
		...(card.state === "unknown" ? ["graphicsCard"] : []),
		...(card.state === "have" && card.part.thicknessMm === undefined ? ["graphicsCard.thicknessMm"] : []),
	];
}
