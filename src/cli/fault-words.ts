import { nearestWords } from "../maths/nearest-word.ts";
import type { Fault } from "../parts/check-json.ts";

/** A fault as one line: file, path, what was expected, and what was perhaps meant. */
export function faultLine(file: string, { path, expected, unknownKey, knownKeys }: Fault): string {
	const place = path === "" ? file : `${file}: ${path}`;
	if (unknownKey === undefined) return `${place}: expected ${expected}.`;
	const [near] = nearestWords(unknownKey, knownKeys ?? [], 1);
	const said =
		unknownKey === path.split(".").at(-1) || expected === "no such fact"
			? "there is no such key here"
			: `expected ${expected}`;
	return `${place}: ${said}.${near ? ` Did you mean "${near}"?` : knownKeys?.length ? ` Known here: ${knownKeys.slice(0, 12).join(", ")}${knownKeys.length > 12 ? ", ..." : "."}` : ""}`;
}

/** The first fault in full and how many more there are; nothing was changed. */
export function faultsMessage(file: string, faults: readonly Fault[]): string {
	const [first] = faults;
	if (!first) return `${file}: something in it cannot be.`;
	const more = faults.length > 1 ? ` (and ${faults.length - 1} more: boardwalk check ${file})` : "";
	return `${faultLine(file, first)}${more} Nothing was changed.`;
}
