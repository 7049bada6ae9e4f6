import { allCriteria } from "./all-criteria.ts";
import type { Criterion } from "./define-criterion.ts";

/** What one criterion alone scores. */
interface OwnedFacts {
	readonly criterion: Criterion;
	/** Paths of what it reads of a board; what is read of the person's parts and plans has no owner. */
	readonly owns: readonly string[];
}

/** Roots of facts that differ from board to board: of the board, its chipset's row, and what is worked out for it. */
const ofBoards = ["board", "platform", "plan", "headers", "power"];

/** Whether a fact may be scored by one criterion only, since it would count twice otherwise. */
export function hasOwner(path: string): boolean {
	return ofBoards.includes(path.split(".")[0] ?? "");
}

/** Which facts each criterion owns, in the order of the criteria. A test holds that no fact has two owners. */
export function ownersTable(criteria: readonly Criterion[] = allCriteria): readonly OwnedFacts[] {
	return criteria.map((criterion) => ({ criterion, owns: criterion.reads.filter(hasOwner) }));
}
