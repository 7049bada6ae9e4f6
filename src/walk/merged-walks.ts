import { type Answer, type AnswersFile, answersFileSchemaName, type Suggestion } from "../parts/answers-file.ts";
import { sortedJson } from "../parts/fingerprint.ts";
import { isSame, mergeParts, type PartMerge } from "./merged-parts.ts";

/** Which of the two walks. */
export type Side = "one" | "other";

/** What became of a question to which the two walks say something different. */
export interface AnswerMerge {
	readonly questionId: string;
	/**
	 * "taken": one walk alone has an answer, or changed it. "decided": one of the answers was left aside before. "conflict":
	 * nobody can tell which counts, so the person has to. "open": it was a conflict before, and still is.
	 */
	readonly how: "taken" | "decided" | "conflict" | "open";
	/** Whose answer counts. */
	readonly from?: Side;
	readonly one: Answer | null;
	readonly other: Answer | null;
}

/** What two walks have in common and what not, for a person to be told. */
export interface WalksMerged {
	readonly walk: AnswersFile;
	/** The two as they were merged: where own parts got new ids, their answers name those. */
	readonly sides: { readonly one: AnswersFile; readonly other: AnswersFile };
	/** In the order of the questions' ids. */
	readonly answers: readonly AnswerMerge[];
	readonly parts: readonly PartMerge[];
	/** Suggestions that one walk alone has. */
	readonly suggestions: { readonly one: number; readonly other: number };
	/** Where the two are called differently. */
	readonly names: { readonly one: string | null; readonly other: string | null } | null;
	/** The boards to choose from differ. */
	readonly marketsDiffer: boolean;
}

/**
 * Merges two walks into one. Pure, and the same whichever is named first. No answer, note, part or suggestion is lost:
 * what cannot stand in the answers stands in the suggestions. Two answers that differ are rivals, and the question counts
 * as not sure until the person has decided.
 *
 * @param start the walk that both came from: then a change counts for more than no change. Without it an answer counts
 * for more than none, and nothing else is guessed.
 */
export function mergeWalks(first: AnswersFile, second: AnswersFile, start: AnswersFile | null = null): WalksMerged {
	const { one, other, parts, told } = mergeParts(first, second, start);
	const suggestions = new Map<string, Suggestion>();
	for (const suggestion of [...newestOf(one), ...newestOf(other)]) put(suggestions, suggestion);
	const answers: (readonly [string, Answer])[] = [];
	const merges: AnswerMerge[] = [];
	const ids = [one, other].flatMap((file) => [...Object.keys(file.answers), ...newestOf(file).map(questionOf)]);
	for (const questionId of [...new Set(ids)].sort()) {
		const said = { one: at(one, questionId), other: at(other, questionId) };
		const before = start ? at(start, questionId) : undefined;
		const merged = mergeAnswers(questionId, said, before, suggestions, { one: one.asOf, other: other.asOf });
		if (merged.answer) answers.push([questionId, merged.answer]);
		if (merged.how) {
			const { how, from } = merged;
			merges.push({ questionId, how, ...(from ? { from } : {}), ...said });
		}
	}
	const all = [...suggestions.values()];
	const name = mergedName(one.name, other.name, start ? start.name : undefined, start !== null);
	const later = laterOf(one, other);
	return {
		walk: {
			schema: answersFileSchemaName,
			...(name === undefined ? {} : { name }),
			asOf: later.asOf,
			market: later.market,
			answers: Object.fromEntries(answers),
			parts: [...parts],
			...(all.length > 0 ? { suggestions: all } : {}),
		},
		sides: { one, other },
		answers: merges,
		parts: told,
		suggestions: { one: onlyIn(one, other), other: onlyIn(other, one) },
		names: one.name === other.name ? null : { one: one.name ?? null, other: other.name ?? null },
		marketsDiffer: one.market.fingerprint !== other.market.fingerprint,
	};
}

type Said = { readonly one: Answer | null; readonly other: Answer | null };
type Decision = { readonly answer: Answer | null; readonly how?: AnswerMerge["how"]; readonly from?: Side };

