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
	if (!checked.value) return checked;
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
