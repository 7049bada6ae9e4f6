import { describe, expect, test } from "vitest";
import { type AnswersFile, type AnswerValue, answersFile } from "../../src/parts/answers-file.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { savedWalk, summaryWords, takeUpWalk } from "../../src/walk/saved-walk.ts";
import { startWalk, type WalkState } from "../../src/walk/walk-state.ts";
import {
	demo,
	emptyMarket,
	notAskedOfQuiet,
	quietAnswers,
	scenarios,
	walkDone,
	walkThrough,
	walkWith,
} from "./walk-in-demo.ts";

const saved = savedWalk(demo, walkWith(quietAnswers));
/** The saved walk with one answer's value put in place of what stood there. */
const withValue = (id: string, value: AnswerValue): AnswersFile => ({
	...saved,
	answers: { ...saved.answers, [id]: { status: "answered", value } },
});

describe("a saved walk", () => {
	test("names its form, the day, and what it was made with", () => {
		expect(saved).toEqual({
			schema: "boardwalk/answers@2",
			asOf: "2026-11-24",
			market: { version: demo.market.version, fingerprint: demo.market.fingerprint },
			answers: walkWith(quietAnswers).answers,
			parts: [],
		});
	});

	test.each(scenarios)("of $name holds all that was in its file, and is taken up without a word", ({ file }) => {
		const { state, faults, warnings } = takeUpWalk(demo, answersFile.parse(file));
		expect({ faults, warnings }).toEqual({ faults: [], warnings: [] });
		expect(savedWalk({ ...demo, asOf: file.asOf }, state)).toEqual(file);
		// Who answers is noted beside each answer from then on.
		const who = file.answers["about/who"]?.value;
		expect(state).toEqual(startWalk(file.answers, file.parts, who === undefined ? "builder" : String(who)));
	});

	test("carries the person's own parts, so that another machine knows them", () => {
		const { state } = walkThrough(
			[{ type: "describe" }, ...["Gatepost", "ATX", "360"].map((text) => ({ type: "text", text }) as const)],
			{ ...walkWith(quietAnswers), place: { at: "question", id: "fit/case" } },
		);
		const file = answersFile.parse(JSON.parse(JSON.stringify(savedWalk(demo, state))));
		const elsewhere = takeUpWalk(emptyMarket, file);
		expect(elsewhere.faults).toEqual([]);
		expect(elsewhere.warnings.filter((words) => words.startsWith("Case:"))).toEqual([]);
		expect(elsewhere.state.ownParts).toEqual([
			{ kind: "case", part: { id: "gatepost", name: "Gatepost", boardForms: ["ATX"], cardMaxLengthMm: 360 } },
		]);
	});
});

describe("taking a walk up", () => {
	test("tells a part that is not there, by the question's name, and goes on", () => {
		const file = withValue("fit/case", { part: "a-case-of-old" });
		const { state, faults, warnings } = takeUpWalk(demo, file);
		expect(faults).toEqual([]);
		expect(warnings).toEqual(['Case: there is no part "a-case-of-old" here, so this counts as not sure.']);
		// The answer stays, for the day the part is there again.
		expect(state.answers["fit/case"]).toEqual(file.answers["fit/case"]);
	});

	test.each<[string, AnswerValue, RegExp]>([
		["features/rear-devices", "many", /a list of "keyboard"/],
		["features/rear-devices", 2.5, /whole number/],
		["features/wireless", "perhaps", /must, would-like, dont-mind/],
		["quality/rescue", 3, /a-lot/],
		["about/budget", 180, /no-limit/],
		["about/budget", { part: "larkspur-barn" }, /no-limit/],
		["fit/processor", "open", /"part"/],
		["fit/case", "none", /"open"/],
	])("a value that %s cannot have is a fault at its path: %j", (id, value, expected) => {
		const { faults, warnings } = takeUpWalk(demo, withValue(id, value));
		expect(faults).toEqual([{ path: `answers.${id}.value`, expected: expect.stringMatching(expected) }]);
		expect(warnings).toEqual([]);
	});

	test("tells every fault, not only the first", () => {
		const answers = {
			"fit/case": { status: "answered" },
			"features/wireless": { status: "answered", value: 7 },
		} as const;
		const { faults } = takeUpWalk(demo, { ...saved, answers });
		expect(faults.map(({ path }) => path)).toEqual(["answers.fit/case.value", "answers.features/wireless.value"]);
		expect(faults[0]?.expected).toContain("a value");
	});

	test("a value beside not sure or skipped is not looked at", () => {
		for (const status of ["not-sure", "skipped"] as const) {
			const answers = { "features/rear-devices": { status, value: "many" } };
			expect(takeUpWalk(demo, { ...saved, answers })).toMatchObject({ faults: [], warnings: [] });
		}
	});

	test("an unknown question is told and its answer kept, for the program that knows it", () => {
		const file = withValue("quality/colour", "green");
		const { state, faults, warnings } = takeUpWalk(demo, file);
		expect(faults).toEqual([]);
		expect(warnings).toEqual(['"quality/colour" is no question here; its answer is kept, but not used.']);
		expect(savedWalk(demo, state).answers["quality/colour"]).toEqual({ status: "answered", value: "green" });
	});

	test("other boards to choose from are told, with their name", () => {
		const { faults, warnings } = takeUpWalk(demo, { ...saved, market: { version: "my shop", fingerprint: "0123" } });
		expect(faults).toEqual([]);
		expect(warnings).toEqual([
			"These answers were given with other boards to choose from (my shop); the result may differ.",
		]);
	});

	test("nothing is told where nothing was answered", () => {
		const file = { ...saved, market: { version: "my shop", fingerprint: "0123" }, answers: {} };
		expect(takeUpWalk(demo, file)).toMatchObject({ faults: [], warnings: [] });
	});
});

describe("a kept walk in a few words", () => {
	const words = (state: WalkState) => summaryWords(savedWalk(demo, state), demo);
	const asked = allQuestions.filter(({ id }) => !notAskedOfQuiet.includes(id));

	test("says how much of what is asked is answered, and what comes next", () => {
		const count = asked.length;
		expect(words(startWalk())).toMatch(/^0 of \d+ answered, next comes About you, today$/);
		expect(words(walkDone(quietAnswers, "fit/supply"))).toBe(
			`${count - 1} of ${count} answered, next comes Fit, today`,
		);
		expect(words(walkDone(quietAnswers))).toBe(`${count} of ${count} answered, today`);
	});

	test("counts on the short walk only what that asks", () => {
		const short = { ...quietAnswers, "about/walk-length": "short" };
		const count = asked.filter((question) => question.short).length;
		expect(words(walkDone(short, "about/quiet", "quality/rescue"))).toBe(
			`${count - 1} of ${count} answered, next comes Build quality, today`,
		);
		expect(words(walkDone(short, "about/quiet"))).toBe(`${count} of ${count} answered, today`);
	});

	test.each([
		["2026-11-23", "yesterday"],
		["2026-11-20", "4 days ago"],
		["2026-02-28", "269 days ago"],
		["2026-12-01", "on 2026-12-01"],
	])("says when: %s is %s", (asOf, when) => {
		expect(summaryWords({ ...saved, asOf }, demo)).toMatch(new RegExp(`, ${when}$`));
	});
});