/** What counts for one question; answers that do not count are put among the suggestions. */
function mergeAnswers(
	questionId: string,
	{ one, other }: Said,
	before: Answer | null | undefined,
	suggestions: Map<string, Suggestion>,
	on: { readonly one: string; readonly other: string },
): Decision {
	const asSuggestion = (answer: Answer, side: Side, state: Suggestion["state"], isRival: boolean): Suggestion => ({
		questionId,
		status: answer.status === "answered" ? "answered" : "not-sure",
		...(answer.value === undefined ? {} : { value: answer.value }),
		by: answer.by ?? "builder",
		...(answer.note === undefined ? {} : { why: answer.note }),
		on: on[side],
		state,
		...(isRival ? { rival: true as const } : {}),
	});
	/** Keeps what is said nowhere else: another value, who else gave it, a note. */
	const keep = (answer: Answer | null, side: Side, counts: Answer | null) => {
		if (!answer || isSame(answer, counts)) return;
		const says = answer.status === "answered" || answer.note !== undefined || answer.value !== undefined;
		const key = keyOf(asSuggestion(answer, side, "left", false));
		if (says && !suggestions.has(key))
			put(suggestions, asSuggestion(answer, side, isSameValue(answer, counts) ? "taken" : "left", false));
	};
	const rivals = () =>
		[...suggestions.values()].filter((suggestion) => suggestion.questionId === questionId && suggestion.rival);
	const isLeft = (answer: Answer, side: Side) =>
		rivals().some(
			({ state, ...rival }) => state === "left" && isSameAs(rival, asSuggestion(answer, side, "left", true)),
		);
	const conflict = (how: "conflict" | "open", isAnyRival = false): Decision => {
		for (const [answer, side] of [
			[one, "one"],
			[other, "other"],
		] as const) {
			if (!answer) continue;
			if (answer.status === "answered" || isAnyRival) reopen(suggestions, asSuggestion(answer, side, "open", true));
			else keep(answer, side, null);
		}
		return { answer: { status: "not-sure" }, how };
	};
	const won = (from: Side, how?: "taken" | "decided"): Decision => {
		const [answer, rest] = from === "one" ? [one, other] : [other, one];
		// What both came from was changed on purpose.
		if (before === undefined || !isSame(rest, before)) keep(rest, from === "one" ? "other" : "one", answer);
		return { answer, ...(how ? { how, from } : {}) };
	};
	const isOpen = rivals().some(({ state }) => state === "open");
	if (isOpen) {
		const known = rivals().filter(({ state }) => state === "open");
		const isNew = (answer: Answer | null, side: Side) =>
			answer?.status === "answered" &&
			!known.some((rival) => isSameAs(rival, asSuggestion(answer, side, "open", true)));
		return conflict(isNew(one, "one") || isNew(other, "other") ? "conflict" : "open");
	}
	if (isSame(one, other)) return { answer: one };
	if (one && other && isSameValue(one, other)) return won(standsFirst(one, other) ? "one" : "other");
	if (before !== undefined && isSame(one, before)) return won("other", "taken");
	if (before !== undefined && isSame(other, before)) return won("one", "taken");
	const [oneRank, otherRank] = [rank(one), rank(other)];
	const bothSay = oneRank === answeredRank && otherRank === answeredRank;
	if (bothSay && one && other) {
		const [oneLeft, otherLeft] = [isLeft(one, "one"), isLeft(other, "other")];
		if (oneLeft !== otherLeft) return won(oneLeft ? "other" : "one", "decided");
		return conflict("conflict");
	}
	// Both went away from the start, and one of them to an answer: nobody can tell which is the later thought.
	if (before !== undefined && one && other && Math.max(oneRank, otherRank) === answeredRank)
		return conflict("conflict", true);
	const isOne = oneRank === otherRank && one && other ? standsFirst(one, other) : oneRank > otherRank;
	return won(isOne ? "one" : "other", Math.max(oneRank, otherRank) === answeredRank ? "taken" : undefined);
}

const answeredRank = 3;

/** How much an answer says: a value, not sure, passed over, nothing. */
function rank(answer: Answer | null): number {
	return answer === null ? 0 : { answered: answeredRank, "not-sure": 2, skipped: 1 }[answer.status];
}

/** Of the same answer given twice one stands in the answers: one with a note, else by whoever comes first by name. */
function standsFirst(one: Answer, other: Answer): boolean {
	const order = (answer: Answer) => `${answer.note === undefined ? 1 : 0} ${sortedJson(answer)}`;
	return order(one) < order(other);
}

