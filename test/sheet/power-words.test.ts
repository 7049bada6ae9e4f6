import { describe, expect, test } from "vitest";
import { boardSubjects } from "../../src/choose/findings-of-market.ts";
import type { Board } from "../../src/parts/board.ts";
import { type BuildFacts, emptyBuildFacts } from "../../src/parts/build.ts";
import type { Processor } from "../../src/parts/processor.ts";
import { activities } from "../../src/parts/wants.ts";
import type { SteadyPower } from "../../src/power/steady-power.ts";
import { celsiusWords, type PowerTold, powerSentence, powerToldOf, powerWords } from "../../src/sheet/power-words.ts";
import { demo } from "../walk/walk-in-demo.ts";

const board: Board = {
	id: "a-board",
	name: "A board",
	powerDelivery: {
		coreStages: 10,
		stageKind: "integrated",
		stageRatingA: 60,
		switchingKhz: 500,
		coilMohm: 0.3,
		coilNh: 220,
		heatSink: "both sides",
		layers: 6,
		copperOz: 2,
	},
};
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
			"enough, up to the line",
			at(70, 90, { verdict: "enough", watts: { low: 120.4, high: 160 } }),
			"Feeds the 120 to 160 W that count for hours, with up to 20 degrees to spare.",
		],
		[
			"tight",
			at(95, 102, { verdict: "tight" }),
			"Gets hot feeding 140 W for hours: 5 to 12 degrees past the comfortable line.",
		],
		[
			"tight, nobody knows how far",
			at(91, endless, { verdict: "tight" }),
			"Gets hot feeding 140 W for hours: from 1 degree to far past the comfortable line.",
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
			"Feeding 140 W for hours, it may have 31 degrees to spare or lack 7: nobody can tell.",
		],
		[
			"cannot tell by a hair",
			at(89.7, 90.2, { verdict: "cannot tell" }),
			"Feeding 140 W for hours, it may have less than 1 degree to spare or lack less than 1: nobody can tell.",
		],
		[
			"cannot tell at all",
			at(59, 151, { verdict: "cannot tell" }),
			"Feeding 140 W for hours, it may have 31 degrees to spare or be far past the comfortable line: nobody can tell.",
		],
		[
			"nothing published",
			at(30, 130, { verdict: "cannot tell", ...nobodyCounted }),
			"Nobody has counted its stages, so the range is wide: it may have 60 degrees to spare or lack 40.",
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
			"For hours it surely feeds 160 W, perhaps 240 below 90 degrees, and 190 W, perhaps 280 below 105.",
		]);
	});
	test.each([
		[53, 97, "from 37 degrees to spare to 7 degrees past them"],
		[53, endless, "from 37 degrees to spare to far past them"],
		[95, 102, "it is past them by 5 to 12 degrees"],
		[95, endless, "it is past them by 5 degrees at least"],
		[160, endless, "none to spare, it is far past them"],
	])("from %d to %d", (low, high, words) => {
		expect(warm(at(low, high))[4]).toBe(`Up to the 90 degrees: ${words}.`);
	});
});

test("what would tell more: each fact with where to find it, answers as answers, and no path that is neither", () => {
	const narrowing = ["board.powerDelivery.heatSink", "processor.sustainedW", "summerRoom", "board.no.such", "nothing"];
	expect(linesOf({ ...powerToldOf(board, facts), narrowing }, "What would tell more")).toEqual([
		"Heat sink on the stages: Pictures of the board.",
		"Power held for hours of your processor: A published test of hours of full load; the label watts are not it.",
		"Room on a hot evening: answer the question about it.",
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
			"Published for hours of full load: 140 W. That goes before the label.",
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

test("what to look for in a test: no less load than what counts", () => {
	const told = { ...powerToldOf(board, facts), steady: steady({ watts: { low: 120, high: 160.2 } }) };
	const lines = linesOf(told, "What to look for in a published test");
	expect(lines[0]).toContain("at least 161 W");
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

test("one stage: every cause at both ends, to two digits", () => {
	const end = (amps: number, working: number, lost: number) => ({
		amps,
		working,
		watts: [
			{ name: "conduction", watts: lost },
			{ name: "coil", watts: 0.0286 },
		],
	});
	const of = steady({
		coolest: end(9.474, 10.574, 0.2456),
		hottest: end(12.68, 12, 0.664),
		heatW: { low: 6.16, high: 17.6 },
		lossW: { low: 6.46, high: 18 },
		efficiency: { low: 0.899, high: 0.953 },
		kelvinPerWatt: { low: 1.26, high: 2.95 },
	});
	expect(linesOf({ ...powerToldOf(board, facts), steady: of }, "One stage, term by term")).toEqual([
		"At the cool end 11 stages work on average, with 9.5 A in each.",
		"Watts each loses there: conduction 0.25; coil 0.029.",
		"At the hot end 12 stages work, with 13 A in each.",
		"Watts each loses there: conduction 0.66; coil 0.029.",
		"Heat in all stages: 6.2 to 18 W. Lost from the plug to the processor: 6.5 to 18 W.",
		"Of every 100 W that go in, 90 to 95 W come out.",
		"Each watt of heat makes the stages 1.3 to 3 degrees warmer than the air.",
	]);
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
