import type { Parser } from "./parsers.ts";

/** Something that a parser must not do with a text. */
export interface Fault {
	readonly what: string;
	/** Milliseconds of processor time it took. */
	readonly ms: number;
}

/** Two seconds for a text of 100 KB (own convention); a short one may take as long as one of 20 KB. */
const msFor = (length: number, goesThroughWalk = false): number =>
	2000 * Math.max(goesThroughWalk ? 2 : 0.2, length / 100_000);

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the very characters that must not come through
const controls = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069\ud800-\udfff]/u;

/** Reads a text, and says what is wrong with how it was read; null where nothing is. */
export function faultOf(parser: Parser, text: string): Fault | null {
	const fault = faultOnce(parser, text);
	// What is read first takes longer than it will again: code is still being compiled.
	return fault?.what.startsWith("took") ? faultOnce(parser, text) : fault;
}

function faultOnce(parser: Parser, text: string): Fault | null {
	const begun = process.cpuUsage();
	const ms = () => {
		const { user, system } = process.cpuUsage(begun);
		return Math.round((user + system) / 1000);
	};
	let read: unknown;
	try {
		read = parser.read(text);
	} catch (error) {
		if (!parser.refuses.some((one) => error instanceof one)) return { what: `threw ${String(error)}`, ms: ms() };
		read = String((error as Error).message);
	}
	const took = ms();
	if (took > msFor(text.length, parser.goesThroughWalk))
		return { what: `took ${took} ms for ${text.length} signs`, ms: took };
	const unclean = uncleanIn(read, parser.keepsSigns === true);
	return unclean === null ? null : { what: unclean, ms: took };
}

/** The first thing in what was read that no text may bring about. */
function uncleanIn(read: unknown, keepsSigns: boolean): string | null {
	if (Object.keys(Object.prototype).length > 0) return "a key was added to every object";
	const left: unknown[] = [read];
	const seen = new Set<unknown>();
	while (left.length > 0) {
		const value = left.pop();
		if (typeof value === "string") {
			if (!keepsSigns && controls.test(value)) return `a control sign in ${JSON.stringify(value.slice(0, 80))}`;
		} else if (typeof value === "number") {
			if (Number.isNaN(value)) return "a number that is none";
		} else if (typeof value === "object" && value !== null && !seen.has(value)) {
			seen.add(value);
			for (const key of Object.keys(value)) {
				if (key === "__proto__") return "a key __proto__";
				left.push((value as Record<string, unknown>)[key]);
			}
		}
	}
	return null;
}
