import { measuresOfBuild } from "../choose/findings-of-market.ts";
import type { Build, BuildFacts } from "../parts/build.ts";
import { allRules, ruleById } from "../rules/all-rules.ts";
import type { Need, Rule } from "../rules/define-rule.ts";
import { needWords } from "../rules/finding-words.ts";
import { needOf } from "../rules/run-rule.ts";
import type { SheetNeed } from "./sheet.ts";

/** Demands that cost no board its place: something would do instead, or the wish may be given up. */
export function isNiceToHave(ruleId: string, { facts }: Build): boolean {
	return facts.wishes[ruleId] === "would-like" || ruleById(ruleId)?.severity !== "stops";
}

/** What rules ask of a board, in the order of the rules. */
export function needsOf(build: Build): readonly SheetNeed[] {
	return allRules
		.filter(({ scope }) => scope === "board")
		.flatMap((rule): SheetNeed[] => {
			const text = needTexts(rule, build);
			return text === null ? [] : [{ ruleId: rule.id, label: rule.label, text, why: rule.why }];
		});
}

/** One line where all worlds agree, or where what holds while it is open says enough; else what each open answer asks for. */
function needTexts(rule: Rule, { facts, worlds }: Build): string | null {
	const needIn = (inWorld: BuildFacts) => needOf(rule, { facts: inWorld, measures: measuresOfBuild });
	const wordsOf = (need: Need | null) => (need ? needWords(rule, need) : "");
	const needs = worlds.map((world) => needIn(world.facts));
	const texts = [...new Set(needs.map(wordsOf))];
	if (texts.length === 1) return texts[0] || null;
	const open = needIn(facts);
	if (open && needs.every((need) => !need || open.standsFor?.includes(need.messageId))) return wordsOf(open);
	const differing = texts.filter((text) => text !== "");
	return differing.length > 3
		? "This depends on answers that are still open; find those out first."
		: `Find out first: ${differing.join(" Or: ")}`;
}
