/** A part that is being put together; the schema is held against it when it is whole. */
export type Plain = { readonly [key: string]: unknown };

/** The draft of a part with a fact at a dotted path. */
export function withFact(draft: Plain, path: string, value: unknown): Plain {
	const [key = "", ...rest] = path.split(".");
	if (rest.length === 0) return { ...draft, [key]: value };
	return { ...draft, [key]: withFact(groupAt(draft, key), rest.join("."), value) };
}

/** The draft without the fact at a dotted path, and without a group that then has nothing in it. */
export function withoutFact(draft: Plain, path: string): Plain {
	const [key = "", ...rest] = path.split(".");
	const { [key]: before, ...others } = draft;
	if (rest.length === 0 || before === undefined) return others;
	const group = withoutFact(groupAt(draft, key), rest.join("."));
	return Object.keys(group).length > 0 ? { ...draft, [key]: group } : others;
}

function groupAt(draft: Plain, key: string): Plain {
	return ((Object.hasOwn(draft, key) ? draft[key] : undefined) ?? {}) as Plain;
}
