import type { Interval } from "./interval.ts";
import { extremePoints, type WeightRegion } from "./weight-region.ts";
import { weightedSum } from "./weighted-sum.ts";

/** How far one can get ahead of all others at once. */
export interface BestCase {
	/** Its lead over the best of the others, where that is greatest; below 0 if it is never best, infinite if alone. */
	readonly lead: number;
	/** Allowed weights under which it has that lead. */
	readonly weights: readonly number[];
}

/** A lead this little below 0 is still being best. Own convention, for values of up to a few hundred. */
const level = 1e-9;

/**
 * The greatest lead of one over all others under allowed weights, at its highest values and their lowest. One may be
 * behind none of the others and yet never be best, since each of them is ahead of it elsewhere.
 *
 * Choosing weights against the best of the others is a game of extreme points against alternatives; its value is the
 * lead. Sources: Hazen 1986, Eum, Park & Kim 2001 (abstract read); the game is worked out.
 *
 * @param one a range of values for every criterion, by index; ranges of different ones are taken as independent
 * @throws RangeError if ranges are missing, or as `extremePoints`
 */
export function bestCase(
	region: WeightRegion,
	one: readonly Interval[],
	others: readonly (readonly Interval[])[],
): BestCase {
	const points = extremePoints(region, one.length);
	if (points.length === 0) return { lead: others.length > 0 ? 0 : Infinity, weights: one.map(() => 0) };
	const high = one.map((value) => value.high);
	const lows = others.map((other) => other.map((value) => value.low));
	const leads = points.map((point) => {
		const best = weightedSum(high, point);
		return lows.map((low) => best - weightedSum(low, point));
	});
	const mix = others.length > 0 ? safestMix(leads) : points.map((_, at) => (at === 0 ? 1 : 0));
	const weights = one.map((_, criterion) =>
		weightedSum(
			points.map((point) => point[criterion] as number),
			mix,
		),
	);
	// Read off the mix itself and not off the solver's table, so that rounding cannot promise more than there is.
	const lead = lows.reduce((least, _, other) => {
		const along = leads.map((row) => row[other] as number);
		return Math.min(least, weightedSum(along, mix));
	}, Infinity);
	return { lead, weights };
}

/** Whether some allowed weights, and some values inside the ranges, make it best or level with the best. */
export function canBeBest(
	region: WeightRegion,
	one: readonly Interval[],
	others: readonly (readonly Interval[])[],
): boolean {
	return bestCase(region, one, others).lead >= -level;
}

/** Entries are scaled to between 1 and 2, so what is smaller than this is rounding. */
const tiny = 1e-11;
/** Bland's rule ends by itself; rounding might make it go round in circles. */
const mostSteps = 10_000;

/**
 * Shares of the rows whose mix is best against its worst column: the row player's side of a matrix game.
 *
 * With entries above 0: the greatest sum of y >= 0 with "payoffs times y no more than 1" is 1 / value, and the prices of
 * its rows are the mix. y = 0 is allowed, so the simplex method starts at once; Bland's rule (first column that
 * improves, first row among those that bind) keeps it from going in circles where several bind. Table without unit
 * columns: what leaves and what enters trade places.
 */
function safestMix(payoffs: readonly (readonly number[])[]): readonly number[] {
	const entries = payoffs.flat();
	const least = entries.reduce((one, other) => Math.min(one, other));
	const width = entries.reduce((one, other) => Math.max(one, other)) - least || 1;
	const columns = payoffs[0]?.length ?? 0;
	const rows = payoffs.length;
	const table = payoffs.map((row) => Float64Array.from([...row.map((entry) => (entry - least) / width + 1), 1]));
	const prices = Float64Array.from({ length: columns + 1 }, (_, column) => (column < columns ? -1 : 0));
	// Columns are numbered first, the slack of row r is number columns + r.
	const inRow = table.map((_, row) => columns + row);
	const inColumn = Array.from({ length: columns }, (_, column) => column);

	for (let step = 0; step < mostSteps; step++) {
		const enter = firstOf(inColumn, (column) => (prices[column] as number) < -tiny);
		if (enter === null) break;
		let nearest = Infinity;
		for (const row of table) {
			if ((row[enter] as number) > tiny) nearest = Math.min(nearest, ratio(row, enter));
		}
		const binds = (row: Float64Array) => (row[enter] as number) > tiny && ratio(row, enter) <= nearest + tiny;
		const leave = firstOf(inRow, (row) => binds(table[row] as Float64Array));
		if (leave === null) break;
		trade(table, prices, leave, enter);
		[inRow[leave], inColumn[enter]] = [inColumn[enter] as number, inRow[leave] as number];
	}

	const mix = new Array<number>(rows).fill(0);
	for (const [column, number] of inColumn.entries()) {
		if (number >= columns) mix[number - columns] = Math.max(0, prices[column] as number);
	}
	const sum = mix.reduce((one, other) => one + other, 0);
	return mix.map((share) => share / sum);
}

/** The place of the smallest number that passes, or null. */
function firstOf(numbers: readonly number[], passes: (place: number) => boolean): number | null {
	let found: number | null = null;
	for (const [place, number] of numbers.entries()) {
		if ((found === null || number < (numbers[found] as number)) && passes(place)) found = place;
	}
	return found;
}

function ratio(row: Float64Array, column: number): number {
	return Math.max(0, row[row.length - 1] as number) / (row[column] as number);
}

function trade(table: readonly Float64Array[], prices: Float64Array, leave: number, enter: number): void {
	const pivotRow = table[leave] as Float64Array;
	const pivot = pivotRow[enter] as number;
	for (let column = 0; column < pivotRow.length; column++) {
		pivotRow[column] = column === enter ? 1 / pivot : (pivotRow[column] as number) / pivot;
	}
	for (const row of [...table, prices]) {
		if (row === pivotRow) continue;
		const factor = row[enter] as number;
		if (factor === 0) continue;
		for (let column = 0; column < row.length; column++) {
			const old = column === enter ? 0 : (row[column] as number);
			row[column] = old - factor * (pivotRow[column] as number);
		}
	}
}
