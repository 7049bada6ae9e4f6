import { describe, expect, test } from "vitest";
import { boardSubjects } from "../../src/choose/findings-of-market.ts";
import type { Board } from "../../src/parts/board.ts";
import { type BuildFacts, emptyBuildFacts, type World } from "../../src/parts/build.ts";
import type { Processor } from "../../src/parts/processor.ts";
import { activities } from "../../src/parts/wants.ts";
import type { SteadyPower } from "../../src/power/steady-power.ts";
import {
	celsiusWords,
	type PowerTold,
	powerSentence,
	powerToldOf,
	powerWords,
	powerWordsInShort,
} from "../../src/sheet/power-words.ts";
import { knownStages } from "../power/known-stages.ts";
import { demo } from "../walk/walk-in-demo.ts";

const board: Board = { id: "a-board", name: "A board", powerDelivery: knownStages };
const withProcessor = (part: Partial<Processor>, more: Partial<BuildFacts> = {}): BuildFacts => ({
	...emptyBuildFacts,
	processor: { state: "have", ownership: "bought", part: { id: "piccolo", name: "Piccolo", ...part } },
	summerRoom: "warm",
	...more,
});
const facts = withProcessor({ sustainedW: 140, peakW: 150, limitPolicy: "fixed" });

function steadyOf(told: PowerTold): SteadyPower {
	if (!told.steady) throw new Error("its watts are known");
	return told.steady;
}
const real = steadyOf(powerToldOf(board, facts));
/** What was worked out, with some of it put in place of what came out. */
const steady = (more: Partial<SteadyPower>): SteadyPower => ({ ...real, watts: { low: 140, high: 140 }, ...more });
const at = (low: number, high: number, more: Partial<SteadyPower> = {}) =>
	steady({ hotSpotC: { low, high }, spareK: { low: 90 - high, high: 90 - low }, ...more });
const endless = Number.POSITIVE_INFINITY;

const linesOf = (told: PowerTold, heading: string) =>
	powerWords(told).find((one) => one.heading === heading)?.lines ?? [];
const linesFor = (heading: string, build: BuildFacts, of: Board = board) => linesOf(powerToldOf(of, build), heading);

