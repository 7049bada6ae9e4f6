import { exactly, type Interval } from "../maths/interval.ts";
import type { Board } from "../parts/board.ts";
import {
	type Assumed,
	classHertz,
	classOutputVolts,
	classStageC,
	gateVolts,
	inputVolts,
	integratedEfficiency,
	stageClasses,
	switchOhmC,
} from "../reference/stage-classes.ts";
import { conductionHighW, conductionLowW, deadTimeW, gateW, switchingW } from "./buck-losses.ts";
import { coilRippleAmps } from "./coil-ripple.ts";
import { dutyOf, heatSums, type LossCause, type SettledStage } from "./settled-stage.ts";

export type Delivery = NonNullable<Board["powerDelivery"]>;
export type StageKind = NonNullable<Delivery["stageKind"]>;

/** A figure that was assumed, and what it stands in for. */
export interface Assumption extends Assumed {
	readonly what: string;
	/** The fact of the board or the build that would do away with it; null where no page has one. */
	readonly fact: string | null;
}

/**
 * Which end of its range each group of figures takes. Figures of a group push the heat the same way, and in step with
 * load and temperature alike: the coil stands apart from the switches, whose resistance rises with their heat.
 */
export type Group = "stages" | "volts" | "rating" | "hertz" | "fixed" | "perAmp" | "ohm" | "coil" | "rise";
export type Ends = Readonly<Record<Group, "cool" | "hot">>;

/** Everything that is known of the stages of a board, as ranges. */
export interface StageRange {
	readonly kind: StageKind;
	readonly figures: Readonly<Record<Figure, Interval>>;
	readonly assumptions: readonly Assumption[];
	/** Groups whose two ends differ. */
	readonly open: readonly Group[];
}

type Figure =
	| "stages"
	| "coreVolts"
	| "kilohertz"
	| "highSwitchMohm"
	| "lowSwitchMohm"
	| "lowSwitches"
	| "switchNs"
	| "deadNs"
	| "diodeVolts"
	| "gateNc"
	| "ohmRisePerK"
	| "ratingA"
	| "curveFixed"
	| "curveOhm"
	| "coilMohm"
	| "coilWarmth"
	| "coilNh"
	| "coilHeatShare";

/** What is known of the stages; one range for each kind they may be of. */
export function stageRangesOf(delivery: Delivery): readonly StageRange[] {
	const kinds: readonly StageKind[] = delivery.stageKind ? [delivery.stageKind] : ["integrated", "separate switches"];
	return kinds.map((kind) => stageRangeOf(delivery, kind));
}

function stageRangeOf(delivery: Delivery, kind: StageKind): StageRange {
	const assumptions: Assumption[] = [];
	const assume = (what: string, fact: keyof Delivery | null, assumed: Assumed): Interval => {
		assumptions.push({ what, fact: fact && `board.powerDelivery.${fact}`, ...assumed });
		return { low: assumed.low, high: assumed.high };
	};
	const known = (what: string, fact: keyof Delivery, assumed: Assumed): Interval => {
		const value = delivery[fact];
		return typeof value === "number" ? exactly(value) : assume(what, fact, assumed);
	};
	const isIntegrated = kind === "integrated";
	const none = exactly(0);
	if (!delivery.stageKind && !isIntegrated)
		assumptions.push({
			what: "kind of stage",
			fact: "board.powerDelivery.stageKind",
			low: 0,
			high: 1,
			unit: "",
			source: "common-practice",
			because: "integrated stages and separate switches were both counted",
		});
	const figures: Record<Figure, Interval> = {
		stages: stagesOf(delivery, assume),
		coreVolts: assume("voltage of the cores", null, stageClasses.coreVolts),
		kilohertz: known("switching frequency", "switchingKhz", stageClasses.kilohertz),
		highSwitchMohm: isIntegrated ? none : known("high switch", "highSwitchMohm", stageClasses.highSwitchMohm),
		lowSwitchMohm: isIntegrated ? none : known("one low switch", "lowSwitchMohm", stageClasses.lowSwitchMohm),
		lowSwitches: isIntegrated
			? exactly(1)
			: known("low switches a stage", "lowSwitchesPerStage", stageClasses.lowSwitches),
		switchNs: isIntegrated
			? assume("switching time, integrated stages", null, stageClasses.integratedSwitchNs)
			: assume("switching time, separate switches", null, stageClasses.switchNs),
		deadNs: isIntegrated ? none : assume("dead time", null, stageClasses.deadNs),
		diodeVolts: isIntegrated ? none : assume("voltage in the dead time", null, stageClasses.diodeVolts),
		gateNc: isIntegrated ? none : assume("charge of the gates", null, stageClasses.gateNc),
		ohmRisePerK: assume("rise of resistance with heat", null, stageClasses.ohmRisePerK),
		ratingA: isIntegrated ? known("rating of a stage", "stageRatingA", stageClasses.ratingA) : none,
		...(isIntegrated ? curveOf(delivery.efficiencyPercent, assume) : { curveFixed: none, curveOhm: none }),
		coilMohm: known("resistance of a coil", "coilMohm", stageClasses.coilMohm),
		coilWarmth: assume("warmth of the coil", null, stageClasses.coilWarmth),
		coilNh: known("inductance of a coil", "coilNh", stageClasses.coilNh),
		coilHeatShare: assume("heat that the coils add to the stages", null, stageClasses.coilHeatShare),
	};
	const isOpen = (...names: Figure[]) => names.some((name) => figures[name].low < figures[name].high);
	const open: readonly (readonly [Group, boolean])[] = [
		["stages", isOpen("stages")],
		["volts", true],
		["rating", isOpen("ratingA")],
		["hertz", isOpen("kilohertz")],
		["fixed", true],
		["perAmp", true],
		["ohm", isOpen("highSwitchMohm", "lowSwitchMohm", "lowSwitches", "curveOhm")],
		["coil", true],
		["rise", true],
	];
	return { kind, figures, assumptions, open: open.filter(([, is]) => is).map(([group]) => group) };
}

