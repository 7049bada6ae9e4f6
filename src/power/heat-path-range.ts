import type { Interval } from "../maths/interval.ts";
import type { PcCase } from "../parts/case.ts";
import type { SummerRoom } from "../parts/wants.ts";
import { caseRiseK, roomC } from "../reference/activity-loads.ts";
import {
	airOverStages,
	copperShare,
	type HeatSink,
	largeSinkStill,
	movingAirFactor,
	sinksWorth,
	stageToSink,
	switchToAir,
} from "../reference/heat-paths.ts";
import { sideBySide } from "./heat-path.ts";
import type { Assumption, Delivery } from "./stage-range.ts";

/** What a build says of the air around the stages. */
export interface AirOfBuild {
	readonly summerRoom?: SummerRoom | undefined;
	readonly frontOpen?: PcCase["frontOpen"] | undefined;
	/** "air" also where the cooler comes with the processor. */
	readonly coolerKind?: "air" | "liquid" | undefined;
	/** Fans of the case beside the processor's, as planned. */
	readonly caseFans?: number | undefined;
}

/** Air inside the case at the stages, on a hot evening under load, in degrees C. */
export function airAtStages({ summerRoom, frontOpen }: AirOfBuild): Interval & {
	readonly assumptions: readonly Assumption[];
} {
	const room = summerRoom ? { low: roomC[summerRoom], high: roomC[summerRoom] } : spread(Object.values(roomC));
	const rise = frontOpen ? { low: caseRiseK[frontOpen], high: caseRiseK[frontOpen] } : spread(Object.values(caseRiseK));
	const missing = (what: string, fact: string, range: Interval, because: string, unit: string): Assumption => ({
		what,
		fact,
		...range,
		unit,
		source: "common-practice",
		because,
	});
	return {
		low: room.low + rise.low,
		high: room.high + rise.high,
		assumptions: [
			...(summerRoom
				? []
				: [missing("room on a hot evening", "summerRoom", room, "from a cool room to one with a fan on", "degrees C")]),
			...(frontOpen
				? []
				: [missing("how much warmer the case is", "case.frontOpen", rise, "from an open front to a solid one", "K")]),
		],
	};
}

function spread(values: readonly number[]): Interval {
	return { low: Math.min(...values), high: Math.max(...values) };
}

/** How the air moves over the stages: 0 still air, 1 as in 200 ft/min; and what that is called. */
export interface MovingAir extends Interval {
	readonly called: keyof typeof airOverStages;
}

/** How the air moves over the stages of a build, by its cooler and the fans of its case. */
export function airMoving({ coolerKind, caseFans }: AirOfBuild): MovingAir {
	const called = coolerKind === "air" ? "case fans" : coolerKind === "liquid" ? "behind a liquid cooler" : "unknown";
	const withFans = airOverStages[called];
	if (caseFans !== undefined && caseFans > 0) return { ...withFans, called };
	// Without a fan in the case only the cooler's own moves air, and that goes round in circles.
	const without = { low: 0, high: coolerKind === "liquid" ? liquidAlone : airCoolerAlone };
	if (caseFans === 0) return { ...without, called: "unknown" };
	return { low: without.low, high: withFans.high, called: "unknown" };
}

/** The most that the air moves in a case without fans, by the kind of cooler. Own convention. */
const [airCoolerAlone, liquidAlone] = [0.7, 0.3];

/** What moving air makes of a thermal resistance in still air, as a range of factors. */
export function movingAirFactors(moving: Interval, heatSink?: HeatSink | undefined): Interval {
	const factor = movingAirFactor(heatSink);
	return { low: factor.low ** moving.high, high: factor.high ** moving.low };
}

/** Thermal resistance from all stages together to still air: as a function, since it depends on how many there are. */
export interface StillAirPath {
	/** In K/W. */
	readonly at: (stages: number, end: "cool" | "hot") => number;
	/** Whether a page gives it, for the air as it is in a case. */
	readonly isGiven: boolean;
	readonly assumptions: readonly Assumption[];
}

/**
 * Two ways side by side: through the copper of the board, which every stage has, and through the heat sinks, which all
 * share. Their classes lean on the resistances of one switch on copper and under sinks.
 */
export function stillAirPath(delivery: Delivery): StillAirPath {
	const { thermalResistanceKPerW: given, heatSink, layers, copperOz } = delivery;
	if (given !== undefined) return { at: () => given, isGiven: true, assumptions: [] };
	const worth = heatSink ? sinksWorth[heatSink] : spreadOf(Object.values(sinksWorth));
	const copper = copperShare(layers, copperOz);
	const { copper: best, least } = switchToAir.still.bare;
	const board = (share: number) => least - share * (least - best);
	const [cool, hot] = [board(copper.high), board(copper.low)];
	return {
		at: (stages, end) => {
			const isHot = end === "hot";
			const sinks = isHot ? worth.low : worth.high;
			const throughBoard = (isHot ? hot : cool) / stages;
			if (sinks === 0) return throughBoard;
			const toSink = (isHot ? stageToSink.high : stageToSink.low) / stages;
			return sideBySide(toSink + (isHot ? largeSinkStill.high : largeSinkStill.low) / sinks, throughBoard);
		},
		isGiven: false,
		assumptions: [
			{
				what: "heat sinks of the stages",
				fact: heatSink ? null : "board.powerDelivery.heatSink",
				...worth,
				unit: "large sinks of a data sheet",
				source: switchToAir.source,
				because: heatSink
					? `heat sink: ${heatSink}; how many sinks that is worth is this project's own convention`
					: "from no heat sink to a finned one",
			},
			{
				what: "copper under a stage",
				fact:
					copperOz === undefined
						? "board.powerDelivery.copperOz"
						: layers === undefined
							? "board.powerDelivery.layers"
							: null,
				low: cool,
				high: hot,
				unit: "K/W a stage, bare, in still air",
				source: switchToAir.source,
				because: "one switch on a square inch of 2 oz copper has 38, on the least copper 81",
			},
		],
	};
}

function spreadOf(ranges: readonly Interval[]): Interval {
	return { low: Math.min(...ranges.map(({ low }) => low)), high: Math.max(...ranges.map(({ high }) => high)) };
}
