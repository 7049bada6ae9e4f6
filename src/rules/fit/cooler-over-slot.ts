import type { FactsUnder } from "../../parts/fact-path.ts";
import type { PlacedDevice } from "../../plan/plan.ts";
import { slotPitch } from "../../reference/slot-pitch.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";
import { roundToTenth } from "../round-to-tenth.ts";

/**
 * What a card may carry on its back, toward the processor, in mm: 2.67 above the card, and half of its own 1.6 (PCI
 * Express Card Electromechanical Specification, from memory).
 */
const cardBackMm = 2.67 + 0.8;
/**
 * With less air than the first, in mm, a plate on a card's back can touch the cooler: such plates are 1 to 3 mm thick, and
 * bare metal there can short. Less than the second is worth a look (both own conventions).
 */
const plateMm = 3;
const comfortMm = 5;
/** The first slot lies at least this far from the socket's centre, in mm, even on small boards (own convention). */
const nearestSlotMm = 58;
/** Half of the widest air coolers, in mm (own convention): one of which no reach is named reaches no farther. */
const widestReachMm = 85;

const mayRead = [
	"cooler",
	"cooler.kind",
	"cooler.overSlotMm",
	"graphicsCard",
	"board.layout.firstSlotFromSocketMm",
	"board.cardSlots",
	"plan.things",
	"plan.openLimits",
] as const;
type Facts = FactsUnder<never, (typeof mayRead)[number]>;

/** A wide air cooler can hang over the first card slot; a card that is to sit there then does not go in. */
export const coolerOverSlot = defineRule({
	id: "fit/cooler-over-slot",
	scope: "board",
	label: "Cooler beside the first card",
	wayOut: "a narrower cooler",
	asks: "Does the cooler leave room for the card in the slot nearest the processor?",
	why: "A wide cooler can hang over the first card slot. Bare metal that touches the back of a card can short it.",
	source: "from-memory",
	severity: "plan-around",
	reads: [],
	mayRead,
	saysNothing: ["free"],
	messages: {
		notAsked: () => "You have not named both an air cooler and a card beside it.",
		free: () => "No card sits where the cooler could reach it.",
		clear: ({ gapMm }: { gapMm: number }) => `Between the cooler and the nearest card about ${gapMm} mm stay free.`,
		tight: ({ card, slot, gapMm }: Beside & { gapMm: number }) =>
			`Between the cooler and the back of the ${card} in ${slot} only about ${gapMm} mm stay free.`,
		close: ({ card, slot, gapMm }: Beside & { gapMm: number }) =>
			`Between the cooler and the back of the ${card} in ${slot} about ${gapMm} mm stay free.`,
		graphics: reachWords,
		smallCard: reachWords,
		unsure: () => "Whether the cooler leaves room for a card in the slot nearest it is not known.",
		need: ({ fromMm }: { fromMm: number }) =>
			`The first card slot at least ${fromMm} mm from the socket's centre, on the manual's drawing: your cooler is wide.`,
	},
	advice: {
		tight: () =>
			"A plate on a card's back is 1 to 3 mm thick, and bare metal there can short. Measure the card's plate and the gap, or take a narrower cooler.",
		close: () =>
			"Look at pictures of both: a thick plate on the card's back takes more room. Bare metal must not touch.",
		graphics: () => "Take a narrower cooler, or a board with its first slot farther off. Never press the card past it.",
		smallCard: () => "Put that card into a slot farther off, or take a narrower cooler.",
		unsure: () => "Measure on the drawings: the cooler's half width, and from the socket's middle to the first slot.",
	},
	check(facts): Outcome {
		const kind = facts["cooler.kind"];
		if (facts.cooler !== "have" || kind === "liquid") return pass("notAsked");
		const outcome = ofAirCooler(facts);
		return kind === "air" || outcome.kind === "pass" ? outcome : cannotTell(["cooler.kind"], "unsure");
	},
	needs({ "cooler.kind": kind, "cooler.overSlotMm": overMm, graphicsCard }) {
		if (kind !== "air" || overMm === undefined || (graphicsCard !== "have" && graphicsCard !== "open")) return null;
		const fromMm = roundToTenth(overMm + cardBackMm + plateMm);
		return fromMm > nearestSlotMm ? { messageId: "need", data: { fromMm } } : null;
	},
});

interface Beside {
	readonly card: string;
	readonly slot: string;
}

function reachWords({ overMm, backMm, card, slot }: Beside & { overMm: number; backMm: number }): string {
	return `The cooler reaches ${overMm} mm from the socket's centre; the back of the ${card} in ${slot} begins ${backMm} mm from there.`;
}

/** A card in a slot: how far its slot lies beyond the first one, in mm, at least. */
interface Seat {
	readonly seat: PlacedDevice;
	readonly beyondMm: number;
}

