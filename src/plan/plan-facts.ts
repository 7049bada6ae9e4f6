import { once } from "../maths/once.ts";
import type { Board } from "../parts/board.ts";
import type { BuildFacts } from "../parts/build.ts";
import { isM2Drive } from "../reference/m2-fit.ts";
import { buildAround } from "./around-board.ts";
import { type PlanBothWays, planBothWays } from "./both-ways.ts";
import { type CardsAlone, cardsAlone } from "./cards-alone.ts";
import { type Device, isCard } from "./device.ts";
import { wayIn } from "./goes-in.ts";
import { type LaterPlaces, laterPlaces } from "./later-places.ts";
import type { ConnectorEnd, PlacedDevice } from "./plan.ts";
import type { BuildAround, PlanProblem } from "./problem.ts";
import { factsThatSettleLimits } from "./processor-limits.ts";
import { type SecondSlot, secondSlotOf } from "./second-slot.ts";
import { type UplinkLoad, uplinkLoad } from "./uplink.ts";

declare module "../parts/fact-path.ts" {
	interface MeasuredFacts {
		readonly plan: PlanFacts;
	}
}

/** One thing of the build, and where it ends up. */
export interface PlannedThing {
	readonly device: Device;
	/** With all that is not known turning out well, and badly; null where it finds no place. */
	readonly best: PlacedDevice | null;
	readonly worst: PlacedDevice | null;
	readonly hasPlace: "yes" | "no" | "unknown";
	/** Why it finds none at best: no connector of its kind that works, none long enough, none with the lanes, or all are taken. */
	readonly lacks: Lack | null;
	/** The same with all that is not known turning out badly. */
	readonly lacksAtWorst: Lack | null;
}

type Lack = "connector" | "length" | "lanes" | "free connector";

/** What the plan of a board tells the rules and criteria. */
export interface PlanFacts {
	readonly things: readonly PlannedThing[];
	/** Facts that would settle what has a place. */
	readonly missing: readonly string[];
	/** Facts of the processor that would settle which slots, sockets and ports work with it. */
	readonly openLimits: readonly string[];
	readonly ends: readonly ConnectorEnd[];
	/** The same with nothing but the graphics card and the M.2 drives: what no other part could be blamed for. */
	readonly m2Alone: PlanBothWays;
	/** Each card with nothing but the graphics card. */
	readonly cardsAlone: CardsAlone;
	readonly uplink: UplinkLoad;
	readonly later: LaterPlaces;
	/** Not looked for unless it is wished. */
	readonly secondSlot: SecondSlot;
}

/** Plans a board for a build; each part is worked out when it is first read, and then kept. */
export function planFactsOf(board: Board, facts: BuildFacts): PlanFacts {
	return planFactsAround(board, buildAround(facts));
}

export function planFactsAround(board: Board, build: BuildAround): PlanFacts {
	const all = once(() => planBothWays(board, build));
	const alone = once(() =>
		all().without.length + all().unsure.length === 0 ? all() : planBothWays(board, graphicsAndSticks(build)),
	);
	const cards = once(() => cardsAlone(board, build, all()));
	const later = once(() => laterPlaces(board, build, all()));
	const wishesSecond = ["must", "would-like"].includes(build.wishes["features/second-card"] ?? "");
	const second = once(() => (wishesSecond ? secondSlotOf(board, build) : nobodyAsks));
	const things = once(() => thingsOf(all()));
	return {
		get things() {
			return things();
		},
		get missing() {
			return all().missing;
		},
		get openLimits() {
			const { cardSlots = [], m2Sockets = [], drivePorts = [] } = board;
			const names = [...cardSlots, ...m2Sockets, ...drivePorts].map(({ name }) => name);
			return factsThatSettleLimits(names, board.conditions ?? [], build.processor);
		},
		get ends() {
			return all().best.ends;
		},
		get m2Alone() {
			return alone();
		},
		get cardsAlone() {
			return cards();
		},
		get uplink() {
			return uplinkLoad(all().best.placed, board.chipsetUplink);
		},
		get later() {
			return later();
		},
		get secondSlot() {
			return second();
		},
	};
}

/** Most people want one heavy card, and looking for a second is a plan of its own. */
const nobodyAsks: SecondSlot = { has: "unknown", slots: [], missing: [] };

function graphicsAndSticks(build: BuildAround): BuildAround {
	const cable = { olderSataDrives: 0, addInCards: [], laterThings: [] };
	return { ...build, ...cable, drives: (build.drives ?? []).filter((drive) => isM2Drive(drive)) };
}

function thingsOf(both: PlanBothWays): readonly PlannedThing[] {
	const { best, worst, problem, worstProblem, without } = both;
	const now = [...best.placed.map(({ device }) => device), ...best.unplaced, ...both.unsure];
	const inOrder = [...new Map([...now].map((device) => [device.id, device])).values()];
	const place = (id: string, plan: PlanBothWays["best"]) => plan.placed.find(({ device }) => device.id === id) ?? null;
	return inOrder.map((device) => ({
		device,
		best: place(device.id, best),
		worst: place(device.id, worst),
		hasPlace: without.some(({ id }) => id === device.id)
			? "no"
			: both.unsure.some(({ id }) => id === device.id)
				? "unknown"
				: "yes",
		lacks: best.unplaced.some(({ id }) => id === device.id) ? lackOf(device, problem) : null,
		lacksAtWorst: worst.unplaced.some(({ id }) => id === device.id) ? lackOf(device, worstProblem) : null,
	}));
}

function lackOf(device: Device, problem: PlanProblem): Lack {
	const { connectors, leaning, mayAdapt } = problem;
	if (!isCard(device))
		return connectors.some((one) => wayIn(device, one, leaning, mayAdapt)) ? "free connector" : "connector";
	const ofBus = connectors.filter((one) => one.kind === "card slot" && one.bus === device.bus && !one.isDead);
	if (ofBus.length === 0) return "connector";
	const longEnough = ofBus.filter((one) => wayIn(device, one, leaning, mayAdapt));
	if (longEnough.length === 0) return "length";
	return longEnough.some(({ lanes }) => lanes >= device.leastLanes) ? "free connector" : "lanes";
}
