/**
 * A largest matching between things and places: no place is given twice, and no other way places more things.
 *
 * `placesOf[i]` are the places that thing i can go to, liked best first; places are told apart by identity. The answer
 * has, for each thing, its place or null. The same input always gives the same answer. Things named first are served
 * first: one that has found a place may be moved later, but never loses out to one named after it.
 *
 * Augmenting paths (from memory: Berge 1957, Kuhn 1955): a matching is largest exactly when no chain of moves frees a
 * place for one thing more. Every thing is tried once, which is enough: a thing for which no chain was found gets none
 * later either. Time: things x links.
 */
export function largestMatching<Place>(placesOf: readonly (readonly Place[])[]): readonly (Place | null)[] {
	const thingAt = new Map<Place, number>();
	for (const thing of placesOf.keys()) findPlace(thing, new Set());
	const placed: (Place | null)[] = placesOf.map(() => null);
	for (const [place, thing] of thingAt) placed[thing] = place;
	return placed;

	/** Places the thing, moving others along where they have somewhere else to go; false where nothing gives way. */
	function findPlace(thing: number, tried: Set<Place>): boolean {
		const places = placesOf[thing] ?? [];
		// Nobody is moved from the place liked best while another place is free.
		const free = places.find((place) => !thingAt.has(place));
		if (free !== undefined) {
			thingAt.set(free, thing);
			return true;
		}
		for (const place of places) {
			if (tried.has(place)) continue;
			tried.add(place);
			const holder = thingAt.get(place);
			if (holder !== undefined && findPlace(holder, tried)) {
				thingAt.set(place, thing);
				return true;
			}
		}
		return false;
	}
}
