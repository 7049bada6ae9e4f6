/**
 * How many slips turn one word into the other: a letter left out, put in, changed, or two neighbours swapped
 * (Damerau-Levenshtein, in the form that changes no letter twice: "optimal string alignment").
 * Source: Damerau 1964 (from memory). Letters are Unicode code points; upper and lower case differ.
 */
export function editDistance(one: string, other: string): number {
	const rows = [...one];
	const columns = [...other];
	// Row i, column j: the distance of the first i letters of one word from the first j of the other.
	let beforeLast: number[] = [];
	let last = Array.from({ length: columns.length + 1 }, (_, column) => column);
	for (const [i, letter] of rows.entries()) {
		const current = [i + 1];
		for (const [j, otherLetter] of columns.entries()) {
			const changed = (last[j] as number) + (letter === otherLetter ? 0 : 1);
			const leftOut = (last[j + 1] as number) + 1;
			const putIn = (current[j] as number) + 1;
			const areSwapped = i > 0 && j > 0 && letter === columns[j - 1] && rows[i - 1] === otherLetter;
			const swapped = areSwapped ? (beforeLast[j - 1] as number) + 1 : Number.POSITIVE_INFINITY;
			current.push(Math.min(changed, leftOut, putIn, swapped));
		}
		beforeLast = last;
		last = current;
	}
	return last[columns.length] as number;
}
