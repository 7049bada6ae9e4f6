import { wishRule } from "../wish-rule.ts";

const leastYears = 3;

/** The wish for a warranty that outlasts the first faults. */
export const warranty = wishRule({
	id: "quality/warranty",
	label: "Warranty",
	wayOut: "a shorter warranty",
	asks: "Does the maker stand behind the board for three years?",
	why: "A board is hard to repair. What fails in the third year is replaced or paid for.",
	source: "common-practice",
	severity: "stops",
	reads: ["board.warrantyYears"],
	has: ({ "board.warrantyYears": years }) =>
		years === undefined ? undefined : { has: years >= leastYears, data: { years } },
	words: {
		notAsked: "You have not asked for a long warranty",
		has: ({ years }) => `Its warranty is ${years} years`,
		lacks: ({ years }) => `Its warranty is ${yearsWords(Number(years))} and not ${leastYears}`,
		whether: `its warranty is at least ${leastYears} years`,
		need: `A maker's warranty of at least ${leastYears} years`,
	},
	advice: "Ask the shop as well: some give more years than the maker.",
});

function yearsWords(years: number): string {
	return years === 1 ? "1 year" : `${years} years`;
}
