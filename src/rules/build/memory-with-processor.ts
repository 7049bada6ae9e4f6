import { defineRule } from "../define-rule.ts";
import { fail, pass } from "../outcome.ts";

/** Memory of a type that the processor does not work with: no board has slots for it and a socket for the processor. */
export const memoryWithProcessor = defineRule({
	id: "build/memory-with-processor",
	scope: "build",
	label: "Memory with the processor",
	wayOut: "other memory or another processor",
	asks: "Does the processor work with this type of memory?",
	why: "The part that speaks to the memory sits in the processor; the board only carries the wires.",
	source: "common-practice",
	severity: "stops",
	reads: ["memory.type", "processor.memory.types"],
	mayRead: ["processor.name"],
	messages: {
		works: ({ type }: { type: string }) => `The processor works with ${type}.`,
		other: ({ type, types, processor }: { type: string; types: readonly string[]; processor: string }) =>
			`The ${processor} works with ${types.join(" or ")} only; your memory is ${type}.`,
	},
	advice: { other: () => "Take other memory, or another processor. No board can change that." },
	check({ "memory.type": type, "processor.memory.types": types, "processor.name": processor }) {
		return types.includes(type)
			? pass("works", { type })
			: fail("other", { type, types, processor: processor ?? "processor" });
	},
});
