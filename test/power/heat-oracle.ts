import { switchOhmC } from "../../src/reference/stage-classes.ts";

// What src/power bounds, reckoned here for one board whose every figure is settled. Nothing of src/power is used: each
// loss is summed from first principles, and what has a closed formula there is searched for or repeated here.

/** The stages of one board with nothing left open, in the units of the facts. */
export interface TrueStages {
	readonly kind: "integrated" | "separate switches";
	readonly stages: number;
	readonly coreVolts: number;
	readonly kilohertz: number;
	readonly switchNs: number;
	/** Of one switch, at 25 degrees C. */
	readonly highSwitchMohm: number;
	readonly lowSwitchMohm: number;
	readonly lowSwitches: number;
	readonly deadNs: number;
	readonly diodeVolts: number;
	readonly gateNc: number;
	/** Of the resistance at 25 degrees C. */
	readonly ohmRisePerK: number;
	readonly ratingA: number;
	/** Loss over output is fixed / x + ohm x x, where x is the current over the rating; see EfficiencyCurve. */
	readonly curveFixed: number;
	readonly curveOhm: number;
	readonly coilMohm: number;
	readonly coilWarmth: number;
	readonly coilNh: number;
	readonly coilHeatShare: number;
}

/** How the heat of one board leaves, in K/W; and how fast it warms up. */
export interface TruePath {
	/** Through the copper under one stage, in still air. */
	readonly copperKPerW: number;
	/** Large sinks that the heat sinks are worth; the rest counts only where there are any. */
	readonly sinks: number;
	readonly stageToSinkKPerW: number;
	readonly largeSinkKPerW: number;
	/** What air like 200 ft/min makes of the resistance. */
	readonly airFactor: number;
	readonly warmUpMinutes: number;
}

const plugVolts = 12;
const curveHertz = 500e3;
const curveVolts = 1.2;
const curveC = 50;
const gateDriveVolts = 5;
/** Controllers are taken to decide by resistances at this temperature which stages rest, in degrees C. */
const restingC = 20;

/** Peak-to-peak ripple in one coil, in A: while the high switch is on the coil sees input less output voltage. */
export function rippleA(board: TrueStages): number {
	const onSeconds = board.coreVolts / plugVolts / (board.kilohertz * 1e3);
	return ((plugVolts - board.coreVolts) * onSeconds) / (board.coilNh * 1e-9);
}

/** What one working stage loses to each cause, in W, with so many amperes on average and at so many degrees C. */
export function lossesOfOne(board: TrueStages, amps: number, celsius: number): Readonly<Record<string, number>> {
	const hertz = board.kilohertz * 1e3;
	const warmer = 1 + board.ohmRisePerK * (celsius - switchOhmC);
	const meanSquare = amps ** 2 + rippleA(board) ** 2 / 12;
	const cycles = (joules: number) => joules * hertz;
	// Voltage falls while current rises along a line: half of the product, for the seconds it takes.
	const switching = cycles((plugVolts * amps * board.switchNs * 1e-9) / 2);
	const coil = meanSquare * (board.coilMohm / 1e3) * board.coilWarmth;
	if (board.kind === "integrated") {
		const ratedOutputW = curveVolts * board.ratingA;
		const load = amps / board.ratingA;
		const atCurve = 1 + board.ohmRisePerK * (curveC - switchOhmC);
		return {
			// The curve gives losses over output: output is load x rated output.
			conduction: board.curveOhm * load * (load * ratedOutputW) * (warmer / atCurve),
			switching,
			"gate and standing loss": (board.curveFixed / load) * (load * ratedOutputW) * (hertz / curveHertz),
			coil,
		};
	}
	const on = board.coreVolts / plugVolts;
	return {
		"conduction, high switch": on * meanSquare * (board.highSwitchMohm / 1e3) * warmer,
		"conduction, low switch": (1 - on) * meanSquare * (board.lowSwitchMohm / 1e3 / board.lowSwitches) * warmer,
		switching,
		"dead time": cycles(board.diodeVolts * amps * board.deadNs * 1e-9),
		gate: cycles(gateDriveVolts * board.gateNc * 1e-9),
		coil,
	};
}

