const dark = ["black", "dark", "grey", "gray", "anthracite", "charcoal", "graphite", "navy", "brown"];
const light = ["white", "silver", "cream", "ivory", "bare metal", "beige", "pale", "light"];

/**
 * Whether a colour as a page names it is dark or light; null where its words say neither. The first word that tells
 * decides: "black with white lines" is dark (own convention).
 */
export function colourKind(colour: string): "dark" | "light" | null {
	const words = colour.toLowerCase();
	const firstOf = (list: readonly string[]) =>
		Math.min(...list.map((word) => words.search(new RegExp(`\\b${word}\\b`))).filter((at) => at >= 0));
	const [toDark, toLight] = [firstOf(dark), firstOf(light)];
	if (!Number.isFinite(toDark) && !Number.isFinite(toLight)) return null;
	// "light grey" is light, "dark blue" is dark: whichever word comes first.
	return toDark < toLight ? "dark" : "light";
}
