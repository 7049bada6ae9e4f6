import { describe, expect, test } from "vitest";
import { advise } from "../../src/choose/advise.ts";
import { type FindOut, findOut } from "../../src/choose/find-out.ts";
import { judge } from "../../src/choose/judge.ts";
import type { Answers } from "../../src/parts/answers-file.ts";
import type { Board } from "../../src/parts/board.ts";
import type { Build } from "../../src/parts/build.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { findOutWords } from "../../src/sheet/find-out-words.ts";
import type { GivenBuild } from "../rules/rule-subject.ts";
import { demo, notSure, scenarios } from "./demo.ts";
import { buildOf, countingOnly, goodBoard, goodBuild, smallMarket } from "./small-market.ts";

const quietFans: Partial<Board> = {
	headers: {
		fans: [
			{ name: "FAN_1", use: "processor" },
			{ name: "FAN_2", use: "case", control: ["4-pin PWM", "3-pin voltage"] },
		],
	},
};
const { priceCap: _, ...uncapped } = goodBuild;
const quietOnly: GivenBuild = { ...uncapped, importance: { ...countingOnly("quiet"), quiet: "a-lot" } };
const everything: Answers = Object.fromEntries(allQuestions.map(({ id }) => [id, { status: "answered", value: "x" }]));

function open(boards: readonly Partial<Board>[], build: Build, answers: Answers = everything): readonly FindOut[] {
	const judgement = judge(smallMarket(boards), build);
	return findOut(judgement, advise(judgement, answers), answers);
}
const named = ({ about }: FindOut) => (about.kind === "question" ? about.questionId : about.path);

describe("facts of boards", () => {
	test("one that decides whether a board fits comes first", () => {
		const { supportList: __, chipsetFan: ___, ...unlisted } = { ...goodBoard, ...quietFans };
		const list = open([{ ...goodBoard, ...quietFans, chipsetFan: true }, unlisted], buildOf(quietOnly));
		expect(list[0]).toMatchObject({ about: { kind: "board fact", boardId: "board-2" }, decides: ["board-2"] });
	});

	test("one that could turn the order says with which value, and what knowing it is worth", () => {
		// Dearer and worse is on no shortlist, so it is the cheaper one that is silent about its fan.
		const { chipsetFan: ___, ...silent } = { ...goodBoard, ...quietFans, price: { minor: 9000, currency: "EUR" } };
		const stubborn: Partial<Board> = {
			...goodBoard,
			chipsetFan: false,
			headers: {
				fans: [
					{ name: "FAN_1", use: "processor" },
					{ name: "FAN_2", use: "case", control: ["4-pin PWM"] },
				],
			},
		};
		const [fan] = open([stubborn, silent], buildOf(quietOnly)).filter((one) => named(one) === "board.chipsetFan");
		expect(fan).toMatchObject({
			about: { kind: "board fact", boardId: "board-2" },
			decides: [],
			overtakes: { passes: true, otherId: "board-1", turn: { kind: "one of", values: [false] } },
		});
		// A fan leaves 42.5 points, none 100, the other has 85: (100 - 85)^2 / (2 x 57.5).
		expect(fan?.worth).toBeCloseTo(1.957, 3);
		expect(fan && findOutWords(fan, (id) => id)?.changes).toBe(
			"It passes board-1 only if the answer is no. Knowing it is worth about 2 points.",
		);
	});

	test("nothing is listed where all is known", () => {
		expect(
			open([{ ...goodBoard, ...quietFans, chipsetFan: false }], buildOf(quietOnly)).filter(
				({ about }) => about.kind === "board fact",
			),
		).toEqual([]);
	});
});

describe("questions", () => {
	test("a part that is not sure decides for every board that hangs on it", () => {
		const [first] = open(
			[{ ...goodBoard, ...quietFans, chipsetFan: false }],
			buildOf({ ...quietOnly, cooler: "unknown" }),
			{
				...everything,
				"fit/cooler": notSure,
			},
		).filter(({ about }) => about.kind === "question");
		expect(first).toMatchObject({ about: { questionId: "fit/cooler" }, decides: ["board-1"] });
	});
});

describe("facts of the person's own parts", () => {
	test("what a rule of the build lacks is listed: whether a cooler is in the processor's box", () => {
		const build = buildOf({ ...quietOnly, cooler: "none" });
		expect(open([{ ...goodBoard, ...quietFans, chipsetFan: false }], build).map(named)).toContain(
			"processor.coolerInBox",
		);
	});
});

test.each(scenarios)("$name: nothing stands twice, all has words, and what decides comes first", ({ file }) => {
	const { answers, asOf } = file;
	const judgement = judge(demo, foldAnswers(answers, { market: demo, asOf }));
	const list = findOut(judgement, advise(judgement, answers), answers);
	const keys = list.map(({ about }) => JSON.stringify(about));
	expect(new Set(keys).size).toBe(keys.length);
	const decides = list.map((one) => one.decides.length > 0);
	expect(decides.lastIndexOf(true)).toBe(decides.filter(Boolean).length - 1);
	for (const one of list) {
		if (one.worth !== null) expect(one.worth).toBeGreaterThanOrEqual(0);
		expect(findOutWords(one, (id) => id)?.what).toBeTruthy();
	}
});
