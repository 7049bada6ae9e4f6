import { expect, test } from "vitest";
import { type BuildFacts, emptyBuildFacts } from "../../src/parts/build.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { countQuestion } from "../../src/questions/count-question.ts";
import { askedQuestions, isAsked } from "../../src/questions/is-asked.ts";
import { madeUpWords } from "./made-up-question.ts";

const question = (short: boolean, applies: boolean) =>
	countQuestion({
		...madeUpWords,
		...(short ? { short: true as const } : {}),
		...{ want: "caseFans", least: 0, most: 9, applies: () => applies },
	});
const facts = (more: Partial<BuildFacts>) => ({ facts: { ...emptyBuildFacts, ...more } });

test.each<["short" | "whole" | null, boolean, boolean, boolean]>([
	["short", true, true, true],
	["short", false, true, false],
	["short", true, false, false],
	["whole", false, true, true],
	["whole", true, false, false],
	[null, false, true, true],
	[null, true, true, true],
	[null, false, false, false],
])(
	"on the %s way, a question of the short one: %j, that makes sense: %j, is asked: %j",
	(length, short, sense, asked) => {
		expect(isAsked(question(short, sense), facts({ walkLength: length }))).toBe(asked);
	},
);

test("the short way is part of the whole one, in the same order, and far shorter", () => {
	const [short, whole] = (["short", "whole"] as const).map((walkLength) => askedQuestions(facts({ walkLength })));
	expect(whole?.filter((asked) => short?.includes(asked))).toEqual(short);
	expect(short?.length).toBeGreaterThan(0);
	expect((short?.length ?? 0) * 4).toBeLessThan((whole?.length ?? 0) * 3);
	expect(askedQuestions(facts({}))).toEqual(whole);
});

test("questions are asked in the order of all, and what makes no sense yet is left out", () => {
	const asked = askedQuestions(facts({}));
	expect(allQuestions.filter((one) => asked.includes(one))).toEqual(asked);
	const ids = (given: ReturnType<typeof facts>) => askedQuestions(given).map(({ id }) => id);
	expect(ids(facts({}))).not.toContain("about/money-spent");
	expect(ids(facts({ moneyInAll: { minor: 90_000, currency: "EUR" } }))).toContain("about/money-spent");
});

test("where a walk has been folded, what counts is whether it made sense when the walk came to it", () => {
	const asked = question(true, false);
	expect(isAsked(asked, { ...facts({}), reached: [asked.id] })).toBe(true);
	expect(isAsked(question(true, true), { ...facts({}), reached: [] })).toBe(false);
	expect(isAsked(question(false, false), { ...facts({ walkLength: "short" }), reached: [asked.id] })).toBe(false);
});
