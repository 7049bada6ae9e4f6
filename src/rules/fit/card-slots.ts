import { largestMatching } from "../../maths/bipartite-matching.ts";
import type { FactsUnder } from "../../parts/fact-path.ts";
import { busOf, graphicsInSlot, slotNeedOf, slotsBeside, slotsFor } from "../card-places.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, type Outcome, pass, planAround } from "../outcome.ts";
import { factsThatSettleLimits, type Leaning, processorOfLimits, withProcessorLimits } from "../processor-limits.ts";

const mayRead = [
	"addInCards",
	"board.cardSlots",
	"board.conditions",
	"processor",
	"processor.series",
	"processor.generation",
	"processor.graphics",
	"graphicsCard.name",
	"graphicsCard.lanes",
	"graphicsCard.leastLanes",
	"graphicsCard.thicknessMm",
] as const;
type Facts = FactsUnder<"graphicsCard", (typeof mayRead)[number]>;

/**
 * Every card wants a slot of its kind, long enough and wired for the lanes it cannot do without, that the graphics card
 * does not cover. Cards are matched to slots as well as they can be. Only where the board has no slot of a card's kind
 * at all is it out; for the rest another card or another way is found.
 *
 * Which slots share lanes or switch each other off is not looked at: that is a matter of the whole plan. Source of what
 * fits which slot: wiki "PCI Express", sec. 6; of the rows, 20.32 mm apart: SSI EEB 3.0, figure 1.
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
	reads: ["graphicsCard"],
	mayRead,
	messages: {
		notAsked: () => "You have named no cards.",
		placed: ({ cards }: { cards: number }) =>
			cards === 1 ? "Your card finds a slot." : `Each of your ${cards} cards finds a slot.`,
		noSuchSlot: ({ bus, cards }: { bus: string; cards: readonly string[] }) =>
			`The board has no ${bus} slot at all. Left without: ${cards.join(", ")}.`,
		slotsTaken: ({ cards }: { cards: readonly string[] }) =>
			`No slot that suits is left for every card. Left without: ${cards.join(", ")}.`,
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
			"Often a thing on USB does the same work as a card. Else take a thinner graphics card, or a board with more slots below it.",
		graphicsTooLong: () =>
			"Take a board with a full-length slot; adapters for graphics cards bring more trouble than they cure.",
		graphicsFewLanes: () => "Ask the card's maker whether it starts with fewer lanes, or take a board with more.",
	},
	check(facts): Outcome {
		const cards = facts.addInCards ?? [];
		const state = facts.graphicsCard;
		if (state === "none" && cards.length === 0) return pass("notAsked");
		const [best, worst] = [outcomeBy(facts, "best"), outcomeBy(facts, "worst")];
		// Where both come to the same, what is not known does not matter.
		if (best.kind === worst.kind) return best;
		return cannotTell(missingOf(facts), "unsure");
	},
	needs({ graphicsCard, addInCards = [] }) {
		const graphics = graphicsCard === "have" || graphicsCard === "open";
		if (addInCards.length === 0) return graphics ? { messageId: "needGraphics", data: {} } : null;
		const old = addInCards.filter((card) => busOf(card) === "PCI").length;
		return { messageId: "need", data: { graphics, cards: addInCards.length, old } };
	},
});

function outcomeBy(facts: Facts, leaning: Leaning): Outcome {
	const cards = facts.addInCards ?? [];
	const graphics = graphicsInSlot(
		facts.graphicsCard,
		facts["graphicsCard.lanes"],
		facts["graphicsCard.thicknessMm"],
		leaning,
	);
	const count = cards.length + (graphics ? 1 : 0);
	if (count === 0) return pass("notAsked");
	const known = facts["board.cardSlots"];
	if (!known) return leaning === "best" ? pass("placed", { cards: count }) : fail("noSuchSlot");
	const slots = withProcessorLimits(known, facts["board.conditions"] ?? [], processorOfLimits(facts), leaning);
	const name = facts["graphicsCard.name"] ?? "graphics card";
	for (const bus of ["PCI Express", "PCI"] as const) {
		const without = [
			...(graphics && bus === "PCI Express" ? [name] : []),
			...cards.filter((card) => busOf(card) === bus).map((card) => card.name),
		];
		if (without.length > 0 && !slots.some((slot) => busOf(slot) === bus))
			return fail("noSuchSlot", { bus, cards: without });
	}
	const { graphicsSlot, left } = slotsBeside(slots, graphics, leaning);
	if (graphics && !graphicsSlot) return planAround("graphicsTooLong", { card: name });
	const [wired, least] = [graphicsSlot?.wiredLanes, facts["graphicsCard.leastLanes"]];
	if (wired !== undefined && least !== undefined && wired < least)
		return planAround("graphicsFewLanes", { card: name, wired, least });
	const places = largestMatching(cards.map((card) => slotsFor(slotNeedOf(card), left, leaning)));
	const over = cards.filter((_, index) => places[index] === null).map((card) => card.name);
	return over.length === 0 ? pass("placed", { cards: count }) : planAround("slotsTaken", { cards: over });
}

/** What would settle it; where all that is asked of the parts is known, it is the slots' own details. */
function missingOf(facts: Facts): readonly string[] {
	const missing = [
		...(facts.graphicsCard === "unknown" ? ["graphicsCard"] : []),
		...(facts["board.cardSlots"] ? [] : ["board.cardSlots"]),
		...factsThatSettleLimits(facts["board.cardSlots"], facts["board.conditions"], processorOfLimits(facts)),
		...(facts.graphicsCard === "have" && facts["graphicsCard.thicknessMm"] === undefined
			? ["graphicsCard.thicknessMm"]
			: []),
	];
	return missing.length > 0 ? missing : ["board.cardSlots"];
}
