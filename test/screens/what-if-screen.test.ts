import { describe, expect, test } from "vitest";
import { whatIf } from "../../src/choose/what-if.ts";
import type { Answer } from "../../src/parts/answers-file.ts";
import { questionById } from "../../src/questions/all-questions.ts";
import { faceFor, pressKey } from "../../src/screens/face.ts";
import { whatIfWords } from "../../src/sheet/what-if-words.ts";
import type { Place } from "../../src/walk/walk-state.ts";
import { demo, notAskedOfQuiet, quietAnswers, walkThrough, walkWith } from "../walk/walk-in-demo.ts";
import { listsOf, screenAt, textsOf } from "./screen-words.ts";

const quiet = { ...walkWith(quietAnswers), place: { at: "shortlist" } as Place };
const page = { textRows: 20, lastScroll: 0 };

describe("which answer", () => {
	const { choices, title } = screenAt(demo, quiet, { at: "what-if" });

	test("every question that is asked, with the answer so far", () => {
		expect(title).toBe("What if one answer were another?");
		const asked = choices.map(({ event }) => (event.type === "what-if" ? event.questionId : null));
		for (const id of Object.keys(quietAnswers)) expect(asked).toContain(id);
		for (const id of notAskedOfQuiet) expect(asked).not.toContain(id);
		expect(choices.map(({ label }) => label)).toContain("Most the board may cost: EUR 200.00");
	});

	test("the menu leads here", () => {
		const { choices: ways } = screenAt(demo, quiet, { at: "menu" });
		const way = ways.find(({ event }) => event.type === "what-if");
		if (!way) throw new Error("the menu has a way here");
		expect(walkThrough([{ type: "menu" }, way.event], quiet).state.place).toEqual({ at: "what-if" });
	});
});

describe("the question, to try another answer", () => {
	const at = (id: string, tried: Answer | null = null) => screenAt(demo, quiet, { at: "what-if-question", id, tried });
	const asked = (id: string) => screenAt(demo, quiet, { at: "question", id });

	test("is asked as ever, with the words that nothing is kept", () => {
		const screen = at("quality/rescue");
		expect(screen.title).toBe(questionById("quality/rescue")?.ask);
		expect(textsOf(screen)).toContain("Try another answer. Nothing is kept until you say so.");
		expect(screen.choices).toEqual(asked("quality/rescue").choices);
		expect(screen.enter).toBeNull();
	});

	test("no part is described, since it would be kept", () => {
		expect(asked("fit/case").choices.some(({ event }) => event.type === "describe")).toBe(true);
		expect(at("fit/case").choices.some(({ event }) => event.type === "describe")).toBe(false);
	});

	test("what is tried is chosen, and Enter goes on to what it changes", () => {
		const { choices, enter } = at("quality/rescue", { status: "answered", value: "a-little" });
		const chosen = choices.filter((choice) => choice.chosen).map(({ event }) => event);
		expect(chosen).toEqual([{ type: "answer", value: "a-little" }]);
		expect(enter?.event).toEqual({ type: "next" });
	});

	test("beside it stand the boards that would be left", () => {
		const side = at("about/budget", { status: "answered", value: { minor: 100, currency: "EUR" } }).side;
		expect(side[0]).toMatchObject({ text: expect.stringMatching(/^0 of 12 boards left/) });
	});

	test("no letter is a command here", () => {
		const screen = at("quality/rescue");
		for (const text of ["r", "q"])
			expect(pressKey(screen, faceFor(screen), { name: "text", text }, page).event).toBeNull();
	});
});

describe("what it would change", () => {
	const tried: Answer = { status: "answered", value: { minor: 12_900, currency: "EUR" } };
	const place: Place = { at: "what-if-answer", id: "about/budget", tried };
	const screen = screenAt(demo, quiet, place);

	test("all that the words say, under the label of the question", () => {
		const result = whatIf(demo.market, quiet.answers, { questionId: "about/budget", answer: tried }, demo.asOf);
		const words = whatIfWords(result, demo);
		expect(screen.title).toBe("What if: Most the board may cost");
		expect(screen.body.flatMap((block) => (block.kind === "heading" ? [block.text] : []))).toEqual(
			words.map(({ heading }) => heading),
		);
		expect(listsOf(screen.body)).toEqual(words.map(({ lines }) => lines));
	});

	test("Enter leaves the answer as it is; a line or its letter takes the other one", () => {
		const from = { ...quiet, place, returnTo: [{ at: "what-if-question", id: "about/budget", tried } as const] };
		const left = walkThrough([screen.enter?.event ?? { type: "next" }], from).state;
		expect([left.place.at, left.answers]).toEqual(["what-if-question", quiet.answers]);
		const marked = pressKey(screen, faceFor(screen), { name: "text", text: "t" }, page).face;
		const taken = pressKey(screen, marked, { name: "enter" }, page).event;
		if (!taken) throw new Error("the line does something");
		expect(walkThrough([taken], from).state.answers["about/budget"]).toMatchObject({ value: tried.value });
	});
});
