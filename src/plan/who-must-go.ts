import { bestPlan } from "./best-plan.ts";
import { type Device, type Extra, isCard } from "./device.ts";
import { wayIn } from "./goes-in.ts";
import type { PlanProblem } from "./problem.ts";

/** Devices that are alike for the plan, and how many of them would have to go. */
export interface Going {
	readonly alike: readonly Device[];
	readonly count: number;
}

/** A smallest set of devices without which everything else finds a place. */
export interface WayToFit {
	readonly without: readonly Going[];
	/** What the rest then needs besides. */
	readonly extras: readonly Extra[];
}

/**
 * All smallest ways to make the rest fit: sets of devices without which everything else finds a place, and of which none
 * could stay. Fewest devices first, those that spare the graphics card before those that do not. None where everything
 * fits already.
 *
 * @param unplaced the devices that find no place while all the others are there
 */
export function whoMustGo(problem: PlanProblem, unplaced: readonly Device[]): readonly WayToFit[] {
	const now = problem.devices.filter(({ standing }) => standing !== "later");
	const kinds = inConflict(problem, alikeIn(now), unplaced);
	const found: { readonly counts: readonly number[]; readonly extras: readonly Extra[] }[] = [];
	for (const counts of countsUpTo(kinds.map((alike) => alike.length))) {
		// Whatever leaves out more than a set that is enough is not a smallest one.
		if (found.some((enough) => enough.counts.every((count, kind) => count <= (counts[kind] ?? 0)))) continue;
		const gone = new Set(kinds.flatMap((alike, kind) => alike.slice(alike.length - (counts[kind] ?? 0))));
		const { placements } = bestPlan({ ...problem, devices: now.filter((device) => !gone.has(device)) });
		if (placements.includes(null)) continue;
		found.push({
			counts,
			extras: [...new Set(placements.flatMap((placement) => placement?.standing.way.extra ?? []))],
		});
	}
	const ways = found
		.map(({ counts, extras }) => ({
			without: counts.flatMap((count, kind) => (count > 0 ? [{ alike: kinds[kind] ?? [], count }] : [])),
			extras,
		}))
		.filter(({ without }) => without.length > 0);
	const losesGraphics = ({ without }: WayToFit) =>
		without.some(({ alike }) => alike.some(({ kind }) => kind === "graphics card"));
	const sizeOf = ({ without }: WayToFit) => without.reduce((sum, { count }) => sum + count, 0);
	return ways.sort(
		(one, other) => sizeOf(one) - sizeOf(other) || Number(losesGraphics(one)) - Number(losesGraphics(other)),
	);
}

/** Devices by what they ask of a place; name and who pays make no difference. */
function alikeIn(devices: readonly Device[]): readonly (readonly Device[])[] {
	const groups = new Map<string, Device[]>();
	for (const device of devices) {
		const key = keyOf(device);
		groups.set(key, [...(groups.get(key) ?? []), device]);
	}
	return [...groups.values()];
}

function keyOf(device: Device): string {
	if (!("drive" in device)) return JSON.stringify({ ...device, id: "", name: "", standing: "", gbytesPerS: 0 });
	const { shape, link, lengthMm, key } = device.drive;
	return JSON.stringify([device.kind, shape, link, lengthMm, key]);
}

/**
 * The kinds that could make room for what finds no place: those that want a connector it wants, or one that shares lanes
 * with or is covered by such a connector's user, and so on from kind to kind. All others can stay whatever happens.
 */
function inConflict(
	problem: PlanProblem,
	kinds: readonly (readonly Device[])[],
	unplaced: readonly Device[],
): readonly (readonly Device[])[] {
	const reached = new Set(kinds.filter((alike) => alike.some((device) => unplaced.includes(device))));
	const touched = new Map(kinds.map((alike) => [alike, touchedBy(problem, alike[0] as Device)]));
	for (let before = -1; before !== reached.size; ) {
		before = reached.size;
		const places = new Set([...reached].flatMap((alike) => [...(touched.get(alike) ?? [])]));
		for (const alike of kinds)
			if ([...(touched.get(alike) ?? [])].some((place) => places.has(place))) reached.add(alike);
	}
	return kinds.filter((alike) => reached.has(alike));
}

/** Connectors that a device may take, and those it may take something from there. */
function touchedBy({ connectors, groups, leaning, mayAdapt }: PlanProblem, device: Device): ReadonlySet<number> {
	const all = connectors.map((_, index) => index);
	// A card of several rows or a long one may cover any slot or port.
	if (isCard(device) && (device.rows > 1 || device.isLong || device.reachesEdge)) return new Set(all);
	const own = all.filter((index) => {
		const connector = connectors[index];
		return connector && wayIn(device, connector, leaning, mayAdapt) !== null;
	});
	const sharing = groups.filter(({ members }) => members.some((member) => own.includes(member)));
	return new Set([...own, ...sharing.flatMap(({ members }) => members)]);
}

/** All lists of counts up to these, by their sum, so that the smallest come first. */
function countsUpTo(most: readonly number[]): readonly (readonly number[])[] {
	const all = most.reduce<readonly (readonly number[])[]>(
		(lists, limit) => lists.flatMap((before) => Array.from({ length: limit + 1 }, (_, count) => [...before, count])),
		[[]],
	);
	const sum = (counts: readonly number[]) => counts.reduce((total, count) => total + count, 0);
	return [...all].sort((one, other) => sum(one) - sum(other));
}
