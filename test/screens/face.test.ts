import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Face, faceFor, inField, type PageSize, pressKey, shownChoices } from "../../src/screens/face.ts";
import type { Key, KeyName } from "../../src/screens/keys.ts";
import type { Choice, Screen } from "../../src/screens/screen.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import { allScreens } from "./screens-of-walks.ts";

const page: PageSize = { textRows: 10, lastScroll: 25 };

const answer = (value: string): WalkEvent => ({ type: "answer", value });
const choices: readonly Choice[] = [
	{ label: "Red apple", detail: "crisp", event: answer("red") },
	{ label: "Green apple", event: answer("green") },
	{ label: "Yellow pear", detail: "soft", event: answer("pear") },
	{ label: "Another one: I will describe it", apart: true, event: { type: "describe" } },
	{ label: "Not sure", key: "n", apart: true, event: { type: "not-sure" } },
];

function screenWith(more: Partial<Screen>): Screen {
	return {
		...{ id: "s", place: "", title: "Which?", body: [], choices, typing: null, isMenu: false, enter: null },
		...{ side: [], help: [], sources: [], problem: null, notice: null, ...more },
	};
}

const list = screenWith({});
const find = screenWith({ typing: { kind: "words", words: "or some letters" } });
const free = screenWith({ typing: { kind: "free", words: "or type a name" } });
const value = screenWith({ typing: { kind: "value", words: "type your answer" }, choices: choices.slice(4) });

/** Keys by name; whatever is no name is typed, letter by letter. */
function keysOf(...words: readonly string[]): Key[] {
	return words.flatMap((word) =>
		names.has(word)
			? [{ name: word as KeyName }]
			: [...word].map((text): Key => (text === " " ? { name: "space" } : { name: "text", text })),
	);
}
const names: ReadonlySet<string> = new Set<KeyName>([
	...(["up", "down", "left", "right", "home", "end", "page-up", "page-down", "enter", "escape", "tab"] as const),
	...(["back-tab", "space", "backspace", "delete", "word-left", "word-right", "delete-word"] as const),
	...(["delete-to-start", "delete-to-end", "help"] as const),
]);

/** Presses keys in turn; gives the face and the events on the way. */
function press(screen: Screen, ...words: readonly string[]): { face: Face; events: WalkEvent[] } {
	let face = faceFor(screen);
	const events: WalkEvent[] = [];
	for (const key of keysOf(...words)) {
		const pressed = pressKey(screen, face, key, page);
		face = pressed.face;
		if (pressed.event) events.push(pressed.event);
	}
	return { face, events };
}

describe("a fresh face", () => {
	test("marks the first line, or the one chosen before", () => {
		expect(faceFor(list)).toMatchObject({ screenId: "s", row: 0, scroll: 0, helpOpen: false });
		const chosen = choices.map((choice, index) => (index === 2 ? { ...choice, chosen: true } : choice));
		expect(faceFor(screenWith({ choices: chosen })).row).toBe(2);
	});

	test("marks no line where the answer is typed", () => expect(faceFor(value).row).toBe(inField));

	test("is what another screen starts with, whatever was typed or marked before", () => {
		const { face } = press(find, "down", "down", "help");
		const after = pressKey({ ...list, id: "other" }, face, { name: "down" }, page).face;
		expect(after).toEqual({ ...faceFor({ ...list, id: "other" }), row: 1 });
	});
});

const back: WalkEvent = { type: "back" };
const notSure: WalkEvent = { type: "not-sure" };

