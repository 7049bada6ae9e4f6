import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { judge } from "../../src/choose/judge.ts";
import { scoreBoard, weightsFor } from "../../src/choose/score.ts";
import { allCriteria, criterionById } from "../../src/criteria/all-criteria.ts";
import { steadyPower } from "../../src/criteria/steady-power.ts";
import type { Interval } from "../../src/maths/interval.ts";
import type { Board } from "../../src/parts/board.ts";
import { type BuildFacts, type ImportanceTier, importanceTiers } from "../../src/parts/build.ts";
import { type SummerRoom, sessionLengths, summerRooms } from "../../src/parts/wants.ts";
import { powerFactsOf } from "../../src/power/power-facts.ts";
import { caseRiseK, peakOverBase } from "../../src/reference/activity-loads.ts";
import { sinksWorth } from "../../src/reference/heat-paths.ts";
import { integratedEfficiency, stageClasses } from "../../src/reference/stage-classes.ts";
import { knownAir, knownStages } from "../power/known-stages.ts";
import { buildFacts, type GivenBuild, subjectOf } from "../rules/rule-subject.ts";
import { demo } from "./demo.ts";
import { buildOf, countingOnly } from "./small-market.ts";

test("a criterion is found by the id it formerly had", () => {
	expect(criterionById("stage-load")).toBe(steadyPower);
});

/** Few enough for the weights to be worked out by hand, and each a point where all is known. */
const threeIds = ["backing", "connections", "rescue"] as const;
const threeCriteria = allCriteria.filter(({ id }) => (threeIds as readonly string[]).includes(id));
const weights = (importance: BuildFacts["importance"]) =>
	Object.fromEntries(weightsFor(buildFacts({ importance }), threeCriteria));

describe("weights: the centre of all that the answers allow", () => {
	test.each<[string, BuildFacts["importance"], Readonly<Record<string, number>>]>([
		["nobody has said: all alike", {}, { backing: 1 / 3, connections: 1 / 3, rescue: 1 / 3 }],
		[
			"all alike",
			{ backing: "somewhat", connections: "somewhat", rescue: "somewhat" },
			{ backing: 1 / 3, connections: 1 / 3, rescue: 1 / 3 },
		],
		// Rank order centroid of three: 11/18, 5/18, 2/18.
		[
			"one above the other",
			{ backing: "a-lot", connections: "somewhat", rescue: "a-little" },
			{ backing: 11 / 18, connections: 5 / 18, rescue: 2 / 18 },
		],
		[
			"two share a place",
			{ backing: "a-little", connections: "a-lot", rescue: "a-lot" },
			{ backing: 2 / 18, connections: 8 / 18, rescue: 8 / 18 },
		],
		// Rank order centroid of two: 3/4, 1/4.
		[
			"one does not matter at all",
			{ backing: "not-at-all", connections: "a-little", rescue: "a-lot" },
			{ connections: 1 / 4, rescue: 3 / 4 },
		],
		[
			"one nobody is sure of stays free: it takes a third, and the others share the rest",
			{ connections: "a-lot", rescue: "a-little" },
			{ backing: 1 / 3, connections: 1 / 2, rescue: 1 / 6 },
		],
		[
			"one placed, two free: the place alone tells nothing",
			{ rescue: "a-lot" },
			{ backing: 1 / 3, connections: 1 / 3, rescue: 1 / 3 },
		],
		["only one matters", { backing: "not-at-all", connections: "not-at-all", rescue: "a-little" }, { rescue: 1 }],
		["nothing matters", { backing: "not-at-all", connections: "not-at-all", rescue: "not-at-all" }, {}],
	])("%s", (_, importance, expected) => {
		const found = weights(importance);
		expect(Object.keys(found).sort()).toEqual(Object.keys(expected).sort());
		for (const [id, weight] of Object.entries(expected)) expect(found[id]).toBeCloseTo(weight, 12);
	});
});

