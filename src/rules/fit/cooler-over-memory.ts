import type { FactsUnder } from "../../parts/fact-path.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type MessageData, type Outcome, pass } from "../outcome.ts";
import { roundToTenth } from "../round-to-tenth.ts";

/** From one memory slot to the next on desktop boards, in mm (common practice, from memory). */
const slotPitchMm = 9.5;
/** Half of a module with metal sides, in mm: it begins so far before the middle of its slot (own convention). */
const halfModuleMm = 4;
/** No board's memory slots begin nearer to the socket's centre, in mm (common practice, no source). */
const freeEverywhereMm = 40;
/** With less than this to spare, in mm, the side panel can touch the cooler, as build/cooler-height has it (common practice). */
const panelComfortMm = 2;
/** With more slots or channels than these, slots stand on both sides of the socket (common practice, no source). */
const oneSide = { slots: 4, channels: 2 } as const;

const mayRead = [
	"cooler",
	"cooler.kind",
	"cooler.heightMm",
	"case.coolerMaxHeightMm",
	"cooler.overMemoryMm",
	"cooler.memoryRoomMm",
	"memory",
	"memory.heightMm",
	"memory.modules",
	"board.layout.memoryFromSocketMm",
	"board.memory.slots",
	"board.memory.channels",
	"board.memory.slotOrder",
	"laterThings",
] as const;
type Facts = FactsUnder<never, (typeof mayRead)[number]>;

/**
 * Which memory slots of this board lie under the air cooler, and whether memory that is too tall for it goes in there.
 * Slots count from the socket outward, as most manuals name them: A1, A2, B1, B2 (common practice, no source). Memory
 * that is low enough on every board is build/memory-under-cooler.
 */
export const coolerOverMemory = defineRule({
	id: "fit/cooler-over-memory",
	scope: "board",
	label: "Cooler over the memory",
	wayOut: "lower memory or another cooler",
	asks: "Does the cooler hang over memory slots that you fill, with memory too tall for it?",
	why: "How far the memory slots lie from the socket differs from board to board. Tall memory can push against a wide cooler.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead,
	messages: {
		notAsked: () => "You have not named both an air cooler and memory.",
		low: ({ heightMm, roomMm }: { heightMm: number; roomMm: number }) =>
			`The memory is ${heightMm} mm high; below the cooler there is room for ${roomMm} mm, on any board.`,
		near: ({ overMm }: { overMm: number }) =>
			`The cooler reaches ${overMm} mm from the socket's centre; no board's memory begins within ${freeEverywhereMm} mm.`,
		clear: ({ overMm, startMm }: Reach) =>
			`The cooler reaches ${overMm} mm from the socket's centre; this board's memory begins ${startMm} mm from there.`,
		spared: ({ overMm, startMm, slot }: Reach & Slot) =>
			`The cooler reaches ${overMm} mm from the socket's centre, over an empty slot; the memory in ${slot} begins ${startMm} mm from there.`,
		sparedForNow: ({ heightMm, roomMm, slot }: Height & Slot) =>
			`The cooler hangs over the empty slot before ${slot}. Memory of ${heightMm} mm added later does not go there: the room is ${roomMm} mm.`,
		tooHigh: ({ heightMm, roomMm, moreMm, overMm, startMm, slot }: Height & Reach & Slot & { moreMm: number }) =>
			`The memory is ${heightMm} mm high, ${moreMm} mm more than the ${roomMm} mm below the cooler. The cooler reaches ${overMm} mm from the socket's centre; the memory${slot === "" ? "" : ` in ${slot}`} begins within ${startMm} mm of it.`,
		unsure: ({ heightMm, roomMm }: Height) =>
			`The memory is ${heightMm} mm high, and the cooler leaves ${roomMm} mm below it. Whether it hangs over slots that you fill is not known.`,
		need: ({ startMm, roomMm }: { startMm: number; roomMm: number }) =>
			`The first memory slot to fill at least ${startMm} mm from the socket's centre, on the manual's drawing. Else memory no higher than ${roomMm} mm.`,
	},
	advice: {
		sparedForNow: () => "For more memory later take low modules, or change the whole set.",
		tooHigh: tooHighAdvice,
		unsure: () =>
			"Measure on the drawing in the board's manual, from the middle of the socket to the first memory slot.",
	},
	check(facts): Outcome {
		const kind = facts["cooler.kind"];
		if (facts.cooler !== "have" || facts.memory !== "have" || kind === "liquid") return pass("notAsked");
		const outcome = ofAirCooler(facts);
		return kind === "air" || outcome.kind === "pass" ? outcome : cannotTell(["cooler.kind"]);
	},
	needs(facts) {
		const [overMm, roomMm] = [facts["cooler.overMemoryMm"], facts["cooler.memoryRoomMm"]];
		const heightMm = facts["memory.heightMm"];
		if (facts["cooler.kind"] !== "air" || overMm === undefined || roomMm === undefined || heightMm === undefined)
			return null;
		return overMm <= freeEverywhereMm || heightMm <= roomMm
			? null
			: { messageId: "need", data: { startMm: roundToTenth(overMm + halfModuleMm), roomMm } };
	},
});

interface Reach {
	readonly overMm: number;
	/** Where the memory begins, seen from the socket's centre. */
	readonly startMm: number;
}

interface Height {
	readonly heightMm: number;
	readonly roomMm: number;
}

interface Slot {
	/** Empty where its name is not known. */
	readonly slot: string;
}

