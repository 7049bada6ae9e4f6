import { isTold } from "../../parts/told-evidence.ts";
import type { SessionLength } from "../../parts/wants.ts";
import type { SteadyPower } from "../../power/steady-power.ts";
import { comfortableC, holdingBackC, hottestToldC, sessionWords } from "../../reference/activity-loads.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type MessageData, type Outcome, pass, planAround } from "../outcome.ts";

/** What every message says: the load, how long it lasts, and whether a test was counted in. */
interface Load extends MessageData {
	/** "140" or "120 to 160". */
	readonly watts: string;
	/** "for hours", as the person works. */
	readonly time: string;
	readonly isTested: boolean;
	/** That test is what somebody told, such as the shop. */
	readonly wasTold?: true;
}
interface Spare extends Load {
	/** Degrees to the comfortable line, whole. */
	readonly least: number;
	readonly most: number;
}

const tested = ({ isTested, wasTold }: Load) =>
	isTested ? ` A ${wasTold ? "measurement that was told" : "published test"} is counted in.` : "";

/**
 * What the stages of the board can feed for as long as the heaviest use lasts, by an estimate from published figures;
 * a published measurement goes before the estimate. It stops no board: one that gets too hot slows the processor down.
 */
export const steadyPower = defineRule({
	id: "quality/steady-power",
	formerly: ["quality/measured-heat"],
	scope: "board",
	label: "Power and heat",
	wayOut: "a board that gets hot",
	asks: "Can the board feed this processor for as long as you work, and stay cool?",
	why: `The power stages beside the socket feed the processor. Up to about ${comfortableC} degrees C they last for years. From about ${holdingBackC} degrees on the board slows the processor down.`,
	source: "common-practice",
	severity: "plan-around",
	reads: ["processor"],
	mayRead: ["power.steady", "load.counted", "sessionLength", "board.powerDelivery.stageRatingA"],
	messages: {
		noProcessor: () => "There is no processor yet to feed.",
		ample: (spare: Spare) =>
			`It feeds ${spare.watts} W ${spare.time}, with ${spare.least} to ${spare.most} degrees to spare.${tested(spare)}`,
		enough: (spare: Spare) =>
			`It feeds ${spare.watts} W ${spare.time}, with at least ${spare.least} degrees to spare.${tested(spare)}`,
		wide: ({ hottest, coolest, ...load }: Load & { coolest: number; hottest: number }) =>
			hottest > hottestToldC
				? `Feeding ${load.watts} W ${load.time}, its power stages reach ${coolest} degrees C or far more. Up to ${comfortableC} is comfortable.${tested(load)}`
				: `Feeding ${load.watts} W ${load.time}, its power stages reach between ${coolest} and ${hottest} degrees C. Up to ${comfortableC} is comfortable.${tested(load)}`,
		maybeHot: ({ hottest, coolest, ...load }: Load & { coolest: number; hottest: number }) =>
			`It feeds ${load.watts} W ${load.time} and does not hold the processor back. Its power stages may get hot: ${coolest} to ${hottest} degrees C, and up to ${comfortableC} is comfortable.${tested(load)}`,
		tight: ({ past, mayHoldBack, ...load }: Load & { past: number; mayHoldBack: boolean }) =>
			`It gets hot feeding ${load.watts} W ${load.time}: ${past < 1 ? "" : `at least ${past} ${past === 1 ? "degree" : "degrees"} `}past the comfortable line.${mayHoldBack ? " It may hold the processor back." : ""}${tested(load)}`,
		peakPastRating: ({ ratingA, ...load }: Load & { ratingA: number }) =>
			`It feeds ${load.watts} W ${load.time}, but at the processor's peak each power stage carries more than its ${ratingA} A.`,
		tooHot: (load: Load) =>
			`It cannot feed ${load.watts} W ${load.time}: its power stages get so hot that it holds the processor back.${tested(load)}`,
		pastRating: ({ ratingA, ...load }: Load & { ratingA: number }) =>
			`Feeding ${load.watts} W, each of its power stages carries more than the ${ratingA} A it is rated for.`,
		need: ({ wattsHigh, time }: { wattsHigh: number; time: string }) =>
			`Power stages that feed ${wattsHigh} W ${time} and stay below ${comfortableC} degrees C, best seen in a published test.`,
	},
	advice: {
		wide: ({ watts }: Load) =>
			`Look for a published test of this board at ${watts.split(" ").at(-1)} W or more, with the temperature of its power stages.`,
		maybeHot: () => "See that air from a case fan reaches the power stages. A published test would tell more.",
		tight: () =>
			"See that air from a case fan reaches the power stages, or set the processor's power limit lower in the firmware.",
		peakPastRating: () =>
			"Set the processor's highest power limit lower in the firmware, or take a board with more stages.",
		tooHot: () => "Take a board that feeds more, or set the processor's power limit lower in the firmware.",
		pastRating: () => "Take a board with more or stronger stages for this processor.",
	},
	check(facts): Outcome {
		const steady = facts["power.steady"];
		if (facts.processor === "unknown") return cannotTell(["processor"]);
		if (!steady) return facts.processor === "have" ? cannotTell(["processor.baseW"]) : pass("noProcessor");
		const load = loadOf(steady, facts.sessionLength);
		const { low, high } = steady.hotSpotC;
		const spare = { ...load, least: Math.floor(comfortableC - high), most: Math.floor(comfortableC - low) };
		const ratingA = facts["board.powerDelivery.stageRatingA"] ?? 0;
		switch (steady.verdict) {
			case "ample":
				return pass("ample", spare);
			case "enough":
				return pass("enough", spare);
			case "cannot tell":
				return cannotTell(steady.missing, "wide", {
					...load,
					coolest: Math.round(low),
					// As the part on power and heat rounds it: one board has one temperature.
					hottest: high > hottestToldC ? hottestToldC + 1 : Math.round(high),
				});
			case "tight":
				if (low > comfortableC)
					return planAround("tight", {
						...load,
						past: Math.floor(low - comfortableC),
						mayHoldBack: high >= holdingBackC,
					});
				return high > comfortableC
					? goodToKnow("maybeHot", { ...load, coolest: Math.round(low), hottest: Math.round(high) })
					: planAround("peakPastRating", { ...load, ratingA });
			case "not enough":
				return low >= holdingBackC ? fail("tooHot", load) : fail("pastRating", { ...load, ratingA });
		}
	},
	needs({ "load.counted": watts, sessionLength }) {
		return watts
			? {
					messageId: "need",
					data: { wattsHigh: Math.round(watts.high), time: sessionWords[sessionLength ?? "all-day"] },
				}
			: null;
	},
});

function loadOf({ watts, measured }: SteadyPower, sessionLength: SessionLength | undefined): Load {
	const [low, high] = [Math.round(watts.low), Math.round(watts.high)];
	return {
		watts: low === high ? String(low) : `${low} to ${high}`,
		time: sessionWords[sessionLength ?? "all-day"],
		isTested: measured !== null,
		...(isTold(measured?.test.where) ? { wasTold: true as const } : {}),
	};
}
