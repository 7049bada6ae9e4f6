import { titleInSentence } from "../parts/title-in-sentence.ts";
import { allRules } from "../rules/all-rules.ts";
import { type RuleSubject, runRule } from "../rules/run-rule.ts";

/** Labels of the rules that stop a board for a build, in small letters; none where it fits or nobody can tell. */
export function stoppedBy(subject: RuleSubject): readonly string[] {
	return allRules
		.filter(({ scope }) => scope === "board")
		.filter((rule) => runRule(rule, subject).verdict === "does-not-fit")
		.map(({ label }) => titleInSentence(label));
}
