import { describe, expect, test } from "vitest";
import { judge } from "../../src/choose/judge.ts";
import { type PriceLine, priceLine } from "../../src/choose/price-line.ts";
import { rankBoards } from "../../src/choose/ranked-boards.ts";
import type { Score } from "../../src/choose/score.ts";
import { allCriteria } from "../../src/criteria/all-criteria.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { priceLineInShort, priceLineWords } from "../../src/sheet/price-line-words.ts";
import { scenarios, wholeDemo } from "../choose/demo.ts";
import { eur, lineOf } from "../choose/made-up-lines.ts";

const [one, other] = allCriteria.map(({ id, name }) => ({ id, name }));
if (!one || !other) throw new Error("there are two criteria");

/** Points of two criteria that weigh the same, with what is measured. */
const partsOf = (first: number, second: number): Score["parts"] =>
	[one, other].map(({ id }, index) => {
		const value = index === 0 ? first : second;
		return {
			criterionId: id,
			weight: 0.5,
			value: { low: value, mid: value, high: value },
			byWorld: [],
			measure: { low: value, high: value, missing: [] },
		};
	});

const sectionOf = (line: PriceLine, heading: RegExp) =>
	priceLineWords(line).find(({ heading: words }) => heading.test(words))?.lines ?? [];

describe("what more money buys, in words", () => {
	const line = lineOf([
		{ name: "Cheap", euros: 100, points: 40, parts: partsOf(0.2, 0.6) },
		{ name: "Middling", euros: 132, points: 50, parts: partsOf(0.6, 0.4) },
		{ name: "Vague", euros: 190, points: [20, 60] },
		{ name: "Same", euros: 150, points: 51 },
	]);

	test("in short: where the line starts and ends, and how many lie off it", () => {
		expect(priceLineInShort(line)).toEqual([
			"On the line each further point costs least. It starts at Cheap, EUR 100.00, 40 points. It ends at Middling, EUR 132.00, 50 points.",
			"2 more boards lie off the line.",
		]);
		expect(sectionOf(line, /^In short$/).slice(0, 2)).toEqual(priceLineInShort(line));
	});

	test("a step: its price, what a point costs and where to stop", () => {
		expect(sectionOf(line, /^For EUR 32\.00 more: from Cheap to Middling$/)[0]).toBe(
			"It buys 10 points. Each further point costs about EUR 3.20. If a point is worth less to you, stop at Cheap.",
		);
	});

	test("what gets better comes first, and what gets worse is never kept back", () => {
		const [, better, worse, ...more] = sectionOf(line, /^For EUR/);
		expect(better?.startsWith(`Better: ${one.name}.`)).toBe(true);
		expect(worse?.startsWith(`Not as good: ${other.name}.`)).toBe(true);
		expect(more).toEqual([]);
	});

	test("who beats whom; a difference of less than two points is none, a range is told as one", () => {
		expect(sectionOf(line, /passed over/)).toEqual([
			"Middling costs EUR 18.00 less than Same and has about as many points.",
			"Middling costs EUR 58.00 less than Vague and has 10 points more, as far as is known.",
		]);
	});

	test("hardly dearer, the same price, and as many points are told as such", () => {
		const words = (euros: number, points: number) =>
			sectionOf(
				lineOf([
					{ name: "A", euros: 100, points: 50 },
					{ name: "B", euros, points },
				]),
				/passed over/,
			);
		expect(words(101, 60)).toEqual(["B costs only EUR 1.00 more than A and has 10 points more."]);
		expect(words(100, 60)).toEqual(["B costs the same as A and has 10 points more."]);
		expect(words(100, 50)).toEqual(["A costs the same as B and has as many points."]);
		expect(words(101, 50)).toEqual(["A costs EUR 1.00 less than B and has as many points."]);
	});

	test("what a price is made of, and what it leaves out", () => {
		const build = { wishes: { "features/wireless": "must", "features/rear-usb-c": "dont-mind" } } as const;
		const wired = {
			wireless: { builtIn: false },
			cardSlots: [{ name: "SLOT_1", bus: "PCI Express" as const, sizeLanes: 16, lanes: 16, row: 1 }],
		};
		const boards = [
			{ name: "Wired", euros: 100, points: 90, facts: wired },
			{
				name: "Wireless",
				points: 50,
				facts: { wireless: { builtIn: true }, offers: [{ price: eur(70), condition: "used" as const }] },
			},
		];
		const card = { id: "aerial", name: "Aerial", use: "wireless network" as const, price: eur(30) };
		expect(sectionOf(lineOf(boards, { build, cards: [card] }), /^On the line/)).toEqual([
			"Wireless: EUR 70.00, 50 points. The board is to be had used at this price.",
			"Wired: EUR 130.00, 90 points. That is EUR 100.00 for the board and EUR 30.00 for an adapter for wireless (Aerial).",
		]);
		const unpriced = lineOf(boards, { build });
		expect(sectionOf(unpriced, /^In short/)[0]).toBe(
			"Wireless stands alone: of the boards compared, no dearer one has more points.",
		);
		expect(sectionOf(unpriced, /^Not settled/)).toEqual([
			"Wired: from EUR 100.00, 90 points. To be bought besides, and not counted: an adapter for wireless.",
		]);
	});

	test("boards without a price, or with one in another currency, are named", () => {
		const left = lineOf([
			{ name: "Priced", euros: 100, points: 50 },
			{ name: "Also priced", euros: 110, points: 60 },
			{ name: "Silent", points: 50 },
			{ name: "Abroad", points: 50, facts: { price: { minor: 9_900, currency: "GBP" } } },
		]);
		expect(sectionOf(left, /^Not on this page/)).toEqual([
			"No price known: Silent.",
			"A price in another currency, which is not converted here: Abroad (GBP 99.00).",
		]);
		expect(priceLineWords(lineOf([{ name: "Silent", points: 50 }]))).toEqual([
			{
				heading: "In short",
				lines: ["No price is known of any board left. Note some prices, and this page shows what more money buys."],
			},
		]);
		expect(priceLineWords(lineOf([]))[0]?.lines).toEqual(["No boards are left, so there is no price to compare."]);
	});

	test("a board that may not fit says so", () => {
		const open = lineOf([
			{ name: "Sure", euros: 150, points: 60 },
			{ name: "Perhaps", euros: 100, points: 80, mayFit: true },
		]);
		expect(sectionOf(open, /^Not settled/)).toEqual([
			"Perhaps: EUR 100.00, 80 points. Whether it fits is not known yet.",
		]);
	});
});

