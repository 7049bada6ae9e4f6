/**
 * Parts as whole numbers that add up to the whole number given: each is rounded down, and what is then left goes to those
 * with the largest remainders, of equal ones to the first (method of largest remainders). No part is off by more than 1
 * where the total is the rounded sum of the parts.
 *
 * @param total a whole number; by itself the rounded sum of the parts
 * @param most whole numbers that no part passes by rounding up, such as what it could be at most
 */
export function wholeParts(
	parts: readonly number[],
	total = Math.round(parts.reduce((sum, part) => sum + part, 0)),
	most: readonly number[] = [],
): readonly number[] {
	const whole = parts.map(Math.floor);
	const left = total - whole.reduce((sum, part) => sum + part, 0);
	const byRemainder = parts
		.map((part, index) => ({ index, remainder: part - Math.floor(part) }))
		.filter(({ index }) => (whole[index] ?? 0) < (most[index] ?? Number.POSITIVE_INFINITY))
		.sort((one, other) => other.remainder - one.remainder);
	for (const { index } of byRemainder.slice(0, Math.max(0, left))) whole[index] = (whole[index] ?? 0) + 1;
	// A total below all parts rounded down takes from those with the smallest remainders.
	for (const { index } of left < 0 ? byRemainder.slice(left) : []) whole[index] = (whole[index] ?? 0) - 1;
	return whole;
}