/** What a fan raised clear of the memory makes of the cooler's height; left out where height or case is not known. */
interface Raised extends MessageData {
	readonly raisedMm?: number;
	readonly caseRoomMm?: number;
}

function tooHighAdvice({ moreMm, raisedMm, caseRoomMm }: Raised & { moreMm: number }): string {
	if (raisedMm === undefined || caseRoomMm === undefined)
		return "Take lower memory, or see whether the cooler's fan may sit higher or behind. A raised fan adds to the cooler's height.";
	const leftMm = roundToTenth(caseRoomMm - raisedMm);
	const raised = `With its fan ${moreMm} mm higher the cooler can stand up to ${raisedMm} mm high`;
	if (leftMm < 0) return `Take lower memory. ${raised}, and the case has room for ${caseRoomMm} mm only.`;
	const close = leftMm < panelComfortMm ? " That is so close that the panel can touch it." : "";
	return `Take lower memory, or see whether the fan may sit higher. ${raised}; ${leftMm} mm stay free in the case.${close}`;
}

/** As most towers are built, a fan that is raised stands out above them by as much. */
function raisedIn(facts: Facts, moreMm: number): Raised {
	const { "cooler.heightMm": heightMm, "case.coolerMaxHeightMm": caseRoomMm } = facts;
	if (heightMm === undefined || caseRoomMm === undefined) return {};
	return { raisedMm: roundToTenth(heightMm + moreMm), caseRoomMm };
}

function ofAirCooler(facts: Facts): Outcome {
	const { "memory.heightMm": heightMm, "cooler.memoryRoomMm": roomMm } = facts;
	if (heightMm !== undefined && roomMm !== undefined && heightMm <= roomMm) return pass("low", { heightMm, roomMm });
	const { "cooler.overMemoryMm": overMm, "board.layout.memoryFromSocketMm": fromMm } = facts;
	if (overMm !== undefined && overMm <= freeEverywhereMm) return pass("near", { overMm });

	const nearest = nearestFilled(facts);
	const startOf = (place: number) => roundToTenth((fromMm ?? 0) + place * slotPitchMm - halfModuleMm);
	const covers = (place: number) => overMm !== undefined && fromMm !== undefined && overMm > startOf(place);
	const isTooTall = heightMm !== undefined && roomMm !== undefined;
	if (overMm !== undefined && fromMm !== undefined) {
		if (!covers(0)) return pass("clear", { overMm, startMm: startOf(0) });
		if (!covers(nearest.least))
			return isTooTall && facts.laterThings?.includes("memory")
				? goodToKnow("sparedForNow", { heightMm, roomMm, slot: nearest.slot })
				: pass("spared", { overMm, startMm: startOf(nearest.least), slot: nearest.slot });
	}
	if (!isTooTall)
		return cannotTell([
			...(heightMm === undefined ? ["memory.heightMm"] : []),
			...(roomMm === undefined ? ["cooler.memoryRoomMm"] : []),
		]);
	const tall = { heightMm, roomMm };
	if (overMm === undefined || fromMm === undefined)
		return cannotTell(
			[
				...(overMm === undefined ? ["cooler.overMemoryMm"] : []),
				...(fromMm === undefined ? ["board.layout.memoryFromSocketMm"] : []),
			],
			"unsure",
			tall,
		);
	if (!covers(nearest.most)) return cannotTell([nearest.missing], "unsure", tall);
	const moreMm = roundToTenth(heightMm - roomMm);
	return fail("tooHigh", {
		...tall,
		moreMm,
		...raisedIn(facts, moreMm),
		overMm,
		startMm: startOf(nearest.most),
		slot: nearest.slot,
	});
}

/** The nearest slot that is filled, counted from 0 at the socket: between these two, and what would tell. */
interface NearestFilled extends Slot {
	readonly least: number;
	readonly most: number;
	readonly missing: string;
}

function nearestFilled(facts: Facts): NearestFilled {
	const { "board.memory.slots": slots, "board.memory.channels": channels, "memory.modules": modules } = facts;
	const between = (least: number, most: number, slot = ""): NearestFilled => ({
		least,
		most,
		slot,
		missing:
			modules === undefined ? "memory.modules" : slots === undefined ? "board.memory.slots" : "board.memory.slotOrder",
	});
	// With slots on both sides the cooler hangs over one row or the other, and a row is seldom left empty.
	if ((slots ?? 0) > oneSide.slots || (channels ?? 0) > oneSide.channels) return between(0, 0);
	if (slots === undefined || modules === undefined) return between(0, (slots ?? Number.POSITIVE_INFINITY) - 1);
	const order = facts["board.memory.slotOrder"];
	const all = soundOrder(order, slots);
	const filled = soundOrder(order, modules)?.map((name) => all?.indexOf(name) ?? -1);
	if (all && filled?.every((place) => place >= 0)) {
		const place = Math.min(...filled);
		return between(place, place, all[place]);
	}
	if (modules >= slots) return between(0, 0);
	// Two or more go into both channels, so one of them lies in the half nearer the socket.
	return between(0, modules === 1 ? slots - 1 : Math.floor(slots / 2) - 1);
}

/** The slots for so many modules; none where the list names a slot twice or has not as many. */
function soundOrder(order: Facts["board.memory.slotOrder"], modules: number): readonly string[] | undefined {
	const names = order?.[modules];
	return names && names.length === modules && new Set(names).size === modules ? names : undefined;
}
