import { describe, expect, test } from "vitest";
import { cautions } from "../../src/reference/cautions.ts";
import { benchPage } from "../../src/sheet/bench-page.ts";
import type { DocumentBlock } from "../../src/sheet/document-block.ts";
import { linesOf } from "../../src/sheet/fit-page.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { sheetDocument } from "../../src/sheet/sheet-document.ts";
import { firstSentence, shopPage } from "../../src/sheet/shop-page.ts";
import { scenarios } from "../walk/walk-in-demo.ts";
import { sheetOf } from "./sheet-of.ts";

const sheetFor = (name: string): Sheet => {
	const found = scenarios.find((one) => one.name === name);
	if (!found) throw new Error(`no scenario ${name}`);
	return sheetOf(found.state);
};
const quiet = sheetFor("quiet-desk");
const headings = (blocks: readonly DocumentBlock[]) =>
	blocks.flatMap((block) => (block.kind === "page" || block.kind === "section" ? [block.text] : []));
const words = (blocks: readonly DocumentBlock[]) =>
	blocks
		.flatMap((block) => {
			if (block.kind === "picture") return [];
			if (block.kind === "table") return block.rows.flat();
			return block.kind === "item" ? [block.label ?? "", block.text, block.why ?? ""] : [block.text];
		})
		.join("\n");

describe("the page for the shop", () => {
	test("tells for whom, in short, what to check, what it must have, and the shortlist, in this order", () => {
		expect(headings(shopPage(quiet))).toEqual([
			"At the shop",
			"In short",
			"Before you pay",
			"The board must have",
			"Wished for; no board is taken out for it",
			"Shortlist",
		]);
		const said = words(shopPage(quiet));
		for (const { label, text } of quiet.mustHave) {
			expect(said).toContain(label);
			expect(said).toContain(text);
		}
		for (const text of quiet.beforeYouPay) expect(said).toContain(text);
	});

	test("tells of each board its role, name, price, whole points with their range, and what it makes one buy", () => {
		const forced = ["With it you also buy a riser cable (EUR 20.00)."];
		const [first, ...others] = quiet.shortlist;
		if (!first) throw new Error("no board");
		const said = words(shopPage({ ...quiet, shortlist: [{ ...first, forced }, ...others] }));
		const { low, mid, high } = first.score;
		expect(said).toContain(first.roleWords);
		expect(said).toContain(`${first.name} (invented), ${first.priceWords}, ${mid} points`);
		if (low < high) expect(said).toContain(`(${low} to ${high})`);
		expect(said).toContain(forced[0]);
	});

	test("where there is more than one sheet of paper holds, it tells less, and the annex tells all", () => {
		const many = Array.from({ length: 40 }, (_, index) => ({
			ruleId: "fit/socket",
			label: `Demand ${index}`,
			text: `What is asked, in its own words, for the nth time: ${index}.`,
			why: `The first reason for ${index}. And a second sentence.`,
		}));
		const brief: Sheet = { ...quiet, mustHave: many.slice(0, 3), shortlist: quiet.shortlist.slice(0, 1) };
		const long: Sheet = { ...brief, niceToHave: many };
		const [few, full] = [words(shopPage(long)), words(shopPage({ ...brief, niceToHave: many.slice(0, 2) }))];
		expect(full).toContain(many[1]?.text);
		expect(few).not.toContain(many[9]?.text);
		expect(few).toContain("Demand 0; Demand 1; ");
		const all = words(sheetDocument(long));
		for (const { text, why } of many) {
			expect(all).toContain(text);
			expect(all).toContain(why);
		}
		// The name of every demand that must be met stays, however many there are.
		const musts = words(shopPage({ ...quiet, mustHave: many }));
		for (const { label, text } of many) expect(musts).toContain(`${label}\n${text}`);
	});

	test("counts the faults of one's own parts that it leaves to the annex", () => {
		const fault = (index: number) => ({
			text: `Fault ${index} of two parts that do not go together, in a sentence of the usual length.`,
			isStopped: true,
			advice: "Change one of them. Nobody can cure this.",
		});
		const broken: Sheet = { ...quiet, partsDisagree: Array.from({ length: 12 }, (_, index) => fault(index)) };
		const page = words(shopPage(broken));
		const shown = broken.partsDisagree.filter(({ text }) => page.includes(text)).length;
		expect(shown).toBeLessThan(12);
		expect(page).toContain(`${12 - shown} more of these: see the annex`);
		for (const { text } of broken.partsDisagree) expect(words(sheetDocument(broken))).toContain(text);
	});

	test.each([
		["One. Two.", "One."],
		["Up to 1.5 mm. More.", "Up to 1.5 mm."],
		["No stop", "No stop"],
		["Is it? Yes.", "Is it?"],
		["", ""],
	])("the first sentence of %j is %j", (text, first) => {
		expect(firstSentence(text)).toBe(first);
	});
});

describe("the page for the bench", () => {
	test("is a picture, the heat in a sentence, the steps in order, and care", () => {
		expect(headings(benchPage(quiet))).toEqual([
			"At the bench",
			`What plugs in where: ${quiet.plan?.boardName}`,
			"Building and first start, in this order",
			"With care",
		]);
		const said = words(benchPage(quiet));
		expect(said).toContain(quiet.shortlist[0]?.power);
		for (const { label, text } of quiet.steps) expect(said).toContain(`${label}\n${text}`);
	});

	test("says of each caution what can happen, in a step or below them", () => {
		const said = words(benchPage(quiet));
		const cores: Readonly<Record<string, string>> = {
			mains: "Never open a power supply",
			cables: "others can destroy drives",
			static: "Touch bare metal",
			contacts: "Touch no contacts",
			standoffs: "it can short the board",
			"dark-first-start": "Switch off at once if it smells, smokes, sparks or leaks",
			reset: "Reset the settings",
			update: "power must",
			cell: "button cell",
		};
		for (const { id } of cautions.filter((one) => one.id !== "lights"))
			expect(said, id).toContain(cores[id] ?? `no core for ${id}`);
	});

	test("without any board is steps and care alone", () => {
		const none: Sheet = { ...quiet, plan: null, power: null, shortlist: [] };
		expect(headings(benchPage(none))).toEqual(["At the bench", "Building and first start, in this order", "With care"]);
	});
});

test("lines are counted by their letters, and never none for something said", () => {
	const text = (letters: number): DocumentBlock => ({ kind: "paragraph", text: "x".repeat(letters) });
	expect(linesOf([])).toBe(0);
	expect(linesOf([text(1)])).toBe(1);
	expect(linesOf([text(88)])).toBe(1);
	expect(linesOf([text(89)])).toBe(2);
	expect(linesOf([text(89), text(1)])).toBe(3);
});
