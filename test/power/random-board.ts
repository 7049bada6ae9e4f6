import fc from "fast-check";
import { exactly } from "../../src/maths/interval.ts";
import { limitPolicies } from "../../src/parts/processor.ts";
import { activities, sessionLengths, summerRooms } from "../../src/parts/wants.ts";
import type { UseOfProcessor } from "../../src/power/counted-watts.ts";
import type { AirOfBuild } from "../../src/power/heat-path-range.ts";
import type { Measurement } from "../../src/power/measured-path.ts";
import type { SettledStage } from "../../src/power/settled-stage.ts";
import { type Delivery, type Ends, type StageRange, settleStage } from "../../src/power/stage-range.ts";
import { caseRiseK, roomC, warmUpMinutes } from "../../src/reference/activity-loads.ts";
import {
	airOverStages,
	copperShare,
	hotterInsideK,
	largeSinkStill,
	likeAir,
	movingAirFactor,
	readingK,
	sinksWorth,
	stageToSink,
	switchToAir,
	testRiseK,
	usualTestMinutes,
} from "../../src/reference/heat-paths.ts";
import { integratedEfficiency, stageClasses } from "../../src/reference/stage-classes.ts";
import { hotSpotByRepeating, stillKPerW, type TruePath, type TrueStages, warmedIn } from "./heat-oracle.ts";

/** Where most figures of a drawn board lie: bounds break where all figures but one or two push the same way. */
export type Tilt = "cool" | "hot" | "none";

/** A part of a range, from the end that cools, 0, to the end that heats, 1. */
function hotPart(tilt: Tilt): fc.Arbitrary<number> {
	const anywhere = { weight: 2, arbitrary: fc.double({ min: 0, max: 1, noNaN: true }) };
	const ends = { weight: 2, arbitrary: fc.constantFrom(0, 1) };
	if (tilt === "none") return fc.oneof(ends, anywhere);
	return fc.oneof({ weight: 16, arbitrary: fc.constant(tilt === "hot" ? 1 : 0) }, ends, anywhere);
}

interface Range {
	readonly low: number;
	readonly high: number;
}

export const between = ({ low, high }: Range, at: number): number => low + (high - low) * at;
const turned = ({ low, high }: Range): Range => ({ low: high, high: low });

/**
 * Efficiency curves by the words of their class: the best efficiency, and the one at 60 % of the rating. Both hold with
 * the usual loss of switching, which is a figure of its own.
 */
const usualSwitchingShare = (() => {
	const { low, high } = stageClasses.integratedSwitchNs;
	return (12 / 2) * (((low + high) / 2) * 1e-9) * (500e3 / 1.2);
})();

/** The rise of the curve whose least loss and whose loss at 60 % are given, by halving. */
function curveOhmOf(best: number, at60: number): number {
	const least = Math.max(0, 1 / best - 1 - usualSwitchingShare);
	const there = Math.max(least, 1 / at60 - 1 - usualSwitchingShare);
	const { load } = integratedEfficiency;
	// fixed x ohm = (least / 2) squared, so the loss at 60 % grows with ohm from where it is the least loss itself.
	let [low, high] = [least / 2 / load, 10];
	for (let count = 0; count < 60; count++) {
		const ohm = (low + high) / 2;
		if ((least / 2) ** 2 / ohm / load + ohm * load > there) high = ohm;
		else low = ohm;
	}
	return (low + high) / 2;
}

function classCurveOf({ peak, atLoad }: { readonly peak: number; readonly atLoad: number }) {
	const ohm = curveOhmOf(peak, atLoad);
	return { ohm, fixed: (1 / peak - 1 - usualSwitchingShare) ** 2 / (4 * ohm) };
}
const better = classCurveOf(integratedEfficiency.better);
const worse = classCurveOf(integratedEfficiency.worse);

/** A stage inside the class, with an efficiency at 60 %: what the two leave open of its curve is drawn. */
function curveWith(efficiencyPercent: number, fixedAt: number, bestAt: number) {
	const best = between({ low: integratedEfficiency.worse.peak, high: integratedEfficiency.better.peak }, bestAt);
	const ohm = curveOhmOf(best, efficiencyPercent / 100);
	return {
		curveFixed: between({ low: better.fixed, high: worse.fixed }, fixedAt),
		curveOhm: Math.min(worse.ohm, Math.max(better.ohm, ohm)),
	};
}

