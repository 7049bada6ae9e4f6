import { describe, expect, test } from "vitest";
import { room, roomThings } from "../../src/criteria/room.ts";
import { piecewiseLinear } from "../../src/maths/piecewise-linear.ts";
import { laterThings } from "../../src/parts/wants.ts";

type Facts = Record<string, unknown>;
const exactly = (share: number) => ({ low: share, high: share, missing: [] });
const measured = (facts: Facts) => room.measure(facts);

const [m2Sockets, drivePorts, memorySlots, cardSlots] = [
	"board.m2Sockets",
	"board.drivePorts",
	"board.memory.slots",
	"board.cardSlots",
] as const;
const m2 = (...keys: (string | undefined)[]) =>
	keys.map((key, index) => ({ name: `M${index}`, ...(key ? { key } : {}) }));
const ports = (...kinds: string[]) => kinds.map((kind, index) => ({ name: `P${index}`, kind }));
const stick = { id: "s", name: "S", shape: "M.2", link: "SATA" };
const box = { id: "b", name: "B", shape: "2.5 inch", link: "SATA" };
const slot = (row: number | undefined, lengthLanes: number, more: object = {}) => ({
	...{ name: `slot ${row}`, lengthLanes },
	...(row === undefined ? {} : { row }),
	...more,
});

describe("says nothing", () => {
	test.each<[string, Facts]>([
		["while nobody has said what comes later", {}],
		["where nothing will be added", { laterThings: [] }],
		[
			"of things that others look after",
			{ laterThings: laterThings.filter((thing) => !roomThings.some((one) => one === thing)) },
		],
		["of a second card that is a must: a rule sees to that", { "wish.features/second-card": "must" }],
		["of a second card that one does not mind", { laterThings: [], "wish.features/second-card": "dont-mind" }],
	])("%s", (_, facts) => {
		expect(measured({ [cardSlots]: [slot(1, 16), slot(2, 16)], ...facts })).toBeNull();
	});
});

describe("places for M.2 drives", () => {
	const laterSticks = (count: number) => ({ laterThings: Array(count).fill("M.2 drive") });

	test.each<[string, Facts, number]>([
		["one free", { [m2Sockets]: m2("M"), ...laterSticks(1) }, 1],
		["one of two find a place", { [m2Sockets]: m2("M"), ...laterSticks(2) }, 0.5],
		["taken from the first day", { [m2Sockets]: m2("M"), drives: [stick], ...laterSticks(1) }, 0],
		[
			"more taken than there are is no less than none",
			{ [m2Sockets]: m2("M"), drives: [stick, stick], ...laterSticks(1) },
			0,
		],
		["key E is for wireless", { [m2Sockets]: m2("E", "M"), ...laterSticks(2) }, 0.5],
		["a socket whose key is not known counts", { [m2Sockets]: m2(undefined, "M"), ...laterSticks(2) }, 1],
		["other drives take none", { [m2Sockets]: m2("M"), drives: [box, box], ...laterSticks(1) }, 1],
		["more free than wanted is worth no more", { [m2Sockets]: m2("M", "M", "M"), ...laterSticks(1) }, 1],
		["no socket at all is none, not unknown", { [m2Sockets]: [], ...laterSticks(1) }, 0],
	])("%s", (_, facts, share) => {
		expect(measured(facts)).toEqual(exactly(share));
	});
});

describe("ports for drives on a cable", () => {
	const laterBoxes = { laterThings: ["SATA drive", "SATA drive"] };

	test.each<[string, Facts, number]>([
		["two free", { [drivePorts]: ports("SATA", "SATA") }, 1],
		["one taken by a drive named", { [drivePorts]: ports("SATA", "SATA"), drives: [box] }, 0.5],
		["two taken by older drives", { [drivePorts]: ports("SATA", "SATA"), olderSataDrives: 2 }, 0],
		["taken by both", { [drivePorts]: ports("SATA", "SATA", "SATA", "SATA"), drives: [box], olderSataDrives: 2 }, 0.5],
		["an M.2 drive takes none, be it a SATA one", { [drivePorts]: ports("SATA", "SATA"), drives: [stick] }, 1],
		["ports of other kinds do not count", { [drivePorts]: ports("SATA", "IDE", "U.2", "SlimSAS") }, 0.5],
	])("%s", (_, facts, share) => {
		expect(measured({ ...facts, ...laterBoxes })).toEqual(exactly(share));
	});
});