/** A warranty for all years and both lists, 1 spare socket, 2 aids and no small help. */
const board: Partial<Board> = {
	warrantyYears: 5,
	listsPublished: { processors: true, memory: true },
	rearUsb: [{ plug: "A", count: 6 }],
	recovery: {
		flashWithoutProcessor: true,
		faultDisplay: "lights",
		resetAtBack: false,
		backPlateFixed: false,
		secondFirmware: false,
	},
	m2WithoutTools: 0,
};
const build: GivenBuild = {
	processor: { sustainedW: 120 },
	yearsKept: 5,
	rearDevices: 5,
	routerGbps: 0,
	importance: {
		...countingOnly(...threeIds),
		backing: "a-lot",
		connections: "somewhat",
		rescue: "a-little",
	},
};
const score = (facts: Partial<Board>, given: GivenBuild, ways: readonly GivenBuild[] = [{}]) =>
	scoreBoard(
		subjectOf({ board: facts, ...given }),
		ways.map((more) => buildFacts({ ...given, ...more })),
	);

describe("known values, worked out by hand", () => {
	test("all known: a point", () => {
		const { low, mid, high, parts } = score(board, build);
		// (11 x 1 + 5 x 0.7 + 2 x 0.9) / 18
		expect(mid).toBeCloseTo(90.5556, 4);
		expect([low, high]).toEqual([mid, mid]);
		expect(parts.map(({ criterionId, value }) => [criterionId, value.mid])).toEqual([
			["connections", 0.7],
			["rescue", 0.9],
			["backing", 1],
		]);
	});

	test("warranty not known, 2 to 5 years: worth 0.4 to 1, and 0.52 to 1 beside both lists", () => {
		const { warrantyYears: _, ...unpublished } = board;
		const { low, mid, high, parts } = score(unpublished, build);
		// The others bring (5 x 0.7 + 2 x 0.9) / 18 = 0.29444.
		expect(low).toBeCloseTo((100 * (11 * 0.52 + 5.3)) / 18, 9);
		expect(mid).toBeCloseTo((100 * (11 * 0.76 + 5.3)) / 18, 9);
		expect(high).toBeCloseTo((100 * (11 * 1 + 5.3)) / 18, 9);
		expect(parts[2]?.measure).toMatchObject({ low: 52, high: 100, missing: ["board.warrantyYears"] });
	});

	test("what matters not at all is left out of the score", () => {
		const { mid, parts } = score(board, { ...build, importance: { ...build.importance, backing: "not-at-all" } });
		expect(parts.map(({ criterionId }) => criterionId)).toEqual(["connections", "rescue"]);
		expect(mid).toBeCloseTo(100 * (0.75 * 0.7 + 0.25 * 0.9), 9);
	});

	test("what says nothing about this build is left out, and the others share its weight", () => {
		const { rearDevices: _, ...uncounted } = build;
		const { mid, parts } = score(board, uncounted);
		expect(parts.map(({ criterionId, weight }) => [criterionId, weight])).toEqual([
			["rescue", 0.25],
			["backing", 0.75],
		]);
		expect(mid).toBeCloseTo(100 * (0.75 * 1 + 0.25 * 0.9), 9);
	});

	test("nothing matters: no points, and no reasons", () => {
		const nothing = Object.fromEntries(allCriteria.map(({ id }) => [id, "not-at-all" as const]));
		expect(score(board, { ...build, importance: nothing })).toEqual({ low: 0, mid: 0, high: 0, parts: [] });
	});

	test("the price has no part in it", () => {
		const priced = { ...board, price: { minor: 99_999, currency: "EUR" } };
		expect(score(priced, { ...build, priceCap: { minor: 100, currency: "EUR" } })).toEqual(score(board, build));
	});

	test("over several ways an answer may turn out: from the least to the most, and their mean", () => {
		// Two years of warranty are worth 1 of two years, 0.75 of three, 0.4 of five; beside both lists 1, 0.8, 0.52.
		const ways = [2, 3, 5].map((yearsKept) => ({ yearsKept }));
		const { low, mid, high, parts } = score({ ...board, warrantyYears: 2 }, build, ways);
		expect(parts[2]?.value.low).toBeCloseTo(0.52, 12);
		expect(parts[2]?.value.high).toBeCloseTo(1, 12);
		expect(parts[2]?.value.mid).toBeCloseTo(2.32 / 3, 12);
		// (11 x 0.52 + 5.3) / 18, (11 x 2.32 / 3 + 5.3) / 18, (11 x 1 + 5.3) / 18
		expect([low, mid, high].map((points) => Math.round(points))).toEqual([61, 77, 91]);
		expect(parts[2]?.measure).toEqual({ low: expect.closeTo(52, 9), high: expect.closeTo(100, 9), missing: [] });
	});
});

