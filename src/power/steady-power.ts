import { exactly, type Interval } from "../maths/interval.ts";
import { once } from "../maths/once.ts";
import {
	ampleK,
	clockRaise,
	comfortableC,
	holdingBackC,
	hottestToldC,
	sessionMinutes,
} from "../reference/activity-loads.ts";
import { type Boost, boostOf } from "./boost-of-processor.ts";
import { outputRippleShares } from "./coil-ripple.ts";
import { countedWatts, type UseOfProcessor } from "./counted-watts.ts";
import { estimatedCases, type HeatCases, hotSpotOf, loadToReach, measuredCases } from "./heat-cases.ts";
import { type AirOfBuild, airAtStages, airMoving, stillAirPath } from "./heat-path-range.ts";
import type { Measurement } from "./measured-path.ts";
import { dutyOf, type StageLosses, stageLosses } from "./settled-stage.ts";
import { type Assumption, coilRippleOf, type Delivery, stageRangesOf } from "./stage-range.ts";

/** How a board feeds a processor for hours. */
export type PowerVerdict = "ample" | "enough" | "tight" | "not enough" | "cannot tell";

/** What decides how warm the stages of a board get. */
export interface PowerInputs {
	readonly delivery: Delivery;
	readonly use: UseOfProcessor;
	readonly air: AirOfBuild;
}

/** Power and heat of the stages that feed the cores, under the load that counts and in the air of the build. */
export interface SteadyPower {
	/** Watts of the processor that count. */
	readonly watts: Interval;
	readonly verdict: PowerVerdict;
	/** The hottest stage's inside, in degrees C; infinite where heat would grow without end. */
	readonly hotSpotC: Interval;
	/** What is left to the comfortable line, in K; negative past it. */
	readonly spareK: Interval;
	/** Watts of the processor that the stages hold for as long up to the comfortable line, and up to holding back. */
	readonly comfortableW: Interval;
	readonly holdingBackW: Interval;
	/** Air at the stages, in degrees C. */
	readonly airC: Interval;
	/** What all stages are rated for together, in watts of the processor; null where no rating is known. */
	readonly ratedW: Interval | null;
	/**
	 * The terms of the estimate, without any test. Thermal resistance of all stages to the air, as far as they warm up in the
	 * time, in K/W.
	 */
	readonly kelvinPerWatt: Interval;
	/** Heat in all stages, and what is lost between the plug and the cores where that heat is least and most, in W. */
	readonly heatW: Interval;
	readonly lossW: Interval;
	/** Of what goes in, the part that comes out, 0 to 1. */
	readonly efficiency: Interval;
	/**
	 * Peak-to-peak ripple in one coil, in A, and the part of it left at the output, where the controller's phases are known:
	 * they matter for nothing else.
	 */
	readonly ripple: { readonly coilA: Interval; readonly leftAtOutput: Interval | null };
	/** One stage at the two ends: as cool and as hot as it may be. */
	readonly coolest: StageLosses;
	readonly hottest: StageLosses;
	/** Whether a stage would carry more than it is rated for: steadily, or at the processor's peak only. */
	readonly beyondRating: "steadily" | "at the peak" | null;
	readonly boost: Boost | null;
	/** The test that narrowed the range most, and the estimate without any test; null without a test. */
	readonly measured: { readonly test: Measurement; readonly estimateC: Interval; readonly agrees: boolean } | null;
	readonly assumptions: readonly Assumption[];
	/** The facts nobody gives that matter most; what each is worth is told by factsThatNarrow. */
	readonly missing: readonly string[];
}

