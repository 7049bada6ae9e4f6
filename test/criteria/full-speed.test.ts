import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fullSpeed, worthOfShare } from "../../src/criteria/full-speed.ts";
import { piecewiseLinear } from "../../src/maths/piecewise-linear.ts";
import type { Board } from "../../src/parts/board.ts";
import { lookUpFact } from "../../src/parts/fact-path.ts";
import { planFactsOf } from "../../src/plan/plan-facts.ts";
import { gbytesPerSecond } from "../../src/reference/link-bandwidth.ts";
import { card, m2, slot, stick } from "../plan/made-up-problem.ts";
import { buildFacts, type GivenBuild } from "../rules/rule-subject.ts";

/** What the criterion measures of a board and a build, by the real plan. */
function measured(given: Partial<Board>, build: GivenBuild) {
	const facts = buildFacts(build);
	const board: Board = { id: "a-board", name: "A board", ...given };
	const subject = { board, facts, measures: { plan: () => planFactsOf(board, facts) } };
	const found = fullSpeed.reads.flatMap((path) => {
		const fact = lookUpFact(subject, path);
		return fact.known ? [[path, fact.value] as const] : [];
	});
	return fullSpeed.measure(Object.fromEntries(found));
}
const exactly = (value: number) => ({ low: value, high: value, missing: [] });
const noGraphics: GivenBuild = { graphicsCard: "none" };
const graphics = (lanes = 16, generation = 4): GivenBuild => ({
	graphicsCard: { lanes, generation, lengthMm: 250, thicknessMm: 20 },
});
const dart = stick("Dart");
const all = { sharing: [], drivePorts: [], m2Sockets: [], cardSlots: [] } satisfies Partial<Board>;

describe("says nothing", () => {
	test.each<[string, GivenBuild]>([
		["where nothing is named", {}],
		["of drives on a cable", { drives: [{ id: "box", name: "Box", shape: "2.5 inch", link: "SATA" }] }],
		["of a PCI card", { addInCards: [card("Fiddle", { bus: "PCI" })] }],
		["of memory without a rate", { memory: { type: "DDR5" } }],
		["of a graphics card that is not settled", { graphicsCard: "unknown" }],
	])("%s", (_, build) => {
		expect(measured({ ...all, cardSlots: [slot("A", 1, 16)], m2Sockets: [m2("M1")] }, build)).toBeNull();
		expect(measured({}, build)).toBeNull();
	});
});

describe("the graphics card", () => {
	test.each<[string, Board["cardSlots"], GivenBuild, number]>([
		["all its lanes", [slot("A", 1, 16)], graphics(), 1],
		["a slot newer than the card is worth no more", [slot("A", 1, 16, { generation: 5 })], graphics(), 1],
		["a card of eight lanes in a slot of sixteen", [slot("A", 1, 16)], graphics(8), 1],
		["half its lanes", [slot("A", 1, 16, { wiredLanes: 8 })], graphics(), 0.95],
		["half its speed by the generation", [slot("A", 1, 16, { generation: 3 })], graphics(), 0.95],
		// A quarter of generation 4 is 7.88 GB/s: as good as half of 15.75.
		["a quarter that is still plenty", [slot("A", 1, 16, { wiredLanes: 4 })], graphics(), 0.95],
		["a quarter of generation 3: 3.94 of 15.75 GB/s", [slot("A", 1, 16, { wiredLanes: 4 })], graphics(16, 3), 0.6],
		["an eighth lies half way to nothing", [slot("A", 1, 16, { wiredLanes: 2 })], graphics(16, 3), 0.3],
		["no slot at all", [], graphics(), 0],
		["one still to be bought, by its lanes", [slot("A", 1, 16, { wiredLanes: 8 })], { graphicsCard: "open" }, 0.95],
	])("%s", (_, cardSlots = [], build, value) => {
		expect(measured({ ...all, cardSlots }, build)).toMatchObject({ ...exactly(expect.closeTo(value, 9)) });
	});
});

