import * as z from "zod";
import { count, date, fact, line } from "./fact.ts";

const page = "The board maker's page";
const support = "The board maker's page, support, firmware";

const firmwareRelease = z.strictObject({
	version: fact(line(40), { title: "Version", whereToFind: support }),
	date: fact(date().optional(), { title: "Date", whereToFind: support }),
	note: fact(line(400).optional(), { title: "What it says", whereToFind: support }),
});

const supportRow = z.strictObject({
	processor: fact(line(), {
		title: "Processor as listed",
		whereToFind: "The board's processor list, on its maker's support page.",
	}),
	fromVersion: fact(line(40).optional(), {
		title: "From firmware",
		whereToFind: "The list's column; the first version if it names none.",
	}),
	note: fact(line(200).optional(), { title: "Note beside it", whereToFind: "The list's column of notes or remarks." }),
	versionOpen: fact(z.boolean().optional(), {
		title: "Version not clear",
		whereToFind: "The list has a column of versions, and this row's place in it is empty or names several.",
	}),
});

/** What helps when something goes wrong, and how the maker looks after the board. */
export const boardCare = {
	recovery: fact(
		z
			.strictObject({
				flashWithoutProcessor: fact(z.boolean().optional(), {
					title: "Updates its firmware without a processor",
					whereToFind: `${page}: a button at the back and a marked USB socket.`,
				}),
				faultDisplay: fact(z.enum(["none", "lights", "digits"]).optional(), {
					title: "Shows what stops the start",
					whereToFind: `${page} or pictures: four small lights, or two digits.`,
				}),
				resetAtBack: fact(z.boolean().optional(), {
					title: "Button at the back to reset the settings",
					whereToFind: `${page}, back panel.`,
				}),
				startButton: fact(z.boolean().optional(), { title: "Start button on the board", whereToFind: "Pictures." }),
				secondFirmware: fact(z.boolean().optional(), { title: "Second firmware chip", whereToFind: page }),
				backPlateFixed: fact(z.boolean().optional(), {
					title: "Shield at the back already fitted",
					whereToFind: "Pictures.",
				}),
			})
			.optional(),
		{ title: "Help when something goes wrong", whereToFind: page },
	),
	chipsetFan: fact(z.boolean().optional(), { title: "Small fan on the chipset", whereToFind: "Pictures." }),
	firmware: fact(
		z
			.strictObject({
				oldestInShops: fact(line(40).optional(), {
					title: "Oldest firmware a box may still hold",
					whereToFind: "The first version on the support page, unless the shop tells a newer one.",
				}),
				releases: fact(z.array(firmwareRelease).max(200).optional(), {
					title: "Firmware versions",
					whereToFind: support,
				}),
			})
			.optional(),
		{ title: "Firmware", whereToFind: support },
	),
	supportList: fact(
		z
			.strictObject({
				readOn: fact(date().optional(), { title: "Processor list read on", whereToFind: "The day you read the list." }),
				partial: fact(z.boolean().optional(), {
					title: "Only some rows noted",
					whereToFind: "Say yes where only the processors you looked for are noted, not the whole list.",
				}),
				rows: fact(z.array(supportRow).max(5000), {
					title: "Processors listed",
					whereToFind: `${page}, support, processor list.`,
				}),
			})
			.optional(),
		{ title: "Processor list", whereToFind: `${page}, support, processor list.` },
	),
	listsPublished: fact(
		z
			.strictObject({
				processors: fact(z.boolean().optional(), { title: "Processor list published", whereToFind: page }),
				memory: fact(z.boolean().optional(), { title: "Memory list published", whereToFind: page }),
			})
			.optional(),
		{ title: "Lists published", whereToFind: page },
	),
	m2WithoutTools: fact(count(0, 12).optional(), { title: "M.2 sockets without tools", whereToFind: page }),
};
