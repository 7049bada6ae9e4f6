import { describe, expect, test } from "vitest";
import { faceFor, pressKey } from "../../src/screens/face.ts";
import { demo, walkAt } from "../walk/walk-in-demo.ts";
import { screenAt } from "./screen-words.ts";

const page = { textRows: 10, lastScroll: 0 };
const pasted = (at: Parameters<typeof walkAt>[0], text: string) => {
	const screen = screenAt(demo, walkAt(at));
	return pressKey(screen, faceFor(screen), { name: "paste", text }, page);
};

describe("a paste", () => {
	test("of many lines is handed over whole where a page is wanted", () => {
		const text = "Socket\tLantern 4\n\n\nForm: ATX";
		expect(pasted({ at: "read-part", what: "board", questionId: null }, text).event).toEqual({ type: "paste", text });
	});

	test("is one clean line in a field, cut where no field is as long", () => {
		const { face, event } = pasted({ at: "question", id: "about/budget" }, "1\u001b[31m8\n0");
		expect([face.field.text, event]).toEqual(["18 0", null]);
		const long = pasted({ at: "question", id: "about/budget" }, "x".repeat(2_000_000));
		expect(long.face.field.text).toHaveLength(200);
	});

	test("does nothing where nothing can be typed", () => {
		expect(pasted({ at: "settings" }, "quit").event).toBeNull();
	});
});
