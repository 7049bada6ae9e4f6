import { expect, test } from "vitest";
import { checkParts } from "../../src/parts/check-parts.ts";

const file = (board: object) => ({
	schema: "boardwalk/parts@1",
	boards: [
		{
			id: "a-board",
			name: "A board",
			form: "microATX",
			cardSlots: [{ name: "SLOT_1", row: 1 }],
			m2Sockets: [{ name: "M2_1" }],
			...board,
		},
	],
});
const faults = (board: object) => checkParts(file(board)).faults.map(({ path, expected }) => `${path}: ${expected}`);

test("a sound board has no fault", () => {
	expect(
		faults({ sharing: [{ members: ["SLOT_1", "M2_1"], modes: [{ on: { SLOT_1: 4 } }, { on: { M2_1: 4 } }] }] }),
	).toEqual([]);
});

test.each([
	[
		{ sharing: [{ members: ["SLOT_1", "M2_9"], modes: [{ on: { SLOT_1: 4 } }] }] },
		'boards[0].sharing[0].members[1]: a connector of this board: SLOT_1, M2_1; "M2_9" is none of them',
	],
	[
		{ sharing: [{ members: ["SLOT_1", "M2_1"], modes: [{ on: { SATA_1: 1 } }] }] },
		"boards[0].sharing[0].modes[0].on.SATA_1: one of the group's members: SLOT_1, M2_1",
	],
	[
		{
			sharing: [{ members: ["SLOT_1", "M2_1"], modes: [{ on: { SLOT_1: 4 } }], onlyWithSata: ["SLOT_1"] }],
		},
		"boards[0].sharing[0].onlyWithSata[0]: an M.2 socket among the group's members: SLOT_1, M2_1",
	],
	[
		{ conditions: [{ when: { processorGraphics: true }, connector: "SLOT_7", dead: true }] },
		'boards[0].conditions[0].connector: a connector of this board: SLOT_1, M2_1; "SLOT_7" is none of them',
	],
	[
		{ cardSlots: [{ name: "SLOT_1", row: 5 }] },
		"boards[0].cardSlots[0].row: a row from 1 to 4, as many as a board of the form microATX has; it is 5",
	],
	[
		{
			headers: {
				fans: [
					{ name: "FAN_1", use: "processor" },
					{ name: "FAN_1", use: "case" },
				],
			},
		},
		'boards[0].headers.fans[1].name: a name of its own; "FAN_1" is used twice',
	],
	[{ m2Sockets: [{ name: "SLOT_1" }] }, 'boards[0].m2Sockets[0].name: a name of its own; "SLOT_1" is used twice'],
])("%j is told with its path", (board, told) => {
	expect(faults(board)).toEqual([told]);
});

test("negative lanes are told with their path", () => {
	expect(checkParts(file({ cardSlots: [{ name: "SLOT_1", wiredLanes: -4 }] })).faults[0]?.path).toBe(
		"boards[0].cardSlots[0].wiredLanes",
	);
});
