import { describe, expect, test } from "vitest";
import { room, roomThings } from "../../src/criteria/room.ts";
import { piecewiseLinear } from "../../src/maths/piecewise-linear.ts";
import type { Board } from "../../src/parts/board.ts";
import type { Drive } from "../../src/parts/drive.ts";
import { type LaterThing, laterThings } from "../../src/parts/wants.ts";
import type { LaterPlaces } from "../../src/plan/later-places.ts";
import { planFactsOf } from "../../src/plan/plan-facts.ts";
import { memoryLater } from "../../src/rules/features/memory-later.ts";
import { runRule } from "../../src/rules/run-rule.ts";
import { card, m2, ports, slot, stick } from "../plan/made-up-problem.ts";
import { buildFacts, type GivenBuild, subjectOf } from "../rules/rule-subject.ts";

const exactly = (share: number) => ({ low: share, high: share, missing: [] });
const later = (wanted: number, fewest: number, most = fewest, missing: readonly string[] = []): LaterPlaces => ({
	wanted,
	fewest,
	most,
	missing,
});
const several = (count: number, thing: LaterThing) => Array<LaterThing>(count).fill(thing);
const memorySlots = "board.memory.slots";

describe("what the plan and the memory slots say, put together", () => {
	const laterMemory = { laterThings: ["memory"] };
	const twoSlots = { [memorySlots]: 4, "memory.modules": 2, laterThings: several(3, "memory") };

	test.each<[string, Record<string, unknown>, ReturnType<typeof room.measure>]>([
		["nobody has said", {}, null],
		["nothing will be added", { laterThings: [], "plan.later": later(0, 0) }, null],
		["all of it", { "plan.later": later(3, 3) }, exactly(1)],
		["one of four", { "plan.later": later(4, 1) }, exactly(0.25)],
		["none", { "plan.later": later(2, 0) }, exactly(0)],
		[
			"one or two of two",
			{ "plan.later": later(2, 1, 2, ["board.sharing"]) },
			{ low: 0.5, high: 1, missing: ["board.sharing"] },
		],
		["two slots of four are free for memory", { [memorySlots]: 4, "memory.modules": 2, ...laterMemory }, exactly(1)],
		["all memory slots taken", { [memorySlots]: 2, "memory.modules": 2, ...laterMemory }, exactly(0)],
		[
			"more modules than slots are no less than none",
			{ [memorySlots]: 2, "memory.modules": 4, ...laterMemory },
			exactly(0),
		],
		["no memory picked: two modules are usual", { [memorySlots]: 2, ...laterMemory }, exactly(0)],
		["no memory picked, and three slots: half of a kit", { [memorySlots]: 3, ...laterMemory }, exactly(0.5)],
		["no memory picked, and four slots", { [memorySlots]: 4, ...laterMemory }, exactly(1)],
		[
			"the same again is as many modules as now",
			{ [memorySlots]: 6, "memory.modules": 4, ...laterMemory },
			exactly(0.5),
		],
		["one module, and one slot free", { [memorySlots]: 2, "memory.modules": 1, ...laterMemory }, exactly(1)],
		[
			"of three kits one finds a place; each counts like the rest",
			{ ...twoSlots, "plan.later": later(1, 0) },
			exactly(0.25),
		],
		[
			"more slots than modules are worth no more",
			{ ...laterMemory, [memorySlots]: 8, "memory.modules": 2, "plan.later": later(1, 0) },
			exactly(0.5),
		],
		[
			"memory slots not known, nor the rest",
			{ ...laterMemory, "plan.later": later(1, 0, 1, ["board.m2Sockets"]) },
			{ low: 0, high: 1, missing: ["board.m2Sockets", memorySlots] },
		],
		[
			"memory slots that nobody asks for are not missed",
			{ "plan.later": later(1, 1), laterThings: ["M.2 drive"] },
			exactly(1),
		],
	])("%s", (_, facts, measure) => {
		expect(room.measure(facts)).toEqual(measure);
	});
});