describe.each(scenarios)("for $name", ({ file }) => {
	const judgement = judge(wholeDemo, foldAnswers(file.answers, { market: wholeDemo, asOf: "2026-11-24" }));
	const line = priceLine(
		judgement,
		rankBoards(judgement).map(({ judged, score }) => ({ boardId: judged.board.id, score })),
	);
	const told = priceLineWords(line).flatMap(({ lines }) => lines);

	test("the sums that are told add up", () => {
		for (const { from, to } of line.steps) {
			const words = priceLineWords(line).find(({ heading }) =>
				heading.endsWith(`more: from ${from.board.name} to ${to.board.name}`),
			);
			const [, more] = /^For EUR ([\d.]+) more/.exec(words?.heading ?? "") ?? [];
			const [, points, rate] = /^It buys (\d+) points?\. .*about EUR ([\d.]+)\./.exec(words?.lines[0] ?? "") ?? [];
			expect(Number(points)).toBe(Math.round(to.score.mid) - Math.round(from.score.mid));
			expect(Number(more)).toBeCloseTo((to.minor - from.minor) / 100, 9);
			// Two digits are told.
			const exact = Number(more) / Number(points);
			expect(Math.abs(Number(rate) - exact) / exact).toBeLessThan(0.06);
		}
	});

	test("plain sentences: no figure but whole points, no word that is not there", () => {
		for (const words of told) {
			expect(words).not.toMatch(/undefined|NaN|\[object|null| {2}|\.\.$/);
			expect(words).not.toMatch(/\d+\.\d+ points?/);
			expect(words).toMatch(/[.]$/);
		}
	});
});