describe("slots for memory", () => {
	test.each<[string, Facts, number]>([
		["two of four are free", { [memorySlots]: 4, "memory.modules": 2 }, 1],
		["all taken", { [memorySlots]: 2, "memory.modules": 2 }, 0],
		["none picked: two modules are usual", { [memorySlots]: 2 }, 0],
		["none picked, and four slots", { [memorySlots]: 4 }, 1],
	])("%s", (_, facts, share) => {
		expect(measured({ ...facts, laterThings: ["memory"] })).toEqual(exactly(share));
	});
});

// A card slot is 20.32 mm wide: see reference/slot-pitch.
describe("slots for cards", () => {
	const slots = { [cardSlots]: [slot(1, 16), slot(2, 1), slot(4, 4)] };

	test.each<[string, Facts, number]>([
		["three for two cards, without a graphics card", { graphicsCard: "none" }, 1],
		["a thin graphics card covers one", { graphicsCard: "have", "graphicsCard.thicknessMm": 40 }, 0.5],
		["one that fills its own row alone covers none", { graphicsCard: "have", "graphicsCard.thicknessMm": 20 }, 1],
		["exactly three rows", { graphicsCard: "have", "graphicsCard.thicknessMm": 60.96 }, 0.5],
		["four rows cover both", { graphicsCard: "have", "graphicsCard.thicknessMm": 80 }, 0],
		["thickness not known: three rows", { graphicsCard: "have" }, 0.5],
		["one still to be bought: three rows", { graphicsCard: "open" }, 0.5],
		["cards that go in on the first day take theirs", { graphicsCard: "none", addInCards: [{}, {}] }, 0.5],
	])("%s", (_, facts, share) => {
		expect(measured({ ...slots, ...facts, laterThings: ["card", "card"] })).toEqual(exactly(share));
	});

	test("a slot above the graphics card stays open, and so does one of which no row is known", () => {
		const given = { [cardSlots]: [slot(1, 1), slot(2, 16), slot(undefined, 4)], graphicsCard: "have" };
		expect(measured({ ...given, laterThings: ["card", "card"] })).toEqual(exactly(1));
	});

	test("where the graphics card's row is not known, all others count as open", () => {
		const given = { [cardSlots]: [slot(undefined, 16), slot(2, 1)], graphicsCard: "have" };
		expect(measured({ ...given, laterThings: ["card"] })).toEqual(exactly(1));
	});
});

describe("a second big card that one would like", () => {
	const wide = (more: object = {}) => slot(1, 16, { wiredLanes: 8, from: "processor", ...more });
	test.each<[string, readonly object[], number]>([
		["two long slots of eight lanes", [wide(), wide()], 1],
		["only one", [wide()], 0],
		["the other is wired for four", [wide(), wide({ wiredLanes: 4 })], 0],
		["the other hangs on the chipset", [wide(), wide({ from: "chipset" })], 0],
		["the other is short", [wide(), wide({ lengthLanes: 8 })], 0],
		["three are no more than two", [wide(), wide(), wide()], 1],
	])("%s", (_, slots, share) => {
		expect(measured({ [cardSlots]: slots, "wish.features/second-card": "would-like" })).toEqual(exactly(share));
	});
});

describe("all together", () => {
	const later = { laterThings: ["M.2 drive", "M.2 drive", "SATA drive", "memory", "fan", "USB thing"] };

	test("what finds a place, of all that is to be added; fans and USB things do not count", () => {
		const board = { [m2Sockets]: m2("M"), [drivePorts]: ports("SATA"), [memorySlots]: 2 };
		expect(measured({ ...board, ...later })).toEqual(exactly(0.5));
	});

	test("what the page leaves out may find a place or none", () => {
		expect(measured({ [m2Sockets]: m2("M"), ...later })).toEqual({
			low: 0.25,
			high: 0.75,
			missing: [drivePorts, memorySlots],
		});
		expect(measured(later)).toEqual({ low: 0, high: 1, missing: [m2Sockets, drivePorts, memorySlots] });
	});

	test("a fact that nobody asks for is not missed, and one asked for twice is missed once", () => {
		expect(measured({ laterThings: ["memory"], [memorySlots]: 4 })?.missing).toEqual([]);
		expect(measured({ laterThings: ["card"], "wish.features/second-card": "would-like" })).toEqual({
			low: 0,
			high: 1,
			missing: [cardSlots],
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
	[exactly(0), "nothing of what you mean to add later finds a place"],
	[exactly(2 / 3), "67 percent of what you mean to add later finds a place"],
	[exactly(1), "all that you mean to add later finds a place"],
	[{ low: 0.5, high: 1, missing: [drivePorts] }, "how much of what you mean to add finds a place is not known"],
])("%o in words", (measure, words) => {
	expect(room.says(measure)).toBe(words);
});
