import { ownershipOf, partsOfRule } from "../choose/firmness.ts";
import type { BuildFacts } from "../parts/build.ts";
import { partWords } from "../parts/part-words.ts";
import type { Rule } from "../rules/define-rule.ts";

/**
 * What may still be changed of the parts a rule reads, in a sentence: "Your case can go back until 2026-12-24; your
 * memory is bought for good." Empty where all of them are only planned.
 */
export function ownershipWords(rule: Pick<Rule, "reads">, facts: BuildFacts): string {
	const said = partsOfRule(rule, facts).flatMap((kind) => {
		const noun = `your ${partWords[kind] ?? kind}`;
		switch (ownershipOf(facts, kind)) {
			case "bought":
				return [`${noun} is bought for good`];
			case "returnable":
				return [`${noun} can go back${facts.returnableUntil ? ` until ${facts.returnableUntil}` : ""}`];
			default:
				return [];
		}
	});
	const words = said.join("; ");
	return words === "" ? "" : `${words[0]?.toUpperCase()}${words.slice(1)}.`;
}
