import type { Interval } from "../maths/interval.ts";
import type { StageLosses } from "../power/settled-stage.ts";
import { comfortableC, holdingBackC, sessionMinutes } from "../reference/activity-loads.ts";
import { type PowerTold, powerWords } from "./power-words.ts";

/**
 * Power and heat of a board as plain JSON, for other programs: W, A, K, K/W, minutes, seconds, degrees C. An end that has
 * no limit is null, and `isEndless` says so; what is not known is null by itself.
 */
export function powerJson(boardId: string, told: PowerTold): object {
	const { inputs, steady, narrowing, processor, candidates } = told;
	const { delivery, use, air } = inputs;
	const ranges = steady && {
		watts: rangeJson(steady.watts),
		airC: rangeJson(steady.airC),
		hotSpotC: rangeJson(steady.hotSpotC),
		spareK: rangeJson(steady.spareK),
		comfortableW: rangeJson(steady.comfortableW),
		holdingBackW: rangeJson(steady.holdingBackW),
		kelvinPerWatt: rangeJson(steady.kelvinPerWatt),
		heatW: rangeJson(steady.heatW),
		lossW: rangeJson(steady.lossW),
		efficiency: rangeJson(steady.efficiency),
		coilRippleA: rangeJson(steady.ripple.coilA),
		rippleLeftAtOutput: steady.ripple.leftAtOutput && rangeJson(steady.ripple.leftAtOutput),
		ratedW: steady.ratedW && rangeJson(steady.ratedW),
	};
	return {
		schema: "boardwalk/power@1",
		boardId,
		verdict: steady?.verdict.replace(" ", "-") ?? "cannot-tell",
		inputs: {
			processor: processor.state === "have" ? processor.part.id : null,
			use: {
				labelW: use.baseW ?? null,
				heldW: use.sustainedW ?? null,
				peakW: use.peakW ?? null,
				averagingS: use.averagingS ?? null,
				limitPolicy: use.limitPolicy ?? null,
				activities: use.activities ?? null,
				sessionLength: use.sessionLength ?? null,
				minutes: endlessJson(sessionMinutes[use.sessionLength ?? "all-day"]),
				raisesClock: use.raisesClock ?? false,
			},
			air: {
				summerRoom: air.summerRoom ?? null,
				frontOpen: air.frontOpen ?? null,
				coolerKind: air.coolerKind ?? null,
				caseFans: air.caseFans ?? null,
			},
			powerDelivery: delivery,
		},
		candidates,
		linesC: { comfortable: comfortableC, holdingBack: holdingBackC },
		ranges,
		beyondRating: steady?.beyondRating ?? null,
		boost: steady?.boost
			? {
					peakW: steady.boost.peakW,
					seconds: steady.boost.seconds ? rangeJson(steady.boost.seconds) : null,
					isEndless: steady.boost.seconds === null,
					thenW: steady.boost.thenW,
					after: steady.boost.after.replaceAll(" ", "-"),
				}
			: null,
		oneStage: steady && { coolest: lossesJson(steady.coolest), hottest: lossesJson(steady.hottest) },
		measured: steady?.measured
			? {
					test: steady.measured.test,
					estimateC: rangeJson(steady.measured.estimateC),
					agrees: steady.measured.agrees,
				}
			: null,
		assumptions: (steady?.assumptions ?? []).map(({ what, fact, low, high, unit, source, because }) => ({
			what,
			fact,
			range: rangeJson({ low, high }),
			unit,
			source,
			because,
		})),
		narrowing,
		words: powerWords(told),
	};
}

function rangeJson({ low, high }: Interval) {
	return { low: finite(low), high: finite(high), isEndless: finite(low) === null || finite(high) === null };
}

function endlessJson(value: number) {
	return { value: finite(value), isEndless: finite(value) === null };
}

function finite(value: number): number | null {
	return Number.isFinite(value) ? value : null;
}

function lossesJson({ amps, working, watts }: StageLosses) {
	return { amps, working, watts: watts.map(({ name, watts: lost }) => ({ name, watts: lost })) };
}
