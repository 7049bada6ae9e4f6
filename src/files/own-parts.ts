import type { OwnPart } from "../parts/answers-file.ts";
import { type PartsFile, partsFileSchemaName } from "../parts/market.ts";
import type { offer } from "../parts/offer.ts";
import { type AnyPart, type PartKind, partKindNames, partKinds } from "../parts/part-kinds.ts";

/** Changes of a person's own parts, as pure functions over what the file of own parts holds. */

type Offer = ReturnType<typeof offer.parse>;

/** No part at all. */
export const noParts: PartsFile = { schema: partsFileSchemaName };

/** All parts of a file, kind by kind. */
export function partsIn(file: PartsFile): readonly OwnPart[] {
	return partKindNames.flatMap((kind) => listOf(file, kind).map((part) => ({ kind, part }) as OwnPart));
}

/** The parts with an id: none, one, or one each of several kinds. */
export function partsWithId(file: PartsFile, id: string): readonly OwnPart[] {
	return partsIn(file).filter(({ part }) => part.id === id);
}

/**
 * Adds a part at the end of its kind. Its id gets a number behind it where it is taken, and it is never marked as
 * invented: only the demonstration's parts are.
 *
 * @param taken ids that others have, such as the demonstration's parts
 */
export function addPart(
	file: PartsFile,
	{ kind, part }: OwnPart,
	taken: ReadonlySet<string> = new Set(),
): { readonly file: PartsFile; readonly added: OwnPart } {
	const known = new Set([...taken, ...partsIn(file).map((one) => one.part.id)]);
	const added = { kind, part: withoutMark({ ...part, id: freeId(part.id, known) }) } as OwnPart;
	return { file: withList(file, kind, [...listOf(file, kind), added.part]), added };
}

/**
 * Adds many parts at once, as addPart does each; one of the kind and id of a part that is there takes its place.
 *
 * @param replacement what takes the place of a part that is there
 */
export function addParts(
	file: PartsFile,
	parts: readonly OwnPart[],
	replacement: (before: OwnPart, own: OwnPart) => OwnPart,
): PartsFile {
	const known = new Set(partsIn(file).map(({ part }) => part.id));
	let all = file;
	for (const kind of partKindNames) {
		const ofKind = parts.filter((one) => one.kind === kind);
		if (ofKind.length === 0) continue;
		const byId = new Map(listOf(file, kind).map((part) => [part.id, part]));
		for (const own of ofKind) {
			const before = byId.get(own.part.id);
			const id = before ? before.id : freeId(own.part.id, known);
			const part = before ? replacement({ kind, part: before } as OwnPart, own).part : { ...own.part, id };
			known.add(id);
			byId.set(id, withoutMark(part));
		}
		all = withList(all, kind, [...byId.values()]);
	}
	return all;
}

/** Puts a part in the place of the one with its kind and id, or null where there is none. */
export function replacePart(file: PartsFile, { kind, part }: OwnPart): PartsFile | null {
	const list = listOf(file, kind);
	if (!list.some(({ id }) => id === part.id)) return null;
	return withList(
		file,
		kind,
		list.map((one) => (one.id === part.id ? withoutMark(part) : one)),
	);
}

/**
 * The part with another's facts in place of its own; facts that the other does not have stay. A price without the day it
 * was seen takes the day of the price before with it.
 */
export function withFactsOf({ kind, part }: OwnPart, other: OwnPart): OwnPart {
	const before = { ...part } as Plain;
	if ("price" in other.part) delete before["checkedOn"];
	return { kind, part: merged(before, other.part) } as unknown as OwnPart;
}

type Plain = { [key: string]: unknown };

function merged(one: Plain, other: Plain): Plain {
	const isGroup = (value: unknown): value is Plain =>
		value !== null && typeof value === "object" && !Array.isArray(value);
	const all: Plain = { ...one };
	for (const [key, value] of Object.entries(other)) {
		const before = Object.hasOwn(one, key) ? one[key] : undefined;
		all[key] = isGroup(before) && isGroup(value) ? merged(before, value) : value;
	}
	return all;
}

/** A second part like one of the file's, with an id and a name of its own. */
export function copyPart(
	file: PartsFile,
	{ kind, part }: OwnPart,
): { readonly file: PartsFile; readonly added: OwnPart } {
	const name = `${part.name.slice(0, 113)} (copy)`;
	return addPart(file, { kind, part: { ...part, name } } as OwnPart);
}

/** Takes out the part with this kind and id. */
export function removePart(file: PartsFile, { kind, part }: OwnPart): PartsFile {
	return withList(
		file,
		kind,
		listOf(file, kind).filter(({ id }) => id !== part.id),
	);
}

/** The part with one more offer. One from the same seller in the same condition takes the old one's place. */
export function withOffer({ kind, part }: OwnPart, made: Offer): OwnPart {
	const before = (part as { readonly offers?: readonly Offer[] | undefined }).offers ?? [];
	const others = before.filter(
		(one) => made.seller === undefined || one.seller !== made.seller || one.condition !== made.condition,
	);
	return { kind, part: { ...part, offers: [...others, made] } } as OwnPart;
}

function listOf(file: PartsFile, kind: PartKind): readonly AnyPart[] {
	return (file[partKinds[kind].list] ?? []) as readonly AnyPart[];
}

function withList(file: PartsFile, kind: PartKind, parts: readonly AnyPart[]): PartsFile {
	const { list } = partKinds[kind];
	const { [list]: _before, ...others } = file;
	return parts.length === 0 ? (others as PartsFile) : ({ ...others, [list]: [...parts] } as PartsFile);
}

function withoutMark(part: AnyPart): AnyPart {
	const { invented: _mark, ...others } = part;
	return others as AnyPart;
}

/** The longest id has 80 letters. */
function freeId(wanted: string, taken: ReadonlySet<string>): string {
	let id = wanted;
	for (let number = 2; taken.has(id); number++) id = `${wanted.slice(0, 74)}-${number}`;
	return id;
}
