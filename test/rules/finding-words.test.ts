import { describe, expect, test } from "vitest";
import { partWords } from "../../src/parts/part-words.ts";
import { ruleById } from "../../src/rules/all-rules.ts";
import type { Rule } from "../../src/rules/define-rule.ts";
import { findingAdvice, findingWords, needWords } from "../../src/rules/finding-words.ts";
import { partNames } from "./rule-subject.ts";

const finding = (ruleId: string, messageId: string, data = {}) => ({ ruleId, messageId, data });

describe("a finding as a sentence", () => {
	test.each([
		[finding("fit/socket", "same", { socket: "Kettle 7" }), "Board and processor both have socket Kettle 7."],
		[finding("fit/socket", "open", { part: "processor" }), "Not bought yet: choose your processor to suit the board."],
		[
			finding("build/card-in-case", "open", { part: "graphicsCard" }),
			"Not bought yet: choose your graphics card to suit the board.",
		],
		[finding("fit/power-plugs", "none", { part: "supply" }), "You have no power supply, so there is nothing to check."],
		[finding("fit/socket", "missing"), "A fact is missing."],
		[
			finding("build/picture-at-all", "none", { processor: "Bosun" }),
			"The Bosun has no graphics of its own, and there is no graphics card.",
		],
	])("%o", (given, words) => {
		expect(findingWords(given)).toBe(words);
	});

	test.each([
		finding("fit/not-invented-yet", "strange"),
		finding("fit/socket", "strange"),
		finding("fit/socket", "toString"),
		finding("fit/socket", "constructor"),
	])("ids of a newer file are given back: %o", (given) => {
		expect(findingWords(given)).toBe(`${given.ruleId}: ${given.messageId}`);
	});
});

describe("advice", () => {
	test("where the rule has some", () => {
		expect(findingAdvice(finding("features/wireless", "adapter"))).toBe(
			"Add the price of an adapter before you compare.",
		);
	});

	test.each([
		finding("features/wireless", "has"),
		finding("fit/price-cap", "over"),
		finding("fit/not-invented-yet", "strange"),
		finding("features/wireless", "toString"),
	])("none: %o", (given) => {
		expect(findingAdvice(given)).toBeUndefined();
	});
});

test("a need whose message is gone gives its id", () => {
	expect(needWords(ruleById("fit/socket") as Rule, { messageId: "gone", data: {} })).toBe("gone");
});

test("every part of a build has words", () => {
	expect(Object.keys(partWords).sort()).toEqual(Object.keys(partNames).sort());
});
