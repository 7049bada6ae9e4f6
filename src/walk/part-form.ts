import { checkParts } from "../parts/check-parts.ts";
import { type Evidence, evidencePath, type FormDraft, valueIn, withoutValue, withValue } from "../parts/form-draft.ts";
import { type FormPath, fieldAt } from "../parts/form-fields.ts";
import { partsFileSchemaName } from "../parts/market.ts";
import { type AnyPart, type PartKind, partKinds } from "../parts/part-kinds.ts";
import { titleInSentence } from "../parts/title-in-sentence.ts";
import type { PartReading, ReadDoubt, ReadFact, UnreadLine } from "../reading/part-reading.ts";

/** A part being filled in, or read from a page and not confirmed yet. */
export interface PartForm {
	readonly kind: PartKind;
	/** What is known of it so far, without id and evidence. */
	readonly draft: FormDraft;
	readonly evidence: Readonly<Record<string, Evidence>>;
	/** The own part that is being changed, or null for a new one. */
	readonly originalId: string | null;
	/** The question it is to answer, or null. */
	readonly questionId: string | null;
	readonly origin: "page" | "form" | "own";
	/** What the page gave: for quotes. */
	readonly facts: readonly ReadFact[];
	/** What the page leaves open and nobody has settled yet. */
	readonly doubts: readonly ReadDoubt[];
	readonly unread: readonly UnreadLine[];
	/** Something was entered that is not kept. */
	readonly isChanged: boolean;
	/** The facts that matter most are being asked one after the other. */
	readonly isGuided: boolean;
}

const empty: Omit<PartForm, "kind" | "questionId"> = {
	draft: {},
	evidence: {},
	originalId: null,
	origin: "form",
	facts: [],
	doubts: [],
	unread: [],
	isChanged: false,
	isGuided: false,
};

/** An empty form, which asks fact by fact. */
export function newForm(kind: PartKind, questionId: string | null): PartForm {
	return { ...empty, kind, questionId, isGuided: true };
}

/** The form that a page fills in. */
export function formOfReading({ kind, part, facts, doubts, unread }: PartReading, questionId: string | null): PartForm {
	const { draft, evidence } = takenApart(part);
	return { ...empty, kind, questionId, origin: "page", draft, evidence, facts, doubts, unread, isChanged: true };
}

/** The form of an own part, to change it. */
export function formOfPart(kind: PartKind, part: AnyPart): PartForm {
	return { ...empty, kind, questionId: null, origin: "own", originalId: part.id, ...takenApart(part) };
}

function takenApart(part: AnyPart): Pick<PartForm, "draft" | "evidence"> {
	const { id: _id, evidence, invented: _mark, ...draft } = part as AnyPart & { invented?: boolean };
	return { draft, evidence: (evidence ?? {}) as PartForm["evidence"] };
}

/** Who enters facts, and when. */
export interface Entering {
	readonly by: string;
	/** ISO date. */
	readonly asOf: string;
}

/** The form with a fact that the person gives: it is stated by that person, and no quote holds for it any more. */
export function withFact(form: PartForm, path: FormPath, value: unknown, { by, asOf }: Entering): PartForm {
	const draft = withValue(form.draft, path, value);
	const evidence = { ...form.evidence, [evidencePath(path)]: { standing: "stated", by, date: asOf } as const };
	// A price is worth little without the day it was seen.
	const dated = path[0] === "price" ? withValue(draft, ["checkedOn"], asOf) : draft;
	return { ...form, draft: dated, evidence, doubts: withoutDoubtsOf(form.doubts, path), isChanged: true };
}

/** The form with nothing known at a path. */
export function withoutFact(form: PartForm, path: FormPath, entering: Entering): PartForm {
	const draft = withoutValue(form.draft, path);
	const at = evidencePath(path);
	const { [at]: _, ...others } = form.evidence;
	const isLeft = valueIn(draft, at.split(".")) !== undefined;
	const evidence = isLeft
		? { ...others, [at]: { standing: "stated", by: entering.by, date: entering.asOf } as const }
		: others;
	return { ...form, draft, evidence, doubts: withoutDoubtsOf(form.doubts, path), isChanged: true };
}

function withoutDoubtsOf(doubts: readonly ReadDoubt[], path: FormPath): readonly ReadDoubt[] {
	const wanted = JSON.stringify(path);
	return doubts.filter(({ fact }) => JSON.stringify(factPath(fact)) !== wanted);
}

