import type { Board } from "../../../src/parts/board.ts";
import { secondCard } from "../../../src/rules/features/second-card.ts";
import { testRule } from "../test-rule.ts";

type Slot = NonNullable<Board["cardSlots"]>[number];

const wish = (strength: "must" | "would-like" | "dont-mind") => ({ wishes: { "features/second-card": strength } });
const slot = (row: number, facts: Partial<Slot> = {}): Slot => ({
	name: `SLOT_${row}`,
	bus: "PCI Express",
	row,
	lengthLanes: 16,
	wiredLanes: 16,
	from: "processor",
	...facts,
});
const board = (...cardSlots: Slot[]) => ({ cardSlots });
/** The first slot gives half of its lanes to the second. */
const sharing = (second: number) => [
	{
		members: ["SLOT_1", "SLOT_4"],
		modes: [{ on: { SLOT_1: 16 } }, { on: { SLOT_1: 8, SLOT_4: second } }],
	},
];
const twoWide = { graphicsCard: { thicknessMm: 40, lanes: 16 } };
const both = { slots: ["SLOT_1", "SLOT_4"] };

testRule(secondCard, {
	fits: {
		"exactly eight lanes in the second": [
			{ board: board(slot(1), slot(4, { wiredLanes: 8 })), ...wish("must"), ...twoWide },
			"has",
			both,
		],
		"three of them: the first two are named": [
			{ board: board(slot(1), slot(4), slot(7)), ...wish("would-like"), ...twoWide },
			"has",
			both,
		],
		"a slot of which the kind is not said": [
			{ board: board(slot(1), slot(4, { bus: undefined })), ...wish("must"), ...twoWide },
			"has",
			both,
		],
		"the two share, and each is left eight": [
			{ board: { ...board(slot(1), slot(4, { wiredLanes: 8 })), sharing: sharing(8) }, ...wish("must"), ...twoWide },
			"has",
			both,
		],
		"a first card of one row leaves the slot right below": [
			{ board: board(slot(1), slot(2)), ...wish("must"), graphicsCard: { thicknessMm: 20, lanes: 16 } },
			"has",
			{ slots: ["SLOT_1", "SLOT_2"] },
		],
		"a first card of which no lanes are given": [
			{ board: board(slot(1), slot(4)), ...wish("must"), graphicsCard: { thicknessMm: 40 } },
			"has",
			both,
		],
		"a first card with few lanes of its own changes nothing": [
			{ board: board(slot(1), slot(4)), ...wish("must"), graphicsCard: { thicknessMm: 40, lanes: 4 } },
			"has",
			both,
		],
		"without a graphics card two heavy ones are looked for": [
			{ board: board(slot(1), slot(4)), ...wish("must"), graphicsCard: "none" },
			"has",
			both,
		],
		"a first card still to be bought is taken for two rows": [
			{ board: board(slot(1), slot(3)), ...wish("must"), graphicsCard: "open" },
			"has",
			{ slots: ["SLOT_1", "SLOT_3"] },
		],
		"in the row right below the first card": [
			{ board: board(slot(1), slot(3)), ...wish("must"), ...twoWide },
			"has",
			{ slots: ["SLOT_1", "SLOT_3"] },
		],
		"a first card of three rows takes the lower slot": [
			{ board: board(slot(1), slot(3)), ...wish("must"), graphicsCard: { thicknessMm: 61, lanes: 16 } },
			"has",
			{ slots: ["SLOT_3", "SLOT_1"] },
		],
		"so far below that no first card covers it, however thick": [
			{ board: board(slot(1), slot(5)), ...wish("must"), graphicsCard: { lanes: 16 } },
			"has",
			{ slots: ["SLOT_1", "SLOT_5"] },
		],
		"drives and cards of the build are not looked at": [
			{
				board: board(slot(1), slot(4)),
				...wish("must"),
				...twoWide,
				addInCards: [{ id: "fiddle", name: "Fiddle", lanes: 1 }],
			},
			"has",
			both,
		],
		"the openings of the case are a matter between it and the cards": [
			{ board: board(slot(1), slot(4)), ...wish("must"), ...twoWide, case: { cardSlots: 4 } },
			"has",
			both,
		],
		"how thick the first card is, is not known: at worst it takes the lower slot": [
			{ board: board(slot(1), slot(3)), ...wish("must"), graphicsCard: { lanes: 16 } },
			"has",
			{ slots: ["SLOT_3", "SLOT_1"] },
		],
		"not wished for": [{ board: board(slot(1)), ...wish("dont-mind") }, "notAsked"],
		"nobody has said": [{ board: board(slot(1)) }, "notAsked"],
	},
	cautions: {
		"would be nice": [{ board: board(slot(1)), ...wish("would-like") }, "good-to-know", "wouldLike", { slots: [] }],
		"would be nice, and the page is silent": [{ board: {}, ...wish("would-like") }, "good-to-know", "silent"],
		"would be nice, and the lanes of the second are not known": [
			{ board: board(slot(1), slot(4, { wiredLanes: undefined })), ...wish("would-like"), ...twoWide },
			"good-to-know",
			"silent",
		],
	},
	fails: {
		"one slot": [{ board: board(slot(1)), ...wish("must"), ...twoWide }, "lacks", { slots: [] }],
		"one slot, and no graphics card in it": [
			{ board: board(slot(1)), ...wish("must"), graphicsCard: "none" },
			"lacks",
			{ slots: [] },
		],
		"seven lanes in the second": [
			{ board: board(slot(1), slot(4, { wiredLanes: 7 })), ...wish("must"), ...twoWide },
			"lacks",
			{ slots: [] },
		],
		"the two share, and the second is left four": [
			{ board: { ...board(slot(1), slot(4, { wiredLanes: 8 })), sharing: sharing(4) }, ...wish("must"), ...twoWide },
			"lacks",
			{ slots: [] },
		],
		"the second is short": [
			{ board: board(slot(1), slot(4, { lengthLanes: 8, wiredLanes: 8 })), ...wish("must"), ...twoWide },
			"lacks",
			{ slots: [] },
		],
		"the second hangs on the chipset": [
			{ board: board(slot(1), slot(4, { from: "chipset" })), ...wish("must"), ...twoWide },
			"lacks",
			{ slots: [] },
		],
		"the second hangs on the chipset, its lanes not known": [
			{ board: board(slot(1), slot(4, { from: "chipset", wiredLanes: undefined })), ...wish("must"), ...twoWide },
			"lacks",
			{ slots: [] },
		],
		"the second is of the old kind": [
			{ board: board(slot(1), slot(4, { bus: "PCI" })), ...wish("must"), ...twoWide },
			"lacks",
			{ slots: [] },
		],
		"each would cover the other": [
			{ board: board(slot(1), slot(2)), ...wish("must"), ...twoWide },
			"lacks",
			{ slots: [] },
		],
		"the second is dead with this processor": [
			{
				board: {
					...board(slot(1), slot(4)),
					conditions: [{ connector: "SLOT_4", when: { processorSeries: ["Lump"] }, dead: true }],
				},
				...wish("must"),
				...twoWide,
				processor: { series: "Lump" },
			},
			"lacks",
			{ slots: [] },
		],
		"this processor gives four lanes": [
			{ board: board(slot(1), slot(4)), ...wish("must"), ...twoWide, processor: { lanes: { graphics: 4 } } },
			"lacks",
			{ slots: [] },
		],
	},
	cannotTell: {
		"needed, and the page is silent": [{ board: {}, ...wish("must") }, ["board.cardSlots"]],
		"no rows given: the first card may cover the second slot": [
			{ board: board(slot(1, { row: undefined }), slot(4, { row: undefined })), ...wish("must"), ...twoWide },
			["board.cardSlots"],
		],
		"what feeds the second is not given": [
			{ board: board(slot(1), slot(4, { from: undefined })), ...wish("must"), ...twoWide },
			["board.cardSlots"],
		],
		"what feeds the second is not given, nor how thick the first card is, which the second slot leaves open": [
			{
				board: board(slot(1), slot(4, { from: undefined })),
				...wish("must"),
				graphicsCard: { lanes: 16 },
			},
			["board.cardSlots"],
		],
		"how thick the first card is, is not known, and only one of a single row leaves the second slot": [
			{ board: board(slot(1), slot(2)), ...wish("must"), graphicsCard: { lanes: 16, lengthMm: 250 } },
			["graphicsCard.thicknessMm"],
		],
		"nobody has said which processor": [
			{
				board: {
					...board(slot(1), slot(4)),
					conditions: [{ connector: "SLOT_4", when: { processorSeries: ["Lump"] }, dead: true }],
				},
				...wish("must"),
				...twoWide,
			},
			["processor"],
		],
		"the lanes of the second are not known": [
			{ board: board(slot(1), slot(4, { wiredLanes: undefined })), ...wish("must"), ...twoWide },
			["board.cardSlots"],
		],
		"the second is dead with some processors": [
			{
				board: {
					...board(slot(1), slot(4)),
					conditions: [{ connector: "SLOT_4", when: { processorSeries: ["Lump"] }, dead: true }],
				},
				...wish("must"),
				...twoWide,
				processor: {},
			},
			["processor.series"],
		],
	},
	needs: {
		needed: [
			wish("must"),
			"A second full-length slot with at least 8 lanes from the processor, not covered by the first card.",
		],
		"would be nice": [
			wish("would-like"),
			"A second full-length slot with at least 8 lanes from the processor, not covered by the first card, if it costs little.",
		],
		"not wished for": [wish("dont-mind"), null],
	},
});
