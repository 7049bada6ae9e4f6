import { backing } from "./backing.ts";
import { connections } from "./connections.ts";
import type { Criterion } from "./define-criterion.ts";
import { fullSpeed } from "./full-speed.ts";
import { quiet } from "./quiet.ts";
import { rescue } from "./rescue.ts";
import { room } from "./room.ts";
import { steadyPower } from "./steady-power.ts";
import { wishes } from "./wishes.ts";

/** Every criterion, in a fixed order. At most eight, each fact with one owner (both held by tests). */
export const allCriteria: readonly Criterion[] = [
	steadyPower,
	fullSpeed,
	room,
	connections,
	rescue,
	quiet,
	wishes,
	backing,
];

/** The criterion with this id, also by an id it formerly had, or undefined. */
export function criterionById(id: string): Criterion | undefined {
	return allCriteria.find((criterion) => criterion.id === id || criterion.formerly?.includes(id));
}
