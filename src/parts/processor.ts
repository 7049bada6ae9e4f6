import * as z from "zod";
import { amount, count, fact, line } from "./fact.ts";
import { memoryRate } from "./memory-rate.ts";
import { partBasics } from "./part-basics.ts";
import { linkGenerations, memoryTypes } from "./vocabulary.ts";

const page = "The processor maker's page for this processor";

/** How its watts behave over time, which the label watts alone do not tell. */
export const limitPolicies = ["fixed", "timed-boost", "lifted-by-board", "enforced-by-firmware"] as const;

export const processor = z.strictObject({
	...partBasics,
	socket: fact(line(40).optional(), {
		title: "Socket",
		whereToFind: `${page}, "socket" or "package"; it is also printed on the processor's box.`,
	}),
	generation: fact(line(60).optional(), {
		title: "Generation by name",
		whereToFind: `${page}, "generation", "series" or "code name".`,
	}),
	series: fact(line(60).optional(), {
		title: "Series by name",
		whereToFind: `${page}; boards' footnotes name the series when slots work differently with some processors.`,
	}),
	cores: fact(count(1, 512).optional(), { title: "Cores", whereToFind: `${page}, "cores".` }),
	threads: fact(count(1, 1024).optional(), { title: "Threads", whereToFind: `${page}, "threads".` }),
	baseGhz: fact(amount(0.3, 12).optional(), {
		title: "Base clock",
		unit: "GHz",
		whereToFind: `${page}, "base clock" or "base frequency"; where it has two kinds of cores, that of the performance cores.`,
	}),
	boostGhz: fact(amount(0.3, 12).optional(), {
		title: "Highest clock",
		unit: "GHz",
		whereToFind: `${page}, "boost clock" or "turbo frequency"; the highest figure there.`,
	}),
	unlocked: fact(z.boolean().optional(), {
		title: "Clock can be raised",
		whereToFind: `${page}, "unlocked" or "overclocking".`,
	}),
	graphics: fact(z.boolean().optional(), {
		title: "Has graphics of its own",
		whereToFind: `${page}, "graphics" or "integrated graphics".`,
	}),
	coolerInBox: fact(z.boolean().optional(), {
		title: "Cooler in the box",
		whereToFind: `${page}, "thermal solution" or "cooler included".`,
	}),
	baseW: fact(amount(1, 1000).optional(), {
		title: "Base power (label watts)",
		unit: "W",
		whereToFind: `${page}, "base power" or "TDP".`,
	}),
	sustainedW: fact(amount(1, 1500).optional(), {
		title: "Power held for hours",
		unit: "W",
		whereToFind: "A published test of hours of full load; the label watts are not it.",
	}),
	peakW: fact(amount(1, 2000).optional(), {
		title: "Highest power",
		unit: "W",
		whereToFind: `${page}, "maximum turbo power" or "peak power"; else a published test.`,
	}),
	averagingS: fact(amount(0.001, 1000).optional(), {
		title: "Averaging time of the power limit",
		unit: "s",
		whereToFind: "The processor's data sheet, Tau.",
	}),
	limitPolicy: fact(z.enum(limitPolicies).optional(), {
		title: "How its power limit behaves",
		whereToFind: "Published tests: whether boards lift the limit, and whether newer firmware enforces it again.",
	}),
	hottestC: fact(amount(40, 130).optional(), {
		title: "Temperature at which it holds back",
		unit: "degrees C",
		whereToFind: `${page}, "maximum temperature" or "TJ max".`,
	}),
	memory: fact(
		z
			.strictObject({
				types: fact(z.array(z.enum(memoryTypes)).min(1).max(4).optional(), {
					title: "Memory types",
					whereToFind: `${page}, "memory types".`,
				}),
				channels: fact(count(1, 16).optional(), { title: "Memory channels", whereToFind: `${page}, "channels".` }),
				maxGb: fact(count(1, 16384).optional(), {
					title: "Most memory",
					unit: "GB",
					whereToFind: `${page}, "max memory size".`,
				}),
				errorCorrection: fact(z.boolean().optional(), {
					title: "Error-correcting memory works",
					whereToFind: `${page}, "ECC".`,
				}),
				rates: fact(z.array(memoryRate).max(24).optional(), {
					title: "Memory rates by modules a channel",
					whereToFind: "The processor's data sheet, table of memory support (1 DPC, 2 DPC).",
				}),
			})
			.optional(),
		{ title: "Memory", whereToFind: `${page}, "memory".` },
	),
	lanes: fact(
		z
			.strictObject({
				graphics: fact(count(0, 128).optional(), {
					title: "Lanes for the graphics card",
					whereToFind: `${page}, "PCI Express configurations".`,
				}),
				storage: fact(count(0, 128).optional(), {
					title: "Lanes for M.2 drives",
					whereToFind: `${page}, "PCI Express configurations".`,
				}),
				uplink: fact(count(0, 16).optional(), {
					title: "Lanes to the chipset",
					whereToFind: `${page} or the data sheet.`,
				}),
				generation: fact(count(linkGenerations.least, linkGenerations.most).optional(), {
					title: "PCI Express generation",
					whereToFind: `${page}, "PCI Express revision".`,
				}),
			})
			.optional(),
		{ title: "PCI Express lanes", whereToFind: `${page}, "PCI Express".` },
	),
});
export type Processor = z.infer<typeof processor>;
