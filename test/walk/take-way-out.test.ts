import { describe, expect, test } from "vitest";
import type { AnswerValue } from "../../src/parts/answers-file.ts";
import { screenOf } from "../../src/screens/screen-of.ts";
import { viewWalk } from "../../src/screens/walk-view.ts";
import type { TakenChange } from "../../src/walk/take-way-out.ts";
import type { WalkState } from "../../src/walk/walk-state.ts";
import { demo, quietAnswers, scenarios, walkAt, walkDone, walkThrough } from "./walk-in-demo.ts";

const eur = (units: number) => ({ minor: units * 100, currency: "EUR" });
const shortlist = { at: "shortlist" } as const;

/** The desk with so little money that nothing is left. */
const poor: WalkState = {
	...walkDone({ ...quietAnswers, "about/budget": eur(50) }),
	place: shortlist,
	answersBefore: null,
};

const take = (changes: readonly TakenChange[], from: WalkState = poor) =>
	walkThrough([{ type: "way-out", changes }], from);
const givenTo = ({ answers }: WalkState, id: string): AnswerValue | undefined => answers[id]?.value;

describe("a way out is taken", () => {
	const more: TakenChange = { questionId: "about/budget", from: eur(50), to: eur(200) };

	test("the answer is changed and kept, the shortlist shown, and what was before is told", () => {
		const { state, effects } = take([more]);
		expect(givenTo(state, "about/budget")).toEqual(eur(200));
		expect(state.place).toEqual(shortlist);
		expect(effects).toEqual([{ type: "save" }]);
		expect(state.notice).toBe(
			"Changed: Most the board may cost. Now: EUR 200.00. Before: EUR 50.00. You can change it back under all answers.",
		);
		expect(state.answersBefore).toBe(poor.answers);
		expect(state.answers["about/budget"]?.by).toBe(poor.by);
	});

	test("all other answers stay as they were", () => {
		const { state } = take([more]);
		const { "about/budget": _, ...others } = state.answers;
		const { "about/budget": __, ...before } = poor.answers;
		expect(others).toEqual(before);
	});

	test("answering as before takes it back", () => {
		const { state } = walkThrough(
			[
				{ type: "way-out", changes: [more] },
				{ type: "change", questionId: "about/budget" },
				{ type: "answer", value: eur(50) },
			],
			poor,
		);
		expect(state.place).toEqual(shortlist);
		expect(givenTo(state, "about/budget")).toEqual(eur(50));
		expect(viewWalk(demo, state).judgement().counts).toEqual(viewWalk(demo, poor).judgement().counts);
	});

	test("a part to be chosen anew is asked for, with the other answers changed, and then comes the shortlist", () => {
		const other: TakenChange = { questionId: "fit/case", from: { part: "larkspur-wardrobe" }, to: null };
		const asked = take([more, other]);
		expect(asked.state.place).toEqual({ at: "question", id: "fit/case" });
		expect(givenTo(asked.state, "about/budget")).toEqual(eur(200));
		expect(givenTo(asked.state, "fit/case")).toEqual({ part: "larkspur-wardrobe" });
		const chosen = walkThrough([{ type: "answer", value: { part: "larkspur-barn" } }], asked.state).state;
		expect(chosen.place).toEqual(shortlist);
	});

	test("two parts are asked for one after the other, and going back from the first leaves things as they are", () => {
		const changes: readonly TakenChange[] = [
			{ questionId: "fit/case", from: { part: "larkspur-wardrobe" }, to: null },
			{ questionId: "fit/memory", from: { part: "tabbywren-mittens" }, to: null },
		];
		const { state, effects } = take(changes);
		expect(effects).toEqual([]);
		expect(state.answers).toBe(poor.answers);
		const next = walkThrough([{ type: "answer", value: { part: "larkspur-barn" } }], state).state;
		expect(next.place).toEqual({ at: "question", id: "fit/memory" });
		expect(walkThrough([{ type: "answer", value: "open" }], next).state.place).toEqual(shortlist);
	});
});

describe("what makes no sense changes nothing", () => {
	test.each([
		["an answer that is no longer what it was", { questionId: "about/budget", from: eur(60), to: eur(200) }],
		["a value the question cannot have", { questionId: "about/budget", from: eur(50), to: "plenty" }],
		["a question there is not", { questionId: "about/horoscope", from: null, to: eur(200) }],
		["a question that was answered, as if it were not", { questionId: "about/budget", from: null, to: eur(200) }],
	] as const)("%s", (_, change) => {
		const { state, effects } = take([change]);
		expect(state.answers).toBe(poor.answers);
		expect(state.place).toEqual(poor.place);
		expect(effects).toEqual([]);
	});

	test("nothing to change", () => {
		expect(take([]).state).toEqual({ ...poor, notice: null, problem: null });
	});

	test("one change that makes no sense stops them all", () => {
		const { state } = take([
			{ questionId: "about/budget", from: eur(50), to: eur(200) },
			{ questionId: "features/wireless", from: "must", to: "nonsense" },
		]);
		expect(state.answers).toBe(poor.answers);
	});
});

describe("the lines of the shortlist", () => {
	test.each(scenarios.map(({ name, state }) => [name, state] as const))(
		"%s: each can be taken and keeps its word",
		(_, given) => {
			const answers = { ...given.answers, "about/budget": { status: "answered", value: eur(50) } } as const;
			const state = walkAt(shortlist, { answers });
			const lines = (screenOf(demo, state)?.choices ?? []).filter(({ event }) => event.type === "way-out");
			for (const { event, detail, label } of lines) {
				if (event.type !== "way-out") continue;
				const taken = walkThrough([event], state).state;
				expect(label).toMatch(/^[A-Z]/);
				expect(detail).toMatch(/board/);
				const asks = event.changes.filter(({ to }) => to === null);
				if (asks.length > 0) expect(taken.place).toEqual({ at: "question", id: asks[0]?.questionId });
				else {
					expect(taken.place).toEqual(shortlist);
					const { counts } = viewWalk(demo, taken).judgement();
					expect(counts.all - counts.doesNotFit).toBeGreaterThan(0);
				}
			}
			if (viewWalk(demo, state).judgement().counts.doesNotFit === demo.market.parts.board.length)
				expect(screenOf(demo, state)?.title).toBe("Nothing fits all your answers");
		},
	);

	test("where something fits there is none", () => {
		const state = { ...walkDone(quietAnswers), place: shortlist };
		expect(screenOf(demo, state)?.choices.some(({ event }) => event.type === "way-out")).toBe(false);
	});
});
