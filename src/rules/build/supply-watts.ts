import type { FactsUnder } from "../../parts/fact-path.ts";
import type { SupplyDemand } from "../../power/supply-demand.ts";
import { beforePeaks } from "../../reference/supply-budget.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type MessageData, type Outcome, pass, planAround } from "../outcome.ts";
import { roundToHundredth } from "../round-to-hundredth.ts";

/** A quarter more than the sum is kept for short peaks and for age: common practice. */
const reserveFactor = 1.25;
/** Supplies made by this year are ten and more years old by the time this was written (2026): own convention. */
const oldUntil = 2015;
/** Supplies are sold in steps of so many W (common practice, no source). */
const soldInStepsOfW = 50;

/** What a message says of sum and limit. `guessed`: the processor's highest watts are only guessed from its label. */
interface Sum extends MessageData {
	readonly sumW: number;
	readonly limitW: number;
	readonly wantedW: number;
	readonly guessed: boolean;
	/** There where the 12 V output is less than the rating. */
	readonly twelveVoltA?: number;
}
/** The smallest supply in the shops that gives so many W. */
const soldW = (wantedW: number) => Math.ceil(wantedW / soldInStepsOfW) * soldInStepsOfW;
const gives = ({ limitW, twelveVoltA }: Sum) =>
	`${limitW} W${twelveVoltA === undefined ? "" : ` at 12 V (label: ${twelveVoltA} A)`}`;
const take = ({ sumW, guessed }: Sum) => `${guessed ? "may take" : "take"} up to ${sumW} W together`;

const unplugged = "change it as a whole, with the mains plug out. Never open a supply: it stays charged.";

const reads = ["supply.watts", "graphicsCard", "processor"] as const;
const mayRead = [
	"load.supply",
	"supply.twelveVoltA",
	"supply.bornIn",
	"graphicsCard.watts",
	"graphicsCard.supplyAdvisedW",
] as const;
type Facts = FactsUnder<(typeof reads)[number], (typeof mayRead)[number]>;

/**
 * The supply's 12 V output against the 12 V budget of card, processor and the rest. Nearly all of the load is at 12 V,
 * so the limit is the lesser of rating and that output. Below even the least sum the supply switches off under load;
 * where only a guess at the processor's watts decides, the verdict is open.
 */
export const supplyWatts = defineRule({
	id: "build/supply-watts",
	scope: "build",
	label: "Watts of the supply",
	wayOut: "a stronger power supply",
	asks: "Is the power supply strong enough?",
	why: "A supply that is asked for too much switches off, often in the middle of a game. A reserve keeps it cool and quiet.",
	source: "supply-guide-addendum-004",
	severity: "stops",
	reads,
	mayRead,
	messages: {
		enough: (sum: Sum) => `The parts ${take(sum)}; your supply gives ${gives(sum)}, which leaves a good reserve.`,
		leftForCard: (sum: Sum & { leftW: number }) =>
			`Without a card the parts ${take(sum)}; your supply leaves up to ${sum.leftW} W for one.`,
		noneLeftForCard: (sum: Sum) =>
			`Without a card the parts ${take(sum)}; your supply gives ${gives(sum)}. With a fair reserve that leaves nothing for a card.`,
		noProcessor: () => "There is no processor yet to count the watts of.",
		tight: (sum: Sum) =>
			`The parts ${take(sum)}; your supply gives ${gives(sum)}. With a fair reserve it would be ${sum.wantedW} W.`,
		onlyLabel: (sum: Sum & { leastW: number }) =>
			`By the processor's label the parts may take ${sum.leastW} W to ${sum.sumW} W together. Your supply gives ${gives(sum)}.`,
		tooWeak: (sum: Sum) =>
			`The parts ${sum.guessed ? "take at least" : "can take"} ${sum.sumW} W together; your supply gives ${gives(sum)}, which is too little.`,
		belowAdvice: ({ watts, advisedW }: { watts: number; advisedW: number }) =>
			`The card's maker advises a supply of ${advisedW} W; yours has ${watts} W.`,
		old: ({ bornIn }: { bornIn: number }) =>
			`Your supply is strong enough, but it was made in ${bornIn}; supplies get weaker with age.`,
		shortPeaks: ({ whose, peakW, standsW }: Peaks) =>
			`Your supply is strong enough for long. For an instant the ${whose} can bring it to about ${peakW} W; such a supply has to stand only ${standsW} W.`,
		shortPeaksOlder: ({ whose, peakW, standsW, bornIn }: Peaks & { bornIn: number }) =>
			`Your supply is strong enough for long. For an instant the ${whose} can bring it to about ${peakW} W. Made in ${bornIn}, it is only counted on for ${standsW} W.`,
	},
	advice: {
		noneLeftForCard: () => `Plan a stronger supply together with the card, and ${unplugged}`,
		tight: ({ wantedW }: Sum) =>
			`It may run, but loud and hot, and a short peak can switch it off. Plan one of ${soldW(wantedW)} W or more.`,
		onlyLabel: () =>
			"Find the processor's highest watts: its maker's page or a test gives them. Its label watts alone do not tell.",
		tooWeak: ({ wantedW }: Sum) => `Plan a supply of at least ${soldW(wantedW)} W, and ${unplugged}`,
		belowAdvice: () => "The maker's figure leaves room for short peaks of the card. Follow it if you buy a new supply.",
		old: () => `Plan a new one, and ${unplugged}`,
		shortPeaks: () =>
			`It may well run. If it switches off in the middle of a game, plan a stronger supply, and ${unplugged}`,
		shortPeaksOlder: () =>
			`It may well run: older supplies were not made for such peaks. If it switches off in a game, plan a newer one, and ${unplugged}`,
	},
	check(facts): Outcome {
		const demand = facts["load.supply"];
		const limitW = demand?.outputW ?? null;
		if (!demand || limitW === null) return cannotTell(["supply.watts"]);
		const { leastW, guessed } = demand;
		const missing = missingOf(facts, demand);
		// What cannot be summed up yet is asked for with what is certain.
		const mostW = demand.mostW ?? leastW;
		const sumOf = (sumW: number): Sum => ({
			sumW: Math.ceil(sumW),
			wantedW: Math.ceil(withReserve(mostW)),
			guessed,
			...limitWords(facts, limitW),
		});
		if (leastW > limitW) return fail("tooWeak", sumOf(leastW));
		if (missing.length > 0) return cannotTell(missing);
		if (demand.mostW === null) return pass("noProcessor");

		const sum = sumOf(mostW);
		// With a raised clock the watts are a range too, and no page would settle them.
		if (mostW > limitW && guessed)
			return cannotTell(["processor.peakW"], "onlyLabel", { ...sum, leastW: Math.ceil(leastW) });
		if (limitW < withReserve(mostW)) return planAround("tight", sum);
		if (facts.graphicsCard === "open") return roomForCard(limitW, mostW + demand.besideCardW, sum);
		return otherCautions(facts, demand) ?? pass("enough", sum);
	},
});