/** One board with nothing left open, and what a page would say that told all of it. */
export interface TrueBoard {
	readonly stages: TrueStages;
	readonly path: TruePath;
	/** How the air moves in the build: 0 still, 1 as in 200 ft/min. */
	readonly moving: number;
	readonly airC: number;
	/** Where between the ends of the load that counts the true load lies, 0 to 1. */
	readonly loadAt: number;
	readonly told: Required<Omit<Delivery, "measurements" | "pairing" | "controllerPhases">>;
	readonly toldAir: Required<AirOfBuild>;
}

const heatSinks = Object.keys(sinksWorth) as readonly (keyof typeof sinksWorth)[];
const fronts = Object.keys(caseRiseK) as readonly (keyof typeof caseRiseK)[];

function trueStages(tilt: Tilt) {
	const at = hotPart(tilt);
	const hotWhenHigh = (range: Range) => at.map((hot) => between(range, hot));
	const hotWhenLow = (range: Range) => at.map((hot) => between(turned(range), hot));
	return fc
		.record({
			kind: fc.constantFrom("integrated", "separate switches"),
			stages: hotWhenLow(stageClasses.stages).map(Math.round),
			coreVolts: hotWhenLow(stageClasses.coreVolts),
			kilohertz: hotWhenHigh(stageClasses.kilohertz),
			switchAt: at,
			highSwitchMohm: hotWhenHigh(stageClasses.highSwitchMohm),
			lowSwitchMohm: hotWhenHigh(stageClasses.lowSwitchMohm),
			lowSwitches: hotWhenLow(stageClasses.lowSwitches).map(Math.round),
			deadNs: hotWhenHigh(stageClasses.deadNs),
			diodeVolts: hotWhenHigh(stageClasses.diodeVolts),
			gateNc: hotWhenHigh(stageClasses.gateNc),
			ohmRisePerK: hotWhenHigh(stageClasses.ohmRisePerK),
			ratingA: hotWhenLow(stageClasses.ratingA),
			efficiencyPercent: hotWhenLow({
				low: 100 * integratedEfficiency.worse.atLoad,
				high: 100 * integratedEfficiency.better.atLoad,
			}),
			fixedAt: at,
			bestAt: at,
			coilMohm: hotWhenHigh(stageClasses.coilMohm),
			coilWarmth: hotWhenHigh(stageClasses.coilWarmth),
			coilNh: hotWhenLow(stageClasses.coilNh),
			coilHeatShare: hotWhenHigh(stageClasses.coilHeatShare),
		} as const)
		.map(({ switchAt, fixedAt, bestAt, efficiencyPercent, ...drawn }) => ({
			efficiencyPercent,
			stages: {
				...drawn,
				switchNs: between(
					drawn.kind === "integrated" ? stageClasses.integratedSwitchNs : stageClasses.switchNs,
					switchAt,
				),
				...curveWith(efficiencyPercent, fixedAt, bestAt),
			} satisfies TrueStages,
		}));
}

function truePath(tilt: Tilt) {
	const at = hotPart(tilt);
	return fc
		.record({
			heatSink: fc.constantFrom(...heatSinks),
			layers: fc.constantFrom(2, 4, 6, 8, 12),
			copperOz: fc.constantFrom(0.5, 1, 2, 4),
			copperAt: at,
			sinksAt: at,
			stageToSinkKPerW: at.map((hot) => between(stageToSink, hot)),
			largeSinkKPerW: at.map((hot) => between(largeSinkStill, hot)),
			airFactorAt: at,
			warmUpMinutes: at.map((hot) => between(turned(warmUpMinutes), hot)),
		})
		.map(({ heatSink, layers, copperOz, copperAt, sinksAt, airFactorAt, ...drawn }) => ({
			told: { heatSink, layers, copperOz },
			path: {
				...drawn,
				airFactor: between(movingAirFactor(heatSink), airFactorAt),
				sinks: between(turned(sinksWorth[heatSink]), sinksAt),
				copperKPerW: between(
					{ low: switchToAir.still.bare.least, high: switchToAir.still.bare.copper },
					between(turned(copperShare(layers, copperOz)), copperAt),
				),
			} satisfies TruePath,
		}));
}

