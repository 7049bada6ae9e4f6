import { describe, expect, test } from "vitest";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import type { WalkState } from "../../src/walk/walk-state.ts";
import { builders, proposed, withSuggestions } from "./coached-walks.ts";
import { quietAnswers, walkThrough } from "./walk-in-demo.ts";

const walked = (events: readonly WalkEvent[], from: WalkState = withSuggestions) => walkThrough(events, from);
const indexOf = (questionId: string, by = "Ida") =>
	withSuggestions.suggestions.findIndex((one) => one.questionId === questionId && one.by === by);
const statesOf = ({ suggestions }: WalkState, questionId: string) =>
	suggestions.filter((one) => one.questionId === questionId).map(({ by, state }) => `${by} ${state}`);
const answer: (questionId: string, value: never) => readonly WalkEvent[] = (questionId, value) => [
	{ type: "change", questionId },
	{ type: "answer", value },
];

describe("the builder", () => {
	test("takes a suggestion: it is the answer, and stays the helper's", () => {
		const { state, effects } = walked([
			{ type: "suggestions" },
			{ type: "suggestion", questionId: "about/budget" },
			{ type: "take-suggestion", index: indexOf("about/budget") },
		]);
		expect(state.answers["about/budget"]).toEqual({
			status: "answered",
			value: { minor: 15_000, currency: "EUR" },
			by: "Ida",
		});
		expect(statesOf(state, "about/budget")).toEqual(["Ida taken"]);
		expect(state.place).toEqual({ at: "suggestions" });
		expect(state.by).toBe("builder");
		expect(effects).toEqual([{ type: "save" }]);
	});

	test("leaves one as it is, and nothing changes but that it is decided", () => {
		const { state, effects } = walked([{ type: "leave-suggestions", questionId: "about/budget" }]);
		expect(state.answers).toEqual(withSuggestions.answers);
		expect(statesOf(state, "about/budget")).toEqual(["Ida left"]);
		expect(effects).toEqual([{ type: "save" }]);
	});

	test("answers anew as before: nothing changes, and that is said", () => {
		const { state } = walked([
			{ type: "suggestions" },
			{ type: "suggestion", questionId: "about/budget" },
			...answer("about/budget", quietAnswers["about/budget"] as never),
		]);
		expect(state.answers).toEqual(withSuggestions.answers);
		expect(state.suggestions).toEqual(withSuggestions.suggestions);
		expect(state.notice).toBe(
			"That is what stands there already, so nothing changes. What is suggested still waits for you.",
		);
		const other = walked(answer("about/budget", "no-limit" as never)).state;
		expect(other.notice ?? "").not.toContain("nothing changes");
	});

	test("decides later by going back", () => {
		const { state, effects } = walked([
			{ type: "suggestions" },
			{ type: "suggestion", questionId: "about/budget" },
			{ type: "back" },
		]);
		expect(state.suggestions).toEqual(withSuggestions.suggestions);
		expect(state.place).toEqual({ at: "suggestions" });
		expect(effects).toEqual([]);
	});

	test("takes that it is better left open", () => {
		const { state } = walked([{ type: "take-suggestion", index: indexOf("features/wireless", "Uncle Joe") }]);
		expect(state.answers["features/wireless"]).toEqual({ status: "not-sure", by: "Uncle Joe" });
		expect(statesOf(state, "features/wireless")).toEqual(["Uncle Joe taken"]);
	});

	test("picks one of the answers of two copies, or none of them", () => {
		const picked = walked([{ type: "take-suggestion", index: indexOf("fit/case", "builder") }]).state;
		expect(picked.answers["fit/case"]).toEqual({
			status: "answered",
			value: { part: "larkspur-wardrobe" },
			by: "builder",
		});
		expect(statesOf(picked, "fit/case")).toEqual(["builder taken", "Ida left"]);
		const none = walked([{ type: "leave-suggestions", questionId: "fit/case" }]).state;
		expect(none.answers["fit/case"]).toEqual({ status: "not-sure" });
		expect(statesOf(none, "fit/case")).toEqual(["builder left", "Ida left"]);
	});

	test("decides between two copies by answering anew, be it as one of them or as none", () => {
		const asOne = walked(answer("fit/case", "open" as never)).state;
		expect(statesOf(asOne, "fit/case")).toEqual(["builder left", "Ida taken"]);
		const asNone = walked(answer("fit/case", { part: "larkspur-hatbox" } as never)).state;
		expect(asNone.answers["fit/case"]).toMatchObject({ status: "answered", by: "builder" });
		expect(statesOf(asNone, "fit/case")).toEqual(["builder left", "Ida left"]);
		const unsure = walked([{ type: "change", questionId: "fit/case" }, { type: "not-sure" }]).state;
		expect(statesOf(unsure, "fit/case")).toEqual(["builder left", "Ida left"]);
	});

	test("who answers as was suggested has taken it; who answers otherwise still has it to decide", () => {
		expect(statesOf(walked(answer("features/rear-usb-c", "would-like" as never)).state, "features/rear-usb-c")).toEqual(
			["Ida taken"],
		);
		expect(statesOf(walked(answer("features/rear-usb-c", "dont-mind" as never)).state, "features/rear-usb-c")).toEqual([
			"Ida open",
		]);
	});

	test("decides only once: what is decided is taken by no later event", () => {
		const left = walked([{ type: "leave-suggestions", questionId: "about/budget" }]).state;
		expect(walked([{ type: "take-suggestion", index: indexOf("about/budget") }], left).state.answers).toEqual(
			withSuggestions.answers,
		);
	});

	test("cannot take what no such question can have, and is told", () => {
		for (const one of [
			proposed("fit/case", { part: "no-such-case" }),
			proposed("no/question", "open"),
			proposed("about/budget", "lots"),
			proposed("__proto__", "open"),
		]) {
			const { state, effects } = walked([{ type: "take-suggestion", index: 0 }], { ...builders, suggestions: [one] });
			expect(state).toMatchObject({ answers: builders.answers, suggestions: [one] });
			expect(state.problem).toContain("cannot be taken");
			expect(effects).toEqual([]);
		}
	});

	test("the same answer given once more stays the answer of who gave it first", () => {
		const helped: WalkState = {
			...builders,
			answers: {
				...builders.answers,
				"features/rear-usb-c": { status: "answered", value: "must", by: "Ida", note: "as in the shop" },
			},
		};
		const same = walked(answer("features/rear-usb-c", "must" as never), helped).state;
		expect(same.answers["features/rear-usb-c"]).toBe(helped.answers["features/rear-usb-c"]);
		const kept = walked([{ type: "change", questionId: "features/rear-usb-c" }, { type: "next" }], helped).state;
		expect(kept.answers["features/rear-usb-c"]).toBe(helped.answers["features/rear-usb-c"]);
		const changed = walked(answer("features/rear-usb-c", "would-like" as never), helped).state;
		expect(changed.answers["features/rear-usb-c"]).toEqual({
			status: "answered",
			value: "would-like",
			by: "builder",
		});
		expect(Object.keys(quietAnswers)).toContain("features/rear-usb-c");
	});
});