describe("one sentence", () => {
	const uncounted = [{ ...real.assumptions[0], what: "number of stages", fact: "board.powerDelivery.coreStages" }];
	const nobodyCounted = { assumptions: uncounted as SteadyPower["assumptions"] };
	test.each<[string, SteadyPower, string]>([
		[
			"ample",
			at(45, 65, { verdict: "ample" }),
			"Feeds the 140 W that count for hours, with 25 to 45 degrees to spare.",
		],
		[
			"enough",
			at(70, 88.6, { verdict: "enough" }),
			"Feeds the 140 W that count for hours, with 1 to 20 degrees to spare.",
		],
		[
			"enough, and half a degree is no degree",
			at(70.6, 88.4, { verdict: "enough" }),
			"Feeds the 140 W that count for hours, with 1 to 19 degrees to spare.",
		],
		[
			"enough, up to the line",
			at(70, 90, { verdict: "enough", watts: { low: 120.4, high: 160 } }),
			"Feeds the 120 to 160 W that count for hours, with up to 20 degrees to spare.",
		],
		[
			"tight",
			at(95, 102, { verdict: "tight" }),
			"Gets hot feeding 140 W for hours: at least 5 degrees past the comfortable line.",
		],
		[
			"tight by a hair",
			at(90.9, 91.4, { verdict: "tight" }),
			"Gets hot feeding 140 W for hours: past the comfortable line.",
		],
		[
			"tight by a whole degree",
			at(91, 104.9, { verdict: "tight" }),
			"Gets hot feeding 140 W for hours: at least 1 degree past the comfortable line.",
		],
		[
			"tight, and it may hold back",
			at(93.7, 105, { verdict: "tight" }),
			"Gets hot feeding 140 W for hours: at least 3 degrees past the comfortable line. It may hold the processor back.",
		],
		[
			"tight, nobody knows how far, and past its rating at the peak",
			at(91, endless, { verdict: "tight", beyondRating: "at the peak" }),
			"Gets hot feeding 140 W for hours: at least 1 degree past the comfortable line. It may hold the processor back. At the processor's peak each stage would carry more than its rating.",
		],
		[
			"tight, on either side of the line",
			at(80.5, 96.1, { verdict: "tight" }),
			"Feeds 140 W for hours without holding the processor back, but may get hot. It may have 9 degrees to spare or lack 7.",
		],
		[
			"tight for its peak alone",
			at(60, 80, { verdict: "tight", beyondRating: "at the peak" }),
			"Feeds 140 W for hours, with 10 to 30 degrees to spare. At the processor's peak each stage would carry more than its rating.",
		],
		[
			"not enough",
			at(110, endless, { verdict: "not enough", watts: { low: 220, high: 220 } }),
			"Cannot feed 220 W for hours: it would hold the processor back.",
		],
		[
			"past its rating",
			at(60, 80, { verdict: "not enough", beyondRating: "steadily" }),
			"Each stage would carry more than it is rated for.",
		],
		[
			"both",
			at(110, 140, { verdict: "not enough", beyondRating: "steadily" }),
			"Cannot feed 140 W for hours: it would hold the processor back. Each stage would carry more than it is rated for.",
		],
		[
			"cannot tell",
			at(59, 97, { verdict: "cannot tell" }),
			"Feeding 140 W for hours, it may have 31 degrees to spare or lack 7. Nobody can tell which.",
		],
		[
			"cannot tell by a hair",
			at(89.7, 90.2, { verdict: "cannot tell" }),
			"Feeding 140 W for hours, it may have less than 1 degree to spare or lack 1. Nobody can tell which.",
		],
		[
			"cannot tell at all",
			at(59, 151, { verdict: "cannot tell" }),
			"Feeding 140 W for hours, it may have 31 degrees to spare or be far past the comfortable line. Nobody can tell which.",
		],
		[
			"nothing published",
			at(30, 130, { verdict: "cannot tell", ...nobodyCounted }),
			"Nobody has counted its stages, so the range is wide. It may have 60 degrees to spare or lack 40.",
		],
	])("%s", (_, of, words) => {
		expect(powerSentence(of)).toBe(words);
	});

	test("hours are said only of hours", () => {
		const of = at(45, 65, { verdict: "ample" });
		expect(powerSentence(of, "minutes")).toContain("140 W that count for some minutes,");
		expect(powerSentence(of, "an-hour")).toContain("140 W that count for an hour,");
		expect(powerSentence(of, "all-day")).toBe(powerSentence(of, null));
	});
});

test.each([
	[40, 40.4, "40 degrees C"],
	[53, 78, "53 to 78 degrees C"],
	[97, 151, "97 to far past 150 degrees C"],
	[97, endless, "97 to far past 150 degrees C"],
	[151, endless, "far past 150 degrees C"],
])("temperatures from %d to %d", (low, high, words) => {
	expect(celsiusWords({ low, high })).toBe(words);
});

test("what is short stands first, and a part with nothing in it is left out", () => {
	const measurements = [{ loadW: 140, airC: 22, stageC: 60 }];
	const all = ["In short", "How warm it gets", "What would tell more", "What counts", "A published test"];
	const rest = ["What to look for in a published test", "What was assumed", "One stage, term by term", "Keep in mind"];
	const headings = (of: Board) => powerWords(powerToldOf(of, facts)).map(({ heading }) => heading);
	expect(headings({ ...board, powerDelivery: { ...board.powerDelivery, measurements } })).toEqual([...all, ...rest]);
	expect(headings(board)).toEqual([...all, ...rest].filter((one) => one !== "A published test"));
	const settled = { ...powerToldOf(board, facts), narrowing: [] };
	expect(powerWords(settled).map(({ heading }) => heading)).not.toContain("What would tell more");
});

