import { partsQuestion } from "../parts-question.ts";

export const drives = partsQuestion({
	id: "fit/drives",
	tier: "fit",
	short: true,
	partKind: "drive",
	mostOfOne: 4,
	most: 12,
	ask: "Which drives will go into the computer?",
	hint: "Drives keep your files when the power is off",
	label: "Drives",
	why: "A flat stick (M.2) needs a socket of its own. Other drives need a data port and a power plug.",
	whereToFind: "On the label of the drive, or on your list.",
	recipe: [
		"A stick of 22 mm by 80 mm is an M.2 drive; 2280 on its label says so.",
		"NVMe or PCIe on the label means the fast kind. SATA on an M.2 label means the slow kind.",
		"A flat box of 7 by 10 cm is a 2.5 inch drive. A brick of 10 by 15 cm is a 3.5 inch drive.",
		"The flat cable of very old drives, 5 cm wide, is called IDE.",
	],
	changes: "Boards without room for your M.2 drives are taken out. Too few drive ports are marked.",
	notSure: "No board is taken out for its drive sockets.",
	howToFindOut: "Read the labels of the drives you have, and decide what you will buy.",
	none: { label: "None yet: I will buy what suits", explanation: "No board is taken out for its drive sockets" },
	sets: (facts, parts) => ({ ...facts, drives: parts }),
});
