import { expect, test } from "vitest";
import { harmless } from "../../src/cli/streams.ts";

test.each([
	["an escape sequence", "a\u001b[31mb", "a\ufffd[31mb"],
	["a bell and a title of the window", "\u001b]0;x\u0007", "\ufffd]0;x\ufffd"],
	["a character that turns text round", "a\u202eb", "a\ufffdb"],
	["the way back to the begin of the line", "sound\rfault", "sound\ufffdfault"],
	["a control character of eight bits", "a\u009b1mb", "a\ufffd1mb"],
])("%s does not reach the terminal", (_, text, shown) => {
	expect(harmless(text)).toBe(shown);
});

test.each(["a\tb\n", "row\r\nrow\r\n", "Bü\u00adro \u2192 \ud83d\ude00", ""])("%j stays as it is", (text) => {
	expect(harmless(text)).toBe(text);
});