describe("degrees to spare: a range, even where all is told", () => {
	const importance = { ...countingOnly("steady-power"), "steady-power": "a-lot" } as const;
	const stages = (kelvinPerWatt?: number): Partial<Board> => ({
		powerDelivery: {
			...knownStages,
			...(kelvinPerWatt === undefined ? {} : { thermalResistanceKPerW: kelvinPerWatt }),
		},
	});
	const at = (sustainedW: number): GivenBuild => ({ ...knownAir, importance, processor: { sustainedW } });
	/** What the criterion itself measures. */
	const degrees = (facts: Partial<Board>, given: GivenBuild) => {
		const { steady } = powerFactsOf({ id: "a-board", name: "A board", ...facts }, buildFacts(given));
		const measure = steady && steadyPower.measure({ "power.steady": steady });
		if (!measure) throw new Error("it measures nothing");
		return measure;
	};
	/** The scale by hand: 0.7 over the first 15 degrees, 0.3 over the next 15. */
	const worth = (kelvin: number) =>
		(0.7 * Math.max(0, Math.min(15, kelvin)) + 0.3 * Math.max(0, Math.min(15, kelvin - 15))) / 15;

	test("44 to 49 degrees are worth all: a point, though the measure is none", () => {
		const { low, mid, high, parts } = score(stages(1), at(120));
		expect([low, mid, high]).toEqual([100, 100, 100]);
		expect(parts).toHaveLength(1);
		expect(parts[0]?.measure).toEqual(degrees(stages(1), at(120)));
		expect(Math.floor(parts[0]?.measure.low ?? 0)).toBe(44);
		expect(Math.floor(parts[0]?.measure.high ?? 0)).toBe(49);
	});

	test("9 to 34 degrees: the worth of both ends, and the middle between them", () => {
		const forAnHour = { ...at(120), sessionLength: "an-hour" } as const;
		const measured = degrees(stages(4), forAnHour);
		expect([measured.low, measured.high].map(Math.floor)).toEqual([9, 34]);
		const { low, mid, high, parts } = score(stages(4), forAnHour);
		// 9 to 10 degrees are worth 0.42 to 0.467.
		expect(low).toBeGreaterThan(42);
		expect(low).toBeLessThan(46.7);
		expect(low).toBeCloseTo((100 * 0.7 * measured.low) / 15, 9);
		expect(high).toBe(100);
		expect(mid).toBeCloseTo((low + 100) / 2, 9);
		expect(parts[0]?.measure).toEqual(measured);
	});

	test("three loads that an answer leaves open: from the worst to the best, and the mean of the middles", () => {
		const ways = [60, 120, 180].map(at);
		const measured = ways.map((way) => degrees(stages(4), way));
		const values = measured.map(({ low, high }) => [worth(low), worth(high)] as const);
		const { low, mid, high, parts } = score(stages(4), at(60), ways);
		expect(new Set(values.map(([least]) => least)).size).toBe(3);
		expect(low).toBeCloseTo(100 * Math.min(...values.map(([least]) => least)), 9);
		expect(high).toBeCloseTo(100 * Math.max(...values.map(([, most]) => most)), 9);
		expect(mid).toBeCloseTo((100 * values.reduce((sum, [least, most]) => sum + (least + most) / 2, 0)) / 3, 9);
		expect([parts[0]?.measure.low, parts[0]?.measure.high]).toEqual([measured[2]?.low, measured[0]?.high]);
	});

	test.each<[string, GivenBuild, "one end" | "both ends"]>([
		["the room", { summerRoom: null }, "both ends"],
		["the front of the case", { case: {} }, "one end"],
		["the cooler", { cooler: "unknown" }, "one end"],
		["all three", { summerRoom: null, case: {}, cooler: "unknown" }, "both ends"],
	])("not knowing %s widens it", (_, unknown, widened) => {
		const known = score(stages(), at(120));
		const wide = score(stages(), { ...at(120), ...unknown });
		const [before, after] = [known.parts[0]?.measure, wide.parts[0]?.measure];
		if (!before || !after) throw new Error("it measures nothing");
		// An open front is the coolest there is, and a cooler with a fan blows most air over the stages.
		expect(after.low).toBeLessThan(before.low - 1);
		if (widened === "both ends") expect(after.high).toBeGreaterThan(before.high + 1);
		else expect(after.high).toBeCloseTo(before.high, 9);
	});
});

