import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, type Outcome, pass, planAround } from "../outcome.ts";
import { roundToTenth } from "../round-to-tenth.ts";

/**
 * From the socket's centre to the first memory slot: about this much on most boards (common practice). A cooler that
 * reaches less far leaves the memory free.
 */
const firstSlotMm = 45;

/** A wide air cooler hangs over the memory slots; tall modules touch it. The board's own distance is not known here. */
export const memoryUnderCooler = defineRule({
	id: "build/memory-under-cooler",
	scope: "build",
	label: "Memory under the cooler",
	wayOut: "lower memory or another cooler",
	asks: "Does the memory fit below the cooler?",
	why: "Large air coolers hang over the memory slots, and memory with tall metal sides can touch them.",
	source: "common-practice",
	severity: "plan-around",
	reads: ["cooler.kind", "memory"],
	mayRead: ["memory.heightMm", "cooler.memoryRoomMm", "cooler.overMemoryMm"],
	messages: {
		liquid: () => "A liquid cooler is small on the processor and leaves the memory free.",
		noMemory: () => "The memory is not bought yet: choose low modules where the cooler hangs over them.",
		clear: ({ overMm }: { overMm: number }) =>
			`The cooler reaches ${overMm} mm from the middle of the socket; the memory mostly starts ${firstSlotMm} mm from there.`,
		low: ({ heightMm, roomMm }: { heightMm: number; roomMm: number }) =>
			`The memory is ${heightMm} mm high; below the cooler there is room for ${roomMm} mm.`,
		tooHigh: ({ heightMm, roomMm, moreMm }: { heightMm: number; roomMm: number; moreMm: number }) =>
			`The memory is ${heightMm} mm high, ${moreMm} mm more than the ${roomMm} mm below the cooler.`,
		maybeTooHigh: ({ heightMm, roomMm }: { heightMm: number; roomMm: number }) =>
			`The memory is ${heightMm} mm high and the room below the cooler ${roomMm} mm; it touches if the cooler reaches that far.`,
	},
	advice: {
		tooHigh: () =>
			"Take lower memory, or see whether the cooler's fan may sit higher. A raised fan adds to the cooler's height.",
		maybeTooHigh: () => "See the cooler's drawing, or take memory that is low enough.",
	},
	check(facts): Outcome {
		if (facts["cooler.kind"] === "liquid") return pass("liquid");
		if (facts.memory === "open" || facts.memory === "none") return pass("noMemory");
		const overMm = facts["cooler.overMemoryMm"];
		if (overMm !== undefined && overMm < firstSlotMm) return pass("clear", { overMm });
		if (facts.memory === "unknown") return cannotTell(["memory"]);
		const { "memory.heightMm": heightMm, "cooler.memoryRoomMm": roomMm } = facts;
		if (heightMm === undefined || roomMm === undefined)
			return cannotTell([
				...(heightMm === undefined ? ["memory.heightMm"] : []),
				...(roomMm === undefined ? ["cooler.memoryRoomMm"] : []),
			]);
		if (heightMm <= roomMm) return pass("low", { heightMm, roomMm });
		return overMm === undefined
			? planAround("maybeTooHigh", { heightMm, roomMm })
			: fail("tooHigh", { heightMm, roomMm, moreMm: roundToTenth(heightMm - roomMm) });
	},
});
