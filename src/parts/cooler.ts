import * as z from "zod";
import { amount, count, fact, line } from "./fact.ts";
import { partBasics } from "./part-basics.ts";

const page = "The cooler maker's page";

export const cooler = z.strictObject({
	...partBasics,
	kind: fact(z.enum(["air", "liquid"]).optional(), { title: "Kind (air or liquid)", whereToFind: page }),
	kits: fact(
		z
			.array(
				z.strictObject({
					socket: fact(line(40), { title: "Socket", whereToFind: `${page}, "compatibility".` }),
					how: fact(z.enum(["in the box", "on request", "bought"]), { title: "How the kit comes", whereToFind: page }),
				}),
			)
			.max(40)
			.optional(),
		{ title: "Mounting kits", whereToFind: `${page}, "compatibility" or "sockets".` },
	),
	needsBoardBackPlate: fact(z.boolean().optional(), {
		title: "Uses the board's own plate or brackets",
		whereToFind: "Its manual, first pages.",
	}),
	heightMm: fact(amount(15, 400).optional(), { title: "Height", unit: "mm", whereToFind: `${page}, "dimensions".` }),
	overMemoryMm: fact(amount(0, 200).optional(), {
		title: "From socket's centre towards memory",
		unit: "mm",
		whereToFind: "Its drawing.",
	}),
	overSlotMm: fact(amount(0, 200).optional(), {
		title: "From socket's centre towards first slot",
		unit: "mm",
		whereToFind: "Its drawing.",
	}),
	memoryRoomMm: fact(amount(0, 200).optional(), {
		title: "Room below it for memory",
		unit: "mm",
		whereToFind: `${page}, "RAM clearance".`,
	}),
	publishedW: fact(amount(5, 1500).optional(), {
		title: "Watts its maker says it cools",
		unit: "W",
		whereToFind: `${page}; makers rate this in different ways.`,
	}),
	radiatorMm: fact(count(80, 600).optional(), { title: "Radiator length", unit: "mm", whereToFind: page }),
	radiatorThicknessMm: fact(amount(10, 150).optional(), { title: "Radiator with fans", unit: "mm", whereToFind: page }),
	fans: fact(count(0, 12).optional(), { title: "Fans", whereToFind: page }),
	headersUsed: fact(
		z
			.strictObject({
				fan: fact(count(0, 12).optional(), { title: "Fan headers", whereToFind: "Its cables." }),
				pump: fact(count(0, 4).optional(), { title: "Pump headers", whereToFind: "Its cables." }),
				usb2: fact(count(0, 4).optional(), { title: "9-pin USB headers", whereToFind: "Its cables." }),
				lights5V: fact(count(0, 8).optional(), { title: "5 V lighting headers", whereToFind: "Its cables." }),
				lights12V: fact(count(0, 8).optional(), { title: "12 V lighting headers", whereToFind: "Its cables." }),
			})
			.optional(),
		{ title: "Headers it takes", whereToFind: "Its cables." },
	),
	weightG: fact(amount(20, 5000).optional(), { title: "Weight", unit: "g", whereToFind: page }),
});
export type Cooler = z.infer<typeof cooler>;
