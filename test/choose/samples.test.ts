import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { regionOf, type SampledBoard, sampleScores } from "../../src/choose/samples.ts";
import type { ScorePart } from "../../src/choose/score.ts";
import { allCriteria } from "../../src/criteria/all-criteria.ts";
import { centroidOfTiers } from "../../src/maths/centroid-of-tiers.ts";
import type { Interval } from "../../src/maths/interval.ts";
import type { BuildFacts, ImportanceTier } from "../../src/parts/build.ts";

type Given = number | readonly [low: number, high: number];
const interval = (given: Given): Interval =>
	typeof given === "number" ? { low: given, high: given } : { low: given[0], high: given[1] };

const ids = allCriteria.map(({ id }) => id);
/** Importance of the first criteria, in their order. */
const importanceOf = (...tiers: readonly (ImportanceTier | undefined)[]): BuildFacts["importance"] =>
	Object.fromEntries(tiers.flatMap((tier, index) => (tier ? [[ids[index] ?? "", tier] as const] : [])));

/** A scored board with these values; in every world the same, unless worlds are given. */
function boardOf(
	boardId: string,
	values: readonly Given[],
	importance: BuildFacts["importance"] = {},
	{ worlds = [0], missing = ["board.warrantyYears"] }: { worlds?: readonly number[]; missing?: readonly string[] } = {},
): SampledBoard {
	const criterionIds = values.map((_, index) => ids[index] ?? "");
	const placed = (tier: ImportanceTier) => criterionIds.filter((id) => importance[id] === tier);
	const free = criterionIds.filter((id) => importance[id] === undefined);
	const weights = centroidOfTiers([placed("a-lot"), placed("somewhat"), placed("a-little")], free);
	const parts = values.map((given, index): ScorePart => {
		const { low, high } = interval(given);
		const id = criterionIds[index] ?? "";
		return {
			criterionId: id,
			weight: weights.get(id) ?? 0,
			value: { low, high, mid: (low + high) / 2 },
			byWorld: worlds.map(() => ({ low, high })),
			measure: { low, high, missing: low === high ? [] : missing },
		};
	});
	const total = (end: "low" | "mid" | "high") =>
		100 * parts.reduce((sum, { weight, value }) => sum + weight * value[end], 0);
	return {
		boardId,
		score: { low: total("low"), mid: total("mid"), high: total("high"), parts },
		possibleWorlds: worlds,
	};
}

const drawn = (boards: readonly SampledBoard[], importance: BuildFacts["importance"] = {}, worldCount = 1) =>
	sampleScores(boards, { importance }, worldCount);

const tier = fc.constantFrom<ImportanceTier | undefined>("a-lot", "somewhat", "a-little", undefined);
const value = fc.integer({ min: 0, max: 1000 }).map((thousandths) => thousandths / 1000);
const given = fc.oneof(
	value,
	fc.tuple(value, value).map(([a, b]): Given => [Math.min(a, b), Math.max(a, b)]),
);
/** Boards on the same criteria, with an importance for each. */
const somewhere = fc.integer({ min: 1, max: 7 }).chain((count) =>
	fc.record({
		tiers: fc.array(tier, { minLength: count, maxLength: count }),
		rows: fc.array(fc.array(given, { minLength: count, maxLength: count }), { minLength: 1, maxLength: 6 }),
	}),
);

describe("regions", () => {
	test("criteria stand in tiers as they were placed; the others are free", () => {
		const [one = "", two = "", three = ""] = ids;
		expect(regionOf({ importance: { [one]: "a-little", [three]: "a-lot" } }, [one, two, three])).toEqual({
			tiers: [[2], [], [0]],
			free: [1],
		});
	});
});

