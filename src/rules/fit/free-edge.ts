import { fromRearEdgeMm, isHoleWithin } from "../../reference/board-holes.ts";
import { defineRule } from "../define-rule.ts";
import { goodToKnow, type Outcome, pass } from "../outcome.ts";
import { roundToTenth } from "../round-to-tenth.ts";

/** So many mm past its last screws an edge counts as held (own convention); a full-size ATX board has 6.4 mm there. */
const heldEdgeMm = 25;

/**
 * The big power plugs sit at the front edge, opposite the back sockets. A board that reaches far past its last row of
 * screws bends when they go in: common practice, no source. The places of the holes are the specification's.
 */
export const freeEdge = defineRule({
	id: "fit/free-edge",
	scope: "board",
	label: "Support under the front edge",
	wayOut: "a board whose front edge is screwed down",
	asks: "Is the board held by screws near its front edge, where the big power plug goes in?",
	why: "The main power plug needs a firm push. A board that hangs free there bends, and can crack.",
	source: "ssi-eeb-3.0",
	severity: "good-to-know",
	reads: [],
	mayRead: ["board.holes", "board.depthMm", "board.widthMm"],
	saysNothing: ["held"],
	messages: {
		held: () => "Its front edge is held by screws, as far as its size tells.",
		hangs: ({ freeMm }: { freeMm: number }) =>
			`The front edge reaches ${freeMm} mm past the last screws. It bends when you push a plug in there.`,
	},
	advice: {
		hangs: () =>
			"Hold the edge between finger and thumb beside the plug, and push the main power plug in slowly. Keep the supply unplugged from the mains.",
	},
	check({ "board.holes": stated, "board.depthMm": depthMm, "board.widthMm": widthMm }): Outcome {
		if (!stated || depthMm === undefined) return pass("held");
		const holes = stated.filter((hole) =>
			isHoleWithin(hole, { depthMm, widthMm: widthMm ?? Number.POSITIVE_INFINITY }),
		);
		const freeMm = roundToTenth(depthMm - Math.max(0, ...holes.map(fromRearEdgeMm)));
		return freeMm > heldEdgeMm ? goodToKnow("hangs", { freeMm }) : pass("held");
	},
});
