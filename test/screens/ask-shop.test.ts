import { describe, expect, test } from "vitest";
import type { Board } from "../../src/parts/board.ts";
import { toldOf } from "../../src/parts/told-evidence.ts";
import { runPlainWalk } from "../../src/plain/run-plain-walk.ts";
import type { Screen } from "../../src/screens/screen.ts";
import { screenOf } from "../../src/screens/screen-of.ts";
import { viewWalk } from "../../src/screens/walk-view.ts";
import { marketOf } from "../../src/walk/market-of.ts";
import { savedWalk, takeUpWalk } from "../../src/walk/saved-walk.ts";
import { update } from "../../src/walk/update.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import type { WalkContext, WalkState } from "../../src/walk/walk-state.ts";
import { wholeDemo } from "../choose/demo.ts";
import { scenarios, walkAt, walkThrough } from "../walk/walk-in-demo.ts";
import { screenAt, textsOf } from "./screen-words.ts";

/** A builder for whom a board is left of which little is known. */
const context: WalkContext = { market: wholeDemo, asOf: "2026-11-28" };
const showpiece = scenarios.find(({ name }) => name === "showpiece")?.state ?? walkAt({ at: "start" });
const boardId = "fernquill-riddle";
const name = "Fernquill Riddle";
const asking: WalkState = { ...showpiece, place: { at: "ask-shop", boardId }, returnTo: [{ at: "find-out" }] };

const go = (state: WalkState, ...events: readonly WalkEvent[]) => walkThrough(events, state, context);
const shown = (state: WalkState): Screen => screenAt(context, state);
const labels = ({ choices }: Screen) => choices.map(({ label }) => label);
const boardIn = ({ ownParts }: WalkState) =>
	marketOf(context.market, ownParts).parts.board.find(({ id }) => id === boardId) as Board;

const answered = (path: string, text: string, by: string): readonly WalkEvent[] => [
	{ type: "they-answered", path },
	{ type: "text", text },
	{ type: "text", text: by },
];

describe("the message", () => {
	test("is reached from what to find out and from the board, and one comes back", () => {
		const { state } = go({ ...showpiece, place: { at: "shortlist" } }, { type: "find-out" });
		const choice = shown(state).choices.find(({ label }) => label === `Ask the shop about ${name}`);
		const { state: asked } = go(state, choice?.event ?? { type: "next" });
		expect(asked.place).toEqual({ at: "ask-shop", boardId });
		expect(go(asked, { type: "back" }).state.place).toEqual({ at: "find-out" });
		const page = shown({ ...showpiece, place: { at: "board", boardId } });
		expect(labels(page)).toContain("Ask the shop about it");
	});

	test("stands on the screen, in English and by a key in German", () => {
		const english = shown(asking);
		expect(textsOf(english).join("\n")).toContain("1. Does it come with its own back plate");
		const turn = english.choices.find(({ key }) => key === "g");
		const { state } = go(asking, turn?.event ?? { type: "next" });
		const german = shown(state);
		expect(textsOf(german).join("\n")).toContain("1. Liegt ihr eine eigene Rückplatte");
		expect(german.id).not.toBe(english.id);
		// Turning it over and back piles nothing up.
		const back = german.choices.find(({ key }) => key === "g");
		expect(go(state, back?.event ?? { type: "next" }).state).toMatchObject({
			place: { at: "ask-shop", boardId },
			returnTo: [{ at: "find-out" }],
		});
	});

	test("says how many questions wait", () => {
		expect(textsOf(shown(asking)).join("\n")).toMatch(/\d more questions wait until these are answered\./);
	});

	test("what to find out is folded: what changes nothing is a line of names", () => {
		const screen = shown({ ...showpiece, place: { at: "find-out" } });
		const folded = textsOf(screen).find((words) => words.startsWith("Open too, with less weight: "));
		expect(folded).toContain(`of ${name}`);
		expect(folded).not.toContain("page");
		for (const sentence of folded?.split(/\.\s/) ?? [])
			expect(sentence.split(/\s+/).length, sentence).toBeLessThanOrEqual(25);
	});
});

