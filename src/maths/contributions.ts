/** A difference below this share of all differences together is not worth a sentence. Own convention. */
const slightShare = 0.05;

/** Why one alternative is ahead of another, by places in the list of differences. */
export interface MainReasons {
	/** The fewest pluses that outweigh all minuses together, largest first; named even where one is slight. */
	readonly pluses: readonly number[];
	/** Always told, however small; null if nothing speaks against it. */
	readonly biggestMinus: number | null;
	/** What else is worth naming, largest first; the slight ones are left out. */
	readonly others: readonly number[];
}

/**
 * What each criterion adds to the lead of one alternative over another: weight times difference in value. Together
 * they are the difference of the two scores.
 *
 * @throws RangeError if there are not as many values as weights
 */
export function contributions(
	weights: readonly number[],
	one: readonly number[],
	other: readonly number[],
): readonly number[] {
	if (one.length !== weights.length || other.length !== weights.length) {
		throw new RangeError(`${one.length} and ${other.length} values but ${weights.length} weights`);
	}
	return weights.map((weight, index) => weight * ((one[index] as number) - (other[index] as number)));
}

/**
 * The fewest differences above 0 whose sum is more than all those below 0 together, largest first, by place; of equal
 * ones the first. With nothing to outweigh it is the largest alone. Null if all pluses together are not enough.
 */
export function fewestPluses(differences: readonly number[]): readonly number[] | null {
	const against = differences.reduce((sum, difference) => sum + Math.max(0, -difference), 0);
	const named: number[] = [];
	let sum = 0;
	for (const place of bySize(differences)) {
		if ((differences[place] as number) <= 0) continue;
		named.push(place);
		sum += differences[place] as number;
		if (sum > against) return named;
	}
	return null;
}

/** What to say of a lead, from its contributions; null if there is no lead. */
export function mainReasons(differences: readonly number[]): MainReasons | null {
	const pluses = fewestPluses(differences);
	if (pluses === null) return null;
	const order = bySize(differences);
	const biggestMinus = order.find((place) => (differences[place] as number) < 0) ?? null;
	const slight = slightShare * differences.reduce((sum, difference) => sum + Math.abs(difference), 0);
	const others = order.filter(
		(place) => Math.abs(differences[place] as number) >= slight && place !== biggestMinus && !pluses.includes(place),
	);
	return { pluses, biggestMinus, others };
}

function bySize(differences: readonly number[]): number[] {
	const size = (place: number) => Math.abs(differences[place] as number);
	return differences.map((_, place) => place).sort((one, other) => size(other) - size(one) || one - other);
}
