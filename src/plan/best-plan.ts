import { addGains, bestAssignment, compareGains, type Gains } from "../maths/best-assignment.ts";
import type { Connector } from "./connector.ts";
import { type CardDevice, type Device, isCard } from "./device.ts";
import { gainFor, goalsFor, type Standing } from "./goals.ts";
import { type Way, wayIn } from "./goes-in.ts";
import { caseLeaves, mayStandUpright, type PlanProblem } from "./problem.ts";

/** Where a device goes: the connector by its place in the problem's list. */
export interface Placement {
	readonly connector: number;
	readonly standing: Standing;
}

export interface BestPlan {
	/** One entry a device of the problem; null where it finds no place. */
	readonly placements: readonly (Placement | null)[];
	/** The mode of each sharing group. */
	readonly modes: readonly number[];
	/** One number a goal, in the order of goalsFor. */
	readonly gains: Gains;
}

/** A card that fills more than one row, where it sits. */
interface Seat {
	readonly card: CardDevice;
	readonly connector: number;
	readonly way: Way;
	readonly isUpright: boolean;
}

/**
 * The best plan there is, by the goals in their order. Exact: every combination of sharing modes and of places for cards
 * that cover others is gone through, and for each the rest is matched by a best assignment. Of plans that are worth the
 * same, the order of devices and connectors decides, so that the same problem always has the same plan.
 */
export function bestPlan(problem: PlanProblem): BestPlan {
	const goals = goalsFor(problem.devices);
	const keptOn = goals.findIndex(({ goal }) => goal === "kept on");
	let best: BestPlan | null = null;
	const seatings = seatingsOf(problem);
	for (const modes of modeCombinations(problem)) {
		const lanes = lanesIn(problem, modes);
		const off = lanes.filter((given, index) => given === 0 && problem.connectors[index]?.isDead === false).length;
		const ofModes = goals.map((_, index) => (index === keptOn ? -off : 0));
		for (const seats of seatings) {
			const placed = placedAround(problem, goals, lanes, seats);
			if (!placed) continue;
			const gains = addGains(placed.gains, ofModes);
			if (!best || compareGains(gains, best.gains) > 0) best = { placements: placed.placements, modes, gains };
		}
	}
	return best ?? { placements: problem.devices.map(() => null), modes: [], gains: [] };
}

/** Every choice of one mode a sharing group. */
function modeCombinations({ groups }: PlanProblem): readonly (readonly number[])[] {
	return groups.reduce<readonly (readonly number[])[]>(
		(all, { modes }) => all.flatMap((before) => modes.map((_, mode) => [...before, mode])),
		[[]],
	);
}

/** Lanes of every connector in these modes; one that shares in several groups has the fewest of them. */
export function lanesIn({ connectors, groups }: PlanProblem, modes: readonly number[]): readonly number[] {
	const lanes = connectors.map((connector) => (connector.isDead ? 0 : connector.lanes));
	groups.forEach(({ members, modes: all }, group) => {
		const on = all[modes[group] ?? 0];
		for (const member of members) lanes[member] = Math.min(lanes[member] ?? 0, on?.get(member) ?? 0);
	});
	return lanes;
}

/** Every way to seat the cards that fill several rows, each perhaps nowhere. */
function seatingsOf(problem: PlanProblem): readonly (readonly Seat[])[] {
	const wide = problem.devices.filter(isWide);
	return wide.reduce<readonly (readonly Seat[])[]>(
		(all, card) => {
			const seats = seatsOf(problem, card);
			return all.flatMap((before) => [...seats.map((seat) => [...before, seat]), before]);
		},
		[[]],
	);
}

/** Cards that take more than their own slot: they cover rows, bury sockets, bar ports, or want air. */
function isWide(device: Device): device is CardDevice {
	return isCard(device) && (device.rows > 1 || device.kind === "graphics card" || device.isLong || device.reachesEdge);
}

function seatsOf(problem: PlanProblem, card: CardDevice): readonly Seat[] {
	return problem.connectors.flatMap((connector, index): Seat[] => {
		const way = wayIn(card, connector, problem.leaning, problem.mayAdapt);
		if (!way) return [];
		const flat = caseLeaves(problem, card, connector.row);
		return [
			...(flat ? [{ card, connector: index, way, isUpright: false }] : []),
			...(mayStandUpright(problem, card) ? [{ card, connector: index, way, isUpright: true }] : []),
		];
	});
}