function ofAirCooler(facts: Facts): Outcome {
	const { "cooler.overSlotMm": overMm, "board.layout.firstSlotFromSocketMm": firstMm } = facts;
	const leastGapMm = (beyondMm: number) =>
		roundToTenth((firstMm ?? nearestSlotMm) + beyondMm - (overMm ?? widestReachMm) - cardBackMm);
	const cards = (facts["plan.things"] ?? []).filter(
		({ device: { kind } }) => kind === "graphics card" || kind === "card",
	);
	const seated = cards.map(({ best, worst }) => ({ best: seatOf(best, facts), worst: seatOf(worst, facts) }));
	const missing = [
		...(overMm === undefined ? ["cooler.overSlotMm"] : []),
		...(firstMm === undefined ? ["board.layout.firstSlotFromSocketMm"] : []),
	];
	const isWithin = ({ best, worst }: (typeof seated)[number], gapMm: number) =>
		[best, worst].some((one) => one && leastGapMm(one.beyondMm) < gapMm);
	// What would only be good to know is not worth measuring for.
	const wantedMm = missing.length > 0 ? plateMm : comfortMm;
	const reached = seated.filter((one) => isWithin(one, wantedMm));
	if (reached.length === 0) {
		const slots = facts["board.cardSlots"];
		// A card of which nobody knows whether it comes, or where it goes, would most likely sit in the first slot.
		const mayCome = facts.graphicsCard === "unknown" || (cards.length > 0 && !slots);
		if (mayCome && slots?.length !== 0 && leastGapMm(0) < plateMm)
			return cannotTell(
				[
					...missing,
					...(facts.graphicsCard === "unknown" ? ["graphicsCard"] : []),
					...(slots ? [] : ["board.cardSlots"]),
				],
				"unsure",
			);
		if (cards.length === 0) return pass("notAsked");
		const gaps = seated.flatMap(({ best }) => (best ? [leastGapMm(best.beyondMm)] : []));
		return gaps.length === 0 || missing.length > 0 ? pass("free") : pass("clear", { gapMm: Math.min(...gaps) });
	}
	if (overMm === undefined || firstMm === undefined) return cannotTell(missing, "unsure");

	const slots = facts["board.cardSlots"] ?? [];
	const rowsKnown = slots.length === 1 || slots.every(({ row }) => row !== undefined);
	const isSure = ({ best, worst }: (typeof seated)[number]) =>
		best && rowsKnown && (!worst || best.seat.connector.name === worst.seat.connector.name);
	const sure = reached.flatMap((one) => (isSure(one) && one.best ? [one.best] : []));
	const inTheWay = sure.filter(({ beyondMm }) => leastGapMm(beyondMm) < 0);
	const isGraphics = ({ seat }: Seat) => seat.device.kind === "graphics card";
	const data = ({ seat }: Seat) => ({ card: seat.device.name, slot: seat.connector.name });
	const reachData = (one: Seat) => ({
		...data(one),
		overMm,
		backMm: roundToTenth(firstMm + one.beyondMm - cardBackMm),
	});
	const gapData = (one: Seat) => ({ ...data(one), gapMm: leastGapMm(one.beyondMm) });
	const graphics = inTheWay.find(isGraphics);
	if (graphics) return fail("graphics", reachData(graphics));
	const tightGraphics = sure.find((one) => isGraphics(one) && leastGapMm(one.beyondMm) < plateMm);
	if (tightGraphics) return planAround("tight", gapData(tightGraphics));
	if (reached.some((one) => !isSure(one) && isWithin(one, plateMm))) {
		const limits = facts["plan.openLimits"] ?? [];
		return cannotTell(limits.length > 0 ? limits : ["board.cardSlots"], "unsure");
	}
	const [small] = inTheWay;
	if (small) return goodToKnow("smallCard", reachData(small));
	// A small card has no plate on its back, and goes into another slot if need be.
	const [nearest] = sure.toSorted((one, other) => one.beyondMm - other.beyondMm);
	return nearest ? goodToKnow("close", gapData(nearest)) : pass("free");
}

/** Null for a card that finds no slot, or stands upright beside the board. */
function seatOf(seat: PlacedDevice | null, { "board.cardSlots": slots = [] }: Facts): Seat | null {
	if (seat?.connector.kind !== "card slot" || seat.extra === "riser cable") return null;
	const { row } = seat.connector;
	// A slot of which nobody knows the row may be the first.
	if (row === null) return { seat, beyondMm: 0 };
	const firstRow = Math.min(row, ...slots.flatMap((slot) => slot.row ?? []));
	return { seat, beyondMm: (row - firstRow) * slotPitch.pitchMm };
}
