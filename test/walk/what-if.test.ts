import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { placeBefore } from "../../src/walk/places.ts";
import { answersTried } from "../../src/walk/update.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import type { Place, WalkState } from "../../src/walk/walk-state.ts";
import { settledFacts } from "../choose/demo.ts";
import { demo, quietAnswers, walkAt, walkThrough, walkWith } from "./walk-in-demo.ts";

const quiet = walkWith(quietAnswers);
const atShortlist: WalkState = { ...quiet, place: { at: "shortlist" } };
const ask = (questionId: string): WalkEvent => ({ type: "what-if", questionId });
const answer = (value: Extract<WalkEvent, { type: "answer" }>["value"]): WalkEvent => ({ type: "answer", value });

describe("trying another answer", () => {
	test("the menu leads to all questions, a question to itself, an answer to what it changes; nothing is kept", () => {
		const { state, effects } = walkThrough(
			[{ type: "menu" }, { type: "what-if" }, ask("quality/rescue"), answer("a-little")],
			atShortlist,
		);
		expect(state.place).toEqual({
			at: "what-if-answer",
			id: "quality/rescue",
			tried: { status: "answered", value: "a-little", by: "builder" },
		});
		expect(state.answers).toBe(quiet.answers);
		expect(effects).toEqual([]);
	});

	test("one goes back step by step, with what was tried still chosen", () => {
		const tried = walkThrough([{ type: "what-if" }, ask("quality/rescue"), answer("a-little")], atShortlist).state;
		const places = [1, 2, 3].map(
			(steps) => walkThrough(Array<WalkEvent>(steps).fill({ type: "back" }), tried).state.place,
		);
		expect(places).toEqual([
			{ at: "what-if-question", id: "quality/rescue", tried: { status: "answered", value: "a-little", by: "builder" } },
			{ at: "what-if" },
			{ at: "shortlist" },
		]);
	});

	test("a key keeps it: the answer is changed and saved, and the shortlist is shown", () => {
		const { state, effects } = walkThrough(
			[{ type: "what-if" }, ask("quality/rescue"), answer("a-little"), { type: "keep-tried" }],
			atShortlist,
		);
		expect(state.answers["quality/rescue"]).toMatchObject({ status: "answered", value: "a-little" });
		expect(Object.keys(state.answers).length).toBe(Object.keys(quiet.answers).length);
		expect(effects).toEqual([{ type: "save" }]);
		expect(state).toMatchObject({ place: { at: "shortlist" }, returnTo: [], answersBefore: quiet.answers });
		expect(state.notice).toBe("The other answer is now yours.");
	});

	test("what counts no longer because of it is told once it is kept", () => {
		const from = walkWith({ ...quietAnswers, "fit/bought": ["memory"], "fit/returnable": ["memory"] });
		const { state } = walkThrough([ask("fit/bought"), answer([]), { type: "keep-tried" }], {
			...from,
			place: { at: "shortlist" },
		});
		expect(state.notice).toMatch(/^No longer asked, so no longer counted: /);
	});

	test("not sure can be tried too", () => {
		const { state } = walkThrough([ask("fit/processor"), { type: "not-sure" }], atShortlist);
		expect(state.place).toMatchObject({ at: "what-if-answer", tried: { status: "not-sure" } });
	});

	test("what is typed is read by the question, and refused in its words", () => {
		const typed = (text: string) => walkThrough([ask("about/budget"), { type: "text", text }], atShortlist).state;
		expect(typed("150").place).toMatchObject({
			at: "what-if-answer",
			tried: { status: "answered", value: { minor: 15_000, currency: "EUR" } },
		});
		const refused = typed("plenty");
		expect(refused.place).toEqual({ at: "what-if-question", id: "about/budget", tried: null });
		expect(refused.problem).not.toBeNull();
	});

	test("lines are marked one by one, then one goes on; taking the last mark away tries none", () => {
		const mark = (value: string, by: 1 | -1 = 1): WalkEvent => ({ type: "mark", value, by });
		const from = walkWith({ ...quietAnswers, "features/later": ["M.2 drive"] });
		const marked = walkThrough([ask("features/later"), mark("USB thing")], { ...from, place: { at: "shortlist" } });
		expect(marked.state.place).toMatchObject({ at: "what-if-question", tried: { value: ["M.2 drive", "USB thing"] } });
		expect(marked.effects).toEqual([]);
		expect(walkThrough([{ type: "next" }], marked.state).state.place).toMatchObject({
			at: "what-if-answer",
			tried: { value: ["M.2 drive", "USB thing"] },
		});
		const none = walkThrough([mark("USB thing", -1), mark("M.2 drive", -1)], marked.state).state;
		expect(none.place).toMatchObject({ at: "what-if-question", tried: { status: "answered", value: [] } });
		expect(walkThrough([mark("USB thing")], none).state.place).toMatchObject({ tried: { value: ["USB thing"] } });
		expect(none.answers).toBe(from.answers);
	});

	test("going on before anything is tried, describing a part, and questions that are none do nothing", () => {
		const here: Place = { at: "what-if-question", id: "fit/case", tried: null };
		for (const event of [{ type: "next" }, { type: "describe" }, ask("no/question")] as const)
			expect(walkThrough([event], walkAt(here, quiet)).state).toMatchObject({ place: here, ownParts: [] });
		expect(walkThrough([{ type: "keep-tried" }], atShortlist).state.place).toEqual({ at: "shortlist" });
	});

	test("before any answer there is none to change", () => {
		const { state } = walkThrough([{ type: "menu" }, { type: "what-if" }]);
		expect(state.place.at).toBe("menu");
		expect(state.notice).toBe("There are no answers yet in this walk.");
	});

	test("a place that one did not come to has one before it all the same", () => {
		const tried = { status: "not-sure" } as const;
		const preceding = (place: Place) => placeBefore(demo, quiet, place);
		expect(preceding({ at: "what-if-answer", id: "fit/case", tried })).toEqual({
			at: "what-if-question",
			id: "fit/case",
			tried,
		});
		expect(preceding({ at: "what-if-question", id: "fit/case", tried })).toEqual({ at: "what-if" });
		expect(preceding({ at: "what-if" })).toEqual({ at: "shortlist" });
		expect(preceding({ at: "like", boardId: "a-board" })).toEqual({ at: "board", boardId: "a-board" });
	});

	test("whatever is done at questions that are only tried, no answer changes and nothing is saved", () => {
		const values = allQuestions.flatMap((question) =>
			question.options(demo, settledFacts).map(({ value }) => ({ id: question.id, kind: question.kind, value })),
		);
		const anyTrial = fc.oneof(
			fc
				.constantFrom(...values)
				.map(({ id, kind, value }): readonly WalkEvent[] => [
					ask(id),
					kind === "many" ? { type: "mark", value: String(value), by: 1 } : answer(value),
				]),
			fc.constantFrom<readonly WalkEvent[]>(
				[{ type: "what-if" }],
				[{ type: "back" }],
				[{ type: "next" }],
				[{ type: "not-sure" }],
				[{ type: "describe" }],
				[{ type: "text", text: "200" }],
				[{ type: "text", text: "larkspur" }],
			),
		);
		fc.assert(
			fc.property(fc.array(anyTrial, { maxLength: 12 }), (trials) => {
				// Back and on lead out of it; there answers are given as ever, so that only steps inside are held to it.
				let state = walkThrough([{ type: "what-if" }], atShortlist).state;
				for (const event of trials.flat()) {
					if (!state.place.at.startsWith("what-if")) break;
					const step = walkThrough([event], state);
					expect(step.effects).toEqual([]);
					expect(step.state.answers).toBe(quiet.answers);
					expect(step.state.ownParts).toBe(quiet.ownParts);
					state = step.state;
				}
			}),
			{ numRuns: 60 },
		);
	});

	test("nothing tried leaves the answers as they are, the same object", () => {
		expect(answersTried(quiet.answers, "fit/case", null)).toBe(quiet.answers);
	});
});

