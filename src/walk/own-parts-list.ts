import type { OwnPart } from "../parts/answers-file.ts";
import { type PartKind, partKindNames } from "../parts/part-kinds.ts";
import type { WalkState } from "./walk-state.ts";

/**
 * The person's own parts: those kept for all walks and those of this one, by kind; one that is both counts once. An
 * invented board of which somebody told a fact stands in the walk too, and is no part of the person's own.
 */
export function ownPartsOf({ kept, ownParts }: Pick<WalkState, "kept" | "ownParts">): readonly OwnPart[] {
	const others = kept.filter((own) => !ownParts.some((one) => isSame(one, own)));
	const described = ownParts.filter((own) => !isInvented(own) || kept.some((one) => isSame(one, own)));
	const all = [...others, ...described];
	return partKindNames.flatMap((kind) => all.filter((own) => own.kind === kind));
}

function isSame(one: OwnPart, other: OwnPart): boolean {
	return one.kind === other.kind && one.part.id === other.part.id;
}

function isInvented({ part }: OwnPart): boolean {
	return (part as { readonly invented?: boolean }).invented === true;
}

/** One of them, or undefined. */
export function ownPart(state: WalkState, kind: PartKind, id: string): OwnPart | undefined {
	return ownPartsOf(state).find((own) => own.kind === kind && own.part.id === id);
}
