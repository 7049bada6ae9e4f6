import { memoryUnderCooler } from "../../../src/rules/build/memory-under-cooler.ts";
import { testRule } from "../test-rule.ts";

const air = { kind: "air" as const };
const tower = (overMemoryMm: number) => ({ ...air, memoryRoomMm: 40, overMemoryMm });

// 40 mm from the socket's centre are common practice, no source; 50 mm of room an own convention.
testRule(memoryUnderCooler, {
	fits: {
		"exactly as high as there is room": [
			{ memory: { heightMm: 40 }, cooler: tower(66) },
			"low",
			{ heightMm: 40, roomMm: 40 },
		],
		"low enough, with the cooler's reach not known": [
			{ memory: { heightMm: 35 }, cooler: { ...air, memoryRoomMm: 40 } },
			"low",
			{ heightMm: 35, roomMm: 40 },
		],
		"a tenth too tall, where the cooler may reach it: the board decides": [
			{ memory: { heightMm: 40.1 }, cooler: tower(40.1) },
			"byBoard",
			{ heightMm: 40.1, roomMm: 40 },
		],
		"tall memory beside a cooler that just stays away": [
			{ memory: { heightMm: 55 }, cooler: tower(40) },
			"clear",
			{ overMm: 40 },
		],
		"a cooler that stays away, and nobody has said which memory": [
			{ cooler: { ...air, overMemoryMm: 38 } },
			"clear",
			{ overMm: 38 },
		],
		"a cooler that stays away, and memory to be bought": [
			{ memory: "open", cooler: tower(38) },
			"clear",
			{ overMm: 38 },
		],
		"a liquid cooler": [{ memory: { heightMm: 55 }, cooler: { kind: "liquid" } }, "liquid"],
		"memory to be bought, with room for any": [
			{ memory: "open", cooler: { ...tower(66), memoryRoomMm: 50 } },
			"noMemory",
		],
		"memory to be bought, with the room not known": [{ memory: "open", cooler: air }, "noMemory"],
		"no memory": [{ memory: "none", cooler: tower(66) }, "noMemory"],
		"the cooler from the box": [{ memory: { heightMm: 55 }, cooler: "none" }, "none", { part: "cooler" }],
	},
	cautions: {
		"memory to be bought, with little room": [
			{ memory: "open", cooler: { ...tower(66), memoryRoomMm: 49.9 } },
			"good-to-know",
			"chooseLow",
			{ roomMm: 49.9 },
		],
	},
	fails: {
		"too tall, with the cooler's reach not known": [
			{ memory: { heightMm: 40.1 }, cooler: { ...air, memoryRoomMm: 40 } },
			"maybeTooHigh",
			{ heightMm: 40.1, roomMm: 40 },
		],
	},
	cannotTell: {
		"the kind is not known": [{ memory: { heightMm: 44 }, cooler: { memoryRoomMm: 40 } }, ["cooler.kind"]],
		"the memory's height is not known": [{ memory: {}, cooler: tower(66) }, ["memory.heightMm"]],
		"both pages are silent": [{ memory: {}, cooler: air }, ["memory.heightMm", "cooler.memoryRoomMm"]],
		"nobody has said which memory": [{ cooler: tower(66) }, ["memory"]],
		"nobody has said which cooler": [{ memory: { heightMm: 44 } }, ["cooler"]],
	},
});
