import { existsSync } from "node:fs";
import { join } from "node:path";
import { BrokenJson, readJson } from "./read-json.ts";
import { refusePipe, UnreadableFile } from "./read-text.ts";
import { setAside } from "./set-aside.ts";
import { writeFile } from "./write-file.ts";

/** Which fact each column of a table gave when it was imported: column's head and fact's path, empty where left out. */
export type KeptMapping = readonly (readonly [column: string, path: string])[];

const schemaName = "boardwalk/csv-mappings@1";
/** The newest are kept. */
const mostKept = 100;

interface Entry {
	readonly kind: string;
	readonly columns: KeptMapping;
}

/**
 * The mapping used last for a table of these columns, in whatever order, or null. A file that cannot be used counts as
 * none: the person is then asked again.
 *
 * @param folder see dataFolder
 */
export function keptMapping(folder: string, kind: string, head: readonly string[]): KeptMapping | null {
	const key = keyOf(head);
	return (
		entriesIn(folder)?.find((entry) => entry.kind === kind && keyOf(entry.columns.map(([one]) => one)) === key)
			?.columns ?? null
	);
}

/**
 * Keeps a mapping for tables of the same columns.
 *
 * @throws UnwritableFile
 */
export function keepMapping(folder: string, kind: string, columns: KeptMapping): void {
	const path = pathIn(folder);
	const before = entriesIn(folder);
	if (before === null && existsSync(path)) setAside(path);
	const key = keyOf(columns.map(([column]) => column));
	const others = (before ?? []).filter(
		(entry) => entry.kind !== kind || keyOf(entry.columns.map(([column]) => column)) !== key,
	);
	const file = { schema: schemaName, mappings: [{ kind, columns }, ...others].slice(0, mostKept) };
	writeFile(path, `${JSON.stringify(file, null, "\t")}\n`, { replace: true, ownerOnly: true, makeFolder: true });
}

function pathIn(folder: string): string {
	return join(folder, "csv-mappings.json");
}

function keyOf(head: readonly string[]): string {
	return JSON.stringify([...head].sort());
}

/** Null where there is no such file, or none that can be used. */
function entriesIn(folder: string): readonly Entry[] | null {
	try {
		refusePipe(pathIn(folder));
		const file = readJson(pathIn(folder)) as { schema?: unknown; mappings?: unknown } | null;
		if (file?.schema !== schemaName || !Array.isArray(file.mappings)) return null;
		return file.mappings.every(isEntry) ? file.mappings : null;
	} catch (error) {
		if (error instanceof UnreadableFile || error instanceof BrokenJson) return null;
		throw error;
	}
}

function isEntry(value: unknown): value is Entry {
	const { kind, columns } = (value ?? {}) as Readonly<Record<string, unknown>>;
	return (
		typeof kind === "string" &&
		Array.isArray(columns) &&
		columns.every((pair) => Array.isArray(pair) && pair.length === 2 && pair.every((one) => typeof one === "string"))
	);
}