test("in short: the sentence, and what a stage is", () => {
	const told = powerToldOf(board, { ...facts, sessionLength: "an-hour" });
	const [sentence, stage] = linesOf(told, "In short");
	expect(sentence).toBe(powerSentence(steadyOf(told), "an-hour"));
	expect(sentence).toContain("for an hour");
	expect(stage).toContain("small chips beside the socket that feed the processor");
});

describe("how warm it gets", () => {
	const warm = (of: SteadyPower) => linesOf({ ...powerToldOf(board, facts), steady: of }, "How warm it gets");
	test("every figure", () => {
		const of = at(53, 78, {
			airC: { low: 35, high: 45 },
			comfortableW: { low: 160, high: 240 },
			holdingBackW: { low: 190, high: 280 },
		});
		expect(warm(of)).toEqual([
			"Air at the stages, on a hot evening under load: 35 to 45 degrees C.",
			"Hottest stage, feeding 140 W: 53 to 78 degrees C.",
			"Up to 90 degrees C a stage is at ease for years (common practice, no source).",
			"At 105 degrees C boards hold the processor back (common practice, no source).",
			"Up to the 90 degrees: 12 to 37 degrees to spare.",
			"For hours it surely feeds 160 W below 90 degrees, and 190 W below 105.",
		]);
	});
	test.each([
		[53, 97, "from 37 degrees to spare to 7 degrees past them"],
		[53, endless, "from 37 degrees to spare to far past them"],
		[95, 102, "none to spare, and 5 degrees past them at least"],
		[95, endless, "none to spare, and 5 degrees past them at least"],
		[90.4, 91, "none to spare"],
		[160, endless, "none to spare, and far past them"],
	])("from %d to %d", (low, high, words) => {
		expect(warm(at(low, high))).toContain(`Up to the 90 degrees: ${words}.`);
	});

	test("what is to spare is rounded down, and what lacks up", () => {
		expect(warm(at(53.4, 77.6))).toContain("Up to the 90 degrees: 12 to 36 degrees to spare.");
		expect(warm(at(53.4, 97.2))).toContain("Up to the 90 degrees: from 36 degrees to spare to 8 degrees past them.");
		expect(warm(at(95.9, 102))).toContain("Up to the 90 degrees: none to spare, and 5 degrees past them at least.");
	});

	test("that the board slows the processor down is said only where it may get so hot", () => {
		const slows = (high: number) => warm(at(85, high)).filter((line) => line.includes("slow the processor down"));
		expect([slows(104.9), slows(105), slows(endless)].map(({ length }) => length)).toEqual([0, 1, 1]);
	});
});

describe("how much it feeds", () => {
	const [comfortableW, holdingBackW] = [
		{ low: 160, high: 240 },
		{ low: 190, high: 280 },
	];
	const holds = (more: Partial<SteadyPower>, sessionLength: BuildFacts["sessionLength"] = "an-hour") =>
		linesOf(
			{
				...powerToldOf(board, { ...facts, sessionLength }),
				steady: steady({ comfortableW, holdingBackW, ratedW: null, ...more }),
			},
			"How warm it gets",
		).find((line) => line.includes("surely feeds"));

	test("is never more than the stages are rated for", () => {
		const cool = "For an hour it surely feeds 160 W below 90 degrees, and 190 W below 105.";
		expect(holds({})).toBe(cool);
		expect(holds({ ratedW: { low: 280, high: 280 } })).toBe(cool);
		expect(holds({ ratedW: { low: 180, high: 200 } })).toBe(
			"For an hour it surely feeds 160 W below 90 degrees, and 180 W below 105.",
		);
		expect(holds({ ratedW: { low: 120.7, high: 120.7 } })).toBe(
			"For an hour it surely feeds 120 W below 90 degrees, and 120 W below 105.",
		);
		const lines = (ratedW: SteadyPower["ratedW"]) =>
			linesOf(
				{ ...powerToldOf(board, facts), steady: steady({ comfortableW, holdingBackW, ratedW }) },
				"How warm it gets",
			);
		const reason = "More is past what its stages are rated for.";
		expect(lines({ low: 180, high: 200 })).toContain(reason);
		expect(lines({ low: 280, high: 280 })).not.toContain(reason);
		expect(lines(null)).not.toContain(reason);
	});

	test("is told up to six times what is sure, and past that only what is sure", () => {
		const wide = "For an hour it surely feeds 40 W. How much more is not known.";
		expect(holds({ comfortableW: { low: 40, high: 240 } })).toContain("surely feeds 40 W below 90");
		expect(holds({ comfortableW: { low: 40, high: 240.1 } })).toBe(wide);
		expect(holds({ comfortableW: { low: 40, high: endless } })).toBe(wide);
		expect(holds({ comfortableW: { low: 40, high: endless } }, "all-day")).toBe(wide.replace("an hour", "hours"));
		// A rating brings the far end back to what tells something.
		const rated = holds({ comfortableW: { low: 40, high: endless }, ratedW: { low: 150, high: 200 } });
		expect(rated).toContain("surely feeds 40 W below 90 degrees");
	});
});

