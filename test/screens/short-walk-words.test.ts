import { describe, expect, test } from "vitest";
import { allQuestions } from "../../src/questions/all-questions.ts";
import type { Screen } from "../../src/screens/screen.ts";
import { screenOf } from "../../src/screens/screen-of.ts";
import { goOnWords, shortWalkEndWords } from "../../src/screens/short-walk-words.ts";
import { viewWalk } from "../../src/screens/walk-view.ts";
import type { ShortWalk } from "../../src/walk/short-walk.ts";
import type { WalkState } from "../../src/walk/walk-state.ts";
import { demo, quietAnswers, walkAt, walkDone, walkThrough, walkWith } from "../walk/walk-in-demo.ts";

const walk = (why: ShortWalk["why"], open: number): ShortWalk => ({
	dealtWith: [],
	next: null,
	why,
	open: allQuestions.slice(0, open),
});

describe("the end of a short walk", () => {
	test("says why in words, how many questions were not asked, and what asks them", () => {
		expect(shortWalkEndWords(walk("nothing-changes-the-lead", 12), 3)).toEqual([
			"None of the questions left could change which board leads.",
			"12 questions were not asked. The long walk asks them.",
		]);
		expect(shortWalkEndWords(walk("little-to-gain", 1), 3)).toEqual([
			"The questions left could still change which board leads, but for little. Each is worth less than half a point of 100 on average.",
			"1 question was not asked. The long walk asks them.",
		]);
		expect(shortWalkEndWords(walk("enough-asked", 2), 3)[0]).toBe(
			"The short walk ends after 18 questions. Some of those left could still change which board leads.",
		);
	});

	test("speaks of no leader where no board is left, and of nothing left where all is asked", () => {
		expect(shortWalkEndWords(walk("nothing-changes-the-lead", 5), 0)[0]).toBe(
			"All questions of the short walk are asked.",
		);
		expect(shortWalkEndWords(walk("nothing-changes-the-lead", 0), 3)).toEqual(["All questions are asked."]);
		expect(shortWalkEndWords(walk(null, 5), 3)).toEqual([]);
	});
});

const ended: WalkState = walkDone({ ...quietAnswers, "about/walk-length": "short" }, "about/summer-room", "fit/bought");
const screenAt = (state: WalkState): Screen =>
	screenOf(demo, walkAt({ at: "tier-end", tier: "quality" }, state)) as Screen;

describe("the end of the last tier", () => {
	test("tells it on the short way, with the way to be asked the rest", () => {
		const { body, choices } = screenAt(ended);
		expect(body).toContainEqual({ kind: "heading", text: "The short walk ends here" });
		expect(choices[0]?.label).toBe("See the shortlist");
		const rest = choices.find(({ label }) => label === "Ask me the others too: 2");
		expect(rest?.event).toEqual({ type: "change", questionId: "about/walk-length" });
		const asked = walkThrough(
			[rest?.event ?? { type: "next" }, { type: "answer", value: "whole" }, { type: "go-on" }],
			walkAt({ at: "tier-end", tier: "quality" }, ended),
		).state;
		expect(asked.place).toEqual({ at: "question", id: "about/summer-room" });
	});

	test("says nothing of it on the long way", () => {
		const { body, choices } = screenAt(walkDone({ ...quietAnswers, "about/walk-length": "whole" }, "fit/bought"));
		expect(body).not.toContainEqual({ kind: "heading", text: "The short walk ends here" });
		expect(choices.map(({ label }) => label).join()).not.toContain("Be asked");
	});
});

test("the way on is told with a count on the long way, without one on the short, and not at all at its end", () => {
	const words = (state: WalkState) => goOnWords(viewWalk(demo, state));
	expect(words(walkDone(quietAnswers, "fit/bought", "about/summer-room"))).toBe("Go on with the questions: 2 left");
	expect(words(walkDone(quietAnswers))).toBeNull();
	expect(words(walkWith({ "about/walk-length": "short" }))).toBe("Go on with the questions");
	expect(words(ended)).toBeNull();
});
