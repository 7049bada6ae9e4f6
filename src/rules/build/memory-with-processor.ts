import { defineRule } from "../define-rule.ts";
import { fail, type Outcome, pass } from "../outcome.ts";

/**
 * Memory of a type that the processor does not work with: no board has slots for it and a socket for the processor.
 * Nor does a board help where there is more memory than the processor's maker names as the most.
 */
export const memoryWithProcessor = defineRule({
	id: "build/memory-with-processor",
	scope: "build",
	label: "Memory with the processor",
	wayOut: "other memory or another processor",
	asks: "Does the processor work with this type of memory, and with as much of it?",
	why: "The part that speaks to the memory sits in the processor; the board only carries the wires.",
	source: "common-practice",
	severity: "stops",
	reads: ["memory.type", "processor.memory.types"],
	mayRead: ["processor.name", "processor.memory.maxGb", "memory.modules", "memory.gbPerModule"],
	messages: {
		works: ({ type }: { type: string }) => `The processor works with ${type}.`,
		other: ({ type, types, processor }: { type: string; types: readonly string[]; processor: string }) =>
			`The ${processor} works with ${types.join(" or ")} only; your memory is ${type}.`,
		tooMuch: ({ gb, processorGb, processor }: { gb: number; processorGb: number; processor: string }) =>
			`You have ${gb} GB of memory; the ${processor} works with ${processorGb} GB at most.`,
	},
	advice: {
		other: () => "Take other memory, or another processor. No board can change that.",
		tooMuch: () => "Take less memory, or another processor. No board can change that.",
	},
	check(facts): Outcome {
		const [type, types] = [facts["memory.type"], facts["processor.memory.types"]];
		const processor = facts["processor.name"] ?? "processor";
		if (!types.includes(type)) return fail("other", { type, types, processor });
		const processorGb = facts["processor.memory.maxGb"];
		const gb = (facts["memory.modules"] ?? 1) * (facts["memory.gbPerModule"] ?? 0);
		return processorGb !== undefined && gb > processorGb
			? fail("tooMuch", { gb, processorGb, processor })
			: pass("works", { type });
	},
});
