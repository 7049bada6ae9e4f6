import type { Board } from "../parts/board.ts";
import type { FactEntry } from "../parts/fact-list.ts";
import type { Evidence } from "../parts/form-draft.ts";
import { toldOf, toldWords } from "../parts/told-evidence.ts";
import { plugsInWords } from "../questions/part-summary.ts";
import type { AssumedFact } from "../reference/assumed-facts.ts";

/** Facts that stand elsewhere on the screen, or are for the program only. */
const leftOut = new Set([
	"price.minor",
	"price.currency",
	"id",
	"name",
	"invented",
	"price",
	"checkedOn",
	"offers",
	"evidence",
	"holes",
	"conditions",
	"sharing",
]);

/** A board's facts by title, the ones that are known only, in the order of their definition. */
export function boardFactWords(
	board: Board,
	assumed: readonly AssumedFact[],
	entries: readonly FactEntry[],
): readonly (readonly [string, string])[] {
	return entries.flatMap(({ path, title, unit, form }): (readonly [string, string])[] => {
		if (leftOut.has(path) || form === "group") return [];
		const value = valueAt(board, path);
		if (value === undefined) return [];
		const words = factWords(path, value);
		const standing = assumed.find((fact) => fact.path === path);
		const told = toldAt(board, path);
		const known = standing ? " (assumed)" : told === null ? "" : ` (${told})`;
		return words === null ? [] : [[title, `${words}${unit ? ` ${unit}` : ""}${known}`]];
	});
}

/** Who told a fact, or the group it belongs to; null where nobody did. */
function toldAt({ evidence = {} }: Board, path: string): string | null {
	const keys = path.split(".");
	for (let length = keys.length; length > 0; length--) {
		const told = toldOf((evidence as Readonly<Record<string, Evidence>>)[keys.slice(0, length).join(".")]);
		if (told) return toldWords(told);
	}
	return null;
}

function valueAt(board: Board, path: string): unknown {
	return path.split(".").reduce<unknown>((value, key) => (value as Record<string, unknown> | undefined)?.[key], board);
}

function factWords(path: string, value: unknown): string | null {
	if (typeof value === "boolean") return value ? "yes" : "no";
	if (typeof value === "number" || typeof value === "string") return String(value);
	if (!Array.isArray(value)) return null;
	if (value.length === 0) return "none";
	if (path === "power.processorPlugs") return plugsInWords(value as string[]);
	if (path === "rearUsb")
		return (value as NonNullable<Board["rearUsb"]>)
			.map(
				({ plug, count, gbps }) =>
					`${count} USB-${plug}${gbps === undefined ? "" : gbps < 1 ? " (USB 2.0)" : ` (${gbps}Gbps)`}`,
			)
			.join(", ");
	if (value.every((item) => typeof item !== "object")) return value.join(", ");
	return value.every((item) => typeof (item as { name?: unknown }).name === "string")
		? `${value.length} (${value.map((item) => (item as { name: string }).name).join(", ")})`
		: String(value.length);
}
