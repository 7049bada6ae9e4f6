import * as z from "zod";
import { amount, count, fact } from "./fact.ts";
import { partBasics } from "./part-basics.ts";

export const lighting = z.strictObject({
	...partBasics,
	volts: fact(z.union([z.literal(5), z.literal(12)]).optional(), {
		title: "Voltage",
		unit: "V",
		whereToFind: "Printed on the strip; 5 V in a 12 V header is destroyed.",
	}),
	lights: fact(count(1, 5000).optional(), { title: "How many lights", whereToFind: "The box." }),
	amps: fact(amount(0.01, 50).optional(), { title: "Current at full white", unit: "A", whereToFind: "The box." }),
	plug: fact(z.enum(["5 V three-pin", "12 V four-pin", "maker's own"]).optional(), {
		title: "Plug",
		whereToFind: "Look at it; a plug of the maker's own needs the maker's controller.",
	}),
	usesUsb2: fact(z.boolean().optional(), { title: "Takes a 9-pin USB header", whereToFind: "Its cables." }),
});