test("agrees with features/memory-later on whether the same again has a slot", () => {
	const laterMemory = { laterThings: ["memory"] as LaterThing[] };
	for (let modules = 1; modules <= 4; modules++)
		for (let slots = modules; slots <= 8; slots++) {
			const given = { board: { memory: { slots, channels: 2 } }, memory: { modules }, ...laterMemory };
			const finding = runRule(memoryLater, subjectOf(given));
			const measure = room.measure({ [memorySlots]: slots, "memory.modules": modules, ...laterMemory });
			expect(finding.messageId === "noSlot", `${modules} in ${slots}`).toBe(measure?.high === 0);
		}
});

/** What the criterion measures of a board and a build, by the real plan. */
function measured(board: Partial<Board>, build: GivenBuild) {
	const plan = planFactsOf({ id: "a-board", name: "A board", ...board }, buildFacts(build));
	return room.measure({
		"plan.later": plan.later,
		...(build.laterThings ? { laterThings: build.laterThings } : {}),
		...(board.memory?.slots === undefined ? {} : { [memorySlots]: board.memory.slots }),
	});
}

const box: Drive = { id: "box", name: "Box", shape: "2.5 inch", link: "SATA" };
const noGraphics = { graphicsCard: "none" } as const;
/** A graphics card so thick, in mm. */
const graphics = (thicknessMm?: number, facts: object = {}) => ({
	graphicsCard: { lanes: 16, lengthMm: 250, ...(thicknessMm ? { thicknessMm } : {}), ...facts },
});
const secondCard = (strength: "must" | "would-like" | "dont-mind") => ({
	wishes: { "features/second-card": strength },
});

describe("says nothing", () => {
	test.each<[string, GivenBuild]>([
		["while nobody has said what comes later", {}],
		["where nothing will be added", { laterThings: [] }],
		[
			"of things that others look after",
			{ laterThings: laterThings.filter((thing) => !roomThings.some((one) => one === thing)) },
		],
		["of a second card that is a must: a rule sees to that", secondCard("must")],
		["of a second card that one does not mind", { laterThings: [], ...secondCard("dont-mind") }],
	])("%s", (_, build) => {
		expect(measured({ cardSlots: [slot("A", 1, 16), slot("B", 4, 16)] }, build)).toBeNull();
	});
});

