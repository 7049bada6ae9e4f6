/**
 * Strong three-valued logic (Kleene): "no" < "unknown" < "yes"; and is the least, or the greatest, not turns the order
 * round. Whatever comes out certain stays so however the unknowns turn out. The reverse does not hold: "p or not p"
 * comes out unknown though it is certain; where two parts share an unknown, go through its possible values instead.
 */
export type ThreeValued = "yes" | "unknown" | "no";

/** "yes" if all are (so for none), "no" if any is, else "unknown". */
export function kleeneAnd(...values: readonly ThreeValued[]): ThreeValued {
	if (values.includes("no")) return "no";
	return values.includes("unknown") ? "unknown" : "yes";
}

/** "no" if all are (so for none), "yes" if any is, else "unknown". */
export function kleeneOr(...values: readonly ThreeValued[]): ThreeValued {
	if (values.includes("yes")) return "yes";
	return values.includes("unknown") ? "unknown" : "no";
}

/** Swaps "yes" and "no"; "unknown" stays. */
export function kleeneNot(value: ThreeValued): ThreeValued {
	if (value === "unknown") return "unknown";
	return value === "yes" ? "no" : "yes";
}
