import { describe, expect, test } from "vitest";
import { type LineMeaning, lineMeaning } from "../../src/plain/line-event.ts";
import type { Choice, Screen } from "../../src/screens/screen.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import { contextOf } from "../questions/made-up-question.ts";
import { walkAt } from "../walk/walk-in-demo.ts";
import { plainWalkOf } from "./plain-walk-of.ts";

const line = (value: string, label: string): Choice => ({
	label,
	mark: { count: 0, most: 2 },
	event: { type: "mark", value, by: 1 },
});
const none: WalkEvent = { type: "answer", value: [] };
const marks: Screen = {
	...{ id: "s", place: "", title: "Which?", body: [], typing: null, isMenu: false, enter: null },
	...{ side: [], help: [], sources: [], problem: null, notice: null },
	choices: [
		line("drive", "Drive"),
		line("fan", "Fan"),
		line("lamp", "Lamp"),
		{ label: "None of these", apart: true, event: none },
		{ label: "Not sure", apart: true, isUnsure: true, event: { type: "not-sure" } },
	],
};
const event = (given: WalkEvent): LineMeaning => ({ kind: "event", event: given });
const text = (words: string) => event({ type: "text", text: words });

describe("numbers on a screen where several lines can be marked", () => {
	test.each([
		["1, 3", "1, 3"],
		["3 1", "3, 1"],
		["1;2;2", "1, 2, 2"],
		["1. 3.", "1, 3"],
		["2) 3)", "2, 3"],
		[" 1 ,  2 ", "1, 2"],
	])("%j together are the whole answer: the question reads them", (typed, words) => {
		expect(lineMeaning(marks, typed)).toEqual(text(words));
	});

	test.each(["2", "2.", " 2) "])("%j alone is the whole answer too", (typed) => {
		expect(lineMeaning(marks, typed)).toEqual(text("2"));
	});

	test("of a line that stands apart choose it", () => {
		expect(lineMeaning(marks, "4")).toEqual(event(none));
		expect(lineMeaning(marks, "5")).toEqual(event({ type: "not-sure" }));
	});

	test("of a line apart among others are left to the question, which refuses them", () => {
		expect(lineMeaning(marks, "1, 5")).toEqual(text("1, 5"));
	});

	test("of no line are left to it as well", () => {
		for (const typed of ["9", "0", "1, 9"]) expect(lineMeaning(marks, typed)).toEqual(text(typed));
	});
});

test("words mark their line, as do beginnings that no other line has", () => {
	for (const typed of ["lamp", "LAMP", "la"])
		expect(lineMeaning(marks, typed)).toEqual(event({ type: "mark", value: "lamp", by: 1 }));
	expect(lineMeaning(marks, "none")).toEqual(event(none));
	expect(lineMeaning(marks, "not sure")).toEqual(event({ type: "not-sure" }));
});

test("an empty line goes on where there is an answer, else says what can be typed", () => {
	expect(lineMeaning({ ...marks, enter: { words: "go on", event: { type: "next" } } }, "")).toEqual(
		event({ type: "next" }),
	);
	expect(lineMeaning(marks, "")).toEqual({ kind: "problem", words: "Type a number from 1 to 5." });
});

test("where only one line can be picked, several numbers are none", () => {
	const picks = { ...marks, choices: marks.choices.map(({ mark: _, ...choice }) => choice) };
	expect(lineMeaning(picks, "1, 3")).toMatchObject({ kind: "problem" });
	expect(lineMeaning({ ...picks, typing: { kind: "value", words: "type it" } }, "1, 3")).toEqual(text("1, 3"));
});

describe("a real question, line by line", () => {
	const later = "features/later";
	const context = contextOf();
	const walked = (...lines: readonly string[]) =>
		plainWalkOf(lines, { context, from: walkAt({ at: "question", id: later }) });

	test("takes numbers of several lines as its answer and leads on; one twice means two of them", async () => {
		const { state, said, effects } = await walked("4, 1, 1");
		expect(state.answers[later]).toEqual({
			status: "answered",
			value: ["M.2 drive", "M.2 drive", "card"],
			by: "builder",
		});
		expect(said).toContain("How much would having no place for a later part bother you?");
		expect(effects.map(({ type }) => type)).toEqual(["save", "save", "leave"]);
	});

	test("replaces what was marked before by what is typed now", async () => {
		const { state } = await walked("more memory", "3, 5");
		expect(state.answers[later]?.value).toEqual(["memory", "fan"]);
		expect((await walked("more memory", "5")).state.answers[later]?.value).toEqual(["fan"]);
	});

	test("marks by words, shows the mark, and goes on by an empty line", async () => {
		const { state, steps } = await walked("more memory", "a card", "");
		expect(steps[1]).toContain("More memory (marked)");
		expect(steps[2]).toMatch(/A card.* \(marked\)/);
		expect(state.answers[later]?.value).toEqual(["memory", "card"]);
		expect(steps[3]).toContain("How much would having no place");
	});

	test.each(["1, 9", "0", "1, 8", ",", "99"])("says in words what %j lacks, and takes no answer", async (typed) => {
		const { state, steps } = await walked(typed);
		expect(steps[1]).toContain("Type numbers from 1 to 6 with commas, such as 1, 3.");
		expect(state.answers).toEqual({});
	});

	test("says in its prompt that several may be typed", async () => {
		const { prompts } = await walked();
		expect(prompts[0]?.replace(/\s+/g, " ")).toContain("several as 1, 3");
	});

	test("is answered by its line of none, which is not the same as not sure", async () => {
		expect((await walked("7")).state.answers[later]).toMatchObject({ status: "answered", value: [] });
		expect((await walked("8")).state.answers[later]).toMatchObject({ status: "not-sure" });
	});
});
