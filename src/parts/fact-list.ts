import * as z from "zod";
import { type PartKind, partKinds } from "./part-kinds.ts";

/** One fact of a part kind, as forms, columns and readers need it. */
export interface FactEntry {
	/** Dotted path inside the part, such as "memory.type". */
	readonly path: string;
	readonly title: string;
	readonly unit?: string;
	readonly whereToFind: string;
	readonly form: "text" | "number" | "whole number" | "yes or no" | "choice" | "list" | "group" | "other";
	/** For a choice, or a list of choices: the values allowed. */
	readonly choices?: readonly (string | number)[];
}

const lists = new Map<PartKind, readonly FactEntry[]>();

/** Every fact of a part kind, groups before their members, in the order of the definition. */
export function factsOf(kind: PartKind): readonly FactEntry[] {
	const known = lists.get(kind);
	if (known) return known;
	const entries: FactEntry[] = [];
	collect(partKinds[kind].schema, "", entries);
	lists.set(kind, entries);
	return entries;
}

/** The words for one fact, or undefined when the kind has no such fact. Paths inside lists are not entries. */
export function factAt(kind: PartKind, path: string): FactEntry | undefined {
	return factsOf(kind).find((entry) => entry.path === path);
}

function collect(object: z.ZodObject, prefix: string, into: FactEntry[]): void {
	for (const [key, field] of Object.entries(object.shape as Record<string, z.ZodType>)) {
		const words = field.meta() as { title?: string; unit?: string; whereToFind?: string } | undefined;
		const inner = unwrapped(field);
		const choices = choicesOf(inner);
		into.push({
			path: prefix + key,
			title: words?.title ?? key,
			...(words?.unit ? { unit: words.unit } : {}),
			whereToFind: words?.whereToFind ?? "",
			form: formOf(inner),
			...(choices ? { choices } : {}),
		});
		if (inner instanceof z.ZodObject) collect(inner, `${prefix}${key}.`, into);
	}
}

function unwrapped(schema: z.ZodType): z.ZodType {
	return schema instanceof z.ZodOptional ? unwrapped(schema.unwrap() as z.ZodType) : schema;
}

function formOf(schema: z.ZodType): FactEntry["form"] {
	if (schema instanceof z.ZodNumber) return schema.isInt ? "whole number" : "number";
	if (schema instanceof z.ZodBoolean) return "yes or no";
	if (choicesOf(schema) && !(schema instanceof z.ZodArray)) return "choice";
	if (schema instanceof z.ZodArray) return "list";
	if (schema instanceof z.ZodObject) return "group";
	return schema instanceof z.ZodRecord ? "other" : "text";
}

function choicesOf(schema: z.ZodType): readonly (string | number)[] | undefined {
	if (schema instanceof z.ZodEnum) return schema.options as string[];
	if (schema instanceof z.ZodArray) return choicesOf(schema.element as z.ZodType);
	if (schema instanceof z.ZodUnion) {
		const options = (schema.options as z.ZodType[]).map((option) =>
			option instanceof z.ZodLiteral ? (option.value as string | number) : undefined,
		);
		return options.every((option) => option !== undefined) ? (options as (string | number)[]) : undefined;
	}
	return undefined;
}
