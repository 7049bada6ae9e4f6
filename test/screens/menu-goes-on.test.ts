import { expect, test } from "vitest";
import type { Place } from "../../src/walk/walk-state.ts";
import { demo, quietAnswers, walkDone, walkWith } from "../walk/walk-in-demo.ts";
import { screenAt } from "./screen-words.ts";

const labels = (state: ReturnType<typeof walkWith>, from: Place) =>
	screenAt(demo, { ...state, returnTo: [from] }, { at: "menu" }).choices.map(({ label }) => label);

test("from the sheet or the review the menu leads on to the questions that are left, and says how many", () => {
	for (const at of ["sheet", "review", "shortlist", "fell-out"] as const)
		expect(labels(walkWith(quietAnswers), { at }).join()).toMatch(/Go on with the questions: \d+ left/);
});

test("not where going back does the same, and not when none is left", () => {
	for (const from of [{ at: "start" }, { at: "question", id: "fit/case" }] as const satisfies readonly Place[])
		expect(labels(walkWith(quietAnswers), from).join()).not.toContain("Go on with the questions");
	expect(labels(walkDone(quietAnswers), { at: "sheet" }).join()).not.toContain("Go on with the questions");
});