describe("places for M.2 drives", () => {
	const sticks = (count: number) => ({ laterThings: several(count, "M.2 drive") });
	const dart = stick("Dart");
	const bare = (key?: "M" | "E") => (name: string) => ({ name, ...(key ? { key } : {}) });
	const one = { m2Sockets: [m2("M1")] };

	test.each<[string, Partial<Board>, GivenBuild, number]>([
		["one free", one, sticks(1), 1],
		["one of which nothing but the key is known", { m2Sockets: [bare("M")("M1")] }, sticks(1), 1],
		["one of two find a place", one, sticks(2), 0.5],
		["taken from the first day", one, { drives: [dart], ...sticks(1) }, 0],
		["more taken than there are is no less than none", one, { drives: [dart, dart], ...sticks(1) }, 0],
		["key E is for wireless", { m2Sockets: [bare("E")("M1"), m2("M2")] }, sticks(2), 0.5],
		["a socket whose key is not known counts", { m2Sockets: [bare()("M1"), m2("M2")] }, sticks(2), 1],
		["other drives take none", { ...one, drivePorts: ports(2), sharing: [] }, { drives: [box, box], ...sticks(1) }, 1],
		["more free than wanted is worth no more", { m2Sockets: [m2("M1"), m2("M2"), m2("M3")] }, sticks(1), 1],
		["no socket at all is none, not unknown", { m2Sockets: [] }, sticks(1), 0],
		// What the old count did not see:
		[
			"a slot for an adapter is no place",
			{ m2Sockets: [], cardSlots: [slot("X4", 3, 4)] },
			{ ...noGraphics, ...sticks(1) },
			0,
		],
		["a socket too short is none", { m2Sockets: [m2("M1", { lengthsMm: [42, 60] })] }, sticks(1), 0],
		["a socket wired for SATA alone is none", { m2Sockets: [m2("M1", { wiredLanes: 0, sata: true })] }, sticks(1), 0],
		["a quarter of the speed is none", { m2Sockets: [m2("M1", { wiredLanes: 1, generation: 3 })] }, sticks(1), 0],
		// Two lanes of generation 3 carry 1969 MB/s of the 3938 of four.
		["exactly half of it is one", { m2Sockets: [m2("M1", { wiredLanes: 2, generation: 3 })] }, sticks(1), 1],
		[
			"the same beside a drive of the first day, for one of two",
			{ m2Sockets: [m2("M1"), m2("M2", { wiredLanes: 2, generation: 3 })] },
			{ drives: [dart], ...sticks(2) },
			0.5,
		],
		["just more than half of it is one", { m2Sockets: [m2("M1", { generation: 2 })] }, sticks(1), 1],
	])("%s", (_, board, build, share) => {
		expect(measured(board, build)).toEqual(exactly(share));
	});

	test("a socket that is dead with this processor is none", () => {
		const conditions = [{ connector: "M1", when: { processorSeries: ["Lump"] }, dead: true as const }];
		const build = (series: string) => ({ processor: { series }, ...sticks(1) });
		expect(measured({ ...one, conditions }, build("Lump"))).toEqual(exactly(0));
		expect(measured({ ...one, conditions }, build("Loaf"))).toEqual(exactly(1));
	});
});

describe("ports for drives on a cable", () => {
	const boxes = { laterThings: several(2, "SATA drive") };
	const ofKinds = (...kinds: NonNullable<Board["drivePorts"]>[number]["kind"][]) =>
		kinds.map((kind, index) => ({ name: `P${index}`, kind }));
	/** A socket that switches both ports off, or the other way round. */
	const sharing = {
		drivePorts: ports(2),
		m2Sockets: [m2("M1")],
		sharing: [{ members: ["M1", "S1", "S2"], modes: [{ on: { M1: 4 } }, { on: { S1: 1, S2: 1 } }] }],
	};

	test.each<[string, Partial<Board>, GivenBuild, number]>([
		["two free", { drivePorts: ports(2) }, {}, 1],
		["one taken by a drive named", { drivePorts: ports(2) }, { drives: [box] }, 0.5],
		["two taken by older drives", { drivePorts: ports(2) }, { olderSataDrives: 2 }, 0],
		["taken by both", { drivePorts: ports(4) }, { drives: [box], olderSataDrives: 2 }, 0.5],
		[
			"an M.2 drive takes none, be it a SATA one",
			{ drivePorts: ports(2), m2Sockets: [m2("M1", { sata: true, from: "processor" })] },
			{ drives: [stick("Slate", { link: "SATA" })] },
			1,
		],
		["ports of other kinds do not count", { drivePorts: ofKinds("SATA", "IDE", "U.2", "SlimSAS") }, {}, 0.5],
		// What the old count did not see:
		["an M.2 drive of the first day that shares with both ports leaves none", sharing, { drives: [stick("Dart")] }, 0],
		["the same socket, empty, leaves both", sharing, {}, 1],
	])("%s", (_, board, build, share) => {
		expect(measured(board, { ...build, ...boxes })).toEqual(exactly(share));
	});

	test("a later drive in the socket or two on the ports, not all three, unlike a count of each", () => {
		const all = { laterThings: [...boxes.laterThings, "M.2 drive" as const] };
		expect(measured(sharing, all)).toEqual(exactly(2 / 3));
	});

	test("where the page says nothing of sharing, an M.2 drive on the chipset may cost both ports, unlike a count", () => {
		const { sharing: _, ...silent } = sharing;
		const build = { drives: [stick("Dart")], ...boxes };
		expect(measured(silent, build)).toEqual({ low: 0, high: 1, missing: ["board.sharing"] });
		expect(measured({ ...silent, m2Sockets: [m2("M1", { from: "processor" })] }, build)).toEqual(exactly(1));
	});
});