describe("drives", () => {
	test.each<[string, Board["m2Sockets"], GivenBuild, number]>([
		["as fast as it is", [m2("M1")], { drives: [dart] }, 1],
		["a faster socket is worth no more", [m2("M1", { generation: 5 })], { drives: [dart] }, 1],
		["half by the generation", [m2("M1", { generation: 3 })], { drives: [dart] }, 0.7],
		["half by the lanes", [m2("M1", { wiredLanes: 2 })], { drives: [dart] }, 0.7],
		[
			"a tenth slower is noticed by nobody",
			[m2("M1", { generation: 3 })],
			{ drives: [stick("Dart", { readMBytesPerS: 4375 })] },
			1,
		],
		["one of which no speed is told, by its lanes", [m2("M1", { wiredLanes: 2 })], { drives: [noSpeed("Dart")] }, 0.7],
		["two, of which one is slowed", [m2("M1"), m2("M2", { generation: 3 })], { drives: [dart, dart] }, 0.85],
		["two, and place for one", [m2("M1")], { drives: [dart, dart] }, 0.5],
	])("%s", (_, m2Sockets = [], build, value) => {
		expect(measured({ ...all, m2Sockets }, { ...noGraphics, ...build })).toMatchObject(
			exactly(expect.closeTo(value, 3)),
		);
	});
});

function noSpeed(name: string) {
	const { generation: _, ...drive } = stick(name);
	return drive;
}

test("cards count as drives do", () => {
	const build = { ...noGraphics, addInCards: [card("Fiddle")] };
	expect(measured({ ...all, cardSlots: [slot("A", 1, 4)] }, build)).toMatchObject(exactly(1));
	const half = { ...all, cardSlots: [slot("A", 1, 4, { wiredLanes: 2 })] };
	expect(measured(half, build)).toMatchObject(exactly(expect.closeTo(0.7, 9)));
});

describe("memory", () => {
	const rates = [{ modulesPerChannel: 1, mtPerS: 4800 }];
	const kit = (mtPerS: number): GivenBuild => ({
		memory: { type: "DDR5", mtPerS },
		processor: { memory: { rates } },
	});
	const raising = (highestMtPerS?: number): Partial<Board> => ({
		raises: { memoryRate: true },
		memory: highestMtPerS === undefined ? {} : { highestMtPerS },
	});

	test.each<[string, Partial<Board>, number, number]>([
		["within what the board lists", raising(6400), 6000, 1],
		["far more than the kit can is worth no more", raising(9000), 6000, 1],
		["five percent less", raising(5700), 6000, 1],
		["four fifths", raising(4800), 6000, 0.7],
		["half", raising(3000), 6000, 0],
		["the board lets nothing be raised", { raises: { memoryRate: false }, memory: { highestMtPerS: 8000 } }, 6000, 0.7],
		["nothing has to be raised", { raises: { memoryRate: false } }, 4800, 1],
	])("%s", (_, board, rate, value) => {
		expect(measured(board, kit(rate))).toMatchObject(exactly(expect.closeTo(value, 9)));
	});

	test.each<[string, Partial<Board>, GivenBuild, { low: number; high: number; missing: string[] }]>([
		["its highest", raising(), kit(6000), { low: 0.7, high: 1, missing: ["board.memory.highestMtPerS"] }],
		[
			"whether it lets it be raised",
			{ memory: { highestMtPerS: 6400 } },
			kit(6000),
			{ low: 0.7, high: 1, missing: ["board.raises.memoryRate"] },
		],
		[
			"what the processor lists",
			{ raises: { memoryRate: false } },
			{ memory: { mtPerS: 6000 } },
			{ low: 0, high: 1, missing: ["processor.memory.rates"] },
		],
	])("not known: %s", (_, board, build, range) => {
		const measure = measured(board, build);
		expect(measure).toEqual({ ...range, low: expect.closeTo(range.low, 9) });
	});

	test("a row of another type says nothing", () => {
		const ddr4 = [{ type: "DDR4" as const, modulesPerChannel: 1, mtPerS: 3200 }];
		const build = { ...kit(6000), processor: { memory: { rates: [...ddr4, ...rates] } } };
		expect(measured({ raises: { memoryRate: false } }, build)).toMatchObject(exactly(expect.closeTo(0.7, 9)));
	});
});

