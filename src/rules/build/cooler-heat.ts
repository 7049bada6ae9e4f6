import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, type MessageData, type Outcome, pass, planAround } from "../outcome.ts";

/** What a message says. `guessed`: the most the processor takes follows from its label, not from its own figure. */
interface Watts extends MessageData {
	readonly publishedW: number;
	readonly lowW: number;
	readonly highW: number;
	readonly guessed: boolean;
}

/**
 * The watts a cooler's maker names against those the processor may hold for hours. Too little never breaks anything: the
 * processor slows itself down. Makers rate coolers in different ways, so the figures only sort out the clear cases.
 */
export const coolerHeat = defineRule({
	id: "build/cooler-heat",
	scope: "build",
	label: "Cooler and heat",
	wayOut: "a stronger cooler",
	asks: "Can the cooler carry off the processor's heat?",
	why: "A processor that gets too hot slows down. The watts on its label are often less than it takes for long.",
	source: "common-practice",
	severity: "plan-around",
	reads: ["cooler.publishedW", "processor"],
	mayRead: ["load.held", "processor.sustainedW", "processor.baseW", "processor.peakW", "processor.limitPolicy"],
	messages: {
		noProcessor: () => "There is no processor yet to hold the cooler against.",
		enough: ({ publishedW, highW, guessed }: Omit<Watts, "lowW">) =>
			`The cooler's maker rates it for ${publishedW} W; the processor takes ${guessed ? "about" : "up to"} ${highW} W for long.`,
		between: ({ publishedW, lowW, highW, guessed }: Watts) =>
			`The cooler's maker rates it for ${publishedW} W; the processor takes ${lowW} W to ${guessed ? "about " : ""}${highW} W for long.`,
		below: ({ publishedW, lowW }: Pick<Watts, "publishedW" | "lowW">) =>
			`The cooler's maker rates it for ${publishedW} W, less than the ${lowW} W the processor takes for long: it will slow down.`,
	},
	advice: {
		enough: () => "Makers rate coolers in different ways: a test with a similar processor tells more.",
		between: () =>
			"Makers rate coolers in different ways: look for a test with a similar processor. A lower power limit in the firmware helps too.",
		below: () =>
			"Take a stronger cooler. Makers rate them in different ways: look for a test with a similar processor.",
	},
	check(facts): Outcome {
		if (facts.processor === "open" || facts.processor === "none") return pass("noProcessor");
		if (facts.processor === "unknown") return cannotTell(["processor"]);
		const publishedW = facts["cooler.publishedW"];
		const [sustainedW, baseW] = [facts["processor.sustainedW"], facts["processor.baseW"]];
		const [peakW, limitPolicy] = [facts["processor.peakW"], facts["processor.limitPolicy"]];
		const held = facts["load.held"];
		if (!held) return cannotTell(["processor.baseW"]);

		const highW = Math.ceil(held.high);
		const guessed = sustainedW === undefined && peakW === undefined;
		if (publishedW >= held.high) return pass("enough", { publishedW, highW, guessed });
		// The least held is a guess from the highest watts, unless those are what is held.
		const isHeldAtTop = limitPolicy === "fixed" || limitPolicy === "lifted-by-board";
		if (sustainedW === undefined && baseW === undefined && !isHeldAtTop) return cannotTell(["processor.baseW"]);
		const lowW = Math.ceil(held.low);
		return publishedW < held.low
			? fail("below", { publishedW, lowW })
			: planAround("between", { publishedW, lowW, highW, guessed });
	},
});
