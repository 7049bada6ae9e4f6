import { describe, expect, test } from "vitest";
import { boardSubjects } from "../../src/choose/findings-of-market.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { powerGauge } from "../../src/sheet/power-gauge.ts";
import { powerToldOf, powerWords } from "../../src/sheet/power-words.ts";
import type { Place } from "../../src/walk/walk-state.ts";
import { demo, quietAnswers, walkThrough, walkWith } from "../walk/walk-in-demo.ts";
import { listsOf, screenAt } from "./screen-words.ts";

const quiet = walkWith(quietAnswers);
const at = (boardId: string): Place => ({ at: "board", boardId, page: "power" });
const subjects = boardSubjects(demo.market);
const { facts } = foldAnswers(quiet.answers, demo);
const id = "pennywhistle-polka";
const board = subjects.find((one) => one.board.id === id)?.board;
if (!board) throw new Error(`${id} is in the demonstration`);

describe("power and heat of a board", () => {
	test("the gauge, and all of it in words", () => {
		const { title, body } = screenAt(demo, quiet, at(id));
		const told = powerToldOf(board, facts);
		expect(title).toBe(`Power and heat: ${board.name}`);
		if (!told.steady) throw new Error("its watts are known");
		expect(body.filter(({ kind }) => kind === "picture")).toEqual([
			{ kind: "picture", isTold: true, lines: powerGauge(told.steady) },
		]);
		expect(body.flatMap((block) => (block.kind === "heading" ? [block.text] : []))).toEqual(
			powerWords(told).map(({ heading }) => heading),
		);
		expect(listsOf(body)).toEqual(powerWords(told).map(({ lines }) => lines));
	});

	test("without a processor there is no gauge, and what is missing is said", () => {
		const { "fit/processor": _, ...others } = quietAnswers;
		const { body } = screenAt(demo, walkWith(others), at(id));
		expect(body.some(({ kind }) => kind === "picture")).toBe(false);
		expect(listsOf(body)[0]?.[0]).toContain("It is not settled which processor this board will feed.");
	});

	test("with several processors in question each is told of by itself", () => {
		const { "fit/processor": _, ...others } = quietAnswers;
		const candidates = ["tallowfinch-deckhand", "tallowfinch-helmswoman"];
		const { body } = screenAt(demo, walkWith({ ...others, "fit/candidates": candidates }), at(id));
		expect(body.some(({ kind }) => kind === "picture")).toBe(false);
		const [short] = listsOf(body);
		// The label of the one is 65 W and of the other 125 W, so that the same board cannot say the same of both.
		const sentences = short?.slice(0, 2).map((line) => /^With (Tallowfinch \S+): (.+)$/.exec(line) ?? []);
		expect(sentences?.map(([, name]) => name)).toEqual(["Tallowfinch Deckhand", "Tallowfinch Helmswoman"]);
		expect(new Set(sentences?.map(([, , words]) => words)).size).toBe(2);
	});

	test("a board that does not fit says so first", () => {
		const first = (boardId: string) => screenAt(demo, quiet, at(boardId)).body[0];
		expect(first("oddment-button")).toMatchObject({
			kind: "text",
			text: expect.stringMatching(/^This board does not fit your answers\./),
		});
		expect(first(id)?.kind).toBe("picture");
	});

	test("the board's page leads here, and from here one goes back there or to the shortlist", () => {
		const page = screenAt(demo, quiet, { at: "board", boardId: id });
		const here = page.choices.find(({ label }) => label === "Power and heat");
		if (!here) throw new Error("the page has a way here");
		const from = walkThrough([{ type: "shortlist" }, { type: "board", boardId: id }], quiet).state;
		const { state } = walkThrough([here.event], from);
		expect(state.place).toEqual(at(id));
		const { choices, enter } = screenAt(demo, state);
		expect(enter?.event).toEqual({ type: "back" });
		const [back, shortlist] = choices.map(({ event }) => walkThrough([event], state).state.place);
		expect(back).toEqual({ at: "board", boardId: id });
		expect(shortlist).toEqual({ at: "shortlist" });
	});

	test("a board that is not in the market has an empty page with a way back", () => {
		const { body, enter } = screenAt(demo, quiet, at("no-board"));
		expect(body).toEqual([]);
		expect(enter?.event).toEqual({ type: "back" });
	});
});
