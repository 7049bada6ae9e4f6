import workbench from "../../data/scenarios/workbench.json" with { type: "json" };
import { judge } from "../../src/choose/judge.ts";
import type { Answers } from "../../src/parts/answers-file.ts";
import type { Market } from "../../src/parts/market.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { allRules } from "../../src/rules/all-rules.ts";
import { printFigure } from "./figure.ts";
import { marketOfMany } from "./many-boards.ts";
import { median, processorMs } from "./stop-watch.ts";

/** So many boards are to go through all rules within the limit, in s of processor time (own convention). */
const boardCount = 10_000;
const limitSeconds = 1;
/** Of so many boards every finding of every rule is asked for besides; of most boards nobody ever asks. */
const wholeCount = 1000;
/** Rounds behind the first, in which the runtime has compiled what is worth its time; each takes as long. */
const laterRounds = 1;

const market = marketOfMany(boardCount);
const answers = workbench.answers as unknown as Answers;
const build = foldAnswers(answers, { market, asOf: workbench.asOf });
const rules = allRules.filter(({ scope }) => scope === "board").length;

const first = secondsToJudge(market);
const later = Array.from({ length: laterRounds }, () => secondsToJudge(structuredClone(market)));
const reference = median(Array.from({ length: laterRounds }, secondsOfJson));

const few: Market = {
	...market,
	parts: { ...market.parts, board: structuredClone(market.parts.board.slice(0, wholeCount)) },
};
const whole = secondsFor(() => judge(few, build).boards.every(({ findings }) => findings.length === rules));

const verdicts = `verdicts of ${boardCount} boards under all ${rules} rules for one person, as far as each needs them`;
print(`${verdicts}, first in the process`, first, limitSeconds);
print(`${verdicts}, compiled, nothing remembered`, median(later), null);
print(`every finding of all ${rules} rules on ${wholeCount} boards`, whole, null);

function secondsFor(work: () => boolean): number {
	const start = processorMs();
	if (!work()) throw new Error("it did not do what was to be timed");
	return (processorMs() - start) / 1000;
}

function secondsToJudge(given: Market): number {
	const start = processorMs();
	const { counts } = judge(given, build);
	const seconds = (processorMs() - start) / 1000;
	// Were all out by the first rule, or none, the boards would not be varied enough to say anything.
	if (counts.all !== boardCount || counts.doesNotFit === 0 || counts.doesNotFit === boardCount)
		throw new Error(`${counts.doesNotFit} of ${counts.all} boards do not fit`);
	return seconds;
}

/** Writing and reading the same boards as JSON. */
function secondsOfJson(): number {
	const start = processorMs();
	const read = JSON.parse(JSON.stringify(market)) as Market;
	const seconds = (processorMs() - start) / 1000;
	if (read.parts.board.length !== boardCount) throw new Error("the market did not come back whole");
	return seconds;
}

function print(name: string, value: number, limit: number | null): void {
	const referenceWork = "JSON.stringify and JSON.parse of the same market";
	printFigure({ name, value, unit: "s of processor time", reference, referenceWork, ratio: value / reference, limit });
}