describe("like this one but", () => {
	const boardId = "pennywhistle-polka";
	const atBoard = walkThrough([{ type: "board", boardId }], atShortlist).state;

	test("from a board's page, by the board that is looked at, and back to it", () => {
		const { state } = walkThrough([{ type: "like" }], atBoard);
		expect(state.place).toEqual({ at: "like", boardId });
		const way = walkThrough([{ type: "like", direction: "cheaper" }], state).state;
		expect(way.place).toEqual({ at: "like", boardId, direction: "cheaper" });
		expect(walkThrough([{ type: "back" }], way).state.place).toEqual({ at: "board", boardId });
	});

	test("a board that was found is looked at, and back leads to what was found", () => {
		const found: WalkEvent[] = [
			{ type: "like", direction: "cooler" },
			{ type: "board", boardId: "pennywhistle-jig" },
			{ type: "back" },
		];
		expect(walkThrough(found, atBoard).state.place).toEqual({ at: "like", boardId, direction: "cooler" });
	});

	test("without a board, or with one that is not there, nothing happens", () => {
		expect(walkThrough([{ type: "like" }], atShortlist).state.place).toEqual({ at: "shortlist" });
		expect(walkThrough([{ type: "like", boardId: "no-board" }], atShortlist).state.place).toEqual({ at: "shortlist" });
	});
});
