import { describe, expect, test } from "vitest";
import type { Board } from "../../../src/parts/board.ts";
import { coolerOverMemory } from "../../../src/rules/fit/cooler-over-memory.ts";
import { testRule } from "../test-rule.ts";

type Memory = NonNullable<Board["memory"]>;
const manual = { "1": ["A2"], "2": ["A2", "B2"], "4": ["A1", "A2", "B1", "B2"] };
/** Its slots lie 51, 60.5, 70 and 79.5 mm from the socket's centre; what stands in them begins 4 mm nearer. */
const four = (more: Partial<Memory> = {}) => ({
	layout: { memoryFromSocketMm: 51 },
	memory: { slots: 4, channels: 2, ...more },
});
const named = four({ slotOrder: manual });
const tower = (overMemoryMm: number) => ({ kind: "air" as const, memoryRoomMm: 40, overMemoryMm });
const tall = { heightMm: 44, modules: 2 };
const tallMm = { heightMm: 44, roomMm: 40 };

// Pitch of the slots from memory; 40 mm common practice; half a module of 4 mm an own convention.
testRule(coolerOverMemory, {
	fits: {
		"just as far as the first slot": [
			{ board: named, memory: tall, cooler: tower(47) },
			"clear",
			{ overMm: 47, startMm: 47 },
		],
		"past it, over a slot that stays empty, just to the one that is filled": [
			{ board: named, memory: tall, cooler: tower(56.5) },
			"spared",
			{ overMm: 56.5, startMm: 56.5, slot: "A2" },
		],
		"one module in the second slot": [
			{ board: named, memory: { ...tall, modules: 1 }, cooler: tower(56.5) },
			"spared",
			{ overMm: 56.5, startMm: 56.5, slot: "A2" },
		],
		"over the empty slot, more memory later, and its height not known": [
			{ board: named, memory: { modules: 2 }, cooler: tower(50), laterThings: ["memory"] },
			"spared",
			{ overMm: 50, startMm: 56.5, slot: "A2" },
		],
		"low enough, on a board of which nothing is known": [
			{ board: {}, memory: { heightMm: 40 }, cooler: tower(66) },
			"low",
			{ heightMm: 40, roomMm: 40 },
		],
		"a cooler that stays near the socket, on such a board": [
			{ board: {}, memory: tall, cooler: tower(40) },
			"near",
			{ overMm: 40 },
		],
		"far enough, with neither height nor room known": [
			{ board: four(), memory: {}, cooler: { kind: "air", overMemoryMm: 45 } },
			"clear",
			{ overMm: 45, startMm: 47 },
		],
		"far enough, with the kind of cooler not known": [
			{ board: four(), memory: tall, cooler: { memoryRoomMm: 40, overMemoryMm: 45 } },
			"clear",
			{ overMm: 45, startMm: 47 },
		],
		"a liquid cooler": [{ board: named, memory: tall, cooler: { ...tower(66), kind: "liquid" } }, "notAsked"],
		"the cooler from the box": [{ board: named, memory: tall, cooler: "none" }, "notAsked"],
		"a cooler to be bought": [{ board: named, memory: tall, cooler: "open" }, "notAsked"],
		"memory to be bought": [{ board: named, memory: "open", cooler: tower(66) }, "notAsked"],
		"nobody has said": [{ board: named }, "notAsked"],
	},
	cautions: {
		"over the empty slot, with more memory to come": [
			{ board: named, memory: tall, cooler: tower(50), laterThings: ["fan", "memory"] },
			"good-to-know",
			"sparedForNow",
			{ ...tallMm, slot: "A2" },
		],
	},
	fails: {
		"the fan can go higher: the case has room to spare": [
			{
				board: named,
				memory: tall,
				cooler: { ...tower(56.6), heightMm: 158 },
				case: { coolerMaxHeightMm: 165 },
			},
			"tooHigh",
			{ ...tallMm, moreMm: 4, overMm: 56.6, startMm: 56.5, slot: "A2", raisedMm: 162, caseRoomMm: 165 },
		],
		"a tenth past the slot that is filled": [
			{ board: named, memory: tall, cooler: tower(56.6) },
			"tooHigh",
			{ ...tallMm, moreMm: 4, overMm: 56.6, startMm: 56.5, slot: "A2" },
		],
		"a tenth past the first, and all are filled": [
			{ board: named, memory: { ...tall, modules: 4 }, cooler: tower(47.1) },
			"tooHigh",
			{ ...tallMm, moreMm: 4, overMm: 47.1, startMm: 47, slot: "A1" },
		],
		"all are filled, and no manual is read": [
			{ board: four(), memory: { ...tall, modules: 4 }, cooler: tower(47.1) },
			"tooHigh",
			{ ...tallMm, moreMm: 4, overMm: 47.1, startMm: 47, slot: "" },
		],
		"over both slots of the nearer half, whichever is filled": [
			{ board: four(), memory: tall, cooler: tower(56.6) },
			"tooHigh",
			{ ...tallMm, moreMm: 4, overMm: 56.6, startMm: 56.5, slot: "" },
		],
		"three modules leave one of the nearer two filled": [
			{ board: four(), memory: { ...tall, modules: 3 }, cooler: tower(56.6) },
			"tooHigh",
			{ ...tallMm, moreMm: 4, overMm: 56.6, startMm: 56.5, slot: "" },
		],
		"a board of two slots": [
			{
				board: { layout: { memoryFromSocketMm: 46 }, memory: { slots: 2, slotOrder: { "2": ["A1", "B1"] } } },
				memory: { heightMm: 40.1, modules: 2 },
				cooler: tower(48),
			},
			"tooHigh",
			{ heightMm: 40.1, roomMm: 40, moreMm: 0.1, overMm: 48, startMm: 42, slot: "A1" },
		],
		"slots on both sides of the socket": [
			{ board: four({ channels: 4, slotOrder: manual }), memory: tall, cooler: tower(47.1) },
			"tooHigh",
			{ ...tallMm, moreMm: 4, overMm: 47.1, startMm: 47, slot: "" },
		],
		"eight slots": [
			{ board: four({ slots: 8 }), memory: tall, cooler: tower(47.1) },
			"tooHigh",
			{ ...tallMm, moreMm: 4, overMm: 47.1, startMm: 47, slot: "" },
		],
	},
	cannotTell: {
		"how far off the slots are": [
			{ board: { memory: { slots: 4 } }, memory: tall, cooler: tower(40.1) },
			["board.layout.memoryFromSocketMm"],
			"unsure",
			tallMm,
		],
		"how far the cooler reaches": [
			{ board: named, memory: tall, cooler: { kind: "air", memoryRoomMm: 40 } },
			["cooler.overMemoryMm"],
			"unsure",
			tallMm,
		],
		neither: [
			{ board: {}, memory: tall, cooler: { kind: "air", memoryRoomMm: 40 } },
			["cooler.overMemoryMm", "board.layout.memoryFromSocketMm"],
			"unsure",
			tallMm,
		],
		"how high the memory is": [{ board: named, memory: { modules: 2 }, cooler: tower(66) }, ["memory.heightMm"]],
		"height and room": [
			{ board: named, memory: { modules: 2 }, cooler: { kind: "air", overMemoryMm: 66 } },
			["memory.heightMm", "cooler.memoryRoomMm"],
		],
		"which slots the manual names": [
			{ board: four(), memory: tall, cooler: tower(50) },
			["board.memory.slotOrder"],
			"unsure",
			tallMm,
		],
		"a list of slots that names one twice": [
			{ board: four({ slotOrder: { ...manual, "2": ["A2", "A2"] } }), memory: tall, cooler: tower(50) },
			["board.memory.slotOrder"],
			"unsure",
			tallMm,
		],
		"a list of slots of which one is not on the board": [
			{ board: four({ slotOrder: { ...manual, "2": ["A2", "C2"] } }), memory: tall, cooler: tower(50) },
			["board.memory.slotOrder"],
			"unsure",
			tallMm,
		],
		"one module, in any of the slots": [
			{ board: four(), memory: { ...tall, modules: 1 }, cooler: tower(66.1) },
			["board.memory.slotOrder"],
			"unsure",
			tallMm,
		],
		"how many slots the board has": [
			{ board: { layout: { memoryFromSocketMm: 51 } }, memory: tall, cooler: tower(66) },
			["board.memory.slots"],
			"unsure",
			tallMm,
		],
		"how many modules": [
			{ board: named, memory: { heightMm: 44 }, cooler: tower(66) },
			["memory.modules"],
			"unsure",
			tallMm,
		],
		"the kind of cooler": [
			{ board: named, memory: tall, cooler: { memoryRoomMm: 40, overMemoryMm: 66 } },
			["cooler.kind"],
		],
	},
	needs: {
		"tall memory below a wide cooler": [
			{ memory: tall, cooler: tower(66) },
			"The first memory slot to fill at least 70 mm from the socket's centre, on the manual's drawing. Else memory no higher than 40 mm.",
		],
		"memory that is low enough": [{ memory: { heightMm: 40 }, cooler: tower(66) }, null],
		"a cooler that stays near the socket": [{ memory: tall, cooler: tower(40) }, null],
		"a liquid cooler": [{ memory: tall, cooler: { ...tower(66), kind: "liquid" } }, null],
		"nobody has said": [{}, null],
	},
});

describe("what raising the fan costs, in words", () => {
	const advice = (data: object) => coolerOverMemory.advice?.["tooHigh"]?.({ moreMm: 4, ...data });

	test("the numbers are told where it fits, and that it is close below 2 mm", () => {
		expect(advice({ raisedMm: 163, caseRoomMm: 165 })).toBe(
			"Take lower memory, or see whether the fan may sit higher. With its fan 4 mm higher the cooler can stand up to 163 mm high; 2 mm stay free in the case.",
		);
		expect(advice({ raisedMm: 163.1, caseRoomMm: 165 })).toMatch(/1\.9 mm stay free in the case\. That is so close/);
		expect(advice({ raisedMm: 165, caseRoomMm: 165 })).toContain("; 0 mm stay free");
	});

	test("a tenth past the case's room it is not offered", () => {
		expect(advice({ raisedMm: 165.1, caseRoomMm: 165 })).toBe(
			"Take lower memory. With its fan 4 mm higher the cooler can stand up to 165.1 mm high, and the case has room for 165 mm only.",
		);
	});

	test("without the figures it is offered with a warning", () => {
		expect(advice({})).toContain("A raised fan adds to the cooler's height.");
	});
});
