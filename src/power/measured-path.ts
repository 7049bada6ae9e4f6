import type { Interval } from "../maths/interval.ts";
import { warmUpMinutes } from "../reference/activity-loads.ts";
import {
	airOverStages,
	type HeatSink,
	hotterInsideK,
	likeAir,
	movingAirFactor,
	readingK,
	testRiseK,
	usualTestMinutes,
} from "../reference/heat-paths.ts";
import { warmedUp } from "./heat-path.ts";
import type { MovingAir } from "./heat-path-range.ts";
import { type SettledStage, stageHeat } from "./settled-stage.ts";
import type { Delivery } from "./stage-range.ts";

export type Measurement = NonNullable<Delivery["measurements"]>[number];

/** What a published test tells of a board's cooling, for stages whose figures are settled. */
export interface MeasuredPath {
	/** Rise of the hottest stage's inside over the air, in K, as far as it is known. */
	readonly riseK: Interval;
	/** The inside of the hottest stage in the test, in degrees C. */
	readonly insideC: Interval;
	/** From the thermal resistance of the test to that of the build, as a factor: other air, another length of load. */
	readonly carriedOver: Interval;
}

/**
 * Reads a measurement: what the inside of the stage had, over what air, and how its cooling compares with the build's.
 *
 * @param moving how the air moves in the build
 * @param minutes how long the build's load lasts
 * @param heatSink that of the board, which decides what moving air does
 */
export function measuredPath(
	test: Measurement,
	moving: MovingAir,
	minutes: number,
	heatSink?: HeatSink | undefined,
): MeasuredPath {
	const air = test.airflow ?? "unknown";
	const inside = hotterInsideK[placeOf(test.measuredAt)];
	const insideC = { low: test.stageC - readingK + inside.low, high: test.stageC + readingK + inside.high };
	const rise = testRiseK[air];
	const inTest = airOverStages[air];
	// More air here than in the test cools better, at most as the stronger factor says.
	const more =
		moving.called === test.airflow ? likeAir : { low: moving.low - inTest.high, high: moving.high - inTest.low };
	const factor = movingAirFactor(heatSink);
	const factors = [more.low, more.high].flatMap((exponent) => [factor.low ** exponent, factor.high ** exponent]);
	const tested = test.minutes === undefined ? usualTestMinutes : { low: test.minutes, high: test.minutes };
	const lengths = [warmUpMinutes.low, warmUpMinutes.high].flatMap((constant) =>
		[tested.low, tested.high].map((time) => warmedUp(minutes, constant) / warmedUp(time, constant)),
	);
	return {
		insideC,
		riseK: {
			low: Math.max(leastRiseK, insideC.low - test.airC - rise.high),
			high: Math.max(leastRiseK, insideC.high - test.airC - rise.low),
		},
		carriedOver: {
			low: Math.min(...factors) * Math.min(...lengths),
			high: Math.max(...factors) * Math.max(...lengths),
		},
	};
}

/** A stage under load is never as cool as the air; a reading that says so is only not exact. In K (own convention). */
const leastRiseK = 0.5;

/** What a test measured, from the words it uses. */
function placeOf(words = ""): keyof typeof hotterInsideK {
	if (/back|behind|underside|rear|below/i.test(words)) return "back of the board";
	if (/sink|fins?\b/i.test(words)) return "heat sink";
	return /stage|top|sensor|package/i.test(words) ? "top of a stage" : "unknown";
}

/**
 * The thermal resistance of the build's stages that a test proves, in K/W, for stages settled in one way. Each end
 * takes the heat the stages gave at the temperature they had.
 */
export function provenResistance(stage: SettledStage, test: Measurement, path: MeasuredPath): Interval {
	const heat = stageHeat(stage, test.loadW);
	const at = (celsius: number) => heat.fixedW + heat.wattsPerC * celsius;
	return {
		low: (path.riseK.low / at(path.insideC.low)) * path.carriedOver.low,
		high: (path.riseK.high / at(path.insideC.high)) * path.carriedOver.high,
	};
}
