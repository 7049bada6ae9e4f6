import { expect, test } from "vitest";
import { planFor } from "../../src/plan/plan.ts";
import { type BoardOfPlan, problemOf } from "../../src/plan/problem.ts";
import { bareBuild, card, m2, ports, slot, stick, withGraphics } from "./made-up-problem.ts";

/** M2 in use turns S5 and S6 off; M3 in use turns X4 off. */
const board: BoardOfPlan = {
	cardSlots: [slot("X16", 1, 16), slot("X4", 4, 4)],
	m2Sockets: [m2("M1", { from: "processor" }), m2("M2"), m2("M3")],
	drivePorts: ports(6),
	conditions: [],
	sharing: [
		{ members: ["M2", "S5", "S6"], modes: [{ on: { M2: 4 } }, { on: { S5: 1, S6: 1 } }] },
		{ members: ["M3", "X4"], modes: [{ on: { M3: 4 } }, { on: { X4: 4 } }] },
	],
};

function placedOf([fast, sata, wide, narrow]: readonly [number, number, number, number], sharing = board.sharing) {
	const build = {
		...bareBuild,
		graphicsCard: wide === 1 ? withGraphics({}) : bareBuild.graphicsCard,
		drives: Array.from({ length: fast }, (_, index) => stick(`fast ${index + 1}`)),
		olderSataDrives: sata,
		addInCards: Array.from({ length: narrow }, (_, index) => card(`narrow ${index + 1}`)),
		boughtLists: ["drives", "addInCards"] as const,
	};
	return planFor(problemOf({ ...board, sharing }, build, { leaning: "best" })).placed.length;
}

// Counts worked out three ways, by enumeration with matching, by a mixed-integer solver and by a SAT solver (own work).
test.each([
	[[2, 5, 1, 1], 8, 9],
	[[2, 4, 1, 1], 8, 8],
	[[2, 5, 1, 0], 8, 8],
	[[1, 5, 1, 1], 8, 8],
	[[3, 4, 1, 0], 8, 8],
	[[3, 6, 1, 1], 9, 11],
] as const)("fast, SATA, wide, narrow %j: %i find a place, %i if nothing shared", (devices, placed, ignoring) => {
	expect(placedOf(devices)).toBe(placed);
	expect(placedOf(devices, [])).toBe(ignoring);
});
