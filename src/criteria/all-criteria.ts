import { backing } from "./backing.ts";
import type { Criterion } from "./define-criterion.ts";
import { quiet } from "./quiet.ts";
import { rescue } from "./rescue.ts";
import { room } from "./room.ts";
import { spareSockets } from "./spare-sockets.ts";
import { steadyPower } from "./steady-power.ts";
import { wishes } from "./wishes.ts";

/** Every criterion, in a fixed order. At most eight, each fact with one owner (both held by tests). */
export const allCriteria: readonly Criterion[] = [steadyPower, room, spareSockets, rescue, quiet, wishes, backing];

/** The criterion with this id, also by an id it formerly had, or undefined. */
export function criterionById(id: string): Criterion | undefined {
	return allCriteria.find((criterion) => criterion.id === id || criterion.formerly?.includes(id));
}
