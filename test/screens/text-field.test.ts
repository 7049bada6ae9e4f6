import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { KeyName } from "../../src/screens/keys.ts";
import { editField, emptyField, graphemesOf, type TextField, typeInto } from "../../src/screens/text-field.ts";

const editingKeys = [
	...(["left", "right", "home", "end", "word-left", "word-right", "backspace", "delete"] as const),
	...(["delete-word", "delete-to-start", "delete-to-end"] as const),
];

/** A field written with | where the cursor stands. */
function field(shown: string): TextField {
	const [before = "", after = ""] = shown.split("|");
	return { text: before + after, cursor: graphemesOf(before).length };
}

function shown({ text, cursor }: TextField): string {
	const letters = graphemesOf(text);
	return [...letters.slice(0, cursor), "|", ...letters.slice(cursor)].join("");
}

describe("editing keys", () => {
	test.each<[KeyName, string, string]>([
		["left", "ab|c", "a|bc"],
		["left", "|abc", "|abc"],
		["left", "a👍🏽|b", "a|👍🏽b"],
		["right", "ab|c", "abc|"],
		["right", "abc|", "abc|"],
		["right", "|e\u0301x", "e\u0301|x"],
		["home", "abc|", "|abc"],
		["end", "|abc", "abc|"],
		["word-left", "one two|", "one |two"],
		["word-left", "one two   |", "one |two   "],
		["word-left", "one |two", "|one two"],
		["word-left", "|one", "|one"],
		["word-right", "|one two", "one| two"],
		["word-right", "one|  two x", "one  two| x"],
		["word-right", "one|", "one|"],
		["backspace", "ab|c", "a|c"],
		["backspace", "|abc", "|abc"],
		["backspace", "👩‍👩‍👧‍👦|x", "|x"],
		["backspace", "e\u0301|", "|"],
		["delete", "a|bc", "a|c"],
		["delete", "abc|", "abc|"],
		["delete", "|🇺🇳🇺🇳", "|🇺🇳"],
		["delete-word", "one two|", "one |"],
		["delete-word", "one two  |x", "one |x"],
		["delete-word", "|one", "|one"],
		["delete-to-start", "one |two", "|two"],
		["delete-to-end", "one |two", "one |"],
	])("%s on %s gives %s", (key, before, after) => {
		expect(shown(editField(field(before), key) as TextField)).toBe(after);
	});

	test.each<KeyName>(["up", "down", "enter", "escape", "tab", "back-tab", "space", "help", "page-up", "page-down"])(
		"%s edits nothing",
		(key) => expect(editField(field("ab|c"), key)).toBeNull(),
	);
});

describe("typing", () => {
	test.each([
		["|", "a", "a|"],
		["a|c", "b", "ab|c"],
		["a|", "pasted words", "apasted words|"],
		["e|", "\u0301", "e\u0301|"],
		["e|x", "\u0301", "e\u0301|x"],
		["👩|", "\u200d👩", "👩‍👩|"],
		["a|b", "", "a|b"],
	])("on %s, %j gives %s", (before, typed, after) => expect(shown(typeInto(field(before), typed))).toBe(after));

	test("a field takes 200 letters, and cuts off what is pasted beyond", () => {
		const full = typeInto(emptyField, "e\u0301".repeat(500));
		expect(full).toEqual({ text: "e\u0301".repeat(200), cursor: 200 });
		expect(typeInto(full, "x")).toEqual(full);
		expect(typeInto({ ...full, cursor: 3 }, "x")).toEqual({ ...full, cursor: 3 });
	});
});

/** The same field as a list of letters with a gap in it, edited in the plainest way. */
class NaiveField {
	before: string[] = [];
	after: string[] = [];

	type(letter: string): void {
		if (this.before.length + this.after.length < 200) this.before.push(letter);
	}

	press(key: (typeof editingKeys)[number]): void {
		const { before, after } = this;
		const back = () => after.unshift(...before.splice(-1));
		const on = () => before.push(...after.splice(0, 1));
		const endsIn = (space: boolean) => before.length > 0 && (before.at(-1) === " ") === space;
		const begins = (space: boolean) => after.length > 0 && (after[0] === " ") === space;
		switch (key) {
			case "left":
				back();
				break;
			case "right":
				on();
				break;
			case "home":
				while (before.length > 0) back();
				break;
			case "end":
				while (after.length > 0) on();
				break;
			case "word-left":
				while (endsIn(true)) back();
				while (endsIn(false)) back();
				break;
			case "word-right":
				while (begins(true)) on();
				while (begins(false)) on();
				break;
			case "backspace":
				before.pop();
				break;
			case "delete":
				after.shift();
				break;
			case "delete-word":
				while (endsIn(true)) before.pop();
				while (endsIn(false)) before.pop();
				break;
			case "delete-to-start":
				before.length = 0;
				break;
			case "delete-to-end":
				after.length = 0;
				break;
		}
	}
}

describe("any editing", () => {
	/** Letters that never join with a neighbour. */
	const letter = fc.constantFrom("a", "B", " ", " ", "7", "é", "e\u0301", "矢", "👍🏽", "👩‍👩‍👧‍👦", ".");
	const step = fc.oneof(
		letter.map((typed) => ({ typed })),
		fc.constantFrom(...editingKeys).map((key) => ({ key })),
	);

	test("does as a plain list of letters does", () => {
		fc.assert(
			fc.property(fc.array(step, { maxLength: 300 }), (steps) => {
				const naive = new NaiveField();
				let real = emptyField;
				for (const one of steps) {
					if ("typed" in one) {
						naive.type(one.typed);
						real = typeInto(real, one.typed);
					} else {
						naive.press(one.key);
						real = editField(real, one.key) ?? real;
					}
					expect(shown(real)).toBe([...naive.before, "|", ...naive.after].join(""));
				}
			}),
		);
	});

	test("keeps the cursor among the letters, whatever joins with what", () => {
		const wild = fc.oneof(
			fc.string({ unit: "binary", maxLength: 8 }).map((typed) => ({ typed })),
			fc.constantFrom("\u0301", "\u200d", "\ufe0f", "🏽", "🇺", "\u1100", "\u1161").map((typed) => ({ typed })),
			fc.constantFrom(...editingKeys).map((key) => ({ key })),
		);
		fc.assert(
			fc.property(fc.array(wild, { maxLength: 60 }), (steps) => {
				let real = emptyField;
				for (const one of steps) {
					real = "typed" in one ? typeInto(real, one.typed) : (editField(real, one.key) ?? real);
					expect(real.cursor).toBeGreaterThanOrEqual(0);
					expect(real.cursor).toBeLessThanOrEqual(graphemesOf(real.text).length);
				}
			}),
		);
	});
});
