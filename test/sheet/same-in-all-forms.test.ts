import { describe, expect, test } from "vitest";
import { screenOf } from "../../src/screens/screen-of.ts";
import { viewWalk } from "../../src/screens/walk-view.ts";
import { adviceJson } from "../../src/sheet/advice-json.ts";
import { markdownSheet } from "../../src/sheet/markdown-sheet.ts";
import type { Sheet, SheetOfAll } from "../../src/sheet/sheet.ts";
import { sheetDocument } from "../../src/sheet/sheet-document.ts";
import { textSheet } from "../../src/sheet/text-sheet.ts";
import { startWalk } from "../../src/walk/walk-state.ts";
import { blockTexts } from "../screens/screen-words.ts";
import { demo, emptyMarket, scenarios } from "../walk/walk-in-demo.ts";
import { unescaped } from "./markdown-reading.ts";
import { sheetOf } from "./sheet-of.ts";

const states = [{ name: "nobody yet", state: startWalk() }, ...scenarios];

/** Text with every run of white space as one space, so that breaks of lines make no difference. */
const flat = (text: string) => text.replace(/\s+/g, " ");

/** All that a sheet has to say, however it is written. */
function wordsOf(sheet: Sheet): readonly string[] {
	return [
		sheet.asOf,
		sheet.market,
		...sheet.inShort,
		...sheet.partsDisagree.flatMap(({ text, advice }) => (advice ? [text, advice] : [text])),
		...sheet.mustHave.flatMap(({ label, text, why }) => [label, text, why]),
		...sheet.niceToHave.flatMap(({ label, text }) => [label, text]),
		...sheet.beforeYouPay,
		...sheet.nothingFits,
		...sheet.shortlist.flatMap((board) => [
			`${board.roleWords}: ${board.name}`,
			board.verdictWords,
			board.priceWords,
			board.scoreWords,
			board.facts,
			...board.for,
			...board.against,
			...board.unknown,
		]),
		...(sheet.plan?.sections ?? []).flatMap(({ heading, lines }) => [heading, ...lines]),
		...sheet.open.flatMap(({ what, how }) => [what, how]),
		...sheet.cautions.flatMap(({ text, ground }) => [text, ground]),
		// Who answered is said where it was somebody else than the builder.
		...sheet.answers.map(({ label, value, by }) => `${label}: ${value}${by && by !== "builder" ? ` (${by})` : ""}`),
		...sheet.sources,
	];
}

describe.each([
	["the demonstration", demo],
	["a market without any part", emptyMarket],
] as const)("in %s", (_, context) => {
	describe.each(states)("the sheet of $name", ({ state }) => {
		const sheet = sheetOf(state, context);
		const text = textSheet(sheet);
		const markdown = unescaped(markdownSheet(sheet)).replaceAll("**", "");

		test("says every need, board, score, price, reason and answer in text and in Markdown", () => {
			const words = wordsOf(sheet);
			expect(words.filter((said) => !flat(text).includes(flat(said)))).toEqual([]);
			expect(words.filter((said) => !flat(markdown).includes(flat(said)))).toEqual([]);
		});

		test("shows the same picture of the first board in text and in Markdown, with the words below it", () => {
			const first = sheet.shortlist[0];
			expect(sheet.plan?.boardName).toBe(first?.name);
			if (!sheet.plan) return;
			const { boardName, picture, sections } = sheet.plan;
			const drawn = picture.join("\n");
			// A board of which no connector is known is not drawn.
			if (picture.length > 0) {
				expect(picture.length).toBeGreaterThan(5);
				expect(text.split(`\n\n${drawn}\n\n`)).toHaveLength(2);
				expect(markdownSheet(sheet).split(`\n\n~~~\n${drawn}\n~~~\n\n`)).toHaveLength(2);
			}
			expect(sections.length).toBeGreaterThan(0);
			const title = `What plugs in where: ${boardName}`;
			for (const [form, head] of [[text, title.toUpperCase()] as const, [markdown, title] as const]) {
				let from = 0;
				for (const words of [head, drawn, ...sections.map(({ heading }) => heading)]) {
					expect(form.indexOf(words, from), words).toBeGreaterThanOrEqual(from);
					from = form.indexOf(words, from) + words.length;
				}
			}
		});

		test("says it in the same order in both", () => {
			const placesIn = (form: string) => sheet.answers.map(({ label }) => flat(form).lastIndexOf(`- ${label}: `));
			for (const form of [text, markdown]) {
				const places = placesIn(form);
				expect(places).toEqual([...places].sort((one, other) => one - other));
				expect(places[0]).toBeGreaterThan(0);
			}
			const heads = sheetDocument(sheet).flatMap((block) => (block.kind === "section" ? [block.text] : []));
			expect([...markdown.matchAll(/^## (.*)$/gm)].map(([, head]) => head)).toEqual(heads);
			expect(heads.filter((head) => !text.includes(`\n\n${head.toUpperCase()}\n\n`))).toEqual([]);
		});

		test("has a box to tick for each thing that the board must have, and before paying", () => {
			const boxes = sheet.mustHave.length + sheet.niceToHave.length + sheet.beforeYouPay.length;
			for (const form of [text, markdown]) expect(form.match(/\[ \] /g)?.length).toBe(boxes);
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
