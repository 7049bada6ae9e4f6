import { describe, expect, test } from "vitest";
import { caseRiseK, warmUpMinutes } from "../../src/reference/activity-loads.ts";
import {
	airOverStages,
	copperShare,
	type HeatSink,
	hotterInsideK,
	largeSinkStill,
	likeAir,
	movingAirFactor,
	readingK,
	sinksWorth,
	stageToSink,
	switchMountings,
	switchToAir,
	testRiseK,
	usualTestMinutes,
} from "../../src/reference/heat-paths.ts";

describe("one switch to the air", () => {
	const { still, moving } = switchToAir;

	test("is cooled better by a larger sink, by more copper and by moving air", () => {
		for (const [at, mounting] of switchMountings.entries()) {
			const smaller = switchMountings[at - 1];
			for (const copper of ["copper", "least"] as const) {
				expect(moving[mounting][copper]).toBeLessThan(still[mounting][copper]);
				if (!smaller) continue;
				expect(still[mounting][copper]).toBeLessThan(still[smaller][copper]);
				expect(moving[mounting][copper]).toBeLessThan(moving[smaller][copper]);
			}
			expect(still[mounting].copper).toBeLessThan(still[mounting].least);
			expect(moving[mounting].copper).toBeLessThan(moving[mounting].least);
		}
	});

	// Bare 26 / 38 and 61 / 81, small sink 16 / 27 and 23 / 34, large sink 11 / 16 and 13 / 19.
	test("moving air makes 0.593 to 0.753 of the resistance, where the heat sink is not known", () => {
		expect(movingAirFactor(undefined)).toMatchObject({ low: 16 / 27, high: 61 / 81 });
	});

	test.each(["none", "one side", "both sides", "both sides with heat pipe", "finned"] as const)(
		"moving air makes 0.684 to 0.753 of the resistance of bare stages and of large sinks, heat sink: %s",
		(heatSink) => {
			expect(movingAirFactor(heatSink)).toMatchObject({ low: 13 / 19, high: 61 / 81 });
		},
	);

	// With 2 oz: 1 / (1 / 16 - 1 / 38) = 27.63636, less 4.4 to the top = 23.23636. On the least copper: 1 / (1 / 19 - 1 / 81)
	// = 24.82258, less 4.4 = 20.42258.
	test("the large sink alone has 20.4 to 23.2 K/W", () => {
		expect(largeSinkStill.low).toBeCloseTo(20.42258, 5);
		expect(largeSinkStill.high).toBeCloseTo(23.23636, 5);
	});

	test("the way to a sink is never better than to the top of the package", () => {
		expect(stageToSink.low).toBe(4.4);
		expect(stageToSink.high).toBeCloseTo(4.4 + 3.6, 12);
	});
});

describe("heat sinks", () => {
	const byWorth: readonly HeatSink[] = ["none", "one side", "both sides", "both sides with heat pipe", "finned"];

	test("are worth more the more there is of them, at both ends", () => {
		expect([...byWorth].sort()).toEqual(Object.keys(sinksWorth).sort());
		expect(sinksWorth.none).toEqual({ low: 0, high: 0 });
		for (const [at, sink] of byWorth.slice(1).entries()) {
			const smaller = sinksWorth[byWorth[at] ?? "none"];
			expect(sinksWorth[sink].low).toBeGreaterThan(smaller.low);
			expect(sinksWorth[sink].high).toBeGreaterThan(smaller.high);
			expect(sinksWorth[sink].high).toBeGreaterThan(sinksWorth[sink].low);
		}
	});
});

describe("copper under a stage", () => {
	test.each<[number | undefined, number | undefined, number, number]>([
		[undefined, undefined, 0, 1],
		[4, undefined, 0, 1],
		[undefined, 1, 0, 1],
		[4, 1, 0, 0.6],
		[2, 1, 0, 0.6],
		[5, 1, 0.25, 0.8],
		[6, 1, 0.25, 0.8],
		[7, 1.99, 0.25, 0.8],
		[8, 1, 0.5, 1],
		[8, undefined, 0.5, 1],
		[undefined, 2, 0.5, 1],
		[4, 2, 0.5, 1],
	])("of %s layers and %s oz: %s to %s of a square inch", (layers, ounces, low, high) => {
		expect(copperShare(layers, ounces)).toEqual({ low, high });
	});

	test("more of it is never worse, and learning it never leaves what was open", () => {
		const shares = [4, 6, 8].map((layers) => copperShare(layers, 1));
		for (const [at, share] of shares.slice(1).entries()) {
			expect(share.low).toBeGreaterThanOrEqual(shares[at]?.low ?? 1);
			expect(share.high).toBeGreaterThanOrEqual(shares[at]?.high ?? 1);
		}
		for (const layers of [1, 4, 6, 8, 40])
			for (const ounces of [0.25, 1, 2, 8])
				for (const open of [copperShare(layers, undefined), copperShare(undefined, ounces)]) {
					const known = copperShare(layers, ounces);
					expect(known.low).toBeGreaterThanOrEqual(open.low);
					expect(known.high).toBeLessThanOrEqual(open.high);
				}
	});
});

describe("air over the stages", () => {
	test("moves the more, the more sends it there", () => {
		const { still, unknown } = airOverStages;
		const ways = [
			still,
			airOverStages["behind a liquid cooler"],
			airOverStages["case fans"],
			airOverStages["blown at"],
		];
		for (const [at, way] of ways.slice(1).entries()) {
			expect(way.low).toBeGreaterThanOrEqual(ways[at]?.low ?? 2);
			expect(way.high).toBeGreaterThan(ways[at]?.high ?? 2);
		}
		expect(unknown.low).toBe(still.low);
		expect(unknown.high).toBe(airOverStages["case fans"].high);
	});

	test("like air may be a little more or a little less", () => {
		expect(likeAir.low).toBe(-likeAir.high);
		expect(likeAir.high).toBeGreaterThan(0);
		expect(likeAir.high).toBeLessThan(airOverStages["case fans"].high - airOverStages["case fans"].low);
	});
});

describe("tests that others made", () => {
	test("the less is said of the air, the wider it is; on a bench it is cooler than in a closed case", () => {
		for (const [name, rise] of Object.entries(testRiseK)) {
			expect(rise.low).toBe(0);
			expect(rise.high).toBeGreaterThan(0);
			expect(rise.high).toBeLessThanOrEqual(testRiseK.unknown.high);
			expect(rise.high, name).toBeLessThanOrEqual(caseRiseK.slits);
		}
		expect(testRiseK["blown at"].high).toBeLessThan(testRiseK["case fans"].high);
	});

	test("the inside is never cooler than what was measured, and least known where nobody says what that was", () => {
		for (const { low, high } of Object.values(hotterInsideK)) {
			expect(low).toBeGreaterThanOrEqual(hotterInsideK.unknown.low);
			expect(high).toBeLessThanOrEqual(hotterInsideK.unknown.high);
			expect(low).toBeGreaterThanOrEqual(0);
			expect(low).toBeLessThan(high);
		}
		expect(hotterInsideK["back of the board"].low).toBeGreaterThan(hotterInsideK["top of a stage"].low);
		expect(readingK).toBeGreaterThan(0);
		expect(readingK).toBeLessThan(5);
	});

	test("a test that does not say how long may have been stopped before all was warm", () => {
		expect(usualTestMinutes.low).toBeLessThan(warmUpMinutes.high);
		expect(usualTestMinutes.high).toBe(Number.POSITIVE_INFINITY);
	});
});
