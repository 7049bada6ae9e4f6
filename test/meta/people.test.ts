import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { type Advice, advise } from "../../src/choose/advise.ts";
import { type Judgement, judge } from "../../src/choose/judge.ts";
import { type AnswersFile, answersFile } from "../../src/parts/answers-file.ts";
import { answersOfToday } from "../../src/parts/answers-versions.ts";
import type { Board } from "../../src/parts/board.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { askedQuestions } from "../../src/questions/is-asked.ts";
import { takeUpWalk } from "../../src/walk/saved-walk.ts";
import { wholeDemo } from "../choose/demo.ts";

const folder = fileURLToPath(new URL("../../data/scenarios", import.meta.url));
const stories = ["before-any-board", "first-guess", "handed-down", "typed-in"];
/** The five people, and what a practised builder would ask of the board that leads for each. */
const people: Readonly<Record<string, { readonly leader: string; readonly because: (board: Board) => boolean }>> = {
	// No fan of its own, new firmware without a processor, wireless for a flat, and what is left of the money.
	"quiet-desk": {
		leader: "pennywhistle-hornpipe",
		because: ({ chipsetFan, wireless, recovery, price }) =>
			chipsetFan === false &&
			wireless?.builtIn === true &&
			recovery?.flashWithoutProcessor === true &&
			(price?.minor ?? 1e9) <= 15_600,
	},
	// 170 W on the label for days: many stages under real metal; errors in memory are found; faster network.
	workbench: {
		leader: "brindlecroft-honesty",
		because: ({ powerDelivery: power, memory, wiredGbps = [] }) =>
			(power?.coreStages ?? 0) >= 12 && memory?.errorCorrection === true && Math.max(...wiredGbps) >= 2.5,
	},
	// DDR4 at hand, an old supply, four drives on cables.
	"tight-budget": {
		leader: "pennywhistle-waltz",
		because: ({ price, memory, drivePorts = [] }) =>
			(price?.minor ?? 1e9) <= 9000 && memory?.type === "DDR4" && drivePorts.length >= 4,
	},
	// White, lets the clock be raised, feeds it without strain, shows its faults.
	showpiece: {
		leader: "tarradiddle-hoarfrost",
		because: ({ colour, raises, powerDelivery: power, recovery }) =>
			colour === "white" &&
			raises?.processorClock === true &&
			(power?.coreStages ?? 0) >= 12 &&
			recovery?.faultDisplay !== "none",
	},
	// Two of the three candidates run on it, at the price of a plain board.
	"three-candidates": { leader: "pennywhistle-minuet", because: ({ price }) => (price?.minor ?? 1e9) <= 16_500 },
};

const context = { market: wholeDemo, asOf: "2026-11-24" };

function resultFor(name: string): { file: AnswersFile; judgement: Judgement; advice: Advice } {
	const file = answersFile.parse(answersOfToday(JSON.parse(readFileSync(`${folder}/${name}.json`, "utf8"))));
	const judgement = judge(wholeDemo, foldAnswers(file.answers, context));
	return { file, judgement, advice: advise(judgement, file.answers) };
}

test("the folder holds five people and four stories", () => {
	expect(readdirSync(folder).sort()).toEqual([...Object.keys(people), ...stories].map((name) => `${name}.json`).sort());
});

test("five people, five boards", () => {
	const leaders = Object.keys(people).map((name) => resultFor(name).advice.shortlist[0]?.boardId);
	expect(leaders).toEqual(Object.values(people).map(({ leader }) => leader));
	expect(new Set(leaders).size).toBe(5);
});

describe.each(Object.entries(people))("%s", (name, { leader, because }) => {
	const { file, judgement, advice } = resultFor(name);

	test("answers every question that is asked, at home in this market", () => {
		expect(takeUpWalk(context, file)).toMatchObject({ faults: [], warnings: [] });
		const asked = askedQuestions(judgement.build).map(({ id }) => id);
		expect(asked.filter((id) => !file.answers[id])).toEqual([]);
		expect(asked.length).toBeGreaterThan(35);
	});

	test("has a leader that a practised builder would defend", () => {
		const first = judgement.boards.find(({ board }) => board.id === leader);
		expect(first && because(first.board)).toBe(true);
		expect(first?.verdict).toBe(name === "three-candidates" ? "cannot-tell" : "fits");
	});

	test("keeps enough to choose from, and loses boards to more than one kind of reason", () => {
		expect(advice.shortlist.length).toBeGreaterThanOrEqual(2);
		const reasons = new Set(judgement.boards.flatMap(({ failedRuleIds }) => failedRuleIds.slice(0, 1)));
		expect(reasons.size).toBeGreaterThanOrEqual(3);
	});
});

test("the one with three candidates is told with which each board fits", () => {
	const { judgement, advice } = resultFor("three-candidates");
	expect(judgement.build.worlds.map(({ choices }) => choices.map(({ label }) => label).join())).toEqual([
		"Tallowfinch Muralist",
		"Tallowfinch Deckhand",
		"Wimblecombe Beekeeper",
	]);
	expect(advice.shortlist[0]?.ways).toEqual({ fit: 2, all: 3 });
	expect(advice.shortlist[0]?.dependsOn).toEqual(["fit/candidates"]);
});
