import { slotPitch } from "../../reference/slot-pitch.ts";
import { defineRule } from "../define-rule.ts";
import { fail, type Outcome, pass, planAround } from "../outcome.ts";
import { roundToTenth } from "../round-to-tenth.ts";

const openings = (cardSlots: number) => (cardSlots === 1 ? "1 card opening" : `${cardSlots} card openings`);

/**
 * A card that is thicker than the case's card openings together. Many cases have some room beside the last opening, so
 * that less than one row too much is only to be measured (common practice).
 */
export const cardSlotsInCase = defineRule({
	id: "build/card-slots-in-case",
	scope: "build",
	label: "Thickness of the graphics card",
	wayOut: "a thinner card or another case",
	asks: "Does the case have enough card openings for the graphics card?",
	why: "Cards sit in rows 20.32 mm apart, and their metal bracket is screwed to openings at the back of the case.",
	source: "ssi-eeb-3.0",
	severity: "stops",
	reads: ["graphicsCard.thicknessMm", "case.cardSlots"],
	mayRead: ["graphicsCard.bracketSlots"],
	messages: {
		thin: ({ thicknessMm, cardSlots, roomMm }: { thicknessMm: number; cardSlots: number; roomMm: number }) =>
			`The card is ${thicknessMm} mm thick; with ${openings(cardSlots)} the case has room for ${roomMm} mm.`,
		noOpening: () => "The case has no card opening at the back, so no card can be fixed in it.",
		bracketTooWide: ({ bracketSlots, cardSlots }: { bracketSlots: number; cardSlots: number }) =>
			`The card's metal bracket takes ${openings(bracketSlots)} at the back; the case has ${cardSlots}.`,
		tight: ({
			thicknessMm,
			cardSlots,
			roomMm,
			overMm,
		}: Record<"thicknessMm" | "cardSlots" | "roomMm" | "overMm", number>) =>
			`The card is ${thicknessMm} mm thick, ${overMm} mm more than the ${roomMm} mm of the case with ${openings(cardSlots)}.`,
		tooThick: ({ thicknessMm, cardSlots, roomMm }: { thicknessMm: number; cardSlots: number; roomMm: number }) =>
			`The card is ${thicknessMm} mm thick; with ${openings(cardSlots)} the case has room for only ${roomMm} mm.`,
	},
	advice: {
		bracketTooWide: () => "Take a card with a narrower bracket, or a case with more openings.",
		tight: () =>
			"Measure from the last opening to the next wall or cover. The card's fans want about 10 mm of air besides.",
		tooThick: () => "Take a thinner card, or a case with more openings.",
		noOpening: () => "Take another case, or do without a card.",
	},
	check(facts): Outcome {
		const { "graphicsCard.thicknessMm": thicknessMm, "case.cardSlots": cardSlots } = facts;
		if (cardSlots === 0) return fail("noOpening");
		const bracketSlots = facts["graphicsCard.bracketSlots"] ?? 1;
		if (bracketSlots > cardSlots) return fail("bracketTooWide", { bracketSlots, cardSlots });
		const roomMm = roundToTenth(cardSlots * slotPitch.pitchMm);
		const overMm = roundToTenth(thicknessMm - roomMm);
		if (overMm <= 0) return pass("thin", { thicknessMm, cardSlots, roomMm });
		return overMm < slotPitch.pitchMm
			? planAround("tight", { thicknessMm, cardSlots, roomMm, overMm })
			: fail("tooThick", { thicknessMm, cardSlots, roomMm });
	},
});
