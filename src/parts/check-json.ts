import * as z from "zod";

/** One fault in a file: where, and what was expected there. */
export interface Fault {
	/** Such as boards[2].memory.type; empty for the file as a whole. */
	readonly path: string;
	readonly expected: string;
	/** For a key that is not known: the key, and the keys known there. */
	readonly unknownKey?: string;
	readonly knownKeys?: readonly string[];
}

export type Checked<T> =
	| { readonly value: T; readonly faults: readonly [] }
	| { readonly value: null; readonly faults: readonly Fault[] };

/** Holds a parsed and cleaned JSON value against a schema; every fault is told, none stops the others. */
export function checkJson<T>(schema: z.ZodType<T>, json: unknown): Checked<T> {
	const result = schema.safeParse(json);
	if (result.success) return { value: result.data, faults: [] };
	return { value: null, faults: result.error.issues.flatMap((issue) => faultsOf(issue, schema, json)) };
}

function faultsOf(issue: z.core.$ZodIssue, schema: z.ZodType, json: unknown): readonly Fault[] {
	const path = pathText(issue.path);
	if (issue.code === "unrecognized_keys") {
		const knownKeys = keysAt(schema, issue.path, json);
		return issue.keys.map((unknownKey) => ({
			path: path === "" ? unknownKey : `${path}.${unknownKey}`,
			expected: "no such fact",
			unknownKey,
			knownKeys,
		}));
	}
	return [{ path, expected: expectedWords(issue) }];
}

/** What was expected, in words a person who never saw the schema understands. */
function expectedWords(issue: z.core.$ZodIssue): string {
	switch (issue.code) {
		case "invalid_type":
			return `${typeWords[issue.expected] ?? issue.expected}${issue.input === undefined && /undefined/.test(issue.message) ? ", but nothing stands there" : ""}`;
		case "invalid_value":
			return issue.values.length === 1
				? JSON.stringify(issue.values[0])
				: `one of ${issue.values.map((value) => JSON.stringify(value)).join(", ")}`;
		case "too_small":
			return issue.origin === "string" || issue.origin === "array"
				? `at least ${issue.minimum} of them`
				: `at least ${issue.minimum}`;
		case "too_big":
			return issue.origin === "string"
				? `at most ${issue.maximum} letters`
				: issue.origin === "array"
					? `at most ${issue.maximum} of them`
					: `at most ${issue.maximum}`;
		case "invalid_format":
			return issue.format === "date" ? "a date such as 2026-11-24" : issue.message.replace(/^Invalid string: /, "");
		case "invalid_union":
			return "one of the forms the schema lists (see: boardwalk schema)";
		default:
			return issue.message;
	}
}

const typeWords: Readonly<Record<string, string>> = {
	string: "a text in quotes",
	number: "a number",
	int: "a whole number",
	boolean: "true or false",
	array: "a list in [ ]",
	object: "a group in { }",
	record: "a group in { }",
};

/** boards[2].memory.type */
function pathText(path: readonly PropertyKey[]): string {
	return path
		.map((key) => (typeof key === "number" ? `[${key}]` : `.${String(key)}`))
		.join("")
		.replace(/^\./, "");
}

/** The keys that an object at a path may have. */
function keysAt(schema: z.ZodType, path: readonly PropertyKey[], json: unknown): readonly string[] {
	let at: z.ZodType | undefined = schema;
	let value = json;
	for (const key of path) {
		at = at && innerOf(at, value);
		value = (value as Record<PropertyKey, unknown> | undefined)?.[key];
		if (at instanceof z.ZodObject) at = (at.shape as Record<PropertyKey, z.ZodType>)[key];
		else if (at instanceof z.ZodArray) at = at.element as z.ZodType;
		else if (at instanceof z.ZodRecord) at = at.valueType as z.ZodType;
		else return [];
	}
	const inner = at && innerOf(at, value);
	return inner instanceof z.ZodObject ? Object.keys(inner.shape) : [];
}

function innerOf(schema: z.ZodType, value: unknown): z.ZodType {
	if (schema instanceof z.ZodOptional) return innerOf(schema.unwrap() as z.ZodType, value);
	if (schema instanceof z.ZodDiscriminatedUnion) {
		const tag = (value as { kind?: unknown } | undefined)?.kind;
		const option = (schema.options as z.ZodObject[]).find(
			(candidate) =>
				((candidate.shape as Record<string, z.ZodType>)["kind"] as z.ZodLiteral | undefined)?.value === tag,
		);
		return option ?? schema;
	}
	return schema;
}
