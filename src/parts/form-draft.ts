import type { evidence } from "./evidence.ts";
import { type FormField, type FormPath, formFields } from "./form-fields.ts";
import type { PartKind } from "./part-kinds.ts";

/** How one fact came to be known. */
export type Evidence = ReturnType<typeof evidence.parse>;

/** A part while its form is filled in: nothing in it need be there yet. */
export type FormDraft = Readonly<Record<string, unknown>>;

/** What stands at a path of a draft, or undefined. */
export function valueIn(draft: unknown, path: FormPath): unknown {
	let value = draft;
	for (const key of path) {
		if (value === null || typeof value !== "object" || !Object.hasOwn(value, key)) return undefined;
		value = (value as Record<string | number, unknown>)[key];
	}
	return value;
}

/** The draft with a value at a path; a place one behind the end of a list adds an entry. */
export function withValue(draft: FormDraft, path: FormPath, value: unknown): FormDraft {
	return put(draft, path, value) as FormDraft;
}

function put(inside: unknown, path: FormPath, value: unknown): unknown {
	const [key, ...rest] = path;
	if (key === undefined) return value;
	if (typeof key === "number") {
		const list = Array.isArray(inside) ? (inside as readonly unknown[]) : [];
		const at = Math.min(key, list.length);
		return [...list.slice(0, at), put(list[at], rest, value), ...list.slice(at + 1)];
	}
	const group = inside !== null && typeof inside === "object" && !Array.isArray(inside) ? inside : {};
	const before = Object.hasOwn(group, key) ? (group as Record<string, unknown>)[key] : undefined;
	return { ...group, [key]: put(before, rest, value) };
}

/** The draft without what stands at a path, and without a group or a list that this leaves empty. */
export function withoutValue(draft: FormDraft, path: FormPath): FormDraft {
	return (cut(draft, path) ?? {}) as FormDraft;
}

function cut(inside: unknown, path: FormPath): unknown {
	const [key, ...rest] = path;
	if (key === undefined || inside === null || typeof inside !== "object") return undefined;
	if (!Object.hasOwn(inside, key)) return inside;
	const inner = rest.length > 0 ? cut((inside as Record<string | number, unknown>)[key], rest) : undefined;
	if (Array.isArray(inside)) {
		// An entry of which nothing is known any more is still one of them.
		const kept = rest.length > 0 ? [inner ?? {}] : [];
		const list = [...inside.slice(0, Number(key)), ...kept, ...inside.slice(Number(key) + 1)];
		return list.length > 0 ? list : undefined;
	}
	const { [key]: _, ...others } = inside as Record<string | number, unknown>;
	if (inner !== undefined) return { ...others, [key]: inner };
	return Object.keys(others).length > 0 ? others : undefined;
}

/** Beginnings of the names that boards print beside their connectors; own convention where they differ. */
const nameStems: Readonly<Record<string, string>> = {
	cardSlots: "SLOT",
	m2Sockets: "M2",
	drivePorts: "SATA",
	fans: "FAN",
	lights: "LIGHT",
};

/**
 * A new entry for a list: with a name by number where its kind has one, else empty. `like` is an entry it is to
 * resemble in all but the name.
 */
export function newEntry(path: FormPath, field: FormField, entries: readonly unknown[], like?: object): FormDraft {
	const stem = nameStems[String(path.at(-1))];
	const isNamed = field.typed.as === "things" && field.typed.fields.some(({ path: [key] }) => key === "name");
	const taken = new Set(entries.map((entry) => (entry as { name?: unknown }).name));
	let number = entries.length + 1;
	while (taken.has(`${stem}_${number}`)) number++;
	return { ...like, ...(stem !== undefined && isNamed ? { name: `${stem}_${number}` } : {}) };
}

/** The path that evidence is kept under: the fact itself, or the list that it is in. */
export function evidencePath(path: FormPath): string {
	const place = path.findIndex((key) => typeof key === "number");
	return path.slice(0, place < 0 ? path.length : place).join(".");
}

/** Facts of a part that are known, in the order of its form. */
export function knownFields(kind: PartKind, part: unknown): readonly FormField[] {
	return formFields(kind).filter(({ path }) => valueIn(part, path) !== undefined);
}
