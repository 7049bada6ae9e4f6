import * as z from "zod";
import { amount, count, fact } from "./fact.ts";
import { partBasics } from "./part-basics.ts";
import { processorPlugs, supplyForms } from "./vocabulary.ts";

const cables = 'The cables of the supply, or its maker\'s page, "connectors"';

export const supply = z.strictObject({
	...partBasics,
	watts: fact(amount(20, 3000).optional(), {
		title: "Watts on the label",
		unit: "W",
		whereToFind: "The label on its side.",
	}),
	twelveVoltA: fact(amount(1, 300).optional(), {
		title: "Current at 12 V",
		unit: "A",
		whereToFind: "The label on its side; several 12 V rails are not added up.",
	}),
	form: fact(z.enum(supplyForms).optional(), { title: "Shape (form)", whereToFind: "The maker's page." }),
	lengthMm: fact(amount(50, 400).optional(), { title: "Length", unit: "mm", whereToFind: "The maker's page." }),
	mainPlug: fact(z.enum(["24-pin", "20+4-pin", "20-pin", "10-pin 12 V only"]).optional(), {
		title: "Main plug",
		whereToFind: cables,
	}),
	processorPlugs: fact(z.array(z.enum(processorPlugs)).max(6).optional(), {
		title: "Processor plugs",
		whereToFind: `${cables}: "4+4 pin CPU" is one 8-pin. Graphics plugs look alike but must not be used.`,
	}),
	graphics8Pin: fact(count(0, 16).optional(), { title: "Graphics plugs 6+2-pin", whereToFind: cables }),
	native12V2x6: fact(
		z
			.array(
				z.strictObject({
					watts: fact(amount(75, 600), { title: "Watts", unit: "W", whereToFind: "Printed at the plug." }),
				}),
			)
			.max(4)
			.optional(),
		{ title: "12V-2x6 leads", whereToFind: cables },
	),
	sataPlugs: fact(count(0, 30).optional(), { title: "SATA power plugs", whereToFind: cables }),
	drivePlugs: fact(count(0, 20).optional(), { title: "4-pin drive plugs", whereToFind: cables }),
	bornIn: fact(count(1995, 2100).optional(), { title: "Year it was made", whereToFind: "The label on its side." }),
});
export type Supply = z.infer<typeof supply>;
