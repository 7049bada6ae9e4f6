import { describe, expect, test } from "vitest";
import { advise } from "../../src/choose/advise.ts";
import { type Judgement, judge } from "../../src/choose/judge.ts";
import { type LikeDirection, likeDirections, likeThisBut } from "../../src/choose/like-this-but.ts";
import { wholeParts } from "../../src/maths/whole-parts.ts";
import type { Board } from "../../src/parts/board.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { likeTitle, likeWords } from "../../src/sheet/like-words.ts";
import { demo, demoContext, scenarios } from "../choose/demo.ts";
import { buildOf, goodBoard, goodBuild, smallMarket } from "../choose/small-market.ts";

const price = (euros: number, currency = "EUR") => ({ minor: euros * 100, currency });
const rear = (count: number): Partial<Board> => ({ rearUsb: [{ plug: "A", count }] });

function wordsIn(judgement: Judgement, boardId: string, direction: LikeDirection) {
	const result = likeThisBut(judgement, advise(judgement, {}), boardId, direction);
	if (!result) throw new Error(`${boardId} is there`);
	const sections = likeWords(result, judgement);
	const under = (wanted: string) => sections.find(({ heading }) => heading === wanted)?.lines ?? [];
	return { result, sections, under };
}

/** Of board-1 and others like it, in a build where nothing is weighed but what the boards are given. */
function like(direction: LikeDirection, ...boards: readonly Partial<Board>[]) {
	const build = buildOf({ ...goodBuild, case: { boardForms: ["ATX", "microATX"], frontPlugs: [] } });
	const market = smallMarket(boards.map((facts) => ({ ...goodBoard, ...facts })));
	return wordsIn(judge(market, build), "board-1", direction);
}

