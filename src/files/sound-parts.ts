import type { Fault } from "../parts/check-json.ts";
import { checkParts } from "../parts/check-parts.ts";
import type { PartsFile } from "../parts/market.ts";

/** What can be used of a parts file, and the faults for which the rest was left out. */
export interface SoundParts {
	/** Null when the file as a whole is none of parts, or of another version. */
	readonly file: PartsFile | null;
	/** Paths as they are in the file, such as boards[3].memory.type. */
	readonly faults: readonly Fault[];
}

/** Checks a parts file and leaves out every part, and every list, that has a fault. */
export function soundParts(json: unknown): SoundParts {
	const checked = checkParts(json);
	if (checked.value) return { file: checked.value, faults: [] };
	if (json === null || typeof json !== "object" || Array.isArray(json)) return { file: null, faults: checked.faults };
	const whole = json as Readonly<Record<string, unknown>>;
	const leftOut = new Set<string>();
	const faults: Fault[] = [];
	// The schema is checked before anything else is, so that leaving parts out can bring further faults to light.
	for (;;) {
		const { json: rest, places } = without(whole, leftOut);
		const { value, faults: found } = checkParts(rest);
		if (value) return { file: value, faults };
		const before = leftOut.size;
		for (const fault of found) {
			const { key, index } = placeOf(fault);
			const inFile = index === undefined ? undefined : places.get(key)?.[index];
			leftOut.add(inFile === undefined ? key : `${key}[${inFile}]`);
			const asInFile = (text: string) =>
				text.replace(/(\w+)\[(\d+)\]/, (before, list, place) => {
					const number = places.get(list)?.[Number(place)];
					return number === undefined ? before : `${list}[${number}]`;
				});
			faults.push({ ...fault, path: asInFile(fault.path), expected: asInFile(fault.expected) });
		}
		if (leftOut.has("schema") || leftOut.has("") || leftOut.size === before) return { file: null, faults };
	}
}

/** The list a fault lies in, and the part's number there where it is about one part. */
function placeOf({ path, unknownKey }: Fault): { readonly key: string; readonly index?: number } {
	if (path === unknownKey) return { key: path };
	const [, key = "", index] = /^(\w*)(?:\[(\d+)\])?/.exec(path) ?? [];
	return index === undefined ? { key } : { key, index: Number(index) };
}

/** The file without lists and parts that were left out; `places` tells where each part left stood before. */
function without(
	whole: Readonly<Record<string, unknown>>,
	leftOut: ReadonlySet<string>,
): { readonly json: unknown; readonly places: ReadonlyMap<string, readonly number[]> } {
	const places = new Map<string, readonly number[]>();
	const entries = Object.entries(whole).flatMap(([key, value]) => {
		if (leftOut.has(key)) return [];
		if (!Array.isArray(value)) return [[key, value] as const];
		const kept = value.flatMap((part, index) => (leftOut.has(`${key}[${index}]`) ? [] : [{ part, index }]));
		places.set(
			key,
			kept.map(({ index }) => index),
		);
		return [[key, kept.map(({ part }) => part)] as const];
	});
	return { json: Object.fromEntries(entries), places };
}
