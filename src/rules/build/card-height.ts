import { defineRule } from "../define-rule.ts";
import { fail, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";
import { roundToTenth } from "../round-to-tenth.ts";

/** A cable in a plug on the card's upper edge stands off by 30 to 40 mm before it bends away: common practice. */
const cableRoomMm = 40;

/** The card stands toward the side panel; the power cable on top of it wants room as well. */
export const cardHeight = defineRule({
	id: "build/card-height",
	scope: "build",
	label: "Height of the graphics card",
	wayOut: "a lower card or a wider case",
	asks: "Does the side panel close over the graphics card?",
	why: "A card stands towards the side panel. A power cable that the panel bends hard can come loose or get hot.",
	source: "common-practice",
	severity: "stops",
	reads: ["graphicsCard.heightMm", "case.cardMaxHeightMm"],
	mayRead: ["graphicsCard.powerPlugs"],
	messages: {
		low: ({ heightMm, maxMm }: { heightMm: number; maxMm: number }) =>
			`The card is ${heightMm} mm high; the case has room for ${maxMm} mm.`,
		cableTight: ({ heightMm, maxMm, roomMm }: { heightMm: number; maxMm: number; roomMm: number }) =>
			`The card is ${heightMm} mm high and leaves ${roomMm} mm of the ${maxMm} mm; its power cable often needs 30 to 40 mm.`,
		cableMaybe: ({ maxMm, roomMm }: { maxMm: number; roomMm: number }) =>
			`The card leaves ${roomMm} mm of the ${maxMm} mm; a power cable, if it takes one, often needs 30 to 40 mm.`,
		tooHigh: ({ heightMm, maxMm, overMm }: { heightMm: number; maxMm: number; overMm: number }) =>
			`The card is ${heightMm} mm high, ${overMm} mm more than the ${maxMm} mm the case has room for.`,
	},
	advice: {
		cableTight: () =>
			"See where the plug sits: at the card's far end it needs no room above. Never press the panel against a power cable.",
		cableMaybe: () => "Look whether the card has a power plug on its upper edge.",
		tooHigh: () => "Take a lower card or a wider case. The panel must close without touching the card.",
	},
	check({
		"graphicsCard.heightMm": heightMm,
		"case.cardMaxHeightMm": maxMm,
		"graphicsCard.powerPlugs": plugs,
	}): Outcome {
		const roomMm = roundToTenth(maxMm - heightMm);
		if (roomMm < 0) return fail("tooHigh", { heightMm, maxMm, overMm: -roomMm });
		if (roomMm >= cableRoomMm || plugs?.length === 0) return pass("low", { heightMm, maxMm });
		return plugs ? planAround("cableTight", { heightMm, maxMm, roomMm }) : goodToKnow("cableMaybe", { maxMm, roomMm });
	},
});
