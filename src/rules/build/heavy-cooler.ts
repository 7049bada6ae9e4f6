import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, type Outcome, pass } from "../outcome.ts";

/** From this on, in g, an air cooler pulls hard at the board when the computer is moved (own convention). */
const heavyG = 1000;
/** An air cooler no higher than this, in mm, is never that heavy (own convention). */
const lowMm = 100;

/** A tall air cooler hangs on the board like a shelf; a liquid cooler's weight hangs on the case. */
export const heavyCooler = defineRule({
	id: "build/heavy-cooler",
	scope: "build",
	label: "Weight of the cooler",
	wayOut: "a lighter cooler",
	asks: "Is the cooler so heavy that the computer needs care when it travels?",
	why: "A heavy air cooler hangs sideways on the board. A knock on the way can bend the board or tear the screws loose.",
	source: "own-convention",
	severity: "good-to-know",
	reads: ["cooler.kind"],
	mayRead: ["cooler.weightG", "cooler.heightMm"],
	messages: {
		liquid: () => "The weight of a liquid cooler hangs on the case, not on the board.",
		light: ({ weightG }: { weightG: number }) => `The cooler weighs ${weightG} g, which the board carries with ease.`,
		low: ({ heightMm }: { heightMm: number }) => `A cooler ${heightMm} mm high is light enough for any board.`,
		heavy: ({ weightG }: { weightG: number }) => `The cooler weighs ${weightG} g and hangs on the board.`,
	},
	advice: {
		heavy: () =>
			"For the road lay the computer down so that the cooler points up, or take the cooler off. After a month, pull the mains plug and check by hand that the cooler sits firmly.",
	},
	check({ "cooler.kind": kind, "cooler.weightG": weightG, "cooler.heightMm": heightMm }): Outcome {
		if (kind === "liquid") return pass("liquid");
		if (weightG !== undefined) return weightG > heavyG ? fail("heavy", { weightG }) : pass("light", { weightG });
		return heightMm !== undefined && heightMm <= lowMm ? pass("low", { heightMm }) : cannotTell(["cooler.weightG"]);
	},
});
