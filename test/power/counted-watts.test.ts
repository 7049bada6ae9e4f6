import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Interval } from "../../src/maths/interval.ts";
import { type BuildFacts, emptyBuildFacts } from "../../src/parts/build.ts";
import { limitPolicies, type Processor } from "../../src/parts/processor.ts";
import { type Activity, activities, sessionLengths } from "../../src/parts/wants.ts";
import { countedWatts, fullLoadWatts, processorUseOf, type UseOfProcessor } from "../../src/power/counted-watts.ts";
import {
	clockRaise,
	idleW,
	labelHeldAfterBoost,
	peakOverBase,
	sessionMinutes,
	usualAveragingS,
} from "../../src/reference/activity-loads.ts";

function expectRange(range: Interval | null, low: number, high: number): void {
	expect(range?.low).toBeCloseTo(low, 9);
	expect(range?.high).toBeCloseTo(high, 9);
}

/** A processor that falls back to its label after a boost, with figures that are easy to reckon with. */
const timed = { baseW: 100, peakW: 210, averagingS: 60, limitPolicy: "timed-boost" } as const;

describe("the share that activities take of full load", () => {
	test.each<[string, readonly Activity[] | undefined, number]>([
		["nothing said: full load", undefined, 100],
		["computing", ["building"], 100],
		["editing", ["pictures"], 80],
		["games", ["games"], 60],
		["recording", ["sound-recording"], 40],
		["writing", ["writing"], 30],
		["the heaviest of several, wherever it stands", ["films", "pictures", "writing"], 80],
		["none of these: light use", [], 30],
	])("%s", (_, of, watts) => {
		expectRange(countedWatts({ sustainedW: 100, activities: of }), watts, watts);
	});

	test("a range keeps both ends", () => {
		expectRange(countedWatts({ baseW: 50, peakW: 150, activities: ["games"] }), 30, 90);
	});

	test("several count as the heaviest of them alone, and none counts more than full load", () => {
		const some = fc.subarray([...activities], { minLength: 1 });
		fc.assert(
			fc.property(some, fc.constantFrom(...sessionLengths), (of, sessionLength) => {
				const watts = (list: readonly Activity[]) =>
					countedWatts({ ...timed, sessionLength, activities: list })?.high ?? 0;
				expect(watts(of)).toBe(Math.max(...of.map((activity) => watts([activity]))));
				expect(watts(of)).toBeLessThanOrEqual(fullLoadWatts({ ...timed, sessionLength })?.high as number);
			}),
		);
	});

	test("nothing known of the watts is nothing said, whatever the use", () => {
		expect(fullLoadWatts({ limitPolicy: "timed-boost", raisesClock: true })).toBeNull();
		expect(countedWatts({ activities: ["games"], sessionLength: "minutes" })).toBeNull();
	});
});

