/**
 * Turns weights drawn without any order into weights that respect tiers, all such weights as likely. Nothing is drawn
 * anew, so shares move only because answers move.
 *
 * In each sample the values that fell on tiered criteria are sorted, the greatest first, and dealt out tier by tier.
 * Inside a tier they keep the order of the values its criteria had; since the weights are exchangeable, that order is as
 * random as a shuffle. Free criteria keep theirs. Exact, since the flat Dirichlet distribution is exchangeable (derived;
 * sorting for a full order: hitandrun's sampler of the simplex). The means are those of `centroidOfTiers`.
 *
 * @param columns one a criterion, uniform on the simplex
 * @param tiers indexes of columns, most important tier first; a tier may be empty
 * @param free indexes of columns whose importance is not known
 * @returns columns in the order given, none of them shared with those given
 * @throws RangeError unless each column stands in one tier or is free, and nowhere else
 */
export function weightsInTiers(
	columns: readonly Float64Array[],
	tiers: readonly (readonly number[])[],
	free: readonly number[],
): readonly Float64Array[] {
	const tiered = tiers.flat();
	throwUnlessEachOnce([...tiered, ...free], columns.length);
	const dealt = columns.map((column) => column.slice());
	const raw = tiered.map((criterion) => columns[criterion] as Float64Array);
	const out = tiered.map((criterion) => dealt[criterion] as Float64Array);
	const falling = new Float64Array(tiered.length);
	const places = new Uint32Array(tiered.length);
	const samples = raw[0]?.length ?? 0;
	for (let sample = 0; sample < samples; sample++) {
		for (let at = 0; at < raw.length; at++) insertFalling(falling, 0, at, raw[at]?.[sample] as number);
		let first = 0;
		for (const { length } of tiers) {
			for (let at = first; at < first + length; at++) insertPlace(places, first, at, raw, sample);
			first += length;
		}
		for (let at = 0; at < out.length; at++) {
			const column = out[places[at] as number] as Float64Array;
			column[sample] = falling[at] as number;
		}
	}
	return dealt;
}

/** Puts a value into a falling list that stands from `first` to before `end`. */
function insertFalling(list: Float64Array, first: number, end: number, value: number): void {
	let at = end;
	for (; at > first && (list[at - 1] as number) < value; at--) list[at] = list[at - 1] as number;
	list[at] = value;
}

/** The same for the place `end`, by the value its column has in this sample. */
function insertPlace(
	places: Uint32Array,
	first: number,
	end: number,
	columns: readonly Float64Array[],
	sample: number,
): void {
	const valueAt = (place: number) => columns[place]?.[sample] as number;
	const value = valueAt(end);
	let at = end;
	for (; at > first && valueAt(places[at - 1] as number) < value; at--) places[at] = places[at - 1] as number;
	places[at] = end;
}

function throwUnlessEachOnce(criteria: readonly number[], count: number): void {
	const isColumn = (criterion: number) => Number.isInteger(criterion) && criterion >= 0 && criterion < count;
	if (criteria.length !== count || new Set(criteria).size !== count || !criteria.every(isColumn))
		throw new RangeError(`tiers and free criteria must name each of ${count} columns once: ${criteria.join(", ")}`);
}