/** The part of these losses that warms the stage, in W. */
function heatOfOne(board: TrueStages, amps: number, celsius: number): number {
	const { coil = 0, ...inStage } = lossesOfOne(board, amps, celsius);
	return Object.values(inStage).reduce((sum, watts) => sum + watts, 0) + board.coilHeatShare * coil;
}

const golden = (Math.sqrt(5) - 1) / 2;

/** The amperes in one stage at which an ampere costs least, by golden section; with fewer, one stage more rests. */
export function thriftiestAmps(board: TrueStages): number {
	const costOf = (exponent: number) => heatOfOne(board, Math.exp(exponent), restingC) / Math.exp(exponent);
	let [low, high] = [Math.log(1e-3), Math.log(1e4)];
	for (let count = 0; count < 75; count++) {
		const [one, other] = [high - golden * (high - low), low + golden * (high - low)];
		if (costOf(one) < costOf(other)) high = other;
		else low = one;
	}
	return Math.exp((low + high) / 2);
}

/** Stages that work at a load; a mean over time, so it need not be whole. */
export function workingStages(board: TrueStages, loadW: number, thriftiest = thriftiestAmps(board)): number {
	return Math.min(board.stages, loadW / board.coreVolts / thriftiest);
}

/** Heat in all stages at a load and a temperature, in W. */
export function heatOfAll(
	board: TrueStages,
	loadW: number,
	celsius: number,
	thriftiest = thriftiestAmps(board),
): number {
	const working = workingStages(board, loadW, thriftiest);
	return working === 0 ? 0 : working * heatOfOne(board, loadW / board.coreVolts / working, celsius);
}

/** Thermal resistance of all stages to still air, in K/W: watts a kelvin by each way, added up. */
export function stillKPerW(path: TruePath, stages: number): number {
	const byCopper = stages / path.copperKPerW;
	const bySinks = path.sinks > 0 ? 1 / (path.stageToSinkKPerW / stages + path.largeSinkKPerW / path.sinks) : 0;
	return 1 / (byCopper + bySinks);
}

/** How far it warms up in so many minutes, 0 to 1. */
export function warmedIn(path: TruePath, minutes: number): number {
	return minutes === Number.POSITIVE_INFINITY ? 1 : 1 - Math.E ** (-minutes / path.warmUpMinutes);
}

/**
 * Temperature of the stages: reckon the heat, warm up, reckon the heat anew, until nothing changes.
 *
 * @param endlessC hotter than this is hotter than anything: the search ends there, in degrees C
 * @returns degrees C; infinite where it has no end
 */
export function hotSpotByRepeating(
	board: TrueStages,
	loadW: number,
	airC: number,
	kelvinPerWatt: number,
	thriftiest = thriftiestAmps(board),
	endlessC = 1e5,
): number {
	let celsius = airC;
	for (let count = 0; count < 20_000; count++) {
		const next = airC + kelvinPerWatt * heatOfAll(board, loadW, celsius, thriftiest);
		if (next > endlessC) return Number.POSITIVE_INFINITY;
		if (Math.abs(next - celsius) < 1e-9) return next;
		celsius = next;
	}
	return Number.POSITIVE_INFINITY;
}

/**
 * The load that brings the stages to a temperature, by halving.
 *
 * @returns watts of the processor; 0 where the air is as warm already
 */
export function loadByHalving(
	board: TrueStages,
	lineC: number,
	airC: number,
	kelvinPerWatt: number,
	thriftiest = thriftiestAmps(board),
): number {
	let [low, high] = [0, 1];
	const isPast = (loadW: number) => hotSpotByRepeating(board, loadW, airC, kelvinPerWatt, thriftiest, lineC) > lineC;
	while (!isPast(high)) high *= 2;
	for (let count = 0; count < 45; count++) {
		const middle = (low + high) / 2;
		if (isPast(middle)) high = middle;
		else low = middle;
	}
	return (low + high) / 2;
}
