import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { judge } from "../../src/choose/judge.ts";
import { scoreBoard, weightsFor } from "../../src/choose/score.ts";
import { allCriteria } from "../../src/criteria/all-criteria.ts";
import type { Board } from "../../src/parts/board.ts";
import { type BuildFacts, type ImportanceTier, importanceTiers } from "../../src/parts/build.ts";
import { buildFacts, type GivenBuild, subjectOf } from "../rules/rule-subject.ts";
import { demo } from "./demo.ts";
import { buildOf, countingOnly } from "./small-market.ts";

/** Few enough for the weights to be worked out by hand. */
const threeIds = ["stage-load", "spare-sockets", "rescue"] as const;
const threeCriteria = allCriteria.filter(({ id }) => (threeIds as readonly string[]).includes(id));
const weights = (importance: BuildFacts["importance"]) =>
	Object.fromEntries(weightsFor(buildFacts({ importance }), threeCriteria));

describe("weights: the centre of all that the answers allow", () => {
	test.each<[string, BuildFacts["importance"], Readonly<Record<string, number>>]>([
		["nobody has said: all alike", {}, { "stage-load": 1 / 3, "spare-sockets": 1 / 3, rescue: 1 / 3 }],
		[
			"all alike",
			{ "stage-load": "somewhat", "spare-sockets": "somewhat", rescue: "somewhat" },
			{ "stage-load": 1 / 3, "spare-sockets": 1 / 3, rescue: 1 / 3 },
		],
		// Rank order centroid of three: 11/18, 5/18, 2/18.
		[
			"one above the other",
			{ "stage-load": "a-lot", "spare-sockets": "somewhat", rescue: "a-little" },
			{ "stage-load": 11 / 18, "spare-sockets": 5 / 18, rescue: 2 / 18 },
		],
		[
			"two share a place",
			{ "stage-load": "a-little", "spare-sockets": "a-lot", rescue: "a-lot" },
			{ "stage-load": 2 / 18, "spare-sockets": 8 / 18, rescue: 8 / 18 },
		],
		// Rank order centroid of two: 3/4, 1/4.
		[
			"one does not matter at all",
			{ "stage-load": "not-at-all", "spare-sockets": "a-little", rescue: "a-lot" },
			{ "spare-sockets": 1 / 4, rescue: 3 / 4 },
		],
		[
			"one nobody is sure of stays free: it takes a third, and the others share the rest",
			{ "spare-sockets": "a-lot", rescue: "a-little" },
			{ "stage-load": 1 / 3, "spare-sockets": 1 / 2, rescue: 1 / 6 },
		],
		[
			"one placed, two free: the place alone tells nothing",
			{ rescue: "a-lot" },
			{ "stage-load": 1 / 3, "spare-sockets": 1 / 3, rescue: 1 / 3 },
		],
		[
			"only one matters",
			{ "stage-load": "not-at-all", "spare-sockets": "not-at-all", rescue: "a-little" },
			{ rescue: 1 },
		],
		["nothing matters", { "stage-load": "not-at-all", "spare-sockets": "not-at-all", rescue: "not-at-all" }, {}],
	])("%s", (_, importance, expected) => {
		const found = weights(importance);
		expect(Object.keys(found).sort()).toEqual(Object.keys(expected).sort());
		for (const [id, weight] of Object.entries(expected)) expect(found[id]).toBeCloseTo(weight, 12);
	});
});

/** 10 A a stage, 1 spare socket, 2 aids. */
const board: Partial<Board> = {
	powerDelivery: { coreStages: 10 },
	rearUsb: [{ plug: "A", count: 6 }],
	recovery: { flashWithoutProcessor: true, faultDisplay: "lights", resetAtBack: false },
};
const build: GivenBuild = {
	processor: { sustainedW: 120 },
	rearDevices: 5,
	importance: {
		...countingOnly(...threeIds),
		"stage-load": "a-lot",
		"spare-sockets": "somewhat",
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
			["stage-load", 1],
			["spare-sockets", 0.7],
			["rescue", 0.9],
		]);
	});

	test("stages not known, 4 to 16: 25 to 6.25 A, worth 0.6 to 1", () => {
		const { powerDelivery: _, ...unpublished } = board;
		const { low, mid, high, parts } = score(unpublished, build);
		// The others bring (5 x 0.7 + 2 x 0.9) / 18 = 0.29444.
		expect(low).toBeCloseTo((100 * (11 * 0.6 + 5.3)) / 18, 9);
		expect(mid).toBeCloseTo((100 * (11 * 0.8 + 5.3)) / 18, 9);
		expect(high).toBeCloseTo((100 * (11 * 1 + 5.3)) / 18, 9);
		expect(parts[0]?.measure).toEqual({ low: 6.25, high: 25, missing: ["board.powerDelivery.coreStages"] });
	});

	test("what matters not at all is left out of the score", () => {
		const { mid, parts } = score(board, { ...build, importance: { ...build.importance, "stage-load": "not-at-all" } });
		expect(parts.map(({ criterionId }) => criterionId)).toEqual(["spare-sockets", "rescue"]);
		expect(mid).toBeCloseTo(100 * (0.75 * 0.7 + 0.25 * 0.9), 9);
	});

	test("what says nothing about this build is left out, and the others share its weight", () => {
		const { rearDevices: _, ...uncounted } = build;
		const { mid, parts } = score(board, uncounted);
		expect(parts.map(({ weight }) => weight)).toEqual([0.75, 0.25]);
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
		// 10 A are worth 1, 25 A 0.6, 45 A nothing.
		const ways = [120, 300, 540].map((sustainedW) => ({ processor: { sustainedW } }));
		const { low, mid, high, parts } = score(board, build, ways);
		expect(parts[0]?.value.low).toBeCloseTo(0, 12);
		expect(parts[0]?.value.high).toBe(1);
		expect(parts[0]?.value.mid).toBeCloseTo(1.6 / 3, 12);
		expect([low, mid, high].map((points) => Math.round(points))).toEqual([29, 62, 91]);
		expect(parts[0]?.measure).toEqual({ low: 10, high: 45, missing: [] });
	});
});