function placedAround(
	problem: PlanProblem,
	goals: ReturnType<typeof goalsFor>,
	lanes: readonly number[],
	seats: readonly Seat[],
): Omit<BestPlan, "modes"> | null {
	const { connectors, devices } = problem;
	const isSound = seats.every(
		(seat) =>
			(lanes[seat.connector] ?? 0) >= Math.max(1, seat.way.leastLanes) &&
			seats.every(
				(other) =>
					other === seat || (!isTakenBy(problem, other, seat.connector) && (!other.isUpright || seat.card.isLow)),
			),
	);
	if (!isSound) return null;
	const standingOf = (device: Device, index: number): Standing | null => {
		const connector = connectors[index] as Connector;
		const way = wayIn(device, connector, problem.leaning, problem.mayAdapt);
		const given = lanes[index] ?? 0;
		if (!way || given < Math.max(1, way.leastLanes)) return null;
		if (seats.some((seat) => isTakenBy(problem, seat, index))) return null;
		if (isCard(device) && !caseLeaves(problem, device, connector.row)) return null;
		if (isCard(device) && !device.isLow && seats.some(({ isUpright }) => isUpright)) return null;
		return {
			way,
			lanes: given,
			isUpright: false,
			isBuried: connector.kind === "M.2 socket" && seats.some((seat) => buries(problem, seat, connector)),
			isInItsAir: connector.kind === "card slot" && seats.some((seat) => isRightBelow(problem, seat, connector)),
		};
	};
	const seated = new Map(seats.map((seat) => [seat.card.id, seat]));
	const rest = devices.filter((device): boolean => !isWide(device));
	const standings = rest.map((device) => connectors.map((_, index) => standingOf(device, index)));
	const gainsOf = (device: Device, index: number, standing: Standing) =>
		goals.map((goal) => gainFor(goal, device, connectors[index] as Connector, index, standing));
	const matched = bestAssignment(
		rest.map((device, row) =>
			connectors.map((_, index) => {
				const standing = standings[row]?.[index];
				return standing ? gainsOf(device, index, standing) : null;
			}),
		),
	);
	let gains = matched.gains;
	const placements = devices.map((device): Placement | null => {
		const seat = seated.get(device.id);
		if (seat) {
			const standing = {
				way: seat.way,
				lanes: lanes[seat.connector] ?? 0,
				isUpright: seat.isUpright,
				isBuried: false,
				isInItsAir: seats.some((other) =>
					isRightBelow(problem, other, problem.connectors[seat.connector] as Connector),
				),
			};
			gains = addGains(gains, gainsOf(device, seat.connector, standing));
			return { connector: seat.connector, standing };
		}
		const row = rest.indexOf(device);
		const place = row < 0 ? null : (matched.placeOf[row] ?? null);
		const standing = place === null ? null : standings[row]?.[place];
		return place === null || !standing ? null : { connector: place, standing };
	});
	return { placements, gains };
}

/** Whether this card sits in the connector, or covers it so that nothing goes in. */
export function isTakenBy(problem: PlanProblem, { card, connector, isUpright }: Seat, index: number): boolean {
	if (connector === index) return true;
	if (isUpright) return false;
	const other = problem.connectors[index] as Connector;
	const at = (problem.connectors[connector] as Connector).row;
	if (other.kind === "card slot") {
		// Where a row is not known, a card of several rows covers the slot at worst and not at best.
		if (other.row === null || at === null) return card.rows > 1 && problem.leaning === "worst";
		return other.row > at && other.row < at + card.rows;
	}
	return (
		other.kind === "drive port" &&
		other.port.upright === true &&
		card.reachesEdge &&
		other.row !== null &&
		at !== null &&
		other.row >= at &&
		other.row < at + card.rows
	);
}

function buries(problem: PlanProblem, { card, connector, isUpright }: Seat, { row, ...other }: Connector): boolean {
	const at = (problem.connectors[connector] as Connector).row;
	if (isUpright || !card.isLong || row === null || at === null || other.kind !== "M.2 socket") return false;
	return (other.socket.place ?? "front") === "front" && row >= at && row < at + card.rows;
}

function isRightBelow(problem: PlanProblem, { card, connector, isUpright }: Seat, { row }: Connector): boolean {
	const at = (problem.connectors[connector] as Connector).row;
	return card.kind === "graphics card" && !isUpright && row !== null && at !== null && row === at + card.rows;
}
