import { minimalHittingSets } from "../maths/minimal-sets.ts";
import type { WayOut } from "./ways-out.ts";

/** Most conflicts told; more are no help (own convention). */
export const mostConflicts = 6;

/**
 * The smallest sets of demands that no board of the market meets together, as ids of rules; fewest first, at most six.
 * They are the minimal hitting sets of the smallest ways out (Reiter 1987, from memory; Liffiton & Sakallah 2008).
 */
export function conflictsOf(ways: readonly Pick<WayOut, "giveUp">[]): readonly (readonly string[])[] {
	if (ways.length === 0) return [];
	return minimalHittingSets(ways.map(({ giveUp }) => new Set(giveUp)))
		.map((rules) => [...rules].sort())
		.sort((one, other) => one.length - other.length || (one.join() < other.join() ? -1 : 1))
		.slice(0, mostConflicts);
}
