/** The same words as the beginning of a sentence. */
export function capital(words: string): string {
	return words.charAt(0).toUpperCase() + words.slice(1);
}

/** "S5", "S5 and S6", "S5, S6 and S7". */
export function listed(names: readonly string[]): string {
	return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

/** Names with those that stand several times as one: "Brick (2)". */
export function withCounts(names: readonly string[]): readonly string[] {
	return [...new Set(names)].map((name) => {
		const count = names.filter((one) => one === name).length;
		return count === 1 ? name : `${name} (${count})`;
	});
}

/** Names that end in a number, with three or more in a row as one: "S1 to S4", "case fans 1 to 3". */
export function withRuns(names: readonly string[]): readonly string[] {
	const runs: string[][] = [];
	for (const name of names) {
		const run = runs.at(-1);
		if (run && isNext(run.at(-1) ?? "", name)) run.push(name);
		else runs.push([name]);
	}
	return runs.flatMap((run) => (run.length < 3 ? run : [runWords(run[0] ?? "", run.at(-1) ?? "")]));
}

/** Words take an s and the numbers alone; the board's own names stand whole. */
function runWords(first: string, last: string): string {
	const [one, other] = [numbered(first), numbered(last)];
	return one && other && / $/.test(one.stem)
		? `${one.stem.trimEnd()}s ${one.number} to ${other.number}`
		: `${first} to ${last}`;
}

function isNext(before: string, after: string): boolean {
	const [one, other] = [numbered(before), numbered(after)];
	return one !== null && other !== null && one.stem === other.stem && other.number === one.number + 1;
}

/** A name without its last digits, and the number they are; null where it does not end in digits. */
export function numbered(name: string): { readonly stem: string; readonly number: number } | null {
	const digits = /\d{1,9}$/.exec(name)?.[0];
	return digits === undefined ? null : { stem: name.slice(0, -digits.length), number: Number(digits) };
}
