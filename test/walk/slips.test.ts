import { describe, expect, test } from "vitest";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import { walkAt, walkThrough } from "./walk-in-demo.ts";

const text = (typed: string): WalkEvent => ({ type: "text", text: typed });

describe("a sum that is a slip of a key", () => {
	test.each([
		["about/budget", "2", /^No board costs EUR 2\.00\. /],
		["about/budget", "9,99", /^No board costs EUR 9\.99\. /],
		["about/money-in-all", "3,44", /^EUR 3\.44 is very little\. /],
		["about/money-spent", "1", /^EUR 1\.00 is very little\. /],
	])("at %s: %j is asked again, with the reason", (id, typed, problem) => {
		const { state, effects } = walkThrough([text(typed)], walkAt({ at: "question", id }));
		expect(state.problem).toMatch(problem);
		expect([state.answers, effects]).toEqual([{}, []]);
	});

	test.each([
		["about/budget", "10"],
		["about/money-in-all", "10"],
		["about/money-spent", "0"],
	])("at %s: %j is none", (id, typed) => {
		expect(walkThrough([text(typed)], walkAt({ at: "question", id })).state.answers).toHaveProperty([id]);
	});
});

test("at the start, before any answer, there is nothing to review: a word says so, and no walk begins", () => {
	for (const events of [[{ type: "review" }], [{ type: "menu" }, { type: "review" }]] as const) {
		const { state, effects } = walkThrough(events, walkAt({ at: "start" }));
		expect(state.notice).toBe("There are no answers yet in this walk.");
		expect([state.place.at === "review", effects]).toEqual([false, []]);
	}
});

test("none of these, after some were marked, tells that the marks are gone", () => {
	const marked = walkAt(
		{ at: "question", id: "features/lighting" },
		{ answers: { "features/lighting": { status: "answered", value: ["5 V three-pin"] } } },
	);
	const { state } = walkThrough([{ type: "answer", value: [] }], marked);
	expect(state.notice).toBe("What was marked before is marked no more.");
	expect(state.answers["features/lighting"]?.value).toEqual([]);
	const fresh = walkThrough([{ type: "answer", value: [] }], { ...marked, answers: {} }).state;
	expect(fresh.notice).toBeNull();
});