describe("what they answered", () => {
	test("is taken down in two steps, kept with the day, and what it changes is told", () => {
		const { state, effects } = go(asking, ...answered("memory.slots", "4", "Ada of the shop"));
		expect(boardIn(state).memory?.slots).toBe(4);
		expect(toldOf(boardIn(state).evidence?.["memory.slots"])).toEqual({
			by: "Ada of the shop",
			on: "2026-11-28",
			quote: "4",
		});
		expect(effects).toEqual([{ type: "save" }]);
		const screen = shown(state);
		expect(screen.notice).toBe(`Noted for ${name}: memory slots, 4.`);
		const words = textsOf(screen).join("\n");
		expect(words).toContain("What that changed");
		expect(words).toContain("Memory slots: 4 (told by Ada of the shop on 2026-11-28)");
		expect(words).not.toContain("How many memory slots");
	});

	test("changes the shortlist as the fact itself would, and that is said", () => {
		const { state } = go(asking, ...answered("m2Sockets", "3 x PCIe 4.0 x4", "the shop"));
		expect(textsOf(shown(state)).join("\n")).toMatch(new RegExp(`${name} has \\d+ points instead of \\d+\\.`));
		const points = (of: WalkState) =>
			viewWalk(context, of)
				.advice()
				.shortlist.find((entry) => entry.boardId === boardId)?.score.mid ?? 0;
		expect(points(state)).toBeGreaterThan(points(asking));
	});

	test("stands on the board's pages, and the walk that is saved has it", () => {
		const { state } = go(asking, ...answered("memory.slots", "4", "Ada"));
		const again = takeUpWalk(context, JSON.parse(JSON.stringify(savedWalk(context, state)))).state;
		expect(again.ownParts).toEqual(state.ownParts);
		const page = textsOf(shown({ ...again, place: { at: "board", boardId } }));
		expect(page).toContain("Memory slots: 4 (told by Ada on 2026-11-28)");
		expect(page).toContain(`${name} (invented)`);
		const facts = textsOf(shown({ ...again, place: { at: "board", boardId, page: "facts" } }));
		expect(facts).toContain("4 (told by Ada on 2026-11-28)");
		// It is no part of the person's own.
		expect(textsOf(shown({ ...again, place: { at: "own-parts" } })).join("\n")).not.toContain(name);
	});

	test("that cannot be read is asked again, and nothing is kept", () => {
		const { state } = go(asking, { type: "they-answered", path: "memory.slots" }, { type: "text", text: "plenty" });
		expect(state.problem).toContain("Type a whole number");
		expect(state.ownParts).toBe(asking.ownParts);
		expect(state.place).toMatchObject({ at: "they-answered" });
		expect(go(state, { type: "text", text: "" }).state.problem).toContain("no answer yet");
	});

	test("against what is stated counts only where the person says so; both are shown", () => {
		const first = go(asking, ...answered("memory.slots", "4", "Ada")).state;
		const second = go(first, ...answered("memory.slots", "2", "Ben")).state;
		expect(boardIn(second).memory?.slots).toBe(4);
		const words = textsOf(shown(second)).join("\n");
		expect(words).toContain("Memory slots, told by Ada on 2026-11-28: 4.");
		expect(words).toContain("Ben says: 2.");
		const [keep, take] = shown(second).choices;
		expect(boardIn(go(second, keep?.event ?? { type: "next" }).state).memory?.slots).toBe(4);
		const taken = go(second, take?.event ?? { type: "next" }).state;
		expect(boardIn(taken).memory?.slots).toBe(2);
		expect(taken.place).toMatchObject({ at: "ask-shop", boardId });
	});

	test("can be taken back, and all is as it was", () => {
		const first = go(asking, ...answered("memory.slots", "4", "Ada")).state;
		const choice = shown(first).choices.find(({ label }) => label === "Take back: memory slots");
		const { state, effects } = go(first, choice?.event ?? { type: "next" });
		expect(state.ownParts).toEqual(asking.ownParts);
		expect(boardIn(state)).toEqual(boardIn(asking));
		expect(effects).toEqual([{ type: "save" }]);
		expect(go(state, { type: "take-back", path: "memory.slots" }).state.problem).toContain("nothing to take back");
		expect(go(state, { type: "take-back", path: "__proto__" }).state.problem).toContain("nothing to take back");
	});

	test("going back goes one step at a time", () => {
		const steps = answered("memory.slots", "4", "Ada");
		const asked = go(asking, ...steps.slice(0, 2)).state;
		expect(shown(asked).title).toBe("Who said so?");
		const typed = go(asked, { type: "back" }).state;
		expect(textsOf(shown(typed))).toContain("How many memory slots does it have?");
		expect(go(typed, { type: "back" }).state.place).toEqual({ at: "ask-shop", boardId });
	});

	test("a list of processors is pasted whole", () => {
		const text = "Processor\tSince BIOS\nTallowfinch Quartermaster 500\tF2\nTallowfinch Figurehead 900\tF7\n";
		const { state } = go(
			asking,
			{ type: "they-answered", path: "supportList", asPage: true },
			{ type: "paste", text },
			{ type: "told-by", by: "the shop" },
		);
		expect(boardIn(state).supportList?.rows).toHaveLength(2);
		expect(state.notice).toContain("2 processors");
	});

	test("a board that is kept for all walks has the fact there too", () => {
		const part: Board = { id: "my-board", name: "My Board", socket: "Harbour 2" };
		const own = { kind: "board", part } as const;
		const market = marketOf(context.market, [own]);
		const state: WalkState = { ...showpiece, kept: [own], place: { at: "ask-shop", boardId: "my-board" } };
		const { effects } = walkThrough(answered("memory.slots", "4", "Ada"), state, { ...context, market });
		expect(effects.map(({ type }) => type)).toEqual(["keep-part", "save"]);
		expect(effects[0]).toMatchObject({ own: { part: { id: "my-board", memory: { slots: 4 } } } });
	});

	test("nothing of it makes sense elsewhere", () => {
		const start = walkAt({ at: "shortlist" }, showpiece);
		for (const event of [
			{ type: "they-answered", path: "memory.slots" },
			{ type: "told-by", by: "Ada" },
			{ type: "ask-shop", boardId: "no-board" },
		] as const)
			expect(go(start, event).state.place).toEqual({ at: "shortlist" });
		expect(go(asking, { type: "they-answered", path: "id" }).state.place).toEqual(asking.place);
		expect(screenOf(context, { ...asking, place: { at: "ask-shop", boardId: "gone" } })?.title).toMatch(/not in/);
	});
});

test("line by line: the message is printed, and an answer is noted in words", async () => {
	let state: WalkState = asking;
	let printed = "";
	const number = (words: string) => String(labels(shown(state)).findIndex((label) => label.includes(words)) + 1);
	const lines: (() => string)[] = [
		() => number("They answered: memory slots"),
		() => "",
		() => number("They answered: memory slots"),
		() => "4",
		() => "Ada",
		() => "s",
	];
	await runPlainWalk({
		screen: () => screenOf(context, state),
		dispatch: (event) => {
			[state] = update(context, state, event);
		},
		write: (text) => {
			printed += text;
		},
		readLine: async () => lines.shift()?.() ?? null,
		width: 78,
	});
	expect(boardIn(state).memory?.slots).toBe(4);
	expect(printed).toContain("before I buy it");
	expect(printed).toContain(`Noted for ${name}: memory slots, 4.`);
});