const importance = fc.record(
	Object.fromEntries(allCriteria.map(({ id }) => [id, fc.constantFrom<ImportanceTier>(...importanceTiers)])),
	{ requiredKeys: [] },
) as fc.Arbitrary<BuildFacts["importance"]>;
const aids = {
	flashWithoutProcessor: fc.boolean(),
	faultDisplay: fc.constantFrom("none" as const, "lights" as const, "digits" as const),
	resetAtBack: fc.boolean(),
	backPlateFixed: fc.boolean(),
	secondFirmware: fc.boolean(),
};
const recovery = fc.record(aids, { requiredKeys: [] });

/** Values of a class, often one of its ends. */
const within = ({ low, high }: Interval) =>
	fc.oneof(fc.constantFrom(low, high), fc.double({ min: low, max: high, noNaN: true }));
/** Facts of the power stages, within what is assumed of those that nobody tells. */
const delivery = {
	coreStages: fc.integer({ min: 4, max: 16 }),
	stageKind: fc.constantFrom("integrated" as const, "separate switches" as const),
	stageRatingA: within(stageClasses.ratingA),
	efficiencyPercent: within({
		low: 100 * integratedEfficiency.worse.atLoad,
		high: 100 * integratedEfficiency.better.atLoad,
	}),
	highSwitchMohm: within(stageClasses.highSwitchMohm),
	lowSwitchMohm: within(stageClasses.lowSwitchMohm),
	lowSwitchesPerStage: fc.constantFrom(1, 2),
	switchingKhz: within(stageClasses.kilohertz),
	coilMohm: within(stageClasses.coilMohm),
	coilNh: within(stageClasses.coilNh),
	heatSink: fc.constantFrom(...(Object.keys(sinksWorth) as (keyof typeof sinksWorth)[])),
	layers: fc.constantFrom(4, 6, 8),
	copperOz: fc.constantFrom(1, 2),
};
/** What a build tells of the air at the stages. */
const air = {
	summerRoom: fc.constantFrom(...summerRooms),
	frontOpen: fc.constantFrom(...(Object.keys(caseRiseK) as (keyof typeof caseRiseK)[])),
	coolerKind: fc.constantFrom("air" as const, "liquid" as const),
};
interface ToldAir {
	readonly summerRoom?: SummerRoom;
	readonly frontOpen?: keyof typeof caseRiseK;
	readonly coolerKind?: "air" | "liquid";
}
const airOf = ({ summerRoom, frontOpen, coolerKind }: ToldAir): GivenBuild => ({
	...(summerRoom ? { summerRoom } : {}),
	case: frontOpen ? { frontOpen } : "unknown",
	cooler: coolerKind ? { kind: coolerKind } : "unknown",
});