test("what would tell more: each fact with where to find it, answers as answers, and no path that is neither", () => {
	const narrowing = ["board.powerDelivery.heatSink", "processor.sustainedW", "summerRoom", "board.no.such", "nothing"];
	expect(linesOf({ ...powerToldOf(board, facts), narrowing }, "What would tell more")).toEqual([
		"Heat sink on the power stages: Pictures of the board.",
		"Power held for hours of your processor: A published test of hours of full load; the label watts are not it.",
		"Room on a hot evening: the long walk asks for it.",
	]);
});

describe("what counts", () => {
	const counts = (part: Partial<Processor>, more: Partial<BuildFacts> = {}) =>
		linesFor("What counts", withProcessor(part, more));
	const boosting = { baseW: 125, peakW: 253, averagingS: 56 } as const;

	test("full load until somebody says what the computer is for and how long it works", () => {
		const lines = counts({ sustainedW: 140 });
		expect(lines).toEqual([
			"140 W count: what your processor takes for hours in your heaviest use.",
			"How long heavy work lasts is not known, so many hours count.",
			"Nobody has said what the computer is for, so full load counts.",
			"Published for hours of full load: 140 W. It counts more than the label.",
		]);
	});

	test("a share of full load for the heaviest use named", () => {
		const lines = counts({ sustainedW: 100 }, { activities: ["writing", "games"], sessionLength: "an-hour" });
		expect(lines.slice(0, 3)).toEqual([
			"60 W count: what your processor takes for an hour in your heaviest use.",
			"The heaviest use you named: games. It takes about 60 of every 100 W of full load (from memory).",
			"Full load would be 100 W.",
		]);
		expect(counts({ sustainedW: 100 }, { activities: ["building"] })[2]).toBe(
			"The heaviest use you named: compiling, simulating or rendering. It counts as full load.",
		);
		expect(counts({ sustainedW: 100 }, { activities: [] }).slice(2, 4)).toEqual([
			"You named no heavy use. It takes about 30 of every 100 W of full load (from memory).",
			"Full load would be 100 W.",
		]);
		for (const one of activities) expect(counts({ sustainedW: 100 }, { activities: [one] })[2]).toMatch(/named: \w/);
	});

	test.each([
		[
			"timed-boost",
			"may take its most for a short while only.",
			/^It may take 253 W for the first \d+ to \d+ seconds, then it falls back to 125 W\.$/,
		],
		[
			"enforced-by-firmware",
			"Newer firmware may hold it back.",
			/^It may take 253 W\. With newer firmware it may fall back to 125 W after \d+ to \d+ seconds\.$/,
		],
		["lifted-by-board", "so it may take its most without end.", /^It may take 253 W and hold that without end\.$/],
		["fixed", "what it may take once, it may take without end.", /^It may take 253 W and hold that without end\.$/],
	] as const)("a limit that is %s, in plain words", (limitPolicy, policy, boost) => {
		const lines = counts({ ...boosting, limitPolicy });
		expect(lines.at(-2)).toContain(policy);
		expect(lines.at(-1)).toMatch(boost);
	});

	test("beside a figure for hours no peak is held without end", () => {
		const lines = counts({ ...boosting, sustainedW: 200, limitPolicy: "lifted-by-board" });
		expect(lines.join(" ")).not.toContain("hold that without end");
		expect(counts({ ...boosting, sustainedW: 200, limitPolicy: "timed-boost" }).at(-1)).toContain("for the first");
	});

	test("seconds of the boost are those that were worked out", () => {
		const told = powerToldOf(board, withProcessor({ ...boosting, limitPolicy: "timed-boost" }));
		const { low = 0, high = 0 } = steadyOf(told).boost?.seconds ?? {};
		expect(linesOf(told, "What counts").at(-1)).toContain(`first ${Math.round(low)} to ${Math.round(high)} seconds,`);
	});

	test("a limit that nobody tells of, and a clock that is raised", () => {
		expect(counts({ baseW: 65 }).at(-1)).toBe(
			"How its power limit behaves is not known. So all from its label to its most counts.",
		);
		const raised = counts({ ...boosting, limitPolicy: "timed-boost", unlocked: true }, { clockPlan: "done-before" });
		expect(raised.slice(-2)).toEqual([
			"You plan to raise its clock. That takes 110 to 135 W where it took 100 (from memory).",
			"With its clock raised it holds what it takes without end.",
		]);
		expect(raised.join(" ")).not.toContain("falls back");
	});
});

