const dark = [
	"black",
	"dark",
	"grey",
	"gray",
	"anthracite",
	"charcoal",
	"graphite",
	"navy",
	"brown",
	"slate",
	"gunmetal",
];
const light = ["white", "silver", "cream", "ivory", "bare metal", "beige", "pale", "light", "pearl", "snow"];

/**
 * The kinds of colour that a page's words name, the one that comes first in front: "black with white lines" is dark, then
 * light (own convention). Empty where the words say neither.
 */
export function colourKinds(colour: string): readonly ("dark" | "light")[] {
	const words = colour.toLowerCase();
	const firstOf = (list: readonly string[]) =>
		Math.min(...list.map((word) => words.search(new RegExp(`\\b${word}\\b`))).filter((at) => at >= 0));
	const places = [
		{ kind: "dark", at: firstOf(dark) },
		{ kind: "light", at: firstOf(light) },
	] as const;
	return places
		.filter(({ at }) => Number.isFinite(at))
		.sort((one, other) => one.at - other.at)
		.map(({ kind }) => kind);
}

/** The kind of colour a board has by its page: the first one named; null where none is. */
export function colourKind(colour: string): "dark" | "light" | null {
	return colourKinds(colour)[0] ?? null;
}
