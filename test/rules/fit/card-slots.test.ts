import type { AddInCard } from "../../../src/parts/add-in-card.ts";
import { cardSlots } from "../../../src/rules/fit/card-slots.ts";
import { partNames } from "../rule-subject.ts";
import { testRule } from "../test-rule.ts";

const add = (name: string, facts: Partial<AddInCard> = {}): AddInCard => ({ id: name.toLowerCase(), name, ...facts });
const [fiddle, drum] = [add("Fiddle", { lanes: 1 }), add("Drum", { lanes: 4, leastLanes: 4 })];
const tuba = add("Tuba", { lanes: 16, leastLanes: 16, thicknessMm: 20, lengthMm: 100 });
/** Low enough to sit below a graphics card that stands upright, and one millimetre too high for it. */
const [lowFiddle, highFiddle] = [add("Fiddle", { lanes: 1, heightMm: 70 }), add("Fiddle", { lanes: 1, heightMm: 71 })];
const oldHorn = add("Old Horn", { bus: "PCI" });
const pebble = { id: "pebble", name: "Pebble", shape: "M.2", link: "PCI Express", lengthMm: 80 } as const;

const slot = (row: number, lengthLanes: number, wiredLanes = lengthLanes) => ({
	name: `SLOT_${row}`,
	bus: "PCI Express" as const,
	row,
	lengthLanes,
	wiredLanes,
});
const oldSlot = { name: "OLD", bus: "PCI" as const, row: 4 };
/** A long slot, two rows of card, a short slot, and one of four lanes: the graphics card goes into the first alone. */
const board = { cardSlots: [slot(1, 16), slot(3, 1), slot(4, 4)] };
const twoWide = { lanes: 16, thicknessMm: 40.6 };
const threeWide = { lanes: 16, thicknessMm: 41.2 };
/** The slot below the graphics card is free only where that stands upright. */
const uprightOnly = { cardSlots: [slot(1, 16), slot(2, 1)] };
/** A slot that shares with an M.2 socket. */
const sharingSlot = {
	cardSlots: [slot(1, 16), slot(4, 4)],
	m2Sockets: [{ name: "M2_1", key: "M" as const, lengthsMm: [80], wiredLanes: 4, sata: false }],
	sharing: [{ members: ["SLOT_4", "M2_1"], modes: [{ on: { SLOT_4: 4 } }, { on: { M2_1: 4 } }] }],
};
/** Four lanes long, and one that nobody knows the length of. */
const oneMayBeShort = { cardSlots: [slot(3, 4), { name: "SLOT_4", row: 4, wiredLanes: 1 }] };
/** Of four lanes, and content with one; small ones that move more, so that they come first. */
const [harp, lyre] = [add("Harp", { lanes: 4 }), add("Lyre", { lanes: 4 })];
const [pipe, whistle] = [add("Pipe", { lanes: 1, gbytesPerS: 0.9 }), add("Whistle", { lanes: 1, gbytesPerS: 0.8 })];
const lump = (limit: { readonly dead?: true; readonly wiredLanes?: number }) => ({
	conditions: [{ when: { processorSeries: ["Lump"] }, connector: "SLOT_1", ...limit }],
});

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
			{ board: { cardSlots: [slot(1, 16), oldSlot] }, graphicsCard: twoWide, addInCards: [oldHorn] },
			"placed",
			{ cards: 2 },
		],
		"a graphics card with exactly the lanes it needs": [
			{ board: { cardSlots: [slot(1, 16, 4)] }, graphicsCard: { ...twoWide, leastLanes: 4 } },
			"placed",
			{ cards: 1 },
		],
		"the graphics card moves to a slot of eight lanes for a card that needs all sixteen": [
			{ board: { cardSlots: [slot(1, 16), slot(4, 16, 8)], sharing: [] }, graphicsCard: twoWide, addInCards: [tuba] },
			"placed",
			{ cards: 2 },
		],
		"no slot has eight lanes: it moves to one that is as wide as any": [
			{
				board: { cardSlots: [slot(1, 16, 4), slot(2, 4), slot(4, 16, 4)] },
				graphicsCard: twoWide,
				addInCards: [drum, drum],
			},
			"placed",
			{ cards: 3 },
		],
		"the slot has fewer lanes with another processor": [
			{
				board: { ...board, ...lump({ wiredLanes: 2 }) },
				graphicsCard: { ...twoWide, leastLanes: 4 },
				processor: { series: "Loaf" },
			},
			"placed",
			{ cards: 1 },
		],
		"the slot is dead with another processor": [
			{ board: { ...board, ...lump({ dead: true }) }, graphicsCard: twoWide, processor: { series: "Loaf" } },
			"placed",
			{ cards: 1 },
		],
		"nobody has said of a graphics card, and the last slot is below any": [
			{ board: { cardSlots: [slot(1, 16), slot(5, 1)] }, addInCards: [fiddle] },
			"placed",
			{ cards: 1 },
		],
		"the slot shares with a socket that stays empty": [
			{ board: sharingSlot, graphicsCard: twoWide, addInCards: [fiddle] },
			"placed",
			{ cards: 2 },
		],
		"the last opening of the case": [
			{ board, graphicsCard: twoWide, addInCards: [drum], case: { cardSlots: 4 } },
			"placed",
			{ cards: 2 },
		],
	},
	cautions: {
		"a card a hair too thick covers the short slot": [
			{ board, graphicsCard: threeWide, addInCards: [drum, fiddle] },
			"plan-around",
			"slotsTaken",
			{ cards: ["Fiddle"], covered: ["SLOT_3"] },
		],
		"one card more than slots": [
			{ board, graphicsCard: twoWide, addInCards: [fiddle, fiddle, drum] },
			"plan-around",
			"slotsTaken",
			{ cards: ["Fiddle"], covered: [] },
		],
		"the same card is left out, whichever is named first": [
			{ board, graphicsCard: twoWide, addInCards: [drum, fiddle, fiddle] },
			"plan-around",
			"slotsTaken",
			{ cards: ["Fiddle"], covered: [] },
		],
		"the slot is long enough but has too few lanes": [
			{ board: { cardSlots: [slot(1, 16), slot(4, 8, 1)] }, graphicsCard: twoWide, addInCards: [drum] },
			"plan-around",
			"slotsTaken",
			{ cards: ["Drum"], covered: [] },
		],
		"the graphics card does not leave its slot for a long one of one lane": [
			{ board: { cardSlots: [slot(1, 16), slot(4, 16, 1)] }, graphicsCard: twoWide, addInCards: [drum] },
			"plan-around",
			"slotsTaken",
			{ cards: ["Drum"], covered: [] },
		],
		"nor for one of seven lanes": [
			{ board: { cardSlots: [slot(1, 16), slot(4, 16, 7)] }, graphicsCard: twoWide, addInCards: [tuba] },
			"plan-around",
			"slotsTaken",
			{ cards: ["Tuba"], covered: [] },
		],
		"nor for one of four, where its own has sixteen": [
			{
				board: { cardSlots: [slot(1, 16), slot(2, 4), slot(4, 16, 4)] },
				graphicsCard: twoWide,
				addInCards: [drum, drum],
			},
			"plan-around",
			"slotsTaken",
			{ cards: ["Drum"], covered: ["SLOT_2"] },
		],
		"nor for one of one lane, where its own has four, the most there is": [
			{ board: { cardSlots: [slot(1, 16, 4), slot(4, 16, 1)] }, graphicsCard: twoWide, addInCards: [drum] },
			"plan-around",
			"slotsTaken",
			{ cards: ["Drum"], covered: [] },
		],
		"a card of which no lanes are given is sixteen long, and stays too": [
			{
				board: { cardSlots: [slot(1, 16), slot(4, 16, 1)] },
				graphicsCard: { thicknessMm: 40.6 },
				addInCards: [drum],
			},
			"plan-around",
			"slotsTaken",
			{ cards: ["Drum"], covered: [] },
		],
		"a card in the second slot would leave the graphics card four lanes": [
			{
				board: {
					cardSlots: [slot(1, 16), slot(4, 8)],
					sharing: [
						{
							members: ["SLOT_1", "SLOT_4"],
							modes: [{ on: { SLOT_1: 16 } }, { on: { SLOT_1: 4, SLOT_4: 4 } }],
						},
					],
				},
				graphicsCard: twoWide,
				addInCards: [fiddle],
			},
			"plan-around",
			"slotsTaken",
			{ cards: ["Fiddle"], covered: [] },
		],
		"the slot is too short": [
			{ board: { cardSlots: [slot(4, 1)] }, graphicsCard: "none", addInCards: [drum] },
			"plan-around",
			"slotsTaken",
			{ cards: ["Drum"], covered: [] },
		],
		"the slot is off for the sake of a drive": [
			{ board: sharingSlot, graphicsCard: twoWide, addInCards: [fiddle], drives: [pebble] },
			"plan-around",
			"slotsTaken",
			{ cards: ["Fiddle"], covered: [] },
		],
		"a card in the second slot would take lanes the graphics card cannot do without": [
			{
				board: {
					cardSlots: [slot(1, 16), slot(4, 8)],
					sharing: [
						{
							members: ["SLOT_1", "SLOT_4"],
							modes: [{ on: { SLOT_1: 16 } }, { on: { SLOT_1: 8, SLOT_4: 8 } }],
						},
					],
				},
				graphicsCard: { ...twoWide, leastLanes: 9 },
				addInCards: [fiddle],
			},
			"plan-around",
			"slotsTaken",
			{ cards: ["Fiddle"], covered: [] },
		],
		"below the last opening of the case": [
			{ board, graphicsCard: twoWide, addInCards: [drum], case: { cardSlots: 3 } },
			"plan-around",
			"slotsTaken",
			{ cards: ["Drum"], covered: [] },
		],
		"each card alone surely finds a slot, and whether both do at once is not known": [
			{ board: oneMayBeShort, graphicsCard: "none", addInCards: [lyre, harp] },
			"good-to-know",
			"maybeTaken",
			{ cards: ["Lyre"] },
		],
		"the same two, named the other way round": [
			{ board: oneMayBeShort, graphicsCard: "none", addInCards: [harp, lyre] },
			"good-to-know",
			"maybeTaken",
			{ cards: ["Lyre"] },
		],
		"one surely finds none beside the others, though each would alone": [
			{ board: oneMayBeShort, graphicsCard: "none", addInCards: [pipe, harp, lyre] },
			"plan-around",
			"slotsTaken",
			{ cards: ["Lyre"], covered: [] },
		],
		"all of them go in only with the graphics card upright": [
			{
				board: uprightOnly,
				graphicsCard: threeWide,
				addInCards: [lowFiddle],
				case: { cardSlots: 4, uprightSlots: 2 },
			},
			"plan-around",
			"upright",
			{ card: partNames.graphicsCard },
		],
		"no room for it upright in the case": [
			{
				board: uprightOnly,
				graphicsCard: threeWide,
				addInCards: [lowFiddle],
				case: { cardSlots: 4, uprightSlots: 1 },
			},
			"plan-around",
			"slotsTaken",
			{ cards: ["Fiddle"], covered: ["SLOT_2"] },
		],
		"upright it would hang over a card that is too high": [
			{
				board: uprightOnly,
				graphicsCard: threeWide,
				addInCards: [highFiddle],
				case: { cardSlots: 4, uprightSlots: 2 },
			},
			"plan-around",
			"slotsTaken",
			{ cards: ["Fiddle"], covered: ["SLOT_2"] },
		],
		"no lanes given: no slot is as long as the sixteen it is taken for": [
			{ board: { cardSlots: [slot(1, 8)] }, graphicsCard: { thicknessMm: 40.6 } },
			"plan-around",
			"graphicsTooLong",
			{ card: partNames.graphicsCard },
		],
		"no slot is as long as the graphics card": [
			{ board: { cardSlots: [slot(1, 8)] }, graphicsCard: twoWide },
			"plan-around",
			"graphicsTooLong",
			{ card: partNames.graphicsCard },
		],
		"one still to be bought counts as a long one": [
			{ board: { cardSlots: [slot(1, 8)] }, graphicsCard: "open" },
			"plan-around",
			"graphicsTooLong",
			{ card: "graphics card" },
		],
		"one lane too few for the graphics card": [
			{ board: { cardSlots: [slot(1, 16, 4)] }, graphicsCard: { ...twoWide, leastLanes: 5 } },
			"plan-around",
			"graphicsFewLanes",
			{ card: partNames.graphicsCard, wired: 4, least: 5 },
		],
		"the slot has fewer lanes with this processor": [
			{
				board: { cardSlots: [slot(1, 16)], ...lump({ wiredLanes: 1 }) },
				graphicsCard: { ...twoWide, leastLanes: 4 },
				processor: { series: "Lump" },
			},
			"plan-around",
			"graphicsFewLanes",
			{ card: partNames.graphicsCard, wired: 1, least: 4 },
		],
		"the long slot is dead with this processor, the other has too few lanes": [
			{
				board: { cardSlots: [slot(1, 16), slot(4, 16, 2)], ...lump({ dead: true }) },
				graphicsCard: { ...twoWide, leastLanes: 4 },
				processor: { series: "Lump" },
			},
			"plan-around",
			"graphicsFewLanes",
			{ card: partNames.graphicsCard, wired: 2, least: 4 },
		],
	},
	fails: {
		"no old slot for an old card": [
			{ board, graphicsCard: twoWide, addInCards: [fiddle, oldHorn] },
			"noSuchSlot",
			{ bus: "PCI", cards: ["Old Horn"] },
		],
		"old slots alone for a card of today": [
			{ board: { cardSlots: [oldSlot] }, graphicsCard: "none", addInCards: [oldHorn, fiddle] },
			"noSuchSlot",
			{ bus: "PCI Express", cards: ["Fiddle"] },
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
		"nobody has said, and it would take the only slot": [
			{ board: { cardSlots: [slot(1, 16)] }, addInCards: [fiddle] },
			["graphicsCard"],
			"unsure",
		],
		"how thick the card is, is not known": [
			{ board: { cardSlots: [slot(1, 16), slot(3, 1)] }, graphicsCard: { lanes: 16 }, addInCards: [fiddle] },
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
		"too few lanes at best, and with some processors no slot works at all": [
			{
				board: { cardSlots: [slot(1, 16, 4)], ...lump({ dead: true }) },
				graphicsCard: { ...twoWide, leastLanes: 5 },
				processor: {},
			},
			["processor.series"],
			"unsure",
		],
		"how many lanes the slot has, is not known": [
			{
				board: { cardSlots: [slot(1, 16), { name: "SLOT_4", row: 4, lengthLanes: 8 }] },
				graphicsCard: twoWide,
				addInCards: [drum],
			},
			["board.cardSlots"],
			"unsure",
		],
		"one card surely finds no slot beside two others, and alone it may": [
			{
				board: { cardSlots: [slot(3, 1), { name: "SLOT_4", row: 4, wiredLanes: 1 }] },
				graphicsCard: "none",
				addInCards: [pipe, whistle, harp],
			},
			["board.cardSlots"],
			"unsure",
		],
		"nor is it without one of the two": [
			{
				board: { cardSlots: [slot(3, 1), { name: "SLOT_4", row: 4, wiredLanes: 1 }] },
				graphicsCard: "none",
				addInCards: [pipe, harp],
			},
			["board.cardSlots"],
			"unsure",
		],
		"one card surely finds no slot, and of the graphics card nobody has said": [
			{ board: { cardSlots: [slot(1, 16)] }, addInCards: [fiddle, fiddle] },
			["graphicsCard"],
			"unsure",
		],
		"how long the slot is, is not known": [
			{
				board: { cardSlots: [slot(1, 16), { name: "SLOT_4", row: 4, wiredLanes: 1 }] },
				graphicsCard: twoWide,
				addInCards: [add("Drum", { lanes: 4 })],
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