describe("a published test", () => {
	const measured = (...measurements: NonNullable<NonNullable<Board["powerDelivery"]>["measurements"]>) =>
		powerToldOf({ ...board, powerDelivery: { ...board.powerDelivery, measurements } }, facts);
	const cool = { loadW: 140, airC: 22.5, stageC: 55 } as const;

	test("what was measured, where, and what the estimate alone says", () => {
		const told = measured({
			...cool,
			minutes: 45,
			airflow: "blown at",
			measuredAt: "top of a stage",
			where: "A magazine",
			date: "2026-01-02",
		});
		const { hotSpotC, measured: known } = steadyOf(told);
		if (!known) throw new Error("there is a test");
		expect(linesOf(told, "A published test").slice(0, 4)).toEqual([
			"It saw 55 degrees C at 140 W (top of a stage).",
			"It ran for 45 minutes, in a room of 22.5 degrees C, with a fan blowing at the board.",
			"Read in: A magazine, 2026-01-02.",
			`Without any test the estimate for your build is ${celsiusWords(known.estimateC)}. With it: ${celsiusWords(hotSpotC)}.`,
		]);
	});

	test("what a test does not say is not said for it; others are counted", () => {
		const [saw, ran, others] = linesOf(measured(cool, { ...cool, loadW: 90 }), "A published test");
		expect(saw).toBe("It saw 55 degrees C at 140 W.");
		expect(ran).toBe("How long it ran is not told, in a room of 22.5 degrees C.");
		expect(others).toBe("1 more test is noted. This one is nearest to what counts here.");
		const three = linesOf(measured(cool, { ...cool, loadW: 90 }, { ...cool, loadW: 30 }), "A published test");
		expect(three[2]).toBe("2 more tests are noted. This one is nearest to what counts here.");
	});

	test("agreeing and disagreeing are told apart", () => {
		const far = measured({ ...cool, stageC: 190 });
		expect(steadyOf(far).measured?.agrees).toBe(false);
		expect(linesOf(far, "A published test").at(-1)).toContain("disagree, so the test is taken as right.");
		const near = measured(cool);
		expect(steadyOf(near).measured?.agrees).toBe(true);
		expect(linesOf(near, "A published test").at(-1)).toContain("both can be right");
	});
});

