import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, type Outcome, pass, planAround } from "../outcome.ts";
import { heldWatts } from "../processor-watts.ts";

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
	mayRead: ["processor.sustainedW", "processor.baseW", "processor.peakW", "processor.limitPolicy"],
	messages: {
		noProcessor: () => "There is no processor yet to hold the cooler against.",
		enough: ({ publishedW, highW, guessed }: { publishedW: number; highW: number; guessed: boolean }) =>
			`The cooler's maker rates it for ${publishedW} W; the processor takes ${guessed ? "about" : "up to"} ${highW} W for long.`,
		between: ({
			publishedW,
			lowW,
			highW,
			guessed,
		}: {
			publishedW: number;
			lowW: number;
			highW: number;
			guessed: boolean;
		}) =>
			`The cooler's maker rates it for ${publishedW} W; the processor takes ${lowW} W to ${guessed ? "about " : ""}${highW} W for long.`,
		below: ({ publishedW, lowW }: { publishedW: number; lowW: number }) =>
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
		const peakW = facts["processor.peakW"];
		const held = heldWatts({
			sustainedW: facts["processor.sustainedW"],
			baseW: facts["processor.baseW"],
			peakW,
			limitPolicy: facts["processor.limitPolicy"],
		});
		if (!held) {
			// Nothing says what it holds, but more than its highest it cannot.
			return peakW !== undefined && publishedW >= peakW
				? pass("enough", { publishedW, highW: peakW, guessed: false })
				: cannotTell(["processor.baseW"]);
		}
		const { lowW, highW, guessed } = held;
		if (publishedW < lowW) return fail("below", { publishedW, lowW });
		return publishedW < highW
			? planAround("between", { publishedW, lowW, highW, guessed })
			: pass("enough", { publishedW, highW, guessed });
	},
});
