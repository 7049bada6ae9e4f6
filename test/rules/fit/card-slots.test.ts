import type { AddInCard } from "../../../src/parts/add-in-card.ts";
import { cardSlots } from "../../../src/rules/fit/card-slots.ts";
import { partNames } from "../rule-subject.ts";
import { testRule } from "../test-rule.ts";

const add = (name: string, facts: Partial<AddInCard> = {}): AddInCard => ({ id: name.toLowerCase(), name, ...facts });
const [fiddle, drum] = [add("Fiddle", { lanes: 1 }), add("Drum", { lanes: 4, leastLanes: 4 })];
const oldHorn = add("Old Horn", { bus: "PCI" });

const slot = (row: number, lengthLanes: number, wiredLanes = lengthLanes) => ({
	name: `SLOT_${row}`,
	bus: "PCI Express" as const,
	row,
	lengthLanes,
	wiredLanes,
});
/** A long slot, two rows of card, a short slot, and a long one with four lanes. */
const board = { cardSlots: [slot(1, 16), slot(3, 1), slot(4, 16, 4)] };
const twoWide = { thicknessMm: 40.6 };
const threeWide = { thicknessMm: 41.2 };

testRule(cardSlots, {
	fits: {
		"no cards at all": [{ board: {}, graphicsCard: "none" }, "notAsked"],
		"no other cards, and nobody has said of a graphics card": [{ board, addInCards: [] }, "notAsked"],
		"a graphics card alone": [{ board, graphicsCard: twoWide }, "placed", { cards: 1 }],
		"one still to be bought": [{ board, graphicsCard: "open" }, "placed", { cards: 1 }],
		"as many cards as slots": [{ board, graphicsCard: twoWide, addInCards: [drum, fiddle] }, "placed", { cards: 3 }],
		"whatever the order they are named in": [
			{ board, graphicsCard: twoWide, addInCards: [fiddle, drum] },
			"placed",
			{ cards: 3 },
		],
		"a card in the long slot where there is no graphics card": [
			{ board: { cardSlots: [slot(1, 16)] }, graphicsCard: "none", addInCards: [fiddle] },
			"placed",
			{ cards: 1 },
		],
		"an old card in an old slot": [
			{
				board: { cardSlots: [slot(1, 16), { name: "OLD", bus: "PCI", row: 4 }] },
				graphicsCard: twoWide,
				addInCards: [oldHorn],
			},
			"placed",
			{ cards: 2 },
		],
		"a graphics card with exactly the lanes it needs": [
			{ board: { cardSlots: [slot(1, 16, 4)] }, graphicsCard: { ...twoWide, leastLanes: 4 } },
			"placed",
			{ cards: 1 },
		],
		"the slot has fewer lanes with another processor": [
			{
				board: { ...board, conditions: [{ when: { processorSeries: ["Lump"] }, connector: "SLOT_1", wiredLanes: 2 }] },
				graphicsCard: { ...twoWide, leastLanes: 4 },
				processor: { series: "Loaf" },
			},
			"placed",
			{ cards: 1 },
		],
	},
	cautions: {
		"a card a hair too thick covers the short slot": [
			{ board, graphicsCard: threeWide, addInCards: [drum, fiddle] },
			"plan-around",
			"slotsTaken",
			{ cards: ["Fiddle"] },
		],
		"one card more than slots": [
			{ board, graphicsCard: twoWide, addInCards: [fiddle, fiddle, drum] },
			"plan-around",
			"slotsTaken",
			{ cards: ["Drum"] },
		],
		"the slot is long enough but has too few lanes": [
			{ board: { cardSlots: [slot(1, 16), slot(4, 16, 1)] }, graphicsCard: twoWide, addInCards: [drum] },
			"plan-around",
			"slotsTaken",
			{ cards: ["Drum"] },
		],
		"no slot is as long as the graphics card": [
			{ board: { cardSlots: [slot(1, 8)] }, graphicsCard: { ...twoWide, lanes: 16 } },
			"plan-around",
			"graphicsTooLong",
			{ card: partNames.graphicsCard },
		],
		"one of unknown length counts as a long one": [
			{ board: { cardSlots: [slot(1, 8)] }, graphicsCard: twoWide },
			"plan-around",
			"graphicsTooLong",
			{ card: partNames.graphicsCard },
		],
		"one lane too few for the graphics card": [
			{ board: { cardSlots: [slot(1, 16, 4)] }, graphicsCard: { ...twoWide, leastLanes: 5 } },
			"plan-around",
			"graphicsFewLanes",
			{ card: partNames.graphicsCard, wired: 4, least: 5 },
		],
		"the slot has fewer lanes with this processor": [
			{
				board: {
					cardSlots: [slot(1, 16)],
					conditions: [{ when: { processorSeries: ["Lump"] }, connector: "SLOT_1", wiredLanes: 1 }],
				},
				graphicsCard: { ...twoWide, leastLanes: 4 },
				processor: { series: "Lump" },
			},
			"plan-around",
			"graphicsFewLanes",
			{ card: partNames.graphicsCard, wired: 1, least: 4 },
		],
	},
	fails: {
		"no old slot for an old card": [
			{ board, graphicsCard: twoWide, addInCards: [fiddle, oldHorn] },
			"noSuchSlot",
			{ bus: "PCI", cards: ["Old Horn"] },
		],
		"no slot at all": [
			{ board: { cardSlots: [] }, graphicsCard: twoWide, addInCards: [fiddle] },
			"noSuchSlot",
			{ bus: "PCI Express", cards: [partNames.graphicsCard, "Fiddle"] },
		],
		"no slot for a graphics card still to be bought": [
			{ board: { cardSlots: [] }, graphicsCard: "open" },
			"noSuchSlot",
			{ bus: "PCI Express", cards: ["graphics card"] },
		],
		"no slot for a card, whether or not there will be a graphics card": [
			{ board: { cardSlots: [] }, addInCards: [fiddle] },
			"noSuchSlot",
			{ bus: "PCI Express", cards: ["Fiddle"] },
		],
	},
	cannotTell: {
		"the page names no slots": [{ board: {}, graphicsCard: twoWide }, ["board.cardSlots"], "unsure"],
		"nobody has said whether there will be a graphics card": [{ board: { cardSlots: [] } }, ["graphicsCard"], "unsure"],
		"nobody has said, and the page names no slots": [{ board: {} }, ["graphicsCard", "board.cardSlots"], "unsure"],
		"how thick the card is, is not known": [
			{ board, graphicsCard: {}, addInCards: [fiddle] },
			["graphicsCard.thicknessMm"],
			"unsure",
		],
		"the slot is dead with some processors": [
			{
				board: {
					cardSlots: [slot(1, 16)],
					conditions: [{ when: { processorGenerations: ["Dinghy"] }, connector: "SLOT_1", dead: true }],
				},
				graphicsCard: twoWide,
				processor: {},
			},
			["processor.generation"],
			"unsure",
		],
		"how many lanes the slot has, is not known": [
			{
				board: { cardSlots: [slot(1, 16), { name: "SLOT_4", row: 4, lengthLanes: 16 }] },
				graphicsCard: twoWide,
				addInCards: [drum],
			},
			["board.cardSlots"],
			"unsure",
		],
	},
	needs: {
		"nobody has said": [{}, null],
		"no cards": [{ graphicsCard: "none", addInCards: [] }, null],
		"a graphics card": [{ graphicsCard: {} }, "A full-length slot (x16) for the graphics card."],
		"another card": [{ graphicsCard: "none", addInCards: [fiddle] }, "1 card slot."],
		"two other cards": [{ addInCards: [fiddle, fiddle] }, "2 card slots."],
		"all of them": [
			{ graphicsCard: "open", addInCards: [fiddle, oldHorn] },
			"A full-length slot (x16) for the graphics card, and beside it 2 more that it does not cover, 1 of the old kind (PCI).",
		],
	},
});
