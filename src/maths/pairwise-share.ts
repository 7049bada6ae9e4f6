import { criteriaOf, type WeightRegion } from "./weight-region.ts";

/** Smaller differences are rounding and count as none. Own convention, for values of up to a few hundred. */
const rounding = 1e-12;

/** What is used of a tier is kept in the bits of one number. */
const mostBits = 30;

/**
 * The share of all allowed weights under which a weighted sum of differences is above 0: one is ahead of the other.
 * Every allowed weight counts as likely as any other. Nothing is drawn; the formula is exact.
 *
 * A sum of exactly 0 is not ahead. Unless all differences are 0, such weights have no share; then both are level under
 * every weight, and the share is 0 from either side. So share + share from the other side is 1, or 0 where level.
 *
 * A region that is a simplex needs one pass: the sums at its corners, as if they were differences without any order.
 * So are: no order at all; one criterion a tier (corners: means of the first k differences); both, since free criteria
 * add corners of their own; and whatever stands in the first tier, which is as free above the second. A lower tier of
 * several is cut into its orders, simplexes of the same size, and the shares are averaged. (Worked out.)
 *
 * @param differences value of the one less value of the other, one a criterion, by index
 * @param mostOrders the answer is null where the lower tiers have more orders, equal differences counted as one,
 *   or one of them has more than 30 criteria
 * @throws RangeError if a criterion stands twice or has no difference
 */
export function pairwiseShare(region: WeightRegion, differences: readonly number[], mostOrders = 5040): number | null {
	const known = new Map(criteriaOf(region).map((index) => [index, differenceOf(differences, index)]));
	if ([...known.values()].every((difference) => difference === 0)) return 0;
	const valuesOf = (tier: readonly number[]) => tier.map((index) => known.get(index) as number);
	const [first = [], ...lower] = region.tiers.filter((tier) => tier.length > 0).map(valuesOf);
	if (lower.reduce((orders, tier) => orders * orderCount(tier), 1) > mostOrders) return null;
	if (lower.some((tier) => tier.length > mostBits)) return null;
	return meanOverOrders([...valuesOf(region.free), ...first], lower, total(first), first.length);
}

/**
 * The mean of the shares over all orders of the lower tiers, with the corners of each order beside those given.
 *
 * Each share is that of a simplex on which a sum is above 0, by Ali's recursion. With corners a_1 ... above 0 and
 * b_1 ... not above, F(h, k) for the first h and k of them is (a_h F(h, k - 1) - b_k F(h - 1, k)) / (a_h - b_k), where
 * F(h, 0) = 1 and F(0, k) = 0. Every step is a mean, so nothing is divided by 0 where corners are equal, and rounding
 * does not grow. Since a corner more needs the last row and the last column alone, orders that begin alike share all
 * steps but the last ones; each depth of the search keeps its own two lines.
 * Source: Varsi 1973, Ali 1973 (recursion from memory), checked against fractions.
 */
function meanOverOrders(
	corners: readonly number[],
	lower: readonly (readonly number[])[],
	sumBefore: number,
	countBefore: number,
): number {
	const most = corners.length + total(lower.map((tier) => tier.length));
	const line = () => new Float64Array(most + 1);
	const rows = Array.from({ length: most + 1 }, line);
	const columns = Array.from({ length: most + 1 }, line);
	const [above, below] = [line(), line()];
	const sorted = lower.map((tier) => tier.toSorted((one, other) => one - other));
	let [shares, orders] = [0, 0];

	/** Adds a corner to the `high` above 0 and the `low` others. */
	const add = (corner: number, high: number, low: number): void => {
		const [row, column] = [rows[high + low] as Float64Array, columns[high + low] as Float64Array];
		const [nextRow, nextColumn] = [rows[high + low + 1] as Float64Array, columns[high + low + 1] as Float64Array];
		if (corner > 0) {
			above[high] = corner;
			nextRow[0] = 1;
			for (let k = 1; k <= low; k++) {
				const other = below[k - 1] as number;
				nextRow[k] = (corner * (nextRow[k - 1] as number) - other * (row[k] as number)) / (corner - other);
			}
			for (let h = 0; h <= high; h++) nextColumn[h] = column[h] as number;
			nextColumn[high + 1] = nextRow[low] as number;
		} else {
			below[low] = corner;
			nextColumn[0] = 0;
			for (let h = 1; h <= high; h++) {
				const other = above[h - 1] as number;
				nextColumn[h] = (other * (column[h] as number) - corner * (nextColumn[h - 1] as number)) / (other - corner);
			}
			for (let k = 0; k <= low; k++) nextRow[k] = row[k] as number;
			nextRow[low + 1] = nextColumn[high] as number;
		}
	};

	/** Goes on in every way that looks different; each stands for as many orders of the criteria as any other. */
	const goOn = (at: number, used: number, sum: number, count: number, high: number, low: number): void => {
		const tier = sorted[at];
		if (tier === undefined) {
			shares += (rows[high + low] as Float64Array)[low] as number;
			orders++;
			return;
		}
		if (used === 2 ** tier.length - 1) {
			goOn(at + 1, 0, sum, count, high, low);
			return;
		}
		for (let index = 0; index < tier.length; index++) {
			const value = tier[index] as number;
			const isSameAgain = index > 0 && value === tier[index - 1] && !(used & (1 << (index - 1)));
			if (used & (1 << index) || isSameAgain) continue;
			const mean = (sum + value) / (count + 1);
			const corner = Math.abs(mean) <= rounding ? 0 : mean;
			add(corner, high, low);
			const isHigh = corner > 0 ? 1 : 0;
			goOn(at, used | (1 << index), sum + value, count + 1, high + isHigh, low + 1 - isHigh);
		}
	};

	(rows[0] as Float64Array)[0] = 1;
	(columns[0] as Float64Array)[0] = 1;
	let high = 0;
	for (const [at, corner] of corners.entries()) {
		add(corner, high, at - high);
		if (corner > 0) high++;
	}
	goOn(0, 0, sumBefore, countBefore, high, corners.length - high);
	return shares / orders;
}

function orderCount(values: readonly number[]): number {
	const seen = new Map<number, number>();
	let orders = 1;
	for (const [at, value] of values.entries()) {
		const times = (seen.get(value) ?? 0) + 1;
		seen.set(value, times);
		orders = (orders * (at + 1)) / times;
	}
	return Math.round(orders);
}

function differenceOf(differences: readonly number[], index: number): number {
	const difference = differences[index];
	if (difference === undefined) throw new RangeError(`criterion ${index} has no difference`);
	return Math.abs(difference) <= rounding ? 0 : difference;
}

function total(values: readonly number[]): number {
	return values.reduce((sum, value) => sum + value, 0);
}
