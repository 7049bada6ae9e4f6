import type { Gains } from "../maths/best-assignment.ts";

/** Whole numbers are exact below this. */
const mostExact = 2 ** 53;
/** A matching adds up and takes away on its way; its sums stay below so many times the largest (own bound). */
const spare = 64;

/**
 * Turns lists of whole numbers into shorter ones that add up and compare alike: neighbours become the digits of one number,
 * and the first that differs still decides. Exact. A matching then compares a few numbers instead of dozens.
 *
 * @param bounds for each place in the list, the largest amount that all that is ever added up there comes to, either way;
 *   0 or more, whole numbers
 */
export function gainsPacking(bounds: readonly number[]): (gains: Gains) => Gains {
	// One more than twice the amount, so that no digit reaches into the next, whichever way it goes.
	const spreads = bounds.map((bound) => 2 * bound + 1);
	const ends: number[] = [];
	let room = 1;
	spreads.forEach((spread, place) => {
		if (place > 0 && room * spread * spare < mostExact) {
			ends.pop();
			room *= spread;
		} else room = spread;
		ends.push(place + 1);
	});
	return (gains) => {
		let place = 0;
		return ends.map((end) => {
			let packed = gains[place] ?? 0;
			for (place++; place < end; place++) packed = packed * (spreads[place] as number) + (gains[place] ?? 0);
			return packed;
		});
	};
}
