import { expect, test } from "vitest";
import type { Board } from "../../src/parts/board.ts";
import { type BuildFacts, emptyBuildFacts } from "../../src/parts/build.ts";
import { measurePlan } from "../../src/plan/measure-plan.ts";
import { planJson } from "../../src/sheet/plan-json.ts";
import { planWords } from "../../src/sheet/plan-words.ts";
import { boardOfEveryState, stick, withGraphics } from "../plan/made-up-problem.ts";

const board: Board = {
	id: "a-board",
	name: "A board",
	...boardOfEveryState,
	chipsetUplink: { lanes: 4, generation: 3 },
	memory: { slots: 2, slotOrder: { "1": ["A2"], "2": ["A1", "A2"] } },
	headers: {
		fans: [
			{ name: "CPU_FAN", use: "processor" },
			{ name: "PUMP", use: "pump" },
			{ name: "FAN_1", use: "case", amps: 2 },
		],
		lights: [],
		typeC: [{ gbps: 10 }],
	},
};
const facts: BuildFacts = {
	...emptyBuildFacts,
	processor: { state: "have", ownership: "bought", part: { id: "piccolo", name: "Piccolo" } },
	graphicsCard: withGraphics({ thicknessMm: 55, lengthMm: 300, generation: 4 }),
	drives: [stick("Dart", { readMBytesPerS: 7000 }), stick("Mouse")],
	olderSataDrives: 5,
	boughtLists: ["drives"],
	memory: { state: "have", ownership: "bought", part: { id: "quilt", name: "Quilt", modules: 1 } },
	case: {
		state: "have",
		ownership: "bought",
		part: {
			id: "bandbox",
			name: "Bandbox",
			frontPlugs: [
				{ plug: "USB 9-pin", count: 1 },
				{ plug: "USB-C 20-pin", count: 1, gbps: 20 },
			],
		},
	},
	caseFans: 3,
	lights: ["5 V three-pin"],
	laterThings: ["M.2 drive"],
};

/** As another program reads it: through text, so that what JSON cannot hold is gone. */
// biome-ignore lint/suspicious/noExplicitAny: what is read back has no type
const read = (of: Board, build: BuildFacts): any => JSON.parse(JSON.stringify(planJson(of.id, measurePlan(of, build))));

test("it says what it is, and has every key even where nothing is known", () => {
	const [full, bare] = [read(board, facts), read({ id: "bare", name: "Bare" }, emptyBuildFacts)];
	expect(full).toMatchObject({ schema: "boardwalk/plan@1", boardId: "a-board" });
	expect(bare).toMatchObject({ schema: "boardwalk/plan@1", boardId: "bare", memory: null, placed: [], connectors: [] });
	expect(Object.keys(bare)).toEqual(Object.keys(full));
});

test("where things go, with lanes and rates in figures", () => {
	const { placed } = read(board, facts);
	const named = (name: string) => placed.find((one: { name: string }) => one.name === name);
	expect(named("Carousel")).toMatchObject({
		kind: "graphics card",
		connector: "X16",
		from: "processor",
		lanes: 16,
		generation: 4,
		extra: null,
		isBuried: false,
	});
	expect(named("Carousel").gbytesPerS).toBeCloseTo(31.51, 2);
	expect(named("Dart")).toMatchObject({ lanes: 4, gbytesPerS: 7, canUseGbytesPerS: 7 });
	expect(placed.filter(({ isBuried }: { isBuried: boolean }) => isBuried)).toHaveLength(1);
	expect(named("older drive 1")).toMatchObject({ kind: "drive", connector: "S1", lanes: null, generation: null });
});

test("what has to be bought besides stands beside its place, and beside each way to fit", () => {
	const sparse: Board = { id: "sparse", name: "Sparse", ...boardOfEveryState, m2Sockets: [], conditions: [] };
	const alone = { ...facts, graphicsCard: { state: "none" as const }, drives: [stick("Dart")], olderSataDrives: 0 };
	expect(read(sparse, alone).placed).toEqual([
		expect.objectContaining({ name: "Dart", connector: "X16", lanes: 4, extra: "adapter card" }),
	]);
	const both = read(sparse, { ...alone, drives: [stick("Dart"), stick("Mouse"), stick("Owl")] });
	expect(both.unplaced).toEqual([{ name: "Owl", kind: "M.2 drive" }]);
	expect(both.wouldFitWithout).toEqual([
		{ without: [{ count: 1, of: ["Dart", "Mouse", "Owl"] }], extras: ["adapter card"] },
	]);
});