/** "m2Sockets[0].key" as keys and places. */
export function factPath(fact: string): FormPath {
	return [...fact.matchAll(/([^.[\]]+)|\[(\d+)\]/g)].map(([, key, place]) => (key === undefined ? Number(place) : key));
}

/**
 * One doubt settled with a value, or with undefined for "leave it out". An entry of a list is added at its end.
 *
 * @returns null where the fact cannot have the value
 */
export function settled(form: PartForm, index: number, value: unknown, entering: Entering): PartForm | null {
	const doubt = form.doubts[index];
	if (!doubt) return null;
	const rest = form.doubts.filter((_other, at) => at !== index);
	if (value === undefined) return { ...form, doubts: rest, isChanged: true };
	const path = factPath(doubt.fact);
	const isEntry = typeof path.at(-1) === "number";
	const list = path.slice(0, -1);
	const before = valueIn(form.draft, list);
	const at = isEntry ? [...list, Array.isArray(before) ? before.length : 0] : path;
	if (at.some((key, place) => typeof key === "number" && place < at.length - 1 && !isThere(form, at, place)))
		return null;
	if (!isAllowed(form, at, value)) return null;
	const isFromPage = doubt.might.some((one) => JSON.stringify(one) === JSON.stringify(value));
	const entered = withFact({ ...form, doubts: [] }, at, value, entering);
	const evidence = isFromPage
		? {
				...entered.evidence,
				[evidencePath(at)]: {
					standing: "stated",
					quote: quoteOf(doubt.quote),
					by: entering.by,
				} as const,
			}
		: entered.evidence;
	// The same fact in another line is settled too; entries of a list are things of their own.
	const open = isEntry ? rest : rest.filter(({ fact }) => fact !== doubt.fact);
	return { ...entered, evidence, doubts: open };
}

function isThere(form: PartForm, path: FormPath, place: number): boolean {
	return valueIn(form.draft, path.slice(0, place + 1)) !== undefined;
}

function quoteOf(quote: string): string {
	return quote.replace(/\s+/g, " ").trim().slice(0, 400) || "?";
}

/** Whether the part's definition allows a value at a path. Other facts of the draft may still be open. */
export function isAllowed({ kind, draft }: PartForm, path: FormPath, value: unknown): boolean {
	if (value === undefined || !fieldAt(kind, path)) return false;
	const checked = partKinds[kind].schema.safeParse({ id: "own", name: "own", ...withValue(draft, path, value) });
	return !(checked.error?.issues ?? []).some((issue) => path.every((key, index) => issue.path[index] === key));
}

/** Whether something would be lost if the form were dropped. */
export function isUnkept(form: PartForm | null): form is PartForm {
	return form?.isChanged === true;
}

/** The part that a form gives, or what is wrong with it in words. */
export function partOfForm(
	form: PartForm,
	{ id, name }: { readonly id: string; readonly name: string },
	{ by, asOf }: Entering,
): { readonly part: AnyPart } | { readonly problem: string } {
	const { kind, draft } = form;
	const evidence = Object.fromEntries(
		Object.entries(form.evidence)
			.filter(([path]) => valueIn(draft, path.split(".")) !== undefined)
			.map(([path, one]) => [
				path,
				// What was quoted just now comes from the page that was pasted today.
				form.origin === "page" && one.quote !== undefined ? { ...one, where: "pasted page", date: asOf, by } : one,
			]),
	);
	const part = { ...draft, id, name, ...(Object.keys(evidence).length > 0 ? { evidence } : {}) };
	const { faults } = checkParts({ schema: partsFileSchemaName, [partKinds[kind].list]: [part] });
	const [fault] = faults;
	if (!fault) return { part: part as AnyPart };
	return { problem: `This cannot be kept yet. ${whereWords(kind, fault.path)}: ${fault.expected}.` };
}

/** "Card slots, number 2, name on the board" for the path of a fault. */
function whereWords(kind: PartKind, path: string): string {
	const keys = factPath(path).slice(2);
	const titles = keys.flatMap((key, index) => {
		const field = fieldAt(kind, keys.slice(0, index + 1));
		if (!field) return [];
		return typeof key === "number" ? [`number ${key + 1}`] : [field.title];
	});
	const [first, ...others] = titles;
	return [first ?? "This part", ...others.map(titleInSentence)].join(", ");
}
