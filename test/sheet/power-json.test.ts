import { expect, test } from "vitest";
import type { Board } from "../../src/parts/board.ts";
import { type BuildFacts, emptyBuildFacts } from "../../src/parts/build.ts";
import type { Processor } from "../../src/parts/processor.ts";
import type { PowerVerdict, SteadyPower } from "../../src/power/steady-power.ts";
import { powerJson } from "../../src/sheet/power-json.ts";
import { type PowerTold, powerToldOf, powerWords } from "../../src/sheet/power-words.ts";

const board: Board = {
	id: "a-board",
	name: "A board",
	powerDelivery: {
		coreStages: 10,
		stageKind: "integrated",
		heatSink: "both sides",
		measurements: [{ loadW: 140, airC: 22, stageC: 60, airflow: "case fans", minutes: 45 }],
	},
};
const withProcessor = (part: Partial<Processor>): BuildFacts => ({
	...emptyBuildFacts,
	processor: { state: "have", ownership: "bought", part: { id: "piccolo", name: "Piccolo", ...part } },
	activities: ["games"],
	sessionLength: "an-hour",
	summerRoom: "warm",
	caseFans: 2,
});
const facts = withProcessor({ baseW: 125, peakW: 253, averagingS: 56, limitPolicy: "timed-boost" });
const told = powerToldOf(board, facts);

/** As another program reads it: through text, so that what JSON cannot hold is gone. */
// biome-ignore lint/suspicious/noExplicitAny: what is read back has no type
const read = (of: PowerTold): any => JSON.parse(JSON.stringify(powerJson("a-board", of)));
function steadyOf({ steady }: PowerTold): SteadyPower {
	if (!steady) throw new Error("its watts are known");
	return steady;
}

test("it says what it is, and has every key even where nothing is known", () => {
	const bare = powerToldOf({ id: "bare", name: "Bare" }, emptyBuildFacts);
	const [full, none] = [read(told), read(bare)];
	expect(full).toMatchObject({ schema: "boardwalk/power@1", boardId: "a-board" });
	expect(Object.keys(none)).toEqual(Object.keys(full));
	expect(none).toMatchObject({ verdict: "cannot-tell", ranges: null, oneStage: null, measured: null, boost: null });
	expect(Object.keys(none.inputs.use)).toEqual(Object.keys(full.inputs.use));
	expect(none.inputs).toMatchObject({ processor: null, powerDelivery: {} });
	expect(none.words).toEqual(powerWords(bare));
});

test("every range that was worked out, to the last digit", () => {
	const steady = steadyOf(told);
	const names = ["watts", "airC", "hotSpotC", "spareK", "comfortableW", "holdingBackW", "kelvinPerWatt"] as const;
	const { ranges } = read(told);
	for (const name of [...names, "heatW", "lossW", "efficiency"] as const)
		expect(ranges[name], name).toEqual({ ...steady[name], isEndless: false });
	expect(read(told).linesC).toEqual({ comfortable: 90, holdingBack: 105 });
});

test("what has no end is null, and says so", () => {
	const none = read(powerToldOf({ id: "bare", name: "Bare" }, { ...facts, sessionLength: "all-day" }));
	expect(none.ranges.hotSpotC).toMatchObject({ high: null, isEndless: true });
	expect(none.ranges.hotSpotC.low).toBeGreaterThan(30);
	expect(none.ranges.spareK).toMatchObject({ low: null, isEndless: true });
	expect(none.inputs.use.minutes).toEqual({ value: null, isEndless: true });
	expect(read(told).inputs.use.minutes).toEqual({ value: 60, isEndless: false });
});

test.each<[PowerVerdict, string]>([
	["ample", "ample"],
	["enough", "enough"],
	["tight", "tight"],
	["not enough", "not-enough"],
	["cannot tell", "cannot-tell"],
])("the verdict %s has a code", (verdict, code) => {
	expect(read({ ...told, steady: { ...steadyOf(told), verdict } }).verdict).toBe(code);
});

test("what went in", () => {
	expect(read(told).inputs).toEqual({
		processor: "piccolo",
		use: {
			labelW: 125,
			heldW: null,
			peakW: 253,
			averagingS: 56,
			limitPolicy: "timed-boost",
			activities: ["games"],
			sessionLength: "an-hour",
			minutes: { value: 60, isEndless: false },
			raisesClock: false,
		},
		air: { summerRoom: "warm", frontOpen: null, coolerKind: null, caseFans: 2 },
		powerDelivery: board.powerDelivery,
	});
});

test("the boost, and one that has no end", () => {
	const { boost } = read(told);
	const seconds = steadyOf(told).boost?.seconds;
	expect(boost).toEqual({
		peakW: 253,
		seconds: { ...seconds, isEndless: false },
		isEndless: false,
		thenW: 125,
		after: "falls-back",
	});
	const fixed = read(powerToldOf(board, withProcessor({ peakW: 90, limitPolicy: "fixed" })));
	expect(fixed.boost).toEqual({ peakW: 90, seconds: null, isEndless: true, thenW: null, after: "holds" });
});

test("terms of one stage, assumptions, the test, and what would narrow", () => {
	const steady = steadyOf(told);
	const { oneStage, assumptions, measured, narrowing, words } = read(told);
	expect(oneStage).toEqual({ coolest: steady.coolest, hottest: steady.hottest });
	expect(oneStage.hottest.watts.length).toBeGreaterThan(3);
	expect(assumptions).toHaveLength(steady.assumptions.length);
	expect(assumptions[0]).toMatchObject({ what: steady.assumptions[0]?.what, source: steady.assumptions[0]?.source });
	expect(measured.test).toEqual(board.powerDelivery?.measurements?.[0]);
	expect(measured.estimateC).toEqual({ ...steady.measured?.estimateC, isEndless: false });
	expect(narrowing).toEqual(told.narrowing);
	expect(narrowing.length).toBeGreaterThan(0);
	expect(words).toEqual(powerWords(told));
});

test("with several processors in question no figure is told as settled, and the words name each", () => {
	const worlds = ["Piccolo", "Bassoon"].map((name, index) => ({
		facts: withProcessor({ id: name.toLowerCase(), name, sustainedW: 60 + 100 * index }),
		choices: [{ questionId: "fit/candidates", label: name }],
	}));
	const open = powerToldOf(board, { ...facts, processor: { state: "open" } }, worlds);
	const json = read(open);
	expect(Object.keys(json)).toEqual(Object.keys(read(told)));
	expect(json).toMatchObject({ verdict: "cannot-tell", ranges: null, inputs: { processor: null } });
	expect(json.words).toEqual(powerWords(open));
	expect(json.words[0].lines[0]).toMatch(/^With Piccolo: /);
	expect(json.words[0].lines[1]).toMatch(/^With Bassoon: /);
});