/** A board of which some is told, and what a person asks of it so that every criterion has something to say. */
interface Told {
	readonly delivery: NonNullable<Board["powerDelivery"]>;
	readonly sockets: number | null;
	readonly aids: Board["recovery"];
	readonly years: number | null;
	readonly lists: boolean | null;
	readonly withoutTools: number | null;
	readonly chipsetFan: boolean | null;
	readonly fansSlow: boolean | null;
	readonly ports: number | null;
	readonly wired: number | null;
}
const bothWays: ["4-pin PWM", "3-pin voltage"] = ["4-pin PWM", "3-pin voltage"];
const boardOf = ({ delivery, sockets, aids, years, lists, withoutTools, ...more }: Told): Partial<Board> => ({
	powerDelivery: delivery,
	...(sockets === null ? {} : { rearUsb: [{ plug: "A", count: sockets }] }),
	...(years === null ? {} : { warrantyYears: years }),
	...(lists === null ? {} : { listsPublished: { processors: lists, memory: lists } }),
	...(withoutTools === null ? {} : { m2WithoutTools: withoutTools }),
	...placesOf(more),
	...(aids ? { recovery: aids } : {}),
});
function placesOf({ chipsetFan, fansSlow, ports, wired }: Pick<Told, "chipsetFan" | "fansSlow" | "ports" | "wired">) {
	return {
		...(chipsetFan === null ? {} : { chipsetFan }),
		...(fansSlow === null
			? {}
			: { headers: { fans: [{ name: "FAN_1", use: "case", control: fansSlow ? bothWays : [bothWays[0]] }] } }),
		...(ports === null
			? {}
			: { drivePorts: Array.from({ length: ports }, (_, at) => ({ name: `SATA_${at + 1}`, kind: "SATA" as const })) }),
		...(wired === null ? {} : { wiredGbps: [wired] }),
	} satisfies Partial<Board>;
}
const wholeBoard = {
	sockets: fc.integer({ min: 4, max: 10 }),
	years: fc.integer({ min: 2, max: 5 }),
	lists: fc.boolean(),
	withoutTools: fc.nat({ max: 3 }),
	chipsetFan: fc.boolean(),
	fansSlow: fc.boolean(),
	ports: fc.integer({ min: 0, max: 8 }),
	wired: fc.constantFrom(1, 2.5, 10),
};
const perhaps = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });

/** Expects one range inside another, and its middle inside it. */
function expectInside(inner: Interval & { readonly mid: number }, outer: Interval & { readonly mid: number }): void {
	expect(inner.low).toBeGreaterThanOrEqual(outer.low - 1e-9);
	expect(inner.high).toBeLessThanOrEqual(outer.high + 1e-9);
	for (const { low, mid, high } of [inner, outer]) {
		expect(low).toBeLessThanOrEqual(mid + 1e-9);
		expect(mid).toBeLessThanOrEqual(high + 1e-9);
	}
}

