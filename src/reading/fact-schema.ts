import type { checkJson } from "../parts/check-json.ts";
import { type PartKind, partKinds } from "../parts/part-kinds.ts";

/** As far as a schema is looked into here; what it is made of is known in `parts` only. */
interface Nested {
	readonly shape?: Readonly<Record<string, Nested>>;
	readonly def: { readonly type: string; readonly innerType?: Nested; readonly element?: Nested };
}
type Schema = Parameters<typeof checkJson>[0];

const schemas = new Map<string, Schema>();

/** The schema of the fact at a path, which must be one of the kind's. */
export function schemaOf(kind: PartKind, path: string): Schema {
	const key = `${kind} ${path}`;
	const known = schemas.get(key);
	if (known) return known;
	let at = partKinds[kind].schema as unknown as Nested;
	for (const name of path.split(".")) at = required(at.shape?.[name] ?? at);
	schemas.set(key, at as unknown as Schema);
	return at as unknown as Schema;
}

function required(schema: Nested): Nested {
	return schema.def.type === "optional" && schema.def.innerType ? required(schema.def.innerType) : schema;
}

/** What the entries of a list are: words, figures, choices, or groups of facts; null for a fact that is no list. */
export function entriesOf(kind: PartKind, path: string): "words" | "figures" | "choices" | "groups" | null {
	const { element } = (schemaOf(kind, path) as unknown as Nested).def;
	if (element === undefined) return null;
	switch (required(element).def.type) {
		case "string":
			return "words";
		case "number":
			return "figures";
		case "enum":
		case "union":
			return "choices";
		default:
			return "groups";
	}
}