const importance = fc.record(
	Object.fromEntries(allCriteria.map(({ id }) => [id, fc.constantFrom<ImportanceTier>(...importanceTiers)])),
	{ requiredKeys: [] },
) as fc.Arbitrary<BuildFacts["importance"]>;
const recovery = fc.record(
	{
		flashWithoutProcessor: fc.boolean(),
		faultDisplay: fc.constantFrom("none" as const, "lights" as const, "digits" as const),
		resetAtBack: fc.boolean(),
	},
	{ requiredKeys: [] },
);

/** A board of which some is told, and what a person asks of it so that every criterion has something to say. */
interface Told {
	readonly stages: number | null;
	readonly sockets: number | null;
	readonly aids: Board["recovery"];
	readonly years: number | null;
	readonly chipsetFan: boolean | null;
	readonly fansSlow: boolean | null;
	readonly ports: number | null;
	readonly wired: number | null;
}
const bothWays: ["4-pin PWM", "3-pin voltage"] = ["4-pin PWM", "3-pin voltage"];
const boardOf = ({ stages, sockets, aids, years, chipsetFan, fansSlow, ports, wired }: Told): Partial<Board> => ({
	...(stages === null ? {} : { powerDelivery: { coreStages: stages } }),
	...(sockets === null ? {} : { rearUsb: [{ plug: "A", count: sockets }] }),
	...(years === null ? {} : { warrantyYears: years }),
	...(chipsetFan === null ? {} : { chipsetFan }),
	...(fansSlow === null
		? {}
		: { headers: { fans: [{ name: "FAN_1", use: "case", control: fansSlow ? bothWays : [bothWays[0]] }] } }),
	...(ports === null
		? {}
		: { drivePorts: Array.from({ length: ports }, (_, at) => ({ name: `SATA_${at + 1}`, kind: "SATA" as const })) }),
	...(wired === null ? {} : { wiredGbps: [wired] }),
	...(aids ? { recovery: aids } : {}),
});
const wholeBoard = {
	stages: fc.integer({ min: 4, max: 16 }),
	sockets: fc.integer({ min: 4, max: 10 }),
	years: fc.integer({ min: 2, max: 5 }),
	chipsetFan: fc.boolean(),
	fansSlow: fc.boolean(),
	ports: fc.integer({ min: 0, max: 8 }),
	wired: fc.constantFrom(1, 2.5, 10),
};
const perhaps = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });

test("a range holds every value that the unknown facts may have (1000 draws)", () => {
	const unknown = fc.record({
		told: fc.record({
			stages: perhaps(wholeBoard.stages),
			sockets: perhaps(wholeBoard.sockets),
			years: perhaps(wholeBoard.years),
			chipsetFan: perhaps(wholeBoard.chipsetFan),
			fansSlow: perhaps(wholeBoard.fansSlow),
			ports: perhaps(wholeBoard.ports),
			wired: perhaps(wholeBoard.wired),
			aids: recovery,
		}),
		importance,
		watts: fc.record({
			baseW: fc.integer({ min: 35, max: 170 }),
			peakFactor: perhaps(fc.double({ min: 0.5, max: 2.5, noNaN: true })),
		}),
		rearDevices: fc.integer({ min: 0, max: 12 }),
		laterThings: fc.array(fc.constant("SATA drive" as const), { maxLength: 4 }),
		routerGbps: fc.constantFrom(1, 2.5, 10),
		yearsKept: fc.integer({ min: 2, max: 8 }),
	});
	const found = fc.record({
		truth: fc.record({ ...wholeBoard, aids: recovery.filter((aids) => Object.keys(aids).length === 3) }),
		share: fc.double({ min: 0, max: 1, noNaN: true }),
	});
	fc.assert(
		fc.property(unknown, found, ({ told, watts, ...given }, { truth, share }) => {
			const { baseW, peakFactor } = watts;
			const peakW = peakFactor === null ? undefined : baseW * peakFactor;
			const processor = { baseW, ...(peakW === undefined ? {} : { peakW }) };
			const [least, most] = [Math.min(baseW, peakW ?? baseW), Math.max(baseW, peakW ?? 2 * baseW)];
			const known = Object.fromEntries(Object.entries(told).filter(([, value]) => value !== null));
			const range = score(boardOf(told), { ...given, processor });
			const point = score(boardOf({ ...truth, ...known, aids: { ...truth.aids, ...told.aids } }), {
				...given,
				processor: { ...processor, sustainedW: least + share * (most - least) },
			});
			expect(point.high - point.low).toBeLessThan(1e-9);
			expect(point.mid).toBeGreaterThanOrEqual(range.low - 1e-9);
			expect(point.mid).toBeLessThanOrEqual(range.high + 1e-9);
			expect(range.low).toBeLessThanOrEqual(range.mid + 1e-9);
			expect(range.mid).toBeLessThanOrEqual(range.high + 1e-9);
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
	for (const given of [build, { ...build, processor: "open" as const }, { importance: {} }]) {
		const whole = buildOf(given);
		const counted = judge(demo, whole).boards.map(({ subject }) =>
			scoreBoard(subject, [whole.facts])
				.parts.map(({ criterionId, weight }) => `${criterionId} ${weight}`)
				.join(),
		);
		expect(new Set(counted).size).toBe(1);
	}
});
