import { bestPlan } from "./best-plan.ts";
import type { Device } from "./device.ts";
import type { PlanProblem } from "./problem.ts";

/** Devices that are alike for the plan, and how many of them would have to go. */
export interface Going {
	readonly alike: readonly Device[];
	readonly count: number;
}

/**
 * All smallest ways to make the rest fit: sets of devices without which everything else finds a place, and of which none
 * could stay. Fewest devices first. None where everything fits already.
 */
export function whoMustGo(problem: PlanProblem): readonly (readonly Going[])[] {
	const now = problem.devices.filter(({ standing }) => standing !== "later");
	const kinds = alikeIn(now);
	const found: (readonly number[])[] = [];
	for (const counts of countsUpTo(kinds.map((alike) => alike.length))) {
		// Whatever leaves out more than a set that is enough is not a smallest one.
		if (found.some((enough) => enough.every((count, kind) => count <= (counts[kind] ?? 0)))) continue;
		const gone = new Set(kinds.flatMap((alike, kind) => alike.slice(alike.length - (counts[kind] ?? 0))));
		const rest = now.filter((device) => !gone.has(device));
		if (bestPlan({ ...problem, devices: rest }).placements.every((placement) => placement !== null)) found.push(counts);
	}
	return found
		.map((counts) => counts.flatMap((count, kind) => (count > 0 ? [{ alike: kinds[kind] ?? [], count }] : [])))
		.filter((going) => going.length > 0);
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

/** All lists of counts up to these, by their sum, so that the smallest come first. */
function countsUpTo(most: readonly number[]): readonly (readonly number[])[] {
	const all = most.reduce<readonly (readonly number[])[]>(
		(lists, limit) => lists.flatMap((before) => Array.from({ length: limit + 1 }, (_, count) => [...before, count])),
		[[]],
	);
	const sum = (counts: readonly number[]) => counts.reduce((total, count) => total + count, 0);
	return [...all].sort((one, other) => sum(one) - sum(other));
}
