import * as z from "zod";
import { count, fact, line } from "./fact.ts";

const footnotes = "The footnotes below the slots and storage rows of the board maker's page.";
const named = (title: string) => fact(line(40), { title, whereToFind: footnotes });

/** One way to use a sharing group: which connectors are on, with how many lanes (1 for a drive port). Others are off. */
const sharingMode = z.strictObject({
	on: z.record(line(40), count(1, 16)),
});

const sharingGroup = z.strictObject({
	members: fact(z.array(line(40)).min(2).max(24), { title: "Connectors that share", whereToFind: footnotes }),
	modes: fact(z.array(sharingMode).min(1).max(24), { title: "Ways it can be used", whereToFind: footnotes }),
	onlyWithSata: fact(z.array(line(40)).min(1).max(24).optional(), {
		title: "Share only with a SATA drive in them",
		whereToFind: footnotes,
	}),
});

const condition = z.strictObject({
	when: fact(
		z.strictObject({
			processorSeries: z.array(line(60)).min(1).max(40).optional(),
			processorGenerations: z.array(line(60)).min(1).max(40).optional(),
			processorGraphics: z.boolean().optional(),
		}),
		{ title: "With which processors", whereToFind: footnotes },
	),
	connector: named("Connector"),
	wiredLanes: fact(count(0, 16).optional(), { title: "Lanes it then has", whereToFind: footnotes }),
	generation: fact(count(1, 7).optional(), { title: "PCI Express generation it then has", whereToFind: footnotes }),
	dead: fact(z.boolean().optional(), { title: "Does not work then", whereToFind: footnotes }),
});

/** What a spec page hides in footnotes: connectors that switch each other off, and limits by processor. */
export const boardSharing = {
	sharing: fact(z.array(sharingGroup).max(24).optional(), {
		title: "Connectors that share lanes",
		whereToFind: footnotes,
	}),
	conditions: fact(z.array(condition).max(60).optional(), {
		title: "Limits with some processors",
		whereToFind: footnotes,
	}),
};
