import { describe, expect, test } from "vitest";
import { pictureAtAll } from "../../src/rules/build/picture-at-all.ts";
import { defineRule } from "../../src/rules/define-rule.ts";
import { powerPlugs } from "../../src/rules/fit/power-plugs.ts";
import { socket } from "../../src/rules/fit/socket.ts";
import { fail, goodToKnow, type Outcome, pass, planAround } from "../../src/rules/outcome.ts";
import { needOf, runRule } from "../../src/rules/run-rule.ts";
import { subjectOf } from "./rule-subject.ts";

const words = {
	scope: "board",
	label: "",
	wayOut: "",
	asks: "",
	why: "",
	source: "own-convention",
	messages: {},
} as const;

/** A rule that answers as told. */
const answering = (outcome: Outcome, severity: "stops" | "plan-around" | "good-to-know" = "stops") =>
	defineRule({ ...words, id: "fit/told", severity, reads: [], mayRead: [], check: () => outcome });

describe("verdict and severity", () => {
	test.each([
		["a pass", answering(pass("said")), "fits", null],
		["something to plan around", answering(planAround("said")), "fits", "plan-around"],
		["something good to know", answering(goodToKnow("said")), "fits", "good-to-know"],
		["a failure", answering(fail("said")), "does-not-fit", "stops"],
		["a failure of a rule that stops nothing", answering(fail("said"), "plan-around"), "fits", "plan-around"],
	])("%s", (_, rule, verdict, severity) => {
		expect(runRule(rule, subjectOf({}))).toEqual({
			ruleId: "fit/told",
			verdict,
			severity,
			messageId: "said",
			data: {},
			facts: [],
			missing: [],
		});
	});
});

describe("what a rule read", () => {
	test("facts and their standing, those it may do without only where they are known", () => {
		const rule = subjectOf({ board: { socket: "Kettle 7" }, processor: { socket: "Kettle 7" } });
		expect(runRule(socket, rule).facts).toEqual([
			{ path: "board.socket", value: "Kettle 7", standing: "stated" },
			{ path: "processor.socket", value: "Kettle 7", standing: "stated" },
			{ path: "processor.name", value: "Piccolo", standing: "stated" },
		]);
	});

	test("an assumed fact names its standard and what it follows from", () => {
		const subject = subjectOf({
			board: { power: { processorPlugs: ["8-pin"] } },
			supply: { processorPlugs: ["8-pin"] },
		});
		expect(runRule(powerPlugs, subject).facts).toContainEqual({
			path: "board.power.mainPlug",
			value: "24-pin",
			standing: "assumed",
			source: "atx-3.0-guide-2.01",
			because: "a desktop board of today",
		});
	});

	test("a stated fact is not assumed", () => {
		const subject = subjectOf({
			board: { power: { mainPlug: "20-pin", processorPlugs: ["8-pin"] } },
			supply: { processorPlugs: ["8-pin"] },
		});
		expect(runRule(powerPlugs, subject).facts).toContainEqual({
			path: "board.power.mainPlug",
			value: "20-pin",
			standing: "stated",
		});
	});

	test("a part's own evidence says how a fact is known", () => {
		const subject = subjectOf({
			board: { socket: "Kettle 7", evidence: { socket: { standing: "assumed" } } },
			processor: { socket: "Kettle 7", evidence: { socket: { standing: "assumed" }, name: { standing: "stated" } } },
		});
		expect(runRule(socket, subject).facts.map(({ standing }) => standing)).toEqual(["assumed", "assumed", "stated"]);
	});

	test("also where the rule cannot tell", () => {
		expect(runRule(socket, subjectOf({ board: { socket: "Kettle 7" }, processor: {} })).facts).toEqual([
			{ path: "board.socket", value: "Kettle 7", standing: "stated" },
		]);
	});
});

describe("a part that is not there", () => {
	test("binds nothing, whatever else is missing", () => {
		expect(runRule(socket, subjectOf({ board: {}, processor: "open" }))).toMatchObject({
			verdict: "fits",
			messageId: "open",
		});
	});

	test("a rule that reads the part itself is told its state", () => {
		const finding = runRule(pictureAtAll, subjectOf({ graphicsCard: "open" }));
		expect(finding.facts).toEqual([{ path: "graphicsCard", value: "open", standing: "stated" }]);
	});
});

test("without a board nothing is known of it", () => {
	expect(runRule(socket, subjectOf({ processor: { socket: "Kettle 7" } }))).toMatchObject({
		verdict: "cannot-tell",
		missing: ["board.socket"],
	});
});

test("a rule without a need has nothing to look for", () => {
	expect(needOf(pictureAtAll, subjectOf({ graphicsCard: "none" }))).toBeNull();
});