// Held 100 to 110 W; from 10 W the average reaches 110 W after 60 x ln(200 / 100) = 41.59 s at 210 W (by hand).
describe("a short session after which a timed boost still counts", () => {
	test.each<[UseOfProcessor["sessionLength"], number]>([
		// 41.59 of 480 s at 100 W more; 41.59 of 3600 s.
		["minutes", 118.664],
		["an-hour", 111.155],
		["all-day", 110],
		// A length nobody gives may be short.
		[undefined, 118.664],
	])("%s: 100 to %f W", (sessionLength, high) => {
		const full = fullLoadWatts({ ...timed, sessionLength });
		expect(full?.low).toBe(100);
		expect(full?.high).toBeCloseTo(high, 3);
	});

	test("an averaging time that nobody gives counts as 56 s, the longer of the usual ones (from memory)", () => {
		const { averagingS: _, ...unsaid } = timed;
		const minutes = { sessionLength: "minutes" } as const;
		expect(fullLoadWatts({ ...unsaid, ...minutes })).toEqual(fullLoadWatts({ ...timed, ...minutes, averagingS: 56 }));
	});

	test("a boost longer than the session is held all through it", () => {
		expectRange(fullLoadWatts({ ...timed, averagingS: 1000, sessionLength: "minutes" }), 100, 210);
	});

	test.each(limitPolicies.filter((policy) => policy !== "timed-boost"))(
		"%s: the length changes nothing",
		(limitPolicy) => {
			const ranges = sessionLengths.map((sessionLength) => fullLoadWatts({ ...timed, limitPolicy, sessionLength }));
			for (const range of ranges) expect(range).toEqual(ranges[0]);
		},
	);

	test.each(limitPolicies)("%s: a measured figure of hours is exceeded in a timed boost only", (limitPolicy) => {
		const use = { ...timed, sustainedW: 110, limitPolicy, sessionLength: "minutes" } as const;
		// By hand as above, since 110 W is what is held there too.
		expect(fullLoadWatts(use)?.high).toBeCloseTo(limitPolicy === "timed-boost" ? 118.664 : 110, 3);
		expect(fullLoadWatts(use)?.low).toBe(110);
	});

	test.each<[string, number, number, number]>([
		["within what is held anyway", 105, 100, 105],
		["the label itself", 100, 100, 100],
		["below the label, which no page should say", 80, 80, 100],
	])("a peak %s: no length of session changes anything", (_, peakW, low, high) => {
		for (const sessionLength of [...sessionLengths, undefined])
			expectRange(fullLoadWatts({ ...timed, peakW, sessionLength }), low, high);
	});

	// What the processor takes is walked through: the peak while the average is below the limit, then the limit.
	test("counts as the mean of the session, walked through in small steps", () => {
		const [baseW, over] = [
			fc.double({ min: 15, max: 200, noNaN: true }),
			fc.double({ min: 1.35, max: 3.5, noNaN: true }),
		];
		const length = fc.constantFrom("minutes" as const, "an-hour" as const);
		fc.assert(
			fc.property(
				baseW,
				over,
				fc.double({ min: 5, max: 300, noNaN: true }),
				length,
				(base, times, averagingS, session) => {
					const [peakW, heldW] = [base * times, base * labelHeldAfterBoost];
					const seconds = 60 * sessionMinutes[session];
					const steps = 100_000;
					let [average, sum] = [idleW, 0];
					for (let count = 0; count < steps; count++) {
						const takenW = average < heldW ? peakW : heldW;
						sum += takenW / steps;
						average += (seconds / steps / averagingS) * (takenW - average);
					}
					const full = fullLoadWatts({
						baseW: base,
						peakW,
						averagingS,
						limitPolicy: "timed-boost",
						sessionLength: session,
					});
					expect(full?.low).toBe(base);
					expect(Math.abs((full?.high as number) / sum - 1)).toBeLessThan(2e-3);
				},
			),
			{ numRuns: 40 },
		);
	});

	test("the shorter the session, the more counts, and never as much as the peak unless it is that short", () => {
		const highs = sessionLengths.map((sessionLength) => fullLoadWatts({ ...timed, sessionLength })?.high as number);
		const [minutes, hour, day] = highs as [number, number, number];
		expect(minutes).toBeGreaterThan(hour);
		expect(hour).toBeGreaterThan(day);
		expect(minutes).toBeLessThan(timed.peakW);
	});
});

// Worked by hand from the factors 1.1 and 1.35 (from memory).
describe("a clock raised above what the maker set", () => {
	test.each<[string, UseOfProcessor, number, number]>([
		["a measured figure alone: the peak may be 3.5 times as high", { sustainedW: 100 }, 110, 472.5],
		["the highest counts, since the limits are lifted", { sustainedW: 100, baseW: 65, peakW: 200 }, 110, 270],
		["label and peak", { baseW: 100, peakW: 200 }, 110, 270],
		["a boost is not timed any more", { ...timed, sessionLength: "all-day" }, 110, 283.5],
		["a guessed peak", { baseW: 100 }, 110, 472.5],
	])("%s", (_, use, low, high) => {
		expectRange(fullLoadWatts({ ...use, raisesClock: true }), low, high);
		expectRange(countedWatts({ ...use, raisesClock: true, activities: ["games"] }), 0.6 * low, 0.6 * high);
	});
});

/** A build with this processor, for which all else is unknown. */
function build(facts: Partial<Processor>, answers: Partial<BuildFacts>): BuildFacts {
	const part: Processor = { id: "a-processor", name: "A processor", ...facts };
	return { ...emptyBuildFacts, ...answers, processor: { state: "have", part, ownership: "planned" } };
}

