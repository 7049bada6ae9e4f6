import { expect, test } from "vitest";
import { lineMeaning } from "../../src/plain/line-event.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";

import { demo, scenarios } from "../walk/walk-in-demo.ts";
import { screenAt } from "./screen-words.ts";

test("where a number is the answer, each line has a letter of its own, and an empty line picks none", () => {
	for (const { state } of scenarios)
		for (const { id } of allQuestions.filter(({ read }) => read)) {
			const screen = screenAt(
				demo,
				{ ...state, answers: { ...state.answers, [id]: { status: "not-sure" } } },
				{ at: "question", id },
			);
			const letters = screen.choices.map(({ key }) => key);
			expect(
				letters.every((letter) => /^[a-z]$/.test(letter ?? "")),
				id,
			).toBe(true);
			expect(new Set(letters).size).toBe(letters.length);
			for (const { key = "", event } of screen.choices)
				expect(lineMeaning(screen, key)).toEqual({ kind: "event", event });
			const empty = lineMeaning({ ...screen, enter: null }, "");
			expect(empty.kind, id).toBe("problem");
		}
});
