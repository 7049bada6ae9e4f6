import type { Connector } from "./connector.ts";
import { type CardDevice, type Device, isCard } from "./device.ts";
import { type Way, wayIn } from "./goes-in.ts";
import { caseLeaves, mayStandUpright, type PlanProblem } from "./problem.ts";

/** A card that takes more than its own slot, where it sits. */
export interface Seat {
	readonly card: CardDevice;
	readonly connector: number;
	readonly way: Way;
	readonly isUpright: boolean;
}

/** One way to seat all such cards, and what it does to each connector. */
export interface Seating {
	readonly seats: readonly Seat[];
	readonly isTaken: readonly boolean[];
	readonly isBuried: readonly boolean[];
	/** Right below the graphics card, where its fans draw air. */
	readonly isInAir: readonly boolean[];
	readonly hasUpright: boolean;
}

/** Cards that take more than their own slot: they cover rows, bury sockets, bar ports, or want air. */
export function isWide(device: Device): device is CardDevice {
	return isCard(device) && (device.rows > 1 || device.kind === "graphics card" || device.isLong || device.reachesEdge);
}

/** Every way to seat the cards that take more than their slot, each perhaps nowhere; those that bar each other left out. */
export function seatingsOf(problem: PlanProblem): readonly Seating[] {
	const all = problem.devices.filter(isWide).reduce<readonly (readonly Seat[])[]>(
		(before, card) => {
			const seats = seatsOf(problem, card);
			// Two that bar each other stay barred, whatever comes after them.
			return before.flatMap((taken) => [
				...seats.map((seat) => [...taken, seat]).filter((some) => areSound(problem, some)),
				taken,
			]);
		},
		[[]],
	);
	return all.map((seats) => seatingOf(problem, seats));
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

function areSound(problem: PlanProblem, seats: readonly Seat[]): boolean {
	return seats.every((seat) =>
		seats.every(
			(other) =>
				other === seat || (!isTakenBy(problem, other, seat.connector) && (!other.isUpright || seat.card.isLow)),
		),
	);
}

function seatingOf(problem: PlanProblem, seats: readonly Seat[]): Seating {
	const { connectors } = problem;
	return {
		seats,
		isTaken: connectors.map((_, index) => seats.some((seat) => isTakenBy(problem, seat, index))),
		isBuried: connectors.map((one) => one.kind === "M.2 socket" && seats.some((seat) => buries(problem, seat, one))),
		isInAir: connectors.map(
			(one) => one.kind === "card slot" && seats.some((seat) => isRightBelow(problem, seat, one)),
		),
		hasUpright: seats.some(({ isUpright }) => isUpright),
	};
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

/** Whether an M.2 drive in this socket is reached only by taking the card out. */
export function buries(
	problem: PlanProblem,
	{ card, connector, isUpright }: Seat,
	{ row, ...other }: Connector,
): boolean {
	const at = (problem.connectors[connector] as Connector).row;
	if (isUpright || !card.isLong || row === null || at === null || other.kind !== "M.2 socket") return false;
	return (other.socket.place ?? "front") === "front" && row >= at && row < at + card.rows;
}

function isRightBelow(problem: PlanProblem, { card, connector, isUpright }: Seat, { row }: Connector): boolean {
	const at = (problem.connectors[connector] as Connector).row;
	return card.kind === "graphics card" && !isUpright && row !== null && at !== null && row === at + card.rows;
}
