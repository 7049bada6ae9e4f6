import { defineRule } from "../define-rule.ts";
import { goodToKnow, type Outcome, pass } from "../outcome.ts";

/** A maker who has brought out no firmware for so long is done with the board: common practice, no source. */
const caredForYears = 2;

/** Whether the maker still mends this board's firmware. It counts against a board only where somebody looked. */
export const firmwareCare = defineRule({
	id: "quality/firmware-care",
	scope: "board",
	label: "Firmware kept up",
	wayOut: "a board whose firmware is no longer mended",
	asks: "Has the maker brought out firmware for this board in the last two years?",
	why: "Firmware is the program on the board that starts the computer. New versions mend faults and security gaps; one day no more come.",
	source: "common-practice",
	severity: "good-to-know",
	reads: [],
	mayRead: ["board.firmware.releases", "asOf"],
	saysNothing: ["notLooked"],
	messages: {
		notLooked: () => "Nobody has noted when its last firmware came out.",
		cared: ({ date }: { date: string }) => `Its last firmware came out on ${date}.`,
		old: ({ date, years }: { date: string; years: number }) =>
			`Its last firmware came out on ${date}, more than ${years} years ago.`,
	},
	advice: {
		old: () =>
			"It works as it is, but faults found from now on will hardly be mended. If that worries you, take a board with newer firmware.",
	},
	check({ "board.firmware.releases": releases = [], asOf }): Outcome {
		// ISO dates are in order as they are written.
		const date = releases
			.flatMap((release) => release.date ?? [])
			.toSorted()
			.at(-1);
		if (date === undefined || asOf === undefined) return pass("notLooked");
		const oldest = `${Number(asOf.slice(0, 4)) - caredForYears}${asOf.slice(4)}`;
		return date >= oldest ? pass("cared", { date }) : goodToKnow("old", { date, years: caredForYears });
	},
});
