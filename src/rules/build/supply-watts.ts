import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type MessageData, type Outcome, pass, planAround } from "../outcome.ts";
import { peakWatts } from "../processor-watts.ts";

/** Board, memory, drives and fans of an ordinary computer together: common practice. */
const restW = 75;
/** A quarter more than the sum is kept for short peaks and for age: common practice. */
const reserveFactor = 1.25;
/** Supplies made by this year are ten and more years old by the time this was written (2026). */
const oldUntil = 2015;

/** What a message says of sum and limit. `guessed`: the processor's highest watts are only taken as twice its label. */
interface Sum extends MessageData {
	readonly sumW: number;
	readonly limitW: number;
	readonly wantedW: number;
	readonly at12V: boolean;
	readonly guessed: boolean;
}
const gives = ({ limitW, at12V }: Sum) => `your supply gives ${limitW} W${at12V ? " at 12 V" : ""}`;
const take = ({ sumW, guessed }: Sum) => `take ${guessed ? "about" : "up to"} ${sumW} W together`;

/**
 * The supply's rating against what card, processor and the rest take at most. Below the plain sum it switches off under
 * load; only what is certain counts for that. Nearly all of the load is at 12 V, so that output is the limit if known.
 */
export const supplyWatts = defineRule({
	id: "build/supply-watts",
	scope: "build",
	label: "Watts of the supply",
	wayOut: "a stronger power supply",
	asks: "Is the power supply strong enough?",
	why: "A supply that is asked for too much switches off, often in the middle of a game. A reserve keeps it cool and quiet.",
	source: "common-practice",
	severity: "stops",
	reads: ["supply.watts", "graphicsCard", "processor"],
	mayRead: [
		"supply.twelveVoltA",
		"supply.bornIn",
		"graphicsCard.watts",
		"graphicsCard.supplyAdvisedW",
		"processor.peakW",
		"processor.baseW",
	],
	messages: {
		enough: (sum: Sum) => `The parts ${take(sum)}; ${gives(sum)}, which leaves a good reserve.`,
		leftForCard: ({ leftW, ...sum }: Sum & { leftW: number }) =>
			`Without a card the parts ${take(sum as Sum)}; your supply leaves up to ${leftW} W for one.`,
		noProcessor: () => "There is no processor yet to count the watts of.",
		tight: (sum: Sum) => `The parts ${take(sum)}; ${gives(sum)}. With a fair reserve it would be ${sum.wantedW} W.`,
		tooWeak: (sum: Sum) => `The parts can take ${sum.sumW} W together; ${gives(sum)}, which is too little.`,
		belowAdvice: ({ watts, advisedW }: { watts: number; advisedW: number }) =>
			`The card's maker advises a supply of ${advisedW} W; yours has ${watts} W.`,
		old: ({ bornIn }: { bornIn: number }) =>
			`Your supply is strong enough, but it was made in ${bornIn}; supplies get weaker with age.`,
	},
	advice: {
		tight: () => "It may run, but loud and hot, and a short peak can switch it off. Plan a stronger one.",
		tooWeak: ({ wantedW }: Sum) =>
			`Plan a supply of at least ${wantedW} W. Change it as a whole and unplugged: never open a supply, it stays charged.`,
		belowAdvice: () => "The maker's figure leaves room for short peaks of the card. Follow it if you buy a new supply.",
		old: () => "Plan a new one, and change it with the mains plug out. Never open a supply: it stays charged.",
	},
	check(facts): Outcome {
		const watts = facts["supply.watts"];
		const twelveVoltW = (facts["supply.twelveVoltA"] ?? Number.POSITIVE_INFINITY) * 12;
		const limitW = Math.min(watts, twelveVoltW);
		const [peakW, baseW] = [facts["processor.peakW"], facts["processor.baseW"]];
		const cardW = facts["graphicsCard.watts"];
		const sumOf = (sum: number, guessed: boolean): Sum => ({
			sumW: Math.round(sum),
			limitW: Math.round(limitW),
			wantedW: Math.ceil(sum * reserveFactor),
			at12V: twelveVoltW < watts,
			guessed,
		});

		const certainW = restW + Math.max(peakW ?? 0, baseW ?? 0) + (cardW ?? 0);
		if (certainW > limitW) return fail("tooWeak", sumOf(certainW, false));
		const peak = peakWatts({ peakW, baseW });
		const missing = [
			...(facts.processor === "unknown" ? ["processor"] : []),
			...(facts.processor === "have" && !peak ? ["processor.peakW"] : []),
			...(facts.graphicsCard === "unknown" ? ["graphicsCard"] : []),
			...(facts.graphicsCard === "have" && cardW === undefined ? ["graphicsCard.watts"] : []),
		];
		if (missing.length > 0) return cannotTell(missing);
		if (!peak) return pass("noProcessor");

		const exactW = restW + peak.watts + (cardW ?? 0);
		const sum = sumOf(exactW, peak.guessed);
		if (limitW < exactW * reserveFactor) return planAround("tight", sum);
		if (facts.graphicsCard === "open")
			return pass("leftForCard", { ...sum, leftW: Math.floor(limitW / reserveFactor - exactW) });
		const advisedW = facts["graphicsCard.supplyAdvisedW"];
		if (advisedW !== undefined && watts < advisedW) return planAround("belowAdvice", { watts, advisedW });
		const bornIn = facts["supply.bornIn"];
		return bornIn !== undefined && bornIn <= oldUntil ? goodToKnow("old", { bornIn }) : pass("enough", sum);
	},
});
