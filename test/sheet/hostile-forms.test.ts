import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { answersInHtml } from "../../src/parts/answers-in-html.ts";
import { checkJson } from "../../src/parts/check-json.ts";
import { cleanLine } from "../../src/parts/clean-text.ts";
import { sheetFile } from "../../src/parts/sheet-file.ts";
import { htmlSheet } from "../../src/sheet/html-sheet.ts";
import { markdownSheet } from "../../src/sheet/markdown-sheet.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { sheetJson } from "../../src/sheet/sheet-json.ts";
import { shortlistCsv } from "../../src/sheet/shortlist-csv.ts";
import { textSheet } from "../../src/sheet/text-sheet.ts";
import { asNamed, harmlessLike, marker, nameRead, namesRead, strangersWalk, withWords } from "./hostile-walk.ts";
import { hostileWords } from "./hostile-words.ts";
import { readHtml } from "./html-reading.ts";

const flat = (text: string) => text.replace(/\s+/g, " ").trim();
const cells = (csv: string) => parse(csv, { bom: true, record_delimiter: ["\r\n"] }) as string[][];
/** What no form may hold: what steers a terminal, hides, or turns the direction of reading. */
const forbidden = /(?![\t\n\r])\p{Cc}|[\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f]|\p{Cs}/u;

test("a name that is read from a file is one line: a break in it would forge lines of the sheet", () => {
	const names = hostileWords.flatMap((word) => nameRead(word) ?? []);
	expect(names.filter((name) => name !== cleanLine(name))).toEqual([]);
});

describe.each(["quiet-desk", "showpiece"])("the sheet of %s with a stranger's names", (person) => {
	const walk = strangersWalk(marker, person);

	/** The forms of a sheet with these names are those with harmless ones as long, but for the names. */
	function stayNames(names: readonly string[]): void {
		const [sheet, quiet] = [names, harmlessLike(names)].map((words) => withWords(walk.sheet, words)) as [Sheet, Sheet];
		// The least that any place in the file has room for.
		const kept = withWords(
			walk.file,
			names.map((name) => nameRead(name.slice(0, 40)) ?? "x"),
		);
		const said = (form: string) => flat(asNamed(flat(form), names));

		const text = textSheet(sheet);
		const quietText = textSheet(quiet);
		expect(flat(text).toUpperCase()).toBe(said(quietText).toUpperCase());
		expect(shapeOf(text)).toEqual(shapeOf(quietText));

		const html = htmlSheet(sheet, kept);
		const read = readHtml(html);
		const quietRead = readHtml(htmlSheet(quiet, null));
		expect(read.faults).toEqual([]);
		expect(read.tags.filter((tag) => !/<\/?template/.test(tag))).toEqual(quietRead.tags);
		const template = read.texts.at(-1) ?? "";
		expect(read.texts.slice(0, -1).map(flat)).toEqual(quietRead.texts.map(said));
		expect([JSON.parse(template), JSON.parse(answersInHtml(html) ?? "")]).toEqual([kept, kept]);

		const json = sheetJson(sheet, kept);
		const sound = checkJson(sheetFile, JSON.parse(json));
		expect(sound.faults).toEqual([]);
		expect(sound.value).toEqual({ schema: "boardwalk/sheet@1", ...sheet, answersFile: kept });

		const csv = shortlistCsv(sheet);
		// The apostrophe that keeps a cell from being a formula is the only thing that comes in.
		const bare = (rows: readonly (readonly string[])[]) =>
			rows.map((row) => row.map((cell) => cell.replaceAll("'", "")));
		expect(bare(cells(csv))).toEqual(bare(cells(shortlistCsv(quiet)).map((row) => row.map(said))));

		for (const form of [text, markdownSheet(sheet), html, json, csv.replace(/^\uFEFF/, "")])
			expect(form).not.toMatch(forbidden);
	}

	// Each time every word comes to other places.
	test.each([0, 1, 2, 3, 4, 5])("has names for names in text, HTML, JSON and CSV, turn %i", (turn) => {
		const names = namesRead(hostileWords);
		const from = turn * 23;
		stayNames([...names.slice(from), ...names.slice(0, from)]);
	});

	test("has names for names, whatever they are", () => {
		const words = fc.array(fc.string({ unit: "binary", maxLength: 40 }), { minLength: 1, maxLength: 40 });
		fc.assert(
			fc.property(words, (some) => {
				const names = namesRead(some);
				if (names.length > 0) stayNames(names);
			}),
			{ numRuns: 20 },
		);
	});
});

/** The elements of a page with the names of their attributes. */
const elements = (html: string) => new Set(readHtml(html).tags.map((tag) => tag.replace(/="[^"]*"/g, "")));

describe("a walk whose every part, note and suggestion is called", () => {
	const quiet = strangersWalk(marker, "showpiece");
	const usual = elements(htmlSheet(quiet.sheet, quiet.file));

	test.each([
		'</text></svg></template><img src=x onerror="a">\'&lt;&',
		'| # `~~~` [x](y) =1;"=2 \\ <!-- ]]> -->',
		"\u001b]0;x\u0007\u202eevil\u200b \ud800\u0000\u{1f600}\u2028 __proto__",
		"$&$1 1e309 NaN undefined",
	])("%j: its pictures and pages too hold nothing but names", (word) => {
		const { sheet, file } = strangersWalk(word, "showpiece");
		const name = file.parts[0]?.part.name ?? "";
		expect(name).toBe(nameRead(word));
		const html = htmlSheet(sheet, file);
		const read = readHtml(html);
		expect(read.faults).toEqual([]);
		expect([...elements(html)].filter((element) => !usual.has(element))).toEqual([]);
		expect(flat(read.texts.join(" ")).split(flat(name)).length).toBeGreaterThan(20);
		expect(checkJson(sheetFile, JSON.parse(sheetJson(sheet, file))).value?.answersFile).toEqual(file);
		expect(new Set(cells(shortlistCsv(sheet)).map(({ length }) => length)).size).toBe(1);
		for (const form of [textSheet(sheet), markdownSheet(sheet), html]) {
			expect(form).not.toMatch(forbidden);
			expect(form).not.toMatch(/\[object|>undefined<|: undefined/);
		}
	});
});

/** How many blocks, items and boxes a text has. */
function shapeOf(text: string): readonly number[] {
	return [/\n\n/g, /^- /gm, /^\[ \] /gm].map((mark) => text.match(mark)?.length ?? 0);
}