// A card slot is 20.32 mm wide: see reference/slot-pitch.
describe("slots for cards", () => {
	const slots = { cardSlots: [slot("X16", 1, 16), slot("X1", 2, 1), slot("X4", 4, 4)], sharing: [] };
	const cards = { laterThings: several(2, "card") };
	const small = (name: string) => card(name, { lanes: 1 });

	test.each<[string, GivenBuild, number]>([
		["three for two cards, without a graphics card", noGraphics, 1],
		["a graphics card of one row covers none", graphics(20), 1],
		["one of two rows covers one", graphics(40), 0.5],
		["exactly three rows", graphics(60.96), 0.5],
		["three rows as printed", graphics(61), 0.5],
		["a hair more is four", graphics(61.5), 0],
		["four rows cover both", graphics(80), 0],
		["one still to be bought is taken for two rows", { graphicsCard: "open" }, 0.5],
		[
			"cards that go in on the first day take theirs",
			{ ...noGraphics, addInCards: [small("Fiddle"), small("Drum")] },
			0.5,
		],
		["more of them than slots", { ...noGraphics, addInCards: ["A", "B", "C", "D"].map(small) }, 0],
		// What the old count did not see:
		["slots below the last opening of the case do not count", { ...noGraphics, case: { cardSlots: 1 } }, 0.5],
		[
			"upright it would hang over later cards that may be too high, so it lies flat and covers one",
			{ ...graphics(40), case: { cardSlots: 4, uprightSlots: 2 } },
			0.5,
		],
	])("%s", (_, build, share) => {
		expect(measured(slots, { ...build, ...cards })).toEqual(exactly(share));
	});

	test("thickness not known: from one row to four, where the old count took three", () => {
		expect(measured(slots, { ...graphics(), ...cards })).toMatchObject({ low: 0, high: 1 });
	});

	test("nobody has said of a graphics card: from none to four rows, where the old count took none", () => {
		expect(measured(slots, cards)).toMatchObject({ low: 0, high: 1 });
	});

	test("what would settle it is named: how thick the card is, or whether there will be one", () => {
		expect(measured(slots, { ...graphics(), ...cards })?.missing).toEqual(["graphicsCard.thicknessMm"]);
		expect(measured(slots, cards)?.missing).toEqual(["graphicsCard"]);
	});

	test("a slot above the graphics card stays open; one of which no row is known may be covered, unlike in a count", () => {
		const above = [slot("X1", 1, 1), slot("X16", 2, 16)];
		const rowless = slot("X4", 4, 4, { row: undefined });
		const board = (...cardSlots: ReturnType<typeof slot>[]) => ({ cardSlots, sharing: [] });
		expect(measured(board(...above), { ...graphics(40), ...cards })).toEqual(exactly(0.5));
		expect(measured(board(...above, rowless), { ...graphics(40), ...cards })).toEqual({
			low: 0.5,
			high: 1,
			missing: ["board.cardSlots"],
		});
	});

	test("where the graphics card's row is not known, a thick one may cover any slot, unlike in a count", () => {
		const board = { cardSlots: [slot("X16", 1, 16, { row: undefined }), slot("X1", 2, 1)], sharing: [] };
		const one = { laterThings: several(1, "card") };
		expect(measured(board, { ...graphics(40), ...one })).toEqual({ low: 0, high: 1, missing: ["board.cardSlots"] });
		expect(measured(board, { ...graphics(20), ...one })).toEqual(exactly(1));
	});

	test("an old PCI slot is no place for a card of today", () => {
		const board = { cardSlots: [slot("X16", 1, 16), { name: "OLD", bus: "PCI" as const, row: 4 }], sharing: [] };
		expect(measured(board, { ...graphics(40), laterThings: ["card"] })).toEqual(exactly(0));
	});

	test("one lane of generation 2 is just useful, one of generation 1 is not, unlike in a count", () => {
		const board = (generation: number) => ({ cardSlots: [slot("X1", 1, 1, { generation })], sharing: [] });
		// GB/s: 0.5 and 0.25, of the 0.985 of generation 3 ("Understanding PCIe bandwidth", in a secondary text).
		expect(measured(board(2), { ...noGraphics, laterThings: ["card"] })).toEqual(exactly(1));
		expect(measured(board(1), { ...noGraphics, laterThings: ["card"] })).toEqual(exactly(0));
	});

	test("a slot that shares with a drive of the first day is none, unlike in a count", () => {
		const board = {
			cardSlots: [slot("X16", 1, 16), slot("X4", 4, 4)],
			m2Sockets: [m2("M1")],
			sharing: [{ members: ["X4", "M1"], modes: [{ on: { X4: 4 } }, { on: { M1: 4 } }] }],
		};
		const one = { ...graphics(40), laterThings: several(1, "card") };
		expect(measured(board, one)).toEqual(exactly(1));
		expect(measured(board, { ...one, drives: [stick("Dart")] })).toEqual(exactly(0));
	});
});

