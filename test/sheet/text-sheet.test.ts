import { expect, test } from "vitest";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { textSheet } from "../../src/sheet/text-sheet.ts";
import { scenarios } from "../walk/walk-in-demo.ts";
import { sheetOf } from "./sheet-of.ts";

const [quiet] = scenarios.filter(({ name }) => name === "quiet-desk").map(({ state }) => sheetOf(state));
if (!quiet?.plan) throw new Error("the quiet desk has no plan");
const { plan } = quiet;
const widest = Math.max(...plan.picture.map((line) => line.length));
const sheetWith = (picture: readonly string[]): Sheet => ({ ...quiet, plan: { ...plan, picture } });
const isDrawn = (text: string, picture: readonly string[]) => text.includes(`\n\n${picture.join("\n")}\n\n`);

test("the picture stands as it is where the page is as wide, and is left out where it is not", () => {
	expect(plan.picture.length).toBeGreaterThan(5);
	for (const width of [78, 60, widest]) expect(isDrawn(textSheet(quiet, width), plan.picture), `${width}`).toBe(true);
	for (const width of [widest - 1, 40]) {
		const text = textSheet(quiet, width);
		for (const line of plan.picture.filter((one) => /^[|+]/.test(one))) expect(text).not.toContain(line);
	}
});

test("its words are there whether it is drawn or not", () => {
	for (const width of [78, widest, widest - 1, 40]) {
		const flat = textSheet(quiet, width).replace(/\s+/g, " ");
		const words = plan.sections.flatMap(({ heading, lines }) => [heading, ...lines]);
		expect(words.length).toBeGreaterThan(5);
		expect(words.filter((said) => !flat.includes(said))).toEqual([]);
	}
});

test("spaces in a picture are kept, and one line too wide takes all of it out", () => {
	const picture = ["|  1   [==]     X16   Dart |", "|        (--)   M1    free |"];
	expect(isDrawn(textSheet(sheetWith(picture), 78), picture)).toBe(true);
	const wide = [...picture, "x".repeat(79)];
	const text = textSheet(sheetWith(wide), 78);
	for (const line of wide) expect(text).not.toContain(line);
	expect(text).toContain("The annex says in words what this picture shows.");
	expect(textSheet(sheetWith([]), 78)).not.toContain("this picture");
});