/** Stages whose every figure is drawn, settled by the program: whichever end it takes, it takes the one value there is. */
export const settledByDraw: fc.Arbitrary<{ readonly stages: TrueStages; readonly settled: SettledStage }> = fc
	.constantFrom<Tilt[]>("cool", "hot", "none")
	.chain(trueStages)
	.map(({ stages }) => {
		const { kind, ...figures } = stages;
		const one = Object.fromEntries(Object.entries(figures).map(([name, value]) => [name, exactly(value)]));
		const range: StageRange = { kind, figures: one as StageRange["figures"], assumptions: [], open: [] };
		return { stages, settled: settleStage(range, everyEnd("hot")) };
	});

/** All groups of figures at one end. */
export function everyEnd(end: "cool" | "hot"): Ends {
	return Object.fromEntries(groups.map((group) => [group, end])) as Ends;
}

/** Groups of figures that push the heat the same way; coils may be a group of their own. */
const groups = ["stages", "volts", "rating", "hertz", "fixed", "perAmp", "ohm", "coil", "rise"];

/** How the air may move in a build, by what is told of it. */
export function movingIn({ coolerKind, caseFans }: AirOfBuild): Range {
	const byCooler = !coolerKind
		? airOverStages.unknown
		: airOverStages[coolerKind === "air" ? "case fans" : "behind a liquid cooler"];
	return caseFans === 0 ? { low: 0, high: (byCooler.low + byCooler.high) / 2 } : byCooler;
}

const trueAir = fc.record({
	summerRoom: fc.constantFrom(...summerRooms),
	frontOpen: fc.constantFrom(...fronts),
	coolerKind: fc.constantFrom("air", "liquid"),
	caseFans: fc.integer({ min: 0, max: 4 }),
} as const);

/** Boards whose figures all lie inside the classes that stand in for what is not told. */
export const trueBoards: fc.Arbitrary<TrueBoard> = fc
	.constantFrom<Tilt[]>("cool", "hot", "none")
	.chain((tilt) =>
		fc.record({
			drawn: trueStages(tilt),
			way: truePath(tilt),
			air: trueAir,
			movingAt: hotPart(tilt),
			loadAt: hotPart(tilt),
			advertisedAt: hotPart("none"),
		}),
	)
	.map(({ drawn, way, air, movingAt, loadAt, advertisedAt }) => {
		const { stages, efficiencyPercent } = drawn;
		const moving = between(turned(movingIn(air)), movingAt);
		return {
			stages,
			path: way.path,
			moving,
			loadAt,
			airC: roomC[air.summerRoom] + caseRiseK[air.frontOpen],
			told: {
				...way.told,
				// A first number that counts each stage once, or pairs of them.
				advertised: `${Math.round(between({ low: stages.stages, high: 2 * stages.stages }, advertisedAt))}+2`,
				coreStages: stages.stages,
				stageKind: stages.kind,
				stageRatingA: stages.ratingA,
				highSwitchMohm: stages.highSwitchMohm,
				lowSwitchMohm: stages.lowSwitchMohm,
				lowSwitchesPerStage: stages.lowSwitches,
				efficiencyPercent,
				switchingKhz: stages.kilohertz,
				coilMohm: stages.coilMohm,
				coilNh: stages.coilNh,
				thermalResistanceKPerW: stillKPerW(way.path, stages.stages) * way.path.airFactor ** moving,
			},
			toldAir: air,
		};
	});

/** Facts of a board that may be told or not; the resistance of all stages to air goes before others, so it stands alone. */
export const boardFacts = [
	"advertised",
	"coreStages",
	"stageKind",
	"stageRatingA",
	"highSwitchMohm",
	"lowSwitchMohm",
	"lowSwitchesPerStage",
	"efficiencyPercent",
	"switchingKhz",
	"coilMohm",
	"coilNh",
	"heatSink",
	"layers",
	"copperOz",
] as const satisfies readonly (keyof TrueBoard["told"])[];
export const airFacts = ["summerRoom", "frontOpen", "coolerKind", "caseFans"] as const;

function tell<T extends object, K extends keyof T>(all: T, told: readonly K[]): Partial<Pick<T, K>> {
	return Object.fromEntries(told.map((fact) => [fact, all[fact]])) as Partial<Pick<T, K>>;
}

