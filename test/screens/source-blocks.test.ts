import stringWidth from "string-width";
import { describe, expect, test } from "vitest";
import { lineMeaning } from "../../src/plain/line-event.ts";
import { screenText } from "../../src/plain/screen-text.ts";
import { arrange } from "../../src/screens/arrange.ts";
import { faceFor, pressKey } from "../../src/screens/face.ts";
import { typeInto } from "../../src/screens/text-field.ts";
import { viewWalk } from "../../src/screens/walk-view.ts";
import { update } from "../../src/walk/update.ts";
import type { Place, WalkState } from "../../src/walk/walk-state.ts";
import { demo, quietAnswers, walkWith } from "../walk/walk-in-demo.ts";
import { blockTexts, screenAt } from "./screen-words.ts";

const state: WalkState = { ...walkWith(quietAnswers), showsSources: true };
const sourcesAt = (place: Place) => screenAt(demo, state, place).sources.flatMap(blockTexts).join("\n");
const [first] = viewWalk(demo, state).advice().shortlist;
const boardId = first?.boardId ?? "";

describe("numbers and sources", () => {
	test("stand on no screen unless they are wanted, and then on every one", () => {
		for (const at of ["start", "review", "shortlist", "menu", "sheet", "settings"] as const) {
			expect(screenAt(demo, { ...state, showsSources: false }, { at }).sources).toEqual([]);
			expect(sourcesAt({ at })).toMatch(/^Numbers and sources\n[\s\S]*Parts: .*\. Boards: \d+\. Day: 2026-11-24\.$/);
		}
	});

	test("of a question: its id, why, what it changes, and the rules that read it with their sources", () => {
		const words = sourcesAt({ at: "question", id: "fit/processor" });
		expect(words).toContain("Question\nfit/processor");
		expect(words).toMatch(/fit\/socket: .*Source: /);
		expect(words).toContain("Answered by\nthe builder");
		expect(sourcesAt({ at: "question", id: "features/rear-usb-c" })).toMatch(/features\/[\w-]*usb[\w-]*: /);
		// The importance of a criterion leads to that criterion, with its scale.
		expect(sourcesAt({ at: "question", id: "quality/stage-load" })).toMatch(/steady-power: .* is \d+ points\./);
	});

	test("of the shortlist: weights that add up to 100, and each board's points that add up to its score", () => {
		const words = sourcesAt({ at: "shortlist" });
		const weights = [...words.matchAll(/Weighs ([\d.]+):/g)].map(([, weight]) => Number(weight));
		expect(weights.length).toBeGreaterThan(3);
		expect(Math.abs(weights.reduce((sum, one) => sum + one, 0) - 100)).toBeLessThan(0.5);
		const own = sourcesAt({ at: "board", boardId });
		const [, score] = /Score ([\d.]+), from/.exec(own) ?? [];
		const points = [...own.matchAll(/^([\d.]+) of [\d.]+ for /gm)].map(([, some]) => Number(some));
		expect(Math.abs(points.reduce((sum, one) => sum + one, 0) - Number(score))).toBeLessThan(0.5);
	});

	test("of a board: each rule with the facts it read, how they are known, and its source", () => {
		const words = sourcesAt({ at: "board", boardId });
		expect(words).toMatch(/fit\/socket: fits\. board\.socket = .* \(stated\)\..* Source: /);
		expect(words).toMatch(/ \(assumed.*\)\./);
		expect(sourcesAt({ at: "board", boardId, page: "plan" })).toMatch(/plan\./);
		expect(sourcesAt({ at: "board", boardId, page: "power" })).toMatch(/power\./);
	});

	test("of what fell out: the rules with how many boards each took", () => {
		expect(sourcesAt({ at: "fell-out" })).toMatch(/\w+\/[\w-]+: \d+\. .* Source: /);
	});
});

describe("showing them", () => {
	const question = screenAt(demo, state, { at: "question", id: "about/budget" });

	test("one key does it anywhere, and what was typed stays; in the plain walk one word", () => {
		const before = { ...faceFor(question), field: typeInto(faceFor(question).field, "17") };
		const { face, event } = pressKey(question, before, { name: "sources" }, { textRows: 5, lastScroll: 0 });
		expect(event).toEqual({ type: "show-sources" });
		expect(face.field.text).toBe("17");
		expect(
			pressKey(question, { ...before, helpOpen: true }, { name: "sources" }, { textRows: 5, lastScroll: 0 }),
		).toMatchObject({
			face: { helpOpen: false },
			event: { type: "show-sources" },
		});
		expect(lineMeaning(question, " Sources ")).toEqual({ kind: "event", event: { type: "show-sources" } });
	});

	test("changes nothing else of the walk, and stays on from screen to screen", () => {
		const asked: WalkState = {
			...state,
			showsSources: false,
			place: { at: "question", id: "about/budget" },
			problem: "No.",
		};
		const [shown, effects] = update(demo, asked, { type: "show-sources" });
		expect([shown, effects]).toEqual([{ ...asked, showsSources: true }, []]);
		expect(update(demo, update(demo, shown, { type: "next" })[0], { type: "shortlist" })[0].showsSources).toBe(true);
		expect(update(demo, shown, { type: "show-sources" })[0].showsSources).toBe(false);
	});

	test("from the menu it leads back to where one was, to see them", () => {
		const [menu] = update(demo, { ...state, place: { at: "shortlist" } }, { type: "menu" });
		expect(update(demo, menu, { type: "show-sources" })[0]).toMatchObject({
			place: { at: "shortlist" },
			showsSources: false,
		});
	});

	test("beside the text where there is room, else below it; never both", () => {
		const screen = screenAt(demo, state, { at: "settings" });
		const lay = (columns: number, rows: number) => arrange(screen, faceFor(screen), { columns, rows }, stringWidth);
		const wide = lay(120, 40);
		expect(wide.side?.join("\n")).toContain("Numbers and sources");
		expect(wide.text.lines.join("\n")).not.toContain("Numbers and sources");
		const narrow = lay(60, 24);
		expect(narrow.side).toBeNull();
		expect(narrow.text.lines.join("\n")).toContain("Numbers and sources");
		// What is too long for the column stands below the text, where it can be read on.
		const board = screenAt(demo, state, { at: "board", boardId });
		const tall = arrange(board, { ...faceFor(board), scroll: 10_000 }, { columns: 120, rows: 40 }, stringWidth);
		expect(tall.text.lines.join("\n")).toContain("Parts: ");
		expect((tall.side ?? []).join("\n")).not.toContain("Numbers and sources");
	});

	test("in the plain walk they stand before the lines to pick", () => {
		const text = screenText(question, 78);
		expect(text.indexOf("Numbers and sources")).toBeGreaterThan(text.indexOf(question.title));
		expect(text).toContain("Question: about/budget");
	});
});
