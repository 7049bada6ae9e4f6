import { bestPlan } from "./best-plan.ts";
import type { Leaning } from "./connector.ts";
import { secondHeavyCard } from "./later-devices.ts";
import { type BoardOfPlan, type BuildAround, problemOf } from "./problem.ts";
import { decidingFacts } from "./what-would-settle.ts";

/** Whether two heavy cards can be fed from the processor at once, with at least eight lanes each. */
export interface SecondSlot {
	readonly has: "yes" | "no" | "unknown";
	/** The slots they then take, by the board's names; none where there is no second. */
	readonly slots: readonly string[];
	/** Paths of the facts that would settle it. */
	readonly missing: readonly string[];
}

/** Looks for it with the graphics card of the build, which may cover the second slot, and with none of the other parts. */
export function secondSlotOf(board: BoardOfPlan, build: BuildAround): SecondSlot {
	if (board.cardSlots === undefined) return { has: "unknown", slots: [], missing: ["board.cardSlots"] };
	const [best, worst] = [slotsFor(board, build, "best"), slotsFor(board, build, "worst")];
	if (!best) return { has: "no", slots: [], missing: [] };
	if (worst) return { has: "yes", slots: worst, missing: [] };
	const missing = decidingFacts(board, build, (one, around) => (slotsFor(one, around, "worst") ? 1 : 0));
	return { has: "unknown", slots: best, missing: missing.length > 0 ? missing : ["board.cardSlots"] };
}

function slotsFor(board: BoardOfPlan, build: BuildAround, leaning: Leaning): readonly string[] | null {
	// Openings of the case are a matter between case and card; no board cures them.
	const alone = { ...build, case: null, drives: [], olderSataDrives: 0, addInCards: [], laterThings: [], wishes: {} };
	const problem = problemOf(board, alone, { leaning });
	const isFed = (from: string | null) => from === "processor" || (from === null && leaning === "best");
	// Without a graphics card of its own the build has two such cards.
	const first = problem.devices.find(({ kind }) => kind === "graphics card");
	const heavy = { ...secondHeavyCard, standing: "planned" } as const;
	const { leastLanes } = secondHeavyCard;
	const devices = [
		first && "rows" in first ? { ...first, sizeLanes: 16, leastLanes } : { ...heavy, id: "first-heavy-card" },
		heavy,
	];
	const fed = problem.connectors.map((one) => (isFed(one.from) ? one : { ...one, isDead: true }));
	const { placements } = bestPlan({ ...problem, connectors: fed, devices });
	const slots = placements.map((placement) => (placement ? fed[placement.connector]?.name : undefined));
	return slots.every((name) => name !== undefined) ? slots : null;
}
