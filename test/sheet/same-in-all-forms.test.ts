import { parse } from "csv-parse/sync";
import { describe, expect, test } from "vitest";
import { type Money, moneyText } from "../../src/parts/money.ts";
import { screenOf } from "../../src/screens/screen-of.ts";
import { viewWalk } from "../../src/screens/walk-view.ts";
import { adviceJson } from "../../src/sheet/advice-json.ts";
import { htmlSheet } from "../../src/sheet/html-sheet.ts";
import { markdownSheet } from "../../src/sheet/markdown-sheet.ts";
import type { SheetOfAll } from "../../src/sheet/sheet.ts";
import { sheetJson } from "../../src/sheet/sheet-json.ts";
import { shortlistCsv } from "../../src/sheet/shortlist-csv.ts";
import { textSheet } from "../../src/sheet/text-sheet.ts";
import { savedWalk } from "../../src/walk/saved-walk.ts";
import { startWalk } from "../../src/walk/walk-state.ts";
import { blockTexts } from "../screens/screen-words.ts";
import { demo, emptyMarket, scenarios } from "../walk/walk-in-demo.ts";
import { figuresIn, leavesOf, saidInHtml, saidInMarkdown, saidInText, wordsIn } from "./forms-reading.ts";
import { readHtml } from "./html-reading.ts";
import { sheetOf } from "./sheet-of.ts";

const states = [{ name: "nobody yet", state: startWalk() }, ...scenarios];

/** Codes and ids for programs, which stand on no paper; pictures are looked at apart. */
const notForPeople =
	/(?:^schema|^answersFile.*|^hasInventedParts|\.(?:ruleId|questionId|boardId|role|isStopped|invented|state|picture|svg|minor|currency))$/;
/** Said once for all, where it is the ground of a step or a caution. */
const usualGround = "common practice, no source";

