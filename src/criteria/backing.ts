import { defineCriterion, type Measure } from "./define-criterion.ts";

/** Years a board is kept where nobody has said (own convention). */
const usualYears = 5;
/** What makers give where the page is silent (common practice, no source). */
const usualWarranty = { least: 2, most: 5 };

/** How many of the years one wants to keep the board its maker's warranty leaves open. */
export const backing = defineCriterion({
	id: "backing",
	name: "the maker's warranty",
	asks: "How much would paying for a failed board yourself bother you?",
	why: "Boards seldom fail, but when one does the whole computer stands still. Within the warranty the maker pays.",
	ends: {
		worst: "most of the years you keep it are without a warranty",
		best: "the maker pays in all the years you want to keep it",
	},
	unit: "years without warranty",
	scale: [
		[0, 1],
		[2, 0.7],
		[5, 0],
	],
	source: "own-convention",
	grounds: "Most early faults show within three years; two open years at the end cost little, five cost all.",
	reads: ["board.warrantyYears", "yearsKept"],
	measure({ "board.warrantyYears": warranty, yearsKept = usualYears }): Measure {
		const open = (years: number) => Math.max(0, yearsKept - years);
		if (warranty !== undefined) return { low: open(warranty), high: open(warranty), missing: [] };
		const [low, high] = [open(usualWarranty.most), open(usualWarranty.least)];
		return { low, high, missing: ["board.warrantyYears"] };
	},
	says: ({ low, high, missing }) => {
		if (low !== high || missing.length > 0) return "how long its warranty lasts is not known";
		if (low === 0) return "its warranty covers all the years you want to keep it";
		return `${low} of the years you want to keep it ${low === 1 ? "is" : "are"} without warranty`;
	},
});
