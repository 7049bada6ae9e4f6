import type { BuildFacts } from "../parts/build.ts";
import { type CardDevice, isCard } from "../plan/device.ts";
import { addInId } from "../plan/devices.ts";
import { type PlanFacts, planFactsOf } from "../plan/plan-facts.ts";
import { rowsOf } from "../reference/slot-pitch.ts";
import { cardBack, rowsRightOf, rowXMm } from "../reference/slot-places.ts";
import type { PaperEdges } from "./paper-board-outline.ts";
import { type BoardOfPaper, mm, note, nothingDrawn, type PaperNote, type PaperPart } from "./paper-board-part.ts";
import { rowWords } from "./paper-board-rows.ts";
import { type PaperShape, path, rectangle, words } from "./paper-board-shapes.ts";
import { shortened } from "./plan-picture.ts";

type Thing = PlanFacts["things"][number];

/** A card of the build: what its page says of its size. */
interface CardSize {
	readonly name: string;
	readonly lengthMm: number | undefined;
	readonly thicknessMm: number | undefined;
}

/** Most columns of a card's name. */
const nameColumns = 30;
/** A card of which no length is known is drawn so far from the back edge, in mm, and open at its end. */
const openEndMm = 60;
/** Between the slot's name and the next row's line, in mm. */
const labelFromSlotMm = 13;

/** The cards of this build in the slots that the plan gives them, as thick and as long as their pages say. */
export function cardsPart({ board }: BoardOfPaper, edges: PaperEdges, build: BuildFacts): PaperPart {
	const things = planFactsOf(board, build).things.flatMap((thing) =>
		isCard(thing.device) ? [{ thing, size: sizeOf(thing.device, build) }] : [],
	);
	const graphics = build.graphicsCard.state;
	const none: readonly PaperNote[] =
		graphics === "open" || graphics === "unknown"
			? [note("unknown", "No graphics card is named, so none is drawn.")]
			: [];
	if (!edges.isOnGrid) return { ...nothingDrawn, notes: none };
	const named = things.flatMap(({ thing, size }) => (size ? [{ thing, size }] : []));
	const told = named.map(({ thing, size }) => cardPart(thing, size, edges));
	const noteOfCase = caseNote(
		build,
		named.map(({ size }) => size),
	);
	return {
		shapes: told.flatMap(({ shapes }) => shapes),
		notes: [
			...told.flatMap(({ notes }) => notes),
			...(told.some(({ shapes }) => shapes.length > 0)
				? [
						note("assumed", "How a card lies: its thickness goes from its slot away from the processor."),
						note("assumed", `A card's back may reach ${mm(cardBack.fromSlotMm)} from its slot towards the processor.`),
						note(
							"assumed",
							"Where a card begins: at the back edge. Real ones begin some 2 mm behind it, at their bracket.",
						),
					]
				: []),
			...none,
			...noteOfCase,
		],
		sources: told.some(({ shapes }) => shapes.length > 0) ? [cardBack.source] : [],
	};
}

/** What the page of the card says; null for one that is still to be chosen. */
function sizeOf({ id, name }: CardDevice, build: BuildFacts): CardSize | null {
	const part =
		id === "graphics"
			? build.graphicsCard.state === "have"
				? build.graphicsCard.part
				: undefined
			: build.addInCards?.find((_, index) => addInId(index) === id);
	return part ? { name: shortened(name, nameColumns), lengthMm: part.lengthMm, thicknessMm: part.thicknessMm } : null;
}

function cardPart(thing: Thing, size: CardSize, edges: PaperEdges): Pick<PaperPart, "shapes" | "notes"> {
	const { name, lengthMm, thicknessMm } = size;
	const untold = (why: string) => ({ shapes: [], notes: [note("unknown", `${name}: ${why}, so it is not drawn.`)] });
	const { best, worst } = thing;
	if (!best) return untold("it finds no slot on this board");
	if (best.extra === "riser cable") return untold("it stands upright on a cable beside the board");
	const { row, name: slot } = best.connector;
	if (row === null) return untold("the row of its slot is not known");
	if (row > rowsRightOf(edges.left)) return untold("its row would lie beside a board of this size");
	if (best.connector.kind === "card slot" && best.connector.bus === "PCI")
		return untold("it goes into a slot of the old kind, whose place was not read");
	if (thicknessMm === undefined) return untold("how thick it is, is not known");
	const rows = rowWords(row, rowsOf(thicknessMm));
	const far = lengthMm === undefined ? "its length is not known" : `${mm(lengthMm)} long`;
	const isSure = worst !== null && worst.connector.name === best.connector.name && thing.hasPlace === "yes";
	const beyond = lengthMm === undefined ? 0 : lengthMm - edges.depthMm;
	const aside = edges.left - (rowXMm(row) + cardBack.fromSlotMm - thicknessMm);
	return {
		shapes: cardShapes(size, thicknessMm, row, edges),
		notes: [
			note("drawn", `${name} in ${shortened(slot, nameColumns)}: ${mm(thicknessMm)} thick, fills ${rows}; ${far}.`),
			...(beyond > 0
				? [note("drawn", `${name} reaches ${mm(beyond)} past the board's front edge; that part is dashed.`)]
				: []),
			...(aside > 0 ? [note("drawn", `${name} reaches ${mm(aside)} past the board's left edge.`)] : []),
			...(isSure ? [] : [note("unknown", `Whether ${name} goes into that slot is not sure: facts are missing.`)]),
			...(lengthMm === undefined
				? [note("unknown", `${name}: how long it is, is not known; its end is left open.`)]
				: []),
		],
	};
}

/** On the board with a solid outline, beyond its front edge with a dashed one. */
function cardShapes(
	{ name, lengthMm }: CardSize,
	thicknessMm: number,
	row: number,
	{ rear, front }: PaperEdges,
): readonly PaperShape[] {
	const right = rowXMm(row) + cardBack.fromSlotMm;
	const [left, end] = [right - thicknessMm, rear + (lengthMm ?? openEndMm)];
	const size = `${name}: ${mm(thicknessMm)} thick${lengthMm === undefined ? "" : `, ${mm(lengthMm)} long`}`;
	const label = words({ x: rowXMm(row) - labelFromSlotMm, y: rear + openEndMm }, size, { isTurned: true });
	if (lengthMm === undefined)
		return [
			path("card", "sure", { x: left, y: end }, { x: left, y: rear }, { x: right, y: rear }, { x: right, y: end }),
			label,
		];
	const box = { left, top: rear, width: thicknessMm, height: Math.min(end, front) - rear };
	if (end <= front) return [rectangle("card", "sure", box), label];
	return [
		path("card", "sure", { x: left, y: front }, { x: left, y: rear }, { x: right, y: rear }, { x: right, y: front }),
		path(
			"card-beyond",
			"over",
			{ x: left, y: front },
			{ x: left, y: end },
			{ x: right, y: end },
			{ x: right, y: front },
		),
		label,
	];
}

/** What the case's page allows, where a card's length is known. */
function caseNote(build: BuildFacts, cards: readonly CardSize[]): readonly PaperNote[] {
	const most = build.case.state === "have" ? build.case.part.cardMaxLengthMm : undefined;
	const longest = Math.max(0, ...cards.map(({ lengthMm = 0 }) => lengthMm));
	if (most === undefined || longest === 0) return [];
	return [
		note("mind", `Your case takes cards of up to ${mm(most)} by its page; your longest card has ${mm(longest)}.`),
	];
}
