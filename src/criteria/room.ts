import type { LaterThing } from "../parts/wants.ts";
import { defineCriterion, type Measure } from "./define-criterion.ts";

/** Things to be added later that this criterion looks for a place for. Fans and USB things have owners of their own. */
export const roomThings = ["M.2 drive", "SATA drive", "memory", "card"] as const satisfies readonly LaterThing[];

/** Modules in a kit where none is picked (common practice, no source). */
const usualModules = 2;

/**
 * How much of what a person means to add later finds a place at a useful speed, beside all that goes in at once. More
 * memory later is the same again, as many modules as there are; features/memory-later tells what rate that leaves.
 */
export const room = defineCriterion({
	id: "room",
	name: "room for later",
	asks: "How much would having no place for a later part bother you?",
	why: "A part for which there is no place means a new board, and that is the most work of all.",
	ends: {
		worst: "nothing of what you mean to add finds a place",
		best: "all that you mean to add finds a place",
	},
	unit: "share of later parts that find a place",
	scale: [
		[0, 0],
		[0.5, 0.6],
		[1, 1],
	],
	source: "own-convention",
	grounds: "The first things to be added are the likeliest; the last ones often are never bought.",
	reads: ["board.memory.slots", "laterThings", "memory.modules", "plan.later"],
	measure(facts): Measure | null {
		const kits = facts.laterThings?.filter((thing) => thing === "memory").length ?? 0;
		const plan = facts["plan.later"] ?? { wanted: 0, fewest: 0, most: 0, missing: [] };
		const wanted = plan.wanted + kits;
		if (wanted === 0) return null;
		const slots = facts["board.memory.slots"];
		const modules = facts["memory.modules"] ?? usualModules;
		const free = slots === undefined ? undefined : Math.max(0, slots - modules);
		// A kit of which one of two modules finds a slot is half a thing.
		const placed = free === undefined ? undefined : Math.min(kits, free / modules);
		return {
			low: (plan.fewest + (placed ?? 0)) / wanted,
			high: (plan.most + (placed ?? kits)) / wanted,
			// To find out takes many plans more.
			get missing() {
				return [...plan.missing, ...(kits > 0 && free === undefined ? ["board.memory.slots"] : [])];
			},
		};
	},
	says: ({ low, high }) => {
		if (low !== high) return "how much of what you mean to add finds a place is not known";
		if (low === 1) return "the drives, cards and memory you mean to add later find a place";
		if (low === 0) return "none of the drives, cards and memory you mean to add later finds a place";
		return `${partWords(low)} of the drives, cards and memory you mean to add later find a place`;
	},
});

/** Shares as they are told; what lies between is told by the nearest. */
const toldShares: readonly (readonly [share: number, words: string])[] = [
	[0.1, "few"],
	[1 / 4, "about a quarter"],
	[1 / 3, "about a third"],
	[1 / 2, "about half"],
	[2 / 3, "about two thirds"],
	[3 / 4, "about three quarters"],
	[0.9, "nearly all"],
];

function partWords(share: number): string {
	const distance = ([told]: readonly [number, string]) => Math.abs(told - share);
	return toldShares.reduce((best, one) => (distance(one) < distance(best) ? one : best))[1];
}
