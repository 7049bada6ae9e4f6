import * as z from "zod";
import { date, line } from "./fact.ts";

/**
 * How a fact came to be known. "stated": a page, a label or the maker says so. "assumed": it follows from a standard
 * that the page names. A fact that is not known has no key at all.
 */
export const evidence = z.strictObject({
	standing: z.enum(["stated", "assumed"]),
	quote: line(400).optional(),
	where: line(400).optional(),
	date: date().optional(),
	by: line().optional(),
});