describe.each<[string, Screen]>([
	["a list", list],
	["a list with typing", find],
	["a list with a field", free],
])("on %s", (_, screen) => {
	test.each<[string, readonly string[], number]>([
		["Down", ["down"], 1],
		["Down, Down", ["down", "down"], 2],
		["Up at the top stays", ["up"], 0],
		["Down at the end stays", Array(20).fill("down"), 4],
		["up again from the end", [...Array(20).fill("down"), "up"], 3],
		["End", ["end"], 4],
		["Home", ["end", "up", "home"], 0],
	])("%s", (_, words, row) => expect(press(screen, ...words)).toMatchObject({ face: { row }, events: [] }));

	test.each<[string, string, WalkEvent]>([
		["Esc", "escape", back],
		["Left", "left", back],
		["Shift+Tab", "back-tab", back],
		["Tab", "tab", { type: "menu" }],
		["Enter", "enter", answer("red")],
	])("%s", (_, key, event) => expect(press(screen, key).events).toEqual([event]));

	test("a burst of Down and Enter picks the row after the move", () => {
		expect(press(screen, "down", "enter").events).toEqual([answer("green")]);
		expect(press(screen, "down", "down", "enter").events).toEqual([answer("pear")]);
		expect(press(screen, "end", "enter").events).toEqual([notSure]);
	});

	test("keys of fields do nothing where the field is empty", () => {
		for (const key of ["right", "backspace", "delete", "word-left", "word-right", "delete-word", "delete-to-end"])
			expect(press(screen, "down", key).events).toEqual([]);
	});
});

describe("where nothing can be typed", () => {
	test.each([1, 2, 3, 4, 5])("%s moves to that line, and never chooses it", (digit) => {
		expect(press(list, String(digit))).toMatchObject({ face: { row: digit - 1 }, events: [] });
	});

	test.each(["0", "6", "9", "x", "N0", "space", "&"])("%s is no line", (word) => {
		expect(press(list, "down", "down", ...(word === "N0" ? ["0"] : [word]))).toMatchObject({
			face: { row: 2 },
			events: [],
		});
	});

	test("a line's own letter moves to it, whatever its case", () => {
		expect(press(list, "n")).toMatchObject({ face: { row: 4 }, events: [] });
		expect(press(list, "N", "enter").events).toEqual([notSure]);
	});

	test("j and k move, and stop at the ends", () => {
		expect(press(list, "jj").face.row).toBe(2);
		expect(press(list, "jjjjjjjjk").face.row).toBe(3);
		expect(press(list, "kkk").face.row).toBe(0);
	});

	test.each<[string, WalkEvent]>([
		["r", { type: "review" }],
		["q", { type: "leave" }],
		["Q", { type: "leave" }],
	])("%s is a command", (letter, event) => expect(press(list, letter).events).toEqual([event]));

	test("a whole paste is no command", () => {
		for (const text of ["quit", "q q", "12", "constructor", "__proto__"])
			expect(pressKey(list, faceFor(list), { name: "text", text }, page)).toEqual({ face: faceFor(list), event: null });
	});
});

describe("where letters find a line", () => {
	test("only lines with the words are left, and those that stand apart", () => {
		const { face, events } = press(find, "APPLE");
		expect(shownChoices(find, face).map(({ label }) => label)).toEqual([
			"Red apple",
			"Green apple",
			"Another one: I will describe it",
			"Not sure",
		]);
		expect(events).toEqual([]);
	});

	test("details count as well, spaces around do not, and letters of another width are the same", () => {
		const labels = (...words: string[]) => shownChoices(find, press(find, ...words).face).map(({ label }) => label);
		expect(labels(" crisp ")).toContain("Red apple");
		expect(labels("ＡＰＰＬＥ")).toContain("Green apple");
		expect(labels("   ")).toHaveLength(5);
	});

	test("Enter takes the first line found, or the one moved to", () => {
		expect(press(find, "apple", "enter").events).toEqual([answer("red")]);
		expect(press(find, "apple", "down", "enter").events).toEqual([answer("green")]);
		expect(press(find, "apple", "down", "down", "down", "enter").events).toEqual([notSure]);
	});

	test("words that no line has go to the walk; the mark then stands in the field, and can leave it", () => {
		const { face, events } = press(find, "zebra", "enter");
		expect(face.row).toBe(inField);
		expect(events).toEqual([{ type: "text", text: "zebra" }]);
		expect(press(find, "zebra", "down", "enter").events).toEqual([{ type: "describe" }]);
		expect(press(find, "zebra", "down", "down", "up", "up", "enter").events).toEqual([{ type: "text", text: "zebra" }]);
	});

	test("letters that are commands elsewhere, and digits, are text", () => {
		const { face, events } = press(find, "qrsb19jk");
		expect(face.field.text).toBe("qrsb19jk");
		expect(events).toEqual([]);
	});

	test("Esc empties the field first, and then goes back", () => {
		const { face, events } = press(find, "pear", "escape");
		expect(face).toEqual(faceFor(find));
		expect(events).toEqual([]);
		expect(press(find, "pear", "escape", "escape").events).toEqual([back]);
	});
});

