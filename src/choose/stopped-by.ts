import { allRules } from "../rules/all-rules.ts";
import { type RuleSubject, runRule } from "../rules/run-rule.ts";

/** Labels of the rules that stop a board for a build, in small letters; none where it fits or nobody can tell. */
export function stoppedBy(subject: RuleSubject): readonly string[] {
	return allRules
		.filter(({ scope }) => scope === "board")
		.filter((rule) => runRule(rule, subject).verdict === "does-not-fit")
		.map(({ label }) => withinSentence(label));
}

/** "Socket" becomes "socket"; "USB-C at the back" and "M.2 drives" stay. */
function withinSentence(label: string): string {
	return /^[A-Z][a-z]/.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;
}
