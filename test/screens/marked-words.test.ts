import { describe, expect, test } from "vitest";
import { lineMeaning } from "../../src/plain/line-event.ts";
import { promptText, screenText } from "../../src/plain/screen-text.ts";
import { glossary } from "../../src/reference/glossary.ts";
import { arrange } from "../../src/screens/arrange.ts";
import { faceFor, pressKey } from "../../src/screens/face.ts";
import { explainsWords, withWordsMarked, wordBlocks, wordsMarked } from "../../src/screens/marked-words.ts";
import { list, type Screen, text } from "../../src/screens/screen.ts";
import { startWalk } from "../../src/walk/walk-state.ts";
import { demo, scenarios } from "../walk/walk-in-demo.ts";
import { blockTexts, everyPlace, screenAt, textsOf } from "./screen-words.ts";

const empty: Screen = {
	...{ id: "s", place: "", title: "", body: [], choices: [], typing: null, isMenu: false, enter: null, side: [] },
	...{ help: [], sources: [], problem: null, notice: null },
};
const of = (...words: readonly string[]): Screen => ({ ...empty, body: words.map(text) });
const bodyOf = (screen: Screen) => withWordsMarked(screen).body.flatMap(blockTexts);
const page = { textRows: 10, lastScroll: 0 };

describe("the glossary", () => {
	test("has at most forty entries, each word once", () => {
		const words = glossary.flatMap(({ word, forms }) => [word, ...(forms ?? [])]).map((word) => word.toLowerCase());
		expect(glossary.length).toBeLessThanOrEqual(40);
		expect(new Set(words).size).toBe(words.length);
	});

	test("stands in the order of the alphabet, figures last", () => {
		const order = glossary.map(({ word }) => word.toLowerCase());
		const key = (word: string) => (/^\d/.test(word) ? `~${word}` : word);
		expect(order).toEqual(order.toSorted((one, other) => (key(one) < key(other) ? -1 : 1)));
	});

	test("every entry that is marked stands on some screen", () => {
		const all = new Set(
			[startWalk(), ...scenarios.map(({ state }) => state)].flatMap((state) =>
				everyPlace(demo, state)
					.filter(({ at }) => at !== "glossary")
					.flatMap((place) => wordsMarked(screenAt(demo, state, place))),
			),
		);
		expect(glossary.filter((term) => !term.isEveryday && !all.has(term)).map(({ word }) => word)).toEqual([]);
	});
});

describe("a marked word", () => {
	test("is marked where it first stands, and only there", () => {
		expect(bodyOf(of("The chipset and the chipset.", "Another chipset."))).toEqual([
			"The chipset* and the chipset.",
			"Another chipset.",
		]);
	});

	test("may stand in the plural, at the start of a sentence, beside a stop", () => {
		expect(bodyOf(of("Headers are small. How many lanes?"))).toEqual(["Headers* are small. How many lanes*?"]);
	});

	test("is no part of a longer word or of a name with a line through it", () => {
		expect(bodyOf(of("socketed, SATA_3, M.2_1, Kettle-ATX"))).toEqual(["socketed, SATA_3, M.2_1, Kettle-ATX"]);
	});

	test("the longer term goes first, and one entry is marked once whatever it is called", () => {
		expect(bodyOf(of("PCI Express, PCIe and PCI. DDR4 or DDR5?"))).toEqual([
			"PCI Express*, PCIe and PCI. DDR4* or DDR5?",
		]);
	});

	test("everyday words are not marked", () => {
		expect(bodyOf(of("The processor takes memory."))).toEqual(["The processor takes memory."]);
	});

	test("a picture and a list to search are left as they are", () => {
		const screen: Screen = {
			...of(),
			body: [{ kind: "picture", lines: ["SATA"] }, list(["SATA"])],
			typing: { kind: "words", words: "" },
			choices: [{ label: "A NVMe", detail: "M.2", event: { type: "next" } }],
		};
		expect(withWordsMarked(screen).body).toEqual([{ kind: "picture", lines: ["SATA"] }, list(["SATA*"])]);
		expect(withWordsMarked(screen).choices).toEqual(screen.choices);
	});
});

describe("one key away", () => {
	const screen = { ...of("The chipset."), choices: [{ label: "ECC", event: { type: "next" } as const }] };

	test("the mark is the key, which opens and closes; Esc and Enter close and answer nothing", () => {
		const star = { name: "text", text: "*" } as const;
		const opened = pressKey(screen, faceFor(screen), star, page);
		expect(opened).toMatchObject({ face: { wordsOpen: true }, event: null });
		for (const key of [star, { name: "escape" }, { name: "enter" }] as const)
			expect(pressKey(screen, opened.face, key, page)).toMatchObject({ face: { wordsOpen: false }, event: null });
		const help = pressKey(screen, opened.face, { name: "help" }, page).face;
		expect(help).toMatchObject({ helpOpen: true, wordsOpen: false });
		expect(pressKey(screen, help, star, page).face).toMatchObject({ helpOpen: false, wordsOpen: true });
	});

	test("what each marked word means stands there, in the order of the screen", () => {
		const face = { ...faceFor(screen), wordsOpen: true };
		const lines = arrange(screen, face, { columns: 80, rows: 24 }, (words) => words.length).text.lines;
		expect(lines[0]).toMatch(/^chipset/);
		expect(lines.join("\n")).toMatch(/chipset[\s\S]*\nECC\n/);
	});

	test("the footer names it where there is one", () => {
		const footer = (one: Screen) =>
			arrange(one, faceFor(one), { columns: 80, rows: 24 }, (words) => words.length).footer;
		expect(footer(screen).join()).toContain("* words");
		expect(footer({ ...screen, body: [], choices: [{ label: "x", event: { type: "next" } }] }).join()).not.toContain(
			"*",
		);
	});

	test("where a mark may be typed it is text, and no word is marked", () => {
		for (const kind of ["free", "page"] as const) {
			const typing: Screen = { ...screen, typing: { kind, words: "" } };
			expect(explainsWords(typing)).toBe(false);
			expect(withWordsMarked(typing)).toBe(typing);
			const { face } = pressKey(typing, faceFor(typing), { name: "text", text: "*" }, page);
			expect(face).toMatchObject({ wordsOpen: false, field: { text: "*" } });
			expect(lineMeaning(typing, "*").kind).toBe("event");
		}
	});

	test("line by line the words stay as they are, and the same sign explains them", () => {
		expect(screenText(screen, 78)).not.toContain("*");
		expect(promptText(screen, 200)).toContain("*: words explained");
		expect(lineMeaning(screen, " * ")).toEqual({ kind: "words" });
	});
});

test.each(scenarios.slice(0, 4))(
	"on every screen of $name each mark is explained, and every explained word is marked",
	({ state }) => {
		for (const place of everyPlace(demo, state)) {
			const screen = screenAt(demo, state, place);
			const shown = withWordsMarked({ ...screen, help: [], sources: [] });
			const marks =
				textsOf(shown)
					.join("\n")
					.match(/[\p{L}\d]\*/gu)?.length ?? 0;
			const before =
				textsOf({ ...screen, help: [], sources: [] })
					.join("\n")
					.match(/[\p{L}\d]\*/gu)?.length ?? 0;
			const headings = wordBlocks(screen).filter(({ kind }) => kind === "heading").length;
			expect(marks - before, JSON.stringify(place)).toBe(wordsMarked(screen).length);
			if (wordsMarked(screen).length > 0) expect(headings).toBe(wordsMarked(screen).length + 1);
		}
	},
);