/** Null where nothing is known of the processor's watts. Each part is worked out when it is first read, and then kept. */
export function steadyPowerOf(inputs: PowerInputs): SteadyPower | null {
	const { delivery, use, air } = inputs;
	const watts = countedWatts(use);
	if (!watts) return null;
	const ranges = stageRangesOf(delivery);
	const path = stillAirPath(delivery);
	const airC = airAtStages(air);
	const moving = airMoving(air);
	const minutes = sessionMinutes[use.sessionLength ?? "all-day"];
	const estimate = once(() => estimatedCases(ranges, path, moving, minutes, delivery.heatSink));
	const proven = once(() =>
		nearestLast(delivery.measurements ?? [], watts.high).map((test) => ({
			test,
			cases: measuredCases(ranges, test, moving, minutes, delivery.heatSink),
		})),
	);
	// Evidence overrules the estimate. Where they meet, the range is what both allow; where not, the test is right. Which it
	// is, the temperature decides for all figures, so that no two of them contradict each other.
	const hotSpots = once(() => {
		let range = hotSpotOf(estimate(), watts, airC);
		const agreeing = proven().map(({ cases }) => {
			const measured = hotSpotOf(cases, watts, airC);
			const met = meet(measured, range);
			range = met ?? measured;
			return met !== null;
		});
		return { range, agreeing };
	});
	const narrowed = (measure: (cases: HeatCases) => Interval): Interval =>
		proven().reduce((range, { cases }, index) => {
			const measured = measure(cases);
			return hotSpots().agreeing[index] ? (meet(measured, range) ?? nearestPoint(measured, range)) : measured;
		}, measure(estimate()));
	const hotSpotC = () => hotSpots().range;
	const estimateC = once(() => hotSpotOf(estimate(), watts, airC));
	const coolest = once(() => endOf(estimate().cool, watts.low, estimateC().low, "least"));
	const hottest = once(() => endOf(estimate().hot, watts.high, estimateC().high, "most"));
	const beyond = once(() => beyondRating(inputs, watts));
	return {
		watts,
		get verdict() {
			return verdictOf(hotSpotC(), beyond());
		},
		get hotSpotC() {
			return hotSpotC();
		},
		get spareK() {
			return { low: comfortableC - hotSpotC().high, high: comfortableC - hotSpotC().low };
		},
		get comfortableW() {
			return narrowed((cases) => loadToReach(cases, comfortableC, airC));
		},
		get holdingBackW() {
			return narrowed((cases) => loadToReach(cases, holdingBackC, airC));
		},
		airC: { low: airC.low, high: airC.high },
		ratedW: ratedWatts(inputs),
		get kelvinPerWatt() {
			const { cool, hot } = estimate();
			return {
				low: Math.min(...cool.map((one) => one.kelvinPerWatt)),
				high: Math.max(...hot.map((one) => one.kelvinPerWatt)),
			};
		},
		get heatW() {
			return { low: coolest().heatW, high: hottest().heatW };
		},
		get lossW() {
			return { low: coolest().lossW, high: hottest().lossW };
		},
		get efficiency() {
			const of = (load: number, loss: number) => load / (load + loss);
			return { low: of(watts.high, hottest().lossW), high: of(watts.low, coolest().lossW) };
		},
		get coolest() {
			return coolest().losses;
		},
		get hottest() {
			return hottest().losses;
		},
		get ripple() {
			return rippleOf(inputs);
		},
		get beyondRating() {
			return beyond();
		},
		boost: boostOf(use),
		get measured() {
			const nearest = proven().at(-1);
			if (!nearest) return null;
			const measuredC = hotSpotOf(nearest.cases, watts, airC);
			return {
				test: nearest.test,
				estimateC: estimateC(),
				agrees: meet(measuredC, estimateC()) !== null,
			};
		},
		missing: missingOf(inputs, watts),
		get assumptions() {
			return [
				...unique(ranges.flatMap(({ assumptions }) => assumptions)),
				...path.assumptions,
				...airC.assumptions,
				...movingAssumption(air, moving),
			];
		},
	};
}

/**
 * The verdict by where the whole range lies. Where nothing holds the processor back, the worst end decides; where all of
 * it is past the comfortable line, the best end does. A range that reaches from the one to the other tells nothing.
 */
export function verdictOf({ low, high }: Interval, beyond: SteadyPower["beyondRating"]): PowerVerdict {
	if (low >= holdingBackC || beyond === "steadily") return "not enough";
	if (low > comfortableC) return "tight";
	if (high >= holdingBackC) return "cannot tell";
	if (high > comfortableC || beyond === "at the peak") return "tight";
	return high <= comfortableC - ampleK ? "ample" : "enough";
}

/** What two ranges have in common; null where they do not meet. */
function meet(one: Interval, other: Interval): Interval | null {
	const [low, high] = [Math.max(one.low, other.low), Math.min(one.high, other.high)];
	return low <= high ? { low, high } : null;
}

/**
 * The end of one range that is nearest to another that does not meet it: a test and the estimate may agree at the load
 * that counts and not far from it, and there the test is right.
 */
function nearestPoint(one: Interval, other: Interval): Interval {
	return exactly(other.low > one.high ? one.high : one.low);
}

/** A test of fewer minutes ends before it tells where the heat goes, and one of fewer watts heats nothing. Own convention. */
const [leastTestMinutes, leastTestW] = [5, 10];

/** Whether a test can be right: a stage under load is warmer than its room. */
function canBeRight({ minutes = leastTestMinutes, loadW, stageC, airC }: Measurement): boolean {
	return minutes >= leastTestMinutes && loadW >= leastTestW && stageC > airC;
}