describe("like this one but", () => {
	test("what it gains, and what one gives up, in one sentence", () => {
		const { under } = like("cheaper", { price: price(150), ...rear(6) }, { price: price(120), ...rear(4) });
		expect(under("In short")).toEqual(["1 of the other boards left is cheaper."]);
		expect(under("Board 2")[0]).toMatch(/^It is EUR 30\.00 cheaper; you give up 2 USB sockets at the back( and |\.)/);
	});

	test("what comes with it as well", () => {
		const { under } = like("more-ports", { price: price(150), ...rear(6) }, { price: price(120), ...rear(7) });
		expect(under("Board 2").slice(0, 2)).toEqual([
			"It has 1 more USB socket at the back; you give up nothing that is compared here.",
			expect.stringMatching(/^You also get a price EUR 30\.00 lower/),
		]);
		const dearer = like("more-ports", { price: price(120), ...rear(6) }, { price: price(150), ...rear(8) });
		expect(dearer.under("Board 2")[0]).toMatch(/^It has 2 more USB sockets at the back; you give up EUR 30\.00/);
	});

	test("headers inside, between boards with as many sockets at the back", () => {
		const headers = (usb2: number) => ({ headers: { ...goodBoard.headers, usb2, usb5: 0, typeC: [] } });
		const { under } = like("more-ports", headers(1), headers(3));
		expect(under("Board 2")[0]).toMatch(/^It has 2 more USB headers inside; /);
	});

	test("the sides, or the form where they are not known", () => {
		const sides = (widthMm: number, depthMm: number) => ({ widthMm, depthMm });
		expect(like("smaller", sides(244, 305), sides(244, 244)).under("Board 2")[0]).toMatch(
			/^It is smaller: 244 x 244 mm instead of 305 x 244 mm; /,
		);
		expect(like("smaller", {}, { form: "microATX" }).under("Board 2")[0]).toMatch(
			/^It is of a smaller form: microATX instead of ATX; /,
		);
	});

	test("boards of which nobody can tell are counted, with why", () => {
		const some = like("cheaper", {}, { price: price(20, "USD") }, { price: undefined } as unknown as Partial<Board>);
		expect(some.under("In short")).toEqual([
			"None of the other boards left is cheaper.",
			"2 boards were left out: the price is not known, or is in other money.",
		]);
		const one = like("more-ports", {}, { rearUsb: undefined } as unknown as Partial<Board>);
		expect(one.under("In short").at(-1)).toBe("1 board was left out: not enough is known of it.");
	});

	test("a board of which it is not known itself can be held against nothing", () => {
		const { sections } = like("cheaper", { price: undefined } as unknown as Partial<Board>, {});
		expect(sections).toEqual([
			{
				heading: "In short",
				lines: ["Of Board 1 it is not known what it costs, so nothing can be held against it."],
			},
		]);
	});

	test("a board that fell out has no points compared, and the others tell their own", () => {
		const { under } = like("cheaper", { price: price(500) }, { price: price(120) });
		expect(under("In short")[0]).toBe("Board 1 itself does not fit your answers, so no points are compared.");
		expect(under("Board 2").join(" ")).toMatch(/It has \d+ points? of 100\./);
	});

	test("where none is left, the nearest that fell out says what took it out", () => {
		const { under } = like(
			"cheaper",
			{ price: price(100) },
			{ price: price(90), form: "E-ATX" },
			{ price: price(120) },
		);
		expect(under("In short")).toContain("None of the other boards left is cheaper.");
		const lines = under("The nearest of those taken out");
		expect(lines[0]).toBe("Board 2 is EUR 10.00 cheaper.");
		expect(lines[1]).toBe("It was taken out by: board size.");
		expect(lines[2]).toContain("E-ATX");
	});

	test("a board that may fit says what it hangs on", () => {
		const { under } = like("cheaper", {}, { price: price(90), socket: undefined } as unknown as Partial<Board>);
		expect(under("Board 2").at(-1)).toMatch(/^Can't tell/);
	});

	test("the titles", () => {
		expect(likeDirections.map((direction) => likeTitle("X", direction))).toEqual([
			"Like X, but cheaper",
			"Like X, but cooler",
			"Like X, but smaller",
			"Like X, but with more USB sockets",
		]);
	});
});

test("for each person and each board: sentences are short, and the points of the criteria add up to those given up", () => {
	let compared = 0;
	for (const { file } of scenarios) {
		const judgement = judge(demo, foldAnswers(file.answers, demoContext));
		for (const { board } of judgement.boards)
			for (const direction of likeDirections) {
				const { result, sections } = wordsIn(judgement, board.id, direction);
				for (const line of sections.flatMap(({ lines }) => lines)) {
					expect(line).not.toMatch(/undefined|NaN|null|Infinity|best board|%/);
					if (line.startsWith("Points: ")) continue;
					// What a rule says is that rule's own.
					if (sections.at(-1)?.lines[2] === line) continue;
					for (const sentence of line.split(/(?<=[.!?]) /))
						expect(sentence.split(/\s+/).length, sentence).toBeLessThanOrEqual(25);
				}
				for (const { boardId, byCriterion } of result.found) {
					const name = judgement.boards.find((one) => one.board.id === boardId)?.board.name;
					const lines = sections.find(({ heading }) => heading === name)?.lines ?? [];
					const told = lines.find((line) => line.startsWith("Points: ")) ?? "";
					const sum = [...told.matchAll(/(\d+) (fewer|more) for/g)].reduce(
						(total, [, points, way]) => total + (way === "more" ? 1 : -1) * Number(points),
						0,
					);
					const whole = wholeParts(byCriterion.map(({ points }) => points)).reduce((total, one) => total + one, 0);
					expect(sum).toBe(whole);
					if (whole !== 0)
						expect(lines.join(" ")).toMatch(
							new RegExp(`you ${whole < 0 ? "give up" : "also get"}.*\\b${Math.abs(whole)} points?\\b`, "i"),
						);
					compared += 1;
				}
			}
	}
	expect(compared).toBeGreaterThan(50);
});