describe("a second big card that one would like", () => {
	const wide = (row: number, facts: Parameters<typeof slot>[3] = {}) =>
		slot(`L${row}`, row, 16, { wiredLanes: 8, ...facts });
	/** A first card that cannot do with less than eight lanes either, so that it stays where those are. */
	const first = graphics(40, { leastLanes: 8 });

	test.each<[string, ReturnType<typeof slot>[], number]>([
		["two long slots of eight lanes", [wide(1), wide(4)], 1],
		["only one", [wide(1)], 0],
		["the other is wired for four", [wide(1), wide(4, { wiredLanes: 4 })], 0],
		["the other is wired for seven", [wide(1), wide(4, { wiredLanes: 7 })], 0],
		["the other is short", [wide(1), wide(4, { lengthLanes: 8 })], 0],
		["three are no more than two", [wide(1), wide(4), wide(7)], 1],
		["right below the first card", [wide(1), wide(3)], 1],
		["each would cover the other, unlike in a count", [wide(1), wide(2)], 0],
	])("%s", (_, cardSlots, share) => {
		expect(measured({ cardSlots, sharing: [] }, { ...first, ...secondCard("would-like") })).toEqual(exactly(share));
	});

	test("a first card that does with one lane stays in the wide slot all the same", () => {
		const build = { ...graphics(40), ...secondCard("would-like") };
		expect(measured({ cardSlots: [wide(1), wide(4)], sharing: [] }, build)).toEqual(exactly(1));
		expect(measured({ cardSlots: [wide(1), wide(4, { wiredLanes: 4 })], sharing: [] }, build)).toEqual(exactly(0));
	});

	test("fed by the chipset it is none, as the rule on a second card says", () => {
		const board = { cardSlots: [wide(1), wide(4, { from: "chipset" })], sharing: [] };
		expect(measured(board, { ...first, ...secondCard("would-like") })).toEqual(exactly(0));
	});

	test("what feeds it is not known, so it may be one", () => {
		const board = { cardSlots: [wide(1), wide(4, { from: undefined })], sharing: [] };
		expect(measured(board, { ...first, ...secondCard("would-like") })).toEqual({
			low: 0,
			high: 1,
			missing: ["board.cardSlots"],
		});
	});

	test("what feeds it is not known, and nothing else that the page leaves out decides it", () => {
		const board = { cardSlots: [wide(1), wide(4, { from: undefined })] };
		expect(measured(board, { ...first, ...secondCard("would-like") })?.missing).toEqual(["board.cardSlots"]);
	});

	test("the slot is dead with some processors, and a fact of the processor would settle it", () => {
		const conditions = [{ connector: "L4", when: { processorSeries: ["Lump"] }, dead: true as const }];
		const board = { cardSlots: [wide(1), wide(4)], sharing: [], conditions };
		const build = { ...first, ...secondCard("would-like"), processor: {} };
		expect(measured(board, build)).toEqual({ low: 0, high: 1, missing: ["processor.series"] });
	});

	test("a slot that it cannot use is left to a smaller card", () => {
		const board = { cardSlots: [wide(1), wide(4, { from: "chipset" })], sharing: [] };
		const build = { ...first, ...secondCard("would-like"), laterThings: several(1, "card") };
		expect(measured(board, build)).toEqual(exactly(0.5));
	});

	test("the two share, and the second is left eight lanes or four, unlike in a count", () => {
		const board = (lanes: number) => ({
			cardSlots: [slot("L1", 1, 16), wide(4)],
			sharing: [{ members: ["L1", "L4"], modes: [{ on: { L1: 16 } }, { on: { L1: 8, L4: lanes } }] }],
		});
		expect(measured(board(8), { ...first, ...secondCard("would-like") })).toEqual(exactly(1));
		expect(measured(board(4), { ...first, ...secondCard("would-like") })).toEqual(exactly(0));
	});

	test("one slot is not for both, a smaller card and a heavy one", () => {
		const build = { ...first, ...secondCard("would-like"), laterThings: several(1, "card") };
		expect(measured({ cardSlots: [wide(1), wide(4)], sharing: [] }, build)).toEqual(exactly(0.5));
	});
});

