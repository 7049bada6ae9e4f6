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

/** What helps a first-time builder when the first start goes wrong: three aids, counted. */
export const rescue = defineCriterion({
	id: "rescue",
	name: "help when it does not start",
	asks: "How much would a silent, failed first start bother you?",
	why: "A display says what is wrong. New firmware goes in without a processor. A reset button saves opening the case. Each saves hours.",
	ends: {
		worst: "nothing tells you why it stays dark",
		best: "the board says what is wrong, updates itself and resets from outside",
	},
	unit: "aids of three",
	scale: [
		[0, 0],
		[1, 0.6],
		[2, 0.9],
		[3, 1],
	],
	source: "common-practice",
	grounds: "The first aid saves the most time; the third seldom matters beside the other two.",
	reads: aids,
	measure(facts): Measure {
		const answers = [
			facts["board.recovery.flashWithoutProcessor"],
			facts["board.recovery.faultDisplay"] === undefined ? undefined : facts["board.recovery.faultDisplay"] !== "none",
			facts["board.recovery.resetAtBack"],
		];
		const sure = answers.filter((answer) => answer === true).length;
		const open = aids.filter((_, index) => answers[index] === undefined);
		const lacking = aids.filter((_, index) => answers[index] === false).map((aid) => aidWords[aid]);
		const note = lacking.length > 0 && lacking.length < aids.length ? `it lacks ${lacking.join(" and ")}` : null;
		return { low: sure, high: sure + open.length, missing: open, ...(note ? { note } : {}) };
	},
	says: ({ low, high, note }) => {
		const has = low === high ? (low === aids.length ? "all" : low === 0 ? "none" : `${low}`) : `${low} to ${high}`;
		const of = has === "all" ? `all ${aids.length} aids` : `${has} of the ${aids.length} aids`;
		return `it has ${of} for a first start that goes wrong${note ? `; ${note}` : ""}`;
	},
});
