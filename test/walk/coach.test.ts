import { describe, expect, test } from "vitest";
import type { Answer, OwnPart } from "../../src/parts/answers-file.ts";
import { screenOf } from "../../src/screens/screen-of.ts";
import { update } from "../../src/walk/update.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import type { WalkState } from "../../src/walk/walk-state.ts";
import { builders, inHandsOf, proposed, withSuggestions } from "./coached-walks.ts";
import { answering, demo, quietAnswers, walkThrough } from "./walk-in-demo.ts";

const ida = inHandsOf("Ida");
const budget = { minor: 15_000, currency: "EUR" };

/** Answers a question, and says why where that is asked. */
const answersTo = (questionId: string, value: Answer["value"], why?: string): readonly WalkEvent[] => [
	{ type: "change", questionId },
	value === undefined ? { type: "not-sure" } : { type: "answer", value },
	...(why === undefined ? [] : [why === "" ? ({ type: "next" } as const) : ({ type: "text", text: why } as const)]),
];
const walked = (events: readonly WalkEvent[], from: WalkState = ida) => walkThrough(events, from);

describe("a helper", () => {
	test("answers at once what is not sure, with their name, and comes back to what is open", () => {
		const { state, effects } = walked(answersTo("fit/supply", { part: "millpond-bonfire" }));
		expect(state.answers["fit/supply"]).toEqual({
			status: "answered",
			value: { part: "millpond-bonfire" },
			by: "Ida",
		});
		expect(state.suggestions).toEqual([]);
		expect(state.place).toEqual({ at: "coach" });
		expect(state.notice).toContain("Kept as your answer");
		expect(effects).toEqual([{ type: "save" }]);
	});

	test("answers at once what nobody has been asked yet", () => {
		const { state } = walked(answersTo("features/colour", "dark"));
		expect(state.answers["features/colour"]).toEqual({ status: "answered", value: "dark", by: "Ida" });
	});

	test("leaves open what they do not know either, so that the builder is still asked", () => {
		const { state, effects } = walked(answersTo("features/colour", undefined));
		expect(state.answers).toEqual(ida.answers);
		expect(effects).toEqual([]);
		expect(state.notice).toContain("It stays open");
	});

	test("takes their own answer back with not sure, and keeps what was noted beside an open one", () => {
		const given = walked(answersTo("features/colour", "dark")).state;
		const [asked] = update(demo, given, { type: "change", questionId: "features/colour" });
		const [back, effects] = update(demo, asked, { type: "not-sure" });
		expect(back.answers["features/colour"]).toBeUndefined();
		expect(back.notice).toContain("open again");
		expect(effects).toEqual([{ type: "save" }]);
		const noted: WalkState = {
			...given,
			answers: { ...given.answers, "features/colour": { status: "not-sure", by: "builder", note: "Red, perhaps." } },
		};
		const [at] = update(demo, noted, { type: "change", questionId: "features/colour" });
		const [after] = update(demo, at, { type: "answer", value: "dark" });
		expect(after.answers["features/colour"]).toEqual({
			status: "answered",
			value: "dark",
			by: "Ida",
			note: "Red, perhaps.",
		});
	});

	test("suggests another answer where the builder has one, and never overwrites it", () => {
		const { state, effects } = walked(answersTo("about/budget", budget, "Memory matters more."));
		expect(state.answers).toEqual(ida.answers);
		expect(state.suggestions).toEqual([proposed("about/budget", budget, { why: "Memory matters more." })]);
		expect(effects).toEqual([{ type: "save" }]);
		expect(state.notice).toMatch(/You suggest for "Most the board may cost": .*150/);
	});

	test("may leave out why, may think it over, and may suggest to leave it open", () => {
		expect(walked(answersTo("about/budget", budget, "")).state.suggestions).toEqual([proposed("about/budget", budget)]);
		const thought = walked([...answersTo("about/budget", budget), { type: "back" }, { type: "back" }]).state;
		expect(thought).toMatchObject({ suggestions: [], answers: ida.answers, place: { at: "coach" } });
		expect(walked(answersTo("about/budget", undefined, "")).state.suggestions).toEqual([
			proposed("about/budget", undefined),
		]);
	});

	test("suggests nothing by saying what stands there", () => {
		const { state, effects } = walked(answersTo("about/budget", quietAnswers["about/budget"]));
		expect({ suggestions: state.suggestions, answers: state.answers, effects }).toEqual({
			suggestions: [],
			answers: ida.answers,
			effects: [],
		});
		expect(state.notice).toContain("stands there already");
	});

	test("has one suggestion a question: the last one, and can take it back", () => {
		const twice = walked([
			...answersTo("about/budget", budget, "First thought."),
			...answersTo("about/budget", "no-limit", "Second thought."),
		]).state;
		expect(twice.suggestions).toEqual([proposed("about/budget", "no-limit", { why: "Second thought." })]);
		expect(walked([{ type: "withdraw", questionId: "about/budget" }], twice).state.suggestions).toEqual([]);
		const other = inHandsOf("Joe", twice);
		expect(walked([{ type: "withdraw", questionId: "about/budget" }], other).state.suggestions).toEqual(
			twice.suggestions,
		);
		expect(walked(answersTo("about/budget", budget, ""), other).state.suggestions).toHaveLength(2);
	});

	test("marks several lines before the answer counts", () => {
		const marked = walked([
			{ type: "change", questionId: "features/later" },
			{ type: "mark", value: "M.2 drive", by: 1 },
			{ type: "mark", value: "memory", by: 1 },
		]).state;
		expect(marked.answers).toEqual(ida.answers);
		const { state } = walked([{ type: "next" }], marked);
		expect(state.answers["features/later"]).toMatchObject({ by: "Ida" });
	});

	test("changes an answer of their own at once, but not one that the builder has taken from them", () => {
		const given = walked(answersTo("fit/supply", { part: "millpond-bonfire" })).state;
		const changed = walked(answersTo("fit/supply", { part: "millpond-kiln" }), given).state;
		expect(changed.answers["fit/supply"]).toMatchObject({ value: { part: "millpond-kiln" }, by: "Ida" });
		const taken = inHandsOf("Ida", {
			...builders,
			answers: { ...builders.answers, "about/budget": { status: "answered", value: budget, by: "Ida" } },
			suggestions: [proposed("about/budget", budget, { state: "taken" })],
		});
		const again = walked(answersTo("about/budget", "no-limit", ""), taken).state;
		expect(again.answers).toEqual(taken.answers);
		expect(again.suggestions.at(-1)).toEqual(proposed("about/budget", "no-limit"));
	});

	test("does not decide between the answers of two copies, but may suggest a third", () => {
		const helping = inHandsOf("Ida", withSuggestions);
		const index = withSuggestions.suggestions.findIndex(({ rival }) => rival);
		expect(walked([{ type: "take-suggestion", index }], helping).state.suggestions).toEqual(helping.suggestions);
		const third = walked(answersTo("fit/case", { part: "larkspur-wardrobe" }, "I measured it."), helping).state;
		expect(third.answers["fit/case"]).toEqual({ status: "not-sure" });
		expect(third.suggestions.at(-1)).toMatchObject({ questionId: "fit/case", by: "Ida", state: "open" });
	});

	test("does not suggest the same once more after it was left, without another reason", () => {
		const left = inHandsOf("Ida", {
			...builders,
			suggestions: [proposed("about/budget", budget, { why: "Because.", state: "left" })],
		});
		const same = walked(answersTo("about/budget", budget, "Because."), left).state;
		expect(same).toMatchObject({ suggestions: left.suggestions, place: { at: "coach-why" } });
		expect(same.problem).toContain("You suggested this before");
		expect(walked([{ type: "text", text: "Prices fell." }], same).state.suggestions).toHaveLength(2);
	});

	test("gives a name that is not the builder's, cleaned, and it is kept for the next time", () => {
		const asked = { ...inHandsOf("helper"), place: { at: "coach-name" }, returnTo: [{ at: "coach" }] } as const;
		const { state, effects } = walked([{ type: "text", text: " \u001b[31mIda\u202e " }], asked);
		expect(state).toMatchObject({ by: "Ida", place: { at: "coach" } });
		expect(effects).toEqual([{ type: "keep-settings", settings: { ...asked.settings, helperName: "Ida" } }]);
		for (const text of ["Builder", "", "x".repeat(61)])
			expect(walked([{ type: "text", text }], asked).state.problem).toBeTruthy();
		expect(walked([{ type: "next" }], asked).state).toMatchObject({ by: "helper", place: { at: "coach" } });
	});

	test("tries another answer under what-if, and taking it only suggests it", () => {
		const { state } = walked([
			{ type: "what-if", questionId: "about/budget" },
			{ type: "answer", value: budget },
			{ type: "keep-tried" },
			{ type: "text", text: "See what it does." },
		]);
		expect(state.answers).toEqual(ida.answers);
		expect(state.suggestions).toEqual([proposed("about/budget", budget, { why: "See what it does." })]);
	});

	test("takes no way out in the builder's place: each change becomes a suggestion", () => {
		const changes = [{ questionId: "about/budget", from: quietAnswers["about/budget"] ?? null, to: "no-limit" }];
		const { state } = walked([{ type: "way-out", changes }]);
		expect(state.answers).toEqual(ida.answers);
		expect(state.suggestions).toEqual([proposed("about/budget", "no-limit")]);
	});

	test("suggests no more than a file may hold, whatever the step was", () => {
		const full = inHandsOf("Ida", {
			...builders,
			suggestions: Array.from({ length: 500 }, (_, number) =>
				proposed("fit/case", undefined, { by: "Joe", why: `Reason ${number}` }),
			),
		});
		const changes = [{ questionId: "about/budget", from: quietAnswers["about/budget"] ?? null, to: "no-limit" }];
		const { state } = walked([{ type: "way-out", changes }], full);
		expect(state.suggestions).toEqual(full.suggestions);
		expect(state.answers).toEqual(full.answers);
		expect(state.problem).toContain("500 suggestions at most");
	});

	test("leaves parts that came with the walk alone, and opens no other walk", () => {
		const own: OwnPart = { kind: "case", part: { id: "my-case", name: "my case", boardForms: ["ATX"] } };
		const helping = inHandsOf("Ida", {
			...builders,
			ownParts: [own],
			answers: { ...builders.answers, "fit/case": { status: "answered", value: { part: "my-case" }, by: "builder" } },
		});
		for (const type of ["remove-part", "edit-part", "add-offer"] as const) {
			const { state, effects } = walked([{ type: "own-part", kind: "case", id: "my-case" }, { type }], helping);
			expect(state).toMatchObject({ ownParts: [own], answers: helping.answers, form: null });
			expect(effects).toEqual([]);
		}
		expect(walked([{ type: "open", file: "other.json" }]).effects).toEqual([]);
	});

	test("whatever they answer everywhere, nothing of the builder's is changed", () => {
		const ids = answering({}).map((_, index) => index);
		let state = ida;
		for (const index of ids) {
			const [questionId] = Object.keys(builders.answers).slice(index);
			if (!questionId) break;
			state = walked([{ type: "change", questionId }], state).state;
			const pick = screenOf(demo, state)?.choices.find(({ event }) => event.type === "answer" || event.type === "mark");
			if (pick) state = walked([pick.event, { type: "next" }, { type: "next" }, { type: "coach" }], state).state;
		}
		for (const [id, answer] of Object.entries(builders.answers))
			if (answer.status === "answered") expect(state.answers[id]).toBe(answer);
		expect(state.suggestions.length).toBeGreaterThan(5);
	});
});
