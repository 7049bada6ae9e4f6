import { defineRule } from "../define-rule.ts";
import { fail, pass } from "../outcome.ts";

/** The graphics card must not be longer than the case has room for; no board can cure it. */
export const cardInCase = defineRule({
	id: "build/card-in-case",
	scope: "build",
	label: "Graphics card in the case",
	wayOut: "another card or another case",
	asks: "Is the graphics card short enough for the case?",
	why: "A card that meets the drive cage or the front fans cannot be plugged in.",
	source: "common-practice",
	severity: "stops",
	reads: ["graphicsCard.lengthMm", "case.cardMaxLengthMm"],
	mayRead: ["graphicsCard.name", "case.name"],
	messages: {
		short: ({ lengthMm, maxMm }: { lengthMm: number; maxMm: number }) =>
			`The card is ${lengthMm} mm long; the case has room for ${maxMm} mm.`,
		tooLong: ({ overMm, lengthMm, maxMm }: { overMm: number; lengthMm: number; maxMm: number }) =>
			`The card is ${lengthMm} mm long, ${overMm} mm more than the ${maxMm} mm the case has room for.`,
	},
	advice: {
		tooLong: () =>
			"Change the card or the case. Some cases win room when a drive cage is taken out: see the case maker's page.",
	},
	check({ "graphicsCard.lengthMm": lengthMm, "case.cardMaxLengthMm": maxMm }) {
		return lengthMm <= maxMm
			? pass("short", { lengthMm, maxMm })
			: fail("tooLong", { lengthMm, maxMm, overMm: Math.round((lengthMm - maxMm) * 10) / 10 });
	},
});
