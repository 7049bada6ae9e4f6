import * as z from "zod";
import { amount, count, fact } from "./fact.ts";
import { partBasics } from "./part-basics.ts";

const label = "The label at the fan's hub, or its maker's page";

export const fanSet = z.strictObject({
	...partBasics,
	sizeMm: fact(count(40, 300).optional(), { title: "Size", unit: "mm", whereToFind: label }),
	count: fact(count(1, 20).optional(), { title: "Fans in the set", whereToFind: "The box." }),
	amps: fact(amount(0.01, 5).optional(), { title: "Current of one fan", unit: "A", whereToFind: label }),
	startAmps: fact(amount(0.01, 8).optional(), {
		title: "Current of one fan at its start",
		unit: "A",
		whereToFind: label,
	}),
	plug: fact(z.enum(["3-pin", "4-pin"]).optional(), { title: "Plug", whereToFind: "Count its holes." }),
	lightVolts: fact(z.union([z.literal(5), z.literal(12)]).optional(), {
		title: "Voltage of its lights",
		unit: "V",
		whereToFind: "The second plug: three holes are 5 V, four are 12 V.",
	}),
	hubUsesUsb2: fact(z.boolean().optional(), { title: "Its hub takes a 9-pin USB header", whereToFind: "Its cables." }),
});
