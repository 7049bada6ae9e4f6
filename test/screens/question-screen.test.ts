import { describe, expect, test } from "vitest";
import { judge } from "../../src/choose/judge.ts";
import { onlyInventedBoards } from "../../src/choose/only-invented-boards.ts";
import type { AnswerValue } from "../../src/parts/answers-file.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { type Question, type Tier, tierNames } from "../../src/questions/define-question.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { marketOf } from "../../src/walk/market-of.ts";
import { startWalk, type WalkState } from "../../src/walk/walk-state.ts";
import { demo, emptyMarket, quietAnswers, scenarios, walkThrough, walkWith } from "../walk/walk-in-demo.ts";
import { blockTexts, everyPlace, listsOf, screenAt } from "./screen-words.ts";

const states = [{ name: "nobody yet", state: startWalk() }, ...scenarios];

/** What makes no sense before anything is answered: each wants to know more of an answer given before. */
const notAskedAtFirst = [
	"about/money-spent",
	"fit/case-front",
	"fit/front-plugs",
	"fit/bought",
	"fit/returnable",
	"fit/return-until",
	"features/full-speed",
	"features/spare-sockets",
	"features/room",
	"features/wishes",
];

describe.each(allQuestions)("$id", (question) => {
	const { id, tier, isWish } = question;
	const fresh = screenAt(demo, startWalk(), { at: "question", id });

	test("asks in its own words, says where it stands in its tier", () => {
		const ofTier = allQuestions.filter((asked) => asked.tier === tier && !notAskedAtFirst.includes(asked.id));
		const place = ofTier.indexOf(question);
		expect(fresh.title).toBe(question.ask);
		expect(fresh.place).toBe(
			place < 0 ? tierNames[tier] : `${tierNames[tier]}, question ${place + 1} of ${ofTier.length}`,
		);
		expect(fresh.body.flatMap(blockTexts)).toEqual([
			question.picture ? `${question.hint}. Press ? for a picture` : question.hint,
		]);
	});

	test("helps with why, where, what it changes and what not sure does", () => {
		const texts = fresh.help.map((block) => [
			block.kind,
			...(block.kind === "picture" ? block.lines : blockTexts(block)),
		]);
		expect(texts).toEqual([
			["heading", "Why we ask"],
			["text", question.why],
			["heading", "Where to find it"],
			["text", question.whereToFind],
			...(question.recipe ? [["list", ...question.recipe]] : []),
			...(question.picture ? [["picture", ...question.picture]] : []),
			["heading", "What your answer changes"],
			["text", question.changes],
			["heading", "If you are not sure"],
			["text", question.notSure],
		]);
	});

	test("lists every option, and not sure last, apart and not chosen", () => {
		const options = question.options(demo, foldAnswers({}, demo).facts);
		expect(fresh.choices.slice(0, options.length).map(({ label, event }) => [label, event])).toEqual(
			options.map(({ label, value }) => [
				label,
				question.kind === "many" ? { type: "mark", value: (value as string[])[0], by: 1 } : { type: "answer", value },
			]),
		);
		expect(fresh.choices.at(-1)).toMatchObject({ label: "Not sure", apart: true, event: { type: "not-sure" } });
		expect(fresh.choices.filter(({ chosen }) => chosen)).toEqual([]);
		expect(fresh.enter).toBeNull();
	});

	test.each(states)("shows beside each wish what a judgement with it leaves, for $name", ({ state }) => {
		const { choices } = screenAt(demo, state, { at: "question", id });
		const counts = choices.flatMap(({ count }) => count ?? []);
		expect(counts).toEqual(isWish ? countsOf(question, state) : []);
	});
});

/** How many boards each option of a wish leaves, judged anew; none beside a processor of one's own. */
function countsOf(question: Question, state: WalkState): readonly string[] {
	const context = { ...demo, market: marketOf(demo.market, state.ownParts) };
	const build = foldAnswers(state.answers, context);
	// There, counts of invented boards would say nothing.
	if (onlyInventedBoards(judge(context.market, build))) return [];
	return question.options(context, build.facts).map(({ value }) => {
		const answers = { ...state.answers, [question.id]: { status: "answered", value } as const };
		const { boards } = judge(context.market, foldAnswers(answers, context));
		return `leaves ${boards.filter(({ verdict }) => verdict !== "does-not-fit").length} of ${boards.length} boards`;
	});
}

