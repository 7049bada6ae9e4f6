import type { Board } from "./board.ts";
import { boardConnectorFaults } from "./board-connector-faults.ts";
import { boardTestFaults } from "./board-test-faults.ts";
import { type Checked, checkJson, type Fault } from "./check-json.ts";
import { factAt, factsOf } from "./fact-list.ts";
import { type PartsFile, partsFile } from "./market.ts";
import { type PartKind, partKindNames, partKinds } from "./part-kinds.ts";

/** Checks a parts file: the schema, ids used twice, evidence for facts that do not exist, connectors of boards. */
export function checkParts(json: unknown): Checked<PartsFile> {
	const checked = checkJson(partsFile, json);
	if (!checked.value) return { ...checked, faults: [...checked.faults, ...twiceUsedInRaw(json)] };
	const file = checked.value;
	const faults = [
		...partKindNames.flatMap((kind) => [...twiceUsedIds(file, kind), ...strayEvidence(file, kind)]),
		...(file.boards ?? []).flatMap((board, index) => [
			...boardConnectorFaults(board as Board, `boards[${index}]`),
			...boardTestFaults(board as Board, `boards[${index}]`),
		]),
	];
	return faults.length > 0 ? { value: null, faults } : checked;
}

function listOf(
	file: PartsFile,
	kind: PartKind,
): readonly { readonly id: string; readonly evidence?: object | undefined }[] {
	return file[partKinds[kind].list] ?? [];
}

/** Ids used twice in a file that has other faults too: who mends it should learn of all at once. */
function twiceUsedInRaw(json: unknown): readonly Fault[] {
	const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
		typeof value === "object" && value !== null && !Array.isArray(value);
	if (!isObject(json)) return [];
	return partKindNames.flatMap((kind) => {
		const list = json[partKinds[kind].list];
		if (!Array.isArray(list)) return [];
		// What has no id of its own kind keeps its place, with one that nothing else has.
		const withIds = list.map((entry, index) => ({
			id: isObject(entry) && typeof entry["id"] === "string" ? entry["id"] : `\n${index}`,
		}));
		return twiceUsedIds({ [partKinds[kind].list]: withIds } as unknown as PartsFile, kind);
	});
}

function twiceUsedIds(file: PartsFile, kind: PartKind): readonly Fault[] {
	const first = new Map<string, number>();
	return listOf(file, kind).flatMap(({ id }, index): Fault[] => {
		const known = first.get(id);
		if (known === undefined) {
			first.set(id, index);
			return [];
		}
		const { list } = partKinds[kind];
		return [{ path: `${list}[${index}].id`, expected: `an id of its own; ${list}[${known}] has "${id}" already` }];
	});
}

function strayEvidence(file: PartsFile, kind: PartKind): readonly Fault[] {
	return listOf(file, kind).flatMap(({ evidence }, index) =>
		Object.keys(evidence ?? {}).flatMap((path): Fault[] =>
			factAt(kind, path)
				? []
				: [
						{
							path: `${partKinds[kind].list}[${index}].evidence.${path}`,
							expected: "the path of a fact, such as memory.type",
							unknownKey: path,
							knownKeys: factsOf(kind).map((entry) => entry.path),
						},
					],
		),
	);
}
