import { memoryUnderCooler } from "../../../src/rules/build/memory-under-cooler.ts";
import { testRule } from "../test-rule.ts";

const air = { kind: "air" as const };
const tower = (overMemoryMm: number) => ({ ...air, memoryRoomMm: 40, overMemoryMm });

// 45 mm from the socket's centre to the first memory slot is common practice, no source.
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
		"tall memory beside a cooler that does not reach it": [
			{ memory: { heightMm: 55 }, cooler: tower(44.9) },
			"clear",
			{ overMm: 44.9 },
		],
		"a cooler that does not reach it, and nobody has said which memory": [
			{ cooler: { ...air, overMemoryMm: 40 } },
			"clear",
			{ overMm: 40 },
		],
		"a liquid cooler": [{ memory: { heightMm: 55 }, cooler: { kind: "liquid" } }, "liquid"],
		"memory to be bought to suit": [{ memory: "open", cooler: tower(66) }, "noMemory"],
		"no memory": [{ memory: "none", cooler: tower(66) }, "noMemory"],
		"the cooler from the box": [{ memory: { heightMm: 55 }, cooler: "none" }, "none", { part: "cooler" }],
	},
	cautions: {
		"too tall, with the cooler's reach not known": [
			{ memory: { heightMm: 44 }, cooler: { ...air, memoryRoomMm: 40 } },
			"plan-around",
			"maybeTooHigh",
			{ heightMm: 44, roomMm: 40 },
		],
	},
	fails: {
		"a tenth too tall, where the cooler just reaches it": [
			{ memory: { heightMm: 40.1 }, cooler: tower(45) },
			"tooHigh",
			{ heightMm: 40.1, roomMm: 40, moreMm: 0.1 },
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
