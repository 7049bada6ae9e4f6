import { describe, expect, test } from "vitest";
import { screenText } from "../../src/plain/screen-text.ts";
import { viewWalk } from "../../src/screens/walk-view.ts";
import { textSheet } from "../../src/sheet/text-sheet.ts";
import { update } from "../../src/walk/update.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import type { WalkState } from "../../src/walk/walk-state.ts";
import { demo, scenarios } from "../walk/walk-in-demo.ts";
import { screenAt } from "./screen-words.ts";

const wordsIn = (text: string) => text.toLowerCase().match(/[\p{L}\p{N}][\p{L}\p{N}.,'/-]*/gu) ?? [];
const isIn = (whole: readonly string[], words: readonly string[]) =>
	` ${whole.join(" ")} `.includes(` ${words.join(" ")} `);

describe.each(scenarios)("the sheet of $name, read in the walk", ({ state }) => {
	const screen = screenAt(demo, state, { at: "sheet", page: "all" });

	test("says every sentence of the written one, and draws no picture line by line", () => {
		const shown = wordsIn(screenText(screen, 78));
		const sheet = viewWalk(demo, state).sheet();
		const pictures = new Set(
			[...(sheet.plan?.picture ?? []), ...(sheet.power?.picture ?? [])].map((line) => line.trim()),
		);
		const paragraphs = textSheet(sheet, 100_000)
			.split("\n")
			.filter((line) => wordsIn(line).length > 0 && !pictures.has(line.trim()));
		expect(paragraphs.filter((line) => !isIn(shown, wordsIn(line)))).toEqual([]);
		for (const line of pictures) if (/[|+#]{2}|\[.*\]/.test(line)) expect(screenText(screen, 78)).not.toContain(line);
	});
});

test("it is one choice away from the sheet, and the way back leads there", () => {
	const state = scenarios[0]?.state;
	if (!state) throw new Error("there is no person");
	const go = (from: WalkState, event: WalkEvent) => update(demo, from, event)[0];
	const sheet = go(state, { type: "sheet" });
	const choice = screenAt(demo, sheet).choices.find(({ label }) => label === "Read it here");
	if (!choice) throw new Error("there is no such choice");
	const [read, effects] = update(demo, sheet, choice.event);
	expect(effects).toEqual([]);
	expect(read.place).toEqual({ at: "sheet", page: "all" });
	expect(go(read, { type: "back" }).place).toEqual({ at: "sheet" });
	expect(go(read, { type: "text", text: "x.md" }).place).toEqual(read.place);
	expect(update(demo, read, { type: "text", text: "x.md" })[1]).toEqual([]);
});
