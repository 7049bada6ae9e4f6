import * as z from "zod";
import { evidence } from "./evidence.ts";
import { date, fact, line } from "./fact.ts";
import { money } from "./money.ts";
import { offer } from "./offer.ts";

/** The facts that every part has, whatever its kind. */
export const partBasics = {
	id: fact(
		z
			.string()
			.regex(/^[a-z0-9][a-z0-9._-]{0,79}$/, "small letters, digits, dots, hyphens, at most 80, such as my-board-1"),
		{ title: "Short name in files", whereToFind: "Your own choice; it must not be used twice." },
	),
	name: fact(line(), { title: "Name", whereToFind: "As the box, the label or the shop's page prints it." }),
	maker: fact(line().optional(), { title: "Maker", whereToFind: "The box or the label." }),
	revision: fact(line(40).optional(), {
		title: "Revision",
		whereToFind: "Printed on the part or its box, often as rev. 1.0; two revisions can differ in what is fitted.",
	}),
	invented: fact(z.boolean().optional(), {
		title: "Invented for the demonstration",
		whereToFind: "Only the demonstration market sets this.",
	}),
	price: fact(money.optional(), { title: "Price", whereToFind: "A shop you would buy from, with postage." }),
	checkedOn: fact(date().optional(), { title: "Price seen on", whereToFind: "The day you read the price." }),
	offers: fact(z.array(offer).max(50).optional(), {
		title: "Offers",
		whereToFind: "Shops' pages and advertisements, opened and used ones too.",
	}),
	warrantyYears: fact(z.number().min(0).max(25).optional(), {
		title: "Warranty",
		unit: "years",
		whereToFind: "The maker's warranty page for your country.",
	}),
	colour: fact(line(40).optional(), { title: "Colour", whereToFind: "The shop's pictures." }),
	lit: fact(z.boolean().optional(), { title: "Has lights of its own", whereToFind: "The shop's pictures or page." }),
	evidence: fact(z.record(line(200), evidence).optional(), {
		title: "Where each fact was read",
		whereToFind: "Kept by the program: fact path to quote, place and date.",
	}),
};