interface Peaks extends MessageData {
	readonly whose: string;
	readonly peakW: number;
	readonly standsW: number;
}

/** To a hundredth of a watt, so that a sum of whole amperes comes out even. */
const withReserve = (watts: number) => roundToHundredth(watts * reserveFactor);

function limitWords(facts: Facts, limitW: number): Pick<Sum, "limitW" | "twelveVoltA"> {
	const twelveVoltA = facts["supply.twelveVoltA"];
	return {
		limitW: Math.floor(limitW),
		...(twelveVoltA !== undefined && limitW < facts["supply.watts"] ? { twelveVoltA } : {}),
	};
}

function missingOf(facts: Facts, { mostW }: SupplyDemand): readonly string[] {
	return [
		...(facts.processor === "unknown" ? ["processor"] : []),
		...(facts.processor === "have" && mostW === null ? ["processor.peakW"] : []),
		...(facts.graphicsCard === "unknown" ? ["graphicsCard"] : []),
		...(facts.graphicsCard === "have" && facts["graphicsCard.watts"] === undefined ? ["graphicsCard.watts"] : []),
	];
}

/** A card still to be bought, of which the rest of the platform takes its part: more things come with one. */
function roomForCard(limitW: number, takenW: number, sum: Sum): Outcome {
	const leftW = Math.floor(limitW / reserveFactor - takenW);
	return leftW > 0 ? pass("leftForCard", { ...sum, leftW }) : planAround("noneLeftForCard", sum);
}

/** What is still to be said of a supply that is strong enough with a reserve. */
function otherCautions(facts: Facts, { peaks }: SupplyDemand): Outcome | null {
	const watts = facts["supply.watts"];
	const advisedW = facts["graphicsCard.supplyAdvisedW"];
	if (advisedW !== undefined && watts < advisedW) return planAround("belowAdvice", { watts, advisedW });
	const bornIn = facts["supply.bornIn"];
	if (bornIn !== undefined && bornIn <= oldUntil) return goodToKnow("old", { bornIn });
	const peak = peaks.find((one) => one.watts > one.standsW);
	if (!peak) return null;
	const data = {
		whose: peak.whose === "card" ? "graphics card" : "processor",
		peakW: Math.round(peak.watts),
		standsW: Math.floor(peak.standsW),
	};
	return bornIn === undefined || bornIn >= beforePeaks.promisedFrom
		? goodToKnow("shortPeaks", data)
		: goodToKnow("shortPeaksOlder", { ...data, bornIn });
}
