import { type BestPlan, bestPlan } from "./best-plan.ts";
import type { Connector } from "./connector.ts";
import { type CardDevice, type Device, type Extra, isCard } from "./device.ts";
import { type Link, linkOf } from "./link-speed.ts";
import type { PlanProblem } from "./problem.ts";
import { buries, isTakenBy } from "./seats.ts";
import { countsAsSata } from "./sharing-groups.ts";

export interface PlacedDevice {
	readonly device: Device;
	readonly connector: Connector;
	readonly link: Link;
	/** Lanes of the connector in this plan. */
	readonly lanes: number;
	readonly extra: Extra | null;
	/** An M.2 drive that is reached only by taking a card out. */
	readonly isBuried: boolean;
	/** Names of the cards it lies under, if it does. */
	readonly buriedBy: readonly string[];
	/** Names of what shares lanes with it, where it has fewer than its connector could give. */
	readonly narrowedBy: readonly string[];
}

/**
 * How a connector ends up. "off" names what shares with it, "covered" the card above it; "narrows" can still be used, but
 * takes lanes from what it names.
 */
export interface ConnectorEnd {
	readonly connector: Connector;
	readonly state: "used" | "free" | "narrows" | "off" | "covered" | "dead";
	/** Lanes it has in this plan; fewer than its own where it shares. */
	readonly lanes: number;
	/** Names of the devices that use, cover or switch it off. */
	readonly by: readonly string[];
}

export interface Plan {
	readonly placed: readonly PlacedDevice[];
	readonly unplaced: readonly Device[];
	readonly ends: readonly ConnectorEnd[];
	readonly best: BestPlan;
}

/** The best plan of a problem, in terms of devices and connectors. Later things take no place in it. */
export function planFor(problem: PlanProblem): Plan {
	const best = bestPlan(problem);
	const isNow = ({ standing }: Device) => standing !== "later";
	const placed = problem.devices.flatMap((device, index): PlacedDevice[] => {
		const placement = best.placements[index];
		if (!placement || !isNow(device)) return [];
		const connector = problem.connectors[placement.connector] as Connector;
		const { way, lanes, isUpright, isBuried } = placement.standing;
		const sharers = lanes < connector.lanes ? sharersOf(problem, placement.connector) : [];
		return [
			{
				device,
				connector,
				link: linkOf(device, connector, lanes),
				lanes,
				extra: isUpright ? "riser cable" : way.extra,
				isBuried,
				buriedBy: problem.devices.flatMap((card, at) => {
					const seat = best.placements[at];
					if (!isCard(card) || !seat) return [];
					const { connector: where, standing } = seat;
					return buries(problem, { ...standing, card, connector: where }, connector) ? [card.name] : [];
				}),
				narrowedBy: problem.devices
					.filter((other, at) => isNow(other) && sharers.includes(best.placements[at]?.connector ?? -1))
					.map(({ name }) => name),
			},
		];
	});
	const isPlaced = (device: Device) => placed.some((one) => one.device === device);
	return {
		placed,
		unplaced: problem.devices.filter((device) => isNow(device) && !isPlaced(device)),
		ends: problem.connectors.map((_, index) => endOf(problem, placed, index)),
		best,
	};
}

function endOf(problem: PlanProblem, placed: readonly PlacedDevice[], index: number): ConnectorEnd {
	const connector = problem.connectors[index] as Connector;
	const user = placed.find((one) => one.connector === connector);
	const end = (state: ConnectorEnd["state"], lanes: number, by: readonly string[] = []): ConnectorEnd => ({
		connector,
		state,
		lanes,
		by,
	});
	if (user) return end("used", user.lanes, [user.device.name]);
	if (connector.isDead) return end("dead", 0);
	const covering = placed.filter(
		({ device, connector: at, extra }) =>
			isCard(device) && isTakenBy(problem, seatOf(device, problem.connectors.indexOf(at), extra), index),
	);
	if (covering.length > 0)
		return end(
			"covered",
			connector.lanes,
			covering.map(({ device }) => device.name),
		);
	const [kept, beside] = [lanesBeside(problem, placed, index, true), lanesBeside(problem, placed, index, false)];
	if (kept > 0) return end("free", kept);
	const sharers = sharersOf(problem, index).flatMap((member) =>
		placed.filter((one) => problem.connectors[member] === one.connector).map(({ device }) => device.name),
	);
	return end(beside > 0 ? "narrows" : "off", beside, sharers);
}

function seatOf(card: CardDevice, connector: number, extra: Extra | null) {
	return { card, connector, way: { leastLanes: 0, extra: null }, isUpright: extra === "riser cable" };
}

/**
 * Most lanes a connector can have beside all that is used: with nothing there losing a lane, or with all of it only
 * staying on. 0 where it cannot be used.
 */
function lanesBeside(
	{ groups, connectors, leaning }: PlanProblem,
	placed: readonly PlacedDevice[],
	index: number,
	isLosingNone: boolean,
): number {
	return groups
		.filter(({ members }) => members.includes(index))
		.reduce((fewest, { members, modes, withoutSata }) => {
			const hasSata = placed.some(
				({ device, connector }) =>
					countsAsSata(device, leaning) && withoutSata?.sockets.includes(connectors.indexOf(connector)),
			);
			const allowed = modes.filter(
				(on, mode) =>
					!(hasSata && mode === withoutSata?.mode) &&
					members.every((member) => {
						const user = placed.find(({ connector }) => connector === connectors[member]);
						return !user || (on.get(member) ?? 0) >= (isLosingNone ? user.lanes : 1);
					}),
			);
			return Math.min(fewest, Math.max(0, ...allowed.map((on) => on.get(index) ?? 0)));
		}, connectors[index]?.lanes ?? 0);
}

/** The other members of a connector's groups. */
function sharersOf({ groups }: PlanProblem, index: number): readonly number[] {
	return groups.flatMap(({ members }) => (members.includes(index) ? members.filter((one) => one !== index) : []));
}
