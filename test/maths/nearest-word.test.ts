import { expect, test } from "vitest";
import { nearestWords } from "../../src/maths/nearest-word.ts";

const flags = ["answers", "parts", "with-demo", "to", "replace", "json", "plain", "no-color", "ascii"];

test.each<[string, string, string[], string[]]>([
	["a swap", "asnwers", flags, ["answers"]],
	["a letter missing", "with-deno", flags, ["with-demo"]],
	["another spelling", "no-colour", flags, ["no-color"]],
	["nothing near", "wallpaper", flags, []],
	["nothing typed", "", flags, []],
	["case does not count, and the word is given back as known", "DEPTHMM", ["depthMm", "widthMm"], ["depthMm"]],
	["short words: one slip", "tp", flags, ["to"]],
	["short words: not two", "xy", flags, []],
	["long words: three slips", "graphicscrdslt", ["graphicsCardSlots"], ["graphicsCardSlots"]],
	["long words: not four", "graphicscrdslt", ["graphicsCardsSlots"], []],
	["nearest first, equals in the order given", "part", ["parsed", "port", "parts", "cart"], ["port", "parts", "cart"]],
	[
		"a word two slips away stands after one that is one slip away",
		"answers",
		["onswars", "answer"],
		["answer", "onswars"],
	],
	["a word known twice is offered once", "jsn", ["json", "json"], ["json"]],
])("%s", (_, word, known, expected) => {
	expect(nearestWords(word, known)).toEqual(expected);
});

test("gives back no more than asked for", () => {
	const known = ["aa", "ab", "ac", "ad"];
	expect(nearestWords("a", known)).toEqual(["aa", "ab", "ac"]);
	expect(nearestWords("a", known, 1)).toEqual(["aa"]);
});
