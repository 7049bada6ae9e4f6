import { addGains, bestAssignment, compareGains, type Gains, noGains } from "../maths/best-assignment.ts";
import type { Connector } from "./connector.ts";
import { type Device, isCard } from "./device.ts";
import { boundOf, type Goal, gainFor, goalsFor, type Standing } from "./goals.ts";
import { type Way, wayIn } from "./goes-in.ts";
import { countOff, type GroupSetting, lanesIn, settingsToTry, untouched, withoutSata } from "./group-modes.ts";
import { gainsPacking } from "./packed-gains.ts";
import { caseLeaves, type PlanProblem } from "./problem.ts";
import { isWide, type Seating, seatingsOf } from "./seats.ts";
import { countsAsSata } from "./sharing-groups.ts";

/** Where a device goes: the connector by its place in the problem's list. */
export interface Placement {
	readonly connector: number;
	readonly standing: Standing;
}

export interface BestPlan {
	/** One entry a device of the problem; null where it finds no place. */
	readonly placements: readonly (Placement | null)[];
	/** How each sharing group is set. */
	readonly settings: readonly GroupSetting[];
	/** One number a goal, in the order of goalsFor. */
	readonly gains: Gains;
}

/**
 * The best plan there is, by the goals in their order. Exact: every setting of the sharing groups and every way to seat
 * the cards that take more than their slot is gone through, unless even the best that each thing could have there alone
 * is worth no more than what is found already; for each the rest is matched by a best assignment. (With more sharing
 * groups than known boards have, settingsToTry leaves some out.) Of plans that are worth the same, the canonical order of
 * devices and the board's order of connectors decide, so that the same things always have the same plan.
 */
export function bestPlan(problem: PlanProblem): BestPlan {
	const table = gainsTable(problem);
	const options = settingsToTry(problem.groups, problem.devices.some(isLater));
	const seatings = seatingsOf(problem);
	let best: BestPlan | null = null;
	searchFrom([]);
	// For the compiler: it does not see what the function does.
	const found = best as BestPlan | null;
	return found
		? { ...found, gains: gainsOfPlan(problem, table.goals, found) }
		: { placements: problem.devices.map(() => null), settings: [], gains: [] };

	/** Goes through all that begins with these settings, group by group. */
	function searchFrom(settings: readonly GroupSetting[]): void {
		const lanes = lanesIn(problem, settings);
		const isUntouched = untouched(problem, settings);
		const isWithoutSata = withoutSata(problem, settings);
		const off = countOff(problem, settings);
		const ofModes = table.ofKeptOn(-off);
		if (best && compareGains(mostAlone(problem, table, { lanes, isUntouched }, ofModes), best.gains) <= 0) return;
		const next = options[settings.length];
		if (next) {
			for (const option of next) searchFrom([...settings, option]);
			return;
		}
		const restAlone = mostAlone(problem, table, { lanes, isUntouched }, noGains, (device) => !isWide(device));
		for (const seating of seatings) {
			const around = { ...seating, lanes, isUntouched, isWithoutSata };
			const seated = seatedIn(problem, table, around, ofModes);
			if (!seated || (best && compareGains(addGains(seated.gains, restAlone), best.gains) <= 0)) continue;
			const placed = placedIn(problem, table, around, seated, best?.gains ?? null);
			if (placed && (!best || compareGains(placed.gains, best.gains) > 0)) best = { ...placed, settings };
		}
	}
}

function isLater({ standing }: Device): boolean {
	return standing === "later";
}

/** More than all devices together can gain: each has the best place there is, whoever else wants it. */
function mostAlone(
	{ connectors, devices }: PlanProblem,
	{ wayOf, gainsOf }: GainsTable,
	{ lanes, isUntouched }: Pick<Surroundings, "lanes" | "isUntouched">,
	before: Gains,
	isCounted: (device: Device) => boolean = () => true,
): Gains {
	return devices.reduce<Gains>((sum, device, nth) => {
		if (!isCounted(device)) return sum;
		const row = connectors.map((_, connector) => {
			const way = wayOf(nth, connector);
			const given = lanes[connector] ?? 0;
			if (!way || given < Math.max(1, way.leastLanes) || (isUntouched[connector] && !isLater(device))) return null;
			return gainsOf(nth, connector, { way, lanes: given, isUpright: false, isBuried: false, isInItsAir: false });
		});
		return addGains(sum, largest(row));
	}, before);
}

/** All that decides what a device may do and gains in a connector, beside the two themselves. */
interface Surroundings extends Seating {
	readonly lanes: readonly number[];
	readonly isUntouched: readonly boolean[];
	readonly isWithoutSata: readonly boolean[];
}

/** Of any one link (PCI Express). */
const mostLanes = 16;

/** Ways in and gains, each worked out once a problem. Gains are packed: see gainsPacking. */
interface GainsTable {
	readonly goals: readonly Goal[];
	/** The gains of so many connectors kept on, and nothing else. */
	readonly ofKeptOn: (count: number) => Gains;
	readonly wayOf: (device: number, connector: number) => Way | null;
	readonly gainsOf: (device: number, connector: number, standing: Standing) => Gains;
}