type Assume = (what: string, fact: keyof Delivery | null, assumed: Assumed) => Interval;

/** Counted stages; else between half and all of the first number advertised; else what boards usually have. */
function stagesOf({ coreStages, advertised }: Delivery, assume: Assume): Interval {
	if (coreStages !== undefined) return exactly(coreStages);
	const first = Number(/\d+/.exec(advertised ?? "")?.[0] ?? 0);
	if (first < 1 || first > 64) return assume("number of stages", "coreStages", stageClasses.stages);
	const { low, high, ...words } = stageClasses.advertisedStages;
	const range = { low: Math.max(Math.min(first, stageClasses.stages.low), Math.ceil(first * low)), high: first * high };
	return assume("number of stages", "coreStages", { ...words, ...range, unit: "stages" });
}

/**
 * An efficiency curve through two points, loss / output = fixed / x + ohm x x, where x is the load as a part of the
 * rating: its least value is 2 root (fixed x ohm), and it goes through the second point.
 */
function curveThrough(peak: number, atLoad: number, switching: number): { fixed: number; ohm: number } {
	const least = Math.max(0, 1 / peak - 1 - switching);
	const there = Math.max(least, 1 / atLoad - 1 - switching);
	const ohm = (there + Math.sqrt(there * there - least * least)) / (2 * integratedEfficiency.load);
	return { fixed: (least * least) / (4 * ohm), ohm };
}

/** Loss of switching as a part of the output, for which the classes hold. */
const classSwitching = (nanoseconds: number) =>
	switchingW(inputVolts, 1, nanoseconds * 1e-9, classHertz) / classOutputVolts;
const usualSwitching = classSwitching((stageClasses.integratedSwitchNs.low + stageClasses.integratedSwitchNs.high) / 2);

/** The curve of the class: the better and the worse stage, at the usual switching time. */
export const classCurve = {
	better: curveThrough(integratedEfficiency.better.peak, integratedEfficiency.better.atLoad, usualSwitching),
	worse: curveThrough(integratedEfficiency.worse.peak, integratedEfficiency.worse.atLoad, usualSwitching),
};

/** A known efficiency fixes the rise of the curve; what a stage loses without load stays that of its class. */
function curveOf(
	percent: number | undefined,
	assume: Assume,
): { readonly curveFixed: Interval; readonly curveOhm: Interval } {
	const { better, worse } = classCurve;
	const source = integratedEfficiency.source;
	const fixed = assume("loss of a stage without load", null, {
		low: better.fixed,
		high: worse.fixed,
		unit: "of its rated output",
		source,
		because: "as stages that are at best 95 and 93 % efficient, and 91 and 89 % at 60 % of their rating",
	});
	if (percent === undefined) {
		assume("efficiency of a stage at 60 % of its rating", "efficiencyPercent", {
			low: 100 * integratedEfficiency.worse.atLoad,
			high: 100 * integratedEfficiency.better.atLoad,
			unit: "%",
			source,
			because: "as above; no curve of a stage was read",
		});
		return { curveFixed: fixed, curveOhm: { low: better.ohm, high: worse.ohm } };
	}
	const ends = [integratedEfficiency.better.peak, integratedEfficiency.worse.peak].map(
		(peak) => curveThrough(peak, percent / 100, usualSwitching).ohm,
	);
	return { curveFixed: fixed, curveOhm: withinOrOwn(Math.min(...ends), Math.max(...ends), better.ohm, worse.ohm) };
}

/** A range cut to its class where the two meet; where they do not, what is known goes before the class. */
function withinOrOwn(low: number, high: number, least: number, most: number): Interval {
	const cut = { low: Math.max(low, least), high: Math.min(high, most) };
	return cut.low <= cut.high ? cut : { low, high };
}

