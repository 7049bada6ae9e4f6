import workbench from "../../data/scenarios/workbench.json" with { type: "json" };
import { judge } from "../../src/choose/judge.ts";
import { demoMarket } from "../../src/cli/demo-market.ts";
import type { Answers } from "../../src/parts/answers-file.ts";
import { type Board, board as boardSchema } from "../../src/parts/board.ts";
import type { Market } from "../../src/parts/market.ts";
import { boardForms } from "../../src/parts/vocabulary.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { allRules } from "../../src/rules/all-rules.ts";
import { printFigure } from "./figure.ts";
import { median, processorMs } from "./stop-watch.ts";

/** So many boards are to go through all rules within the limit, in s of processor time (own convention). */
const boardCount = 10_000;
const limitSeconds = 1;
/** Of so many boards every finding of every rule is asked for besides; of most boards nobody ever asks. */
const wholeCount = 1000;
/** Rounds behind the first, in which the runtime has compiled what is worth its time; each takes as long. */
const laterRounds = 1;
/** How likely a varied board loses one fact more, up to the most (own convention): most lose two or three. */
const dropChance = 0.7;
const mostDropped = 12;
/** Facts without which a board is no board. */
const kept: ReadonlySet<string> = new Set(["id", "name", "invented"]);

type Random = () => number;

const demo = demoMarket();
const random = seeded(20_261_128);
const boards = Array.from({ length: boardCount }, (_, index) =>
	varied(demo.parts.board[index % demo.parts.board.length] as Board, index, random),
);
throwWhereInvalid(boards);

const market: Market = { ...demo, parts: { ...demo.parts, board: boards } };
const answers = workbench.answers as unknown as Answers;
const build = foldAnswers(answers, { market: demo, asOf: workbench.asOf });
const rules = allRules.filter(({ scope }) => scope === "board").length;

const first = secondsToJudge(market);
const later = Array.from({ length: laterRounds }, () => secondsToJudge(structuredClone(market)));
const reference = median(Array.from({ length: laterRounds }, secondsOfJson));

const few: Market = { ...demo, parts: { ...demo.parts, board: structuredClone(boards.slice(0, wholeCount)) } };
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

/** A board of the demonstration made another: price, form, slots and sockets changed, and some facts left out. */
function varied(board: Board, index: number, next: Random): Board {
	const oneOf = <T>(values: readonly T[]) => values[Math.floor(next() * values.length)] as T;
	const someOf = <T>(values: readonly T[]) => values.filter(() => next() < 0.8);
	const { cardSlots, m2Sockets, drivePorts, memory, ...rest } = structuredClone(board);
	const whole: Board = {
		...rest,
		id: `board-${index + 1}`,
		name: `${board.name} ${index + 1}`,
		price: { minor: 5000 + Math.floor(next() * 60_000), currency: "EUR" },
		...(next() < 0.2 ? { form: oneOf(boardForms) } : {}),
		...(cardSlots
			? { cardSlots: someOf(cardSlots).map((slot) => ({ ...slot, wiredLanes: oneOf([1, 4, 8, 16]) })) }
			: {}),
		...(m2Sockets ? { m2Sockets: someOf(m2Sockets).map((socket) => ({ ...socket, sata: next() < 0.3 })) } : {}),
		...(drivePorts ? { drivePorts: someOf(drivePorts) } : {}),
		...(memory ? { memory: { ...memory, slots: oneOf([1, 2, 4]), maxGb: oneOf([64, 128, 192, 256]) } } : {}),
	};
	const names = Object.keys(whole).filter((name) => !kept.has(name));
	const dropped = new Set<string>();
	while (dropped.size < mostDropped && next() < dropChance) dropped.add(oneOf(names));
	return Object.fromEntries(Object.entries(whole).filter(([name]) => !dropped.has(name))) as Board;
}

/** Numbers from 0 to below 1, always the same ones for a seed (xorshift over 32 bits). */
function seeded(seed: number): Random {
	let state = seed | 0;
	return () => {
		state ^= state << 13;
		state ^= state >>> 17;
		state ^= state << 5;
		return (state >>> 0) / 2 ** 32;
	};
}

/** @throws Error that names the first board that no parts file could hold */
function throwWhereInvalid(all: readonly Board[]): void {
	if (new Set(all.map(({ id }) => id)).size !== all.length) throw new Error("two boards have one id");
	for (const one of all.slice(0, 500)) {
		const checked = boardSchema.safeParse(one);
		if (!checked.success) throw new Error(`${one.id}: ${checked.error.message}`);
	}
}
