import fc from "fast-check";
import { micromark } from "micromark";
import { gfm, gfmHtml } from "micromark-extension-gfm";
import { expect, test } from "vitest";
import { markdownSheet } from "../../src/sheet/markdown-sheet.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { asNamed, harmlessLike, marker, namesRead, strangersWalk, withWords } from "./hostile-walk.ts";
import { hostileWords } from "./hostile-words.ts";
import { readHtml } from "./html-reading.ts";

/** As public sites show Markdown: with tables, boxes and bare addresses as links, and with HTML let through. */
function shown(markdown: string) {
	return readHtml(
		micromark(markdown, {
			allowDangerousHtml: true,
			allowDangerousProtocol: true,
			extensions: [gfm()],
			htmlExtensions: [gfmHtml()],
		}),
	);
}

const flat = (text: string) => text.replace(/\s+/g, " ").trim();

test("a parser shows what it should: the check is one", () => {
	const told = (markdown: string) => shown(markdown).tags.join("");
	expect(told("- [ ] a\n\n| a | b |\n| --- | --- |\n| c | d |\n")).toContain("<table>");
	expect(told("www.x.example")).toContain("<a href");
	expect(told("<b>x</b>")).toContain("<b>");
});

const { sheet: marked } = strangersWalk(marker, "showpiece");

/** A parser sees the same elements as with harmless names as long, and the names as text. */
function stayNames(names: readonly string[]): void {
	const [sheet, quiet] = [names, harmlessLike(names)].map((words) => withWords(marked, words)) as [Sheet, Sheet];
	const [read, quietRead] = [shown(markdownSheet(sheet)), shown(markdownSheet(quiet))];
	expect(read.tags).toEqual(quietRead.tags);
	expect(flat(read.texts.join("\n"))).toBe(flat(asNamed(flat(quietRead.texts.join("\n")), names)));
}

// Each time every word comes to other places.
test.each([0, 1, 2, 3, 4, 5])("a sheet as Markdown shows names as names, turn %i", (turn) => {
	const names = namesRead(hostileWords);
	const from = turn * 23;
	stayNames([...names.slice(from), ...names.slice(0, from)]);
});

test("a sheet as Markdown shows names as names, whatever they are", () => {
	const marks = fc.string({
		unit: fc.constantFrom(..."\\`*_{}[]()<>#+-=.!|~&;:@/ www1a\té\u00a0\u3000"),
		maxLength: 16,
	});
	const words = fc.array(fc.oneof(marks, fc.string({ unit: "binary", maxLength: 30 })), {
		minLength: 1,
		maxLength: 60,
	});
	fc.assert(
		fc.property(words, (some) => {
			const names = namesRead(some);
			if (names.length > 0) stayNames(names);
		}),
		{ numRuns: 20 },
	);
});
