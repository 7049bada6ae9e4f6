import { describe, expect, test } from "vitest";
import type { Answer, AnswerValue } from "../../src/parts/answers-file.ts";
import { questionById } from "../../src/questions/all-questions.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { answersDropped } from "../../src/walk/answers-dropped.ts";
import { savedWalk, takeUpWalk } from "../../src/walk/saved-walk.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import type { Place, WalkState } from "../../src/walk/walk-state.ts";
import { contextOf } from "../questions/made-up-question.ts";
import { deepFreeze, walkAt, walkThrough } from "./walk-in-demo.ts";

const context = deepFreeze(
	contextOf({
		processors: ["one", "two", "three", "four", "five"].map((id) => ({ id, name: `Number ${id}` })),
		drives: [
			{ id: "box", name: "Box", shape: "2.5 inch" },
			{ id: "stick", name: "Stick", shape: "M.2" },
			{ id: "other-box", name: "Other Box", shape: "2.5 inch" },
		],
	}),
);

const at = (id: string): Place => ({ at: "question", id });
const mark = (value: string, by: 1 | -1 = 1): WalkEvent => ({ type: "mark", value, by });
const answer = (value: AnswerValue): WalkEvent => ({ type: "answer", value });
const given = (value: AnswerValue, by = "builder"): Answer => ({ status: "answered", value, by });
const save = { type: "save" } as const;
const notSure: Answer = { status: "not-sure", by: "builder" };

const later = "features/later";
const go = (from: WalkState, ...events: WalkEvent[]) => walkThrough(events, from, context);
const markedIn = (from: WalkState, ...events: WalkEvent[]) => go(from, ...events).state.answers[later]?.value;

describe("a line marked", () => {
	const start = walkAt(at(later));

	test("is the answer, given by who answers; the walk stays, and keeps what was answered before", () => {
		const answers = { "about/quiet": notSure };
		const { state, effects } = go(walkAt(at(later), { answers, by: "builder with a helper" }), mark("memory"));
		expect(state).toEqual(
			walkAt(at(later), {
				by: "builder with a helper",
				answers: { ...answers, [later]: given(["memory"], "builder with a helper") },
				answersBefore: answers,
			}),
		);
		expect(effects).toEqual([save]);
	});

	test("once more up to the most, and then it is empty again", () => {
		const card = mark("card");
		expect(markedIn(start, card, mark("memory"))).toEqual(["memory", "card"]);
		expect(markedIn(start, card, mark("memory"), card)).toEqual(["memory", "card", "card"]);
		expect(markedIn(start, card, mark("memory"), card, card)).toEqual(["memory"]);
		expect(markedIn(start, card, mark("memory"), card, card, card)).toEqual(["memory", "card"]);
	});

	test("that can be marked once is emptied by the second mark", () => {
		expect(markedIn(start, mark("card"), mark("memory"), mark("memory"))).toEqual(["card"]);
	});

	test("is marked once less by -1, and not below nothing", () => {
		const before = walkAt(at(later), { answers: { [later]: given(["M.2 drive", "M.2 drive", "fan"]) } });
		expect(markedIn(before, mark("M.2 drive", -1))).toEqual(["M.2 drive", "fan"]);
		expect(markedIn(before, mark("M.2 drive", -1), mark("M.2 drive", -1))).toEqual(["fan"]);
		expect(markedIn(before, mark("card", -1))).toEqual(["M.2 drive", "M.2 drive", "fan"]);
	});

	test("stands where its line stands, in whatever order lines were marked", () => {
		expect(markedIn(start, mark("USB thing"), mark("fan"), mark("M.2 drive"), mark("fan"))).toEqual([
			"M.2 drive",
			"fan",
			"fan",
			"USB thing",
		]);
	});

	test("each mark is saved once", () => {
		const events = [mark("fan"), mark("fan"), mark("fan", -1), mark("fan", -1)];
		expect(go(start, ...events).effects).toEqual(events.map(() => save));
	});

	test("the last one unmarked leaves no answer at all, and is saved too", () => {
		for (const events of [
			[mark("fan"), mark("fan", -1)],
			[mark("memory"), mark("memory")],
		]) {
			const { state, effects } = go(walkAt(at(later), { answers: { "about/quiet": notSure } }), ...events);
			expect(state.answers).toEqual({ "about/quiet": notSure });
			expect(state.place).toEqual(at(later));
			expect(effects).toHaveLength(2);
		}
	});

	test("takes the place of not sure, of none, and of the plain number of an older file", () => {
		for (const before of [notSure, given([])])
			expect(markedIn(walkAt(at(later), { answers: { [later]: before } }), mark("fan"))).toEqual(["fan"]);
		const devices = "features/rear-devices";
		const older = walkAt(at(devices), { answers: { [devices]: given(5) } });
		expect(go(older, mark("mouse")).state.answers).toEqual({ [devices]: given(["mouse"]) });
	});

	test("clears the problem and the notice of the step before", () => {
		const before = walkAt(at(later), { problem: "No such line.", notice: "Written." });
		expect(go(before, mark("fan")).state).toMatchObject({ problem: null, notice: null });
	});
});

