import { createRequire } from "node:module";
import type { Highs } from "highs";
import { expect, test } from "vitest";
import { bestPlan } from "../../src/plan/best-plan.ts";
import { goalsFor } from "../../src/plan/goals.ts";
import { valuesByHighs } from "./highs-oracle.ts";
import { randomProblem } from "./random-problems.ts";

/** By way of require: for an import, the package's types and what it hands out do not agree. */
const highsLoader = createRequire(import.meta.url)("highs") as () => Promise<Highs>;
const problems = process.env["BOARDWALK_CI"] ? 2000 : 200;

test(`HiGHS (npm highs 1.15.3) finds no other values, on ${problems} made-up problems`, {
	timeout: 900_000,
}, async () => {
	const highs = await highsLoader();
	for (let seed = 1; seed <= problems; seed++) {
		const problem = randomProblem(seed);
		const goals = goalsFor(problem);
		const { gains } = bestPlan(problem);
		const named = (values: readonly number[]) =>
			goals.flatMap((goal, index) =>
				goal.goal === "order" ? [] : [`${goal.goal} ${"deviceId" in goal ? goal.deviceId : ""}: ${values[index] ?? 0}`],
			);
		expect(named(gains), `seed ${seed}`).toEqual(named(valuesByHighs(highs, problem)));
	}
});
