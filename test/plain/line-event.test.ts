import { describe, expect, test } from "vitest";
import { type LineMeaning, lineMeaning } from "../../src/plain/line-event.ts";
import type { Screen } from "../../src/screens/screen.ts";

const empty: Screen = {
	id: "a-screen",
	place: "",
	title: "A screen",
	body: [],
	choices: [],
	typing: null,
	isMenu: false,
	enter: null,
	side: [],
	help: [],
	sources: [],
	problem: null,
	notice: null,
};
const answer = (value: string) => ({ type: "answer", value }) as const;
const event = (given: Extract<LineMeaning, { kind: "event" }>["event"]): LineMeaning => ({
	kind: "event",
	event: given,
});

/** A list to pick from, with not sure last. */
const picked: Screen = {
	...empty,
	choices: [
		{ label: "Red shed", event: answer("red") },
		{ label: "Green shed", event: answer("green") },
		{ label: "Not sure", isUnsure: true, apart: true, event: { type: "not-sure" } },
	],
};
/** A number is the answer itself. */
const typedValue: Screen = {
	...empty,
	choices: [{ label: "Not sure", isUnsure: true, key: "n", apart: true, event: { type: "not-sure" } }],
	typing: { kind: "value", words: "type your answer" },
};
/** A long list of names, of which some letters find one. */
const named: Screen = { ...picked, typing: { kind: "words", words: "or some letters of a name" } };
/** Lines to pick, or a word of one's own. */
const free: Screen = { ...picked, typing: { kind: "free", words: "or type it" } };
const withEnter = (screen: Screen): Screen => ({ ...screen, enter: { words: "keep it", event: { type: "next" } } });

describe("commands", () => {
	test.each([
		["b", { type: "back" }],
		["back", { type: "back" }],
		["r", { type: "review" }],
		["review", { type: "review" }],
		["m", { type: "menu" }],
		["s", { type: "leave" }],
		["q", { type: "leave" }],
		["quit", { type: "leave" }],
		[" B ", { type: "back" }],
		["QUIT", { type: "leave" }],
	] as const)("%j counts on every screen", (line, means) => {
		for (const screen of [empty, picked, typedValue, named, free])
			expect(lineMeaning(screen, line)).toEqual(event(means));
	});

	test.each(["?", " help ", "HELP"])("%j is a look at the help", (line) => {
		for (const screen of [empty, picked, typedValue, named, free])
			expect(lineMeaning(screen, line)).toEqual({ kind: "help" });
	});

	test("words that every object has are no commands", () => {
		for (const line of ["constructor", "toString", "__proto__"]) expect(lineMeaning(picked, line).kind).toBe("problem");
	});
});

describe("numbers", () => {
	test.each([
		["1", answer("red")],
		["2", answer("green")],
		["2.", answer("green")],
		["2)", answer("green")],
		["  2  ", answer("green")],
		["02", answer("green")],
		["3", { type: "not-sure" }],
	] as const)("%j picks its line", (line, means) => {
		for (const screen of [picked, named, free]) expect(lineMeaning(screen, line)).toEqual(event(means));
	});

	test.each(["0", "4", "99", "9999"])("%j is no line, and it says which there are", (line) => {
		for (const screen of [picked, named, free])
			expect(lineMeaning(screen, line)).toEqual({
				kind: "problem",
				words: expect.stringMatching(`no line ${line}.*from 1 to 3`),
			});
	});

	test("are answers where a value is typed", () => {
		for (const line of ["1", "200", "0", "-1", "1.5"])
			expect(lineMeaning(typedValue, line)).toEqual(event({ type: "text", text: line }));
	});
});

describe("words", () => {
	test("the letter of a line picks it", () => {
		for (const line of ["n", "N"]) expect(lineMeaning(typedValue, line)).toEqual(event({ type: "not-sure" }));
	});

	test.each(["not sure", "Unsure", "don't know", "no idea"])("%j is not sure on any screen that has it", (line) => {
		for (const screen of [picked, typedValue, named, free])
			expect(lineMeaning(screen, line)).toEqual(event({ type: "not-sure" }));
	});

	test("a whole label picks its line, whatever its case", () => {
		for (const screen of [picked, named, free])
			expect(lineMeaning(screen, "green SHED")).toEqual(event(answer("green")));
	});

	test("a beginning that one line has picks it", () => {
		expect(lineMeaning(picked, "gre")).toEqual(event(answer("green")));
		expect(lineMeaning(free, "gre")).toEqual(event(answer("green")));
	});

	test("letters of a name are looked up by the walk", () => {
		expect(lineMeaning(named, "gre")).toEqual(event({ type: "text", text: "gre" }));
		expect(lineMeaning(named, "shed")).toEqual(event({ type: "text", text: "shed" }));
	});

	test("anything else is text where text is taken, with its case kept", () => {
		for (const screen of [typedValue, named, free])
			expect(lineMeaning(screen, "  Blue Barn ")).toEqual(event({ type: "text", text: "Blue Barn" }));
	});

	test("anything else is a problem where only lines can be picked", () => {
		expect(lineMeaning(picked, "blue")).toEqual({
			kind: "problem",
			words: expect.stringMatching("from 1 to 3"),
		});
	});
});

describe("an empty line", () => {
	test.each(["", "   ", "\t"])("%j does what Enter does, where that is something", (line) => {
		for (const screen of [picked, typedValue, named, free])
			expect(lineMeaning(withEnter(screen), line)).toEqual(event({ type: "next" }));
	});

	test("else says what can be typed, and chooses nothing", () => {
		expect(lineMeaning(picked, "")).toEqual({ kind: "problem", words: "Type a number from 1 to 3." });
		expect(lineMeaning(named, "")).toEqual({
			kind: "problem",
			words: "Type a number from 1 to 3, or some letters of a name.",
		});
		expect(lineMeaning(typedValue, "")).toEqual({
			kind: "problem",
			words: expect.stringContaining('n for "Not sure"'),
		});
	});
});
