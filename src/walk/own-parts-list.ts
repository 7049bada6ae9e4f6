import type { OwnPart } from "../parts/answers-file.ts";
import { type PartKind, partKindNames } from "../parts/part-kinds.ts";
import type { WalkState } from "./walk-state.ts";

/** The person's own parts: those kept for all walks and those of this one, by kind; one that is both counts once. */
export function ownPartsOf({ kept, ownParts }: Pick<WalkState, "kept" | "ownParts">): readonly OwnPart[] {
	const others = kept.filter(({ kind, part }) => !ownParts.some((one) => one.kind === kind && one.part.id === part.id));
	const all = [...others, ...ownParts];
	return partKindNames.flatMap((kind) => all.filter((own) => own.kind === kind));
}

/** One of them, or undefined. */
export function ownPart(state: WalkState, kind: PartKind, id: string): OwnPart | undefined {
	return ownPartsOf(state).find((own) => own.kind === kind && own.part.id === id);
}
