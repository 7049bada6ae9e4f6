import fc from "fast-check";
import { test } from "vitest";
import { judge } from "../../src/choose/judge.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { answered, anyAnswers, demo, demoContext, notSure, scenarios, valuesFor } from "./demo.ts";
test("p", () => {
	let fits = 0, ct = 0, all = 0;
	for (const a of fc.sample(anyAnswers, 100)) { const c = judge(demo, foldAnswers(a, demoContext)).counts; fits += c.fits; ct += c.cannotTell; all += c.all; }
	console.log("random", all, fits, ct);
	for (const { name, file } of scenarios) {
		const { counts, buildFindings } = judge(demo, foldAnswers(file.answers, demoContext));
		console.log(name, JSON.stringify(counts), foldAnswers(file.answers, demoContext).worlds.length, Object.keys(file.answers).length, buildFindings.map(b=>b.finding.ruleId).join());
		const f2 = new Map<string,string>();
		for (const q of allQuestions) {
			const t0 = new Map(judge(demo, foldAnswers({ ...file.answers, [q.id]: notSure }, demoContext)).boards.map(b => [b.board.id, b.verdict]));
			for (const v of valuesFor(q)) for (const b of judge(demo, foldAnswers({ ...file.answers, [q.id]: answered(v) }, demoContext)).boards) {
				const was = t0.get(b.board.id);
				if (was === "fits" && b.verdict === "does-not-fit") f2.set(q.id + " -> out", b.failedRuleIds.join());
				if (was === "does-not-fit" && b.verdict === "fits") f2.set(q.id + " -> fits", "");
			}
		}
		console.log([...f2].join("\n"));
	}
});
