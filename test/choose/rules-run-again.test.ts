import { expect, test } from "vitest";
import { judge } from "../../src/choose/judge.ts";
import type { Answers, AnswerValue } from "../../src/parts/answers-file.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { ruleById } from "../../src/rules/all-rules.ts";
import type { Finding } from "../../src/rules/outcome.ts";
import { answered, demo, scenarios } from "./demo.ts";

const { file } = scenarios.find(({ name }) => name === "quiet-desk.json") as (typeof scenarios)[number];

/** What the rules find of every board, rule by rule; the same object again where a rule was not run again. */
function findingsWith(answers: Answers): ReadonlyMap<string, readonly Finding[]> {
	const build = foldAnswers(answers, { market: demo, asOf: file.asOf });
	expect(build.worlds).toHaveLength(1);
	const { boards } = judge(demo, build);
	const ids = boards[0]?.findings.map(({ ruleId }) => ruleId) ?? [];
	return new Map(ids.map((id, at) => [id, boards.map(({ findings }) => findings[at] as Finding)]));
}

/** Another answer, and the facts that it changes, as paths or as what they begin with. */
const changes: readonly (readonly [questionId: string, value: AnswerValue, read: RegExp])[] = [
	["features/wireless", "dont-mind", /^wish\.features\/wireless$/],
	["quality/warranty", "must", /^wish\.quality\/warranty$/],
	["about/budget", { minor: 15_000, currency: "EUR" }, /^priceCap$/],
	["about/summer-room", "fan-on", /^(?:summerRoom|power\b.*|load\b.*)$/],
	["quality/years", 3, /^yearsKept$/],
	["about/quiet", "a-little", /^importance\b/],
];

test.each(changes)("another answer to %s runs those rules again that read it, and no others", (id, value, read) => {
	const before = findingsWith(file.answers);
	const after = findingsWith({ ...file.answers, [id]: answered(value) });
	const ranAgain = [...before].filter(([ruleId, found]) => found.some((one, at) => one !== after.get(ruleId)?.[at]));
	const reads = (ruleId: string) => {
		const rule = ruleById(ruleId);
		return [...(rule?.reads ?? []), ...(rule?.mayRead ?? [])];
	};
	const readers = [...before.keys()].filter((ruleId) => reads(ruleId).some((path) => read.test(path)));
	expect(before.size).toBeGreaterThan(40);
	expect(ranAgain.map(([ruleId]) => ruleId)).toEqual(readers);
	// What nothing changed for is the very same the second time.
	const again = findingsWith({ ...file.answers });
	expect([...before].every(([ruleId, found]) => found.every((one, at) => one === again.get(ruleId)?.[at]))).toBe(true);
});
