import * as z from "zod";
import { amount, count, fact } from "./fact.ts";
import { partBasics } from "./part-basics.ts";
import { linkGenerations, pictureSockets } from "./vocabulary.ts";

const page = "The card maker's page, specifications";

export const graphicsPowerPlugs = ["6-pin", "8-pin", "12V-2x6"] as const;

export const graphicsCard = z.strictObject({
	...partBasics,
	lengthMm: fact(amount(50, 600).optional(), { title: "Length", unit: "mm", whereToFind: `${page}, "dimensions".` }),
	thicknessMm: fact(amount(5, 200).optional(), {
		title: "Thickness",
		unit: "mm",
		whereToFind: `${page}, "dimensions", the smallest figure.`,
	}),
	heightMm: fact(amount(30, 300).optional(), { title: "Height from the slot", unit: "mm", whereToFind: page }),
	bracketSlots: fact(count(1, 6).optional(), {
		title: "Slots its metal bracket takes",
		whereToFind: "Pictures; a card of 3.5 slots may have a bracket of two.",
	}),
	weightG: fact(amount(50, 10000).optional(), { title: "Weight", unit: "g", whereToFind: page }),
	lanes: fact(count(1, 16).optional(), { title: "Lanes it uses", whereToFind: `${page}, "interface".` }),
	leastLanes: fact(count(1, 16).optional(), { title: "Fewest lanes it works with", whereToFind: page }),
	generation: fact(count(linkGenerations.least, linkGenerations.most).optional(), {
		title: "PCI Express generation",
		whereToFind: `${page}, "interface".`,
	}),
	powerPlugs: fact(z.array(z.enum(graphicsPowerPlugs)).max(4).optional(), {
		title: "Power plugs",
		whereToFind: `${page}, or look at the card; the plug is never to be guessed from its watts.`,
	}),
	watts: fact(amount(5, 1500).optional(), { title: "Watts (board power)", unit: "W", whereToFind: page }),
	supplyAdvisedW: fact(amount(100, 3000).optional(), { title: "Supply advised", unit: "W", whereToFind: page }),
	pictureSockets: fact(z.array(z.enum(pictureSockets)).max(8).optional(), {
		title: "Picture sockets",
		whereToFind: page,
	}),
});
export type GraphicsCard = z.infer<typeof graphicsCard>;
