import * as z from "zod";
import { count, fact } from "./fact.ts";
import { memoryTypes } from "./vocabulary.ts";

/** One row of a table "so many modules a channel run at this rate". */
export const memoryRate = z.strictObject({
	type: fact(z.enum(memoryTypes).optional(), { title: "Memory type", whereToFind: "The table's head." }),
	modulesPerChannel: fact(count(1, 4), {
		title: "Modules a channel",
		whereToFind: "The table's 1 DPC, 2 DPC columns.",
	}),
	ranks: fact(count(1, 8).optional(), { title: "Ranks a module (1R, 2R)", whereToFind: "The table's 1R, 2R rows." }),
	mtPerS: fact(count(400, 20000), { title: "Memory rate", unit: "MT/s", whereToFind: "The table's figures." }),
});