describe.each([
	["the demonstration", demo],
	["a market without any part", emptyMarket],
] as const)("in %s", (_, context) => {
	describe.each(states)("the sheet of $name", ({ state }) => {
		const sheet = sheetOf(state, context);
		const kept = savedWalk(context, state);
		const text = textSheet(sheet);
		const markdown = markdownSheet(sheet);
		const html = htmlSheet(sheet, kept);
		const json = JSON.parse(sheetJson(sheet, kept));
		const pictures = [sheet.plan, sheet.power].map((plan) => plan?.picture ?? []).filter(({ length }) => length > 0);
		const said = saidInText(text, pictures);

		test("says the same words and figures in the same order in text, Markdown and HTML, with as many boxes", () => {
			expect(said.words.length).toBeGreaterThan(500);
			expect(said.boxes).toBeGreaterThan(sheet.beforeYouPay.length);
			expect(saidInMarkdown(markdown)).toEqual(said);
			expect(saidInHtml(html)).toEqual(said);
		});

		test("says every text and figure of the JSON on paper", () => {
			const inOneLine = said.words.join(" ");
			const missing = leavesOf(json).filter(({ path, leaf }) => {
				if (notForPeople.test(path) || leaf === null || leaf === "" || leaf === usualGround) return false;
				return !` ${inOneLine} `.includes(` ${wordsIn(String(leaf)).join(" ")} `);
			});
			// How to find out what changes nothing stands in JSON and on the screen; on paper it is named only.
			const named = sheet.open.filter(({ changes }) => changes === "").map(({ how }) => how);
			// One message on paper shows that there are German ones; `boardwalk ask` has the others.
			const german = sheet.askTheShop.slice(1).map((message) => message.german);
			const isElsewhere = ({ path, leaf }: (typeof missing)[number]) =>
				(path === "open.how" && named.includes(String(leaf))) ||
				(path === "askTheShop.german" && german.includes(String(leaf)));
			expect(missing.filter((one) => !isElsewhere(one))).toEqual([]);
		});

		test("says every price of the JSON on paper", () => {
			for (const { price } of sheet.shortlist) if (price) expect(text.replace(/\s+/g, " ")).toContain(moneyText(price));
		});

		test("says in CSV of each board what JSON and paper say", () => {
			const [heads = [], ...rows] = parse(shortlistCsv(sheet), { bom: true }) as string[][];
			expect(rows).toHaveLength(json.shortlist.length);
			const figures = new Set([...said.words, ...wordsIn(JSON.stringify(json.ofAll))]);
			rows.forEach((row, index) => {
				const board = json.shortlist[index];
				const ofRow = leavesOf({ ...board, ofAll: json.ofAll }).map(({ leaf }) => String(leaf));
				for (const [column, cell] of row.entries()) {
					const head = heads[column] ?? "";
					expect(
						figuresIn(cell).filter((figure) => !figures.has(figure)),
						head,
					).toEqual([]);
					const whole = [...ofRow, ...[board.price].filter(Boolean).map((price: Money) => moneyText(price))].join(" ");
					expect(
						wordsIn(cell).filter((word) => !wordsIn(`${whole} yes no`).includes(word)),
						head,
					).toEqual([]);
				}
				expect(row).toEqual(
					expect.arrayContaining([board.name, ...["low", "mid", "high"].map((end) => String(board.score[end]))]),
				);
			});
		});

		test("shows the same pictures in text and Markdown, and their figures in HTML", () => {
			for (const lines of pictures) {
				const drawn = lines.join("\n");
				expect(text.split(`\n\n${drawn}\n`)).toHaveLength(2);
				expect(markdown.split(`\n\n~~~\n${drawn}\n~~~\n\n`)).toHaveLength(2);
			}
			const svgs = [...html.matchAll(/<svg[\s\S]*?<\/svg>|<pre>[\s\S]*?<\/pre>/g)].map(([svg]) => svg);
			expect(svgs).toHaveLength(pictures.length);
			pictures.forEach((lines, index) => {
				const inSvg = new Set(figuresIn(readHtml(svgs[index] ?? "").texts.join(" ")));
				expect(figuresIn(lines.join(" ")).filter((figure) => !inSvg.has(figure))).toEqual([]);
			});
		});

		test("is no wider than 78 columns as text, of sound lines, ended by one line feed", () => {
			for (const line of text.split("\n")) if (line.length > 78) expect(line.trim()).not.toContain(" ");
			expect(text).not.toMatch(/[ \t]\n|\n{3}|\n\n$|undefined|NaN|\[object/);
			expect(text.endsWith("\n")).toBe(true);
		});

		test("keeps to the width it is given", () => {
			for (const width of [40, 60, 100])
				for (const line of textSheet(sheet, width).split("\n"))
					if (line.length > width) expect(line.trim(), `${width}`).not.toMatch(/^[^A-Z]* /);
		});

		test("shows the same boards, scores and prices as the shortlist on screen and as JSON", () => {
			const screen = screenOf(context, { ...state, place: { at: "shortlist" } });
			const shown = (screen?.body ?? []).flatMap(blockTexts);
			for (const board of sheet.shortlist)
				expect(shown).toEqual(expect.arrayContaining([board.verdictWords, board.priceWords, board.scoreWords]));
			const view = viewWalk(context, state);
			const advice = JSON.parse(
				JSON.stringify(adviceJson(view.judgement(), view.advice(), view.state.answers, view.context)),
			);
			expect(
				advice.shortlist.map(({ boardId, role, score }: Record<string, unknown>) => [boardId, role, score]),
			).toEqual(sheet.shortlist.map(({ boardId, role, score }) => [boardId, role, score]));
			for (const [index, { priceMinor, currency }] of advice.shortlist.entries())
				if (priceMinor !== null)
					expect(sheet.shortlist[index]?.priceWords).toContain(`${currency} ${(priceMinor / 100).toFixed(2)}`);
			for (const [index, board] of sheet.shortlist.entries()) {
				const texts = (reasons: { text: string }[]) => reasons.map(({ text: said }) => said);
				const entry = advice.shortlist[index];
				// What holds for all of them stands once on paper.
				const both = (of: (one: SheetOfAll) => readonly string[]) => [...of(board), ...of(sheet.ofAll)].sort();
				expect([texts(entry.for), texts(entry.against), texts(entry.unknown)].map((list) => list.sort())).toEqual([
					both((one) => one.for),
					both((one) => one.against),
					both((one) => one.unknown),
				]);
			}
			const said = [...advice.conflicts, ...advice.waysOut].map(({ text: words }: { text: string }) => words);
			expect([...new Set(said)]).toEqual(sheet.nothingFits.length > 0 ? sheet.nothingFits : expect.anything());
		});
	});
});
