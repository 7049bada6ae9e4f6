import type { PcCase } from "../parts/case.ts";
import type { HoleLetter } from "../parts/vocabulary.ts";
import { fromRearEdgeMm, holeDiameter, holePosition, holesOfForm, isHoleWithin } from "../reference/board-holes.ts";
import { listed } from "./listed.ts";
import type { PaperEdges } from "./paper-board-outline.ts";
import { type BoardOfPaper, isAssumed, mm, note, nothingDrawn, type PaperPart } from "./paper-board-part.ts";
import { circle, type PaperLine, path, words } from "./paper-board-shapes.ts";

/** Half of the cross in a hole, in mm. */
const armMm = 3.5;
/** So many mm past its last screws an edge counts as held, as in fit/free-edge (own convention). */
const heldEdgeMm = 25;
/** Half of a standoff from corner to corner, in mm (from memory), as in fit/standoffs. */
const standoffRadiusMm = 3.5;

/** The screw holes, solid where the board's page names them, and how far the front edge hangs free. */
export function holesPart(of: BoardOfPaper, edges: PaperEdges, standoffs: PcCase["standoffs"]): PaperPart {
	const { holes: named, form } = of.board;
	if (!named)
		return edges.isOnGrid
			? { ...nothingDrawn, notes: [note("unknown", "Which screw holes the board has is not known, so none is drawn.")] }
			: nothingDrawn;
	const isOnlyAssumed = isAssumed(of, "holes");
	const drawn = named.filter((hole) => isHoleWithin(hole, edges));
	const outside = named.filter((hole) => !drawn.includes(hole));
	const line: PaperLine = isOnlyAssumed ? "assumed" : "sure";
	const source = form && holesOfForm(form)?.source;
	const hasR = drawn.includes("R");
	const bare = bareStandoffs(drawn, edges, of.board, standoffs);
	return {
		shapes: [
			...drawn.flatMap((hole) => holeShapes(hole, line)),
			...freeEdgeShapes(drawn, edges),
			...bare.flatMap(standoffShapes),
		],
		notes: [
			note(
				"drawn",
				`Screw holes: circles of ${holeDiameter.diameterMm} mm with a cross and the standard's letter: ${listed(drawn)}.`,
			),
			note("assumed", "Where the holes lie: their letters stand for places of the standards, the same on all boards."),
			...(isOnlyAssumed
				? [note("assumed", `Which holes there are: they follow from the form ${form}. The board may lack some.`)]
				: []),
			...(isOnlyAssumed && drawn.includes("S") && form === "microATX"
				? [note("assumed", "Hole S is left to the board's maker, and may not be there.")]
				: []),
			...(hasR ? [note("assumed", "Hole R: how far it lies to the right is less sure than all others.")] : []),
			...(outside.length > 0 && !isOnlyAssumed
				? [
						note(
							"unknown",
							`${outside.length === 1 ? "Hole" : "Holes"} ${listed(outside)}: named on its page, but outside a board of this size, so not drawn.`,
						),
					]
				: []),
			...freeEdgeNotes(drawn, edges, isOnlyAssumed),
			...(bare.length > 0
				? [
						note(
							"mind",
							`Standoffs of your case that lie under no hole are marked with an X: ${listed(bare)}. They must come out first.`,
						),
					]
				: []),
		],
		sources: [
			"ssi-eeb-3.0",
			holeDiameter.source,
			...(source ? [source] : []),
			...(hasR ? [holePosition("R").source] : []),
		],
	};
}

function holeShapes(letter: HoleLetter, line: PaperLine) {
	const { xMm: x, yMm: y } = holePosition(letter);
	return [
		circle("hole", line, { x, y }, holeDiameter.diameterMm),
		path("cross", "guide", { x: x - armMm, y }, { x: x + armMm, y }),
		path("cross", "guide", { x, y: y - armMm }, { x, y: y + armMm }),
		words({ x: x + 2.2, y: y + 5 }, letter, { highMm: 4 }),
	];
}

/** How far the board reaches past its last screws where that is much; else 0. */
function freeMm(drawn: readonly HoleLetter[], { depthMm }: PaperEdges): number {
	const free = depthMm - Math.max(0, ...drawn.map(fromRearEdgeMm));
	return drawn.length > 0 && free > heldEdgeMm ? free : 0;
}

function freeEdgeShapes(drawn: readonly HoleLetter[], edges: PaperEdges) {
	const free = freeMm(drawn, edges);
	if (free === 0) return [];
	const { left, right, front } = edges;
	const at = front - free;
	return [
		path("free-edge", "guide", { x: left, y: at }, { x: right, y: at }),
		words({ x: right - 8, y: at + 4 }, `from here on no screw holds the board: ${mm(free)}`, { from: "end" }),
	];
}

function freeEdgeNotes(drawn: readonly HoleLetter[], edges: PaperEdges, isOnlyAssumed: boolean) {
	const free = freeMm(drawn, edges);
	if (free === 0) return [];
	const asFar = isOnlyAssumed || !edges.isSure ? ", as far as is known" : "";
	return [
		note(
			"mind",
			`The front edge reaches ${mm(free)} past the last screws${asFar}. Hold it there when you push a plug in.`,
		),
	];
}

/** Standoffs that somebody noted in this case and that would touch the board where it has no hole. */
function bareStandoffs(
	drawn: readonly HoleLetter[],
	edges: PaperEdges,
	{ form }: BoardOfPaper["board"],
	standoffs: PcCase["standoffs"],
): readonly HoleLetter[] {
	const reach = { widthMm: edges.widthMm + standoffRadiusMm, depthMm: edges.depthMm + standoffRadiusMm };
	const mayHaveHole = (post: HoleLetter) => drawn.includes(post) || (form === "microATX" && post === "S");
	return (standoffs ?? []).filter((post) => !mayHaveHole(post) && isHoleWithin(post, reach));
}

function standoffShapes(letter: HoleLetter) {
	const { xMm: x, yMm: y } = holePosition(letter);
	const half = standoffRadiusMm / Math.SQRT2;
	return [
		path("standoff", "sure", { x: x - half, y: y - half }, { x: x + half, y: y + half }),
		path("standoff", "sure", { x: x - half, y: y + half }, { x: x + half, y: y - half }),
		words({ x: x + 3, y: y + 5 }, `${letter}: no hole`),
	];
}
