import { render } from "ink-testing-library";
import { describe, expect, test } from "vitest";
import type { Arrangement, DrawnChoice, Window } from "../../src/screens/arrange.ts";
import { App } from "../../src/ui/app.tsx";
import { ChoiceList } from "../../src/ui/choice-list.tsx";
import { Header } from "../../src/ui/header.tsx";
import { Menu } from "../../src/ui/menu.tsx";
import { asciiSigns, unicodeSigns } from "../../src/ui/signs.ts";
import { TextWindow } from "../../src/ui/text-window.tsx";

/** Lines of a list, the marked one by its number; a line may have its explanation below it. */
function windowWith(labels: readonly (readonly [string, ...string[]])[], marked: number): Window<DrawnChoice> {
	return {
		lines: labels.map((lines, index) => ({ lines, headingLines: 0, labelLines: 1, marked: index === marked })),
		first: 0,
		above: false,
		below: false,
	};
}

const fruit = [["Red apple", "  crisp"], ["Green apple"], ["Pear"]] as const;

describe.each([
	["a list", (marked: number) => <ChoiceList choices={windowWith(fruit, marked)} signs={asciiSigns} />],
	["a menu", (marked: number) => <Menu id="fruit" choices={windowWith(fruit, marked)} signs={asciiSigns} />],
])("%s", (_, list) => {
	const drawn = (marked: number) =>
		[...fruit.keys()].flatMap((index) => {
			const [label, ...details] = fruit[index] ?? [""];
			return [`${index === marked ? ">" : " "} ${label}`, ...details.map((detail) => `  ${detail}`)];
		});

	test.each([0, 1, 2])("draws the mark in front of line %s only", (marked) => {
		const { lastFrame, unmount } = render(list(marked));
		expect(lastFrame()?.split("\n")).toEqual(drawn(marked));
		unmount();
	});

	test("draws the mark where it is given from outside, each time anew", () => {
		const { lastFrame, rerender, unmount } = render(list(0));
		for (const marked of [1, 2, 1, 0, 2]) {
			rerender(list(marked));
			expect(lastFrame()?.split("\n")).toEqual(drawn(marked));
		}
		unmount();
	});

	test("hears no key", () => {
		const { lastFrame, stdin, unmount } = render(list(1));
		for (const key of ["\u001b[B", "\u001b[A", "\r", "3", "j"]) stdin.write(key);
		expect(lastFrame()?.split("\n")).toEqual(drawn(1));
		unmount();
	});
});

describe("signs", () => {
	test("the mark is one sign; in ASCII another says the same", () => {
		const one = windowWith([["Pear"]], 0);
		expect(render(<ChoiceList choices={one} signs={unicodeSigns} />).lastFrame()).toBe("❯ Pear");
		expect(render(<ChoiceList choices={one} signs={asciiSigns} />).lastFrame()).toBe("> Pear");
	});
});

describe("a menu whose window moves", () => {
	test("follows: other lines, same mark", () => {
		const list = (labels: readonly (readonly [string])[]) => (
			<Menu id="fruit" choices={windowWith(labels, 1)} signs={asciiSigns} />
		);
		const { lastFrame, rerender, unmount } = render(list([["Apple"], ["Pear"], ["Plum"]]));
		rerender(list([["Pear"], ["Plum"], ["Quince"]]));
		expect(lastFrame()).toBe("  Pear\n> Plum\n  Quince");
		unmount();
	});
});

describe("the header", () => {
	test("holds place, title, words about what was done, and air below where there is room", () => {
		const header = (air: number) =>
			render(<Header place="Fit" title={["Which", "case?"]} message={["Saved."]} air={air} />).lastFrame();
		expect(header(1)).toBe("Fit\nWhich\ncase?\nSaved.\n");
		expect(header(0)).toBe("Fit\nWhich\ncase?\nSaved.");
	});
});

describe("a window of text", () => {
	test("draws its lines, empty ones too", () => {
		const text = { lines: ["One", "", "Two"], first: 4, above: true, below: true };
		expect(render(<TextWindow text={text} />).lastFrame()).toBe("One\n\nTwo");
	});
});

describe("a whole screen", () => {
	const arranged: Arrangement = {
		place: "Fit, question 2 of 5",
		title: ["Which case will it go into?"],
		message: [],
		text: { lines: ["Pick one"], first: 0, above: false, below: true },
		between: "... more: Page Down",
		choices: windowWith(fruit, 1),
		field: { prompt: "Find: ", text: "", cursorColumn: 6 },
		side: ["7 of 12 boards left."],
		mainColumns: 40,
		sideColumns: 26,
		footer: ["Up/Down move   ? help"],
		cursor: { x: 0, y: 8 },
		lastScroll: 3,
		sourcesFrom: null,
		air: 1,
		filler: 2,
	};

	test.each([true, false])("stands as arranged, as a menu: %s", (isMenu) => {
		const frame = render(<App screenId="s" isMenu={isMenu} arranged={arranged} signs={asciiSigns} />).lastFrame();
		expect(frame?.split("\n").map((line) => line.trimEnd())).toEqual([
			`${"Fit, question 2 of 5".padEnd(42)}7 of 12 boards left.`,
			"Which case will it go into?",
			"",
			"Pick one",
			"... more: Page Down",
			"Find:",
			"  Red apple",
			"    crisp",
			"> Green apple",
			"  Pear",
			"",
			"",
			"",
			"Up/Down move   ? help",
		]);
	});

	test("without a row between, text and list stand together", () => {
		const tight = { ...arranged, between: null, side: null, field: null, air: 0, filler: 0 };
		const frame = render(<App screenId="s" isMenu={false} arranged={tight} signs={asciiSigns} />).lastFrame();
		expect(frame?.split("\n").slice(1, 5)).toEqual([
			"Which case will it go into?",
			"Pick one",
			"  Red apple",
			"    crisp",
		]);
	});
});
