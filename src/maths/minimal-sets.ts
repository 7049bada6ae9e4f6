/**
 * The sets that contain none of the others, each once, in order of size and then of first appearance.
 *
 * If each set holds what one board certainly fails, these are all the smallest ways out when no board fits: drop one
 * such set of demands and a board fits, drop less and none does. (Jannach 2006: evaluate once, combine in memory.)
 */
export function inclusionMinimal<K>(sets: readonly ReadonlySet<K>[]): ReadonlySet<K>[] {
	const minimal: ReadonlySet<K>[] = [];
	// Smallest first: whatever a set contains has then been kept before it, so a kept set never has to go again.
	for (const set of [...sets].sort((one, other) => one.size - other.size)) {
		if (!minimal.some((kept) => isSubset(kept, set))) minimal.push(set);
	}
	return minimal;
}

/**
 * All sets that share a member with every given set and would miss one if any of their members were taken away;
 * smallest first. No sets given: the empty set alone. An empty set among them: nothing can hit it, so none.
 *
 * The minimal hitting sets of all smallest ways out are all smallest conflicts, and the other way round.
 * Source: Reiter 1987 (from memory); Liffiton & Sakallah 2008.
 */
export function minimalHittingSets<K>(sets: readonly ReadonlySet<K>[]): ReadonlySet<K>[] {
	let hitting: ReadonlySet<K>[] = [new Set<K>()];
	// Berge's way (from memory): take in one set at a time, extend what misses it by each of its members, and keep the
	// minimal ones. A set that contains another is hit whenever that other one is, so only the minimal sets matter.
	for (const set of inclusionMinimal(sets)) {
		const extended = hitting.flatMap((candidate) =>
			sharesMember(candidate, set) ? [candidate] : [...set].map((member) => new Set([...candidate, member])),
		);
		hitting = inclusionMinimal(extended);
	}
	return hitting;
}

function isSubset<K>(part: ReadonlySet<K>, whole: ReadonlySet<K>): boolean {
	for (const member of part) if (!whole.has(member)) return false;
	return true;
}

function sharesMember<K>(one: ReadonlySet<K>, other: ReadonlySet<K>): boolean {
	for (const member of one) if (other.has(member)) return true;
	return false;
}