describe("where the answer is typed", () => {
	test("what was typed is the answer, spaces around it cut off", () => {
		expect(press(value, " 180 ", "enter").events).toEqual([{ type: "text", text: "180" }]);
	});

	test("Enter on an empty field answers nothing: it keeps the answer there is, or asks again", () => {
		expect(press(value, "enter").events).toEqual([{ type: "text", text: "" }]);
		expect(press(value, "  ", "enter").events).toEqual([{ type: "text", text: "" }]);
		const answered = { ...value, enter: { words: "keep your answer", event: { type: "next" } as const } };
		expect(press(answered, "enter").events).toEqual([{ type: "next" }]);
		expect(press(answered, "7", "enter").events).toEqual([{ type: "text", text: "7" }]);
	});

	test("Down leaves the field for the lines, and Up comes back to it", () => {
		expect(press(value, "down", "enter").events).toEqual([notSure]);
		expect(press(value, "180", "down", "enter").events).toEqual([notSure]);
		expect(press(value, "180", "down", "up", "enter").events).toEqual([{ type: "text", text: "180" }]);
		expect(press(value, "down", "5").face).toMatchObject({ row: inField, field: { text: "5" } });
	});

	test("Esc empties the field and leaves the mark in it, so that Enter still answers nothing", () => {
		const { face, events } = press(value, "180", "escape");
		expect(face).toEqual(faceFor(value));
		expect(events).toEqual([]);
		expect(press(value, "180", "escape", "enter").events).toEqual([{ type: "text", text: "" }]);
	});
});

describe("where something may be typed instead", () => {
	test("typing puts the mark into the field, and Enter takes the text", () => {
		const { face, events } = press(free, "down", "my.md", "enter");
		expect(face.row).toBe(inField);
		expect(events).toEqual([{ type: "text", text: "my.md" }]);
	});

	test("Down then picks a line after all", () => {
		expect(press(free, "my.md", "down", "down", "enter").events).toEqual([answer("green")]);
	});

	test("an emptied field gives the mark back to the lines", () => {
		expect(press(free, "x", "backspace", "enter").events).toEqual([answer("red")]);
		expect(press(free, "x", "escape", "enter").events).toEqual([answer("red")]);
	});
});

describe("in a field", () => {
	test("keys edit, and nothing leaves the screen", () => {
		const { face, events } = press(find, "ab cd", "left", "left", "X", "home", "Y", "end", "Z", "word-left", "delete");
		expect(face.field).toEqual({ text: "Yab cdZ", cursor: 4 });
		expect(events).toEqual([]);
	});

	test("? is the help, also where text can be typed", () => {
		const { face } = press(find, "a?");
		expect(face).toMatchObject({ helpOpen: true, field: { text: "a" } });
	});
});

describe("the help", () => {
	test.each(["help", "escape", "enter", "?"])("is closed by %s, and the screen is as before", (key) => {
		const { face, events } = press(find, "pea", "?", "page-down", key);
		expect(face).toEqual(press(find, "pea").face);
		expect(events).toEqual([]);
	});

	test("hears no other key but those that read on, and Tab", () => {
		for (const key of [...names].filter((name) => !["help", "escape", "enter", "tab", "back-tab"].includes(name))) {
			const { face, events } = press(list, "down", "?", key);
			expect({ ...face, scroll: 0 }).toEqual(press(list, "down", "?").face);
			expect(events).toEqual([]);
		}
		expect(press(find, "?", "abc").face.field.text).toBe("");
		expect(press(list, "?", "q").events).toEqual([]);
		expect(press(list, "?", "tab").events).toEqual([{ type: "menu" }]);
	});

	test("is read line by line with Down and Up", () => {
		expect(press(list, "?", "down", "down", "down", "up").face.scroll).toBe(2);
		expect(press(list, "?", ...Array(60).fill("down")).face.scroll).toBe(page.lastScroll);
	});
});

