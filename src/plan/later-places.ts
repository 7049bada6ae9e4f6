import { once } from "../maths/once.ts";
import { isAllKnown } from "./all-known.ts";
import type { PlanBothWays } from "./both-ways.ts";
import type { Device } from "./device.ts";
import { isUseful } from "./goals.ts";
import { secondHeavyCard } from "./later-devices.ts";
import { planFor } from "./plan.ts";
import { type BoardOfPlan, type BuildAround, listFor, type PlanProblem, problemOf } from "./problem.ts";
import { type SecondSlot, secondSlotOf } from "./second-slot.ts";
import { decidingFacts } from "./what-would-settle.ts";

/** How many of the things named for later find a place at a useful speed beside all the rest. */
export interface LaterPlaces {
	readonly wanted: number;
	/** At worst and at best, whatever is not known; alike where all is known. */
	readonly fewest: number;
	readonly most: number;
	/** Paths of facts that would settle it. */
	readonly missing: readonly string[];
}

/** Plans again with the things named for later, which come after everything of now. */
export function laterPlaces(board: BoardOfPlan, build: BuildAround, now: PlanBothWays): LaterPlaces {
	const later = now.problem.devices.filter(isLater);
	const unlisted = now.problem.unlisted.filter(isLater);
	const wanted = later.length + unlisted.length;
	const lists = [...new Set(unlisted.map((device) => `board.${listFor(device)}`))];
	if (later.length === 0) return { wanted, fewest: 0, most: wanted, missing: lists };
	const second = later.some(({ id }) => id === secondHeavyCard.id) ? secondSlotOf(board, build) : null;
	const [best, worst] = (["best", "worst"] as const).map((leaning) =>
		problemOf(board, build, { leaning, withLater: true }),
	) as [PlanProblem, PlanProblem];
	const most = placedOf(best, later, second);
	const fewest =
		isAllKnown(best, worst) && second?.has !== "unknown" ? most : Math.min(most, placedOf(worst, later, second));
	const placedAtWorst = (one: BoardOfPlan, around: BuildAround) =>
		placedOf(problemOf(one, around, { leaning: "worst", withLater: true }), later, second && secondSlotOf(one, around));
	// To find out takes many plans more, and few ask.
	const details = once(() => (fewest === most ? [] : decidingFacts(board, build, placedAtWorst)));
	return {
		wanted,
		fewest,
		most: most + unlisted.length,
		get missing() {
			return [...new Set([...lists, ...details()])];
		},
	};
}

/** How many of these things have a useful place. A second heavy card wants lanes of the processor's own as well. */
function placedOf(problem: PlanProblem, later: readonly Device[], second: SecondSlot | null): number {
	const isAmong = ({ id }: Device) => later.some((one) => one.id === id);
	const isFed = ({ id }: Device) =>
		id !== secondHeavyCard.id || second?.has === "yes" || (second?.has === "unknown" && problem.leaning === "best");
	return planFor(problem).placed.filter(
		({ device, connector, lanes }) => isAmong(device) && isFed(device) && isUseful(device, connector, lanes),
	).length;
}

function isLater({ standing }: Device): boolean {
	return standing === "later";
}
