import { allCriteria } from "../criteria/all-criteria.ts";
import { ownersTable } from "../criteria/owners.ts";
import { sourceById } from "../reference/sources.ts";
import { allRules } from "../rules/all-rules.ts";
import type { Rule } from "../rules/define-rule.ts";
import { readWords } from "./read-words.ts";
import { sourceWords } from "./source-words.ts";

/** What a failure of a rule means, in words. */
export const severityWords = {
	stops: "stops it",
	"plan-around": "plan around it",
	"good-to-know": "good to know",
} as const satisfies Readonly<Record<Rule["severity"], string>>;

const chapters = [
	["fit/", "Fit: will it go together and start"],
	["features/", "Features: does it do what you want"],
	["quality/", "Build quality: will it hold up for years"],
	["build/", "Your parts among themselves: no board is taken out for these"],
] as const;

/** Every rule and criterion with what it asks, why, what it reads and where it comes from, as Markdown. */
export function ruleBook(): string {
	const rules = chapters.flatMap(([folder, title]) => [
		`## ${title}`,
		...allRules.filter(({ id }) => id.startsWith(folder)).flatMap(ruleLines),
	]);
	const criteria = allCriteria.flatMap(({ id, name, asks, why, reads, source, grounds, madeOf = [] }) => [
		`### ${id}: ${name}`,
		`${asks} ${why}`,
		[
			`- It reads: ${reads.map(readWords).join("; ")}`,
			`- Scale: ${grounds}`,
			...madeOf.map((part) => `- ${part.weight} of 100: ${part.name}`),
			`- Source: ${sourceWords(sourceById(source))}`,
		].join("\n"),
	]);
	return `${[
		"# The rule book",
		"Made by `npm run docs` from the rules themselves; a test fails when it lags. `boardwalk why ID` prints one of them.",
		...rules,
		ownersPage(),
		...criteria,
	].join("\n\n")}\n`;
}

/** What is scored, and which facts each criterion owns, as Markdown. */
export function ownersPage(): string {
	return [
		"## What is scored, and which facts each criterion owns",
		"A fact of a board has one owner, so that nothing counts twice. Your own parts and plans may be read by all.",
		ownersTable()
			.map(({ criterion: { id, name }, owns }) => `- ${id} (${name}): ${owns.join(", ")}`)
			.join("\n"),
	].join("\n\n");
}

function ruleLines(rule: Rule): readonly string[] {
	const { id, label, asks, why, severity, reads, mayRead, source } = rule;
	return [
		`### ${id}: ${label}`,
		`${asks} ${why}`,
		[
			`- If not: ${severityWords[severity]}`,
			`- It reads: ${[...reads, ...mayRead].map(readWords).join("; ")}`,
			`- Source: ${sourceWords(sourceById(source))}`,
		].join("\n"),
	];
}
