import { describe, expect, test } from "vitest";
import { priceLine } from "../../src/choose/price-line.ts";
import type { Block } from "../../src/screens/screen.ts";
import { viewWalk } from "../../src/screens/walk-view.ts";
import { priceLinePicture } from "../../src/sheet/price-line-picture.ts";
import { priceLineWords } from "../../src/sheet/price-line-words.ts";
import type { Place } from "../../src/walk/walk-state.ts";
import { wholeDemo } from "../choose/demo.ts";
import { demo, emptyMarket, quietAnswers, scenarios, walkThrough, walkWith } from "../walk/walk-in-demo.ts";
import { screenAt, textsOf } from "./screen-words.ts";

const here: Place = { at: "price-line" };
const quiet = walkWith(quietAnswers);
const whole = { market: wholeDemo, asOf: demo.asOf };
const listsOf = (body: readonly Block[]) => body.flatMap((block) => (block.kind === "list" ? [block.items] : []));

describe("the screen of what more money buys", () => {
	const line = (() => {
		const view = viewWalk(whole, quiet);
		return priceLine(view.judgement(), view.advice().ranking);
	})();

	test("draws the picture and says the same in words", () => {
		const { body } = screenAt(whole, quiet, here);
		expect(body.filter(({ kind }) => kind === "picture")).toEqual([
			{ kind: "picture", isTold: true, lines: priceLinePicture(line) },
		]);
		expect(priceLinePicture(line).length).toBeGreaterThan(0);
		expect(listsOf(body)).toEqual(priceLineWords(line).map(({ lines }) => lines));
	});

	test("leads to each board of the line, and each of them back here", () => {
		const { choices } = screenAt(whole, quiet, here);
		const boards = choices.flatMap(({ event }) => (event.type === "board" ? [event.boardId] : []));
		expect(boards).toEqual(line.hull.map(({ board }) => board.id));
		expect(boards.length).toBeGreaterThan(1);
		const start = { ...quiet, place: { at: "shortlist" } as const };
		const { state } = walkThrough([{ type: "price-line" }, { type: "board", boardId: boards[0] ?? "" }], start, whole);
		expect(state.place).toEqual({ at: "board", boardId: boards[0] });
		expect(walkThrough([{ type: "back" }], state, whole).state.place).toEqual(here);
		expect(walkThrough([{ type: "back" }, { type: "back" }], state, whole).state.place).toEqual({ at: "shortlist" });
	});

	test("without any board it says so, and leads back", () => {
		const { body, choices, enter } = screenAt(emptyMarket, quiet, here);
		expect(listsOf(body)).toEqual([["No boards are left, so there is no price to compare."]]);
		expect(choices.map(({ label }) => label)).toEqual(["Back", "To the shortlist"]);
		expect(enter?.event).toEqual({ type: "back" });
	});

	test("back from it, with nowhere to come back to, is the shortlist", () => {
		expect(walkThrough([{ type: "back" }], { ...quiet, place: here }).state.place).toEqual({ at: "shortlist" });
	});
});

describe("the way here", () => {
	const labels = (from: Place) =>
		screenAt(demo, { ...quiet, returnTo: [from] }, { at: "menu" }).choices.map(({ label }) => label);

	test("is in the menu that is opened on the shortlist", () => {
		const { state } = walkThrough([{ type: "menu" }], { ...quiet, place: { at: "shortlist" } });
		const choice = screenAt(demo, state).choices.find(({ label }) => label === "What more money buys");
		expect(choice?.event).toEqual({ type: "price-line" });
		const after = walkThrough(choice ? [choice.event] : [], state).state;
		expect(after.place).toEqual(here);
		expect(after.returnTo).toEqual([{ at: "shortlist" }]);
	});

	test("is not in the menu on the way through the questions", () => {
		expect(labels({ at: "sheet" })).toContain("What more money buys");
		for (const from of [{ at: "start" }, { at: "question", id: "fit/case" }] as const satisfies readonly Place[])
			expect(labels(from)).not.toContain("What more money buys");
	});
});

/** A name is read as one word, however many it has. */
const names = [...wholeDemo.parts.board, ...wholeDemo.parts.addInCard].map(({ name }) => name);
const short = (sentence: string) =>
	names
		.toSorted((one, other) => other.length - one.length)
		.reduce((words, name) => words.replaceAll(name, "Name"), sentence);

describe.each(scenarios)("for $name", ({ state }) => {
	test("no sentence is longer than 25 words, and no word is missing", () => {
		for (const words of textsOf(screenAt(whole, state, here))) {
			expect(words).not.toMatch(/undefined|NaN|\[object|\bnull\b| {2}|\n|^\s|\s$|^$|\.\.$/);
			for (const sentence of words.split(/(?<=[.!?])\s+/))
				expect(short(sentence).split(/\s+/).length, sentence).toBeLessThanOrEqual(25);
		}
	});
});
