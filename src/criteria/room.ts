import type { Board } from "../parts/board.ts";
import type { LaterThing } from "../parts/wants.ts";
import { slotPitch } from "../reference/slot-pitch.ts";
import { defineCriterion, type Measure } from "./define-criterion.ts";

/** Things to be added later that this criterion looks for a place for. Fans and USB things have owners of their own. */
export const roomThings = ["M.2 drive", "SATA drive", "memory", "card"] as const satisfies readonly LaterThing[];

/** Rows a graphics card takes where its thickness is not known (common practice: two to four). */
const usualCardRows = 3;
/** How far a printed thickness may stand above the slots it fills, in mm (own convention). */
const roundingMm = 0.5;
/** Modules in a kit where none is picked (common practice). */
const usualModules = 2;

/** How much of what a person means to add later finds a free place, counted; sharing of lanes is left to the plan. */
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
	reads: [
		"board.m2Sockets",
		"board.drivePorts",
		"board.memory.slots",
		"board.cardSlots",
		"laterThings",
		"drives",
		"olderSataDrives",
		"addInCards",
		"memory.modules",
		"graphicsCard",
		"graphicsCard.thicknessMm",
		"wish.features/second-card",
	],
	measure(facts): Measure | null {
		const later = facts.laterThings?.filter((thing) => (roomThings as readonly string[]).includes(thing)) ?? [];
		const wishesSecond = facts["wish.features/second-card"] === "would-like";
		const wanted = later.length + (wishesSecond ? 1 : 0);
		if (wanted === 0) return null;
		const drives = facts.drives ?? [];
		const count = (thing: LaterThing) => later.filter((one) => one === thing).length;
		const hasCard = facts.graphicsCard === "have" || facts.graphicsCard === "open";
		// Pages round: a card of three slots, 60.96 mm, is printed as 61.
		const cardRows = hasCard
			? Math.ceil(
					((facts["graphicsCard.thicknessMm"] ?? usualCardRows * slotPitch.pitchMm) - roundingMm) / slotPitch.pitchMm,
				)
			: 0;
		const checks: readonly { path: string; wants: number; free: number | undefined }[] = [
			{
				path: "board.m2Sockets",
				wants: count("M.2 drive"),
				free: minus(driveSockets(facts["board.m2Sockets"]), drives.filter(({ shape }) => shape === "M.2").length),
			},
			{
				path: "board.drivePorts",
				wants: count("SATA drive"),
				free: minus(
					facts["board.drivePorts"]?.filter(({ kind }) => kind === "SATA").length,
					drives.filter(({ shape, link }) => shape !== "M.2" && link === "SATA").length + (facts.olderSataDrives ?? 0),
				),
			},
			{
				path: "board.memory.slots",
				wants: count("memory"),
				free: minus(facts["board.memory.slots"], facts["memory.modules"] ?? usualModules),
			},
			{
				path: "board.cardSlots",
				wants: count("card"),
				free: minus(openSlots(facts["board.cardSlots"], cardRows), facts.addInCards?.length ?? 0),
			},
			{
				path: "board.cardSlots",
				wants: wishesSecond ? 1 : 0,
				free: secondSlots(facts["board.cardSlots"]),
			},
		];
		const placed = checks.map(({ wants, free }) => (free === undefined ? 0 : Math.min(wants, Math.max(0, free))));
		const sure = placed.reduce((sum, one) => sum + one, 0);
		const unsure = checks.reduce((sum, { wants, free }) => sum + (free === undefined ? wants : 0), 0);
		const missing = checks.filter(({ wants, free }) => wants > 0 && free === undefined).map(({ path }) => path);
		return { low: sure / wanted, high: (sure + unsure) / wanted, missing: [...new Set(missing)] };
	},
	says: ({ low, high }) => {
		if (low !== high) return "how much of what you mean to add finds a place is not known";
		if (low === 1) return "all that you mean to add later finds a place";
		if (low === 0) return "nothing of what you mean to add later finds a place";
		return `${Math.round(low * 100)} percent of what you mean to add later finds a place`;
	},
});

function minus(count: number | undefined, taken: number): number | undefined {
	return count === undefined ? undefined : count - taken;
}

/** M.2 sockets for drives; key E is for wireless. */
function driveSockets(sockets: Board["m2Sockets"]): number | undefined {
	return sockets?.filter(({ key }) => key !== "E").length;
}

/** Slots that a graphics card in the uppermost long slot leaves open. */
function openSlots(slots: Board["cardSlots"], cardRows: number): number | undefined {
	if (!slots || cardRows === 0) return slots?.length;
	const first = slots.find(({ lengthLanes }) => lengthLanes === 16);
	const row = first?.row;
	// A later card is one of today: an old PCI slot is no place for it.
	const others = slots.filter((slot) => slot !== first && slot.bus !== "PCI");
	if (row === undefined) return others.length;
	return others.filter((slot) => slot.row === undefined || slot.row < row || slot.row >= row + cardRows).length;
}

/** Long slots beyond the first with at least eight lanes of the processor's own. */
function secondSlots(slots: Board["cardSlots"]): number | undefined {
	const wide = slots?.filter(
		({ lengthLanes = 0, wiredLanes = 0, from }) => lengthLanes === 16 && wiredLanes >= 8 && from !== "chipset",
	);
	return wide && Math.max(0, wide.length - 1);
}
