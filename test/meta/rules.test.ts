import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { emptyBuildFacts } from "../../src/parts/build.ts";
import { factAt } from "../../src/parts/fact-list.ts";
import { partKindNames } from "../../src/parts/part-kinds.ts";
import { partWords } from "../../src/parts/part-words.ts";
import { wantNames } from "../../src/parts/wants.ts";
import { headerPlanOf } from "../../src/plan/header-plan.ts";
import { planFactsOf } from "../../src/plan/plan-facts.ts";
import { loadFactsOf } from "../../src/power/load-facts.ts";
import { powerFactsOf } from "../../src/power/power-facts.ts";
import { questionById } from "../../src/questions/all-questions.ts";
import { allSources } from "../../src/reference/sources.ts";
import { allRules } from "../../src/rules/all-rules.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const filesBelow = (folder: string, ending: string) =>
	readdirSync(`${root}${folder}`, { recursive: true, encoding: "utf8" })
		.map((path) => path.replaceAll("\\", "/"))
		.filter((path) => path.includes("/") && path.endsWith(ending))
		.map((path) => path.slice(0, -ending.length))
		.sort();

/** Facts of a build that are no part's. */
const buildFacts: readonly string[] = wantNames;
/** What a plan tells, even of a board of which nothing is known. */
const emptyPlan = planFactsOf({ id: "a-board", name: "A board" }, emptyBuildFacts);
const emptyHeaders = headerPlanOf({}, emptyBuildFacts);
const emptyPower = powerFactsOf({ id: "a-board", name: "A board" }, emptyBuildFacts);
const emptyLoad = loadFactsOf(emptyBuildFacts);
/** Messages that the runner says for any rule. */
const runnerMessages = ["open", "none", "missing"];

test("every rule's file is in the list, and every rule in the list has a file of its name", () => {
	expect(allRules.map(({ id }) => id).sort()).toEqual(filesBelow("src/rules", ".ts"));
});

test("every rule has a test of its name, and no test is left of a rule that is gone", () => {
	expect(filesBelow("test/rules", ".test.ts")).toEqual(filesBelow("src/rules", ".ts"));
});

test("ids are told apart, also from those that rules formerly had", () => {
	const ids = allRules.flatMap(({ id, formerly = [] }) => [id, ...formerly]);
	expect(new Set(ids).size).toBe(ids.length);
});

describe.each(allRules)("$id", (rule) => {
	test("its test holds it against a table, which refuses gaps", () => {
		const text = readFileSync(`${root}test/rules/${rule.id}.test.ts`, "utf8");
		expect(text).toMatch(/^testRule\(/m);
		expect(text).toContain(`src/rules/${rule.id}.ts"`);
	});

	test("lies in the folder of its scope", () => {
		expect(rule.id.startsWith("build/")).toBe(rule.scope === "build");
	});

	test.each([...rule.reads, ...rule.mayRead])("%s is a fact", (path) => {
		const [part = "", ...keys] = path.split(".");
		if (part === "wish") expect(questionById(keys.join("."))?.isWish).toBe(true);
		else if (part === "plan") expect(Object.keys(emptyPlan)).toContain(keys.join("."));
		else if (part === "headers") expect(Object.keys(emptyHeaders)).toContain(keys.join("."));
		else if (part === "power") expect(Object.keys(emptyPower)).toContain(keys.join("."));
		else if (part === "load") expect(Object.keys(emptyLoad)).toContain(keys.join("."));
		else if (keys.length === 0) expect([...buildFacts, ...Object.keys(partWords)]).toContain(part);
		else {
			expect(partKindNames).toContain(part);
			expect(factAt(part as (typeof partKindNames)[number], keys.join("."))).toBeDefined();
		}
	});

	test("reads no fact twice, and of a build no board", () => {
		const paths = [...rule.reads, ...rule.mayRead];
		expect(new Set(paths).size).toBe(paths.length);
		if (rule.scope === "build") expect(paths.filter((path) => /^(board|platform)\b/.test(path))).toEqual([]);
	});

	test("a rule about a board reads something of the board", () => {
		if (rule.scope === "board")
			expect([...rule.reads, ...rule.mayRead].join()).toMatch(/\b(board|plan|headers|power)\./);
	});

	test("asks a question, says why, and names what would change", () => {
		expect(rule.asks).toMatch(/^[A-Z].*\?$/);
		expect(rule.why).toMatch(/^[A-Z].*\.$/);
		expect(rule.label).toMatch(/^[A-Z].*[^.]$/);
		expect(rule.wayOut).toMatch(/^[a-z].*[^.]$/);
	});

	test("stands on a source", () => {
		expect(allSources().map(({ id }) => id)).toContain(rule.source);
	});

	test("advises only on what it says", () => {
		expect(Object.keys(rule.messages)).toEqual(expect.arrayContaining(Object.keys(rule.advice ?? {})));
	});

	// The runner's findings carry the rule's id, so a message of the rule would be said in place of the runner's.
	test("uses no message id of the runner, where the runner may answer for it", () => {
		const runnerMayAnswer = rule.reads.some((path) => path.includes("."));
		if (runnerMayAnswer) expect(Object.keys(rule.messages).filter((id) => runnerMessages.includes(id))).toEqual([]);
	});

	test("a message of a need is there where the rule has needs", () => {
		expect(rule.needs !== undefined).toBe(Object.keys(rule.messages).some((id) => id.startsWith("need")));
	});
});

test("rules of wishes are named as the question", () => {
	const wished = allRules.flatMap(({ id, reads, mayRead }) =>
		[...reads, ...mayRead].filter((path) => path.startsWith("wish.")).map((path) => [id, path.slice("wish.".length)]),
	);
	// What the parts themselves make of a wish is a rule of its own, under build/.
	const nameOf = (id = "") => id.split("/")[1];
	// What a must makes one buy besides is told with the price, too.
	const elsewhere = ["fit/forced-extras"];
	for (const [ruleId = "", questionId] of wished.filter(([ruleId = ""]) => !elsewhere.includes(ruleId)))
		if (ruleId.startsWith("build/")) expect(nameOf(ruleId)).toBe(nameOf(questionId));
		else expect(ruleId).toBe(questionId);
});

test("every wish is judged by a rule", () => {
	expect(existsSync(`${root}src/questions/features`)).toBe(true);
	const judged = new Set(allRules.flatMap(({ reads, mayRead }) => [...reads, ...mayRead]));
	const wishes = filesBelow("src/questions", ".ts").filter((id) => questionById(id)?.isWish);
	expect(wishes.length).toBeGreaterThan(0);
	for (const id of wishes) expect(judged).toContain(`wish.${id}`);
});
