import { expect, test } from "vitest";
import { titleInSentence } from "../../src/parts/title-in-sentence.ts";

test.each([
	["Socket", "socket"],
	["A board", "a board"],
	["USB-C at the back", "USB-C at the back"],
	["M.2 drives", "M.2 drives"],
	["12V plugs", "12V plugs"],
	["", ""],
])("%j stands in a sentence as %j", (title, words) => {
	expect(titleInSentence(title)).toBe(words);
});
