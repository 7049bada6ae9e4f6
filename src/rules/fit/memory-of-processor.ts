import { defineRule } from "../define-rule.ts";
import { fail, type Outcome, pass } from "../outcome.ts";

/** The board's memory slots against what the processor works with; whatever memory there is or will be. */
export const memoryOfProcessor = defineRule({
	id: "fit/memory-of-processor",
	scope: "board",
	label: "Memory for the processor",
	wayOut: "another processor",
	asks: "Does your processor work with the memory that this board takes?",
	why: "The part of the computer that talks to the memory sits in the processor. A board can have slots for a type that the processor does not know.",
	source: "common-practice",
	severity: "stops",
	reads: ["board.memory.type", "processor.memory.types"],
	mayRead: ["processor.name"],
	messages: {
		works: ({ type }: { type: string }) => `Board and processor both work with ${type}.`,
		other: ({ type, types, processor }: { type: string; types: readonly string[]; processor: string }) =>
			`The board takes ${type}; the ${processor} works with ${types.join(" and ")} only.`,
	},
	advice: { other: () => "Take a board for a type of memory that your processor works with." },
	saysNothing: ["works"],
	check(facts): Outcome {
		const [type, types] = [facts["board.memory.type"], facts["processor.memory.types"]];
		return types.includes(type)
			? pass("works", { type })
			: fail("other", { type, types, processor: facts["processor.name"] ?? "processor" });
	},
});
