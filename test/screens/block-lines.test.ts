import fc from "fast-check";
import stringWidth from "string-width";
import { describe, expect, test } from "vitest";
import { blockLines } from "../../src/screens/block-lines.ts";
import { type Block, heading, list, pairs, text } from "../../src/screens/screen.ts";

describe("blocks as lines", () => {
	test("a heading has an empty line in front, unless it comes first", () => {
		expect(blockLines([heading("Fit"), text("It fits."), heading("Price")], 40)).toEqual([
			"Fit",
			"It fits.",
			"",
			"Price",
		]);
	});

	test("list items hang behind their dash, pairs behind their label", () => {
		expect(blockLines([list(["one two three", "four"])], 10)).toEqual(["- one two", "  three", "- four"]);
		expect(blockLines([pairs([["Price", "180 EUR now"]])], 12)).toEqual(["Price: 180", "  EUR now"]);
	});

	test("words wider than a line are broken only where cells are counted", () => {
		expect(blockLines([text("abcdefghij k")], 5)).toEqual(["abcdefghij", "k"]);
		expect(blockLines([text("abcdefghij k")], 5, stringWidth)).toEqual(["abcde", "fghij", "k"]);
		expect(blockLines([text("矢車菊の箱")], 5, stringWidth)).toEqual(["矢車", "菊の", "箱"]);
	});

	test("no blocks are no lines", () => expect(blockLines([], 40)).toEqual([]));

	test("no line is wider than asked, and no letter is lost, whatever the words", () => {
		const words = fc.string({ unit: fc.constantFrom("a", "b", " ", "矢", "e\u0301", "👍🏽", "-", ".") });
		const block: fc.Arbitrary<Block> = fc.oneof(
			words.map(text),
			words.map(heading),
			fc.array(words, { maxLength: 4 }).map(list),
			fc.array(fc.tuple(words, words), { maxLength: 4 }).map(pairs),
		);
		const letters = (lines: readonly string[]) => lines.join("").replace(/[ :-]/g, "");
		fc.assert(
			fc.property(fc.array(block, { maxLength: 6 }), fc.integer({ min: 8, max: 60 }), (blocks, columns) => {
				const lines = blockLines(blocks, columns, stringWidth);
				for (const line of lines) expect(stringWidth(line)).toBeLessThanOrEqual(columns);
				const given = blocks.flatMap((one) =>
					one.kind === "list"
						? [...one.items]
						: one.kind === "pairs"
							? one.pairs.flat()
							: one.kind === "picture"
								? []
								: [one.text],
				);
				expect(letters(lines)).toBe(letters(given));
			}),
		);
	});
});
