import stringWidth from "string-width";
import { describe, expect, test } from "vitest";
import { type Arrangement, arrange, markWords, type ScreenSize } from "../../src/screens/arrange.ts";
import { type Face, faceFor, pressKey } from "../../src/screens/face.ts";
import type { Choice, Screen } from "../../src/screens/screen.ts";
import { typeInto } from "../../src/screens/text-field.ts";
import { frameRows } from "./frame-rows.ts";
import { bySize } from "./screen-sizes.ts";

const line = (label: string, more: Partial<Choice> = {}): Choice => ({
	label,
	event: { type: "mark", value: label, by: 1 },
	...more,
});
const marked = (label: string, count: number, most: number, more: Partial<Choice> = {}) =>
	line(label, { mark: { count, most }, ...more });
const screenWith = (choices: readonly Choice[], more: Partial<Screen> = {}): Screen => ({
	...{ id: "s", place: "Fit", title: "Which?", body: [], choices, typing: null, isMenu: false, enter: null },
	...{ side: [], help: [], sources: [], problem: null, notice: null, ...more },
});
const large: ScreenSize = { columns: 80, rows: 24 };
const lay = (screen: Screen, face: Face = faceFor(screen), size = large) => arrange(screen, face, size, stringWidth);
const linesOf = ({ choices }: Arrangement) => choices.lines.map(({ lines }) => lines);

describe("the sign before a line", () => {
	test.each<[string, Choice, string]>([
		["that cannot be marked", line("A"), ""],
		["not marked", marked("A", 0, 1), "[ ] "],
		["marked, of which there is one", marked("A", 1, 1), "[x] "],
		["not marked, of which there may be several", marked("A", 0, 4), "[ ] "],
		["marked once, of which there may be several", marked("A", 1, 4), "[1] "],
		["marked twice", marked("A", 2, 4), "[2] "],
	])("%s", (_, choice, sign) => {
		expect(markWords(choice)).toBe(sign);
	});

	test("stands before the label, and what explains it below, further in", () => {
		const choices = [
			marked("Stick", 2, 4, { detail: "Flat" }),
			marked("Lamp", 0, 1),
			marked("Fan", 1, 1),
			line("Not sure", { apart: true }),
		];
		expect(linesOf(lay(screenWith(choices)))).toEqual([
			["[2] Stick", "  Flat"],
			["[ ] Lamp"],
			["[x] Fan"],
			["Not sure"],
		]);
	});

	test("is on the first row only of a label that takes several", () => {
		const [lines = []] = linesOf(lay(screenWith([marked(`${"word ".repeat(30)}end`, 1, 1)])));
		expect(lines.length).toBeGreaterThan(1);
		expect(lines.map((row) => row.includes("[x]"))).toEqual(lines.map((_, index) => index === 0));
	});
});

const grouped = [
	marked("Acorn", 1, 2, { group: "Sticks" }),
	marked("Beech", 0, 2, { group: "Sticks" }),
	marked("Cedar", 0, 2, { group: "Boxes" }),
	line("Not sure", { apart: true }),
];

describe("headings", () => {
	test("stand once, above the first line that has them, and not among its label's rows", () => {
		const arranged = lay(screenWith(grouped));
		expect(linesOf(arranged)).toEqual([["Sticks", "[1] Acorn"], ["[ ] Beech"], ["Boxes", "[ ] Cedar"], ["Not sure"]]);
		expect(arranged.choices.lines.map(({ headingLines, labelLines }) => [headingLines, labelLines])).toEqual([
			[1, 1],
			[0, 1],
			[1, 1],
			[0, 1],
		]);
	});

	test("of one name in two places stand in both", () => {
		const split = [line("A", { group: "Red" }), line("B", { group: "Blue" }), line("C", { group: "Red" })];
		expect(linesOf(lay(screenWith(split)))).toEqual([
			["Red", "A"],
			["Blue", "B"],
			["Red", "C"],
		]);
	});

	test("come back after lines without one", () => {
		const split = [line("A", { group: "Red" }), line("B"), line("C", { group: "Red" })];
		expect(linesOf(lay(screenWith(split)))).toEqual([["Red", "A"], ["B"], ["Red", "C"]]);
	});

	test("of lines that typed letters leave stand above the first of those", () => {
		const find = screenWith(
			grouped.map(({ mark: _, ...choice }) => choice),
			{ typing: { kind: "words", words: "or letters" } },
		);
		const fresh = faceFor(find);
		const found = lay(find, { ...fresh, field: typeInto(fresh.field, "ee") });
		expect(linesOf(found)).toEqual([["Sticks", "Beech"], ["Not sure"]]);
		const two = { ...find, choices: [...find.choices.slice(0, 3), line("Cedarwood", { group: "Boxes" })] };
		const both = lay(two, { ...fresh, field: typeInto(fresh.field, "ced") });
		expect(linesOf(both)).toEqual([["Boxes", "Cedar"], ["Cedarwood"]]);
	});

	test("longer than the window is wide are wrapped", () => {
		const long = screenWith([line("A", { group: "word ".repeat(20).trim() })]);
		const [first] = lay(long, faceFor(long), { columns: 40, rows: 24 }).choices.lines;
		expect(first?.headingLines).toBeGreaterThan(1);
		expect(first?.lines.slice(0, first.headingLines).join(" ")).toBe("word ".repeat(20).trim());
		expect(first?.lines.slice(first.headingLines)).toEqual(["A"]);
	});
});

describe.each(bySize)("at %s", (_, size) => {
	const many = Array.from({ length: 30 }, (_, index) =>
		marked(`Drive ${index + 1}`, index % 3, 2, { group: `Shape ${Math.floor(index / 5)}`, detail: "Some words" }),
	);
	const screen = screenWith(many, { enter: { words: "go on", event: { type: "next" } } });

	test("the cursor stands on the label of the marked line, not on its heading, wherever one moves", () => {
		let face = { ...faceFor(screen), row: 0 };
		for (const [index, choice] of many.entries()) {
			const arranged = lay(screen, face, size);
			const rows = frameRows(arranged, size.columns);
			expect(rows).toHaveLength(size.rows - 1);
			expect(face.row).toBe(index);
			expect(rows[arranged.cursor.y]?.words).toBe(`${markWords(choice)}${choice.label}`);
			face = pressKey(screen, face, { name: "down" }, { textRows: 0, lastScroll: 0 }).face;
		}
	});

	test("the keys below tell of Space only on a line that can be marked", () => {
		const mixed = screenWith([marked("A", 0, 1), line("Not sure", { apart: true })]);
		const footer = (face: Face) => lay(mixed, face, size).footer.join(" ");
		expect(footer(faceFor(mixed))).toContain("Enter mark");
		expect(footer({ ...faceFor(mixed), row: 1 })).not.toContain("Space");
	});

	test("Enter is said to go on where the line is marked, and else to mark it", () => {
		const footer = (row: number) => lay(screen, { ...faceFor(screen), row }, size).footer.join(" ");
		expect(footer(1)).toContain("Enter go on");
		expect(footer(0)).toContain("Enter mark");
	});
});
