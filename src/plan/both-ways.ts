import { once } from "../maths/once.ts";
import { isAllKnown } from "./all-known.ts";
import type { Device } from "./device.ts";
import { type Plan, planFor } from "./plan.ts";
import { type BoardOfPlan, type BuildAround, type PlanProblem, problemOf } from "./problem.ts";
import { whatWouldSettle } from "./what-would-settle.ts";

/** A plan with everything that is not known turning out well, and one with all of it turning out badly. */
export interface PlanBothWays {
	readonly problem: PlanProblem;
	readonly worstProblem: PlanProblem;
	readonly best: Plan;
	readonly worst: Plan;
	/** Things that find no place, however it turns out. */
	readonly without: readonly Device[];
	/** Things of which it is not known whether they find one. */
	readonly unsure: readonly Device[];
	/** Paths of the facts that would settle it. */
	readonly missing: readonly string[];
}

/** Plans a board for a build at best and at worst. An M.2 drive without a socket goes on an adapter where it can. */
export function planBothWays(board: BoardOfPlan, build: BuildAround): PlanBothWays {
	const problem = problemOf(board, build, { leaning: "best", mayAdapt: true });
	const best = planFor(problem);
	const worstProblem = problemOf(board, build, { leaning: "worst", mayAdapt: true });
	const worst = isAllKnown(problem, worstProblem) ? best : planFor(worstProblem);
	const lacksAtBest = (device: Device) => best.unplaced.some(({ id }) => id === device.id);
	const mayAdaptElsewhere = (device: Device) => unlistedAdapterPlace(board, device) !== null;
	const unsure = [
		...problem.unlisted.filter(({ standing }) => standing !== "later"),
		...best.unplaced.filter(mayAdaptElsewhere),
		...worst.unplaced.filter((device) => !lacksAtBest(device)),
	];
	const unlisted = [...problem.unlisted, ...best.unplaced].flatMap(
		(device) => unlistedAdapterPlace(board, device) ?? [],
	);
	// To find out takes many plans more, and few ask.
	const missing = once(() => (unsure.length === 0 ? [] : whatWouldSettle(board, build, unlisted)));
	return {
		problem,
		worstProblem,
		best,
		worst,
		without: best.unplaced.filter((device) => !mayAdaptElsewhere(device)),
		unsure,
		get missing() {
			return missing();
		},
	};
}

/** The list of connectors that nobody knows and in which an M.2 drive might go on an adapter; null where all is known. */
function unlistedAdapterPlace(board: BoardOfPlan, device: Device): "board.cardSlots" | "board.drivePorts" | null {
	if (device.kind !== "M.2 drive") return null;
	if (device.drive.link === "SATA") return board.drivePorts ? null : "board.drivePorts";
	return board.cardSlots ? null : "board.cardSlots";
}
