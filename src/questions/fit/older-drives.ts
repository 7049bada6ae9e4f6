import { countQuestion } from "../count-question.ts";

export const olderDrives = countQuestion({
	id: "fit/older-drives",
	tier: "fit",
	want: "olderSataDrives",
	least: 0,
	most: 12,
	ask: "How many more drives with a thin flat cable come along?",
	hint: "SATA drives of an older computer, beside those already named",
	label: "Older drives brought along",
	why: "Each needs a drive port on the board, a power plug of the supply, and a place in the case.",
	whereToFind: "Open the older computer, unplugged, and count the drives with a finger-wide data plug.",
	recipe: [
		"Shut the old computer down and pull its mains plug first.",
		"The data plug of a SATA drive is about 1 cm wide and shaped like an L.",
		"Before you take a drive out, copy what is on it to somewhere else.",
	],
	changes: "Boards with too few drive ports are marked.",
	notSure: "Only the drives you named are counted.",
	howToFindOut: "Count the drives in the older computer.",
});