describe("all together", () => {
	const all: GivenBuild = { laterThings: ["M.2 drive", "M.2 drive", "SATA drive", "memory", "fan", "USB thing"] };
	const board: Partial<Board> = { m2Sockets: [m2("M1")], drivePorts: ports(1), memory: { slots: 2 }, sharing: [] };

	test("what finds a place, of all that is to be added; fans and USB things do not count", () => {
		expect(measured(board, all)).toEqual(exactly(0.5));
	});

	test("what the page leaves out may find a place or none", () => {
		expect(measured({ m2Sockets: [m2("M1")] }, all)).toEqual({
			low: 0.25,
			high: 0.75,
			missing: ["board.drivePorts", memorySlots],
		});
		expect(measured({}, all)).toEqual({
			low: 0,
			high: 1,
			missing: ["board.m2Sockets", "board.drivePorts", memorySlots],
		});
	});

	test("a fact that nobody asks for is not missed, and one asked for twice is missed once", () => {
		expect(measured({ memory: { slots: 4 } }, { laterThings: ["memory"] })?.missing).toEqual([]);
		expect(measured({}, { laterThings: ["card"], ...secondCard("would-like") })).toEqual({
			low: 0,
			high: 1,
			missing: ["board.cardSlots"],
		});
	});
});

test.each([
	[0, 0],
	[0.25, 0.3],
	[0.5, 0.6],
	[0.75, 0.8],
	[1, 1],
])("a share of %f is worth %f", (share, value) => {
	expect(piecewiseLinear(room.scale, share)).toBeCloseTo(value, 12);
});

test.each([
	[exactly(0), "none of the drives, cards and memory you mean to add later finds a place"],
	[exactly(1 / 12), "few of the drives, cards and memory you mean to add later find a place"],
	[exactly(2 / 5), "about a third of the drives, cards and memory you mean to add later find a place"],
	[exactly(11 / 12), "nearly all of the drives, cards and memory you mean to add later find a place"],
	[exactly(2 / 3), "about two thirds of the drives, cards and memory you mean to add later find a place"],
	[exactly(1), "the drives, cards and memory you mean to add later find a place"],
	[{ low: 0.5, high: 1, missing: ["board.drivePorts"] }, "how much of what you mean to add finds a place is not known"],
])("%o in words", (measure, words) => {
	expect(room.says(measure)).toBe(words);
});
