import { type BestPlan, bestPlan, isTakenBy, lanesIn } from "./best-plan.ts";
import type { Connector } from "./connector.ts";
import { type CardDevice, type Device, type Extra, isCard } from "./device.ts";
import { type Link, linkOf } from "./link-speed.ts";
import type { PlanProblem } from "./problem.ts";

export interface PlacedDevice {
	readonly device: Device;
	readonly connector: Connector;
	readonly link: Link;
	readonly extra: Extra | null;
	/** An M.2 drive that is reached only by taking a card out. */
	readonly isBuried: boolean;
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
	const placed = problem.devices.flatMap((device, index): PlacedDevice[] => {
		const placement = best.placements[index];
		if (!placement || device.standing === "later") return [];
		const connector = problem.connectors[placement.connector] as Connector;
		const { way, lanes, isUpright, isBuried } = placement.standing;
		return [
			{
				device,
				connector,
				link: linkOf(device, connector, lanes),
				extra: isUpright ? "riser cable" : way.extra,
				isBuried,
			},
		];
	});
	const isPlaced = (device: Device) => placed.some((one) => one.device === device);
	return {
		placed,
		unplaced: problem.devices.filter((device) => device.standing !== "later" && !isPlaced(device)),
		ends: problem.connectors.map((_, index) => endOf(problem, best, placed, index)),
		best,
	};
}

function endOf(problem: PlanProblem, best: BestPlan, placed: readonly PlacedDevice[], index: number): ConnectorEnd {
	const connector = problem.connectors[index] as Connector;
	const users = placed.filter((one) => one.connector === connector).map(({ device }) => device.name);
	const lanes = lanesIn(problem, best.modes)[index] ?? 0;
	const end = (state: ConnectorEnd["state"], by: readonly string[] = []): ConnectorEnd => ({
		connector,
		state,
		lanes,
		by,
	});
	if (users.length > 0) return end("used", users);
	if (connector.isDead) return end("dead");
	const covering = placed.filter(
		({ device, connector: at, extra }) =>
			isCard(device) && isTakenBy(problem, seatOf(device, problem.connectors.indexOf(at), extra), index),
	);
	if (covering.length > 0)
		return end(
			"covered",
			covering.map(({ device }) => device.name),
		);
	const sharers = sharersOf(problem, index).flatMap((member) =>
		placed.filter((one) => problem.connectors[member] === one.connector).map(({ device }) => device.name),
	);
	// Nothing of its group is used yet: it is still free to be the one that is.
	if (lanes > 0 || sharers.length === 0) return end("free");
	return end(worksBeside(problem, placed, index) ? "narrows" : "off", sharers);
}

function seatOf(card: CardDevice, connector: number, extra: Extra | null) {
	return { card, connector, way: { leastLanes: 0, extra: null }, isUpright: extra === "riser cable" };
}

/** Whether its groups have modes in which it works and all that is used still does, with fewer lanes perhaps. */
function worksBeside({ groups, connectors }: PlanProblem, placed: readonly PlacedDevice[], index: number): boolean {
	return groups
		.filter(({ members }) => members.includes(index))
		.every(({ members, modes }) => {
			const used = members.filter((member) => placed.some(({ connector }) => connector === connectors[member]));
			return modes.some((on) => [index, ...used].every((member) => on.has(member)));
		});
}

/** The other members of a connector's groups. */
function sharersOf({ groups }: PlanProblem, index: number): readonly number[] {
	return groups.flatMap(({ members }) => (members.includes(index) ? members.filter((one) => one !== index) : []));
}
