import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { possibleAnswers } from "../../src/choose/possible-answers.ts";
import { mostAsked } from "../../src/choose/when-to-stop.ts";
import { questionById } from "../../src/questions/all-questions.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { makesSense } from "../../src/questions/is-asked.ts";
import { placeAfter, placeBefore } from "../../src/walk/places.ts";
import { shortWalkOf } from "../../src/walk/short-walk.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import { startWalk, type WalkContext, type WalkState } from "../../src/walk/walk-state.ts";
import { demo, emptyMarket, walkThrough, walkWith } from "./walk-in-demo.ts";

const next: WalkEvent = { type: "next" };
const back: WalkEvent = { type: "back" };
const notSure: WalkEvent = { type: "not-sure" };
const short = walkThrough([next, { type: "answer", value: "short" }]).state;

/** Goes on, with any answer to each question, until the shortlist; and the questions come to on the way. */
function toShortlist(from: WalkState, pick: (values: number) => number, context: WalkContext = demo) {
	const asked: string[] = [];
	const places: string[] = [];
	let state = from;
	while (state.place.at !== "shortlist" && places.length < 90) {
		const { place } = state;
		places.push(place.at === "tier-end" ? `end of ${place.tier}` : place.at);
		let event: WalkEvent = next;
		if (place.at === "question" && !state.answers[place.id]) {
			asked.push(place.id);
			const question = questionById(place.id);
			const { facts } = foldAnswers(state.answers, context);
			const values = question ? possibleAnswers(question, context, facts, context.market.parts.board) : [];
			const value = values[pick(values.length)]?.value;
			event = value === undefined ? notSure : { type: "answer", value };
		}
		state = walkThrough([event], state, context).state;
	}
	return { state, asked, places };
}

const anyPicks = fc.infiniteStream(fc.nat(30));
const picking = (picks: fc.Stream<number>) => (values: number) => (picks.next().value ?? 0) % (values + 1);

describe("a short walk", () => {
	test("comes to the shortlist with no question asked twice, whatever is answered", () => {
		fc.assert(
			fc.property(anyPicks, (picks) => {
				const { state, asked, places } = toShortlist(short, picking(picks));
				expect(state.place).toEqual({ at: "shortlist" });
				expect(new Set(asked).size).toBe(asked.length);
				expect(Object.keys(state.answers)).toEqual(["about/walk-length", ...asked]);
				expect(places.at(-1)).toMatch(/^end of|question/);
				const walk = shortWalkOf(demo, state.answers);
				expect(walk?.next).toBeNull();
				expect(walk?.why).not.toBeNull();
			}),
			{ numRuns: 15 },
		);
	});

	test("is the same forwards and backwards: what was asked stays, in the order in which it came", () => {
		fc.assert(
			fc.property(anyPicks, (picks) => {
				const { state, asked } = toShortlist(short, picking(picks));
				const build = foldAnswers(state.answers, demo);
				const inSense = asked.filter((id) => makesSense(questionById(id) as never, build));
				const seen: string[] = [];
				let at = placeBefore(demo, state, { at: "shortlist" });
				while (at.at === "question" && seen.length < 60) {
					seen.unshift(at.id);
					at = placeBefore(demo, state, at);
				}
				expect(at).toEqual({ at: "start" });
				expect(new Set(seen)).toEqual(new Set(["about/walk-length", ...inSense]));
				expect(seen).toHaveLength(inSense.length + 1);
				// Forwards through a tier they come as they came.
				for (const [nth, id] of seen.slice(0, -1).entries()) {
					const following = seen[nth + 1] ?? "";
					if (questionById(id)?.tier !== questionById(following)?.tier) continue;
					expect(placeAfter(demo, state, { at: "question", id })).toEqual({ at: "question", id: following });
				}
			}),
			{ numRuns: 10 },
		);
	});

	test("back from a question is the one that came before it", () => {
		const first = walkThrough([{ type: "answer", value: "builder" }], short).state;
		expect(first.place).toEqual({ at: "question", id: "about/activities" });
		const before = walkThrough([back], first).state;
		expect(before.place).toEqual({ at: "question", id: "about/who" });
		// The answer is changed, and the walk goes on where it was.
		expect(walkThrough([{ type: "answer", value: "builder with a helper" }], before).state.place).toEqual(first.place);
	});

	test("an answer changed at its end opens what matters now, and what was answered stays", () => {
		const { state } = toShortlist(short, (values) => values - 1);
		const changed = walkThrough(
			[
				{ type: "change", questionId: "fit/processor" },
				{ type: "answer", value: { part: "wimblecombe-beekeeper" } },
			],
			state,
		).state;
		expect(changed.place).toEqual({ at: "shortlist" });
		expect(Object.keys(changed.answers)).toEqual(Object.keys(state.answers));
		const after = toShortlist(walkThrough([{ type: "go-on" }], changed).state, (values) => values - 1);
		expect(after.state.place).toEqual({ at: "shortlist" });
		for (const id of after.asked) expect(state.answers[id]).toBeUndefined();
	});

	test("made long at its end comes to all that it left out", () => {
		const { state } = toShortlist(short, (values) => values - 1);
		const long = walkThrough(
			[{ type: "change", questionId: "about/walk-length" }, { type: "answer", value: "whole" }, { type: "go-on" }],
			state,
		).state;
		const open = shortWalkOf(demo, state.answers)?.open ?? [];
		expect(open.length).toBeGreaterThan(10);
		expect(long.place).toEqual({ at: "question", id: open[0]?.id });
	});

	test("without boards asks all that are marked for it", () => {
		const begun = walkThrough([next, { type: "answer", value: "short" }], startWalk(), emptyMarket).state;
		const { asked } = toShortlist(begun, () => -1, emptyMarket);
		expect(asked.length).toBeGreaterThan(15);
		expect(asked.every((id) => questionById(id)?.short)).toBe(true);
	});

	test("has no more questions than a short walk may have, as long as a board is left", () => {
		const { state } = toShortlist(short, () => -1);
		expect(Object.keys(state.answers).length).toBeLessThanOrEqual(mostAsked);
	});

	test("is none on the long way, nor as long as nobody has said", () => {
		expect(shortWalkOf(demo, {})).toBeNull();
		expect(shortWalkOf(demo, walkWith({ "about/walk-length": "whole" }).answers)).toBeNull();
	});
});