/** A board with what is told of it, from nothing to all; and the thermal resistance it truly has in its build. */
export interface ToldBoard {
	readonly board: TrueBoard;
	readonly delivery: Delivery;
	readonly air: AirOfBuild;
	/** Whether the resistance of all stages to air is told. */
	readonly isGiven: boolean;
}

/** Boards with some of their facts told. */
export const toldBoards: fc.Arbitrary<ToldBoard> = fc
	.record({
		board: trueBoards,
		boardFacts: fc.subarray([...boardFacts]),
		airFacts: fc.subarray([...airFacts]),
		isGiven: fc.integer({ min: 0, max: 7 }).map((count) => count === 0),
	})
	.map(({ board, isGiven, ...facts }) => ({
		board,
		isGiven,
		delivery: {
			...tell(board.told, facts.boardFacts),
			...(isGiven ? { thermalResistanceKPerW: board.told.thermalResistanceKPerW } : {}),
		},
		air: tell(board.toldAir, facts.airFacts),
	}));

/** Thermal resistance of a board in its build, as far as it warms up in so many minutes, in K/W. */
export function trueKPerW({ path, stages, moving }: TrueBoard, minutes: number): number {
	return stillKPerW(path, stages.stages) * path.airFactor ** moving * warmedIn(path, minutes);
}

/** A fair test of a board, as a person would have made and written it down; null where it would tell nothing. */
export interface DrawnTest {
	readonly loadOver: number;
	readonly airC: number;
	readonly airflow: "still" | "case fans" | "blown at" | undefined;
	readonly measuredAt: "top of a stage" | "heat sink" | "back of the board" | undefined;
	readonly minutes: number | undefined;
	/** Minutes it did last where nobody says. */
	readonly silentMinutes: number;
	readonly parts: { readonly [K in "rise" | "reading" | "inside" | "moving"]: number };
}

export const drawnTests: fc.Arbitrary<DrawnTest> = fc.constantFrom<Tilt[]>("cool", "hot", "none").chain((tilt) => {
	const at = hotPart(tilt);
	return fc.record({
		loadOver: fc.constantFrom(0.3, 0.5, 0.7, 0.9, 1, 1.2, 1.5),
		airC: fc.constantFrom(10, 20, 22, 25, 30),
		airflow: fc.constantFrom(undefined, "still", "case fans", "blown at"),
		measuredAt: fc.constantFrom(undefined, "top of a stage", "heat sink", "back of the board"),
		minutes: fc.constantFrom(undefined, 2, 5, 10, 30, 60, 10_000),
		silentMinutes: fc.constantFrom(usualTestMinutes.low, 20, 60, usualTestMinutes.high),
		parts: fc.record({ rise: at, reading: at, inside: at, moving: at }),
	});
});

/** Readings of less than this are told apart from nothing by no thermometer, so such tests are not drawn, in K. */
const leastRiseK = 0.5;

/** Makes the test on the true board: every error that a reading may have is drawn from its assumed range. */
export function testOf({ board, air }: ToldBoard, buildLoadW: number, drawn: DrawnTest): Measurement | null {
	const { airflow, measuredAt, minutes, parts, airC } = drawn;
	const how = airflow ?? "unknown";
	const isLike = airflow === "case fans" && air.coolerKind === "air" && (air.caseFans ?? 0) > 0;
	const range = airOverStages[how];
	// Least air in the test and most in the build is as far as the two can be apart.
	const moving = isLike
		? Math.min(range.high, Math.max(range.low, board.moving + between(likeAir, parts.moving)))
		: between(range, parts.moving);
	const loadW = Math.min(2000, Math.max(1, buildLoadW * drawn.loadOver));
	const warmed = warmedIn(board.path, minutes ?? drawn.silentMinutes);
	const kelvinPerWatt = stillKPerW(board.path, board.stages.stages) * board.path.airFactor ** moving * warmed;
	const atStagesC = airC + between(testRiseK[how], 1 - parts.rise);
	const insideC = hotSpotByRepeating(board.stages, loadW, atStagesC, kelvinPerWatt);
	const stageC =
		insideC - between(hotterInsideK[measuredAt ?? "unknown"], parts.inside) - readingK * (2 * parts.reading - 1);
	if (!(stageC >= -20 && stageC <= 200) || insideC - atStagesC < leastRiseK || warmed < 0.05) return null;
	return {
		loadW,
		airC,
		stageC,
		...(airflow ? { airflow } : {}),
		...(measuredAt ? { measuredAt } : {}),
		...(minutes === undefined ? {} : { minutes }),
	};
}