describe("Page Down and Page Up", () => {
	test("leave one line in sight, and stop at the ends", () => {
		expect(press(list, "page-down").face.scroll).toBe(9);
		expect(press(list, "page-down", "page-down", "page-down", "page-down").face.scroll).toBe(25);
		expect(press(list, "page-down", "page-up", "page-up").face.scroll).toBe(0);
	});

	test("go on by one line where only one row of text is shown", () => {
		const narrow = { textRows: 1, lastScroll: 5 };
		expect(pressKey(list, faceFor(list), { name: "page-down" }, narrow).face.scroll).toBe(1);
		expect(pressKey(list, faceFor(list), { name: "page-down" }, { textRows: 0, lastScroll: 5 }).face.scroll).toBe(1);
	});

	test("come back into the text where the terminal grew meanwhile", () => {
		const face = { ...faceFor(list), scroll: 20 };
		expect(pressKey(list, face, { name: "page-down" }, { textRows: 30, lastScroll: 3 }).face.scroll).toBe(3);
		expect(pressKey(list, face, { name: "page-up" }, { textRows: 3, lastScroll: 3 }).face.scroll).toBeLessThan(4);
	});
});

describe("any keys on any screen", () => {
	const named = fc.constantFrom(...names).map((name): Key => ({ name: name as KeyName }));
	const letter = fc.string({ minLength: 1, maxLength: 1 }).map((text): Key => ({ name: "text", text }));
	const paste = fc.string({ unit: "grapheme", maxLength: 300 }).map((text): Key => ({ name: "text", text }));
	const anyKey = fc.oneof(named, named, letter, letter, paste);
	const anyScreen = fc.oneof(
		fc.constantFrom(list, find, free, value),
		fc.constantFrom(...allScreens).map(({ screen }) => screen),
	);
	const anyPage = fc.record({ textRows: fc.nat(60), lastScroll: fc.nat(200) });
	const harmless = ["back", "menu", "review", "leave"];

	test("never throw, and keep mark, scroll and cursor within bounds", () => {
		fc.assert(
			fc.property(anyScreen, fc.array(anyKey, { maxLength: 40 }), anyPage, (screen, keys, size) => {
				let face = faceFor(screen);
				for (const key of keys) {
					({ face } = pressKey(screen, face, key, size));
					const shown = shownChoices(screen, face).length;
					expect(face.row).toBeGreaterThanOrEqual(screen.typing ? inField : 0);
					expect(face.row).toBeLessThanOrEqual(Math.max(0, shown - 1));
					expect(face.scroll).toBeGreaterThanOrEqual(0);
					expect(face.scroll).toBeLessThanOrEqual(size.lastScroll);
					expect(face.screenId).toBe(screen.id);
				}
			}),
		);
	});

	test("answer nothing without Enter but where lines are marked with Space, + and -, and are heard even so", () => {
		fc.assert(
			fc.property(anyScreen, fc.array(anyKey, { maxLength: 40 }), (screen, keys) => {
				let face = faceFor(screen);
				for (const key of keys.filter(({ name }) => name !== "enter")) {
					const pressed = pressKey(screen, face, key, page);
					face = pressed.face;
					const marks = key.name === "space" || (key.name === "text" && /^[+-]$/.test(key.text));
					if (pressed.event) expect([...harmless, ...(marks ? ["mark"] : [])]).toContain(pressed.event.type);
				}
			}),
		);
	});

	test("with Enter give an event of a line that is shown, the text typed, or what Enter alone does", () => {
		fc.assert(
			fc.property(anyScreen, fc.array(anyKey, { maxLength: 20 }), (screen, keys) => {
				let face = faceFor(screen);
				for (const key of keys) ({ face } = pressKey(screen, face, key, page));
				face = { ...face, helpOpen: false };
				const { event } = pressKey(screen, face, { name: "enter" }, page);
				const possible = [
					...shownChoices(screen, face).map((choice) => choice.event),
					screen.enter?.event,
					...(screen.typing ? [{ type: "text", text: face.field.text.trim() }] : []),
					...(screen.choices.length === 0 ? [null] : []),
				];
				expect(possible).toContainEqual(event);
			}),
		);
	});
});
