import * as z from "zod";
import { amount, count, fact, line } from "./fact.ts";
import { partBasics } from "./part-basics.ts";
import { boardForms, casePlaces, holeLetters, supplyForms } from "./vocabulary.ts";

const page = "The case maker's page";

export const pcCase = z.strictObject({
	...partBasics,
	boardForms: fact(z.array(z.enum(boardForms)).min(1).max(9).optional(), {
		title: "Board sizes it takes",
		whereToFind: `${page}, "motherboard support": ATX, microATX, Mini-ITX. The list decides. Without a page, measure: ATX is 30.5 x 24.4 cm, microATX 24.4 x 24.4, Mini-ITX 17 x 17.`,
	}),
	boardMaxWidthMm: fact(amount(100, 600).optional(), {
		title: "Widest board",
		unit: "mm",
		whereToFind: `${page}, "E-ATX up to ... mm".`,
	}),
	boardMaxDepthMm: fact(amount(100, 600).optional(), {
		title: "Deepest board",
		unit: "mm",
		whereToFind: `${page}, "E-ATX up to ... mm"; it is the second figure of a board's size.`,
	}),
	standoffs: fact(z.array(z.enum(holeLetters)).max(12).optional(), {
		title: "Standoffs by hole letter",
		whereToFind: "Look into the case, with the drawing of the ATX or microATX specification.",
	}),
	standoffsRemovable: fact(z.boolean().optional(), {
		title: "Standoffs can be unscrewed",
		whereToFind: "The case itself.",
	}),
	backCutOuts: fact(z.boolean().optional(), {
		title: "Cut-outs for plugs on the board's back",
		whereToFind: `${page}: said where it is so.`,
	}),
	backCutOutPatterns: fact(z.array(line(60)).max(12).optional(), {
		title: "Boards or patterns the cut-outs suit",
		whereToFind: page,
	}),
	deepBoardCovers: fact(
		z
			.array(z.enum(["cable openings", "front radiator"]))
			.max(2)
			.optional(),
		{
			title: "What a board deeper than 244 mm covers",
			whereToFind: `${page}, notes, or a tape measure.`,
		},
	),
	cardMaxLengthMm: fact(amount(50, 800).optional(), {
		title: "Longest card",
		unit: "mm",
		whereToFind: `${page}, "GPU clearance"; a front radiator takes its thickness off.`,
	}),
	cardMaxLengthWithRadiatorMm: fact(amount(50, 800).optional(), {
		title: "Longest card with a front radiator",
		unit: "mm",
		whereToFind: page,
	}),
	cardMaxHeightMm: fact(amount(50, 400).optional(), {
		title: "Highest card",
		unit: "mm",
		whereToFind: `${page}, or from the board to the side panel.`,
	}),
	coolerMaxHeightMm: fact(amount(20, 400).optional(), {
		title: "Highest cooler",
		unit: "mm",
		whereToFind: `${page}, "CPU cooler clearance".`,
	}),
	cardSlots: fact(count(0, 14).optional(), {
		title: "Card openings at the back",
		whereToFind: `${page}, "expansion slots".`,
	}),
	uprightSlots: fact(count(0, 6).optional(), {
		title: "Openings for an upright card",
		whereToFind: `${page}, "vertical".`,
	}),
	supplyForms: fact(z.array(z.enum(supplyForms)).max(5).optional(), {
		title: "Supply shapes (forms)",
		whereToFind: `${page}, "power supply".`,
	}),
	supplyMaxLengthMm: fact(amount(50, 400).optional(), { title: "Longest supply", unit: "mm", whereToFind: page }),
	supplyIncludedW: fact(amount(0, 3000).optional(), { title: "Supply in the case", unit: "W", whereToFind: page }),
	frontOpen: fact(z.enum(["mesh", "slits", "solid"]).optional(), {
		title: "Front (open or closed)",
		whereToFind: "Pictures or the case.",
	}),
	fanPlaces: fact(
		z
			.array(
				z.strictObject({
					place: fact(z.enum(casePlaces), { title: "Place", whereToFind: page }),
					sizeMm: fact(count(40, 300), { title: "Fan size", unit: "mm", whereToFind: page }),
					count: fact(count(1, 12), { title: "How many", whereToFind: page }),
					fitted: fact(count(0, 12).optional(), { title: "Already fitted", whereToFind: page }),
				}),
			)
			.max(24)
			.optional(),
		{ title: "Fan places", whereToFind: `${page}, "fan support".` },
	),
	radiatorPlaces: fact(
		z
			.array(
				z.strictObject({
					place: fact(z.enum(casePlaces), { title: "Place", whereToFind: page }),
					lengthsMm: fact(z.array(count(80, 600)).max(8), { title: "Lengths", unit: "mm", whereToFind: page }),
					maxThicknessMm: fact(amount(10, 150).optional(), {
						title: "Room for radiator with its fans",
						unit: "mm",
						whereToFind: page,
					}),
				}),
			)
			.max(12)
			.optional(),
		{ title: "Radiator places", whereToFind: `${page}, "radiator support".` },
	),
	frontPlugs: fact(
		z
			.array(
				z.strictObject({
					plug: fact(z.enum(["USB 9-pin", "USB 19-pin", "USB-C 20-pin", "sound"]), {
						title: "Plug at the loose end of the cable",
						whereToFind: "Count the plugs at the loose ends of the case's cables.",
					}),
					count: fact(count(1, 6), { title: "How many", whereToFind: "The case's cables." }),
					gbps: fact(amount(0.4, 80).optional(), { title: "Rate of the cable", unit: "Gb/s", whereToFind: page }),
				}),
			)
			.max(8)
			.optional(),
		{ title: "Plugs of the front", whereToFind: "The loose ends of the case's cables." },
	),
	frontSockets: fact(z.array(line(40)).max(24).optional(), {
		title: "Sockets at the front",
		whereToFind: `${page}, "front I/O". One entry a socket, such as USB 3.0, USB-C, sound, microphone.`,
	}),
	driveBays: fact(
		z
			.strictObject({
				inch35: fact(count(0, 30).optional(), { title: "Places for 3.5 inch drives", whereToFind: page }),
				inch25: fact(count(0, 30).optional(), { title: "Places for 2.5 inch drives", whereToFind: page }),
			})
			.optional(),
		{ title: "Drive places", whereToFind: `${page}, "drive bays".` },
	),
	hubUsesUsb2: fact(z.boolean().optional(), {
		title: "Its hub takes a 9-pin USB header",
		whereToFind: "The hub's cables.",
	}),
});
export type PcCase = z.infer<typeof pcCase>;