describe("shares by formula", () => {
	// A = (1, 0, 1/2) against B = (0, 1, 1): 1/3 and 2/3 on the whole simplex, 6/7 and 1/7 in falling order (worked out).
	test("without any importance, A is ahead in a third", () => {
		const shares = drawn([boardOf("A", [1, 0, 0.5]), boardOf("B", [0, 1, 1])]);
		expect(shares.ahead("A", "B")).toMatchObject({ isExact: true });
		expect(shares.ahead("A", "B")?.share).toBeCloseTo(1 / 3, 12);
		expect(shares.ahead("B", "A")?.share).toBeCloseTo(2 / 3, 12);
		expect(shares.firstShare.get("A")).toBeCloseTo(1 / 3, 1);
	});

	test("in the order of the criteria, in six sevenths: one answer turns the advice", () => {
		const importance = importanceOf("a-lot", "somewhat", "a-little");
		const shares = drawn([boardOf("A", [1, 0, 0.5], importance), boardOf("B", [0, 1, 1], importance)], importance);
		expect(shares.ahead("A", "B")?.share).toBeCloseTo(6 / 7, 12);
		expect(shares.firstShare.get("A")).toBeCloseTo(6 / 7, 1);
	});

	test("a fact that is not known is drawn", () => {
		expect(drawn([boardOf("A", [[0, 1], 0]), boardOf("B", [0, 1])]).ahead("A", "B")).toMatchObject({ isExact: false });
	});

	test("boards that are alike share the first place and are ahead by half", () => {
		const shares = drawn([boardOf("A", [0.5, 0.5]), boardOf("B", [0.5, 0.5])]);
		expect(shares.ahead("A", "B")).toEqual({ share: 0.5, isExact: true });
		expect(shares.firstShare.get("A")).toBeCloseTo(0.5, 12);
	});
});

describe("what is not known", () => {
	test("of each board by itself: each may be ahead", () => {
		const shares = drawn([boardOf("A", [[0, 1]]), boardOf("B", [[0, 1]])]);
		expect(shares.firstShare.get("A")).toBeGreaterThan(0.47);
		expect(shares.firstShare.get("B")).toBeGreaterThan(0.47);
	});

	test("where only a test is missing, the estimate errs alike for all", () => {
		const untested = { missing: ["board.powerDelivery.measurements"] };
		const shares = drawn([boardOf("A", [[0.1, 0.9]], {}, untested), boardOf("B", [[0, 0.8]], {}, untested)]);
		expect(shares.ahead("A", "B")?.share).toBe(1);
		const silent = { missing: ["board.powerDelivery.measurements", "board.powerDelivery.stageRatingA"] };
		const apart = drawn([boardOf("A", [[0.1, 0.9]], {}, silent), boardOf("B", [[0, 0.8]], {}, silent)]);
		expect(apart.ahead("A", "B")?.share).toBeLessThan(0.75);
	});

	test("of the person's own parts: it is the same for all, and the better board stays ahead", () => {
		const own = { missing: ["processor.sustainedW"] };
		const shares = drawn([boardOf("A", [[0.1, 0.9]], {}, own), boardOf("B", [[0, 0.8]], {}, own)]);
		expect(shares.ahead("A", "B")?.share).toBe(1);
	});
});

describe("open answers", () => {
	test("a board that fits in one of two worlds leads in half of the draws at most", () => {
		const shares = drawn([boardOf("A", [1], {}, { worlds: [1] }), boardOf("B", [0.5], {}, { worlds: [0, 1] })], {}, 2);
		expect(shares.firstShare.get("A")).toBeCloseTo(0.5, 9);
		expect(shares.ahead("A", "B")?.share).toBeCloseTo(0.5, 9);
		// The mean is over the world in which it fits.
		expect(shares.mean("A")).toBeCloseTo(100, 9);
	});
});

describe("who can lead", () => {
	test("one that another is ahead of whatever the weights is not drawn", () => {
		const shares = drawn([boardOf("A", [0.9, 0.5]), boardOf("B", [[0, 0.8], 0.4])]);
		expect(shares.firstShare.get("B")).toBe(0);
		expect(shares.leaders).toEqual(["A"]);
		expect(shares.ahead("A", "B")?.share).toBe(1);
	});

	test("at most 20 are compared, the likeliest first", () => {
		const many = Array.from({ length: 30 }, (_, index) => boardOf(`b${index}`, [index / 30, 1 - index / 30]));
		const shares = drawn(many);
		expect(shares.leaders).toHaveLength(20);
		const of = shares.leaders.map((id) => shares.firstShare.get(id) ?? 0);
		expect([...of].sort((one, other) => other - one)).toEqual(of);
	});

	test("with nothing that matters all are alike", () => {
		const shares = drawn([boardOf("A", []), boardOf("B", [])]);
		expect([...shares.firstShare]).toEqual([
			["A", 0.5],
			["B", 0.5],
		]);
	});

	test("no boards, no shares", () => {
		expect(drawn([])).toMatchObject({ firstShare: new Map(), leaders: [] });
	});
});

