import { expect, test } from "vitest";
import type { Board } from "../../src/parts/board.ts";
import { boardTestFaults } from "../../src/parts/board-test-faults.ts";
import { checkParts } from "../../src/parts/check-parts.ts";

const boardWith = (...readings: (readonly [airC: number, stageC: number])[]): Board => ({
	id: "a-board",
	name: "A board",
	powerDelivery: { measurements: readings.map(([airC, stageC]) => ({ loadW: 120, airC, stageC })) },
});

test("a stage that is no warmer than its room is pointed at, others are not", () => {
	expect(boardTestFaults(boardWith([22, 22.1], [-10, 4]), "boards[0]")).toEqual([]);
	expect(boardTestFaults({ id: "a-board", name: "A board" }, "boards[0]")).toEqual([]);
	expect(boardTestFaults(boardWith([22, 60], [22, 22], [60, -20]), "boards[3]")).toEqual([
		{
			path: "boards[3].powerDelivery.measurements[1].stageC",
			expected: "more than the 22 degrees C of the room, since a stage under load is warmer; it is 22",
		},
		{
			path: "boards[3].powerDelivery.measurements[2].stageC",
			expected: "more than the 60 degrees C of the room, since a stage under load is warmer; it is -20",
		},
	]);
});

test("a file of parts with such a test is told so", () => {
	const file = { schema: "boardwalk/parts@1", boards: [boardWith([22, 15])] };
	expect(JSON.stringify(checkParts(file))).toContain("more than the 22 degrees C of the room");
});
