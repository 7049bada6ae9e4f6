import type { Highs } from "highs";
import type { PlanProblem } from "../../src/plan/problem.ts";
import { valuesByHighs } from "../plan/highs-oracle.ts";
import { msEach, processorMs } from "./stop-watch.ts";

/** What the solver finds, and where its time goes, in ms of the processor. */
export interface SolverRun {
	readonly values: readonly number[];
	/** All of it: making the model, writing its text, and a call of the solver for each goal. */
	readonly wholeMs: number;
	/** Inside the calls: reading the text, solving, handing the answer out. */
	readonly callsMs: number;
	/** Solving alone, measured apart on the same texts right afterwards. */
	readonly solvingMs: number;
}

export function runSolver(highs: Highs, problem: PlanProblem): SolverRun {
	const calls: Parameters<Highs["solve"]>[] = [];
	let callsMs = 0;
	const watched: Highs = {
		...highs,
		solve: (...call) => {
			calls.push(call);
			const start = processorMs();
			const solution = highs.solve(...call);
			callsMs += processorMs() - start;
			return solution;
		},
	};
	let values: readonly number[] = [];
	const wholeMs = msEach(1, () => {
		values = valuesByHighs(watched, problem);
	});
	const solvingMs = calls.reduce((sum, call) => sum + solvingAlone(highs, call), 0);
	return { values, wholeMs, callsMs, solvingMs };
}

function solvingAlone(highs: Highs, [data, options]: Parameters<Highs["solve"]>): number {
	return highs.withModel({ format: "lp", data }, (model) => {
		// Without its report, as the other call has it.
		model.options.set({ ...options, output_flag: false });
		return msEach(1, () => model.run());
	});
}
