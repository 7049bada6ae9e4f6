import * as z from "zod";
import { date, fact, line } from "./fact.ts";
import { money } from "./money.ts";

export const conditions = ["new", "opened", "used"] as const;

/** One way to buy a part: what it costs where, in which condition, and until when it can go back. */
export const offer = z.strictObject({
	price: fact(money, { title: "Price asked", whereToFind: "The shop's page or the seller's advertisement." }),
	condition: fact(z.enum(conditions), {
		title: "Condition",
		whereToFind: "The shop's page: new, opened (returned by somebody) or used.",
	}),
	seller: fact(line().optional(), { title: "Seller", whereToFind: "The shop's page." }),
	seenOn: fact(date().optional(), { title: "Seen on", whereToFind: "The day you read the price." }),
	returnableUntil: fact(date().optional(), {
		title: "Can go back until",
		whereToFind: "The shop's return terms, counted from the day it arrives.",
	}),
});
