import type { AddInCard } from "../parts/add-in-card.ts";
import type { Board } from "../parts/board.ts";
import type { HaveState } from "../parts/build.ts";
import { rowsOf } from "../reference/slot-pitch.ts";
import { usualCardLanes } from "../reference/usual-card-lanes.ts";
import type { Leaning } from "./processor-limits.ts";

export type CardSlot = NonNullable<Board["cardSlots"]>[number];
export type Bus = "PCI Express" | "PCI";

/** A graphics card as far as slots go. */
export interface GraphicsInSlot {
	/** As long as its edge is at most; undefined where nobody knows. */
	readonly lanes: number | undefined;
	/** Card rows it fills, its own among them. */
	readonly rows: number;
}

/** Rows a graphics card fills where nobody knows: from one to four (common practice, no source). */
const rowsWhereUnknown = { best: 1, worst: 4 } as const satisfies Record<Leaning, number>;

/** Rows of a card that is still to be bought: it can be chosen two wide (common practice, no source). */
const rowsOfOpenCard = 2;

/** The graphics card, as it would turn out by the leaning; null where there is none to reckon with. */
export function graphicsInSlot(
	state: HaveState,
	lanes: number | undefined,
	thicknessMm: number | undefined,
	leaning: Leaning,
): GraphicsInSlot | null {
	if (state === "none" || (state === "unknown" && leaning === "best")) return null;
	if (state === "open") return { lanes: 16, rows: rowsOfOpenCard };
	return {
		lanes,
		rows: thicknessMm === undefined ? rowsWhereUnknown[leaning] : rowsOf(thicknessMm),
	};
}

export function busOf({ bus }: { readonly bus?: Bus | undefined }): Bus {
	// Common practice, no source: pages say it loudly where a slot or a card is of the old kind.
	return bus ?? "PCI Express";
}

/**
 * Where the graphics card sits and which slots are then left. It sits in the first slot of x16 length, else in the
 * first one that is long enough; rows beyond its own that it fills are gone. One of unknown length that finds no slot of
 * x16 length sits nowhere, but at worst takes a slot from the others. Which slots share lanes is not looked at.
 */
export function slotsBeside(
	slots: readonly CardSlot[],
	graphics: GraphicsInSlot | null,
	leaning: Leaning,
): { readonly graphicsSlot: CardSlot | null; readonly left: readonly CardSlot[] } {
	if (!graphics) return { graphicsSlot: null, left: slots };
	const express = slots.filter((slot) => busOf(slot) === "PCI Express").sort((one, other) => rowOf(one) - rowOf(other));
	const { lanes, rows } = graphics;
	const graphicsSlot =
		longEnough(express, 16) ?? (lanes === undefined ? undefined : longEnough(express, lanes)) ?? null;
	const taken = graphicsSlot ?? (lanes === undefined && leaning === "worst" ? (express[0] ?? null) : null);
	if (!taken) return { graphicsSlot, left: slots };
	const isCovered = ({ row }: CardSlot) => {
		const from = taken.row;
		if (row === undefined || from === undefined) return rows > 1 && leaning === "worst";
		return row > from && row < from + rows;
	};
	return { graphicsSlot, left: slots.filter((slot) => slot !== taken && !isCovered(slot)) };
}

/** The slots that a card of this bus, size and least number of lanes works in. */
export function slotsFor(
	card: { readonly bus: Bus; readonly lanes: number; readonly leastLanes: number },
	slots: readonly CardSlot[],
	leaning: Leaning,
): readonly CardSlot[] {
	return slots.filter((slot) => {
		if (busOf(slot) !== card.bus) return false;
		if (card.bus === "PCI") return true;
		return lengthOf(slot, leaning) >= card.lanes && lanesOf(slot, leaning) >= card.leastLanes;
	});
}

/**
 * A card's bus, size and least number of lanes. Common practice, no source, where its page is silent: most small cards
 * are x1, those that move much x4, and every card works with one lane, only slower. How thick it is, is not looked at.
 */
export function slotNeedOf({ bus, lanes, leastLanes, use }: AddInCard): {
	bus: Bus;
	lanes: number;
	leastLanes: number;
} {
	return { bus: busOf({ bus }), lanes: lanes ?? leastLanes ?? usualCardLanes(use), leastLanes: leastLanes ?? 1 };
}

/** Common practice, no source: a slot of which no length is given is a long one. */
function longEnough(slots: readonly CardSlot[], lanes: number): CardSlot | undefined {
	return slots.find(({ lengthLanes, wiredLanes }) => (lengthLanes ?? wiredLanes ?? 16) >= lanes);
}

/** A slot whose row is not known comes last. */
function rowOf({ row }: CardSlot): number {
	return row ?? Number.MAX_SAFE_INTEGER;
}

/** A card fits a slot of its size or longer (wiki "PCI Express", sec. 6). */
function lengthOf({ lengthLanes, wiredLanes }: CardSlot, leaning: Leaning): number {
	return lengthLanes ?? (leaning === "best" ? 16 : (wiredLanes ?? 1));
}

function lanesOf(slot: CardSlot, leaning: Leaning): number {
	return slot.wiredLanes ?? (leaning === "best" ? lengthOf(slot, leaning) : 1);
}