describe("what is no line", () => {
	test.each<[string, Place, WalkEvent]>([
		["another question's value", at(later), mark("keyboard")],
		["a value in other letters", at(later), mark("Memory")],
		["a word that every object has", at(later), mark("constructor")],
		["nothing", at(later), mark("")],
		["a line of a question that takes one", at("about/session-length"), mark("minutes")],
		["a line where a number is typed", at("features/case-fans"), mark("1")],
		["a part where one is picked", at("fit/processor"), mark("one")],
		["a line where nothing is asked", { at: "review" }, mark("memory")],
		["a line of a question there is not", at("fit/horoscope"), mark("memory")],
	])("%s changes nothing, and nothing is saved", (_, place, event) => {
		const before = walkAt(place, { answers: { [later]: given(["fan"]) } });
		expect(go(before, event)).toEqual({ state: before, effects: [] });
	});
});

describe("parts", () => {
	const drives = "fit/drives";
	const candidates = "fit/candidates";

	test("are marked by id, and stand as their lines do: those under one heading together", () => {
		const { state } = go(walkAt(at(drives)), mark("stick"), mark("other-box"), mark("box"), mark("box"));
		expect(state.answers).toEqual({ [drives]: given(["box", "box", "other-box", "stick"]) });
	});

	test("more in all than there may be are refused in words, and what is marked stays", () => {
		const before = walkAt(at(candidates), { answers: { [candidates]: given(["one", "two", "three", "four"]) } });
		expect(go(before, mark("five"))).toEqual({
			state: { ...before, problem: expect.stringContaining("4 lines at most") },
			effects: [],
		});
	});

	const described: readonly WalkEvent[] = [{ type: "describe" }, { type: "text", text: "Number six" }];
	/** Describes a processor by its name alone. */
	function describedFrom(before: WalkState) {
		let { state } = go(before, ...described);
		while (state.place.at === "describe") ({ state } = go(state, { type: "not-on-page" }));
		return state;
	}

	test("another one that is described is added beside those marked", () => {
		const state = describedFrom(walkAt(at(candidates), { answers: { [candidates]: given(["two", "one"]) } }));
		expect(state.answers).toEqual({ [candidates]: given(["two", "one", "number-six"]) });
		expect(state.ownParts).toEqual([{ kind: "processor", part: { id: "number-six", name: "Number six" } }]);
		const back = go({ ...state, place: at(candidates) }, mark("two"), mark("three")).state;
		expect(back.answers[candidates]?.value).toEqual(["one", "three", "number-six"]);
	});

	test("and is the first where none was marked", () => {
		for (const before of [{}, { [candidates]: notSure }, { [candidates]: given([]) }])
			expect(describedFrom(walkAt(at(candidates), { answers: before })).answers[candidates]).toEqual(
				given(["number-six"]),
			);
	});
});

describe("who answers", () => {
	const helper = "helper for the builder";

	test("is noted beside that answer and all that follow, whichever way they are given", () => {
		const { state } = go(
			walkAt(at("about/who"), { answers: { "about/quiet": notSure } }),
			answer(helper),
			{ type: "change", questionId: later },
			mark("fan"),
			{ type: "change", questionId: "features/case-fans" },
			{ type: "text", text: "3" },
			{ type: "change", questionId: "about/summer-room" },
			{ type: "not-sure" },
		);
		expect(state.answers).toEqual({
			"about/quiet": notSure,
			"about/who": given(helper, helper),
			[later]: given(["fan"], helper),
			"features/case-fans": given(3, helper),
			"about/summer-room": { status: "not-sure", by: helper },
		});
	});

	test("counts anew from where it is changed, and earlier answers keep theirs", () => {
		const before = walkAt(at("about/who"), {
			by: helper,
			answers: { "about/who": given(helper, helper), [later]: given(["fan"], helper) },
		});
		const { state } = go(before, answer("builder"), { type: "change", questionId: "about/quiet" }, answer("somewhat"));
		expect(state.by).toBe("builder");
		expect(state.answers).toEqual({
			"about/who": given("builder"),
			[later]: given(["fan"], helper),
			"about/quiet": given("somewhat"),
		});
	});

	test("is known again when a kept walk is taken up", () => {
		const { state } = go(walkAt(at("about/who")), answer(helper));
		const again = takeUpWalk(context, savedWalk(context, state)).state;
		const marked = go({ ...again, place: at(later) }, mark("fan")).state;
		expect(marked.answers[later]).toEqual(given(["fan"], helper));
	});

	test("a value this question has not is refused, and nobody else answers from then on", () => {
		const before = walkAt(at("about/who"));
		expect(go(before, answer("a stranger")).state).toEqual({
			...before,
			problem: expect.stringMatching(/^This question takes /),
		});
	});
});

