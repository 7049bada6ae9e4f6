import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { priceLinePicture } from "../../src/sheet/price-line-picture.ts";
import { lineOf } from "../choose/made-up-lines.ts";

const three = [
	{ name: "Cheap", euros: 100, points: 40 },
	{ name: "Dear", euros: 200, points: 80 },
	{ name: "Poor", euros: 180, points: 50 },
];

test("a picture by eye", () => {
	expect(priceLinePicture(lineOf(three), { width: 40, height: 8 })).toEqual([
		"points",
		" 80 |                                /-C",
		"    |                           /----",
		"    |                      /----",
		"    |                  /---",
		"    |             /----",
		"    |        /----              B",
		"    |   /----",
		" 40 |A--",
		"    +-----------------------------------",
		"     EUR 100.00               EUR 200.00",
		"A Cheap: EUR 100.00, 40 points",
		"B Poor: EUR 180.00, 50 points",
		"C Dear: EUR 200.00, 80 points",
	]);
});

describe("the picture", () => {
	test("with finer signs has the same letters in the same places", () => {
		const [plain, fine] = [true, false].map((ascii) => priceLinePicture(lineOf(three), { ascii }));
		expect(plain?.join("")).toMatch(/^[ -~]+$/);
		expect(fine?.join("")).toMatch(/[^ -~]/);
		const letters = (lines: readonly string[] = []) =>
			lines.map((line) => line.replace(/[^A-Za-z0-9]/g, " ").trimEnd());
		expect(letters(fine)).toEqual(letters(plain));
	});

	test("one board, or none, is no picture", () => {
		expect(priceLinePicture(lineOf(three.slice(0, 1)))).toEqual([]);
		expect(priceLinePicture(lineOf([]))).toEqual([]);
	});

	test("two boards at one place share a letter, and the list says so", () => {
		const lines = priceLinePicture(lineOf([...three, { name: "Dear too", euros: 200, points: 80 }]), { width: 60 });
		expect(lines).toContain("C Dear: EUR 200.00, 80 points");
		expect(lines).toContain("D Dear too: EUR 200.00, 80 points, at C");
		expect(lines.filter((line) => /^ .*D/.test(line))).toEqual([]);
	});

	test("a price that leaves something out is told as the least", () => {
		const lines = priceLinePicture(
			lineOf(
				[
					{ name: "Wired", euros: 100, points: 90, facts: { wireless: { builtIn: false } } },
					{ name: "Wireless", euros: 120, points: 50, facts: { wireless: { builtIn: true } } },
				],
				{ build: { wishes: { "features/wireless": "must", "features/rear-usb-c": "dont-mind" } } },
			),
		);
		expect(lines).toContain("A Wired: from EUR 100.00, 90 points");
	});

	test("all of one price, or with as many points, stand in the middle", () => {
		const column = priceLinePicture(lineOf(three.map((board) => ({ ...board, euros: 100 }))), { width: 45 });
		const marks = column.filter((line) => /^.{4}\|/.test(line)).map((line) => line.slice(5).search(/[A-C]/));
		expect(new Set(marks.filter((at) => at >= 0))).toEqual(new Set([20]));
		expect(column.filter((line) => line.includes("EUR 100.00"))).toHaveLength(1 + 3);
		const row = priceLinePicture(lineOf(three.map((board) => ({ ...board, points: 0 }))));
		expect(row.find((line) => /^ {2}0 \|A/.test(line))).toBeDefined();
	});

	const anyBoards = fc
		.array(
			fc.record({
				euros: fc.integer({ min: 0, max: 900 }),
				points: fc.integer({ min: 0, max: 100 }),
				name: fc.constantFrom("Short", "A rather long name of a board ".repeat(4).trim(), "矢車菊の静かな箱".repeat(6)),
			}),
			{ minLength: 2, maxLength: 20 },
		)
		.map((boards) => boards.map((board, index) => ({ ...board, name: `${index} ${board.name}` })));

	test("keeps its width, has at most twelve letters, and tells of each once", () => {
		fc.assert(
			fc.property(
				anyBoards,
				fc.integer({ min: 40, max: 110 }),
				fc.integer({ min: 6, max: 20 }),
				(boards, width, height) => {
					const lines = priceLinePicture(lineOf(boards), { width, height });
					for (const line of lines) expect([...line].length, line).toBeLessThanOrEqual(width);
					expect(lines.filter((line) => /^.{4}\|/.test(line))).toHaveLength(height);
					const foot = lines.findIndex((line) => line.startsWith("    +"));
					const told = lines.slice(foot + 2).filter((line) => /^[A-L] /.test(line));
					expect(told).toHaveLength(Math.min(12, boards.length));
					const dots = /^\. = (\d+) more boards?$/.exec(lines.at(-1) ?? "");
					expect(Number(dots?.[1] ?? 0)).toBe(boards.length - told.length);
					const drawn = lines.slice(1, foot).join("").match(/[A-L]/g) ?? [];
					const named = told.filter((line) => !/, at [A-L]$/.test(line)).map((line) => line.charAt(0));
					// Cut short at the end, a line of the list cannot say where else its board is drawn.
					if (width >= 60) expect([...drawn].sort()).toEqual(named.sort());
				},
			),
			{ numRuns: 40 },
		);
	});

	test("dearer lies further right, more points further up", () => {
		fc.assert(
			fc.property(anyBoards, (boards) => {
				const line = lineOf(boards);
				const rows = priceLinePicture(line).slice(1, 13);
				const places = new Map<string, readonly [number, number]>();
				rows.forEach((row, at) => {
					for (const { 0: letter, index } of row.slice(5).matchAll(/[A-L]/g)) places.set(letter, [at, index]);
				});
				const all = [...places].sort(([one], [other]) => (one < other ? -1 : 1));
				// Letters go by price.
				const columns = all.map(([, [, column]]) => column);
				expect(columns).toEqual([...columns].sort((one, other) => one - other));
			}),
			{ numRuns: 40 },
		);
	});
});