describe("the use that a build tells of", () => {
	test("is the processor's watts and the person's answers", () => {
		const watts = { sustainedW: 120, baseW: 100, peakW: 210, averagingS: 60, limitPolicy: "fixed" } as const;
		const answers = { activities: ["films"], sessionLength: "an-hour" } as const;
		expect(processorUseOf(build(watts, answers))).toEqual({ ...watts, ...answers, raisesClock: false });
	});

	test.each<["done-before" | "maybe" | "no" | null, boolean | undefined, boolean]>([
		["done-before", true, true],
		["done-before", undefined, true],
		["done-before", false, false],
		["maybe", true, false],
		["no", true, false],
		[null, true, false],
	])("clock plan %s, processor unlocked %s: raised %s", (clockPlan, unlocked, raised) => {
		const facts = unlocked === undefined ? {} : { unlocked };
		expect(processorUseOf(build(facts, { clockPlan })).raisesClock).toBe(raised);
	});

	test.each(["open", "none", "unknown"] as const)("a processor that is %s says nothing of watts", (state) => {
		const open: BuildFacts = { ...emptyBuildFacts, processor: { state }, activities: ["games"] };
		const use = processorUseOf(open);
		expect(use.activities).toEqual(["games"]);
		expect(countedWatts(use)).toBeNull();
		expect(processorUseOf({ ...open, clockPlan: "done-before" }).raisesClock).toBe(true);
	});

	test("what nobody has answered counts as full load, and as short for a boost", () => {
		// 41.59 of 480 s at 100 W more, as above: 110 + 100 x 60 x ln 2 / 480.
		expectRange(countedWatts(processorUseOf(build(timed, {}))), 100, 110 + 12.5 * Math.log(2));
	});
});

/** What a page and the answers may say of one processor; the page agrees with itself. */
const use = fc
	.record({
		baseW: fc.double({ min: 15, max: 300, noNaN: true }),
		over: fc.double({ min: peakOverBase.low, max: peakOverBase.high, noNaN: true }),
		limitPolicy: fc.constantFrom(...limitPolicies),
		averagingS: fc.double({ min: 1, max: usualAveragingS.high, noNaN: true }),
		sessionLength: fc.constantFrom(...sessionLengths),
		activities: fc.subarray([...activities]),
	})
	.map(({ over, ...rest }) => ({ ...rest, peakW: rest.baseW * over }));

describe("whatever is known", () => {
	test("never more than the peak counts as long as the clock is not raised, and raising it never counts less", () => {
		fc.assert(
			fc.property(use, (known) => {
				const plain = countedWatts(known) as Interval;
				expect(plain.low).toBeLessThanOrEqual(plain.high);
				expect(plain.high).toBeLessThanOrEqual(known.peakW * (1 + 1e-12));
				const raised = countedWatts({ ...known, raisesClock: true }) as Interval;
				expect(raised.low).toBeGreaterThan(plain.low);
				expect(raised.high).toBeGreaterThan(plain.high);
				expect(raised.high).toBeLessThanOrEqual(known.peakW * clockRaise.high * (1 + 1e-12));
			}),
		);
	});

	test("to know more of the processor never widens the range", () => {
		const silence = fc.subarray(["baseW", "peakW", "limitPolicy", "averagingS"] as const);
		fc.assert(
			fc.property(use, silence, silence, fc.boolean(), (known, silent, alsoSilent, raisesClock) => {
				const range = (unsaid: readonly string[]) =>
					countedWatts({
						...Object.fromEntries(Object.entries(known).filter(([key]) => !unsaid.includes(key))),
						raisesClock,
					});
				const [more, less] = [range(silent), range([...silent, ...alsoSilent])];
				if (!less) return;
				expect(more?.low).toBeGreaterThanOrEqual(less.low * (1 - 1e-9));
				expect(more?.high).toBeLessThanOrEqual(less.high * (1 + 1e-9));
			}),
		);
	});

	test("a measured figure that agrees with the page narrows it too, in a session of any length", () => {
		fc.assert(
			fc.property(use, fc.double({ min: 0, max: 1, noNaN: true }), (known, share) => {
				const full = countedWatts({ ...known, sessionLength: "all-day", activities: undefined }) as Interval;
				const sustainedW = full.low + share * (full.high - full.low);
				const [more, less] = [countedWatts({ ...known, sustainedW }), countedWatts(known)] as [Interval, Interval];
				expect(more.low).toBeGreaterThanOrEqual(less.low * (1 - 1e-9));
				expect(more.high).toBeLessThanOrEqual(less.high * (1 + 1e-9));
			}),
		);
	});
});
