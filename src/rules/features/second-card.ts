import { wishRule } from "../wish-rule.ts";

/** Fewer hold a heavy card back (common practice, no source); the plan counts with the same. */
const leastLanes = 8;

/** The wish for a second full-length slot that is fed well enough for a second heavy card, beside the first. */
export const secondCard = wishRule({
	id: "features/second-card",
	label: "A second big card",
	wayOut: "one heavy card only",
	asks: "Does the board have a second full-length slot, fed from the processor?",
	why: "Many second slots look full-length but have four lanes (paths for data) from the chipset, shared with drives and USB.",
	source: "common-practice",
	severity: "stops",
	mayStop: ({ wishes }) => wishes["features/second-card"] === "must",
	reads: ["plan.secondSlot"],
	has({ "plan.secondSlot": second }) {
		if (!second || second.has === "unknown") return undefined;
		return { has: second.has === "yes", data: { slots: second.slots } };
	},
	missing: ({ "plan.secondSlot": second }) => second?.missing ?? ["board.cardSlots"],
	words: {
		notAsked: "You have not asked for a second big card",
		has: ({ slots }) =>
			`Two big cards go in at once, each with at least ${leastLanes} lanes from the processor: in ${(slots as readonly string[]).join(" and ")}`,
		lacks: () => `It has no place for a second big card with at least ${leastLanes} lanes from the processor`,
		whether: `a second big card finds at least ${leastLanes} lanes from the processor`,
		need: `A second full-length slot with at least ${leastLanes} lanes from the processor, not covered by the first card`,
	},
	advice: "Read the footnotes: with both slots in use each often gets eight lanes, which is enough for most cards.",
});
