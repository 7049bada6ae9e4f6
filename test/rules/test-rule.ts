import { describe, expect, test } from "vitest";
import type { Rule } from "../../src/rules/define-rule.ts";
import { findingWords, needWords } from "../../src/rules/finding-words.ts";
import type { Finding, MessageData, Severity } from "../../src/rules/outcome.ts";
import { needOf, runRule } from "../../src/rules/run-rule.ts";
import { type GivenSubject, subjectOf } from "./rule-subject.ts";

/** Cases by name. Data left out means: the message has none. */
export interface RuleTable {
	readonly fits: Readonly<Record<string, readonly [GivenSubject, messageId: string, data?: MessageData]>>;
	readonly cautions?: Readonly<
		Record<string, readonly [GivenSubject, Severity, messageId: string, data?: MessageData]>
	>;
	readonly fails?: Readonly<Record<string, readonly [GivenSubject, messageId: string, data?: MessageData]>>;
	/** The message is the runner's "missing" unless one is named. */
	readonly cannotTell?: Readonly<
		Record<string, readonly [GivenSubject, missing: readonly string[], messageId?: string, data?: MessageData]>
	>;
	/** A fact the rule read that no page states. */
	readonly assumed?: Readonly<Record<string, readonly [GivenSubject, path: string]>>;
	/** The requirement as a sentence, or null where there is nothing to look for. */
	readonly needs?: Readonly<Record<string, readonly [GivenSubject, text: string | null]>>;
	/** Why a table has no such case, where it can have none. */
	readonly without?: Readonly<Partial<Record<"failsAndCautions" | "cannotTell", string>>>;
}

/** Messages that the runner says for any rule. */
const runnerMessageIds = ["open", "none", "missing"];

/**
 * Tests one rule, case by case, and refuses a table that leaves a gap: no fit, no failure or caution, no "can't tell",
 * two cases alike, or a message of the rule that no case brings about.
 *
 * @throws Error that lists what is wrong with the table
 */
export function testRule(rule: Rule, table: RuleTable): void {
	const faults = tableFaults(rule, table);
	if (faults.length > 0) throw new Error(`the table of ${rule.id}: ${faults.join("; ")}`);
	describe(rule.id, () => {
		for (const { name, subject, expected } of judgedCases(table))
			test(name, () => {
				const finding = runRule(rule, subjectOf(subject));
				const { facts, ...found } = finding;
				expect(found).toEqual({ ruleId: rule.id, ...expected(rule) });
				expectSentences(rule, finding);
				for (const { path } of facts) expect([...rule.reads, ...rule.mayRead]).toContain(path);
			});
		for (const [name, [subject, path]] of Object.entries(table.assumed ?? {}))
			test(`assumed: ${name}`, () => {
				const fact = runRule(rule, subjectOf(subject)).facts.find((read) => read.path === path);
				expect(fact).toMatchObject({ standing: "assumed", source: expect.any(String), because: expect.any(String) });
			});
		for (const [name, [subject, text]] of Object.entries(table.needs ?? {}))
			test(`to look for: ${name}`, () => {
				const need = needOf(rule, subjectOf(subject));
				expect(need && needWords(rule, need)).toBe(text);
			});
	});
}

/** What is wrong with a table, as short sentences; none when it is whole. */
export function tableFaults(rule: Rule, table: RuleTable): readonly string[] {
	const { fits, cautions = {}, fails = {}, cannotTell = {}, needs = {}, without = {} } = table;
	const cases = judgedCases(table);
	const used = new Set([
		...cases.map(({ expected }) => expected(rule).messageId),
		...Object.values(needs).flatMap(([subject]) => needOf(rule, subjectOf(subject))?.messageId ?? []),
	]);
	const count = (group: object) => Object.keys(group).length;
	return [
		...(count(fits) === 0 ? ["no case fits"] : []),
		...(count(fails) + count(cautions) === 0 && !without.failsAndCautions ? ["no case fails or cautions"] : []),
		...(count(cannotTell) === 0 && !without.cannotTell ? ['no case is "can\'t tell"'] : []),
		...(count(fails) + count(cautions) > 0 && without.failsAndCautions ? ["says it has no failures but has"] : []),
		...(count(cannotTell) > 0 && without.cannotTell ? ['says it has no "can\'t tell" but has'] : []),
		...twice(cases.map(({ name }) => name)).map((name) => `two cases are called "${name}"`),
		...twiceBy(cases, ({ subject }) => JSON.stringify(subject)).map(({ name }) => `"${name}" is there already`),
		...twiceBy(Object.entries(needs), ([, [subject]]) => JSON.stringify(subject)).map(
			([name]) => `"${name}" is there already`,
		),
		...(rule.needs && count(needs) === 0 ? ["no case of what to look for"] : []),
		...Object.keys(rule.messages)
			.filter((id) => !used.has(id))
			.map((id) => `no case says "${id}"`),
		...(rule.saysNothing ?? [])
			.filter((id) => ![...Object.values(fits)].some(([, messageId]) => messageId === id))
			.map((id) => `"${id}" is to say nothing, but no case fits with it`),
		...[...used]
			.filter((id) => !Object.hasOwn(rule.messages, id) && !runnerMessageIds.includes(id))
			.map((id) => `"${id}" is no message of the rule`),
	];
}

interface JudgedCase {
	readonly name: string;
	readonly subject: GivenSubject;
	readonly expected: (rule: Rule) => Omit<Finding, "ruleId" | "facts">;
}

function judgedCases({ fits, cautions = {}, fails = {}, cannotTell = {} }: RuleTable): readonly JudgedCase[] {
	return [
		...Object.entries(fits).map(
			([name, [subject, messageId, data = {}]]): JudgedCase => ({
				name,
				subject,
				expected: () => ({ verdict: "fits", severity: null, messageId, data, missing: [] }),
			}),
		),
		...Object.entries(cautions).map(
			([name, [subject, severity, messageId, data = {}]]): JudgedCase => ({
				name,
				subject,
				expected: () => ({ verdict: "fits", severity, messageId, data, missing: [] }),
			}),
		),
		...Object.entries(fails).map(
			([name, [subject, messageId, data = {}]]): JudgedCase => ({
				name,
				subject,
				expected: ({ severity }) => ({
					verdict: severity === "stops" ? "does-not-fit" : "fits",
					severity,
					messageId,
					data,
					missing: [],
				}),
			}),
		),
		...Object.entries(cannotTell).map(
			([name, [subject, missing, messageId = "missing", data = {}]]): JudgedCase => ({
				name,
				subject,
				expected: () => ({ verdict: "cannot-tell", severity: null, messageId, data, missing }),
			}),
		),
	];
}

/** Finding and advice read as sentences, with every place filled in. */
function expectSentences(rule: Rule, finding: Finding): void {
	const { messageId, data } = finding;
	const message = rule.messages[messageId];
	for (const words of [message ? message(data) : findingWords(finding), rule.advice?.[messageId]?.(data)]) {
		if (words === undefined) continue;
		expect(words).toMatch(/^[A-Z0-9].*\.$/s);
		expect(words).not.toMatch(/undefined|null|NaN|\[object|\s{2}/);
	}
}

function twice(names: readonly string[]): readonly string[] {
	return twiceBy(names, (name) => name);
}

/** Every item whose key an earlier one had. */
function twiceBy<T>(items: readonly T[], keyOf: (item: T) => string): readonly T[] {
	const keys = items.map(keyOf);
	return items.filter((_, index) => keys.indexOf(keys[index] as string) < index);
}
