import * as z from "zod";
import { extraTitles, leadingFacts, leftOutOfForms, mayRepeat } from "./form-order.ts";
import { type PartKind, partKinds } from "./part-kinds.ts";

/** The way to a fact inside a part: keys, and places in lists from 0. */
export type FormPath = readonly (string | number)[];

/** How a fact is typed. Bounds are the definition's own, both ends allowed. */
export type TypedAs =
	| { readonly as: "choice"; readonly choices: readonly (string | number)[] }
	/** Several of a list; `repeats`: the same one may be there twice, such as two plugs of a kind. */
	| {
			readonly as: "several";
			readonly choices: readonly string[];
			readonly least: number;
			readonly most: number;
			readonly repeats: boolean;
	  }
	/** Several lines of words. */
	| { readonly as: "texts"; readonly least: number; readonly most: number; readonly letters: number }
	| {
			readonly as: "numbers";
			readonly least: number;
			readonly most: number;
			readonly each: Extract<TypedAs, { as: "number" }>;
	  }
	| { readonly as: "number"; readonly least: number; readonly most: number; readonly whole: boolean }
	| { readonly as: "yes or no" }
	| { readonly as: "text"; readonly letters: number }
	| { readonly as: "date" }
	| { readonly as: "money" }
	/** Something for each of several names, or of several numbers. */
	| {
			readonly as: "pairs";
			readonly by: "name" | "number";
			readonly isName: (name: string) => boolean;
			readonly each: TypedAs;
	  }
	/** A list of things that have facts of their own. */
	| { readonly as: "things"; readonly least: number; readonly most: number; readonly fields: readonly FormField[] }
	/** One thing with facts of its own, some of which it cannot be without. */
	| { readonly as: "thing"; readonly fields: readonly FormField[] };

/** One fact as a form asks for it. */
export interface FormField {
	/** Way to it from the part, or from the thing it belongs to. */
	readonly path: readonly string[];
	readonly title: string;
	readonly unit?: string;
	readonly whereToFind: string;
	readonly typed: TypedAs;
	/** What it belongs to cannot be without it. */
	readonly required: boolean;
}

const known = new Map<PartKind, readonly FormField[]>();

/** The facts of a part kind in the order they are asked: what matters most first, then as they are defined. */
export function formFields(kind: PartKind): readonly FormField[] {
	const before = known.get(kind);
	if (before) return before;
	const all = fieldsOf(partKinds[kind].schema).filter(({ path }) => !leftOutOfForms.has(path[0] ?? ""));
	const leading = leadingFacts[kind].flatMap((path) => all.find((field) => field.path.join(".") === path) ?? []);
	const fields = [...leading, ...all.filter((field) => !leading.includes(field))];
	known.set(kind, fields);
	return fields;
}

/** The facts of a kind that decide most, in order. */
export function leadingFields(kind: PartKind): readonly FormField[] {
	return formFields(kind).slice(0, leadingFacts[kind].length);
}

/** The field at a path in a part; for an entry of a list, the entry as one thing. Undefined where there is none. */
export function fieldAt(kind: PartKind, path: FormPath): FormField | undefined {
	return fieldIn(formFields(kind), path);
}

function fieldIn(fields: readonly FormField[], path: FormPath): FormField | undefined {
	if (path.length === 0) return undefined;
	const field = fields.find(({ path: keys }) => keys.every((key, index) => key === path[index]));
	if (!field) return undefined;
	const rest = path.slice(field.path.length);
	if (rest.length === 0) return field;
	if (field.typed.as === "thing") return fieldIn(field.typed.fields, rest);
	if (field.typed.as !== "things" || typeof rest[0] !== "number") return undefined;
	if (rest.length > 1) return fieldIn(field.typed.fields, rest.slice(1));
	const { fields: inner } = field.typed;
	return { ...field, title: `${field.title}, number ${rest[0] + 1}`, typed: { as: "thing", fields: inner } };
}