test("what to look for in a test: the load that counts, as it is told elsewhere", () => {
	const told = { ...powerToldOf(board, facts), steady: steady({ watts: { low: 120, high: 160.2 } }) };
	const lines = linesOf(told, "What to look for in a published test");
	expect(lines[0]).toContain("at least 160 W");
	expect(linesOf(told, "What counts")[0]).toContain("120 to 160 W count");
	for (const about of [/30 minutes/, /room/, /thermometer/, /air/i, /heat sinks off/])
		expect(lines.some((line) => about.test(line))).toBe(true);
});

describe("what was assumed", () => {
	const assumption = { what: "a thing", fact: null, low: 0.0026738, high: 4, unit: "V", because: "it was read" };
	const lineOf = (more: Partial<SteadyPower["assumptions"][number]>) =>
		linesOf(
			{
				...powerToldOf(board, facts),
				steady: steady({ assumptions: [{ ...assumption, source: "from-memory", ...more }] }),
			},
			"What was assumed",
		)[1];

	test("one line each, with range, unit, because and kind of source", () => {
		const told = powerToldOf({ id: "bare", name: "Bare" }, facts);
		const { assumptions } = steadyOf(told);
		const lines = linesOf(told, "What was assumed").slice(1);
		expect(lines).toHaveLength(assumptions.length);
		assumptions.forEach(({ what, because }, index) => {
			expect(lines[index]?.toLowerCase()).toContain(`${what.toLowerCase()}: `);
			expect(lines[index]?.toLowerCase()).toContain(because.toLowerCase());
		});
		expect(lineOf({})).toBe("A thing: 0.00267 to 4 V. It was read (from memory).");
		expect(lineOf({ source: "own-convention", low: 4 })).toBe("A thing: 4 V. It was read (own convention).");
		expect(lineOf({ source: "common-practice" })).toContain("(common practice, no source)");
		expect(lineOf({ source: "ltc3735" })).toContain("(data sheet LTC3735)");
	});

	test("figures without a unit are two ways, and odd units are told in words", () => {
		expect(lineOf({ unit: "" })).toBe("A thing: either one. It was read (from memory).");
		expect(lineOf({ unit: "of 200 ft/min, in the exponent", low: 0, high: 1 })).toContain(
			"0 to 1, where 0 is still air and 1 is air at 1 m/s",
		);
		// The units that are told in words are still those that are given.
		const units = steadyOf(powerToldOf({ id: "bare", name: "Bare" }, facts)).assumptions.map(({ unit }) => unit);
		expect(units).toEqual(
			expect.arrayContaining(["", "of 200 ft/min, in the exponent", "K/W a stage, bare, in still air"]),
		);
	});
});

