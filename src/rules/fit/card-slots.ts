import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

/**
 * Every card wants a slot of its kind, long enough and wired for the lanes it cannot do without, that the graphics card
 * does not cover and that nothing else switches off. Only where the board has no slot of a card's kind at all is it out;
 * for the rest another card or another way is found. Whether that is known is asked of each card beside nothing but the
 * graphics card: what the others leave it can only caution, or a card less could make a board less sure.
 *
 * Source of what fits which slot: wiki "PCI Express", sec. 6; of the rows, 20.32 mm apart: SSI EEB 3.0, figure 1.
 */
export const cardSlots = defineRule({
	id: "fit/card-slots",
	scope: "board",
	label: "Card slots",
	wayOut: "fewer cards, or a thinner graphics card",
	asks: "Does every card find a slot that the graphics card does not cover?",
	why: "A thick graphics card hides the slots beside it. A short slot does not take a long card.",
	source: "wiki-pci-express",
	severity: "stops",
	mayStop: ({ graphicsCard, addInCards }) => graphicsCard.state === "have" || (addInCards ?? []).length > 0,
	reads: ["graphicsCard"],
	mayRead: ["addInCards", "board.cardSlots", "plan.things", "plan.ends", "plan.openLimits", "plan.cardsAlone"],
	messages: {
		notAsked: () => "You have named no cards.",
		placed: ({ cards }: { cards: number }) =>
			cards === 1 ? "Your card finds a slot." : `Each of your ${cards} cards finds a slot.`,
		noSuchSlot: ({ bus, cards }: { bus: string; cards: readonly string[] }) =>
			`The board has no ${bus} slot that works. Left without: ${cards.join(", ")}.`,
		slotsTaken: ({ cards, covered }: { cards: readonly string[]; covered: readonly string[] }) =>
			`No slot that suits is left for every card. Left without: ${cards.join(", ")}.${
				covered.length > 0 ? ` Covered by another card: ${covered.join(", ")}.` : ""
			}`,
		maybeTaken: ({ cards }: { cards: readonly string[] }) =>
			`Whether all cards find a slot at once is not known. It may leave out: ${cards.join(", ")}.`,
		upright: ({ card }: { card: string }) =>
			`All cards go in only with the ${card} upright, beside the board, on a riser cable.`,
		graphicsTooLong: ({ card }: { card: string }) =>
			`The board has no slot as long as the ${card} needs; it would sit nowhere without an adapter.`,
		graphicsFewLanes: ({ card, wired, least }: { card: string; wired: number; least: number }) =>
			`The slot for the ${card} has ${wired} ${wired === 1 ? "lane" : "lanes"}; the card needs at least ${least}.`,
		unsure: () => "Whether every card finds a slot is not known.",
		needGraphics: () => "A full-length slot (x16) for the graphics card.",
		need: ({ graphics, cards, old }: { graphics: boolean; cards: number; old: number }) =>
			`${graphics ? "A full-length slot (x16) for the graphics card, and beside it " : ""}${cards} ${
				graphics ? "more that it does not cover" : cards === 1 ? "card slot" : "card slots"
			}${old === 0 ? "" : `, ${old} of the old kind (PCI)`}.`,
	},
	advice: {
		slotsTaken: () =>
			"Often a thing on USB does the same work as a card. Else take a board with more slots, or a thinner card where one covers them.",
		maybeTaken: () => "Read in the board's manual which slots work side by side, before you buy every card.",
		upright: () =>
			"Ask the case's maker for the bracket and a riser cable of the card's generation; count their price.",
		graphicsTooLong: () =>
			"Take a board with a full-length slot; adapters for graphics cards bring more trouble than they cure.",
		graphicsFewLanes: () => "Ask the card's maker whether it starts with fewer lanes, or take a board with more.",
	},
	check(facts): Outcome {
		const state = facts.graphicsCard;
		if (state === "none" && !facts.addInCards?.length) return pass("notAsked");
		if (!facts["board.cardSlots"])
			return cannotTell([...(state === "unknown" ? ["graphicsCard"] : []), "board.cardSlots"], "unsure");
		const cards = (facts["plan.things"] ?? []).filter(({ device }) => isCardKind(device.kind));
		const without = cards.filter(({ hasPlace }) => hasPlace === "no");
		for (const bus of ["PCI Express", "PCI"] as const) {
			const ofBus = without.filter(
				({ device, lacks }) => "bus" in device && device.bus === bus && lacks === "connector",
			);
			if (ofBus.length > 0) return fail("noSuchSlot", { bus, cards: ofBus.map(({ device }) => device.name) });
		}
		// A slot of its kind is there, but may not work with this processor.
		if (without.some(({ lacksAtWorst }) => lacksAtWorst === "connector"))
			return cannotTell(facts["plan.openLimits"] ?? [], "unsure");
		const alone = facts["plan.cardsAlone"];
		if (alone && alone.unsure.length > 0) return cannotTell(alone.missing, "unsure");
		const graphics = without.find(({ device }) => device.kind === "graphics card");
		const ends = facts["plan.ends"] ?? [];
		if (graphics?.lacks === "length") return planAround("graphicsTooLong", { card: graphics.device.name });
		if (graphics?.lacks === "lanes" && "leastLanes" in graphics.device) {
			const { name, leastLanes, sizeLanes } = graphics.device;
			const longEnough = ends.flatMap(({ connector }) =>
				connector.kind === "card slot" && connector.bus === "PCI Express" && connector.sizeLanes >= sizeLanes
					? [connector.lanes]
					: [],
			);
			return planAround("graphicsFewLanes", { card: name, wired: Math.max(...longEnough), least: leastLanes });
		}
		if (without.length > 0) {
			const covered = ends.filter((end) => end.connector.kind === "card slot" && end.state === "covered");
			return planAround("slotsTaken", {
				cards: without.map(({ device }) => device.name),
				covered: covered.map(({ connector }) => connector.name),
			});
		}
		const maybe = cards.filter(({ hasPlace }) => hasPlace === "unknown");
		if (maybe.length > 0) return goodToKnow("maybeTaken", { cards: maybe.map(({ device }) => device.name) });
		const upright = cards.find(({ best }) => best?.extra === "riser cable");
		if (upright) return planAround("upright", { card: upright.device.name });
		return cards.length === 0 ? pass("notAsked") : pass("placed", { cards: cards.length });
	},
	needs({ graphicsCard, addInCards = [] }) {
		const graphics = graphicsCard === "have" || graphicsCard === "open";
		if (addInCards.length === 0) return graphics ? { messageId: "needGraphics", data: {} } : null;
		const old = addInCards.filter(({ bus }) => bus === "PCI").length;
		return { messageId: "need", data: { graphics, cards: addInCards.length, old } };
	},
});

function isCardKind(kind: string): boolean {
	return kind === "card" || kind === "graphics card";
}
