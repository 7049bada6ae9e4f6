/** The form and version that a file names as its schema, such as answers and 2 for "boardwalk/answers@2". */
export interface SchemaVersion {
	readonly form: string;
	readonly version: number;
}

/** What a parsed file says it is, or null where it names no schema of ours. */
export function schemaVersion(json: unknown): SchemaVersion | null {
	if (json === null || typeof json !== "object" || Array.isArray(json)) return null;
	const { schema } = json as { readonly schema?: unknown };
	const found = typeof schema === "string" ? /^boardwalk\/([a-z][a-z-]{0,39})@([1-9]\d{0,5})$/.exec(schema) : null;
	return found ? { form: found[1] ?? "", version: Number(found[2]) } : null;
}
