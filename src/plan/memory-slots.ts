import type { Board } from "../parts/board.ts";

export interface MemorySlots {
	/** Names of the slots to fill, in the order of the board's manual. */
	readonly fill: readonly string[];
	/** Names of those that stay empty; null where the facts do not name every slot. */
	readonly empty: readonly string[] | null;
}

/**
 * Which memory slots to fill for this many modules. Null where that is not known: no manual read, no number of modules,
 * a number that the manual does not name, or a list that has not one slot for each module.
 */
export function memorySlotsOf({ memory }: Pick<Board, "memory">, modules: number | undefined): MemorySlots | null {
	// A list that names a slot twice, or has not as many as it says, cannot be trusted.
	const sound = Object.entries(memory?.slotOrder ?? {})
		.map(([count, names]) => ({ count: Number(count), names }))
		.filter(({ count, names }) => names.length === count && new Set(names).size === count);
	const fill = sound.find(({ count }) => count === modules)?.names;
	if (!fill) return null;
	// The longest list first: it names the slots as they stand on the board.
	const named = new Set([...sound].sort((one, other) => other.count - one.count).flatMap(({ names }) => names));
	return { fill, empty: named.size === memory?.slots ? [...named].filter((name) => !fill.includes(name)) : null };
}
