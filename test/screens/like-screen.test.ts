import { describe, expect, test } from "vitest";
import { likeDirections } from "../../src/choose/like-this-but.ts";
import type { Place } from "../../src/walk/walk-state.ts";
import { demo, quietAnswers, walkThrough, walkWith } from "../walk/walk-in-demo.ts";
import { screenAt, textsOf } from "./screen-words.ts";

const quiet = { ...walkWith(quietAnswers), place: { at: "shortlist" } as Place };
const boardId = "pennywhistle-polka";

describe("like this one but", () => {
	test("first the four ways", () => {
		const { title, choices } = screenAt(demo, quiet, { at: "like", boardId });
		expect(title).toBe("Like Pennywhistle Polka, but better in one way");
		expect(choices.flatMap(({ event }) => (event.type === "like" ? [event] : []))).toEqual(
			likeDirections.map((direction) => ({ type: "like", boardId, direction })),
		);
	});

	test("then what is found: each can be looked at, and the other ways stand below", () => {
		const { title, choices, body } = screenAt(demo, quiet, { at: "like", boardId, direction: "more-ports" });
		expect(title).toBe("Like Pennywhistle Polka, but with more USB sockets");
		const boards = choices.flatMap(({ event }) => (event.type === "board" ? [event.boardId] : []));
		const headings = body.flatMap((block) => (block.kind === "heading" ? [block.text] : [])).slice(1);
		expect(boards.length).toBeGreaterThan(0);
		expect(choices.slice(0, boards.length).map(({ label }) => label)).toEqual(
			headings.map((name) => `Look at ${name}`),
		);
		expect(choices.filter(({ event }) => event.type === "like").length).toBe(3);
	});

	test("where none is left, the nearest of those that fell out can be looked at", () => {
		const tight = walkWith({ ...quietAnswers, "about/budget": { minor: 100, currency: "EUR" } });
		const screen = screenAt(demo, tight, { at: "like", boardId, direction: "cheaper" });
		expect(textsOf(screen)).toContain("None of the other boards left is cheaper.");
		expect(textsOf(screen)).toContain("The nearest of those taken out");
		expect(screen.choices[0]?.event.type).toBe("board");
	});

	test("the pages behind a board's own screen lead here", () => {
		const at = walkThrough([{ type: "board", boardId, page: "power" }], quiet).state;
		const way = screenAt(demo, at).choices.find(({ event }) => event.type === "like");
		if (!way) throw new Error("the page has a way here");
		const { state } = walkThrough([way.event], at);
		expect(state.place).toEqual({ at: "like", boardId });
		const back = screenAt(demo, state).enter?.event ?? { type: "next" };
		expect(walkThrough([back], state).state.place).toEqual({ at: "board", boardId, page: "power" });
	});
});
