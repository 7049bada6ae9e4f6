import { judge } from "../../src/choose/judge.ts";
import { worthOfQuestion, worthsOfOpen } from "../../src/choose/next-question.ts";
import { possibleAnswers } from "../../src/choose/possible-answers.ts";
import { rankBoards } from "../../src/choose/ranked-boards.ts";
import { demoMarket } from "../../src/cli/demo-market.ts";
import { worthOfAsking } from "../../src/maths/information-value.ts";
import type { Answers, AnswerValue } from "../../src/parts/answers-file.ts";
import type { Market } from "../../src/parts/market.ts";
import { questionById } from "../../src/questions/all-questions.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { type Figure, printFigure } from "./figure.ts";
import { median, processorMs } from "./stop-watch.ts";

/** So many boards, and what all open questions together may take, in ms of processor time. */
const boardCount = 100;
const limitMs = 150;
const leastOpen = 40;
/** Rounds in which the runtime compiles what is worth its time, and those that count. */
const warmUps = 3;
const rounds = 5;
/** Every so many of the questions is valued the plain way, which takes a long time. */
const referenceStep = 8;

const demo = demoMarket();
const [firstCase] = demo.parts.case;
if (!firstCase) throw new Error("no case");
// A case of which little is known has questions of its own.
const { frontOpen: _open, frontPlugs: _plugs, ...littleKnown } = firstCase;
const market: Market = {
	...demo,
	parts: {
		...demo.parts,
		board: demo.parts.board.slice(0, boardCount),
		case: [littleKnown, ...demo.parts.case.slice(1)],
	},
};
if (market.parts.board.length !== boardCount) throw new Error(`only ${market.parts.board.length} boards`);
const context = { market, asOf: "2026-11-28" };

const answered = (value: AnswerValue) => ({ status: "answered", value }) as const;
/** Where a walk stands that has told little but its processor; with another one nothing planned is known yet. */
const begun = (processor: string): Answers => ({
	"fit/processor": answered({ part: processor }),
	"fit/case": answered({ part: littleKnown.id }),
});
const [one = "", other = ""] = ["tallowfinch-deckhand", "tallowfinch-muralist"];

const first = msFor(() => worthsOfOpen(begun(one), context));
for (let round = 0; round < warmUps; round++) {
	worthsOfOpen(begun(one), context);
	worthsOfOpen(begun(other), context);
}
const open = worthsOfOpen(begun(one), context);
if (open.length < leastOpen) throw new Error(`only ${open.length} open questions`);
const warm = median(Array.from({ length: rounds }, () => msFor(() => worthsOfOpen(begun(one), context))));
const unseen = median(
	Array.from({ length: rounds }, () => {
		const fresh: Market = { ...market, parts: { ...market.parts, board: structuredClone(market.parts.board) } };
		return msFor(() => worthsOfOpen(begun(other), { ...context, market: fresh }));
	}),
);
const start = median(Array.from({ length: rounds }, () => msFor(() => worthsOfOpen({}, context))));

const sample = open.filter((_, index) => index % referenceStep === 0).map(({ questionId }) => questionId);
const answers = begun(one);
const quick = median(Array.from({ length: rounds }, () => msFor(() => sample.map(fast))));
let worstGap = 0;
const reference = msFor(() => {
	for (const id of sample) worstGap = Math.max(worstGap, Math.abs((fast(id) ?? 0) - plain(id)));
	return sample;
});

const words = `worth of ${open.length} open questions at ${boardCount} boards`;
print(`${words}, compiled, the walk's last answer in mind`, warm, limitMs);
print(`${words}, compiled, boards never seen before`, unseen, null);
print(`${words}, first in the process`, first, null);
print(`worth of all questions at ${boardCount} boards, compiled, nothing answered yet`, start, null);
print(`worth of ${sample.length} of the questions`, quick, null, {
	reference,
	referenceWork: "judge and score the whole market for every answer, nothing shared",
	greatestGapInPoints: worstGap,
});

function fast(id: string): number | null | undefined {
	return worthOfQuestion(id, { ...answers }, context)?.worth;
}

/** The same by the plain way: every answer folded, every board judged and scored, nothing remembered. */
function plain(id: string): number {
	const question = questionById(id);
	if (!question) throw new Error(id);
	const now = judge(market, foldAnswers(answers, context));
	const left = now.boards.filter(({ verdict }) => verdict !== "does-not-fit").map(({ board }) => board);
	const possible = possibleAnswers(question, context, now.build.facts, left);
	const rows = possible.map(({ value }) => {
		const fresh: Market = {
			...market,
			parts: { ...market.parts, board: market.parts.board.map((board) => ({ ...board })) },
		};
		const judgement = judge(fresh, foldAnswers({ ...answers, [id]: answered(value) }, context));
		const expected = new Map(rankBoards(judgement).map((ranked) => [ranked.judged.board.id, ranked.expected]));
		return fresh.parts.board.map((board) => expected.get(board.id) ?? 0);
	});
	return worthOfAsking(
		possible.map(({ chance }) => chance),
		rows,
	).worth;
}

function msFor(work: () => readonly unknown[]): number {
	const begin = processorMs();
	if (work().length === 0) throw new Error("it did not do what was to be timed");
	return processorMs() - begin;
}

function print(name: string, value: number, limit: number | null, more: Partial<Figure> = {}): void {
	printFigure({ name, value, unit: "ms of processor time", ...more, limit });
}
