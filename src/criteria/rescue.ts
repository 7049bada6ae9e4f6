import { defineCriterion, type Measure } from "./define-criterion.ts";

const aids = [
	"board.recovery.flashWithoutProcessor",
	"board.recovery.faultDisplay",
	"board.recovery.resetAtBack",
] as const;

const aidWords: Readonly<Record<(typeof aids)[number], string>> = {
	"board.recovery.flashWithoutProcessor": "the update without a processor",
	"board.recovery.faultDisplay": "the lights that name a fault",
	"board.recovery.resetAtBack": "the reset button at the back",
};

/** What makes building easier or mends a failed update; each counts so much of an aid (own convention). */
const smallHelps = ["board.recovery.backPlateFixed", "board.m2WithoutTools", "board.recovery.secondFirmware"] as const;
const smallHelpCounts = 0.2;

/**
 * What helps a first-time builder: three aids for a first start that goes wrong, and small helps with the building. A
 * start button on the board is left out: in the case the button of the case does the same.
 */
export const rescue = defineCriterion({
	id: "rescue",
	name: "help at the first start",
	asks: "How much would a silent, failed first start bother you?",
	why: "A display says what is wrong. New firmware goes in without a processor. A reset button saves opening the case. Each saves hours, and parts that are fitted already save minutes.",
	ends: {
		worst: "nothing tells you why the computer stays dark",
		best: "the board says what is wrong, updates itself and resets from outside",
	},
	unit: "aids",
	scale: [
		[0, 0],
		[1, 0.6],
		[2, 0.9],
		[3, 1],
	],
	source: "common-practice",
	grounds:
		"The first aid saves the most time; the third seldom matters beside the other two. A fitted back shield, M.2 sockets without tools and a second firmware chip count a fifth of an aid each. From three on more is worth nothing.",
	reads: [...aids, ...smallHelps],
	measure(facts): Measure {
		const answers = [
			facts["board.recovery.flashWithoutProcessor"],
			facts["board.recovery.faultDisplay"] === undefined ? undefined : facts["board.recovery.faultDisplay"] !== "none",
			facts["board.recovery.resetAtBack"],
		];
		const helps = [
			facts["board.recovery.backPlateFixed"],
			facts["board.m2WithoutTools"] === undefined ? undefined : facts["board.m2WithoutTools"] > 0,
			facts["board.recovery.secondFirmware"],
		];
		const count = (of: readonly (boolean | undefined)[], value: boolean | undefined) =>
			of.filter((answer) => answer === value).length;
		// In tenths, so that no sum is a hair beside a whole number.
		const points = (whole: number, small: number) => (10 * whole + 10 * smallHelpCounts * small) / 10;
		const [sure, open] = [count(answers, true), count(answers, undefined)];
		const low = points(sure, count(helps, true));
		const high = points(sure + open, count(helps, true) + count(helps, undefined));
		const lacking = aids.filter((_, index) => answers[index] === false).map((aid) => aidWords[aid]);
		const lacks = lacking.length > 0 && lacking.length < aids.length ? `; it lacks ${lacking.join(" and ")}` : "";
		return {
			low,
			high,
			// Where all three aids are there, or all small helps change nothing, no more is worth finding out.
			missing:
				low >= aids.length
					? []
					: [
							...aids.filter((_, index) => answers[index] === undefined),
							...smallHelps.filter((_, index) => helps[index] === undefined),
						],
			note: `it has ${aidCount(sure, sure + open)} for a first start that goes wrong${lacks}`,
		};
	},
	says: ({ low, high, note }) =>
		note ??
		(low < high
			? "how much it helps with building and starting depends on what is not known"
			: "it helps in part with building and starting"),
});

function aidCount(least: number, most: number): string {
	if (least < most) return `${least} to ${most} of the ${aids.length} aids`;
	return most === aids.length ? `all ${aids.length} aids` : `${most === 0 ? "none" : most} of the ${aids.length} aids`;
}