test("what the answers come to in watts stands where it is asked for and before its quality is, once it is known", () => {
	const known = { ...quietAnswers, "about/activities": ["writing"] };
	const placesWith = (answers: Readonly<Record<string, AnswerValue>>) =>
		everyPlace(demo, startWalk()).filter((place) =>
			screenAt(demo, walkWith(answers), place).body.flatMap(blockTexts).join(" ").includes(" W for the board to feed."),
		);
	expect(placesWith({ ...known, "fit/processor": "no processor yet" })).toEqual([]);
	expect(placesWith(known)).toEqual([
		{ at: "question", id: "about/activities" },
		{ at: "question", id: "about/session-length" },
		{ at: "question", id: "quality/stage-load" },
		{ at: "tier-end", tier: "features" },
	]);
});

describe("an answer given before", () => {
	const state = walkWith(quietAnswers);

	test("is said, marked, and kept by Enter alone", () => {
		const screen = screenAt(demo, state, { at: "question", id: "fit/case" });
		expect(screen.body.flatMap(blockTexts)).toContain("Your answer so far: Larkspur Wardrobe.");
		expect(screen.choices.filter(({ chosen }) => chosen).map(({ label }) => label)).toEqual(["Larkspur Wardrobe"]);
		expect(screen.enter?.event).toEqual({ type: "next" });
	});

	test("of not sure is marked too", () => {
		const unsure = walkThrough([{ type: "not-sure" }], { ...state, place: { at: "question", id: "fit/case" } }).state;
		const screen = screenAt(demo, unsure, { at: "question", id: "fit/case" });
		expect(screen.choices.filter(({ chosen }) => chosen).map(({ label }) => label)).toEqual(["Not sure"]);
		expect(screen.body.flatMap(blockTexts)).toContain("Your answer so far: not sure.");
	});

	test("that is no longer possible here is told to be so", () => {
		const screen = screenAt(emptyMarket, state, { at: "question", id: "fit/case" });
		expect(screen.body.flatMap(blockTexts).join(" ")).toContain("no longer possible here");
		expect(screen.choices.filter(({ chosen }) => chosen)).toEqual([]);
	});
});

describe("beside the question", () => {
	const sideOf = (before: object, given: Parameters<typeof walkThrough>[0]) => {
		const { state } = walkThrough(given, { ...startWalk(), ...before });
		return screenAt(demo, state).side;
	};
	const at = (id: string) => ({ place: { at: "question", id } }) as const;
	const processor = { type: "answer", value: { part: "tallowfinch-deckhand" } } as const;

	test("stands how many boards are left, and which the last answer took out and why", () => {
		const side = sideOf(at("fit/processor"), [processor]);
		const { boards } = judge(
			demo.market,
			foldAnswers({ "fit/processor": { status: "answered", value: processor.value } }, demo),
		);
		const left = boards.filter(({ verdict }) => verdict !== "does-not-fit");
		expect(side[0]).toMatchObject({ text: expect.stringMatching(`^${left.length} of ${boards.length} boards left`) });
		const told = listsOf(side).flat().join(" ");
		for (const { board, verdict } of boards) expect(told.includes(`${board.name}`)).toBe(verdict === "does-not-fit");
		expect(told).toMatch(/^Socket: /);
	});

	test("stands which boards a new answer brought back", () => {
		const state = walkWith({ "fit/processor": { part: "tallowfinch-deckhand" } });
		const side = sideOf({ ...state, ...at("fit/processor") }, [{ type: "not-sure" }]);
		expect(side.flatMap(blockTexts).join(" ")).toMatch(/Your last answer brought back: .*Oddment Button/);
	});

	test("stands nothing about the last answer before there is one", () => {
		expect(sideOf(at("fit/processor"), [])).toHaveLength(1);
		expect(sideOf(at("about/budget"), [{ type: "not-sure" }])).toHaveLength(1);
	});
});

test("a question that is not asked any more says so and is no dead end", () => {
	const screen = screenAt(demo, startWalk(), { at: "question", id: "fit/horoscope" });
	expect(screen.title).toMatch(/no longer/);
});

test("every tier's questions are counted to their end", () => {
	const places = allQuestions.map(({ id }) => screenAt(demo, startWalk(), { at: "question", id }).place);
	for (const tier of new Set(allQuestions.map((asked) => asked.tier)) as Set<Tier>) {
		const ofTier = places.filter((place) => place.startsWith(`${tierNames[tier]},`));
		expect(ofTier).toEqual(ofTier.map((_, index) => `${tierNames[tier]}, question ${index + 1} of ${ofTier.length}`));
	}
});