describe("one stage", () => {
	const end = (amps: number, working: number, lost: number) => ({
		amps,
		working,
		watts: [
			{ name: "conduction", watts: lost },
			{ name: "coil", watts: 0.0286 },
		],
	});
	const of = at(50, 80, {
		airC: { low: 35, high: 45 },
		coolest: end(9.474, 10.574, 0.2456),
		hottest: end(12.68, 12, 0.664),
		heatW: { low: 6.16, high: 17.6 },
		lossW: { low: 6.46, high: 18 },
		efficiency: { low: 0.899, high: 0.953 },
		kelvinPerWatt: { low: 1.26, high: 2.95 },
	});
	const terms = (more: Partial<SteadyPower> = {}) =>
		linesOf({ ...powerToldOf(board, facts), steady: { ...of, ...more } }, "One stage, term by term");
	const rest = "Boards let some stages rest while little is asked for.";
	const ofEstimate = "These terms are of the estimate alone, without the test.";
	const test140 = { loadW: 140, airC: 22, stageC: 60 };

	test("every cause at both ends, to two digits", () => {
		expect(terms()).toEqual([
			"At the cool end 11 stages work on average, with 9.5 A in each.",
			"Watts each loses there: conduction 0.25; coil 0.029.",
			"At the hot end 12 stages work, with 13 A in each.",
			"Watts each loses there: conduction 0.66; coil 0.029.",
			rest,
			"Heat in all stages: 6.2 to 18 W. Lost from the plug to the processor: 6.5 to 18 W.",
			"Of every 100 W that go in, 90 to 95 W come out.",
			"The current in one coil goes up and down by 9.1 to 11 A.",
			"Each watt of heat makes the stages 1.3 to 3 degrees warmer than the air of 35 to 45 degrees C.",
		]);
	});

	test("what the controller's phases leave of the ripple", () => {
		const coilA = { low: 9.1, high: 10.6 };
		expect(terms({ ripple: { coilA, leftAtOutput: { low: 0.05, high: 0.291 } } })).toContain(
			"The current in one coil goes up and down by 9.1 to 11 A. At the output at most 29 per cent of that is left.",
		);
		expect(terms({ ripple: { coilA, leftAtOutput: { low: 0, high: 0.0001 } } }).join(" ")).toContain(
			"at most 1 per cent",
		);
	});

	test("one stage is one, and where none rests none is said to", () => {
		const lines = terms({ coolest: end(9, 1, 0.2), hottest: end(9, 2, 0.2) });
		expect(lines[0]).toMatch(/^At the cool end 1 stage works, /);
		expect(lines[2]).toMatch(/^At the hot end 2 stages work, /);
		expect(lines).not.toContain(rest);
	});

	test("far past every limit the hot end has no terms", () => {
		const lines = terms({ hotSpotC: { low: 50, high: endless } });
		expect(lines.slice(0, 2)).toEqual(terms().slice(0, 2));
		expect(lines[2]).toBe("At the hot end it would be past every limit, so its terms tell nothing.");
		const all = lines.join(" ");
		for (const hot of ["13 A in each", "0.66", "18 W", "come out"]) expect(all).not.toContain(hot);
		for (const cool of ["6.2", "6.5"]) expect(all).toContain(cool);
		expect(all.match(/or more/g)).toHaveLength(2);
	});

	test("beside a test they are those of the estimate, which may be far past what the test says", () => {
		expect(terms()).not.toContain(ofEstimate);
		const measured = { test: test140, agrees: true };
		const near = terms({ measured: { ...measured, estimateC: { low: 45, high: 110 } } });
		expect(near).toEqual([ofEstimate, ...terms()]);
		const far = terms({ measured: { ...measured, estimateC: { low: 45, high: 151 } } });
		expect(far[0]).toBe(ofEstimate);
		expect(far.join(" ")).not.toContain("13 A in each");
	});

	test("a real test leaves the terms as they are", () => {
		const tested = { ...board, powerDelivery: { ...board.powerDelivery, measurements: [test140] } };
		const [first, ...others] = linesFor("One stage, term by term", facts, tested);
		expect(first).toBe(ofEstimate);
		expect(others).toEqual(linesFor("One stage, term by term", facts));
	});
});

describe("without watts", () => {
	test("a processor that is not settled is asked for", () => {
		for (const state of ["unknown", "open"] as const) {
			const words = powerWords(powerToldOf(board, { ...emptyBuildFacts, processor: { state } }));
			expect(words[0]?.lines[0]).toContain("not settled which processor");
			expect(words[1]?.lines).toEqual(["Answer the question about your processor: one processor, not several."]);
		}
	});
	test("of a known one its watts are, with where to find them", () => {
		const told = powerToldOf(board, withProcessor({}));
		expect(told.steady).toBeNull();
		const words = powerWords(told);
		expect(words[0]?.lines[0]).toContain("How many watts Piccolo takes is not known.");
		expect(words[1]?.lines.map((line) => line.split(":")[0])).toEqual([
			"Base power (label watts) of your processor",
			"Highest power of your processor",
			"Power held for hours of your processor",
		]);
	});
});

