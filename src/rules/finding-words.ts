import { partWords } from "../parts/part-words.ts";
import { ruleById } from "./all-rules.ts";
import type { Need, Rule } from "./define-rule.ts";
import type { Finding, MessageData } from "./outcome.ts";

/** What the runner itself says, for any rule. */
const runnerMessages: Readonly<Record<string, (data: MessageData) => string>> = {
	open: ({ part }) => `Not bought yet: choose your ${partWords[String(part)] ?? String(part)} to suit the board.`,
	none: ({ part }) =>
		part === "cooler"
			? "A cooler from the processor's box is made for the processor's own socket."
			: `You have no ${partWords[String(part)] ?? String(part)}, so there is nothing to check.`,
	missing: () => "A fact is missing.",
};

/** A finding as a sentence. Unknown ids (from a newer file) give the ids themselves, never an error. */
export function findingWords(finding: Pick<Finding, "ruleId" | "messageId" | "data">): string {
	const message = own(ruleById(finding.ruleId)?.messages, finding.messageId) ?? own(runnerMessages, finding.messageId);
	return message ? message(finding.data) : `${finding.ruleId}: ${finding.messageId}`;
}

/** What to do about a finding, or undefined. */
export function findingAdvice(finding: Pick<Finding, "ruleId" | "messageId" | "data">): string | undefined {
	return own(ruleById(finding.ruleId)?.advice, finding.messageId)?.(finding.data);
}

/** A requirement as a sentence. */
export function needWords(rule: Rule, need: Need): string {
	const message = own(rule.messages, need.messageId);
	return message ? message(need.data) : need.messageId;
}

/** The message of this id, and nothing that every object inherits. */
function own(messages: Rule["messages"] | undefined, id: string): Rule["messages"][string] | undefined {
	return messages && Object.hasOwn(messages, id) ? messages[id] : undefined;
}
