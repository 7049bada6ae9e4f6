import { valueIn } from "../parts/form-draft.ts";
import { type FormField, type FormPath, fieldAt, leadingFields } from "../parts/form-fields.ts";
import type { OwnPlace } from "./own-places.ts";
import type { PartForm } from "./part-form.ts";

/** The thing a fact belongs to: an entry, a list, a group; the empty path is the part itself. */
export function containerOf({ kind }: PartForm, path: FormPath): FormPath {
	for (let length = path.length - 1; length > 0; length--)
		if (fieldAt(kind, path.slice(0, length))) return path.slice(0, length);
	return [];
}

/** The facts asked one after the other inside a container. */
export function askedIn({ kind }: PartForm, container: FormPath): readonly FormField[] {
	if (container.length === 0) return leadingFields(kind);
	const typed = fieldAt(kind, container)?.typed;
	return typed?.as === "thing" ? typed.fields : [];
}

/** Place of a fact among those asked in its container, from 0; -1 where it is not asked. */
export function placeAmongAsked(form: PartForm, path: FormPath): number {
	const container = containerOf(form, path);
	const key = path.slice(container.length).join(".");
	return askedIn(form, container).findIndex((field) => field.path.join(".") === key);
}

/** Where a fact is asked. A group that is not known yet is asked fact by fact. */
export function placeOfFact(form: PartForm, path: FormPath): OwnPlace {
	const typed = fieldAt(form.kind, path)?.typed;
	const isGroup = typed?.as === "thing" && typeof path.at(-1) === "string";
	const [first] = typed?.as === "thing" ? typed.fields : [];
	if (isGroup && first && valueIn(form.draft, path) === undefined)
		return { at: "fact-form", path: [...path, ...first.path], guided: true };
	return { at: "fact-form", path };
}

/** The page of the form that shows a fact. */
export function formPageOf(form: PartForm, path: FormPath): OwnPlace {
	const isShown = placeAmongAsked(form, path) >= 0 || valueIn(form.draft, path) !== undefined;
	return isShown ? { at: "part-form" } : { at: "part-form", page: "all" };
}

/** What comes after a fact: the next one asked, else what it belongs to. `done`: all facts were asked. */
export function placeAfterFact(
	form: PartForm,
	path: FormPath,
	guided: boolean,
): { readonly place: OwnPlace; readonly done?: true } {
	const container = containerOf(form, path);
	const asked = askedIn(form, container);
	const at = placeAmongAsked(form, path);
	if (container.length === 0) {
		const next = form.isGuided && at >= 0 ? asked[at + 1] : undefined;
		if (next) return { place: placeOfFact(form, next.path) };
		return { place: formPageOf(form, path), ...(form.isGuided ? { done: true } : {}) };
	}
	if (!guided) return { place: { at: "fact-form", path: container } };
	const next = at >= 0 ? asked[at + 1] : undefined;
	if (next) {
		const inner = [...container, ...next.path];
		return { place: { at: "fact-form", path: inner, guided: true } };
	}
	return placeAfterThing(form, container);
}

/** What comes after a thing of which all facts were asked: its list, or what comes after a group. */
export function placeAfterThing(form: PartForm, path: FormPath): { readonly place: OwnPlace; readonly done?: true } {
	if (typeof path.at(-1) === "number") return { place: { at: "fact-form", path: path.slice(0, -1) } };
	return placeAfterFact(form, path, containerOf(form, path).length > 0);
}

/** What comes before a fact: the one asked before, else what it belongs to. */
export function placeBeforeFact(form: PartForm, path: FormPath, guided: boolean): OwnPlace {
	const container = containerOf(form, path);
	const before = askedIn(form, container)[placeAmongAsked(form, path) - 1];
	if (container.length === 0)
		return before && form.isGuided ? { at: "fact-form", path: before.path } : formPageOf(form, path);
	if (guided && before) return { at: "fact-form", path: [...container, ...before.path], guided: true };
	if (typeof container.at(-1) === "number")
		return { at: "fact-form", path: container.slice(0, guided ? -1 : undefined) };
	// A group that is not known yet shows nothing by itself.
	return valueIn(form.draft, container) === undefined
		? placeBeforeFact(form, container, false)
		: { at: "fact-form", path: container };
}