const watts = (most: number) => fc.double({ min: 1, max: most, noNaN: true });
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });

/** Uses of a processor, from a measured figure of hours to the label alone. */
export const uses: fc.Arbitrary<UseOfProcessor> = fc.record({
	sustainedW: maybe(watts(400)),
	baseW: fc.double({ min: 10, max: 250, noNaN: true }),
	peakW: maybe(watts(400)),
	averagingS: maybe(fc.double({ min: 1, max: 100, noNaN: true })),
	limitPolicy: maybe(fc.constantFrom(...limitPolicies)),
	activities: maybe(fc.subarray([...activities])),
	sessionLength: maybe(fc.constantFrom(...sessionLengths)),
	raisesClock: fc.boolean(),
});

/** Any board that the schema takes, measurements and all. */
export const strangeDeliveries: fc.Arbitrary<Delivery> = fc
	.record({
		advertised: maybe(fc.oneof(fc.constantFrom("14+2+1", "0", "none", "640", "1"), fc.string({ minLength: 1 }))),
		coreStages: maybe(fc.constantFrom(1, 2, 8, 20, 64)),
		stageKind: maybe(fc.constantFrom("integrated", "separate switches")),
		stageRatingA: maybe(fc.constantFrom(5, 60, 300)),
		highSwitchMohm: maybe(fc.constantFrom(0.1, 5, 50)),
		lowSwitchMohm: maybe(fc.constantFrom(0.1, 3, 50)),
		lowSwitchesPerStage: maybe(fc.integer({ min: 1, max: 4 })),
		efficiencyPercent: maybe(
			fc.oneof(fc.constantFrom(50, 89, 93, 95, 99.5), fc.double({ min: 50, max: 99.5, noNaN: true })),
		),
		switchingKhz: maybe(fc.constantFrom(50, 400, 5000)),
		coilMohm: maybe(fc.constantFrom(0.01, 0.3, 20)),
		coilNh: maybe(fc.constantFrom(10, 220, 5000)),
		heatSink: maybe(fc.constantFrom(...heatSinks)),
		thermalResistanceKPerW: maybe(fc.constantFrom(0.05, 2, 100)),
		layers: maybe(fc.constantFrom(1, 6, 40)),
		copperOz: maybe(fc.constantFrom(0.25, 2, 8)),
		measurements: maybe(
			fc.array(
				fc.record(
					{
						loadW: fc.constantFrom(1, 20, 150, 2000),
						airC: fc.constantFrom(-20, 22, 60),
						stageC: fc.constantFrom(-20, 20, 70, 105, 200),
						airflow: fc.constantFrom("still", "case fans", "blown at"),
						minutes: fc.constantFrom(0, 1, 30, 10000),
						measuredAt: fc.constantFrom("back of the board", "top of the stage", "somewhere"),
					} as const,
					{ requiredKeys: ["loadW", "airC", "stageC"] },
				),
				{ maxLength: 3 },
			),
		),
	} as const)
	.map(
		(drawn) =>
			Object.fromEntries(Object.entries(drawn).filter(([, value]) => value !== undefined)) as unknown as Delivery,
	);

/** A stage hotter than this is past everything, in degrees C: there only that it is so counts. */
const hottestC = 400;

/** Whether one range lies in another, but for so much. */
export function liesIn(inner: Range, outer: Range, slack = 1e-6): boolean {
	const told = (value: number) => Math.min(value, hottestC);
	return told(inner.low) >= told(outer.low) - slack && told(inner.high) <= told(outer.high) + slack;
}

/** Never hotter at either end, but for the last digits of a double. */
export function isNoHotter(one: Range, than: Range): boolean {
	const told = (value: number) => Math.min(value, hottestC);
	return told(one.low) <= told(than.low) + 1e-6 && told(one.high) <= told(than.high) + 1e-6;
}
