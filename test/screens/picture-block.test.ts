import stringWidth from "string-width";
import { describe, expect, test } from "vitest";
import { blockLines } from "../../src/screens/block-lines.ts";
import { heading, list, picture, text } from "../../src/screens/screen.ts";

const plug = ["USB 9-pin  ", " o o o o o", " o o o o  "];

describe("a picture in plain letters", () => {
	test("keeps its lines as they are: every space, nothing wrapped, nothing hung behind a dash", () => {
		for (const measure of [undefined, stringWidth]) expect(blockLines([picture(plug)], 40, measure)).toEqual(plug);
	});

	test("is shown where it is exactly as wide as the window, and left out whole where one line is wider", () => {
		expect(blockLines([picture(plug)], 11)).toEqual(plug);
		expect(blockLines([picture(plug)], 10)).toEqual([]);
	});

	test("leaves what stands around it in place, be it shown or not", () => {
		const around = (columns: number) =>
			blockLines([list(["count them"]), picture(plug), heading("What"), text("it is")], columns);
		expect(around(40)).toEqual(["- count them", ...plug, "", "What", "it is"]);
		expect(around(10)).toEqual(["- count", "  them", "", "What", "it is"]);
	});

	test("of no lines is none", () => {
		expect(blockLines([picture([])], 40)).toEqual([]);
	});
});
