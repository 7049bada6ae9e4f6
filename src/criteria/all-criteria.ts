import type { Criterion } from "./define-criterion.ts";
import { rescue } from "./rescue.ts";
import { spareSockets } from "./spare-sockets.ts";
import { stageLoad } from "./stage-load.ts";

/** Every criterion, in a fixed order. At most eight, each fact with one owner (both held by tests). */
export const allCriteria: readonly Criterion[] = [stageLoad, spareSockets, rescue];

/** The criterion with this id, or undefined. */
export function criterionById(id: string): Criterion | undefined {
	return allCriteria.find((criterion) => criterion.id === id);
}
