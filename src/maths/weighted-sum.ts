/**
 * Additive value: each value times its weight, summed. In the unit of the values when the weights sum to 1.
 *
 * @throws RangeError if there are not as many weights as values
 */
export function weightedSum(values: readonly number[], weights: readonly number[]): number {
	if (values.length !== weights.length) {
		throw new RangeError(`${values.length} values but ${weights.length} weights`);
	}
	return values.reduce((sum, value, index) => sum + value * (weights[index] as number), 0);
}
