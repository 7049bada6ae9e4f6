import { createRequire } from "node:module";
import type { Highs } from "highs";
import { demoMarket } from "../../src/cli/demo-market.ts";
import type { Board } from "../../src/parts/board.ts";
import { bestPlan } from "../../src/plan/best-plan.ts";
import { goalsFor } from "../../src/plan/goals.ts";
import { type PlanProblem, problemOf } from "../../src/plan/problem.ts";
import { eightDevices } from "./eight-devices.ts";
import { runSolver } from "./solver-watch.ts";
import { median, msEach, percentile, runsOfBatch } from "./stop-watch.ts";

/** Rounds an instance; in each the solver runs once, between batches of the plan, so that noise meets both alike. */
const rounds = 3;
/** Compilers of the runtime take a while to see what is worth their time: so many instances are thrown away first. */
const warmUpInstances = 5;
/** How many times as fast the plan is to be (own convention). */
const aim = 100;

interface Instance {
	readonly board: Board;
	readonly problem: PlanProblem;
}

/** Medians over the rounds, in ms of the processor. */
interface Measured {
	readonly boardId: string;
	readonly planMs: number;
	readonly solverMs: number;
	readonly callsMs: number;
	readonly solvingMs: number;
}

/** By way of require: for an import, the package's types and what it hands out do not agree. */
const highs = await (createRequire(import.meta.url)("highs") as () => Promise<Highs>)();
const instances: readonly Instance[] = demoMarket()
	.parts.board.filter(({ cardSlots = [], m2Sockets = [] }) => cardSlots.length > 0 && m2Sockets.length > 0)
	.map((board) => ({ board, problem: problemOf(board, eightDevices, { leaning: "best" }) }));

for (const instance of instances.slice(0, warmUpInstances)) measure(instance);
console.log(report(instances.map(measure)));

function measure({ board, problem }: Instance): Measured {
	const plan = () => {
		bestPlan(problem);
	};
	const { gains } = bestPlan(problem);
	const runs = runsOfBatch(plan);
	const measured = Array.from({ length: rounds }, () => {
		const before = msEach(runs, plan);
		const solver = runSolver(highs, problem);
		const after = msEach(runs, plan);
		throwWhereNotSame(board.id, problem, gains, solver.values);
		return { ...solver, planMs: [before, after] };
	});
	return {
		boardId: board.id,
		planMs: median(measured.flatMap(({ planMs }) => planMs)),
		solverMs: median(measured.map(({ wholeMs }) => wholeMs)),
		callsMs: median(measured.map(({ callsMs }) => callsMs)),
		solvingMs: median(measured.map(({ solvingMs }) => solvingMs)),
	};
}

/** @throws Error that names the board and the goal */
function throwWhereNotSame(boardId: string, problem: PlanProblem, ours: readonly number[], its: readonly number[]) {
	const goals = goalsFor(problem);
	const compared = goals.filter(({ goal }) => goal !== "order").length;
	if (its.length !== compared) throw new Error(`${boardId}: ${its.length} values for ${compared} goals`);
	goals.forEach((goal, index) => {
		if (goal.goal !== "order" && ours[index] !== its[index])
			throw new Error(`${boardId}: ${JSON.stringify(goal)} is ${ours[index]} by the plan, ${its[index]} by the solver`);
	});
}

function report(measured: readonly Measured[]): string {
	const all = (take: (one: Measured) => number) => measured.map(take);
	const ms = (values: readonly number[]) =>
		`median ${median(values).toPrecision(3)} ms, 90th percentile ${percentile(values, 0.9).toPrecision(3)} ms`;
	const ratios = all(({ solverMs, planMs }) => solverMs / planMs);
	const alone = all(({ solvingMs, planMs }) => solvingMs / planMs);
	const share = (part: (one: Measured) => number) =>
		`${Math.round(100 * median(all((one) => part(one) / one.solverMs)))} %`;
	const ratioOf = (values: readonly number[]) => {
		const least = Math.min(...values);
		const reached = values.filter((ratio) => ratio >= aim).length;
		const does = median(values) >= aim ? "reaches" : "does not reach";
		return [
			`median ${median(values).toFixed(0)}, least ${least.toFixed(0)} (${measured[values.indexOf(least)]?.boardId});`,
			`the median instance ${does} ${aim}, ${reached} of ${values.length} instances do`,
		].join(" ");
	};
	const placed = instances.filter(({ problem }) => bestPlan(problem).placements.every((place) => place !== null));
	return [
		"The connector plan against an integer solver: HiGHS (npm highs 1.15.3, WebAssembly, one thread, no presolving).",
		`Node ${process.version}, ${process.platform} ${process.arch}. Processor time, each a median of ${rounds} rounds or more.`,
		"",
		`Instances: ${measured.length} demonstration boards, each with the same eight devices; ${placed.length} take all eight.`,
		'All values are the same, of every goal but "order".',
		"",
		`Plan:            ${ms(all(({ planMs }) => planMs))}`,
		`Solver:          ${ms(all(({ solverMs }) => solverMs))}`,
		`Ratio:           ${ratioOf(ratios)}`,
		"",
		"The solver's time is all of it: model, text, and a call for each goal. Shares, as medians:",
		`Inside calls:    ${share(({ callsMs }) => callsMs)} (the rest makes the model and its text)`,
		`Solving alone:   ${share(({ solvingMs }) => solvingMs)}, ${ms(all(({ solvingMs }) => solvingMs))}`,
		`Ratio of that:   ${ratioOf(alone)}`,
	].join("\n");
}
