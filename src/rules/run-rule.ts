import type { Board } from "../parts/board.ts";
import { addFact, type FactSubject, lookUpFact, pathParts } from "../parts/fact-path.ts";
import type { AssumedFact } from "../reference/assumed-facts.ts";
import type { Need, Rule } from "./define-rule.ts";
import { cannotTell, type FactRead, type Finding, type Outcome, pass } from "./outcome.ts";

/** A subject with the board's assumed facts filled in, and the list of them. */
export interface RuleSubject extends FactSubject {
	readonly board?: Board;
	readonly assumed: readonly AssumedFact[];
}

/**
 * Runs one rule on one subject. A fact that must be read and is missing gives "can't tell" and its path; a whole part
 * that will be bought to suit the board, or that there will not be, binds nothing.
 */
export function runRule(rule: Rule, subject: RuleSubject): Finding {
	const values: Record<string, unknown> = {};
	let early: Outcome | null = null;
	for (const path of rule.reads) {
		const found = lookUpFact(subject, path);
		if (found.known) values[path] = found.value;
		else if (found.state === "open" || found.state === "none") early = pass(found.state, { part: found.missing });
		else if (!early || early.kind === "unknown")
			early = cannotTell([...new Set([...(early?.kind === "unknown" ? early.missing : []), found.missing])]);
	}
	if (early) return findingOf(rule, early, values, subject);
	for (const path of rule.mayRead) addFact(values, path, subject);
	return findingOf(rule, rule.check(values), values, subject);
}

/** What was read, and how each is known. */
function factsRead(values: Readonly<Record<string, unknown>>, subject: RuleSubject): readonly FactRead[] {
	return Object.entries(values).flatMap(([path, value]): FactRead[] => {
		// A measured fact that there is none of.
		if (value === undefined) return [];
		const { root, inside } = pathParts(path);
		const assumption = root === "board" ? subject.assumed.find((assumed) => assumed.path === inside) : undefined;
		return [
			assumption
				? { path, value, standing: "assumed", source: assumption.source, because: assumption.because }
				: { path, value, standing: standingOf(subject, path) },
		];
	});
}

/** The line of the requirement sheet that a rule gives for a build without any board, or null. */
export function needOf(rule: Rule, subject: FactSubject): Need | null {
	if (!rule.needs) return null;
	const values: Record<string, unknown> = {};
	for (const path of [...rule.reads, ...rule.mayRead]) {
		const found = lookUpFact(subject, path);
		if (found.known) values[path] = found.value;
	}
	return rule.needs(values);
}

/** What a part's own evidence says of a fact; a fact without evidence counts as stated by whoever gave the part. */
function standingOf(subject: RuleSubject, path: string): "stated" | "assumed" {
	const { root, inside } = pathParts(path);
	const have = root === "board" ? subject.board : undefined;
	const part = have ?? partIn(subject, root);
	return part?.evidence?.[inside]?.standing ?? "stated";
}

function partIn(subject: RuleSubject, root: string): Pick<Board, "evidence"> | undefined {
	const have = (
		subject.facts as unknown as Record<string, { state?: string; part?: Pick<Board, "evidence"> } | undefined>
	)[root];
	return have?.state === "have" ? have.part : undefined;
}

function findingOf(
	rule: Rule,
	outcome: Outcome,
	values: Readonly<Record<string, unknown>>,
	subject: RuleSubject,
): Finding {
	const isFailure = outcome.kind === "fail";
	return {
		ruleId: rule.id,
		messageId: outcome.messageId,
		data: outcome.data,
		// Most findings are only counted, and nobody asks what they rest on.
		get facts() {
			return factsRead(values, subject);
		},
		verdict:
			outcome.kind === "unknown" ? "cannot-tell" : isFailure && rule.severity === "stops" ? "does-not-fit" : "fits",
		severity: isFailure ? rule.severity : outcome.kind === "caution" ? outcome.severity : null,
		missing: outcome.kind === "unknown" ? outcome.missing : [],
	};
}
