import type { Interval } from "../maths/interval.ts";
import { warmUpMinutes } from "../reference/activity-loads.ts";
import type { HeatSink } from "../reference/heat-paths.ts";
import { steadyTemperature, warmedUp } from "./heat-path.ts";
import { type MovingAir, movingAirFactors, type StillAirPath } from "./heat-path-range.ts";
import { type Measurement, measuredPath, provenResistance } from "./measured-path.ts";
import { loadThatHeats, type SettledStage, stageHeat } from "./settled-stage.ts";
import { type Ends, type Group, type StageRange, settleStage } from "./stage-range.ts";

/** One way the figures may be, with the thermal resistance from the stages to the air of the build, in K/W. */
export interface HeatCase {
	readonly stage: SettledStage;
	readonly kelvinPerWatt: number;
}

/** The ways that bound everything in between: the coolest temperatures come of `cool`, the hottest of `hot`. */
export interface HeatCases {
	readonly cool: readonly HeatCase[];
	readonly hot: readonly HeatCase[];
}

const allAt = (end: "cool" | "hot"): Ends => ({
	stages: end,
	volts: end,
	rating: end,
	hertz: end,
	fixed: end,
	perAmp: end,
	ohm: end,
	coil: end,
	rise: end,
});

/** Groups of which either end may be the hotter, by load and temperature. */
const eitherWay = ["rise", "rating"] as const satisfies readonly Group[];

/**
 * The estimate. Every figure pushes the temperature one way, but for two of which both ends are tried: the rise of
 * resistance helps below the temperature a resistance is given for and harms above it, and a higher rating means less
 * resistance but more standing loss.
 *
 * @param moving how the air moves; @param minutes how long the load lasts
 */
export function estimatedCases(
	ranges: readonly StageRange[],
	path: StillAirPath,
	moving: Interval,
	minutes: number,
	heatSink?: HeatSink | undefined,
): HeatCases {
	const factors = path.isGiven ? { low: 1, high: 1 } : movingAirFactors(moving, heatSink);
	const casesAt = (end: "cool" | "hot") => {
		const factor = end === "cool" ? factors.low : factors.high;
		const warmed = warmedUp(minutes, end === "cool" ? warmUpMinutes.high : warmUpMinutes.low);
		return ranges.flatMap((range) =>
			cornersOf(
				range.open.filter((group) => eitherWay.some((one) => one === group)),
				allAt(end),
			).map((ends) => {
				const stage = settleStage(range, ends);
				return { stage, kelvinPerWatt: path.at(stage.stages, end) * factor * warmed };
			}),
		);
	};
	return { cool: casesAt("cool"), hot: casesAt("hot") };
}

/**
 * What a test proves. The same stages were in the test and are in the build, so each way the figures may be is carried
 * from the one to the other by itself. The bounds lie at the corners: every figure enters along a line, but for voltage and
 * number of stages, which leave the bounds by less than a tenth of a kelvin at like loads (a test holds that).
 */
export function measuredCases(
	ranges: readonly StageRange[],
	test: Measurement,
	moving: MovingAir,
	minutes: number,
	heatSink?: HeatSink | undefined,
): HeatCases {
	const path = measuredPath(test, moving, minutes, heatSink);
	const corners = ranges.flatMap((range) =>
		cornersOf(range.open, allAt("cool")).map((ends) => {
			const stage = settleStage(range, ends);
			return { stage, resistance: provenResistance(stage, test, path) };
		}),
	);
	return {
		cool: corners.map(({ stage, resistance }) => ({ stage, kelvinPerWatt: resistance.low })),
		hot: corners.map(({ stage, resistance }) => ({ stage, kelvinPerWatt: resistance.high })),
	};
}

/** All ways in which these groups take one end or the other, while the rest stays where it is. */
function cornersOf(groups: readonly Group[], rest: Ends): readonly Ends[] {
	return groups.reduce<readonly Ends[]>(
		(corners, group) =>
			corners.flatMap((ends) => [
				{ ...ends, [group]: "cool" },
				{ ...ends, [group]: "hot" },
			]),
		[rest],
	);
}

/** Temperature of the hottest stage at a load, in degrees C. */
export function hotSpotOf({ cool, hot }: HeatCases, watts: Interval, airC: Interval): Interval {
	const at = (one: HeatCase, load: number, air: number) =>
		steadyTemperature(air, one.kelvinPerWatt, stageHeat(one.stage, load));
	return {
		low: Math.min(...cool.map((one) => at(one, watts.low, airC.low))),
		high: Math.max(...hot.map((one) => at(one, watts.high, airC.high))),
	};
}

/** The load that brings the hottest stage to a temperature, in watts of the processor. */
export function loadToReach({ cool, hot }: HeatCases, stageC: number, airC: Interval): Interval {
	const at = ({ stage, kelvinPerWatt }: HeatCase, air: number) =>
		loadThatHeats(stage, (stageC - air) / kelvinPerWatt, stageC);
	return {
		low: Math.min(...hot.map((one) => at(one, airC.high))),
		high: Math.max(...cool.map((one) => at(one, airC.low))),
	};
}
