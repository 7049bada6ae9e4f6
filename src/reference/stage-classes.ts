import type { SourceId } from "./sources.ts";

/** What stands in for a figure that nobody publishes: it lies between two, for a reason. */
export interface Assumed {
	readonly low: number;
	readonly high: number;
	readonly unit: string;
	readonly source: SourceId;
	/** Where the two ends come from, as words. */
	readonly because: string;
}

/** Supply voltage of the stages, the 12 V of the processor plugs. */
export const inputVolts = 12;

/** Switching frequency for which the classes of integrated stages are given, in Hz. */
export const classHertz = 500_000;

/** Output voltage for which the efficiencies of integrated stages are given. */
export const classOutputVolts = 1.2;

/** Stage temperature for which the efficiencies of integrated stages are given, in degrees C (own convention). */
export const classStageC = 50;

/** Temperature for which data sheets give the resistance of separate switches, in degrees C. */
export const switchOhmC = 25;

/** Figures of a stage and its coil that no board's page gives. */
export const stageClasses = {
	coreVolts: {
		low: 1.1,
		high: 1.3,
		unit: "V",
		source: "from-memory",
		because: "under heavy load; examples in controllers' data sheets take 1.2 to 1.3 V",
	},
	advertisedStages: {
		low: 0.5,
		high: 1,
		unit: "of the number advertised",
		source: "common-practice",
		because: "the first advertised number can count pairs",
	},
	stages: {
		low: 3,
		high: 24,
		unit: "stages",
		source: "common-practice",
		because: "few boards have fewer or more",
	},
	kilohertz: {
		low: 300,
		high: 600,
		unit: "kHz",
		source: "from-memory",
		because: "examples in data sheets run from 300 to 400, newer stages to 600",
	},
	highSwitchMohm: {
		low: 4.1,
		high: 9.8,
		unit: "mohm",
		source: "adp3162",
		because: "worked examples run from 4.1 (LM2727) over 5.4 (ADP1872) to 9.8 (ADP3162)",
	},
	lowSwitchMohm: {
		low: 2,
		high: 9.8,
		unit: "mohm",
		source: "adp3162",
		because: "worked examples run from 5.4 (ADP1872) to 9.8 (ADP3162), newer switches down to 2 (from memory)",
	},
	lowSwitches: {
		low: 1,
		high: 2,
		unit: "low switches a stage",
		source: "adp3166",
		because: "one low switch a stage, or two side by side as in this controller's example",
	},
	switchNs: {
		low: 10,
		high: 31,
		unit: "ns",
		source: "lm2745",
		because: "rise and fall together: 10 (AEK59), 20 (worked out of ADP1872), 31 (LM2745)",
	},
	deadNs: {
		low: 40,
		high: 60,
		unit: "ns",
		source: "rohm-aek59",
		because: "both dead times: 20 + 20 (ADP1872), 30 + 30 (AEK59)",
	},
	diodeVolts: { low: 0.5, high: 0.84, unit: "V", source: "adp1872", because: "0.5 (AEK59) to 0.84 (ADP1872)" },
	gateNc: {
		low: 34,
		high: 72,
		unit: "nC",
		source: "lm2727",
		because: "both switches: 2 x 17 (ADP1872) to 2 x 36 (LM2727)",
	},
	ohmRisePerK: { low: 0.004, high: 0.006, unit: "a kelvin", source: "ltc3735", because: "0.4 to 0.6 % a kelvin" },
	ratingA: {
		low: 35,
		high: 90,
		unit: "A",
		source: "sic533",
		because: "from 35 A to 90 A, the latter from memory",
	},
	integratedSwitchNs: {
		low: 4,
		high: 8,
		unit: "ns",
		source: "from-memory",
		because: "rise and fall inside one chip take a few nanoseconds",
	},
	coilMohm: {
		low: 0.15,
		high: 0.8,
		unit: "mohm",
		source: "from-memory",
		because: "coils of processor stages; older examples in data sheets have 2.5 to 4",
	},
	coilWarmth: {
		low: 1,
		high: 1.3,
		unit: "times its cold resistance",
		source: "from-memory",
		because: "copper gains 0.39 % a kelvin, so a tenth at 50 degrees C and 0.3 at 100",
	},
	coilNh: { low: 150, high: 470, unit: "nH", source: "from-memory", because: "coils of processor stages" },
	coilHeatShare: {
		low: 0,
		high: 0.5,
		unit: "of the coil's heat",
		source: "own-convention",
		because: "the coils stand beside the stages and warm the same copper",
	},
} as const satisfies Readonly<Record<string, Assumed>>;

/** Gate voltage of separate switches (AEK59 and ADP1872 drive with 5 V). */
export const gateVolts = 5;

/**
 * The better and the worse end of integrated stages, each by two points of its efficiency curve, in 0 to 1. From memory;
 * no curve was read. What lies between the two, in standing loss and in resistance, counts as possible.
 */
export const integratedEfficiency = {
	better: { peak: 0.95, atLoad: 0.91 },
	worse: { peak: 0.93, atLoad: 0.89 },
	/** The load of the second point, as a part of the rated current. */
	load: 0.6,
	source: "from-memory",
} as const satisfies { better: object; worse: object; load: number; source: SourceId };
