import { describe, expect, test } from "vitest";
import { type TrialValue, trialsOf, withFact } from "../../src/choose/fact-trials.ts";
import { judge } from "../../src/choose/judge.ts";
import { type OvertakesIf, overtakesIf, type Turning } from "../../src/choose/overtakes-if.ts";
import { type Ranked, rankBoards } from "../../src/choose/ranked-boards.ts";
import type { Board } from "../../src/parts/board.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import type { GivenBuild } from "../rules/rule-subject.ts";
import { scenarios, wholeDemo } from "./demo.ts";
import { buildOf, countingOnly, goodBoard, goodBuild, smallMarket } from "./small-market.ts";

const { priceCap: _, ...uncapped } = goodBuild;
const counting = (...ids: readonly string[]): GivenBuild => ({
	...uncapped,
	importance: { ...countingOnly(...ids), ...Object.fromEntries(ids.map((id) => [id, "a-lot" as const])) },
});
const quietFans: Partial<Board> = {
	headers: { fans: [{ name: "FAN_1", use: "case", control: ["4-pin PWM", "3-pin voltage"] }] },
};

function turnsOf(boards: readonly [Partial<Board>, Partial<Board>], build: GivenBuild): readonly OvertakesIf[] {
	const judgement = judge(smallMarket(boards), buildOf(build));
	const ranked = rankBoards(judgement);
	const of = (id: string) => ranked.find(({ judged }) => judged.board.id === id) as Ranked;
	return overtakesIf(judgement, of("board-1"), of("board-2"));
}

describe("values that a missing fact may turn out to have", () => {
	const market = smallMarket([
		{ ...goodBoard, warrantyYears: 4 },
		{ ...goodBoard, warrantyYears: 10 },
	]);

	test("both answers, all choices, the usual numbers and those seen", () => {
		expect(trialsOf(market.parts.board, "chipsetFan")).toEqual([false, true]);
		expect(trialsOf(market.parts.board, "recovery.faultDisplay")).toEqual(["none", "lights", "digits"]);
		expect(trialsOf(market.parts.board, "warrantyYears")).toEqual([2, 3, 4, 5, 10]);
	});

	test("none for lists and for facts that are none", () => {
		expect(trialsOf(market.parts.board, "rearUsb")).toEqual([]);
		expect(trialsOf(market.parts.board, "name")).toEqual([]);
		expect(trialsOf(market.parts.board, "no.such.fact")).toEqual([]);
	});

	test("at most twelve", () => {
		const many = smallMarket(Array.from({ length: 40 }, (_, index) => ({ ...goodBoard, warrantyYears: index })));
		expect(trialsOf(many.parts.board, "warrantyYears").length).toBeLessThanOrEqual(12);
	});

	test("a fact is set at its path, and nothing else changes", () => {
		const board: Board = { id: "b", name: "B", recovery: { resetAtBack: true } };
		expect(withFact(board, "recovery.faultDisplay", "digits")).toEqual({
			...board,
			recovery: { resetAtBack: true, faultDisplay: "digits" },
		});
		expect(withFact(board, "powerDelivery.stageRatingA", 50)).toEqual({
			...board,
			powerDelivery: { stageRatingA: 50 },
		});
		expect(board).toEqual({ id: "b", name: "B", recovery: { resetAtBack: true } });
	});
});

describe("what would change places", () => {
	test("a board without the fact passes only with one answer", () => {
		const { chipsetFan: __, ...silent } = { ...goodBoard, ...quietFans };
		// With a fan of its own it is worth nothing; half a noisy thing leaves the other 0.85.
		const half: Partial<Board> = {
			...goodBoard,
			chipsetFan: false,
			headers: { fans: [{ name: "FAN_1", use: "case", control: ["4-pin PWM"] }] },
		};
		expect(turnsOf([silent, half], counting("quiet"))).toEqual([
			{
				boardId: "board-1",
				criterionId: "quiet",
				path: "board.chipsetFan",
				passes: true,
				turn: { kind: "one of", values: [false] },
			},
		]);
	});

	test("and falls behind with the other, where it is ahead now", () => {
		const { chipsetFan: __, ...silent } = { ...goodBoard, ...quietFans };
		const noisy: Partial<Board> = { ...goodBoard, ...quietFans, chipsetFan: true };
		const [turn] = turnsOf([silent, noisy], counting("quiet"));
		// Level is not behind: with a fan both are worth the same.
		expect(turn).toBeUndefined();
	});

	test("nothing is said where no value would", () => {
		const { chipsetFan: __, ...silent } = { ...goodBoard, ...quietFans };
		expect(turnsOf([silent, { ...goodBoard, ...quietFans, chipsetFan: false }], counting("quiet"))).toEqual([]);
	});
});

describe("the invented people", () => {
	const holds = (turn: Turning, value: TrialValue) =>
		turn.kind === "one of"
			? turn.values.includes(value)
			: typeof value === "number" && (turn.kind === "at least" ? value >= turn.value : value <= turn.value);

	test("with each value tried the board really stands where it is said to", () => {
		let told = 0;
		// Every other page leaves out one fact that counts.
		const board = wholeDemo.parts.board.map(
			({ warrantyYears, ...rest }, index): Board =>
				index % 2 === 1 && warrantyYears !== undefined ? { ...rest, warrantyYears } : rest,
		);
		const silent = { ...wholeDemo, parts: { ...wholeDemo.parts, board } };
		for (const { file } of scenarios.filter(({ name }) => name === "quiet-desk.json")) {
			const judgement = judge(silent, foldAnswers(file.answers, { market: silent, asOf: file.asOf }));
			const left = judgement.boards.filter(({ verdict }) => verdict !== "does-not-fit").map((judged) => judged.board);
			const ranked = rankBoards(judgement).slice(0, 8);
			const pairs = ranked.flatMap((one, index) => ranked.slice(0, index).map((first) => ({ one, first })));
			for (const { one, first } of pairs)
				for (const { path, passes, turn } of overtakesIf(judgement, one, first)) {
					if (turn.kind !== "one of" && turn.measure) continue;
					const inside = path.replace(/^board\./, "");
					for (const value of trialsOf(left, inside)) {
						const changed = silent.parts.board.map((given) =>
							given.id === one.judged.board.id ? withFact(given, inside, value) : given,
						);
						const market = { ...silent, parts: { ...silent.parts, board: changed } };
						const again = rankBoards(judge(market, judgement.build));
						const now = again.find(({ judged }) => judged.board.id === one.judged.board.id);
						// A value may also take a board out; that is a rule's to tell.
						if (!now || now.judged.possibleWorlds.length < one.judged.possibleWorlds.length) continue;
						const ahead =
							now.expected - (again.find(({ judged }) => judged.board.id === first.judged.board.id)?.expected ?? 0);
						expect(passes ? ahead > 1e-9 : ahead < -1e-9, `${file.asOf} ${path} ${value}`).toBe(holds(turn, value));
						told++;
					}
				}
		}
		expect(told).toBeGreaterThan(0);
	});
});
