import { expect, test } from "vitest";
import { faceFor, pressKey } from "../../src/screens/face.ts";
import type { KeyName } from "../../src/screens/keys.ts";
import type { Screen } from "../../src/screens/screen.ts";

const choices = Array.from({ length: 20 }, (_, index) => ({
	label: `Line ${index}`,
	event: { type: "next" as const },
}));
const screen: Screen = {
	...{ id: "s", place: "", title: "Which?", body: [], choices, typing: null, isMenu: false, enter: null },
	...{ side: [], help: [], sources: [], problem: null, notice: null },
};
const rowsAfter = (lastScroll: number, ...names: readonly KeyName[]) => {
	let face = faceFor(screen);
	return names.map((name) => {
		face = pressKey(screen, face, { name }, { textRows: 5, lastScroll }).face;
		return [face.row, face.scroll];
	});
};

test("page keys go over eight lines of a list and stop at its ends, where no text is to be read on", () => {
	const keys = ["page-down", "page-down", "page-down", "page-up", "page-up", "page-up"] as const;
	expect(rowsAfter(0, ...keys).map(([row]) => row)).toEqual([8, 16, 19, 11, 3, 0]);
});

test("where text goes on they read on, and leave the list where it is", () => {
	expect(rowsAfter(9, "page-down", "page-down", "page-down", "page-up")).toEqual([
		[0, 4],
		[0, 8],
		[0, 9],
		[0, 5],
	]);
});
