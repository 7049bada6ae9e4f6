import type { Board } from "../parts/board.ts";
import type { BuildFacts } from "../parts/build.ts";
import type { Cooler } from "../parts/cooler.ts";
import { rowXMm } from "../reference/slot-places.ts";
import type { PaperEdges } from "./paper-board-outline.ts";
import { type BoardOfPaper, mm, note, nothingDrawn, type PaperNote, type PaperPart } from "./paper-board-part.ts";
import { type PaperShape, path, words } from "./paper-board-shapes.ts";
import { shortened } from "./plan-picture.ts";

const nameColumns = 30;
/** An edge of the loose piece goes on so far, in mm, where nobody knows where it ends. */
const openMm = 30;

const noPlace =
	"Where the processor sits is not the same on all boards, and no standard says it. So the cooler is no part of the board's drawing.";

/** On the board: the line on which the processor's middle lies, and how far the cooler reaches towards the cards. */
export function processorLinePart({ board }: BoardOfPaper, edges: PaperEdges, build: BuildFacts): PaperPart {
	const x = processorXMm(board);
	const cooler = coolerOf(build);
	if (x === null || !edges.isOnGrid || x > edges.right) return { ...nothingDrawn, notes: [note("unknown", noPlace)] };
	const reach = cooler?.overSlotMm;
	const { rear, front } = edges;
	return {
		shapes: [
			path("processor-line", "guide", { x, y: rear }, { x, y: front }),
			words({ x: x + 1.5, y: rear + 60 }, "the middle of the processor lies on this line", { isTurned: true }),
			...(reach === undefined
				? []
				: [
						path("cooler-reach", "over", { x: x - reach, y: rear + 46 }, { x: x - reach, y: front }),
						words({ x: x - reach + 1.5, y: rear + 60 }, `${blockWords(cooler)} reaches to here`, { isTurned: true }),
					]),
		],
		notes: [
			note(
				"drawn",
				`The line of the processor: its page puts the first slot ${mm(board.layout?.firstSlotFromSocketMm ?? 0)} from the middle of the socket.`,
			),
			note("unknown", "How far down that line the processor sits is not known; no standard says it."),
			...(reach === undefined
				? []
				: [
						note(
							"drawn",
							`${shortened(cooler?.name ?? "", nameColumns)}: reaches ${mm(reach)} from there towards the cards.`,
						),
					]),
		],
		sources: [],
	};
}

/** A piece to cut out and move about: the processor's middle, and what lies round it. Null where nothing is known of it. */
export function loosePiece({ board }: BoardOfPaper, build: BuildFacts): PaperPart | null {
	const cooler = coolerOf(build);
	const [left, down] = [cooler?.overSlotMm, cooler?.overMemoryMm];
	const { memoryFromSocketMm: memory, firstSlotFromSocketMm: slot } = board.layout ?? {};
	if (left === undefined && down === undefined && memory === undefined) return null;
	const name = cooler ? shortened(cooler.name, nameColumns) : "";
	const [farLeft, farDown] = [left ?? openMm, down ?? openMm];
	return {
		shapes: [
			path("socket", "sure", { x: -6, y: 0 }, { x: 6, y: 0 }),
			path("socket", "sure", { x: 0, y: -6 }, { x: 0, y: 6 }),
			words({ x: 2, y: -2 }, "middle of the processor"),
			words({ x: 0, y: -openMm - 4 }, "back edge of the board: up", { from: "middle" }),
			...(left === undefined
				? []
				: [
						path("cooler-left", "sure", { x: -left, y: -openMm }, { x: -left, y: farDown }),
						words({ x: -left + 2, y: -openMm + 3 }, `${blockWords(cooler)}: ${mm(left)}`),
					]),
			...(down === undefined
				? []
				: [
						path("cooler-front", "sure", { x: -farLeft, y: down }, { x: openMm, y: down }),
						words({ x: 0, y: down - 2 }, `${blockWords(cooler)}: ${mm(down)}`, { from: "middle" }),
					]),
			...nearShapes(memory, slot),
		],
		notes: [
			...(name === "" ? [] : [note("drawn", `Loose piece: ${name}, seen from above, with the sides that are known.`)]),
			...(memory === undefined
				? []
				: [note("drawn", `Loose piece: the first memory slot, ${mm(memory)} from the middle of the socket.`)]),
			...(memory === undefined && down === undefined
				? []
				: [note("assumed", "The memory stands on the front side of the processor (common practice, no source).")]),
			...unknownSides(cooler, memory, name),
		],
		sources: memory === undefined && down === undefined ? [] : ["common-practice"],
	};
}

function nearShapes(memory: number | undefined, slot: number | undefined): readonly PaperShape[] {
	return [
		...(memory === undefined
			? []
			: [
					path("memory", "over", { x: -openMm, y: memory }, { x: openMm, y: memory }),
					words({ x: openMm + 2, y: memory + 1 }, `first memory slot: ${mm(memory)}`),
				]),
		...(slot === undefined
			? []
			: [
					path("first-slot", "over", { x: -slot, y: -openMm }, { x: -slot, y: openMm }),
					words({ x: -slot - 4, y: -openMm }, `first card slot: ${mm(slot)}`, { isTurned: true }),
				]),
	];
}

function unknownSides(cooler: Cooler | null, memory: number | undefined, name: string): readonly PaperNote[] {
	if (!cooler) return [note("unknown", "No cooler is named, so its size is not drawn.")];
	const missing = [
		...(cooler.overSlotMm === undefined ? ["towards the cards"] : []),
		...(cooler.overMemoryMm === undefined ? ["towards the memory"] : []),
	];
	return [
		...(missing.length > 0 ? [note("unknown", `How far ${name} reaches ${missing.join(" and ")} is not known.`)] : []),
		note("unknown", `How far ${name} reaches to its other sides is not known; they are left open.`),
		...(memory === undefined ? [note("unknown", "How far the memory is from the processor is not known.")] : []),
	];
}

/** Of a liquid cooler only the block sits on the board. */
function blockWords(cooler: Cooler | null): string {
	return cooler?.kind === "liquid" ? "the cooler's block" : "the cooler";
}

function coolerOf({ cooler }: BuildFacts): Cooler | null {
	return cooler.state === "have" ? cooler.part : null;
}

/** The middle of the processor to the right of hole A, where the board's page tells how far the first slot is from it. */
function processorXMm({ layout, cardSlots }: Board): number | null {
	const from = layout?.firstSlotFromSocketMm;
	const rows = (cardSlots ?? []).map(({ row }) => row);
	const known = rows.flatMap((row) => row ?? []);
	// A slot of which nobody knows the row may be the first.
	if (from === undefined || known.length === 0 || known.length < rows.length) return null;
	return rowXMm(Math.min(...known)) + from;
}
