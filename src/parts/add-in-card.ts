import * as z from "zod";
import { amount, count, fact } from "./fact.ts";
import { partBasics } from "./part-basics.ts";
import { linkGenerations } from "./vocabulary.ts";

const page = "The card maker's page";

export const addInCard = z.strictObject({
	...partBasics,
	use: fact(
		z
			.enum([
				"sound",
				"wired network",
				"wireless network",
				"video capture",
				"drives",
				"USB sockets",
				"computing",
				"other",
			])
			.optional(),
		{
			title: "What it does",
			whereToFind: page,
		},
	),
	bus: fact(z.enum(["PCI Express", "PCI"]).optional(), {
		title: "Slot it needs",
		whereToFind: `${page}; old cards need PCI.`,
	}),
	lanes: fact(count(1, 16).optional(), { title: "Lanes it uses", whereToFind: page }),
	leastLanes: fact(count(1, 16).optional(), { title: "Fewest lanes it works with", whereToFind: page }),
	generation: fact(count(linkGenerations.least, linkGenerations.most).optional(), {
		title: "PCI Express generation",
		whereToFind: page,
	}),
	lengthMm: fact(amount(30, 400).optional(), { title: "Length", unit: "mm", whereToFind: page }),
	thicknessMm: fact(amount(5, 120).optional(), { title: "Thickness", unit: "mm", whereToFind: page }),
	heightMm: fact(amount(30, 250).optional(), { title: "Height from the slot", unit: "mm", whereToFind: page }),
	bracketSlots: fact(count(1, 4).optional(), { title: "Slots its metal bracket takes", whereToFind: "Look at it." }),
	usesUsb2: fact(z.boolean().optional(), {
		title: "Needs a 9-pin USB header",
		whereToFind: "Its cables; Bluetooth of a wireless card needs one.",
	}),
	gbytesPerS: fact(amount(0, 200).optional(), { title: "Data it moves", unit: "GB/s", whereToFind: page }),
});
export type AddInCard = z.infer<typeof addInCard>;
