import * as z from "zod";
import { boardCare } from "./board-care.ts";
import { boardConnectors } from "./board-connectors.ts";
import { powerDelivery } from "./board-power-delivery.ts";
import { boardSharing } from "./board-sharing.ts";
import { amount, count, fact, line } from "./fact.ts";
import { memoryRate } from "./memory-rate.ts";
import { partBasics } from "./part-basics.ts";
import { boardForms, holeLetters, memoryForms, memoryTypes } from "./vocabulary.ts";

const page = "The board maker's page, specifications";

const boardMemory = z.strictObject({
	type: fact(z.enum(memoryTypes).optional(), {
		title: "Memory type",
		whereToFind: `${page}, "memory": DDR4 and DDR5 do not interchange.`,
	}),
	form: fact(z.enum(memoryForms).optional(), { title: "Module shape (form)", whereToFind: `${page}, "memory".` }),
	slots: fact(count(0, 32).optional(), {
		title: "Memory slots",
		whereToFind: `${page}, "memory": 2 x DIMM, 4 x DIMM.`,
	}),
	channels: fact(count(1, 16).optional(), { title: "Memory channels", whereToFind: `${page}, "dual channel" is two.` }),
	maxGb: fact(count(1, 16384).optional(), { title: "Most memory", unit: "GB", whereToFind: `${page}, "max memory".` }),
	maxGbPerModule: fact(count(1, 1024).optional(), {
		title: "Largest module",
		unit: "GB",
		whereToFind: `${page} or the memory list.`,
	}),
	rates: fact(z.array(memoryRate).max(24).optional(), {
		title: "Memory rates by modules a channel",
		whereToFind: "The manual or the memory list: rates with one and with two modules a channel.",
	}),
	highestMtPerS: fact(count(400, 20000).optional(), {
		title: "Highest rate with a memory profile",
		unit: "MT/s",
		whereToFind: `${page}, the highest rate named, often marked OC.`,
	}),
	errorCorrection: fact(z.boolean().optional(), {
		title: "Error-correcting memory works",
		whereToFind: `${page} or manual, "ECC supported"; "on-chip" correction is not it.`,
	}),
	registered: fact(z.boolean().optional(), {
		title: "Takes registered modules",
		whereToFind: `${page}, "RDIMM"; ordinary boards take unbuffered modules only.`,
	}),
	slotOrder: fact(z.record(z.string().regex(/^\d{1,2}$/), z.array(line(20)).max(32)).optional(), {
		title: "Slots to fill for each number of modules",
		whereToFind: "The manual's memory page, such as two modules in A2 and B2.",
	}),
});

export const board = z.strictObject({
	...partBasics,
	socket: fact(line(40).optional(), {
		title: "Socket",
		whereToFind: `${page}, "CPU" or "socket": the name of the place the processor sits in.`,
	}),
	chipset: fact(line(60).optional(), { title: "Chipset", whereToFind: `${page}, "chipset"; often part of the name.` }),
	chipsetUplink: fact(
		z
			.strictObject({
				lanes: fact(count(1, 16), {
					title: "Lanes from chipset to processor",
					whereToFind: "The chipset maker's page.",
				}),
				generation: fact(count(1, 7), {
					title: "PCI Express generation of that link",
					whereToFind: "The chipset maker's page.",
				}),
			})
			.optional(),
		{ title: "Link from chipset to processor", whereToFind: "The chipset maker's page." },
	),
	raises: fact(
		z
			.strictObject({
				processorClock: fact(z.boolean().optional(), {
					title: "Lets the processor's clock be raised",
					whereToFind: "The chipset maker's page, overclocking.",
				}),
				memoryRate: fact(z.boolean().optional(), {
					title: "Lets the memory rate be raised",
					whereToFind: "The chipset maker's page, memory overclocking.",
				}),
			})
			.optional(),
		{ title: "Speeds that can be raised", whereToFind: "The chipset maker's page." },
	),
	form: fact(z.enum(boardForms).optional(), {
		title: "Board size (form)",
		whereToFind: `${page}, "form factor": ATX, microATX, Mini-ITX.`,
	}),
	widthMm: fact(amount(80, 500).optional(), {
		title: "Width along the back edge",
		unit: "mm",
		whereToFind: `${page}, "form factor"; of the two figures the side the sockets stand on is 305, 244 or 170.`,
	}),
	depthMm: fact(amount(80, 500).optional(), {
		title: "Depth from back edge to front edge",
		unit: "mm",
		whereToFind: `${page}, "form factor", the other of the two figures.`,
	}),
	holes: fact(z.array(z.enum(holeLetters)).max(12).optional(), {
		title: "Screw holes",
		whereToFind: "The manual's drawing; letters as in the ATX and microATX specifications.",
	}),
	connectorsOnBack: fact(z.boolean().optional(), {
		title: "Plugs on the back of the board",
		whereToFind: `${page}: said loudly where it is so; the case needs cut-outs for it.`,
	}),
	connectorsOnBackPattern: fact(line(60).optional(), {
		title: "Pattern of the plugs on the back",
		whereToFind: `${page}: the name that the case's page must repeat.`,
	}),
	layout: fact(
		z
			.strictObject({
				memoryFromSocketMm: fact(amount(10, 200).optional(), {
					title: "Socket's centre to first memory slot",
					unit: "mm",
					whereToFind: "Measure on the manual's drawing.",
				}),
				firstSlotFromSocketMm: fact(amount(10, 250).optional(), {
					title: "Socket's centre to first card slot",
					unit: "mm",
					whereToFind: "Measure on the manual's drawing.",
				}),
				ownBackPlate: fact(z.boolean().optional(), {
					title: "Has its own cooler plate or brackets",
					whereToFind: "Pictures of the board and of its back.",
				}),
			})
			.optional(),
		{ title: "Distances from the socket", whereToFind: "The manual's drawing." },
	),
	memory: fact(boardMemory.optional(), { title: "Memory", whereToFind: `${page}, "memory".` }),
	...boardConnectors,
	...boardSharing,
	powerDelivery: fact(powerDelivery.optional(), {
		title: "Power delivery to the processor",
		whereToFind: "Published tests with pictures of the bare board; spec pages seldom say.",
	}),
	...boardCare,
	inTheBox: fact(z.array(line()).max(60).optional(), {
		title: "What is in the box",
		whereToFind: `${page}, "accessories": back plate, aerials, drive cables, screws for M.2.`,
	}),
});
export type Board = z.infer<typeof board>;
