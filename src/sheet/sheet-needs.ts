import { measuresOfBuild } from "../choose/findings-of-market.ts";
import type { Build } from "../parts/build.ts";
import { allRules, ruleById } from "../rules/all-rules.ts";
import type { Rule } from "../rules/define-rule.ts";
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

/** One line where all worlds agree; else what each open answer would ask for. */
function needTexts(rule: Rule, build: Build): string | null {
	const byText = new Map<string, string>();
	for (const { facts, choices } of build.worlds) {
		const need = needOf(rule, { facts, measures: measuresOfBuild });
		const text = need ? needWords(rule, need) : "";
		if (!byText.has(text)) byText.set(text, choices.map(({ label }) => label).join(", "));
	}
	const texts = [...byText.keys()];
	if (texts.length === 1) return texts[0] || null;
	const differing = texts.filter((text) => text !== "");
	return differing.length > 3
		? "This depends on answers that are still open; find those out first."
		: `Find out first: ${differing.join(" Or: ")}`;
}
