/** Something a text leaves open, for a person to settle. */
export type Doubt = {
	/** The fact it is about, such as "rate" or "count". */
	readonly about: string;
	/** The words of the text, as they stand there. */
	readonly quote: string;
	/** What it might be; empty where the text gives no hint. */
	readonly might: readonly (number | string)[];
	/** Why it is open, one sentence. */
	readonly why: string;
};

/** Longest run of text that is read, in characters; what is behind it is left out (own convention). */
export const longestRun = 2000;

/**
 * A run of text, cut to `longestRun`, with the signs for "times" as the letter x and every space an ordinary one.
 * Characters keep their places, so that quotes can be cut from the original.
 */
export function evenRun(text: string): string {
	return text
		.slice(0, longestRun)
		.replace(/[×✕*＊]/g, "x")
		.replace(/[\u00a0\u2007\u202f\t]/g, " ")
		.replace(/[‐‑‒–]/g, "-");
}

/** The one value of a list, or nothing where there is none or where they differ. */
export function onlyOf<T>(values: readonly T[]): T | undefined {
	const [first] = values;
	return values.every((value) => value === first) ? first : undefined;
}

/** The values of a list, each once, in the order met. */
export function eachOnce<T>(values: readonly T[]): readonly T[] {
	return [...new Set(values)];
}

/** What stands in round brackets, without them, and what is left. Brackets within brackets belong to the outer one. */
export function bracketsOf(text: string): { readonly outside: string; readonly inside: readonly string[] } {
	const outside: string[] = [];
	const inside: string[] = [];
	let depth = 0;
	let from = 0;
	for (let at = 0; at < text.length; at++) {
		if (text[at] === "(" && depth++ === 0) {
			outside.push(text.slice(from, at));
			from = at + 1;
		} else if (text[at] === ")" && depth > 0 && --depth === 0) {
			inside.push(text.slice(from, at));
			from = at + 1;
		}
	}
	(depth > 0 ? inside : outside).push(text.slice(from));
	return { outside: outside.join(" "), inside };
}

/**
 * Cuts a run into items: at line ends and semicolons, and where outside brackets a match of `start` begins. Each item
 * has its place, so that it can be quoted.
 */
export function itemsOf(
	text: string,
	start: RegExp,
): readonly { readonly text: string; readonly from: number; readonly to: number }[] {
	const starts = new Set([...text.matchAll(start)].map(({ index }) => index));
	const cuts: number[] = [0];
	let depth = 0;
	for (let at = 0; at < text.length; at++) {
		const letter = text[at];
		if (letter === "\n") depth = 0;
		if (letter === "(") depth++;
		if (letter === ")") depth = Math.max(0, depth - 1);
		if (letter === "\n" || (depth === 0 && (letter === ";" || starts.has(at)))) cuts.push(at);
	}
	return cuts
		.map((from, index) => {
			const to = cuts[index + 1] ?? text.length;
			return { text: text.slice(from, to).replace(/^[;\n]/, " "), from, to };
		})
		.filter(({ text: item }) => item.trim() !== "");
}

/** The quote of an item: its words in the original, without the mark it was cut at. */
export function quoteOf(original: string, item: { readonly from: number; readonly to: number }): string {
	return original.slice(item.from, item.to).replace(/^[;,\s]+|[;,\s]+$/g, "");
}

/** Object without the keys that are undefined: an unknown fact has no key. */
export function known<T extends object>(facts: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
	return Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined)) as {
		[K in keyof T]?: Exclude<T[K], undefined>;
	};
}

/** Words behind which a text speaks of some of the things counted, not of all. */
export const someOfThem = /\b(?:includ\w+|incl\b|inkl\w*|davon|darunter|of\swhich|einschl\w*)/i;

/** A sentence about conditions, as footnotes are; it lists nothing. */
export const footnoteWord =
	/\b(?:if|when|wenn|falls|sobald|disabled?|deaktiviert|abgeschaltet|unavailable|shares?|shared|teilt|teilen)\b/i;