function gainsTable(problem: PlanProblem): GainsTable {
	const { connectors, devices } = problem;
	const goals = goalsFor(problem);
	const pack = gainsPacking(goals.map((goal) => boundOf(goal, problem)));
	const ways = devices.map((device) =>
		connectors.map((connector) =>
			isCard(device) && !isWide(device) && !caseLeaves(problem, device, connector.row)
				? null
				: wayIn(device, connector, problem.leaning, problem.mayAdapt),
		),
	);
	const known = new Map<number, Gains>();
	return {
		goals,
		ofKeptOn: (count) => pack(goals.map(({ goal }) => (goal === "kept on" ? count : 0))),
		wayOf: (device, connector) => ways[device]?.[connector] ?? null,
		gainsOf: (device, connector, standing) => {
			const { lanes, isUpright, isBuried, isInItsAir } = standing;
			const flags = Number(isUpright) + 2 * Number(isBuried) + 4 * Number(isInItsAir);
			const key = ((device * connectors.length + connector) * (mostLanes + 1) + lanes) * 8 + flags;
			const one = devices[device] as Device;
			const gains =
				known.get(key) ??
				pack(goals.map((goal) => gainFor(goal, one, connectors[connector] as Connector, connector, standing)));
			known.set(key, gains);
			return gains;
		},
	};
}

/** What a plan is worth, goal by goal. */
function gainsOfPlan(
	problem: PlanProblem,
	goals: readonly Goal[],
	{ placements, settings }: Pick<BestPlan, "placements" | "settings">,
): Gains {
	const off = countOff(problem, settings);
	const placed = placements.flatMap((placement, device) =>
		placement ? [{ ...placement, device: problem.devices[device] as Device }] : [],
	);
	return goals.map((goal) =>
		placed.reduce(
			(sum, { device, connector, standing }) =>
				sum + gainFor(goal, device, problem.connectors[connector] as Connector, connector, standing),
			goal.goal === "kept on" ? 0 - off : 0,
		),
	);
}

/** How a device stands in a connector, whatever else is there; null where it cannot. */
function standingIn(
	{ devices, leaning }: PlanProblem,
	around: Surroundings,
	device: number,
	connector: number,
	way: Way | null,
	isUpright: boolean,
): Standing | null {
	const lanes = around.lanes[connector] ?? 0;
	if (!way || lanes < Math.max(1, way.leastLanes)) return null;
	const one = devices[device] as Device;
	if (around.isUntouched[connector] && !isLater(one)) return null;
	if (around.isWithoutSata[connector] && countsAsSata(one, leaning)) return null;
	const isBuried = around.isBuried[connector] === true;
	return { way, lanes, isUpright, isBuried, isInItsAir: around.isInAir[connector] === true };
}

/** The seated cards in their places, and what they gain beside what is given; null where one cannot sit there. */
function seatedIn(
	problem: PlanProblem,
	{ gainsOf }: GainsTable,
	around: Surroundings,
	before: Gains,
): Omit<BestPlan, "settings"> | null {
	const placements = new Array<Placement | null>(problem.devices.length).fill(null);
	let gains = before;
	for (const { card, connector, way, isUpright } of around.seats) {
		const device = problem.devices.indexOf(card);
		const standing = standingIn(problem, around, device, connector, way, isUpright);
		if (!standing) return null;
		placements[device] = { connector, standing };
		gains = addGains(gains, gainsOf(device, connector, standing));
	}
	return { placements, gains };
}

/** The best placements beside the seated cards; null where they cannot be worth more than `toBeat`. */
function placedIn(
	problem: PlanProblem,
	table: GainsTable,
	around: Surroundings,
	seated: Omit<BestPlan, "settings">,
	toBeat: Gains | null,
): Omit<BestPlan, "settings"> | null {
	const { connectors, devices } = problem;
	const isSeatedLow = (device: Device) => !around.hasUpright || !isCard(device) || device.isLow;
	const rest = devices.flatMap((device, index) => (isWide(device) ? [] : [index]));
	const standings = rest.map((device) =>
		connectors.map((_, connector) =>
			around.isTaken[connector] || !isSeatedLow(devices[device] as Device)
				? null
				: standingIn(problem, around, device, connector, table.wayOf(device, connector), false),
		),
	);
	const choices = standings.map((row, nth) =>
		row.map((standing, connector) => standing && table.gainsOf(rest[nth] as number, connector, standing)),
	);
	const most = choices.reduce<Gains>((sum, row) => addGains(sum, largest(row)), seated.gains);
	if (toBeat && compareGains(most, toBeat) <= 0) return null;
	const matched = bestAssignment(choices);
	const placements = [...seated.placements];
	matched.placeOf.forEach((connector, nth) => {
		const standing = connector === null ? null : standings[nth]?.[connector];
		if (connector !== null && standing) placements[rest[nth] as number] = { connector, standing };
	});
	return { placements, gains: addGains(seated.gains, matched.gains) };
}

/** The most that a thing could gain if nothing else were in its way. */
function largest(row: readonly (Gains | null)[]): Gains {
	return row.reduce<Gains>((most, one) => (one && compareGains(one, most) > 0 ? one : most), noGains);
}
