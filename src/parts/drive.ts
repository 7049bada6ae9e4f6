import * as z from "zod";
import { amount, count, fact } from "./fact.ts";
import { partBasics } from "./part-basics.ts";
import { linkGenerations } from "./vocabulary.ts";

const label = "The label on the drive, or its maker's page";

export const drive = z.strictObject({
	...partBasics,
	shape: fact(z.enum(["M.2", "2.5 inch", "3.5 inch"]).optional(), { title: "Shape", whereToFind: "Look at it." }),
	link: fact(z.enum(["PCI Express", "SATA", "IDE", "U.2"]).optional(), {
		title: "How it is connected",
		whereToFind: `${label}: NVMe means PCI Express; some M.2 drives are SATA.`,
	}),
	lengthMm: fact(count(16, 110).optional(), {
		title: "Length of an M.2 drive",
		unit: "mm",
		whereToFind: `${label}: 2280 is 80.`,
	}),
	key: fact(z.enum(["M", "B", "B+M"]).optional(), {
		title: "Key (notch) of an M.2 drive",
		whereToFind: "The notches at its edge.",
	}),
	lanes: fact(count(1, 16).optional(), { title: "Lanes", whereToFind: `${label}: PCIe 4.0 x4.` }),
	generation: fact(count(linkGenerations.least, linkGenerations.most).optional(), {
		title: "PCI Express generation",
		whereToFind: label,
	}),
	readMBytesPerS: fact(amount(1, 100000).optional(), { title: "Reading speed", unit: "MB/s", whereToFind: label }),
	gb: fact(amount(1, 1_000_000).optional(), { title: "Size", unit: "GB", whereToFind: label }),
	ownCooler: fact(z.boolean().optional(), { title: "Has a cooler of its own", whereToFind: "Look at it." }),
	system: fact(z.boolean().optional(), {
		title: "Holds a system to be moved over",
		whereToFind: "The computer it comes from.",
	}),
});
export type Drive = z.infer<typeof drive>;
