import type { FactsUnder } from "../../parts/fact-path.ts";
import { memoryGBytesPerSecond } from "../../reference/memory-bandwidth.ts";
import { defineRule } from "../define-rule.ts";
import { goodToKnow, type MessageData, type Outcome, pass, planAround } from "../outcome.ts";
import { roundToTenth } from "../round-to-tenth.ts";

/** Channels of a desktop processor of which nobody says how many it has (common practice, no source). */
const usualChannels = 2;

// Memory of which nobody knows the size is no kit yet: what may turn out is thought of as one module at least.
const reads = ["memory.modules", "memory.gbPerModule"] as const;
const mayRead = ["memory.mtPerS", "processor.memory.channels", "processor.graphics", "graphicsCard"] as const;
type Facts = FactsUnder<(typeof reads)[number], (typeof mayRead)[number]>;

/**
 * Modules share out over two channels in pairs. One alone leaves a channel empty, and three leave them uneven: what is
 * more in one channel than in the other is reached over that one only (read in two boards' manuals, "Unequal sizes").
 * That graphics in the processor then lose a third and more of their speed is common practice, no source.
 */
export const memoryPairs = defineRule({
	id: "build/memory-pairs",
	scope: "build",
	label: "Memory in pairs",
	wayOut: "memory in two equal modules",
	asks: "Do the modules fill both memory channels alike?",
	why: "A channel is a way from processor to memory. Two modules use two channels at once, a single one uses one.",
	source: "board-manuals-channels",
	severity: "good-to-know",
	reads,
	mayRead,
	messages: {
		even: ({ modules }: { modules: number }) => `Your ${modules} modules share out evenly over two memory channels.`,
		notTwo: ({ channels }: { channels: number }) =>
			`Your processor has ${channels} memory ${channels === 1 ? "channel" : "channels"}; only those with two are checked here.`,
		one: oneWords,
		oneWithGraphics: oneWords,
		uneven: ({ modules }: { modules: number }) =>
			`${modules} modules do not share out evenly over two memory channels: the last one is reached over one channel only.`,
	},
	advice: {
		one: () => `${pairAdvice} Nothing breaks with one module, but some work is slower.`,
		oneWithGraphics: () =>
			`${pairAdvice} Your picture comes from the processor, whose graphics use this memory: a third of their speed and more can be lost.`,
		uneven: () =>
			"Two or four equal modules in one pack are better. It works as it is, but part of the memory is slower.",
	},
	check(facts): Outcome {
		const modules = facts["memory.modules"];
		const channels = facts["processor.memory.channels"] ?? usualChannels;
		if (channels !== 2) return pass("notTwo", { channels });
		if (modules % 2 === 0) return pass("even", { modules });
		if (modules > 1) return goodToKnow("uneven", { modules });
		const isGraphics = facts.graphicsCard === "none" && facts["processor.graphics"] === true;
		return isGraphics ? planAround("oneWithGraphics", oneData(facts)) : goodToKnow("one", oneData(facts));
	},
});

const pairAdvice = "Two equal modules in one pack, each of half the size, are better.";

/** What one channel and what two move at most, in GB/s; left out where the memory's rate is not known. */
interface OneModule extends MessageData {
	/** Whether the processor's page says that it has two channels. */
	readonly isStated: boolean;
	readonly oneGbytesPerS?: number;
	readonly twoGbytesPerS?: number;
}

function oneData(facts: Facts): OneModule {
	const rate = facts["memory.mtPerS"];
	return {
		isStated: facts["processor.memory.channels"] !== undefined,
		...(rate === undefined
			? {}
			: {
					oneGbytesPerS: roundToTenth(memoryGBytesPerSecond(rate, 1)),
					twoGbytesPerS: roundToTenth(memoryGBytesPerSecond(rate, 2)),
				}),
	};
}

function oneWords({ isStated, oneGbytesPerS, twoGbytesPerS }: OneModule): string {
	const half =
		oneGbytesPerS === undefined || twoGbytesPerS === undefined
			? "half of what two could move"
			: `${oneGbytesPerS} GB/s at most, not ${twoGbytesPerS} GB/s`;
	return isStated
		? `With one module only one of two memory channels carries data: ${half}.`
		: `Most desktop processors have two memory channels. With one module only one carries data: ${half}.`;
}
