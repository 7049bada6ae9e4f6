import { describe, expect, test } from "vitest";
import { emptyBuildFacts } from "../../src/parts/build.ts";
import type { Option, Question } from "../../src/questions/define-question.ts";
import { wireless } from "../../src/questions/features/wireless.ts";
import { readTyped } from "../../src/questions/read-typed.ts";
import { demoContext } from "../choose/demo.ts";

const listing = (...labels: string[]): Question => ({
	...wireless,
	options: (): Option[] => labels.map((label) => ({ value: label.toLowerCase(), label, explanation: "" })),
});
const read = (question: Question, text: string) => readTyped(question, text, demoContext, emptyBuildFacts);

describe("words of one line", () => {
	const question = listing("Pennywhistle Mazurka", "Pennywhistle Mazurka Aerial", "Oddment Button", "Ärmel");

	test.each([
		["all of them, though another line goes on", "Pennywhistle Mazurka", "pennywhistle mazurka"],
		["in small letters", "oddment button", "oddment button"],
		["the beginning", "odd", "oddment button"],
		["a piece", "aerial", "pennywhistle mazurka aerial"],
		["letters that are not English", "ÄRMEL", "ärmel"],
		["in two pieces (NFD)", "a\u0308rmel", "ärmel"],
		["with spaces to spare", "  Oddment   Button ", "oddment button"],
		["with an escape sequence in it", "\u001b[1mOddment\u001b[0m", "oddment button"],
	])("%s", (_, text, value) => {
		expect(read(question, text)).toEqual({ value });
	});

	test("words of several lines name those lines", () => {
		expect(read(question, "pennywhistle")).toEqual({
			problem: 'Several lines have "pennywhistle": Pennywhistle Mazurka, Pennywhistle Mazurka Aerial.',
		});
	});

	test("of many lines only four are named, and the others counted", () => {
		expect(read(listing("a1", "a2", "a3", "a4", "a5"), "a")).toEqual({
			problem: 'Several lines have "a": a1, a2, a3, a4 and 1 more.',
		});
	});

	test.each(["", "   ", "\u200b"])("nothing typed: %j", (text) => {
		expect(read(question, text)).toEqual({ problem: "Pick a line, or type some of its words." });
	});

	test("words of no line", () => {
		expect(read(question, "zither")).toEqual({
			problem: 'No line has "zither". Try fewer letters, or take another line.',
		});
	});
});

test("a question's own reader gets the cleaned line", () => {
	const question: Question = { ...wireless, read: (text) => ({ value: `[${text}]` }) };
	expect(read(question, "\u001b[1m 180 \n EUR ")).toEqual({ value: "[180 EUR]" });
});
