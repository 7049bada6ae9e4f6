import * as z from "zod";
import { fact, line } from "./fact.ts";
import { partBasics } from "./part-basics.ts";

const table = "The chipset or processor maker's page on which processors a chipset serves";

const servedGeneration = z.strictObject({
	generation: fact(line(60), { title: "Processor generation", whereToFind: table }),
	served: fact(z.enum(["yes", "from firmware", "no"]), { title: "Works", whereToFind: table }),
	startsFrom: fact(line(40).optional(), {
		title: "Firmware it starts with",
		whereToFind: "The board's processor list, on its maker's support page.",
	}),
	safeFrom: fact(line(40).optional(), {
		title: "Firmware that protects it",
		whereToFind: "The maker's notices; before it no memory profile and no heavy load.",
	}),
});

/** What one chipset does on one socket: which processor generations it serves, and what it lets be raised. */
export const platform = z.strictObject({
	id: partBasics.id,
	name: partBasics.name,
	invented: partBasics.invented,
	socket: fact(line(40), { title: "Socket", whereToFind: table }),
	chipset: fact(line(60), { title: "Chipset", whereToFind: table }),
	generations: fact(z.array(servedGeneration).min(1).max(40), { title: "Processor generations", whereToFind: table }),
	dropsOlderFrom: fact(
		z
			.array(
				z.strictObject({
					generation: fact(line(60), { title: "Processor generation dropped", whereToFind: table }),
					version: fact(line(40), {
						title: "Dropped from this firmware on",
						whereToFind: "The board's firmware notes.",
					}),
				}),
			)
			.max(40)
			.optional(),
		{ title: "Newer firmware drops older processors", whereToFind: "The board's firmware notes." },
	),
	raises: fact(
		z
			.strictObject({
				processorClock: fact(z.boolean().optional(), { title: "Processor clock can be raised", whereToFind: table }),
				memoryRate: fact(z.boolean().optional(), { title: "Memory rate can be raised", whereToFind: table }),
			})
			.optional(),
		{ title: "Speeds that can be raised", whereToFind: table },
	),
	evidence: partBasics.evidence,
});
export type Platform = z.infer<typeof platform>;
