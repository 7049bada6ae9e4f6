import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

/**
 * The memory wanted in the end against what the board takes: by its page, and by its slots. What the modules of today
 * come to is held against the board by fit/memory-modules; here they only tell whether there is room beside them. A
 * processor that works with less is no fault of the board's.
 */
export const memorySize = defineRule({
	id: "fit/memory-size",
	scope: "board",
	label: "Memory in the end",
	wayOut: "less memory in the end",
	asks: "Does the board take as much memory as you want in the end?",
	why: "Every board takes memory up to a limit, and nothing raises it later.",
	source: "common-practice",
	severity: "stops",
	reads: [],
	mayRead: [
		"memoryGb",
		"board.memory.maxGb",
		"board.memory.slots",
		"board.memory.maxGbPerModule",
		"memory.modules",
		"memory.gbPerModule",
		"processor.memory.maxGb",
	],
	messages: {
		notAsked: () => "You have not said how much memory you want in the end.",
		enough: ({ gb, mostGb }: { gb: number; mostGb: number }) =>
			`You want ${gb} GB; the board takes up to ${mostGb} GB.`,
		less: ({ gb, mostGb }: { gb: number; mostGb: number }) =>
			`You want ${gb} GB; the board takes at most ${mostGb} GB.`,
		processorLess: ({ gb, processorGb }: { gb: number; processorGb: number }) =>
			`The board takes ${gb} GB, but your processor works with ${processorGb} GB at most.`,
		replaceKit: ({ gb, reachedGb }: { gb: number; reachedGb: number }) =>
			`Beside your modules this board reaches ${reachedGb} GB; for ${gb} GB they would have to go.`,
		need: ({ gb }: { gb: number }) => `Room for ${gb} GB of memory in the end.`,
	},
	advice: {
		processorLess: () => "No board can change that: plan with less memory, or with another processor.",
		replaceKit: () => "Buy fewer and larger modules from the start, in one pack, or take a board with more slots.",
	},
	check(facts): Outcome {
		const gb = facts.memoryGb;
		if (gb === undefined) return pass("notAsked");
		const [slots, gbPerModule] = [facts["board.memory.slots"], facts["board.memory.maxGbPerModule"]];
		const bySlotsGb = slots === undefined || gbPerModule === undefined ? undefined : slots * gbPerModule;
		const limits = [facts["board.memory.maxGb"], bySlotsGb].filter((limit) => limit !== undefined);
		if (limits.length === 0) return cannotTell(["board.memory.maxGb"]);
		const mostGb = Math.min(...limits);
		if (mostGb < gb) return fail("less", { gb, mostGb });
		const processorGb = facts["processor.memory.maxGb"];
		if (processorGb !== undefined && processorGb < gb) return goodToKnow("processorLess", { gb, processorGb });
		const [modules, ownGb] = [facts["memory.modules"], facts["memory.gbPerModule"]];
		if (slots !== undefined && modules !== undefined && ownGb !== undefined) {
			const free = Math.max(0, slots - modules);
			// Common practice, no source: modules are added in the size of those that are there, or as large as goes in.
			const reachedGb = modules * ownGb + free * (gbPerModule ?? (free > 0 ? gb : 0));
			if (reachedGb < gb) return planAround("replaceKit", { gb, reachedGb });
		}
		return pass("enough", { gb, mostGb });
	},
	needs: ({ memoryGb: gb }) => (gb === undefined ? null : { messageId: "need", data: { gb } }),
});
