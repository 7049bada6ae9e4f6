import workbench from "../../data/scenarios/workbench.json" with { type: "json" };
import { advise } from "../../src/choose/advise.ts";
import { isMeasured } from "../../src/choose/is-measured.ts";
import { judge } from "../../src/choose/judge.ts";
import type { Answers } from "../../src/parts/answers-file.ts";
import type { Board } from "../../src/parts/board.ts";
import type { Market } from "../../src/parts/market.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { allRules } from "../../src/rules/all-rules.ts";
import { printFigure } from "./figure.ts";
import { marketOfMany } from "./many-boards.ts";
import { heapMb, median, processorMs } from "./stop-watch.ts";

/** So many boards; how the time may grow with their number, and what the most of them may take. */
const boardCounts = [100, 1000, 10_000] as const;
const limits = { exponent: 1.2, seconds: 2, mb: 300 };
/** One board of so many is past the rules that need no plan; the others are stopped by one of them. */
const oneIn = 5;
/** As many boards as are varied until enough of them are past the quick rules. */
const drawn = 45_000;
const answers = workbench.answers as unknown as Answers;
const rounds = 3;

const whole = stated();
const figures = boardCounts.map((count) => {
	const market = (): Market => ({
		...whole,
		parts: { ...whole.parts, board: structuredClone(whole.parts.board.slice(0, count)) },
	});
	// The first goes through code that is not compiled yet, as in a program just started.
	const first = secondsToAdvise(market());
	const later = Array.from({ length: count < 10_000 ? rounds : 1 }, () => secondsToAdvise(market()).seconds);
	const reference = median(Array.from({ length: rounds }, () => secondsOfJson(market())));
	return { count, first, later: median(later), reference };
});
const referenceWork = "JSON.stringify and JSON.parse of the same boards";
for (const { count, first, later, reference } of figures) {
	const name = `advise on ${count} boards, one in ${oneIn} past the quick rules, one person`;
	const limit = count === 10_000 ? limits.seconds : null;
	printFigure({
		...{ name: `${name}: nothing remembered`, value: later, unit: "s of processor time" },
		...{ reference, referenceWork, ratio: later / reference, limit },
	});
	printFigure({
		...{ name: `${name}: memory it holds on to`, value: first.mb, unit: "MB" },
		limit: count === 10_000 ? limits.mb : null,
	});
}
const [, middle, most] = figures;
if (middle && most)
	printFigure({
		name: "advise: exponent of its time in the number of boards, from 1000 to 10000",
		value: exponent(middle.later, most.later, most.count / middle.count),
		unit: "exponent",
		reference: exponent(middle.reference, most.reference, most.count / middle.count),
		referenceWork,
		limit: limits.exponent,
	});

function exponent(few: number, many: number, times: number): number {
	return Math.log(many / few) / Math.log(times);
}

/** Boards in turn: one that is past the quick rules for this person, then those that are not. */
function stated(): Market {
	const market = marketOfMany(drawn);
	const build = foldAnswers(answers, { market, asOf: workbench.asOf });
	const quick = new Set(allRules.filter((rule) => !isMeasured(rule)).map(({ id }) => id));
	const [past, stopped]: [Board[], Board[]] = [[], []];
	for (const { board, stoppedBy } of judge(market, build).boards)
		(stoppedBy === null || !quick.has(stoppedBy) ? past : stopped).push(board);
	const most = boardCounts.at(-1) as number;
	if (past.length < most / oneIn) throw new Error(`only ${past.length} boards are past the quick rules`);
	const boards = Array.from({ length: most }, (_, at) =>
		at % oneIn === 0 ? (past[at / oneIn] as Board) : (stopped[at - Math.ceil(at / oneIn)] as Board),
	);
	return { ...market, parts: { ...market.parts, board: boards } };
}

function secondsToAdvise(market: Market): { readonly seconds: number; readonly mb: number } {
	const build = foldAnswers(answers, { market, asOf: workbench.asOf });
	const before = heapMb();
	const start = processorMs();
	const judgement = judge(market, build);
	const { shortlist, ranking } = advise(judgement, answers);
	const seconds = (processorMs() - start) / 1000;
	const mb = heapMb() - before;
	if (shortlist.length === 0 || ranking.length < market.parts.board.length / (2 * oneIn))
		throw new Error(`${shortlist.length} on the shortlist of ${ranking.length} boards left`);
	return { seconds, mb };
}

function secondsOfJson(market: Market): number {
	const start = processorMs();
	const read = JSON.parse(JSON.stringify(market.parts.board)) as readonly Board[];
	if (read.length !== market.parts.board.length) throw new Error("the boards did not come back");
	return (processorMs() - start) / 1000;
}
