import * as z from "zod";
import { count, fact } from "./fact.ts";
import { partBasics } from "./part-basics.ts";
import { pictureSockets } from "./vocabulary.ts";

export const monitor = z.strictObject({
	...partBasics,
	sockets: fact(z.array(z.enum(pictureSockets)).max(8).optional(), {
		title: "Picture sockets",
		whereToFind: "The back of the screen, by the shape of the plug.",
	}),
	columns: fact(count(320, 20000).optional(), {
		title: "Dots from side to side",
		whereToFind: "Its page, the first figure.",
	}),
	lines: fact(count(200, 12000).optional(), {
		title: "Dots from top to bottom",
		whereToFind: "Its page, the second figure.",
	}),
	hz: fact(count(20, 1000).optional(), { title: "Pictures a second", unit: "Hz", whereToFind: "Its page." }),
});