describe("an earlier answer that makes a later question senseless", () => {
	const room = "features/room";
	const labelOf = (id: string) => questionById(id)?.label ?? "?";
	const answers = { [later]: given(["card"]), [room]: given("a-lot"), "features/lighting": notSure };
	const before = walkAt(at(later), { answers });

	test("is told with the questions it takes out, and their answers are kept", () => {
		const { state } = go(before, answer([]));
		expect(state.notice).toContain(labelOf(room));
		expect(state.notice).not.toContain(labelOf("features/lighting"));
		expect(state.answers).toEqual({ ...answers, [later]: given([]) });
	});

	test("whichever answer that is, and however it is given", () => {
		const money = {
			"about/money-in-all": given({ minor: 90_000, currency: "EUR" }),
			"about/money-spent": given({ minor: 20_000, currency: "EUR" }),
		};
		const poor = go(walkAt(at("about/money-in-all"), { answers: money }), { type: "not-sure" }).state;
		expect(poor.notice).toContain(labelOf("about/money-spent"));
		const wired = walkAt(at("features/wireless"), { answers: { "features/router": given("2.5") } });
		const wireless = go(wired, answer("must")).state;
		expect(wireless.notice).toContain(labelOf("features/router"));
		expect(wireless.answers["features/router"]).toEqual(given("2.5"));
	});

	test("and all of them, where it makes several senseless", () => {
		const owned = {
			"fit/processor": given({ part: "one" }),
			"fit/bought": given(["processor"]),
			"fit/returnable": given(["processor"]),
			"fit/return-until": given("2026-12-24"),
		};
		const { state } = go(walkAt(at("fit/processor"), { answers: owned }), { type: "not-sure" });
		const labels = ["fit/bought", "fit/returnable", "fit/return-until"].map(labelOf);
		expect(state.notice).toContain(labels.join(", "));
		expect(state.answers).toEqual({ ...owned, "fit/processor": notSure });
	});

	test("the answer counts again once the change is taken back", () => {
		const changed = go(before, answer([])).state;
		const back = go({ ...changed, place: at(later) }, mark("memory")).state;
		expect(back.notice).toBeNull();
		const importance = (state: WalkState) => foldAnswers(state.answers, context).facts.importance;
		expect(importance(changed)).toEqual({});
		expect(importance(back)).toEqual({ room: "a-lot" });
	});

	test.each<[string, Record<string, Answer>, WalkEvent]>([
		["another value that keeps it sensible", answers, mark("memory")],
		["a question that was never answered", { [later]: given(["card"]) }, answer(["fan"])],
		["one that was not sure before", { ...answers, [room]: notSure }, answer(["fan"])],
		["one that made no sense before either", { ...answers, [later]: given([]) }, answer([])],
	])("no word about %s", (_, kept, event) => {
		expect(go(walkAt(at(later), { answers: kept }), event).state.notice).toBeNull();
	});

	test("those dropped are found between any two states", () => {
		const after = { ...before, answers: { ...answers, [later]: notSure } };
		expect(answersDropped(context, before, after).map(({ id }) => id)).toEqual([room]);
		expect(answersDropped(context, after, before)).toEqual([]);
		expect(answersDropped(context, before, before)).toEqual([]);
	});
});

describe("what the last answer took out", () => {
	test("is told of all marks of a question together, from before the first", () => {
		const state = walkAt(at("features/rescue-musts"), { answers: { "quality/years": given(5) } });
		const once = go(state, mark("fault-display")).state;
		const twice = go(once, mark("reset-at-back")).state;
		expect(once.answersBefore).toBe(state.answers);
		expect(twice.answersBefore).toBe(state.answers);
		// Another question begins anew.
		const elsewhere = go({ ...twice, place: at("features/lighting") }, mark("5 V three-pin")).state;
		expect(elsewhere.answersBefore).toBe(twice.answers);
	});
});

test("what a typed list, or not sure, takes out of what was marked is said", () => {
	const typed = (from: WalkState, text: string) => go({ ...from, place: at(later) }, { type: "text", text }).state;
	const two = typed(walkAt(at(later)), "1, 3");
	expect(two.notice).toBeNull();
	expect(typed(two, "1, 3, 4").notice).toBeNull();
	const other = typed(two, "4");
	expect(other.answers[later]?.value).toHaveLength(1);
	expect(other.notice).toBe("Only what was typed just now is marked.");
	const unsure = go({ ...two, place: at(later) }, { type: "not-sure" }).state;
	expect(unsure.notice).toBe("What was marked before is marked no more.");
});
