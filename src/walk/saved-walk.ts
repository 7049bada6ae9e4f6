import { type AnswersFile, type AnswerValue, answersFileSchemaName, type OwnPart } from "../parts/answers-file.ts";
import { findPart, type Market } from "../parts/market.ts";
import type { PartKind } from "../parts/part-kinds.ts";
import { questionById } from "../questions/all-questions.ts";
import { tierNames } from "../questions/define-question.ts";
import { marketOf } from "./market-of.ts";
import { questionsAsked } from "./places.ts";
import { startWalk, type WalkContext, type WalkState } from "./walk-state.ts";

/** A walk as it is written to a file; reading it gives the same walk again. */
export function savedWalk({ market, asOf }: WalkContext, state: WalkState): AnswersFile {
	const { answers, ownParts, name, suggestions } = state;
	return {
		schema: answersFileSchemaName,
		...(name === null ? {} : { name }),
		asOf,
		market: { version: market.version, fingerprint: market.fingerprint },
		answers: { ...answers },
		parts: [...ownParts, ...keptParts(state)].slice(0, mostParts),
		...(suggestions.length > 0 ? { suggestions: [...suggestions] } : {}),
	};
}

/** An answers file holds no more own parts than this; see parts/answers-file. */
const mostParts = 500;

/** Parts kept for all walks without which another machine would not see the same: those named here, and all boards. */
function keptParts({ kept, ownParts, answers, suggestions }: WalkState): readonly OwnPart[] {
	const values = [...Object.values(answers), ...suggestions].map(({ value }) => value);
	const named = new Set(values.flatMap(idsIn));
	return kept.filter(
		({ kind, part }) =>
			(kind === "board" || named.has(part.id)) && !ownParts.some((own) => own.kind === kind && own.part.id === part.id),
	);
}

/** Ids of parts that an answer may name. */
function idsIn(value: AnswerValue | undefined): readonly string[] {
	if (typeof value === "string") return [value];
	if (Array.isArray(value)) return value;
	return typeof value === "object" && "part" in value ? [value.part] : [];
}

/** A walk taken up from a file, what was wrong with values in it, and what to tell. */
export interface TakenUp {
	readonly state: WalkState;
	/** Values that no such question can have: path and what was expected. The file is then not to be used. */
	readonly faults: readonly { readonly path: string; readonly expected: string }[];
	/** Things that no longer apply; the walk goes on without them. */
	readonly warnings: readonly string[];
}

/** Takes a walk up in a market: an unknown part id counts as not sure, and is told. */
export function takeUpWalk({ market, asOf }: WalkContext, file: AnswersFile): TakenUp {
	const inside = { market: marketOf(market, file.parts), asOf };
	const faults: { path: string; expected: string }[] = [];
	const warnings: string[] = [];
	for (const [id, answer] of Object.entries(file.answers)) {
		const question = questionById(id);
		if (!question) {
			warnings.push(`"${id}" is no question here; its answer is kept, but not used.`);
			continue;
		}
		if (answer.status !== "answered") continue;
		const path = `answers.${id}.value`;
		if (answer.value === undefined) {
			faults.push({ path, expected: "a value, because the status is answered" });
			continue;
		}
		const expected = question.expected(answer.value, inside);
		if (expected === null) continue;
		const gone = question.partKind ? partsGone(question.partKind, answer.value, inside.market) : [];
		if (gone.length > 0)
			warnings.push(
				`${question.label}: there is no part ${gone.map((part) => `"${part}"`).join(", ")} here, so this counts as not sure.`,
			);
		else faults.push({ path, expected });
	}
	if (file.market.fingerprint !== market.fingerprint && Object.keys(file.answers).length > 0)
		warnings.push(
			`These answers were given with other boards to choose from (${file.market.version}); the result may differ.`,
		);
	const who = file.answers["about/who"]?.value;
	const by = typeof who === "string" ? who : undefined;
	const state = {
		...startWalk(file.answers, file.parts, by),
		name: file.name ?? null,
		suggestions: file.suggestions ?? [],
	};
	return { state, faults, warnings };
}

/** Ids of parts in a value that the market does not have. */
function partsGone(kind: PartKind, value: AnswerValue, market: Market): readonly string[] {
	const named = Array.isArray(value) ? value : typeof value === "object" && "part" in value ? [value.part] : [];
	return named.filter((id) => !findPart(market, kind, id));
}

/** A kept walk in a few words: how much of what it is asked is answered, where it stopped, how long ago. */
export function summaryWords(file: AnswersFile, context: WalkContext): string {
	const asked = questionsAsked(context, startWalk(file.answers, file.parts));
	const dealtWith = asked.filter(({ id }) => file.answers[id]);
	const next = asked.find(({ id }) => !file.answers[id]);
	const where = next ? `, next comes ${tierNames[next.tier]}` : "";
	return `${dealtWith.length} of ${asked.length} answered${where}, ${agoWords(file.asOf, context.asOf)}`;
}

function agoWords(then: string, today: string): string {
	const days = Math.round((Date.parse(today) - Date.parse(then)) / 86_400_000);
	if (days === 0) return "today";
	if (days === 1) return "yesterday";
	return days > 1 ? `${days} days ago` : `on ${then}`;
}
