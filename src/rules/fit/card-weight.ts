import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, type Outcome, pass } from "../outcome.ts";

/** From this on, in g, a card hangs down at its free end and pulls at the slot (own convention). */
const heavyG = 1200;
/** A card no longer than this, in mm, is never that heavy (own convention). */
const shortMm = 250;

/**
 * A heavy graphics card pulls at its slot. Metal around the slot helps and does not replace a support, which is the same
 * on every board: so the sheet asks for both once, and a board is marked only where its slot is plain.
 */
export const cardWeight = defineRule({
	id: "fit/card-weight",
	scope: "board",
	label: "Slot for a heavy card",
	wayOut: "a lighter graphics card",
	asks: "Is the slot strong enough for a heavy graphics card?",
	why: "A heavy card hangs down at its free end. It pulls at the slot, most of all when the computer is carried.",
	source: "own-convention",
	severity: "good-to-know",
	reads: [],
	mayRead: [
		"graphicsCard",
		"graphicsCard.weightG",
		"graphicsCard.lengthMm",
		"board.cardSlots",
		"plan.things",
		"plan.openLimits",
	],
	saysNothing: ["light", "short", "upright"],
	messages: {
		notAsked: () => "You have named no graphics card that finds a slot here.",
		light: ({ weightG }: { weightG: number }) => `The card weighs ${weightG} g, which any slot carries.`,
		short: ({ lengthMm }: { lengthMm: number }) =>
			`The card is ${lengthMm} mm long; cards of that length are light enough for any slot.`,
		upright: () => "The card stands upright beside the board and does not pull at its slot.",
		metal: ({ slot }: { slot: string }) => `${slot}, where the graphics card goes, has metal around it.`,
		plain: ({ weightG, slot }: { weightG: number; slot: string }) =>
			`The card weighs ${weightG} g and pulls at ${slot}. That slot is plain plastic without metal around it.`,
		slotUnknown: () => "Whether the graphics card's slot has metal around it is not known.",
		weightUnknown: ({ slot }: { slot: string }) =>
			`${slot} is plain plastic without metal around it; what the graphics card weighs is not known.`,
		need: ({ weightG }: { weightG: number }) =>
			`Metal around the slot for the graphics card, which weighs ${weightG} g. Plan a support below the card as well.`,
	},
	advice: {
		metal: () => `A card of about ${heavyG} g or more still needs a support below it.`,
		plain: () => "Put a support below the card's free end. Take the card out before the computer travels.",
		slotUnknown: () => "Look at pictures of the board. A heavy card wants a support below it either way.",
	},
	check(facts): Outcome {
		const { "graphicsCard.weightG": weightG, "graphicsCard.lengthMm": lengthMm, "board.cardSlots": slots } = facts;
		if (facts.graphicsCard !== "have") return pass("notAsked");
		if (weightG !== undefined && weightG <= heavyG) return pass("light", { weightG });
		if (weightG === undefined && lengthMm !== undefined && lengthMm <= shortMm) return pass("short", { lengthMm });
		const weight = weightG === undefined ? ["graphicsCard.weightG"] : [];
		if (!slots) return cannotTell([...weight, "board.cardSlots"], "slotUnknown");

		const thing = facts["plan.things"]?.find(({ device }) => device.kind === "graphics card");
		if (!thing?.best) return pass("notAsked");
		if (thing.best.extra === "riser cable") return pass("upright");
		const isReinforced = (name: string | undefined) => slots.find((slot) => slot.name === name)?.reinforced;
		const slot = thing.best.connector.name;
		const reinforced = isReinforced(slot);
		if (thing.worst && isReinforced(thing.worst.connector.name) !== reinforced) {
			const limits = facts["plan.openLimits"] ?? [];
			return cannotTell([...weight, ...(limits.length > 0 ? limits : ["board.cardSlots"])], "slotUnknown");
		}
		if (reinforced) return pass("metal", { slot });
		if (reinforced === undefined) return cannotTell([...weight, "board.cardSlots"], "slotUnknown");
		return weightG === undefined ? cannotTell(weight, "weightUnknown", { slot }) : fail("plain", { weightG, slot });
	},
	needs({ "graphicsCard.weightG": weightG }) {
		return weightG !== undefined && weightG > heavyG ? { messageId: "need", data: { weightG } } : null;
	},
});
