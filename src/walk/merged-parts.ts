import type { Answer, AnswersFile, AnswerValue, OwnPart, Suggestion } from "../parts/answers-file.ts";
import { sortedJson } from "../parts/fingerprint.ts";
import { partKinds } from "../parts/part-kinds.ts";
import { questionById } from "../questions/all-questions.ts";

/** Whether two JSON values are the same, in whatever order their keys stand. */
export function isSame(one: unknown, other: unknown): boolean {
	return one === other || sortedJson(one) === sortedJson(other);
}

/** What became of own parts that two walks have under one id. */
export interface PartMerge {
	readonly kind: OwnPart["kind"];
	readonly id: string;
	readonly name: string;
	/**
	 * "joined": one tells what the other leaves open. "changed": only this walk changed it since the start. "both": they
	 * contradict each other, and the second one has a new id.
	 */
	readonly how: "joined" | "changed" | "both";
	readonly newId?: string;
	/** Whose part was taken, or got the new id. */
	readonly from?: "one" | "other";
}

/** Two walks with one set of own parts; each refers to its own by the ids of the set. */
interface PartsMerged {
	readonly one: AnswersFile;
	readonly other: AnswersFile;
	readonly parts: readonly OwnPart[];
	readonly told: readonly PartMerge[];
}

/**
 * One set of own parts of two walks. The same id with facts that can stand together becomes one part; facts that
 * contradict become two parts. No fact is lost but one that only the other walk has changed since the start.
 */
export function mergeParts(one: AnswersFile, other: AnswersFile, start: AnswersFile | null): PartsMerged {
	const all = [...one.parts, ...other.parts];
	const taken = new Set(all.map(({ part }) => part.id));
	const told: PartMerge[] = [];
	const parts = new Map<string, OwnPart>();
	const newIds = { one: new Map<string, string>(), other: new Map<string, string>() };
	const moving: { readonly key: string; readonly own: OwnPart; readonly from: "one" | "other" }[] = [];
	for (const key of [...new Set(all.map(keyOf))].sort()) {
		const [mine, theirs] = [partAt(one, key), partAt(other, key)];
		const only = mine ?? theirs;
		if (!only) continue;
		if (!mine || !theirs || isSame(mine, theirs)) {
			parts.set(key, only);
			continue;
		}
		const { kind, part } = mine;
		const about = { kind, id: part.id, name: part.name };
		const before = start && partAt(start, key);
		const changedBy = before && (isSame(before, mine) ? "other" : isSame(before, theirs) ? "one" : null);
		const facts = changedBy ? null : joinedFacts(mine.part, theirs.part);
		const joined = facts && partKinds[kind].schema.safeParse(facts).success ? facts : null;
		if (changedBy) {
			parts.set(key, changedBy === "one" ? mine : theirs);
			told.push({ ...about, how: "changed", from: changedBy });
		} else if (joined) {
			parts.set(key, { kind, part: joined } as OwnPart);
			told.push({ ...about, how: "joined" });
		} else {
			// Which of the two keeps the id must not hang on which file was named first.
			const from = sortedJson(mine) < sortedJson(theirs) ? "other" : "one";
			parts.set(key, from === "other" ? mine : theirs);
			moving.push({ key, own: from === "other" ? theirs : mine, from });
		}
	}
	for (const { key, own, from } of moving) {
		const { kind, part } = own;
		// Merged before, it is there under its new id already.
		const known = [...parts.values()].find((other) => other.kind === kind && saysAllOf(other.part, part));
		const newId = known ? known.part.id : freeId(part.id, taken);
		newIds[from].set(key, newId);
		if (known) continue;
		taken.add(newId);
		parts.set(`${kind}/${newId}`, withId(own, newId));
		told.push({ kind, id: part.id, name: part.name, how: "both", newId, from });
	}
	return {
		one: withNewIds(one, newIds.one),
		other: withNewIds(other, newIds.other),
		// In the order in which they were described, as far as the walks tell it.
		parts: [...parts.values()].toSorted((a, b) => placeOf(all, a) - placeOf(all, b)),
		told,
	};
}

function keyOf({ kind, part }: OwnPart): string {
	return `${kind}/${part.id}`;
}

function partAt({ parts }: AnswersFile, key: string): OwnPart | undefined {
	return parts.find((own) => keyOf(own) === key);
}

function placeOf(all: readonly OwnPart[], own: OwnPart): number {
	const place = all.findIndex((one) => keyOf(one) === keyOf(own));
	return place < 0 ? all.length : place;
}

function withId({ kind, part }: OwnPart, id: string): OwnPart {
	return { kind, part: { ...part, id } } as OwnPart;
}

/** The longest id has 80 letters. */
function freeId(wanted: string, taken: ReadonlySet<string>): string {
	let id = wanted;
	for (let number = 2; taken.has(id); number++) id = `${wanted.slice(0, 74)}-${number}`;
	return id;
}

type Plain = Readonly<Record<string, unknown>>;

/** Whether one part has every fact of another one, whatever their ids. */
function saysAllOf(one: object, other: object): boolean {
	const joined = joinedFacts({ ...other, id: "" }, { ...one, id: "" });
	return joined !== null && isSame(joined, { ...one, id: "" });
}

/** All facts of both, or null where they contradict each other. */
function joinedFacts(one: object, other: object): Plain | null {
	const all: Record<string, unknown> = { ...one };
	for (const [key, value] of Object.entries(other)) {
		const before = Object.hasOwn(one, key) ? (one as Plain)[key] : undefined;
		if (before === undefined) all[key] = value;
		// Where it was read is no fact; of two places the later one counts.
		else if (key === "evidence" && isGroup(before) && isGroup(value)) all[key] = joinedEvidence(before, value);
		else if (isGroup(before) && isGroup(value)) {
			const inner = joinedFacts(before, value);
			if (!inner) return null;
			all[key] = inner;
		} else if (!isSame(before, value)) return null;
	}
	return all;
}

function joinedEvidence(one: Plain, other: Plain): Plain {
	const order = (value: unknown) => `${(value as { readonly date?: string }).date ?? ""} ${sortedJson(value)}`;
	const all: Record<string, unknown> = { ...one };
	for (const [path, value] of Object.entries(other)) {
		const before = Object.hasOwn(one, path) ? one[path] : undefined;
		all[path] = before === undefined || order(before) < order(value) ? value : before;
	}
	return all;
}

function isGroup(value: unknown): value is Plain {
	return value !== null && typeof value === "object" && !Array.isArray(value);
}

/** The walk with other ids for some of its own parts, in its answers and suggestions too. */
function withNewIds(file: AnswersFile, newIds: ReadonlyMap<string, string>): AnswersFile {
	if (newIds.size === 0) return file;
	const moved = <T extends Answer | Suggestion>(questionId: string, given: T): T => {
		const kind = questionById(questionId)?.partKind;
		if (!kind || given.value === undefined) return given;
		return { ...given, value: valueWith(given.value, (id) => newIds.get(`${kind}/${id}`) ?? id) };
	};
	return {
		...file,
		answers: Object.fromEntries(Object.entries(file.answers).map(([id, answer]) => [id, moved(id, answer)])),
		...(file.suggestions ? { suggestions: file.suggestions.map((one) => moved(one.questionId, one)) } : {}),
	};
}

function valueWith(value: AnswerValue, idOf: (id: string) => string): AnswerValue {
	if (Array.isArray(value)) return value.map(idOf);
	return typeof value === "object" && "part" in value ? { ...value, part: idOf(value.part) } : value;
}
