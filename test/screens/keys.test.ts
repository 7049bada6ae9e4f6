import { describe, expect, test } from "vitest";
import { keymap } from "../../src/screens/keys.ts";

describe("the keymap", () => {
	test("names each key once, in words that fit a line of help", () => {
		const names = keymap.flatMap(({ keys }) => keys.split(", "));
		expect(new Set(names).size).toBe(names.length);
		for (const { keys, does } of keymap) {
			expect(`- ${keys}: ${does}`.length).toBeLessThanOrEqual(90);
			expect(does).not.toMatch(/\.$/);
		}
	});

	test("is plain ASCII, since it is drawn everywhere", () => {
		for (const { keys, does } of keymap) expect(`${keys}${does}`).toMatch(/^[ -~]+$/);
	});

	test("holds the ways that count everywhere: out, back, help, more", () => {
		const always = keymap.filter(({ when }) => when === "always").map(({ keys }) => keys);
		for (const key of ["Enter", "Esc", "?", "Tab", "Ctrl+C", "Ctrl+Z", "Ctrl+L"]) expect(always).toContain(key);
	});
});