function fieldsOf(object: z.ZodObject): readonly FormField[] {
	return Object.entries(object.shape as Record<string, z.ZodType>).flatMap(([key, schema]): readonly FormField[] => {
		const words = schema.meta() as { title?: string; unit?: string; whereToFind?: string } | undefined;
		const inner = unwrapped(schema);
		const required = !(schema instanceof z.ZodOptional);
		// A group that may hold any of its facts is no thing of its own: its facts stand in the form themselves.
		if (inner instanceof z.ZodObject && !required && !isMoney(inner)) {
			const fields = fieldsOf(inner);
			if (fields.every((field) => !field.required))
				return fields.map((field) => ({ ...field, path: [key, ...field.path] }));
		}
		return [
			{
				path: [key],
				title: words?.title ?? extraTitles[key] ?? key,
				...(words?.unit ? { unit: words.unit } : {}),
				whereToFind: words?.whereToFind ?? "",
				typed: typedAs(inner, key),
				required,
			},
		];
	});
}

function unwrapped(schema: z.ZodType): z.ZodType {
	return schema instanceof z.ZodOptional ? unwrapped(schema.unwrap() as z.ZodType) : schema;
}

function isMoney(schema: z.ZodObject): boolean {
	return Object.keys(schema.shape).sort().join() === "currency,minor";
}

function typedAs(schema: z.ZodType, key: string): TypedAs {
	if (schema instanceof z.ZodBoolean) return { as: "yes or no" };
	if (schema instanceof z.ZodISODate) return { as: "date" };
	if (schema instanceof z.ZodEnum) return { as: "choice", choices: schema.options as string[] };
	if (schema instanceof z.ZodUnion)
		return {
			as: "choice",
			choices: (schema.options as z.ZodType[]).map((option) => (option as z.ZodLiteral<string | number>).value),
		};
	if (schema instanceof z.ZodNumber)
		return {
			as: "number",
			least: schema.minValue ?? Number.MIN_SAFE_INTEGER,
			most: schema.maxValue ?? Number.MAX_SAFE_INTEGER,
			whole: schema.isInt,
		};
	if (schema instanceof z.ZodString) return { as: "text", letters: schema.maxLength ?? 400 };
	if (schema instanceof z.ZodObject)
		return isMoney(schema) ? { as: "money" } : { as: "thing", fields: fieldsOf(schema) };
	if (schema instanceof z.ZodRecord) {
		const isName = (name: string) => (schema.keyType as z.ZodString).safeParse(name).success;
		const each = typedAs(unwrapped(schema.valueType as z.ZodType), key);
		return { as: "pairs", by: isName("a") ? "name" : "number", isName, each };
	}
	if (schema instanceof z.ZodArray) return listTypedAs(schema, key);
	throw new TypeError(`no form is known for the fact "${key}"`);
}

function listTypedAs(schema: z.ZodArray, key: string): TypedAs {
	const { least, most } = boundsOfList(schema);
	const each = typedAs(unwrapped(schema.element as z.ZodType), key);
	switch (each.as) {
		case "choice":
			return { as: "several", choices: each.choices as string[], least, most, repeats: mayRepeat.has(key) };
		case "text":
			return { as: "texts", least, most, letters: each.letters };
		case "number":
			return { as: "numbers", least, most, each };
		case "thing":
			return { as: "things", least, most, fields: each.fields };
		default:
			throw new TypeError(`no form is known for a list of "${key}"`);
	}
}

function boundsOfList(schema: z.ZodArray): { readonly least: number; readonly most: number } {
	const checks = (schema._zod.def.checks ?? []).map(
		(check) => check._zod.def as { check: string; minimum?: number; maximum?: number },
	);
	return {
		least: checks.find(({ check }) => check === "min_length")?.minimum ?? 0,
		most: checks.find(({ check }) => check === "max_length")?.maximum ?? 100,
	};
}
