import { expect, test } from "vitest";
import { emptyBuildFacts } from "../../src/parts/build.ts";
import { summerRooms } from "../../src/parts/wants.ts";
import { choiceQuestion } from "../../src/questions/choice-question.ts";
import { contextOf, madeUpWords } from "./made-up-question.ts";

const context = contextOf();
const room = choiceQuestion({
	...madeUpWords,
	want: "summerRoom",
	choices: {
		cool: { label: "Cool", explanation: "In the cellar" },
		warm: { label: "Warm", explanation: "In the hall" },
		"fan-on": { label: "Hot", explanation: "Under the roof" },
	},
});

test.each(summerRooms)("%s is set under the want's own name, and nothing else is", (value) => {
	expect(room.expected(value, context)).toBeNull();
	expect(room.sets(emptyBuildFacts, value, context)).toEqual({ ...emptyBuildFacts, summerRoom: value });
});

test("its options are all that the want can be", () => {
	expect(room.options(context, emptyBuildFacts).map(({ value }) => value)).toEqual(summerRooms);
	expect(room.expected("mesh", context)).toBe("one of cool, warm, fan-on");
});

test("is asked of everybody unless it says otherwise", () => {
	expect(room.applies(emptyBuildFacts)).toBe(true);
	const choices = { dark: madeUpChoice, light: madeUpChoice, plain: madeUpChoice };
	const never = choiceQuestion({ ...madeUpWords, want: "colourTaste", choices, applies: () => false });
	expect(never.applies(emptyBuildFacts)).toBe(false);
});

const madeUpChoice = { label: "So", explanation: "Or so" };
