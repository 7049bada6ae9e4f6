import { describe, expect, test } from "vitest";
import { type Face, faceFor, type PageSize, pressKey } from "../../src/screens/face.ts";
import type { Key } from "../../src/screens/keys.ts";
import type { Choice, Screen } from "../../src/screens/screen.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import { contextOf } from "../questions/made-up-question.ts";
import { walkAt, walkThrough } from "../walk/walk-in-demo.ts";
import { screenAt } from "./screen-words.ts";

const page: PageSize = { textRows: 10, lastScroll: 25 };
const line = (value: string, count: number, most: number): Choice => ({
	label: `A ${value}`,
	mark: { count, most },
	event: { type: "mark", value, by: 1 },
});
const none: WalkEvent = { type: "answer", value: [] };
const choices: readonly Choice[] = [
	line("drive", 0, 3),
	line("fan", 2, 3),
	line("lamp", 1, 1),
	{ label: "None of these", apart: true, event: none },
	{ label: "Not sure", apart: true, isUnsure: true, event: { type: "not-sure" } },
];
const fresh: Screen = {
	...{ id: "s", place: "", title: "Which?", body: [], choices, typing: null, isMenu: false, enter: null },
	...{ side: [], help: [], sources: [], problem: null, notice: null },
};
const goOn: WalkEvent = { type: "next" };
const answered: Screen = { ...fresh, enter: { words: "go on", event: goOn } };

const key = (name: string): Key =>
	name.length === 1 ? { name: "text", text: name } : ({ name } as Extract<Key, { name: unknown }>);
function press(screen: Screen, ...names: readonly string[]): { face: Face; events: WalkEvent[] } {
	// From the first line, wherever the pointer starts.
	let face: Face = { ...faceFor(screen), row: 0 };
	const events: WalkEvent[] = [];
	for (const name of names) {
		const pressed = pressKey(screen, face, key(name), page);
		face = pressed.face;
		if (pressed.event) events.push(pressed.event);
	}
	return { face, events };
}
const mark = (value: string, by: 1 | -1 = 1): WalkEvent => ({ type: "mark", value, by });

describe.each([
	["nothing answered yet", fresh],
	["answered", answered],
])("on a line that can be marked, with %s", (_, screen) => {
	test.each<[string, readonly string[], WalkEvent]>([
		["Space marks it", ["space"], mark("drive")],
		["+ marks it once more", ["down", "+"], mark("fan")],
		["- marks it once less", ["down", "-"], mark("fan", -1)],
		["Space on a full one leaves the emptying to the walk", ["down", "down", "space"], mark("lamp")],
		["a digit moves there, and Space marks", ["3", "space"], mark("lamp")],
	])("%s", (_, names, event) => {
		expect(press(screen, ...names).events).toEqual([event]);
	});

	test("a burst of keys marks line after line, each where the mark stands by then", () => {
		expect(press(screen, "space", "down", "+", "+", "-", "down", "space").events).toEqual([
			mark("drive"),
			mark("fan"),
			mark("fan"),
			mark("fan", -1),
			mark("lamp"),
		]);
	});

	test("the mark stays on the line", () => {
		expect(press(screen, "down", "space", "+", "-").face.row).toBe(1);
	});

	test("a digit alone marks nothing, and other signs do not either", () => {
		for (const name of ["1", "2", "3", "=", "*", "_", "x", "delete", "backspace"])
			expect(press(screen, "down", name).events).toEqual([]);
	});

	test("lines that stand apart are not marked, but chosen by Enter", () => {
		for (const name of ["space", "+", "-"]) expect(press(screen, "4", name).events).toEqual([]);
		expect(press(screen, "4", "enter").events).toEqual([none]);
		expect(press(screen, "end", "enter").events).toEqual([{ type: "not-sure" }]);
	});

	test("under the open help nothing is marked", () => {
		expect(press(screen, "?", "space", "+", "-").events).toEqual([]);
	});
});

describe("Enter on a line that can be marked", () => {
	test("marks it where it is not marked, whatever else is", () => {
		expect(press(fresh, "enter").events).toEqual([mark("drive")]);
		expect(press(answered, "enter").events).toEqual([mark("drive")]);
	});

	test("goes on with all that is marked where it is marked itself", () => {
		for (const names of [
			["down", "enter"],
			["down", "down", "enter"],
		])
			expect(press(answered, ...names).events).toEqual([goOn]);
	});

	test("the pointer starts on the first line that is marked", () => {
		expect(faceFor(answered).row).toBe(1);
	});
});

test("where nothing can be marked, Space, + and - do nothing", () => {
	const plain = { ...answered, choices: choices.map(({ mark: _, ...choice }) => choice) };
	expect(press(plain, "space", "+", "-").events).toEqual([]);
});

test("where words are typed, they are letters", () => {
	const typing = { ...fresh, typing: { kind: "words", words: "or some letters" } } as const;
	const { face, events } = press(typing, "a", "+", "space", "-");
	expect(events).toEqual([]);
	expect(face.field.text).toBe("a+ -");
});

describe("a real question, key by key", () => {
	const context = contextOf();

	/** Presses keys on whatever screen there is after the key before. */
	function walked(...names: readonly string[]) {
		let state = walkAt({ at: "question", id: "features/later" });
		let face = faceFor(screenAt(context, state));
		for (const name of names) {
			const pressed = pressKey(screenAt(context, state), face, key(name), page);
			face = pressed.face;
			if (pressed.event) ({ state } = walkThrough([pressed.event], state, context));
		}
		return { state, face };
	}
	const marked = (...names: readonly string[]) => walked(...names).state.answers["features/later"]?.value;

	test("marks show on the lines, and Enter then goes on to the next question", () => {
		const keys = ["space", "space", "down", "+", "down", "down", "space"];
		expect(marked(...keys)).toEqual(["M.2 drive", "M.2 drive", "SATA drive", "card"]);
		const { state, face } = walked(...keys);
		expect(screenAt(context, state).choices.flatMap(({ mark }) => (mark ? [mark.count] : []))).toEqual([
			...[2, 1, 0, 1, 0, 0],
		]);
		expect(face.row).toBe(3);
		expect(walked(...keys, "enter").state.place).toEqual({ at: "question", id: "features/room" });
	});

	test("Enter marks the first line, and Enter again goes on with it", () => {
		const { state } = walked("down", "enter", "enter");
		expect(state.answers["features/later"]?.value).toEqual(["SATA drive"]);
		expect(state.place).toEqual({ at: "question", id: "features/room" });
	});

	test("Space goes round: full, then empty", () => {
		const space = (times: number) => marked(...Array<string>(times).fill("space"));
		expect([1, 2, 3, 4, 5].map((times) => space(times))).toEqual([
			["M.2 drive"],
			["M.2 drive", "M.2 drive"],
			["M.2 drive", "M.2 drive", "M.2 drive"],
			undefined,
			["M.2 drive"],
		]);
	});
});