describe("several processors in question", () => {
	const open = { ...emptyBuildFacts, processor: { state: "open" }, sessionLength: "an-hour" } as const;
	const world = (part: Partial<Processor> & { readonly name: string }): World => ({
		facts: { ...withProcessor(part), sessionLength: "an-hour" },
		choices: [{ questionId: "fit/candidates", label: part.name }],
	});
	const [piccolo, bassoon] = [
		world({ id: "piccolo", name: "Piccolo", sustainedW: 60 }),
		world({ id: "bassoon", name: "Bassoon", sustainedW: 240 }),
	];
	const without: World = { facts: open, choices: [] };
	const sentenceIn = ({ facts: of }: World) => powerSentence(steadyOf(powerToldOf(board, of)), of.sessionLength);

	test("each has its sentence, in the order of the worlds", () => {
		const told = powerToldOf(board, open, [piccolo, bassoon, without]);
		expect(told.steady).toBeNull();
		expect(sentenceIn(piccolo)).not.toBe(sentenceIn(bassoon));
		expect(told.candidates).toEqual([
			{ name: "Piccolo", sentence: sentenceIn(piccolo) },
			{ name: "Bassoon", sentence: sentenceIn(bassoon) },
		]);
		const [short, more, keep] = powerWords(told);
		expect(short?.lines.slice(0, 2)).toEqual([
			`With Piccolo: ${sentenceIn(piccolo)}`,
			`With Bassoon: ${sentenceIn(bassoon)}`,
		]);
		expect(short?.lines[0]).toContain("60 W that count for an hour");
		expect(short?.lines[2]).toContain("small chips beside the socket");
		expect(more?.lines.join(" ")).toContain("Settle on one processor");
		expect(keep?.lines.join(" ")).toContain("no design calculation");
		expect(powerWordsInShort(told, "a-board")[0]).toEqual(short);
	});

	test("one that stands in several worlds is told once", () => {
		const told = powerToldOf(board, open, [piccolo, bassoon, piccolo, bassoon]);
		expect(told.candidates.map(({ name }) => name)).toEqual(["Piccolo", "Bassoon"]);
	});

	test("worlds without any processor leave what is missing", () => {
		for (const worlds of [[without], [without, without], []]) {
			const told = powerToldOf(board, open, worlds);
			expect(told.candidates).toEqual([]);
			expect(powerWords(told)[0]?.lines[0]).toContain("not settled which processor");
		}
	});

	test("a processor that is settled has no others beside it", () => {
		const told = powerToldOf(board, facts, [piccolo, bassoon]);
		expect(told.candidates).toEqual([]);
		expect(powerWords(told)).toEqual(powerWords(powerToldOf(board, facts)));
	});
});

test("whatever is known, what can hurt is said, and that all this is an estimate", () => {
	for (const told of [powerToldOf(board, facts), powerToldOf(board, emptyBuildFacts)]) {
		const lines = linesOf(told, "Keep in mind").join(" ");
		for (const said of [
			"estimate",
			"no design calculation",
			"void the warranty",
			"Never open a power supply",
			"licensed electrician",
		])
			expect(lines).toContain(said);
	}
});

/** Figures with their unit count as one word, as where reading is measured. */
const wordsIn = (sentence: string) =>
	sentence.replace(/\b\d[\d.]*(?: [WAKCV])?\b/g, "one").match(/[\p{L}\p{N}'][\p{L}\p{N}'/-]*/gu)?.length ?? 0;

test("on every board of the demonstration no sentence is long, and none holds what is not a word", () => {
	const builds = [
		withProcessor({ baseW: 65 }),
		withProcessor({ baseW: 125, peakW: 253, limitPolicy: "timed-boost" }, { sessionLength: "minutes" }),
		withProcessor({ sustainedW: 240, peakW: 300 }, { activities: ["building"], sessionLength: "all-day" }),
	];
	const slips = boardSubjects(demo.market).flatMap(({ board: of }) =>
		builds.flatMap((build) =>
			powerWords(powerToldOf(of, build)).flatMap(({ lines }) =>
				lines.filter(
					(line) =>
						/undefined|NaN|Infinity|null| {2}/.test(line) ||
						line.split(/(?<=[.!?])\s+(?=[A-Z0-9])/).some((sentence) => wordsIn(sentence) > 25),
				),
			),
		),
	);
	expect([...new Set(slips)]).toEqual([]);
});