describe("any boards", () => {
	test("the mean of the draws is the score shown, within half a point", () => {
		fc.assert(
			fc.property(somewhere, ({ tiers, rows }) => {
				const importance = importanceOf(...tiers);
				const boards = rows.map((row, index) => boardOf(`b${index}`, row, importance));
				const shares = drawn(boards, importance);
				for (const { boardId, score } of boards) {
					const mean = shares.mean(boardId);
					if (mean !== null) expect(Math.abs(mean - score.mid)).toBeLessThan(0.5);
				}
			}),
			{ numRuns: 60 },
		);
	});

	test("first places sum to 1, each row and column of the ranks too, and pairs to 1", () => {
		fc.assert(
			fc.property(somewhere, ({ tiers, rows }) => {
				const importance = importanceOf(...tiers);
				const shares = drawn(
					rows.map((row, index) => boardOf(`b${index}`, row, importance)),
					importance,
				);
				expect([...shares.firstShare.values()].reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
				const ranks = shares.leaders.map((id) => shares.ranks(id));
				for (const row of ranks) expect(row.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
				for (const one of shares.leaders)
					for (const other of shares.leaders)
						if (one !== other)
							expect((shares.ahead(one, other)?.share ?? 0) + (shares.ahead(other, one)?.share ?? 0)).toBeCloseTo(1, 9);
			}),
			{ numRuns: 40 },
		);
	});

	test("their order changes nothing, and a twin halves the share", () => {
		fc.assert(
			fc.property(somewhere, ({ tiers, rows }) => {
				const importance = importanceOf(...tiers);
				const boards = rows.map((row, index) => boardOf(`b${index}`, row, importance));
				const shares = drawn(boards, importance);
				const turned = drawn([...boards].reverse(), importance);
				for (const { boardId } of boards)
					expect(turned.firstShare.get(boardId)).toBeCloseTo(shares.firstShare.get(boardId) ?? 0, 9);
				const known = boards.filter(({ score }) => score.high - score.low < 1e-12);
				// One that is level with another shares its place with that one too.
				const isLevel = (one: SampledBoard, other: SampledBoard) =>
					one.score.parts.every(
						({ value }, index) => Math.abs(value.mid - (other.score.parts[index]?.value.mid ?? 2)) < 1e-9,
					);
				const first = known.find((one) => boards.every((other) => other === one || !isLevel(one, other)));
				if (!first) return;
				const twinned = drawn([...boards, { ...first, boardId: "twin" }], importance);
				expect((twinned.firstShare.get(first.boardId) ?? 0) + (twinned.firstShare.get("twin") ?? 0)).toBeCloseTo(
					shares.firstShare.get(first.boardId) ?? 0,
					9,
				);
				expect(twinned.firstShare.get("twin")).toBeCloseTo(twinned.firstShare.get(first.boardId) ?? 0, 9);
			}),
			{ numRuns: 40 },
		);
	});

	test("a better value never lowers the share", () => {
		fc.assert(
			fc.property(somewhere, fc.nat(), fc.double({ min: 0, max: 1, noNaN: true }), ({ tiers, rows }, at, more) => {
				const importance = importanceOf(...tiers);
				const [first = [], ...others] = rows;
				const place = at % first.length;
				const better = first.map((one, index) => {
					const { low, high } = interval(one);
					return index === place ? ([low + (1 - low) * more, high + (1 - high) * more] as const) : one;
				});
				const rest = others.map((row, index) => boardOf(`b${index}`, row, importance));
				const before = drawn([boardOf("A", first, importance), ...rest], importance).firstShare.get("A") ?? 0;
				const after = drawn([boardOf("A", better, importance), ...rest], importance).firstShare.get("A") ?? 0;
				expect(after).toBeGreaterThanOrEqual(before - 1e-9);
			}),
			{ numRuns: 60 },
		);
	});
});
