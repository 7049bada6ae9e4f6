import { inputVolts } from "../reference/stage-classes.ts";
import type { WarmingHeat } from "./heat-path.ts";

/** One cause of loss in a stage, with its numbers settled: fixedW + wattsPerAmp x I + ohm x (I squared). */
export interface LossCause {
	readonly name: string;
	readonly fixedW: number;
	readonly wattsPerAmp: number;
	/** At `ohmC`. */
	readonly ohm: number;
	/** Whether the resistance rises with the temperature of the stage. */
	readonly warms: boolean;
	/** Whether the ripple of the coil counts on top of the direct current. */
	readonly ripples: boolean;
	/** The part of it that heats the stage; the rest leaves elsewhere. 0 to 1. */
	readonly intoStage: number;
}

/** The stages of a board with every number settled. All of one kind; current is shared alike. */
export interface SettledStage {
	/** Physical stages on the core rail. */
	readonly stages: number;
	readonly outputVolts: number;
	/** The mean square of the ripple in one coil, in A squared: peak-to-peak squared / 12. */
	readonly rippleSquared: number;
	/** Temperature at which the resistances hold, in degrees C, and their rise a kelvin from there. */
	readonly ohmC: number;
	readonly risePerK: number;
	readonly causes: readonly LossCause[];
	/** See heatSums. */
	readonly sums: HeatSums;
}

/** Watts that one stage loses to each cause, and all together. */
export interface StageLosses {
	/** Amperes in one stage that works. */
	readonly amps: number;
	/** Stages that work: at light load controllers let some rest (common practice). A mean, so it need not be whole. */
	readonly working: number;
	readonly watts: readonly { readonly name: string; readonly watts: number }[];
}

/** The causes added up for the heat that stays in one stage; worked out once, since it is asked for often. */
export interface HeatSums {
	readonly fixedW: number;
	readonly wattsPerAmp: number;
	/** Resistances that rise with temperature, at `ohmC`, and those that do not. */
	readonly warmOhm: number;
	readonly coldOhm: number;
	/** What ripple costs in the former; in the latter it is part of `fixedW`. */
	readonly warmRippleW: number;
}

/** Adds up the causes for the heat that stays in one stage. */
export function heatSums(causes: readonly LossCause[], rippleSquared: number): HeatSums {
	let [fixedW, wattsPerAmp, warmOhm, coldOhm, warmRippleW] = [0, 0, 0, 0, 0];
	for (const cause of causes) {
		const ripple = cause.ripples ? cause.ohm * rippleSquared : 0;
		fixedW += cause.intoStage * (cause.fixedW + (cause.warms ? 0 : ripple));
		wattsPerAmp += cause.intoStage * cause.wattsPerAmp;
		if (cause.warms) {
			warmOhm += cause.intoStage * cause.ohm;
			warmRippleW += cause.intoStage * ripple;
		} else coldOhm += cause.intoStage * cause.ohm;
	}
	return { fixedW, wattsPerAmp, warmOhm, coldOhm, warmRippleW };
}

/** Temperature that resistances are taken at to decide which stages rest; no stage is colder, in degrees C. */
const coldestC = 20;

/**
 * The current at which resting one more stage no longer pays: there the loss that every working stage has anyway is as
 * large as what resistance costs it. Taken with cold resistances, so that one stage more never makes all of them hotter.
 */
function restingAmps(stage: SettledStage): number {
	const { fixedW, warmOhm, coldOhm, warmRippleW } = stage.sums;
	const factor = 1 + stage.risePerK * (coldestC - stage.ohmC);
	return Math.sqrt((fixedW + factor * warmRippleW) / (factor * warmOhm + coldOhm));
}

/**
 * The heat that all stages take up at a load, by the temperature they have.
 *
 * @param loadW watts of the processor
 */
export function stageHeat(stage: SettledStage, loadW: number): WarmingHeat {
	const { sums } = stage;
	const amps = loadW / stage.outputVolts;
	const working = Math.min(stage.stages, amps / restingAmps(stage));
	if (working === 0) return { fixedW: 0, wattsPerC: 0 };
	// Resistance rises along a line, so heat does too: factor(T) = 1 + rise x (T - ohmC).
	const warmed = working * sums.warmRippleW + (sums.warmOhm * amps * amps) / working;
	const steady = working * sums.fixedW + sums.wattsPerAmp * amps + (sums.coldOhm * amps * amps) / working;
	return { fixedW: steady + warmed * (1 - stage.risePerK * stage.ohmC), wattsPerC: warmed * stage.risePerK };
}

/**
 * The load at which the stages, at a temperature, give so much heat: the other way round.
 *
 * @returns watts of the processor
 */
export function loadThatHeats(stage: SettledStage, heatW: number, stageC: number): number {
	const { sums } = stage;
	const factor = 1 + stage.risePerK * (stageC - stage.ohmC);
	const fixedW = sums.fixedW + factor * sums.warmRippleW;
	const ohm = sums.coldOhm + factor * sums.warmOhm;
	const each = restingAmps(stage);
	// While some stages rest, each that works carries the same current, and heat grows along a line.
	const wattsPerAmp = sums.wattsPerAmp + fixedW / each + ohm * each;
	const allWork = each * stage.stages;
	if (heatW <= wattsPerAmp * allWork) return (Math.max(0, heatW) / wattsPerAmp) * stage.outputVolts;
	// ohm / n x I^2 + perAmp x I + n x fixed = heat
	const [a, b, c] = [ohm / stage.stages, sums.wattsPerAmp, stage.stages * fixedW - heatW];
	return ((-b + Math.sqrt(b * b - 4 * a * c)) / (2 * a)) * stage.outputVolts;
}

/** What one working stage loses at a load and a temperature, cause by cause; the coil with all it loses. */
export function stageLosses(stage: SettledStage, loadW: number, stageC: number): StageLosses {
	const total = loadW / stage.outputVolts;
	const working = Math.min(stage.stages, total / restingAmps(stage));
	const amps = working === 0 ? 0 : total / working;
	const factor = 1 + stage.risePerK * (stageC - stage.ohmC);
	return {
		amps,
		working,
		watts: stage.causes.map(({ name, fixedW, wattsPerAmp, ohm, warms, ripples }) => ({
			name,
			watts:
				fixedW + wattsPerAmp * amps + ohm * (warms ? factor : 1) * (amps ** 2 + (ripples ? stage.rippleSquared : 0)),
		})),
	};
}

/** The part of the time that the high switch conducts. */
export function dutyOf(outputVolts: number): number {
	return outputVolts / inputVolts;
}
