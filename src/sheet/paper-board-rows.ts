import type { Board } from "../parts/board.ts";
import { backPanel } from "../reference/back-panel.ts";
import { slotPitch } from "../reference/slot-pitch.ts";
import { apertureLeftMm, rowsRightOf, rowXMm, slotBodyMm, slotPlaces } from "../reference/slot-places.ts";
import { listed } from "./listed.ts";
import type { PaperEdges } from "./paper-board-outline.ts";
import { note, nothingDrawn, type PaperNote, type PaperPart } from "./paper-board-part.ts";
import { type PaperShape, path, rectangle, words } from "./paper-board-shapes.ts";
import { shortened } from "./plan-picture.ts";

type CardSlot = NonNullable<Board["cardSlots"]>[number];

/** Most columns of a slot's name on the board. */
const nameColumns = 16;

/** The opening at the back, drawn as if it lay flat on the board: a paper cannot stand up. */
export function openingPart({ rear, isOnGrid }: PaperEdges): PaperPart {
	if (!isOnGrid) return nothingDrawn;
	const { apertureWidthMm: width, apertureHeightMm: height, apertureBottomAboveBoardMm: above } = backPanel;
	return {
		shapes: [
			rectangle("opening", "assumed", { left: apertureLeftMm, top: rear, width, height }),
			words({ x: apertureLeftMm + 12, y: rear + height - 2 }, `back opening, laid flat: ${width} x ${height} mm`),
		],
		notes: [
			note(
				"drawn",
				`The case's opening for the back sockets, ${width} x ${height} mm, as if it lay flat on the board.`,
			),
			note("assumed", `Where the opening lies: upright at the back edge, ${above} mm above the board.`),
		],
		sources: [backPanel.source, slotPlaces.source],
	};
}

/** The rows of card slots with their numbers, and the slots of this board in them. */
export function rowsPart({ cardSlots }: Pick<Board, "cardSlots">, edges: PaperEdges): PaperPart {
	if (!edges.isOnGrid) return nothingDrawn;
	const count = rowsRightOf(edges.left);
	if (count === 0)
		return { ...nothingDrawn, notes: [note("unknown", "No slot row lies on a board as narrow as this.")] };
	const placed = (cardSlots ?? []).map((slot) => ({ slot, place: placeOf(slot, count) }));
	return {
		shapes: [
			...Array.from({ length: count }, (_, index) => index + 1).flatMap((row) => rowShapes(row, edges)),
			...placed.flatMap(({ slot, place }) => (place === "drawn" ? slotShapes(slot, edges) : [])),
		],
		notes: [
			note(
				"drawn",
				`Slot rows: thin lines with numbers, ${slotPitch.pitchMm} mm apart. Row 1 is nearest the processor, whether it has a slot or not.`,
			),
			note("assumed", "Where the rows lie: they stand at the same places on all boards of this family."),
			...slotNotes(cardSlots, placed),
		],
		sources: [slotPitch.source, slotPlaces.source],
	};
}

type SlotPlace = "drawn" | "no row" | "off the board" | "old kind";

function placeOf({ row, bus }: CardSlot, count: number): SlotPlace {
	if (row === undefined) return "no row";
	if (row > count) return "off the board";
	return bus === "PCI" ? "old kind" : "drawn";
}

function rowShapes(row: number, { rear, front }: PaperEdges): readonly PaperShape[] {
	const x = rowXMm(row);
	return [
		path("row", "guide", { x, y: rear }, { x, y: front }),
		words({ x: x - 1.2, y: rear + 5 }, String(row), { highMm: 4, from: "end" }),
	];
}

/** A slot's body; only its middle line where its length is not known. */
function slotShapes({ row = 1, name, lengthLanes }: CardSlot, { rear }: PaperEdges): readonly PaperShape[] {
	const [x, top] = [rowXMm(row), rear + slotPlaces.notchFromRearMm - slotPlaces.bodyBeforeNotchMm];
	const { bodyWidthMm: width } = slotPlaces;
	return [
		...(lengthLanes === undefined || lengthLanes === 0
			? [path("slot", "assumed", { x, y: top }, { x, y: top + slotBodyMm(1) })]
			: [rectangle("slot", "assumed", { left: x - width / 2, top, width, height: slotBodyMm(lengthLanes) })]),
		words({ x: x - width / 2 + 1.2, y: top + 2 }, shortened(name, nameColumns), { isTurned: true }),
	];
}

function slotNotes(
	cardSlots: Board["cardSlots"],
	placed: readonly { readonly slot: CardSlot; readonly place: SlotPlace }[],
): readonly PaperNote[] {
	if (!cardSlots) return [note("unknown", "Which rows have a slot is not known, so no slot is drawn.")];
	if (cardSlots.length === 0) return [note("drawn", "The board has no card slot.")];
	const names = (wanted: SlotPlace) =>
		placed.flatMap(({ slot, place }) => (place === wanted ? [shortened(slot.name, nameColumns)] : []));
	const [rowless, off, old] = [names("no row"), names("off the board"), names("old kind")];
	return [
		...(placed.some(({ place }) => place === "drawn")
			? [note("assumed", "How long a slot's body is: as long as slots of its lanes usually are.")]
			: []),
		...(rowless.length > 0
			? [note("unknown", `${listed(rowless)}: in which row it lies is not known, so it is not drawn.`)]
			: []),
		...(off.length > 0
			? [note("unknown", `${listed(off)}: its row would lie beside a board of this size, so it is not drawn.`)]
			: []),
		...(old.length > 0
			? [note("unknown", `${listed(old)}: a slot of the old kind (PCI), whose place within its row was not read.`)]
			: []),
	];
}

/** "row 1", "rows 1 to 3". */
export function rowWords(first: number, count: number): string {
	return count < 2 ? `row ${first}` : `rows ${first} to ${first + count - 1}`;
}
