import { describe, expect, test } from "vitest";
import type { Interval } from "../../src/maths/interval.ts";
import { type PowerInputs, steadyPowerOf } from "../../src/power/steady-power.ts";
import { factsThatNarrow } from "../../src/power/what-narrows.ts";
import { caseRiseK } from "../../src/reference/activity-loads.ts";
import { sinksWorth } from "../../src/reference/heat-paths.ts";

const air = { summerRoom: "warm", frontOpen: "slits", coolerKind: "air", caseFans: 2 } as const;
const use = { sustainedW: 140 };
const board = {
	coreStages: 10,
	stageKind: "integrated",
	stageRatingA: 60,
	efficiencyPercent: 90,
	switchingKhz: 500,
	coilMohm: 0.2,
	coilNh: 150,
	heatSink: "both sides",
	layers: 6,
	copperOz: 1,
} as const;

function steadyOf(inputs: PowerInputs) {
	const steady = steadyPowerOf(inputs);
	if (!steady) throw new Error("The watts of the processor are known here.");
	return steady;
}

const narrowing = (inputs: PowerInputs) => factsThatNarrow(inputs, steadyOf(inputs));

/** Width of the temperature, in K; what is hotter than 150 degrees C counts as that. */
function widthOf(inputs: PowerInputs): number {
	const { low, high }: Interval = steadyOf(inputs).hotSpotC;
	return Math.min(150, high) - Math.min(150, low);
}

const without = <K extends keyof typeof board>(...facts: K[]): PowerInputs => ({
	delivery: Object.fromEntries(Object.entries(board).filter(([fact]) => !(facts as string[]).includes(fact))),
	use,
	air,
});

/** How much narrower the temperature is on average, in K. */
function worthOf(inputs: PowerInputs, known: readonly PowerInputs[]): number {
	return widthOf(inputs) - known.reduce((sum, one) => sum + widthOf(one), 0) / known.length;
}

describe("facts that narrow", () => {
	test("are none but a test, where all else is known", () => {
		expect(narrowing({ delivery: board, use, air })).toEqual(["board.powerDelivery.measurements"]);
		expect(narrowing({ delivery: { ...board, measurements: [] }, use, air })).toEqual([
			"board.powerDelivery.measurements",
		]);
	});

	test("are named only where they are missing", () => {
		for (const fact of ["coreStages", "heatSink", "stageRatingA", "efficiencyPercent"] as const) {
			expect(narrowing(without(fact))).toContain(`board.powerDelivery.${fact}`);
			expect(narrowing({ delivery: board, use, air })).not.toContain(`board.powerDelivery.${fact}`);
		}
	});

	test("that would change nothing are not named", () => {
		expect(narrowing(without("switchingKhz", "coilMohm", "coilNh"))).not.toContain("board.powerDelivery.coilNh");
		const finned = { coreStages: 12, heatSink: "finned", layers: 8 } as const;
		// Ratings and curves are those of integrated stages, resistances those of separate switches.
		const integrated = narrowing(without("stageRatingA", "efficiencyPercent"));
		const separate = narrowing({ delivery: { ...finned, stageKind: "separate switches" }, use, air });
		expect(integrated).not.toContain("board.powerDelivery.lowSwitchMohm");
		expect(separate).toContain("board.powerDelivery.lowSwitchMohm");
		expect(integrated).toContain("board.powerDelivery.stageRatingA");
		expect(separate).not.toContain("board.powerDelivery.stageRatingA");
		expect(separate).not.toContain("board.powerDelivery.efficiencyPercent");
	});

	test("are those of the build too", () => {
		const open = narrowing({ delivery: board, use, air: {} });
		expect(open).toEqual(expect.arrayContaining(["summerRoom", "case.frontOpen"]));
		expect(narrowing({ delivery: board, use, air })).not.toContain("summerRoom");
		const label = { baseW: 100, peakW: 180 };
		expect(narrowing({ delivery: board, use: label, air })).toContain("processor.sustainedW");
		expect(narrowing({ delivery: board, use: { ...label, sustainedW: 120 }, air })).not.toContain(
			"processor.sustainedW",
		);
		expect(narrowing({ delivery: board, use: { peakW: 180, limitPolicy: "fixed" }, air })).not.toContain(
			"processor.sustainedW",
		);
	});

	// Each worth is reckoned here anew, at every value that the fact may have.
	test("come by what they are worth on average, and no less than 2 K", () => {
		const inputs: PowerInputs = { ...without("heatSink"), air: { coolerKind: "air", caseFans: 2 } };
		const { delivery } = inputs;
		const worth = new Map<string, number>([
			[
				"board.powerDelivery.heatSink",
				worthOf(
					inputs,
					(Object.keys(sinksWorth) as (keyof typeof sinksWorth)[]).map((heatSink) => ({
						...inputs,
						delivery: { ...delivery, heatSink },
					})),
				),
			],
			[
				"summerRoom",
				worthOf(
					inputs,
					(["cool", "warm", "fan-on"] as const).map((summerRoom) => ({
						...inputs,
						air: { ...inputs.air, summerRoom },
					})),
				),
			],
			[
				"case.frontOpen",
				worthOf(
					inputs,
					(Object.keys(caseRiseK) as (keyof typeof caseRiseK)[]).map((frontOpen) => ({
						...inputs,
						air: { ...inputs.air, frontOpen },
					})),
				),
			],
		]);
		const byWorth = [...worth]
			.filter(([, kelvin]) => kelvin >= 2)
			.sort(([, one], [, other]) => other - one)
			.map(([fact]) => fact);
		expect(byWorth.length).toBeGreaterThanOrEqual(2);
		expect(narrowing(inputs).filter((fact) => worth.has(fact))).toEqual(byWorth);
	});

	test("of little worth are left out: under 2 K of a light load", () => {
		const light = { ...without("heatSink", "coilMohm", "stageRatingA", "switchingKhz"), use: { sustainedW: 5 } };
		expect(narrowing(light)).toEqual([]);
		const heavy = { ...light, use: { sustainedW: 200 } };
		expect(narrowing(heavy).length).toBeGreaterThan(1);
	});

	test("count a range that has no end as one up to 150 degrees C", () => {
		const inputs: PowerInputs = { delivery: { stageKind: "separate switches" }, use: { sustainedW: 60 }, air };
		expect(steadyOf(inputs).hotSpotC.high).toBe(Number.POSITIVE_INFINITY);
		expect(narrowing(inputs)).toContain("board.powerDelivery.coreStages");
	});

	test("of no use past every limit: a range from 150 degrees C up has no width", () => {
		const burning: PowerInputs = {
			delivery: { coreStages: 1, stageKind: "separate switches", heatSink: "none" },
			use: { sustainedW: 400 },
			air,
		};
		expect(steadyOf(burning).hotSpotC.low).toBeGreaterThan(150);
		expect(narrowing(burning)).toEqual([]);
	});

	// Half to all of 20 are 10 to 20 stages; 6 of them are none that it may have.
	test("are tried at values they may have: a counted number inside what is advertised", () => {
		const inputs: PowerInputs = { ...without("coreStages") };
		const advertised: PowerInputs = { ...inputs, delivery: { ...inputs.delivery, advertised: "20+2" } };
		const counts = [10, 15, 20].map((coreStages) => ({
			...advertised,
			delivery: { ...advertised.delivery, coreStages },
		}));
		expect(worthOf(advertised, counts)).toBeGreaterThan(3);
		expect(narrowing(advertised)).toContain("board.powerDelivery.coreStages");
	});
});
