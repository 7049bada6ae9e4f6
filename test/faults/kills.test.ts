import { expect, test } from "vitest";
import { program } from "../e2e/program.ts";
import { runKills } from "./kills.mjs";

// The same with 200 kills and a seed of its own: npm run kills.
test("killed at twelve random moments, the next start opens and no more than the line being typed is lost", {
	timeout: 240_000,
}, async () => {
	const { faults, ...figures } = await runKills({ kills: 12, seed: 3, program });
	expect(faults).toEqual([]);
	expect(figures).toMatchObject({ kills: 12, opened: 12, straysLeft: 0, isWell: true });
	expect(figures.answersLostAtMost).toBeLessThanOrEqual(1);
});
