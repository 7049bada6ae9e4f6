import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";
import { roundToTenth } from "../round-to-tenth.ts";

/**
 * A graphics card that gets less than half of what it can use, and less than eight lanes of generation 3 carry, is held
 * back in earnest (common practice, no source; the rate is that of PCI Express 3.0 x8, 7.88 GB/s).
 */
const leastShare = 0.5;
const plentyGbytesPerS = 7.8;

/**
 * Lanes and generation the graphics card gets in its place. Half of the lanes costs most games a few percent (common
 * practice, no source); rates are those of the PCI Express generations.
 */
export const graphicsLanes = defineRule({
	id: "features/graphics-lanes",
	scope: "board",
	label: "Width for the graphics card",
	wayOut: "a graphics card that gets fewer lanes",
	asks: "Does the graphics card get all the lanes it can use?",
	why: "Lanes are paths for data. A second card or drive can halve those of the first slot, and some long slots have few.",
	source: "wiki-pci-express",
	severity: "plan-around",
	reads: ["graphicsCard"],
	mayRead: ["graphicsCard.name", "board.sharing", "board.cardSlots", "plan.things", "plan.openLimits"],
	messages: {
		noCard: () => "There will be no graphics card, so none wants lanes.",
		notSaid: () => "Whether there will be a graphics card is not settled, so no lanes are counted for one.",
		noSlot: ({ card }: { card: string }) => `The ${card} finds no slot here, so its lanes are not counted.`,
		full: ({ card, lanes }: { card: string; lanes: number }) =>
			`The ${card} gets all ${lanes} ${lanes === 1 ? "lane" : "lanes"} it can use.`,
		narrow: (words: LaneWords) => laneWords(words),
		heldBack: (words: LaneWords) => laneWords(words),
		unsure: ({ card }: { card: string }) => `Whether the ${card} gets all its lanes is not known.`,
	},
	advice: {
		narrow: () => "Most games lose a few per cent at most. Whoever moves much data to the card loses more.",
		heldBack: ({ because }: LaneWords) =>
			because[0] === "the processor"
				? "Another processor has more lanes; no board can add any."
				: because.length > 0
					? "Move what shares its lanes, or take a board with a wider slot."
					: "Take a board with a wider or newer slot for it.",
	},
	check(facts): Outcome {
		const state = facts.graphicsCard;
		if (state === "none") return pass("noCard");
		if (state === "unknown") return pass("notSaid");
		const name = facts["graphicsCard.name"] ?? "graphics card";
		if (!facts["board.cardSlots"]) return cannotTell(["board.cardSlots"], "unsure", { card: name });
		const card = facts["plan.things"]?.find(({ device }) => device.kind === "graphics card");
		if (!card?.best || card.device.lanes === null) return pass("noSlot", { card: name });
		const { device, best, worst } = card;
		const { link, connector } = best;
		const [lanes, of] = [link.lanes ?? 0, card.device.lanes];
		const share = Math.min(
			lanes / of,
			link.gbytesPerS === null ? 1 : link.gbytesPerS / (device.gbytesPerS ?? link.gbytesPerS),
		);
		const words = {
			card: name,
			slot: connector.name,
			lanes,
			of,
			generation: connector.generation ?? -1,
			gbytesPerS: rounded(link.gbytesPerS),
			ofGbytesPerS: rounded(device.gbytesPerS),
			because:
				best.narrowedBy.length === 0 && connector.lanes < (connector.wiredLanes ?? 0)
					? ["the processor"]
					: best.narrowedBy,
		};
		const hasPlenty = link.gbytesPerS !== null && link.gbytesPerS >= plentyGbytesPerS;
		if (share < leastShare && !hasPlenty) return planAround("heldBack", words);
		if (share < 1) return goodToKnow("narrow", words);
		const isWorse = (worst?.link.lanes ?? 0) < lanes || (worst?.link.gbytesPerS ?? 0) < (link.gbytesPerS ?? 0);
		const open = [
			...(connector.wiredLanes === null ? ["board.cardSlots"] : []),
			...(isWorse ? (facts["plan.openLimits"] ?? []) : []),
			...((worst?.link.lanes ?? 0) < lanes && !facts["board.sharing"] ? ["board.sharing"] : []),
		];
		return open.length > 0 ? cannotTell(open, "unsure", { card: name }) : pass("full", { card: name, lanes });
	},
});

interface LaneWords {
	readonly card: string;
	readonly slot: string;
	readonly lanes: number;
	readonly of: number;
	/** Generation of the slot; -1 where nobody knows. */
	readonly generation: number;
	/** GB/s it gets and could use; -1 where nobody knows. */
	readonly gbytesPerS: number;
	readonly ofGbytesPerS: number;
	readonly because: readonly string[];
}

/** "The Carousel gets 8 of its 16 lanes in SLOT_1, 15.8 of 31.5 GB/s. Cause: Fiddle." */
function laneWords({ card, slot, lanes, of, generation, gbytesPerS, ofGbytesPerS, because }: LaneWords): string {
	const speed = gbytesPerS < 0 || ofGbytesPerS < 0 ? "" : `${gbytesPerS} of ${ofGbytesPerS} GB/s`;
	if (lanes >= of) return `The ${card} gets all ${of} lanes in ${slot}, but of PCI Express ${generation}: ${speed}.`;
	const cause = because.length > 0 ? ` Cause: ${because.join(" and ")}.` : "";
	return `The ${card} gets ${lanes} of its ${of} lanes in ${slot}${speed && `, ${speed}`}.${cause}`;
}

function rounded(gbytesPerS: number | null): number {
	return gbytesPerS === null ? -1 : roundToTenth(gbytesPerS);
}