/** Tests by how near their load is to what counts, the nearest last; of two as near the one under more load. */
function nearestLast(tests: readonly Measurement[], watts: number): readonly Measurement[] {
	const long = tests.filter(canBeRight);
	return [...long].sort(
		(one, other) => Math.abs(other.loadW - watts) - Math.abs(one.loadW - watts) || one.loadW - other.loadW,
	);
}

/** One stage at an end of the range: of the ways that lead there, the one with least or most heat. */
function endOf(cases: HeatCases["cool"], load: number, stageC: number, which: "least" | "most") {
	const celsius = Math.min(stageC, hottestToldC);
	const all = cases.map(({ stage }) => {
		const losses = stageLosses(stage, load, celsius);
		const into = new Map(stage.causes.map(({ name, intoStage }) => [name, intoStage]));
		const sum = (share: (name: string) => number) =>
			losses.working * losses.watts.reduce((total, { name, watts }) => total + share(name) * watts, 0);
		return { losses, heatW: sum((name) => into.get(name) ?? 1), lossW: sum(() => 1) };
	});
	const isFurther = (one: { heatW: number }, other: { heatW: number }) =>
		which === "least" ? one.heatW < other.heatW : one.heatW > other.heatW;
	return all.reduce((best, one) => (isFurther(one, best) ? one : best));
}

function rippleOf({ delivery }: PowerInputs): SteadyPower["ripple"] {
	const ranges = stageRangesOf(delivery);
	const coils = ranges.map(coilRippleOf);
	const volts = ranges.map(({ figures }) => figures.coreVolts);
	const [low, high] = [Math.min(...volts.map((one) => one.low)), Math.max(...volts.map((one) => one.high))];
	const { controllerPhases } = delivery;
	return {
		coilA: { low: Math.min(...coils.map((one) => one.low)), high: Math.max(...coils.map((one) => one.high)) },
		leftAtOutput:
			controllerPhases === undefined ? null : outputRippleShares(controllerPhases, dutyOf(low), dutyOf(high)),
	};
}

/** Where the rating of a stage is known: all stages at it, at the voltages the cores may have. */
function ratedWatts({ delivery }: PowerInputs): Interval | null {
	const { stageRatingA } = delivery;
	if (stageRatingA === undefined) return null;
	const figures = stageRangesOf(delivery).map((range) => range.figures);
	return {
		low: Math.min(...figures.map(({ stages, coreVolts }) => stages.low * coreVolts.low)) * stageRatingA,
		high: Math.max(...figures.map(({ stages, coreVolts }) => stages.high * coreVolts.high)) * stageRatingA,
	};
}

/** Only what is certain counts: the least load against the most that the stages may be rated for. */
function beyondRating(inputs: PowerInputs, watts: Interval): SteadyPower["beyondRating"] {
	const most = ratedWatts(inputs)?.high ?? Number.POSITIVE_INFINITY;
	if (watts.low > most) return "steadily";
	const { peakW = 0, raisesClock } = inputs.use;
	return peakW * (raisesClock ? clockRaise.low : 1) > most ? "at the peak" : null;
}

/** Without these a range is wide, whatever else is known. */
const mainFacts = ["coreStages", "stageKind", "heatSink", "measurements"] as const satisfies (keyof Delivery)[];

function missingOf({ delivery, use }: PowerInputs, watts: Interval): readonly string[] {
	const missing = [
		...mainFacts
			.filter((fact) => delivery[fact] === undefined || (fact === "measurements" && delivery[fact].length === 0))
			.map((fact) => `board.powerDelivery.${fact}`),
		...(watts.low < watts.high && use.sustainedW === undefined ? ["processor.sustainedW"] : []),
	];
	// Where all is given, another test may still tell more.
	return missing.length > 0 ? missing : ["board.powerDelivery.measurements"];
}

function movingAssumption({ coolerKind, caseFans }: AirOfBuild, moving: Interval): readonly Assumption[] {
	const who =
		coolerKind === undefined
			? "the cooler is not known"
			: coolerKind === "liquid"
				? "a liquid cooler sends no air over the board"
				: "a cooler with a fan sends air over the board";
	return [
		{
			what: "air over the stages",
			fact: coolerKind === undefined ? "cooler.kind" : caseFans === undefined ? "caseFans" : null,
			...moving,
			unit: "of 200 ft/min, in the exponent",
			source: "own-convention",
			because: caseFans === 0 ? `${who}, and the case has no fan` : who,
		},
	];
}

function unique(assumptions: readonly Assumption[]): readonly Assumption[] {
	return [...new Map(assumptions.map((one) => [`${one.what} ${one.low} ${one.high}`, one])).values()];
}
