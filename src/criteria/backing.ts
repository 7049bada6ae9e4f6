import type { FactsUnder } from "../parts/fact-path.ts";
import { defineCriterion, type Measure, type SmallScale } from "./define-criterion.ts";
import { type MeasuredPart, pointsScale, sumOfScales } from "./sum-of-scales.ts";

/** Years a board is kept where nobody has said (own convention). */
const usualYears = 5;
/** What makers give where the page is silent (common practice, no source). */
const usualWarranty = { least: 2, most: 5 };
/** From here on a longer warranty is worth no more (own convention). */
const ampleYears = 5;

const warranty: SmallScale = {
	name: "years of warranty, of five; kept for fewer years, fewer do",
	unit: "years",
	weight: 60,
	scale: [
		[0, 0],
		[2, 0.4],
		[3, 0.7],
		[5, 1],
	],
};
const firmware: SmallScale = {
	name: "years since its last firmware",
	unit: "years",
	weight: 25,
	scale: [
		[1, 1],
		[2, 0.8],
		[5, 0],
	],
};
const lists: SmallScale = {
	name: "published lists of what runs on it, of processors and of memory",
	unit: "lists",
	weight: 15,
	scale: [
		[0, 0],
		[1, 0.6],
		[2, 1],
	],
};

const listPaths = ["board.listsPublished.processors", "board.listsPublished.memory"] as const;
const reads = [
	"board.warrantyYears",
	"yearsKept",
	"board.firmware.releases",
	"asOf",
	"board.listsPublished.processors",
	"board.listsPublished.memory",
] as const;
type Facts = FactsUnder<never, (typeof reads)[number]>;

/**
 * How the maker stands behind the board: warranty, firmware, lists. How many versions of firmware came out is not
 * counted: many may tell of care, or of many faults.
 */
export const backing = defineCriterion({
	id: "backing",
	name: "the maker's backing",
	asks: "How much would a maker who no longer helps bother you?",
	why: "Boards seldom fail, but when one does the whole computer stands still. Within the warranty the maker pays, and new firmware mends what is found later.",
	ends: {
		worst: "a short warranty, and no new firmware for years",
		best: "the maker pays for years, and still brings out firmware",
	},
	unit: "points",
	scale: pointsScale,
	madeOf: [warranty, firmware, lists],
	source: "own-convention",
	grounds:
		"Most early faults show within three years, so a warranty of three counts 0.7, two 0.4, five all. Firmware of the last year counts all, as of two years ago 0.8. One list counts 0.6, both all. Warranty counts 60 of 100, firmware 25, lists 15.",
	reads,
	measure(facts): Measure {
		const parts = [warrantyOf(facts), firmwareOf(facts), listsOf(facts)].filter((part) => part !== null);
		const { "board.warrantyYears": years, yearsKept = usualYears } = facts;
		// One of what it lacks is enough for a sentence.
		const lacking = parts.flatMap(({ words }) => words ?? []).slice(0, 1);
		const ofWarranty =
			years === undefined
				? "how long its warranty lasts is not known"
				: years >= yearsKept
					? "its warranty covers all the years you want to keep it"
					: `its warranty lasts ${years} ${years === 1 ? "year" : "years"} of the ${yearsKept} you want to keep it`;
		return { ...sumOfScales(parts), note: [ofWarranty, ...lacking].join("; ") };
	},
	says: ({ low, high, note }) =>
		note ??
		(low < high ? "how its maker stands behind it depends on what is not known" : "its maker stands behind it in part"),
});

type SaidPart = MeasuredPart & { readonly words?: string };

/** Years of five; who keeps the board for fewer years than that needs as many fewer. */
function warrantyOf({ "board.warrantyYears": years, yearsKept = usualYears }: Facts): SaidPart {
	const kept = Math.max(1, Math.min(ampleYears, yearsKept));
	const ofFive = (given: number) => (Math.min(given, kept) * ampleYears) / kept;
	return years === undefined
		? {
				of: warranty,
				low: ofFive(usualWarranty.least),
				high: ofFive(usualWarranty.most),
				missing: ["board.warrantyYears"],
			}
		: { of: warranty, low: ofFive(years), high: ofFive(years), missing: [] };
}

/** Null where nobody knows what day it is. */
function firmwareOf({ "board.firmware.releases": releases = [], asOf }: Facts): SaidPart | null {
	if (asOf === undefined) return null;
	// ISO dates are in order as they are written.
	const date = releases
		.flatMap((release) => release.date ?? [])
		.toSorted()
		.at(-1);
	if (date === undefined) {
		const [low, high] = [firmware.scale[0]?.[0] ?? 0, firmware.scale.at(-1)?.[0] ?? 0];
		return { of: firmware, low, high, missing: ["board.firmware.releases"] };
	}
	const years = Math.max(0, yearOf(asOf) - yearOf(date));
	const words = years > 2 ? { words: `its last firmware came out on ${date}` } : {};
	return { of: firmware, low: years, high: years, missing: [], ...words };
}

/** An ISO date as a year and its part, such as 2026.5; to a day or two. */
function yearOf(isoDate: string): number {
	const [year = 0, month = 1, day = 1] = isoDate.split("-").map(Number);
	return year + (month - 1 + (day - 1) / 31) / 12;
}

function listsOf(facts: Facts): SaidPart {
	const missing = listPaths.filter((path) => facts[path] === undefined);
	const low = listPaths.filter((path) => facts[path] === true).length;
	const high = low + missing.length;
	return {
		of: lists,
		low,
		high,
		missing,
		...(high === 0 ? { words: "its maker publishes no list of what runs" } : {}),
	};
}