/** The stages with every figure at one end of its range. */
export function settleStage({ kind, figures }: StageRange, ends: Ends): SettledStage {
	const at = (name: Figure, group: Group, isHotWhenHigh = true) =>
		(ends[group] === "hot") === isHotWhenHigh ? figures[name].high : figures[name].low;
	const outputVolts = at("coreVolts", "volts", false);
	const hertz = at("kilohertz", "hertz") * 1000;
	const rise = at("ohmRisePerK", "rise");
	const isIntegrated = kind === "integrated";
	const switching = switchingW(inputVolts, 1, at("switchNs", "perAmp") * 1e-9, hertz);
	const ofKind = isIntegrated
		? integratedCauses({
				ratedA: at("ratingA", "rating", false),
				hertz,
				switching,
				curveOhm: at("curveOhm", "ohm"),
				curveFixed: at("curveFixed", "fixed"),
			})
		: separateCauses({
				duty: dutyOf(outputVolts),
				switching,
				highOhm: at("highSwitchMohm", "ohm") * 1e-3,
				lowOhm: (at("lowSwitchMohm", "ohm") * 1e-3) / at("lowSwitches", "ohm", false),
				deadTime: deadTimeW(at("diodeVolts", "perAmp"), 1, at("deadNs", "perAmp") * 1e-9, hertz),
				gate: gateW(at("gateNc", "fixed") * 1e-9, gateVolts, hertz),
			});
	const causes = [
		...ofKind,
		{
			name: "coil",
			fixedW: 0,
			wattsPerAmp: 0,
			ohm: at("coilMohm", "coil") * 1e-3 * at("coilWarmth", "coil"),
			warms: false,
			ripples: true,
			intoStage: at("coilHeatShare", "coil"),
		},
	];
	const rippleSquared = rippleSquaredOf(figures, ends.fixed);
	return {
		stages: at("stages", "stages", false),
		outputVolts,
		rippleSquared,
		// The curve of an integrated stage holds for one that is warm already.
		ohmC: isIntegrated ? classStageC : switchOhmC,
		risePerK: isIntegrated ? rise / (1 + rise * (classStageC - switchOhmC)) : rise,
		causes,
		sums: heatSums(causes, rippleSquared),
	};
}

/** Losses of an integrated stage, from its efficiency curve. The curve holds with the usual ripple in it. */
function integratedCauses(of: {
	readonly ratedA: number;
	readonly hertz: number;
	readonly switching: number;
	readonly curveOhm: number;
	readonly curveFixed: number;
}): readonly LossCause[] {
	const standing = of.curveFixed * classOutputVolts * of.ratedA * (of.hertz / classHertz);
	return [
		inStage("conduction", 0, 0, (of.curveOhm * classOutputVolts) / of.ratedA, false),
		inStage("switching", 0, of.switching, 0, false),
		inStage("gate and standing loss", standing, 0, 0, false),
	];
}

/** Losses of a stage of separate switches, term by term. */
function separateCauses(of: {
	readonly duty: number;
	readonly switching: number;
	readonly highOhm: number;
	readonly lowOhm: number;
	readonly deadTime: number;
	readonly gate: number;
}): readonly LossCause[] {
	return [
		inStage("conduction, high switch", 0, 0, conductionHighW(1, of.duty, of.highOhm), true),
		inStage("conduction, low switch", 0, 0, conductionLowW(1, of.duty, of.lowOhm), true),
		inStage("switching", 0, of.switching, 0, false),
		inStage("dead time", 0, of.deadTime, 0, false),
		inStage("gate", of.gate, 0, 0, false),
	];
}

/** A cause all of whose heat stays in the stage; resistance of a switch warms. */
function inStage(name: string, fixedW: number, wattsPerAmp: number, ohm: number, ripples: boolean): LossCause {
	return { name, fixedW, wattsPerAmp, ohm, warms: ohm > 0, ripples, intoStage: 1 };
}

/** Peak-to-peak ripple in one coil, in A. */
export function coilRippleOf({ figures }: Pick<StageRange, "figures">): Interval {
	return { low: rippleAmpsOf(figures, "cool"), high: rippleAmpsOf(figures, "hot") };
}

/** The mean square of a triangle is a twelfth of its height squared. */
function rippleSquaredOf(figures: StageRange["figures"], end: "cool" | "hot"): number {
	return rippleAmpsOf(figures, end) ** 2 / 12;
}

/** The ripple's ends by themselves: more voltage means more ripple but less current, so the two are kept apart. */
function rippleAmpsOf({ coreVolts, coilNh, kilohertz }: StageRange["figures"], end: "cool" | "hot"): number {
	const isHot = end === "hot";
	return coilRippleAmps({
		inputVolts,
		outputVolts: isHot ? coreVolts.high : coreVolts.low,
		henry: (isHot ? coilNh.low : coilNh.high) * 1e-9,
		hertz: (isHot ? kilohertz.low : kilohertz.high) * 1000,
	});
}