test("what finds no place, and without what the rest would", () => {
	const { unplaced, mayLackPlace, missing, wouldFitWithout } = read(board, facts);
	expect(unplaced).toEqual([{ name: "older drive 5", kind: "drive" }]);
	expect([mayLackPlace, missing]).toEqual([[], []]);
	expect(wouldFitWithout).toContainEqual({
		without: [{ count: 1, of: [1, 2, 3, 4, 5].map((nth) => `older drive ${nth}`) }],
		extras: [],
	});
	expect(read(board, { ...facts, olderSataDrives: 1 })).toMatchObject({ unplaced: [], wouldFitWithout: [] });
});

test("what became of each connector and what of the chipset's link", () => {
	const { connectors, uplink } = read(board, facts);
	const states = Object.fromEntries(connectors.map((one: { name: string; state: string }) => [one.name, one.state]));
	expect(states).toMatchObject({
		X16: "used",
		X1: "covered",
		X4: "dead",
		M1: "used",
		M2: "used",
		S4: "used",
		S6: "off",
	});
	expect(connectors.find(({ name }: { name: string }) => name === "X1").by).toEqual(["Carousel"]);
	expect(uplink.carriesGbytesPerS).toBeCloseTo(3.94, 2);
	const { chipsetUplink, ...unlinked } = board;
	expect(chipsetUplink).toBeDefined();
	expect(read(unlinked, facts).uplink.carriesGbytesPerS).toBeNull();
});

test("headers: placed, sharing, without, unknown and free, each wish just once", () => {
	const { headers } = read(board, facts);
	const names = (list: readonly { name: string }[]) => list.map(({ name }) => name);
	expect(headers.placed).toContainEqual({
		name: "front USB-C of Bandbox",
		kind: "USB-C 20-pin",
		whose: "case",
		isLater: false,
		header: "USB-C header (10 Gb/s)",
		remark: null,
		couldDoMore: true,
	});
	expect(headers.placed).toContainEqual(
		expect.objectContaining({
			name: "case fan 1",
			header: "PUMP",
			remark: "A pump header often runs at full speed. Set a fan curve for it in the firmware.",
		}),
	);
	expect(headers.sharing).toEqual([
		{ name: "case fan 3", kind: "case fan", whose: "case fans", isLater: false, header: "FAN_1", amps: 2 },
	]);
	expect(names(headers.without)).toEqual(["5 V lights"]);
	expect(headers.unknown).toEqual([
		{
			name: "slow front USB of Bandbox",
			kind: "USB 9-pin",
			whose: "case",
			isLater: false,
			fact: "board.headers.usb2",
		},
	]);
	expect(headers.free).toEqual([]);
	expect(read(board, { ...facts, caseFans: 1 }).headers.free).toEqual(["PUMP"]);
	const all = [headers.placed, headers.sharing, headers.without, headers.unknown].flatMap(names);
	expect(new Set(all).size).toBe(all.length);
});

test("memory: modules and slots, null where nobody knows", () => {
	const memory = (modules: number | undefined, of: Board = board) =>
		read(of, {
			...facts,
			memory: {
				state: "have",
				ownership: "bought",
				part: { id: "quilt", name: "Quilt", ...(modules === undefined ? {} : { modules }) },
			},
		}).memory;
	expect(memory(1)).toEqual({ modules: 1, fill: ["A2"], empty: ["A1"] });
	expect(memory(2)).toEqual({ modules: 2, fill: ["A1", "A2"], empty: [] });
	expect(memory(4)).toEqual({ modules: 4, fill: null, empty: null });
	expect(memory(undefined)).toBeNull();
	expect(memory(1, { ...board, memory: { slotOrder: { "1": ["A2"] } } })).toEqual({
		modules: 1,
		fill: ["A2"],
		empty: null,
	});
});

test("later things are counted and take no connector", () => {
	const { later, connectors, placed } = read(board, facts);
	expect(later).toEqual({ wanted: 1, fewest: 0, most: 0, missing: [] });
	const before = read(board, { ...facts, laterThings: null });
	expect(before.later).toMatchObject({ wanted: 0 });
	expect(connectors).toEqual(before.connectors);
	expect(placed).toEqual(before.placed);
});

test("the words are the same as everywhere", () => {
	expect(read(board, facts).words).toEqual(planWords(measurePlan(board, facts)));
});
