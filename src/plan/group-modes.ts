import type { SharingGroup } from "./connector.ts";
import type { PlanProblem } from "./problem.ts";

/** How one sharing group is set, and whether anything of now may use it. */
export interface GroupSetting {
	/** Its mode, by place in the group's list. */
	readonly mode: number;
	/** A group of which nothing of now is used switches nothing off yet: things of later years may have it. */
	readonly isTouched: boolean;
}

/** As many settings of all groups together are gone through at most: six groups of two modes each, touched or not. */
const mostSettings = 729;

/**
 * The settings of each group that are worth trying. With more groups than any known board has, all of them together would
 * take minutes: then groups count as touched throughout, so that a group may switch things off that nobody uses, and past
 * that the last groups keep their first mode. Nothing then stands where it cannot, but a better plan may be missed.
 */
export function settingsToTry(
	groups: readonly SharingGroup[],
	hasLater: boolean,
): readonly (readonly GroupSetting[])[] {
	const all = groups.map((group) => settingsOf(group, hasLater));
	if (productOf(all) <= mostSettings) return all;
	const touched = all.map((settings) => settings.filter(({ isTouched }) => isTouched));
	return touched.map((settings, nth) =>
		productOf(touched.slice(0, nth + 1)) <= mostSettings ? settings : settings.slice(0, 1),
	);
}

function productOf(options: readonly (readonly GroupSetting[])[]): number {
	return options.reduce((product, { length }) => product * length, 1);
}

/**
 * Every setting of one group that is worth trying. A mode that switches nothing off is never better untouched; where
 * nothing is named for later, an untouched group is one, whatever its mode.
 */
function settingsOf({ members, modes }: SharingGroup, hasLater: boolean): readonly GroupSetting[] {
	const isAllOn = (on: ReadonlyMap<number, number>) => members.every((member) => (on.get(member) ?? 0) > 0);
	const sparing = modes.flatMap((on, mode) => (isAllOn(on) ? [] : [{ mode, isTouched: false }]));
	return [...modes.map((_, mode) => ({ mode, isTouched: true })), ...sparing.slice(0, hasLater ? undefined : 1)];
}

/**
 * Lanes of every connector in these settings; one that shares in several groups has the fewest of them. Groups that are
 * not set yet give each of their members the most they can.
 */
export function lanesIn({ connectors, groups }: PlanProblem, settings: readonly GroupSetting[]): readonly number[] {
	const lanes = connectors.map((connector) => (connector.isDead ? 0 : connector.lanes));
	groups.forEach(({ members, modes }, group) => {
		const setting = settings[group];
		const possible = setting ? [modes[setting.mode]] : modes;
		for (const member of members)
			lanes[member] = Math.min(lanes[member] ?? 0, Math.max(0, ...possible.map((on) => on?.get(member) ?? 0)));
	});
	return lanes;
}

/** Connectors that nothing of now may use, since a group of theirs is to stay untouched. */
export function untouched({ connectors, groups }: PlanProblem, settings: readonly GroupSetting[]): readonly boolean[] {
	const kept = groups.filter((_, group) => settings[group]?.isTouched === false);
	return connectors.map((_, index) => kept.some(({ members }) => members.includes(index)));
}

/** M.2 sockets that no SATA drive may be in, since a way is set that holds without one. */
export function withoutSata(
	{ connectors, groups }: PlanProblem,
	settings: readonly GroupSetting[],
): readonly boolean[] {
	const barred = groups.flatMap(({ withoutSata: way }, group) =>
		way && settings[group]?.mode === way.mode ? way.sockets : [],
	);
	return connectors.map((_, index) => barred.includes(index));
}

/** How many connectors that work are off for the sake of what is used beside them. */
export function countOff({ connectors, groups }: PlanProblem, settings: readonly GroupSetting[]): number {
	const off = new Set<number>();
	groups.forEach(({ members, modes }, group) => {
		const setting = settings[group];
		if (!setting?.isTouched) return;
		const on = modes[setting.mode];
		for (const member of members)
			if (!connectors[member]?.isDead && connectors[member]?.lanes && !on?.get(member)) off.add(member);
	});
	return off.size;
}