test("a range holds every value that the unknown facts may have (1000 draws)", () => {
	const unknown = fc.record({
		told: fc.record({
			delivery: fc.record(delivery, { requiredKeys: [] }),
			sockets: perhaps(wholeBoard.sockets),
			years: perhaps(wholeBoard.years),
			lists: perhaps(wholeBoard.lists),
			withoutTools: perhaps(wholeBoard.withoutTools),
			chipsetFan: perhaps(wholeBoard.chipsetFan),
			fansSlow: perhaps(wholeBoard.fansSlow),
			ports: perhaps(wholeBoard.ports),
			wired: perhaps(wholeBoard.wired),
			aids: recovery,
		}),
		air: fc.record(air, { requiredKeys: [] }),
		importance,
		watts: fc.record({
			baseW: fc.integer({ min: 35, max: 170 }),
			peakFactor: perhaps(fc.double({ min: 0.5, max: 2.5, noNaN: true })),
		}),
		rearDevices: fc.integer({ min: 0, max: 12 }),
		laterThings: fc.array(fc.constant("SATA drive" as const), { maxLength: 4 }),
		routerGbps: fc.constantFrom(1, 2.5, 10),
		yearsKept: fc.integer({ min: 2, max: 8 }),
		sessionLength: fc.constantFrom(...sessionLengths),
	});
	const found = fc.record({
		truth: fc.record({ ...wholeBoard, delivery: fc.record(delivery), aids: fc.record(aids) }),
		trueAir: fc.record(air),
		share: fc.double({ min: 0, max: 1, noNaN: true }),
	});
	fc.assert(
		fc.property(unknown, found, ({ told, air, watts, ...given }, { truth, trueAir, share }) => {
			const { baseW, peakFactor } = watts;
			const peakW = peakFactor === null ? undefined : baseW * peakFactor;
			const processor = { baseW, ...(peakW === undefined ? {} : { peakW }) };
			const [least, most] = [Math.min(baseW, peakW ?? baseW), Math.max(baseW, peakW ?? peakOverBase.high * baseW)];
			const known = Object.fromEntries(Object.entries(told).filter(([, value]) => value !== null));
			const range = score(boardOf(told), { ...given, ...airOf(air), processor });
			const all = score(
				boardOf({
					...truth,
					...known,
					aids: { ...truth.aids, ...told.aids },
					delivery: { ...truth.delivery, ...told.delivery },
				}),
				{
					...given,
					...airOf({ ...trueAir, ...air }),
					processor: { ...processor, sustainedW: least + share * (most - least) },
				},
			);
			expectInside(all, range);
			expect(all.parts.map(({ criterionId }) => criterionId)).toEqual(
				range.parts.map(({ criterionId }) => criterionId),
			);
			for (const [at, part] of range.parts.entries()) {
				const { criterionId, value } = all.parts[at] ?? part;
				expectInside(value, part.value);
				// Degrees stay a range: what they come of is never told whole.
				if (criterionId !== "steady-power") expect(value.high - value.low, criterionId).toBeLessThan(1e-9);
			}
		}),
		{ numRuns: 1000 },
	);
});

test("weights sum to 1 where anything matters, and a score lies between 0 and 100", () => {
	fc.assert(
		fc.property(
			importance,
			recovery,
			fc.option(fc.nat({ max: 30 }), { nil: undefined }),
			(tiers, aids, rearDevices) => {
				const { low, high, parts } = score(
					{ recovery: aids },
					{ importance: tiers, ...(rearDevices === undefined ? {} : { rearDevices }) },
				);
				const total = parts.reduce((sum, { weight }) => sum + weight, 0);
				expect(total).toBeCloseTo(parts.length > 0 ? 1 : 0, 12);
				expect(low).toBeGreaterThanOrEqual(0);
				expect(high).toBeLessThanOrEqual(100 + 1e-9);
			},
		),
	);
});

test("a criterion is counted for every board of the market or for none", () => {
	const all = { ...build, importance: {} };
	for (const given of [build, all, { ...all, processor: "open" as const }, { importance: {} }]) {
		const whole = buildOf(given);
		const counted = judge(demo, whole).boards.map(({ subject }) =>
			scoreBoard(subject, [whole.facts])
				.parts.map(({ criterionId, weight }) => `${criterionId} ${weight}`)
				.join(),
		);
		expect(new Set(counted).size).toBe(1);
		const countsHeat = counted[0]?.includes("steady-power");
		// Without a processor heat may be anything; it is not left out, or the rest would look sure.
		expect(countsHeat, JSON.stringify(given)).toBe(given !== build);
	}
});
