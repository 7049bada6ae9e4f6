import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, pass } from "../outcome.ts";

/** A processor without graphics and no card: no board gives a picture then. */
export const pictureAtAll = defineRule({
	id: "build/picture-at-all",
	scope: "build",
	label: "A picture at all",
	wayOut: "a graphics card or another processor",
	asks: "Does anything in this build make a picture?",
	why: "Without graphics in the processor and without a graphics card the screen stays dark, whatever the board.",
	source: "common-practice",
	severity: "stops",
	reads: ["graphicsCard"],
	mayRead: ["processor.graphics", "processor.name"],
	messages: {
		card: () => "The graphics card makes the picture.",
		processor: () => "The processor makes the picture.",
		none: ({ processor }: { processor: string }) =>
			`The ${processor} has no graphics of its own, and there is no graphics card.`,
		unknown: () => "Whether anything makes a picture is not known.",
	},
	advice: { none: () => "Plan a graphics card, or take a processor with graphics of its own." },
	check(facts) {
		if (facts.graphicsCard === "have" || facts.graphicsCard === "open") return pass("card");
		if (facts["processor.graphics"]) return pass("processor");
		if (facts.graphicsCard === "none" && facts["processor.graphics"] === false)
			return fail("none", { processor: facts["processor.name"] ?? "processor" });
		return cannotTell([facts.graphicsCard === "none" ? "processor.graphics" : "graphicsCard"], "unknown");
	},
});
