import { countQuestion } from "../count-question.ts";

export const memorySize = countQuestion({
	id: "fit/memory-size",
	tier: "fit",
	want: "memoryGb",
	least: 4,
	most: 4096,
	unit: "GB",
	ask: "How much memory should the computer have in the end?",
	hint: "In GB, such as 32; heavy work may want 64 or 128",
	label: "Memory in the end",
	why: "Each board takes memory up to a limit. What it does not take cannot be added later.",
	whereToFind: "The page of the heaviest program or game you use says how much it wants. Plan for twice that.",
	changes: "Boards that take less than this are taken out.",
	notSure: "No board is taken out for it.",
	howToFindOut: "Look up what your heaviest program wants.",
});
