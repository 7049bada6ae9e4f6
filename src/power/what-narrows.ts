import type { Interval } from "../maths/interval.ts";
import { summerRooms } from "../parts/wants.ts";
import { caseRiseK, hottestToldC } from "../reference/activity-loads.ts";
import { sinksWorth } from "../reference/heat-paths.ts";
import { stageClasses } from "../reference/stage-classes.ts";
import { heldWatts } from "./held-watts.ts";
import type { Measurement } from "./measured-path.ts";
import { type Delivery, stageRangesOf } from "./stage-range.ts";
import { type PowerInputs, type SteadyPower, steadyPowerOf } from "./steady-power.ts";

/** A fact that narrows the range by less than this is not worth looking up, in K (own convention). */
const leastWorthK = 2;

/**
 * The facts that are not known and would narrow the temperature, the one that narrows it most first. What each is worth
 * is found by taking it as known, at several values it may have.
 */
export function factsThatNarrow(inputs: PowerInputs, steady: SteadyPower): readonly string[] {
	const width = widthOf(steady.hotSpotC);
	const worth = candidatesOf(inputs, steady).map(({ fact, asKnown }) => {
		const widths = asKnown.map((known) => widthOf(steadyPowerOf(known)?.hotSpotC ?? steady.hotSpotC));
		return { fact, narrowsK: width - widths.reduce((sum, one) => sum + one, 0) / widths.length };
	});
	return worth
		.filter(({ narrowsK }) => narrowsK >= leastWorthK)
		.sort((one, other) => other.narrowsK - one.narrowsK)
		.map(({ fact }) => fact);
}

function widthOf({ low, high }: Interval): number {
	return Math.min(high, hottestToldC) - Math.min(low, hottestToldC);
}

interface Candidate {
	readonly fact: string;
	readonly asKnown: readonly PowerInputs[];
}

/** Every fact that is missing, with the inputs as they would be at some values it may have. */
function candidatesOf(inputs: PowerInputs, steady: SteadyPower): readonly Candidate[] {
	const { delivery, use, air } = inputs;
	const ofBoard = <K extends keyof Delivery>(fact: K, values: readonly NonNullable<Delivery[K]>[]): Candidate[] =>
		delivery[fact] === undefined || (fact === "measurements" && delivery.measurements?.length === 0)
			? [
					{
						fact: `board.powerDelivery.${fact}`,
						asKnown: values.map((value) => ({ ...inputs, delivery: { ...delivery, [fact]: value } })),
					},
				]
			: [];
	const ends = ({ low, high }: Interval) => [low, (low + high) / 2, high];
	const isMaybe = (kind: NonNullable<Delivery["stageKind"]>) => (delivery.stageKind ?? kind) === kind;
	const held = heldWatts(use);
	return [
		...ofBoard("coreStages", ends(stagesIn(delivery)).map(Math.round)),
		...ofBoard("stageKind", ["integrated", "separate switches"]),
		...ofBoard("heatSink", Object.keys(sinksWorth) as (keyof typeof sinksWorth)[]),
		...(isMaybe("integrated")
			? [...ofBoard("stageRatingA", ends(stageClasses.ratingA)), ...ofBoard("efficiencyPercent", [89, 90, 91])]
			: []),
		...(isMaybe("separate switches")
			? [
					...ofBoard("lowSwitchMohm", ends(stageClasses.lowSwitchMohm)),
					...ofBoard("highSwitchMohm", ends(stageClasses.highSwitchMohm)),
					...ofBoard("lowSwitchesPerStage", [1, 2]),
				]
			: []),
		...ofBoard("switchingKhz", ends(stageClasses.kilohertz)),
		...ofBoard("coilMohm", ends(stageClasses.coilMohm)),
		...ofBoard("copperOz", [1, 2]),
		...ofBoard("layers", [4, 6, 8]),
		...ofBoard("measurements", [[likelyTest(steady)]]),
		...(held && held.low < held.high
			? [
					{
						fact: "processor.sustainedW",
						asKnown: ends(held).map((sustainedW) => ({ ...inputs, use: { ...use, sustainedW } })),
					},
				]
			: []),
		...(air.summerRoom
			? []
			: [
					{
						fact: "summerRoom",
						asKnown: summerRooms.map((summerRoom) => ({ ...inputs, air: { ...air, summerRoom } })),
					},
				]),
		...(air.frontOpen
			? []
			: [
					{
						fact: "case.frontOpen",
						asKnown: (Object.keys(caseRiseK) as (keyof typeof caseRiseK)[]).map((frontOpen) => ({
							...inputs,
							air: { ...air, frontOpen },
						})),
					},
				]),
		...(air.coolerKind
			? []
			: [
					{
						fact: "cooler.kind",
						asKnown: (["air", "liquid"] as const).map((coolerKind) => ({ ...inputs, air: { ...air, coolerKind } })),
					},
				]),
	];
}

/** How many stages there may be, by what is advertised or by what boards usually have. */
function stagesIn(delivery: Delivery): Interval {
	return stageRangesOf(delivery)[0]?.figures.stages ?? stageClasses.stages;
}

/** The test one may hope for: at the load that counts, on an open bench with a fan, seeing the middle of the range. */
function likelyTest({ watts, hotSpotC, airC }: SteadyPower): Measurement {
	const middle = ({ low, high }: Interval) => (Math.min(low, hottestToldC) + Math.min(high, hottestToldC)) / 2;
	return {
		loadW: Math.max(1, watts.high),
		airC: usualTestRoomC,
		airflow: "case fans",
		minutes: 60,
		stageC: middle(hotSpotC) - middle(airC) + usualTestRoomC,
		measuredAt: "top of a stage",
	};
}

/** Room in which people test, in degrees C (own convention). */
const usualTestRoomC = 22;
