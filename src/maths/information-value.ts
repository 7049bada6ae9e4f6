import { entropyBits } from "./shares.ts";

/** What asking a question is worth, before it is asked. */
export interface WorthOfAsking {
	/** The alternative with the greatest expected value now, by its place; of equal ones the first. */
	readonly leader: number;
	/** Which one leads after each answer. The leader of now stays it where no other has more. */
	readonly leaderAfter: readonly number[];
	/** Expected gain from choosing after the answer instead of now, in the unit of the values; never below 0. */
	readonly worth: number;
}

/**
 * Expected value of information: what choosing after the answer brings on average beyond choosing now,
 * sum_a P(a) max_i V_ai - max_i sum_a P(a) V_ai. It is summed up as what the leader of now lacks after each answer,
 * which is the same and cannot come out below 0 by rounding.
 *
 * @param chances of each answer, 0 or more; divided by their sum, so counts will do
 * @param values one row an answer, with the expected value of each alternative after it
 * @param canAnswer chance that the person can answer, 0 to 1; not being able to changes nothing and is worth nothing
 * @throws RangeError if there is no answer or alternative, rows differ in length, or a chance is not one
 */
export function worthOfAsking(
	chances: readonly number[],
	values: readonly ArrayLike<number>[],
	canAnswer = 1,
): WorthOfAsking {
	const alternatives = checkedWidth(values);
	checkChance(canAnswer);
	if (chances.length !== values.length) throw new RangeError(`${chances.length} chances but ${values.length} answers`);
	const total = checkedTotal(chances);
	const expected = new Array<number>(alternatives).fill(0);
	for (const [answer, row] of values.entries()) {
		const chance = (chances[answer] as number) / total;
		for (let place = 0; place < alternatives; place++) {
			expected[place] = (expected[place] as number) + chance * (row[place] as number);
		}
	}
	const leader = firstGreatest(expected, 0);
	const leaderAfter = values.map((row) => firstGreatest(row, leader));
	const worth = values.reduce((sum, row, answer) => {
		const lacking = (row[leaderAfter[answer] as number] as number) - (row[leader] as number);
		return sum + ((chances[answer] as number) / total) * lacking;
	}, 0);
	return { leader, leaderAfter, worth: worth * canAnswer };
}

/**
 * Expected value of perfect information, mean of max_i V_si - max_i mean of V_si: no question can be worth more. It is
 * the worth of a question whose answers are the samples.
 *
 * @param samples one row a sample, all as likely, with the value of each alternative in it
 * @param canAnswer as for `worthOfAsking`
 * @throws RangeError as `worthOfAsking`
 */
export function worthOfKnowingAll(samples: readonly ArrayLike<number>[], canAnswer = 1): number {
	return worthOfAsking(
		samples.map(() => 1),
		samples,
		canAnswer,
	).worth;
}

/**
 * Information gain in bits: by how much the entropy of what comes out falls on average with the answer. It says how
 * much a question tells, not what that is worth: it is as great where alternatives hardly differ. For ties only.
 *
 * @param table one row an answer: how often, or how likely, each outcome comes with it; 0 or more
 * @param canAnswer as for `worthOfAsking`
 * @throws RangeError if the table is empty, its rows differ in length, or a count is below 0 or all are 0
 */
export function informationGain(table: readonly (readonly number[])[], canAnswer = 1): number {
	const outcomes = checkedWidth(table);
	checkChance(canAnswer);
	const total = checkedTotal(table.flat());
	const all = Array.from({ length: outcomes }, (_, outcome) =>
		table.reduce((sum, row) => sum + (row[outcome] as number), 0),
	);
	const remaining = table.reduce((sum, row) => sum + (sumOf(row) / total) * entropyOfCounts(row), 0);
	return Math.max(0, entropyOfCounts(all) - remaining) * canAnswer;
}

function entropyOfCounts(counts: readonly number[]): number {
	const total = sumOf(counts);
	return total > 0 ? entropyBits(counts.map((count) => count / total)) : 0;
}

/** The place of the greatest value: `preferred` if none is greater, else the first of the greatest. */
function firstGreatest(values: ArrayLike<number>, preferred: number): number {
	let best = preferred;
	for (let place = 0; place < values.length; place++) {
		if ((values[place] as number) > (values[best] as number)) best = place;
	}
	return best;
}

function sumOf(numbers: readonly number[]): number {
	return numbers.reduce((sum, number) => sum + number, 0);
}

function checkedWidth(rows: readonly ArrayLike<number>[]): number {
	const width = rows[0]?.length ?? 0;
	if (width === 0) throw new RangeError("there is nothing to choose from");
	for (const row of rows) {
		if (row.length !== width) throw new RangeError(`rows of ${width} and of ${row.length} values`);
	}
	return width;
}

function checkedTotal(chances: readonly number[]): number {
	for (const chance of chances) {
		if (!(chance >= 0 && Number.isFinite(chance))) throw new RangeError(`a chance must be 0 or more, not ${chance}`);
	}
	const total = sumOf(chances);
	if (total === 0) throw new RangeError("at least one chance must be above 0");
	return total;
}

function checkChance(chance: number): void {
	if (!(chance >= 0 && chance <= 1)) throw new RangeError(`a chance must be from 0 to 1, not ${chance}`);
}
