import { describe, expect, test } from "vitest";
import { allCriteria } from "../../src/criteria/all-criteria.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { allRules } from "../../src/rules/all-rules.ts";
import { viewWalk } from "../../src/screens/walk-view.ts";
import { adviceJson } from "../../src/sheet/advice-json.ts";
import { startWalk, type WalkState } from "../../src/walk/walk-state.ts";
import { demo, emptyMarket, quietAnswers, scenarios, walkWith } from "../walk/walk-in-demo.ts";

function adviceOf(state: WalkState, context = demo) {
	const view = viewWalk(context, state);
	return JSON.parse(JSON.stringify(adviceJson(view.judgement(), view.advice(), view.state.answers, view.context)));
}

const keys = {
	advice: [
		"schema",
		"asOf",
		"market",
		"counts",
		"shortlist",
		"lead",
		"buildFindings",
		"waysOut",
		"conflicts",
		"findOut",
		"nextQuestion",
	],
	entry: [
		"boardId",
		"role",
		"also",
		"verdict",
		"score",
		"priceMinor",
		"currency",
		"for",
		"against",
		"unknown",
		"firstShare",
		"canLead",
		"anyOf",
		"behind",
		"weights",
		"dependsOn",
		"ways",
	],
	buildFinding: ["id", "verdict", "certain", "message", "data", "text"],
	wayOut: ["giveUp", "firmness", "boardIds", "repairs", "text"],
};

const reasonIds = ["also-unknown", ...[...allRules, ...allCriteria].map(({ id }) => id)];

describe.each([{ name: "nobody yet", state: startWalk() }, ...scenarios])("the advice for $name", ({ state }) => {
	const advice = adviceOf(state);

	test("has the keys of advice@1, no more and no less", () => {
		expect(advice.schema).toBe("boardwalk/advice@1");
		expect(Object.keys(advice)).toEqual(keys.advice);
		expect(advice.market).toEqual({ version: demo.market.version, fingerprint: demo.market.fingerprint });
		for (const entry of advice.shortlist) expect(Object.keys(entry)).toEqual(keys.entry);
		for (const finding of advice.buildFindings) expect(Object.keys(finding)).toEqual(keys.buildFinding);
		for (const way of advice.waysOut) expect(Object.keys(way)).toEqual(keys.wayOut);
	});

	test("counts every board once", () => {
		const { all, fits, cannotTell, doesNotFit } = advice.counts;
		expect(fits + cannotTell + doesNotFit).toBe(all);
		expect(all).toBe(demo.market.parts.board.length + state.ownParts.filter(({ kind }) => kind === "board").length);
	});

	test("scores in whole points, low to high, and prices in whole cents", () => {
		for (const { score, priceMinor, currency, verdict, ways } of advice.shortlist) {
			const points = [score.low, score.mid, score.high];
			for (const point of points) expect(Number.isInteger(point)).toBe(true);
			expect(points).toEqual([...points].sort((one, other) => one - other));
			expect(score.low).toBeGreaterThanOrEqual(0);
			expect(score.high).toBeLessThanOrEqual(100);
			expect(priceMinor === null ? currency : Number.isInteger(priceMinor)).toBe(priceMinor === null ? null : true);
			expect(["fits", "cannot-tell"]).toContain(verdict);
			if (verdict === "fits") expect(ways.fit).toBe(ways.all);
			expect(ways.fit).toBeGreaterThan(0);
			expect(ways.fit).toBeLessThanOrEqual(ways.all);
		}
	});

	test("names rules and questions by ids that are there", () => {
		const rules = new Set(allRules.map(({ id }) => id));
		const questions = new Set(allQuestions.map(({ id }) => id));
		for (const { giveUp } of advice.waysOut) for (const id of giveUp) expect(rules).toContain(id);
		for (const { dependsOn } of advice.shortlist) for (const id of dependsOn) expect(questions).toContain(id);
		if (advice.nextQuestion !== null) expect(questions).toContain(advice.nextQuestion);
	});

	test("gives a text with every reason", () => {
		for (const { for: speaksFor, against, unknown } of advice.shortlist)
			for (const reason of [...speaksFor, ...against, ...unknown]) {
				expect(reason.text).toMatch(/^\S.*[.!?]$/);
				// What is not known and stops nothing is one line for all its rules.
				for (const id of reason.rules ?? [reason.id]) expect(reasonIds).toContain(id);
			}
	});
});

test("nothing fits is told by ways out, not by a shortlist", () => {
	const handedDown = scenarios.find(({ name }) => name === "handed-down");
	const advice = adviceOf(handedDown?.state ?? startWalk());
	expect(advice.shortlist).toEqual([]);
	expect(advice.waysOut.length).toBeGreaterThan(0);
	expect(advice.buildFindings).toContainEqual(
		expect.objectContaining({
			id: "build/card-in-case",
			verdict: "does-not-fit",
			certain: true,
			data: { lengthMm: 340, maxMm: 300, overMm: 40 },
		}),
	);
});

test("an empty market gives empty lists, never a fault", () => {
	expect(adviceOf(walkWith(quietAnswers), emptyMarket)).toMatchObject({
		counts: { all: 0, fits: 0, cannotTell: 0, doesNotFit: 0 },
		shortlist: [],
		waysOut: [],
	});
});