describe("what is not known is a range", () => {
	const without = (socket: ReturnType<typeof m2>) => {
		const { generation: _, ...rest } = socket;
		return rest;
	};

	test("a socket without a generation, from 2 to as fast as the drive", () => {
		const measure = measured({ ...all, m2Sockets: [without(m2("M1"))] }, { ...noGraphics, drives: [dart] });
		const share = gbytesPerSecond(2, 4) / gbytesPerSecond(4, 4);
		expect(measure?.low).toBeCloseTo(piecewiseLinear(worthOfShare["drive or card"], share), 9);
		expect(measure).toMatchObject({ high: 1, missing: ["board.m2Sockets"] });
	});

	test("no list of sockets", () => {
		const { m2Sockets: _, ...unlisted } = all;
		const measure = measured(unlisted, { ...noGraphics, drives: [dart] });
		expect(measure).toMatchObject({ low: 0, high: 1 });
		expect(measure?.missing).toContain("board.m2Sockets");
	});

	test("nothing of the board", () => {
		const measure = measured({}, { ...graphics(), drives: [dart], memory: { mtPerS: 6000 } });
		expect(measure).toMatchObject({ low: 0, high: 1 });
		expect(measure?.missing).toEqual(expect.arrayContaining(["board.cardSlots", "board.m2Sockets"]));
	});

	test("what shares lanes", () => {
		const board = { cardSlots: [slot("A", 1, 16)], m2Sockets: [m2("M1")], drivePorts: [] };
		const measure = measured(board, { ...graphics(), drives: [dart] });
		expect(measure?.low).toBeLessThanOrEqual(measure?.high ?? 0);
		if (measure && measure.low < measure.high) expect(measure.missing).toContain("board.sharing");
	});

	test("finding out one socket's generation never leads out of the range", () => {
		const generation = fc.option(fc.constantFrom(2, 3, 4, 5), { nil: undefined });
		const lanes = fc.constantFrom(1, 2, 4);
		fc.assert(
			fc.property(generation, lanes, fc.constantFrom(2, 3, 4, 5), (known, wiredLanes, drives) => {
				const build = { ...noGraphics, drives: [stick("Dart", { generation: drives })] };
				const at = (told: number | undefined) => {
					const socket = without(m2("M1", { wiredLanes }));
					return measured(
						{ ...all, m2Sockets: [told === undefined ? socket : { ...socket, generation: told }] },
						build,
					);
				};
				const [before, after] = [at(undefined), at(known)];
				expect(after?.low).toBeGreaterThanOrEqual((before?.low ?? 1) - 1e-9);
				expect(after?.high).toBeLessThanOrEqual((before?.high ?? 0) + 1e-9);
				if (known !== undefined) expect(after?.low).toBe(after?.high);
			}),
		);
	});
});

test("every scale of a kind is level from its end on, and never falls", () => {
	for (const scale of Object.values(worthOfShare)) {
		for (const [index, [share, value]] of scale.entries()) {
			const [shareBefore, valueBefore] = scale[index - 1] ?? [-1, -1];
			expect(share).toBeGreaterThan(shareBefore);
			expect(value).toBeGreaterThan(valueBefore);
		}
		expect(scale.at(-1)?.[1]).toBe(1);
	}
});

const said = (board: Partial<Board>, build: GivenBuild) => {
	const measure = measured({ ...all, ...board }, build);
	return measure && fullSpeed.says(measure);
};
test("in words", () => {
	const slow = m2("M1", { generation: 3 });
	const build = { ...noGraphics, drives: [dart] };
	expect(said({ m2Sockets: [m2("M1")] }, build)).toBe("all your fast parts run at full speed on it");
	expect(said({ m2Sockets: [slow] }, build)).toBe("Dart runs slower on it than possible");
	expect(said({ m2Sockets: [slow, { ...slow, name: "M2" }] }, { ...build, drives: [dart, stick("Arrow")] })).toBe(
		"Dart and Arrow run slower on it than possible",
	);
	expect(
		said({ cardSlots: [slot("A", 1, 16, { wiredLanes: 8 })], m2Sockets: [slow] }, { ...graphics(), drives: [dart] }),
	).toBe("Dart runs slower on it than possible; Carousel runs nearly at full speed on it");
	expect(fullSpeed.says({ low: 0.2, high: 1, missing: [] })).toBe(
		"how fast some of your fast parts run on it is not known",
	);
	expect(fullSpeed.says({ low: 0.2, high: 0.2, missing: [] })).toBe(
		"some of your fast parts run slower on it than they can",
	);
});
