import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	type Answers,
	type AnswersFile,
	answersFile,
	type OwnPart,
	type Suggestion,
} from "../../src/parts/answers-file.ts";
import { questionById } from "../../src/questions/all-questions.ts";
import { namelessHelper } from "../../src/walk/helper-name.ts";
import { savedWalk, takeUpWalk } from "../../src/walk/saved-walk.ts";
import { saysTheSame } from "../../src/walk/suggestions.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import type { WalkState } from "../../src/walk/walk-state.ts";
import { settledFacts } from "../choose/demo.ts";
import { builders, inHandsOf, proposed } from "./coached-walks.ts";
import { demo, walkThrough } from "./walk-in-demo.ts";

/** The walk as a file, and read again, as another machine does. */
function handedOver(state: WalkState): { readonly file: AnswersFile; readonly state: WalkState } {
	const file = answersFile.parse(JSON.parse(JSON.stringify(savedWalk(demo, state))));
	const { state: taken, faults, warnings } = takeUpWalk(demo, file);
	expect({ faults, warnings }).toEqual({ faults: [], warnings: [] });
	return { file, state: taken };
}

const asHelper = (from: WalkState, events: readonly WalkEvent[], by = "Ida") =>
	handedOver(walkThrough(events, inHandsOf(by, handedOver(from).state)).state).state;
const asBuilder = (from: WalkState, events: readonly WalkEvent[]) =>
	handedOver(walkThrough(events, handedOver(from).state).state).state;

const budget = { minor: 15_000, currency: "EUR" };

describe("a walk passed back and forth", () => {
	test("twice: each answer is as somebody last gave it, with who gave it, and each suggestion is decided once", () => {
		const helped = asHelper(builders, [
			{ type: "change", questionId: "fit/supply" },
			{ type: "answer", value: { part: "millpond-bonfire" } },
			{ type: "change", questionId: "about/budget" },
			{ type: "answer", value: budget },
			{ type: "text", text: "Memory matters more." },
			{ type: "change", questionId: "features/rear-usb-c" },
			{ type: "answer", value: "would-like" },
			{ type: "next" },
		]);
		expect(helped.suggestions).toEqual([
			proposed("about/budget", budget, { why: "Memory matters more." }),
			proposed("features/rear-usb-c", "would-like"),
		]);

		const decided = asBuilder(helped, [
			{ type: "take-suggestion", index: 0 },
			{ type: "leave-suggestions", questionId: "features/rear-usb-c" },
			{ type: "change", questionId: "features/colour" },
			{ type: "answer", value: "dark" },
		]);

		const again = asHelper(decided, [
			{ type: "change", questionId: "features/colour" },
			{ type: "answer", value: "plain" },
			{ type: "text", text: "It is never seen." },
			{ type: "change", questionId: "about/budget" },
			{ type: "answer", value: "no-limit" },
			{ type: "next" },
		]);

		const done = asBuilder(again, [
			{ type: "leave-suggestions", questionId: "features/colour" },
			{ type: "suggestion", questionId: "about/budget" },
		]);
		const differs = Object.keys(done.answers).filter((id) => done.answers[id]?.by !== "builder");
		expect(differs.toSorted()).toEqual(["about/budget", "fit/supply"]);
		expect(done.answers).toEqual({
			...builders.answers,
			"fit/supply": { status: "answered", value: { part: "millpond-bonfire" }, by: "Ida" },
			"about/budget": { status: "answered", value: budget, by: "Ida" },
			"features/colour": { status: "answered", value: "dark", by: "builder" },
		});
		expect(done.suggestions.map(({ questionId, state }) => `${questionId} ${state}`)).toEqual([
			"about/budget taken",
			"features/rear-usb-c left",
			"features/colour left",
			"about/budget open",
		]);
	});

	test("a file that nobody changed is the same file", () => {
		const { file, state } = handedOver(asHelper(builders, []));
		expect(savedWalk(demo, state)).toEqual(file);
		expect(state.answers).toEqual(builders.answers);
	});

	test("parts kept for all walks go with the file where an answer or a suggestion names them, and so do boards", () => {
		const [own, other, board]: [OwnPart, OwnPart, OwnPart] = [
			{ kind: "case", part: { id: "my-case", name: "my case", boardForms: ["ATX"] } },
			{ kind: "case", part: { id: "old-case", name: "old case", boardForms: ["ATX"] } },
			{ kind: "board", part: { id: "my-board", name: "my board" } },
		];
		const state: WalkState = {
			...builders,
			kept: [own, other, board],
			answers: { ...builders.answers, "fit/case": { status: "answered", value: { part: "my-case" }, by: "builder" } },
		};
		expect(savedWalk(demo, state).parts).toEqual([own, board]);
		expect(handedOver(state).state.answers["fit/case"]?.value).toEqual({ part: "my-case" });
		expect(savedWalk(demo, { ...state, ownParts: [own] }).parts).toEqual([own, board]);
	});

	/** What a helper or a builder may do in a sitting, in any order. */
	const ids = [...Object.keys(builders.answers), "features/colour", "fit/later"];
	const sitting = fc
		.array(
			fc.record({
				questionId: fc.constantFrom(...ids),
				pick: fc.nat(5),
				why: fc.constantFrom(null, "Because."),
				take: fc.nat(6),
				does: fc.constantFrom("answer", "answer", "answer", "take", "leave", "withdraw"),
			}),
			{ maxLength: 8 },
		)
		.map((all) =>
			all.flatMap(({ questionId, pick, why, take, does }): readonly WalkEvent[] => {
				if (does === "take") return [{ type: "take-suggestion", index: take }];
				if (does === "leave") return [{ type: "leave-suggestions", questionId }];
				if (does === "withdraw") return [{ type: "withdraw", questionId }];
				const options = questionById(questionId)?.options(demo, settledFacts) ?? [];
				const option = options[pick % Math.max(1, options.length)];
				return [
					{ type: "change", questionId },
					option ? { type: "answer", value: option.value } : { type: "not-sure" },
					why === null ? { type: "next" } : { type: "text", text: why },
				];
			}),
		);

	/** An answer that was given is changed by nobody but the builder, or by who gave it. */
	function expectHeld(before: Answers, after: Answers, by: string): void {
		for (const [id, answer] of Object.entries(before)) {
			if (answer.status !== "answered" || answer.by === by) continue;
			expect(after[id], id).toEqual(answer);
		}
	}

	const decidedOf = (suggestions: readonly Suggestion[]) => suggestions.filter(({ state }) => state !== "open");

	test("whatever either does: a helper changes no answer of another, and who gave an unchanged answer stays", () => {
		fc.assert(
			fc.property(fc.array(sitting, { minLength: 2, maxLength: 4 }), (sittings) => {
				let walk = builders;
				for (const [index, events] of sittings.entries()) {
					const by = index % 4 === 2 ? namelessHelper : "Ida";
					const isHelpers = index % 2 === 0;
					const next = isHelpers ? asHelper(walk, events, by) : asBuilder(walk, events);
					for (const id of Object.keys(walk.answers)) expect(Object.keys(next.answers)).toContain(id);
					if (isHelpers) expectHeld(walk.answers, next.answers, by);
					for (const [id, answer] of Object.entries(walk.answers))
						if (saysTheSame(answer, next.answers[id]) && answer.status === "answered")
							expect(next.answers[id]?.by, id).toBe(answer.by);
					for (const one of decidedOf(walk.suggestions)) expect(next.suggestions).toContainEqual(one);
					walk = next;
				}
			}),
			{ numRuns: 40 },
		);
	});
});
