import type { Board } from "../../parts/board.ts";
import { wishRule } from "../wish-rule.ts";

type CardSlot = NonNullable<Board["cardSlots"]>[number];

const longLanes = 16;
const leastWiredLanes = 8;

/** The wish for a second full-length slot that is fed well enough for a second heavy card. */
export const secondCard = wishRule({
	id: "features/second-card",
	label: "A second heavy card",
	wayOut: "one heavy card only",
	asks: "Does the board have a second full-length slot, fed from the processor?",
	why: "Many second slots look full-length but have four lanes from the chipset, shared with drives and USB.",
	source: "common-practice",
	severity: "stops",
	reads: ["board.cardSlots"],
	has({ "board.cardSlots": slots }) {
		if (!slots) return undefined;
		const certain = slots.filter((slot) => isHeavy(slot) === true).length;
		const possible = slots.filter((slot) => isHeavy(slot) !== false).length;
		if (certain >= 2) return { has: true, data: { slots: certain } };
		return possible >= 2 ? undefined : { has: false };
	},
	words: {
		notAsked: "You have not asked for a second heavy card",
		has: ({ slots }) => `It has ${slots} full-length slots with at least ${leastWiredLanes} lanes from the processor`,
		lacks: () => `It has no second full-length slot with at least ${leastWiredLanes} lanes from the processor`,
		whether: `a second full-length slot with at least ${leastWiredLanes} lanes is there`,
		need: `A second full-length slot with at least ${leastWiredLanes} lanes from the processor`,
	},
	advice: "Read the footnotes: with both slots in use each often gets eight lanes, which is enough for most cards.",
});

/** Undefined where the page does not say. */
function isHeavy({ bus, lengthLanes, wiredLanes, from }: CardSlot): boolean | undefined {
	const answers = [
		bus === undefined ? true : bus === "PCI Express",
		lengthLanes === undefined ? undefined : lengthLanes >= longLanes,
		wiredLanes === undefined ? undefined : wiredLanes >= leastWiredLanes,
		from === undefined ? undefined : from === "processor",
	];
	if (answers.includes(false)) return false;
	return answers.includes(undefined) ? undefined : true;
}
