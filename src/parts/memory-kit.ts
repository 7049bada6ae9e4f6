import * as z from "zod";
import { amount, count, fact } from "./fact.ts";
import { partBasics } from "./part-basics.ts";
import { memoryForms, memoryTypes } from "./vocabulary.ts";

const label = "The label on the module, or the shop's page";

export const memoryKit = z.strictObject({
	...partBasics,
	type: fact(z.enum(memoryTypes).optional(), { title: "Memory type", whereToFind: `${label}: DDR4, DDR5.` }),
	form: fact(z.enum(memoryForms).optional(), {
		title: "Module shape (form)",
		whereToFind: `${label}: DIMM is long, SO-DIMM is for laptops.`,
	}),
	modules: fact(count(1, 32).optional(), { title: "Modules", whereToFind: 'The pack: "2 x 16 GB" is two modules.' }),
	gbPerModule: fact(amount(0.25, 1024).optional(), { title: "Size of one module", unit: "GB", whereToFind: label }),
	mtPerS: fact(count(400, 20000).optional(), {
		title: "Rate on the label",
		unit: "MT/s",
		whereToFind: `${label}, often as MHz. It may be a profile above the standard rate.`,
	}),
	standardMtPerS: fact(count(400, 20000).optional(), {
		title: "Rate without a profile",
		unit: "MT/s",
		whereToFind: "The maker's page, JEDEC or default rate.",
	}),
	ranks: fact(count(1, 8).optional(), { title: "Ranks a module (1R, 2R)", whereToFind: `${label}: 1Rx8, 2Rx8.` }),
	errorCorrection: fact(z.enum(["none", "on-chip", "full"]).optional(), {
		title: "Error correction",
		whereToFind: `${label}: ECC is full; every DDR5 chip has on-chip correction, which is not the same.`,
	}),
	registered: fact(z.boolean().optional(), { title: "Registered", whereToFind: `${label}: RDIMM, "registered".` }),
	heightMm: fact(amount(15, 100).optional(), { title: "Height", unit: "mm", whereToFind: "The maker's page." }),
});
export type MemoryKit = z.infer<typeof memoryKit>;
