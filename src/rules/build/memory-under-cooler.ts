import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type Outcome, pass } from "../outcome.ts";

/**
 * No board's memory slots begin nearer to the socket's centre than this, in mm: the cooler's screws and the socket's
 * frame need the room (common practice, no source).
 */
const freeEverywhereMm = 40;

/** Memory is hardly ever higher than this, in mm (own convention): with so much room nobody need choose. */
const hardlyHigherMm = 50;

/**
 * A wide air cooler hangs over the memory slots; tall modules touch it. What no board changes is judged here: memory low
 * enough, a cooler that stays near the socket, a cooler of which the reach is not known. The rest hangs on the board's
 * slots, and is fit/cooler-over-memory.
 */
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
		clear: ({ overMm }: { overMm: number }) =>
			`The cooler reaches ${overMm} mm from the socket's centre; memory slots begin more than ${freeEverywhereMm} mm from there.`,
		noMemory: () => "There is no memory yet to hold against the cooler.",
		chooseLow: ({ roomMm }: { roomMm: number }) =>
			`The memory is not bought yet, and below the cooler there is room for ${roomMm} mm.`,
		low: ({ heightMm, roomMm }: { heightMm: number; roomMm: number }) =>
			`The memory is ${heightMm} mm high; below the cooler there is room for ${roomMm} mm.`,
		byBoard: ({ heightMm, roomMm }: { heightMm: number; roomMm: number }) =>
			`The memory is ${heightMm} mm high, the room below the cooler ${roomMm} mm; whether they meet depends on the board's slots.`,
		maybeTooHigh: ({ heightMm, roomMm }: { heightMm: number; roomMm: number }) =>
			`The memory is ${heightMm} mm high and the room below the cooler ${roomMm} mm; it touches if the cooler reaches that far.`,
	},
	advice: {
		chooseLow: () => "Look up the height of the memory before you buy it, and stay at or below that.",
		maybeTooHigh: () => "See the cooler's drawing, or take memory that is low enough.",
	},
	check(facts): Outcome {
		if (facts["cooler.kind"] === "liquid") return pass("liquid");
		const overMm = facts["cooler.overMemoryMm"];
		if (overMm !== undefined && overMm <= freeEverywhereMm) return pass("clear", { overMm });
		const { "memory.heightMm": heightMm, "cooler.memoryRoomMm": roomMm } = facts;
		if (facts.memory === "open" && roomMm !== undefined && roomMm < hardlyHigherMm)
			return goodToKnow("chooseLow", { roomMm });
		if (facts.memory === "open" || facts.memory === "none") return pass("noMemory");
		if (facts.memory === "unknown") return cannotTell(["memory"]);
		if (heightMm === undefined || roomMm === undefined)
			return cannotTell([
				...(heightMm === undefined ? ["memory.heightMm"] : []),
				...(roomMm === undefined ? ["cooler.memoryRoomMm"] : []),
			]);
		if (heightMm <= roomMm) return pass("low", { heightMm, roomMm });
		return overMm === undefined ? fail("maybeTooHigh", { heightMm, roomMm }) : pass("byBoard", { heightMm, roomMm });
	},
});