function isSameValue(one: Answer, other: Answer | null): boolean {
	return one.status === other?.status && isSame(one.value, other.value);
}

function at({ answers }: AnswersFile, questionId: string): Answer | null {
	return Object.hasOwn(answers, questionId) ? (answers[questionId] ?? null) : null;
}

function questionOf({ questionId }: Suggestion): string {
	return questionId;
}

/** What makes a suggestion the same one in two files, however far it has come in each. */
function keyOf({ questionId, status, value, by, why }: Suggestion): string {
	return sortedJson({ questionId, status, value, by, why });
}

/** The same answer by the same person, with whatever reason. */
function isSameAs(one: Omit<Suggestion, "state">, other: Suggestion): boolean {
	return one.status === other.status && isSame(one.value, other.value) && one.by === other.by;
}

/** The suggestions of a walk; of the same one made twice the last. */
function newestOf({ suggestions = [] }: AnswersFile): readonly Suggestion[] {
	return [...new Map(suggestions.map((suggestion) => [keyOf(suggestion), suggestion])).values()];
}

/** Adds a suggestion; of the same one the decided copy stays, and one that was decided in two ways is open again. */
function put(suggestions: Map<string, Suggestion>, suggestion: Suggestion): void {
	const key = keyOf(suggestion);
	const known = suggestions.get(key);
	if (!known) {
		suggestions.set(key, suggestion);
		return;
	}
	const [earlier, later] = known.on <= suggestion.on ? [known, suggestion] : [suggestion, known];
	const isRival = known.rival || suggestion.rival;
	// Made once more after the other copy was decided.
	const isAnew = !isRival && later.state === "open" && earlier.on < later.on;
	const { rival: _, ...facts } = isAnew ? later : earlier;
	suggestions.set(key, {
		...facts,
		state: isAnew ? "open" : mergedState(known.state, suggestion.state),
		...(isRival ? { rival: true } : {}),
	});
}

function mergedState(one: Suggestion["state"], other: Suggestion["state"]): Suggestion["state"] {
	if (one === other) return one;
	if (one === "open") return other;
	return other === "open" ? one : "open";
}

/** The rival of this answer, open: as it is, decided before, or new. */
function reopen(suggestions: Map<string, Suggestion>, rival: Suggestion): void {
	const known = [...suggestions].find(
		([, suggestion]) => suggestion.questionId === rival.questionId && suggestion.rival && isSameAs(suggestion, rival),
	);
	const isKnown = known !== undefined && known[1].why === rival.why;
	const key = isKnown ? known[0] : keyOf(rival);
	const before = isKnown ? known[1] : suggestions.get(key);
	const [on = rival.on] = [rival.on, before?.on ?? rival.on].sort();
	suggestions.set(key, { ...(isKnown ? known[1] : rival), state: "open", on });
}

function onlyIn({ suggestions = [] }: AnswersFile, other: AnswersFile): number {
	const known = new Set((other.suggestions ?? []).map(keyOf));
	return suggestions.filter((suggestion) => !known.has(keyOf(suggestion))).length;
}

const between = " + ";
/** As answersFile has it. In UTF-16 units. */
const mostOfName = 80;

/** Both names, or the one that was changed since the start. Names that do not fit together are cut at the end. */
function mergedName(
	one: string | undefined,
	other: string | undefined,
	before: string | undefined,
	hasStart: boolean,
): string | undefined {
	if (one === other || other === undefined) return hasStart && other === undefined && one === before ? other : one;
	if (one === undefined) return hasStart && other === before ? one : other;
	if (hasStart && one === before) return other;
	if (hasStart && other === before) return one;
	const names = [...new Set([...one.split(between), ...other.split(between)])].sort();
	let name = "";
	for (const next of names) {
		const longer = name === "" ? next : name + between + next;
		if (longer.length <= mostOfName) name = longer;
	}
	return name;
}

/** The later of two walks; of two of one day always the same. */
function laterOf(one: AnswersFile, other: AnswersFile): AnswersFile {
	const order = ({ asOf, market }: AnswersFile) => `${asOf} ${sortedJson(market)}`;
	return order(one) > order(other) ? one : other;
}
