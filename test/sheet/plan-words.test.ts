import { describe, expect, test } from "vitest";
import type { Board } from "../../src/parts/board.ts";
import { type BuildFacts, emptyBuildFacts } from "../../src/parts/build.ts";
import type { Drive } from "../../src/parts/drive.ts";
import { measurePlan, type PlanMeasure } from "../../src/plan/measure-plan.ts";
import { planWords } from "../../src/sheet/plan-words.ts";
import { card, m2, ports, slot, stick, withGraphics } from "../plan/made-up-problem.ts";

/** A board of which all is known, and that has nothing. */
const nothing: Board = {
	id: "a-board",
	name: "A board",
	cardSlots: [],
	m2Sockets: [],
	drivePorts: [],
	conditions: [],
	sharing: [],
	headers: { fans: [] },
};
/** Nobody brings anything, and the cooler has no plugs. */
const empty: BuildFacts = {
	...emptyBuildFacts,
	cooler: { state: "have", ownership: "bought", part: { id: "slab", name: "Slab", headersUsed: { fan: 0 } } },
	graphicsCard: { state: "none" },
	drives: [],
	olderSataDrives: 0,
	addInCards: [],
	boughtLists: ["drives", "addInCards"],
};
const measured = (board: Partial<Board>, facts: Partial<BuildFacts> = {}) =>
	measurePlan({ ...nothing, ...board }, { ...empty, ...facts });
const linesOf = (measure: PlanMeasure, heading: string) =>
	planWords(measure).find((section) => section.heading === heading)?.lines ?? [];
const under = (heading: string, board: Partial<Board>, facts: Partial<BuildFacts> = {}) =>
	linesOf(measured(board, facts), heading);

const thick = withGraphics({ thicknessMm: 55, lengthMm: 300, generation: 4 });
const piccolo = (series?: string): Pick<BuildFacts, "processor"> => ({
	processor: {
		state: "have",
		ownership: "bought",
		part: { id: "piccolo", name: "Piccolo", ...(series === undefined ? {} : { series }) },
	},
});

test("headings stand in one order, and those without a sentence are left out", () => {
	expect(planWords(measured({}))).toEqual([]);
	const cpuFan = { name: "CPU_FAN", use: "processor" } as const;
	expect(planWords(measured({ headers: { fans: [cpuFan] } }))).toEqual([
		{ heading: "On the headers", lines: ["Free: CPU_FAN."] },
	]);
	const full = measured(
		{
			cardSlots: [slot("X16", 1, 16), slot("X1", 2, 1), slot("X4", 4, 4)],
			m2Sockets: [m2("M1", { row: 2 })],
			drivePorts: ports(1),
			headers: { fans: [cpuFan] },
		},
		{
			graphicsCard: thick,
			drives: [stick("Dart")],
			olderSataDrives: 2,
			cooler: { state: "none" },
			lights: ["5 V three-pin"],
			laterThings: ["M.2 drive"],
		},
	);
	expect(planWords(full).map(({ heading }) => heading)).toEqual([
		"What goes where",
		"On the headers",
		"No place is left for",
		"Not known",
		"Cannot be used now",
		"Still free",
		"Good to know",
	]);
	for (const line of planWords(full).flatMap(({ lines }) => lines)) expect(line).toMatch(/^\S.*\.$/);
});

describe("what goes where", () => {
	const where = (board: Partial<Board>, facts: Partial<BuildFacts>) => under("What goes where", board, facts);

	test("lanes, generation and speed, as far as they are known", () => {
		const sockets = { m2Sockets: [m2("M1", { wiredLanes: 2, generation: 3 }), m2("M2", { generation: undefined })] };
		expect(where(sockets, { drives: [stick("Dart", { readMBytesPerS: 7000 })] })).toEqual(["Dart in M2: 4 lanes."]);
		expect(where({ m2Sockets: [m2("M1", { wiredLanes: 2, generation: 3 })] }, { drives: [stick("Dart")] })).toEqual([
			"Dart in M1: 2 of its 4 lanes of PCI Express 3, 1.97 of the 7.88 GB/s it can use. This socket has no more.",
		]);
		expect(where({ cardSlots: [slot("X1", 1, 1)] }, { addInCards: [card("Chime", { lanes: 1 })] })).toEqual([
			"Chime in X1: 1 lane of PCI Express 3, 0.98 GB/s, all it can use.",
		]);
		expect(where({ drivePorts: ports(1) }, { olderSataDrives: 1 })[0]).toMatch(
			/^Older drive in S1: [\d.]+ GB\/s, all it can use\.$/,
		);
	});

	test("a card without a name has an article", () => {
		expect(where({ cardSlots: [slot("X16", 1, 16)] }, { graphicsCard: { state: "open" } })[0]).toMatch(
			/^The graphics card in X16: 16 lanes/,
		);
	});

	test("what must be bought besides is told", () => {
		expect(where({ cardSlots: [slot("X4", 1, 4)] }, { drives: [stick("Dart")] })).toEqual([
			"Dart in X4: 4 lanes of PCI Express 4, 7.88 GB/s, all it can use. It needs an adapter card, bought besides.",
		]);
		const short = stick("Dart", { link: "SATA", lanes: undefined, generation: undefined });
		expect(where({ drivePorts: ports(1) }, { drives: [short] })).toEqual([
			"Dart in S1: 0.6 GB/s, all it can use. It needs an adapter frame, bought besides.",
		]);
	});

	const shared = (members: readonly string[], on: Readonly<Record<string, number>>): Partial<Board> => ({
		cardSlots: [slot("X16", 1, 16), slot("Y4", 4, 4), slot("Z4", 6, 4)],
		sharing: [{ members: [...members], modes: [{ on: { X16: 16 } }, { on }] }],
	});

	test("who takes lanes is named", () => {
		const one = shared(["X16", "Y4"], { X16: 8, Y4: 4 });
		const halved = "Carousel in X16: 8 of its 16 lanes of PCI Express 4, 15.75 of the 31.51 GB/s it can use.";
		// Y4 shares with X16, Z4 does not: only who is in Y4 takes lanes.
		const measure = measured(one, { graphicsCard: thick, addInCards: [card("Chime"), card("Gong")] });
		const inY4 = measure.plan.placed.find(({ connector }) => connector.name === "Y4")?.device.name;
		expect(["Chime", "Gong"]).toContain(inY4);
		expect(linesOf(measure, "What goes where")[0]).toBe(`${halved} ${inY4} takes the other lanes.`);
		const both = shared(["X16", "Y4", "Z4"], { X16: 8, Y4: 4, Z4: 4 });
		expect(where(both, { graphicsCard: thick, addInCards: [card("Chime"), card("Gong")] })[0]).toBe(
			`${halved} Chime and Gong take the other lanes.`,
		);
		// The article of what has no name of its own stands at the start of a sentence too.
		const small: Partial<Board> = {
			cardSlots: [slot("X16", 1, 16), slot("Y16", 4, 16)],
			sharing: [{ members: ["X16", "Y16"], modes: [{ on: { X16: 16 } }, { on: { X16: 8, Y16: 8 } }] }],
		};
		const wide = { graphicsCard: { state: "open" }, addInCards: [card("Gong", { lanes: 16 })] } as const;
		expect(where(small, wide)[1]).toBe(
			"Gong in Y16: 8 of its 16 lanes of PCI Express 3, 7.88 of the 15.75 GB/s it can use. The graphics card takes the other lanes.",
		);
	});

	test("a processor that gives fewer lanes is the cause where nothing shares", () => {
		const limited: Partial<Board> = {
			cardSlots: [slot("X16", 1, 16)],
			conditions: [{ when: { processorSeries: ["Lump"] }, connector: "X16", wiredLanes: 8 }],
		};
		const [line] = where(limited, { graphicsCard: thick, ...piccolo("Lump") });
		expect(line).toBe(
			"Carousel in X16: 8 of its 16 lanes of PCI Express 4, 15.75 of the 31.51 GB/s it can use. This processor gives the slot no more.",
		);
		expect(where(limited, { graphicsCard: thick, ...piccolo("Sugar") })).toEqual([
			"Carousel in X16: 16 lanes of PCI Express 4, 31.51 GB/s, all it can use.",
		]);
		// A slot that has only eight lanes has them on any processor.
		expect(
			where({ cardSlots: [slot("X16", 1, 16, { wiredLanes: 8 })] }, { graphicsCard: thick, ...piccolo("Lump") }),
		).toEqual([
			"Carousel in X16: 8 of its 16 lanes of PCI Express 4, 15.75 of the 31.51 GB/s it can use. This slot has no more.",
		]);
	});

	const slotOrder = { "1": ["A2"], "2": ["A2", "B2"], "3": ["A1", "A2", "B2"], "4": ["A1", "A2", "B1", "B2"] };
	test.each([
		[1, "Memory, 1 module: in A2; A1, B1 and B2 stay empty."],
		[2, "Memory, 2 modules: in A2 and B2; A1 and B1 stay empty."],
		[3, "Memory, 3 modules: in A1, A2 and B2; B1 stays empty."],
		[4, "Memory, 4 modules: in A1, A2, B1 and B2."],
		[8, "Memory, 8 modules: the board's manual says which slots to fill."],
	])("%i modules of memory", (modules, says) => {
		const memory = { state: "have", ownership: "bought", part: { id: "quilt", name: "Quilt", modules } } as const;
		expect(where({ memory: { slots: 4, slotOrder } }, { memory })).toEqual([says]);
	});

	test("nothing is told of memory that nobody has named", () => {
		expect(where({ memory: { slots: 4, slotOrder } }, {})).toEqual([]);
	});
});

describe("what is given up", () => {
	const lost = (board: Partial<Board>, facts: Partial<BuildFacts>) => under("Cannot be used now", board, facts);
	const off = (...names: readonly string[]): Partial<Board> => ({
		m2Sockets: [m2("M1"), m2("M2")],
		drivePorts: ports(6),
		sharing: [
			{
				members: ["M2", ...names],
				modes: [{ on: { M2: 4 } }, { on: Object.fromEntries(names.map((name) => [name, 1])) }],
			},
		],
	});
	const drives: readonly Drive[] = [stick("Dart"), stick("Mouse")];

	test.each([
		[["S6"], "S6 does not work while Mouse is in M2."],
		[["S5", "S6"], "S5 and S6 do not work while Mouse is in M2."],
		[["S4", "S5", "S6"], "S4 to S6 do not work while Mouse is in M2."],
	])("%j off", (names, says) => {
		expect(lost(off(...names), { drives })).toEqual([says]);
		expect(lost(off(...names), { drives: drives.slice(0, 1) })).toEqual([]);
	});

	test("two that share with it are both named, each with its place", () => {
		const board: Partial<Board> = {
			...off(),
			sharing: [{ members: ["M1", "M2", "S6"], modes: [{ on: { M1: 4, M2: 4 } }, { on: { S6: 1 } }] }],
		};
		expect(lost(board, { drives })).toEqual(["S6 does not work while Dart is in M1 and Mouse is in M2."]);
	});

	const limited = (...names: readonly string[]): Partial<Board> => ({
		m2Sockets: [m2("M1"), m2("M2"), m2("M3")],
		conditions: names.map((connector) => ({ when: {}, connector, dead: true as const })),
	});

	test("what the processor does not serve is told with its name, where it has one", () => {
		expect(lost(limited("M1"), piccolo())).toEqual(["M1 does not work with Piccolo."]);
		expect(lost(limited("M1", "M3"), piccolo())).toEqual(["M1 and M3 do not work with Piccolo."]);
		expect(lost(limited("M1", "M2", "M3"), piccolo())).toEqual(["M1 to M3 do not work with Piccolo."]);
		const nameless = { ...measured(limited("M1"), piccolo()), processorName: null };
		expect(linesOf(nameless, "Cannot be used now")).toEqual(["M1 does not work with this processor."]);
	});

	test("slots are covered; no plug goes into ports under a card", () => {
		const upright = (count: number, row: number) => ports(count).map((port) => ({ ...port, row, upright: true }));
		const board = (count: number): Partial<Board> => ({
			cardSlots: [slot("X16", 1, 16), slot("X1", 2, 1), slot("X4", 3, 4)],
			drivePorts: upright(count, 2),
		});
		expect(lost(board(1), { graphicsCard: thick })).toEqual([
			"X1 and X4 are covered by Carousel.",
			"No plug goes into S1: Carousel lies over it.",
		]);
		expect(lost(board(2), { graphicsCard: thick })[1]).toBe("No plug goes into S1 and S2: Carousel lies over them.");
		const slim = withGraphics({ thicknessMm: 40, lengthMm: 150 });
		expect(lost(board(2), { graphicsCard: slim })).toEqual(["X1 is covered by Carousel."]);
	});
});

describe("no place is left", () => {
	const missing = (board: Partial<Board>, facts: Partial<BuildFacts>) => under("No place is left for", board, facts);

	test("a board without such a connector", () => {
		expect(missing({}, { drives: [stick("Dart")] })).toEqual([
			"Dart: the board has no M.2 socket that it goes into.",
			"Without Dart all the rest fits.",
		]);
		expect(missing({}, { addInCards: [card("Chime")] })[0]).toBe(
			"Chime: the board has no card slot that it goes into.",
		);
		expect(missing({}, { olderSataDrives: 1 })[0]?.toLowerCase()).toBe(
			"older drive: the board has no port that it goes into.",
		);
	});

	test("things of one cause are told together, and those alike counted", () => {
		const brick = { id: "brick", name: "Brick", shape: "3.5 inch", link: "SATA" } as const;
		const loaf = { ...brick, id: "loaf", name: "Loaf" };
		const [all] = missing({ drivePorts: ports(1) }, { drives: [loaf, brick, brick, loaf] });
		expect(all).toBe("Loaf (2) and Brick: 4 drives want such a port, and 1 can be used.");
	});

	test("old plugs and SATA sticks are told why nothing takes them", () => {
		const fossil = { id: "fossil", name: "Fossil", shape: "3.5 inch", link: "IDE" } as const;
		expect(missing({ drivePorts: ports(1) }, { drives: [fossil] })[0]).toBe(
			"Fossil: it has an old plug (IDE), and the board has no port for it.",
		);
		const slate = stick("Slate", { link: "SATA", key: "B+M" });
		expect(missing({ m2Sockets: [m2("M1")], drivePorts: [] }, { drives: [slate] })[0]).toBe(
			"Slate: no M.2 socket here is known to take SATA drives.",
		);
		expect(missing({ cardSlots: [slot("X1", 1, 1)] }, { addInCards: [card("Horn", { bus: "PCI" })] })[0]).toBe(
			"Horn: it needs a slot of the old kind (PCI), and the board has none.",
		);
	});

	test("plugs on the other side are told of", () => {
		expect(linesOf(measured({ connectorsOnBack: true }), "Good to know")).toEqual([
			"The cable plugs are on the other side of this board. Lay the cables, screw it in, then plug them from behind.",
		]);
	});

	test("how many want such a place, and how many there are", () => {
		const two = [stick("Dart"), stick("Mouse")];
		const [count, way] = missing({ m2Sockets: [m2("M1")] }, { drives: two });
		expect(count).toMatch(/^Mouse: 2 M\.2 drives want such an? M\.2 socket, and 1 can be used\.$/);
		expect(way).toBe("Without one of Dart and Mouse all the rest fits.");
		const dead: Partial<Board> = {
			cardSlots: [slot("X4", 1, 4)],
			conditions: [{ when: {}, connector: "X4", dead: true }],
		};
		expect(missing(dead, { addInCards: [card("Chime")], ...piccolo() })).toEqual([
			"Chime: 1 card wants such a card slot, and none can be used. X4 does not work with Piccolo.",
			"Without Chime all the rest fits.",
		]);
	});

	const two = measured({}, { drives: [stick("Dart"), stick("Mouse")] });
	const [dart, mouse] = two.blocking.map(({ device }) => device);
	if (!dart || !mouse) throw new Error("both drives want a place");
	const drive = (nth: number) => ({ ...dart, id: `older-${nth}`, name: `older drive ${nth}` });
	const told = (waysToFit: PlanMeasure["waysToFit"]) =>
		linesOf({ ...two, blocking: [], waysToFit }, "No place is left for");

	test("who would have to go", () => {
		const olders = [1, 2, 3].map(drive);
		expect(
			told([
				{ without: [{ alike: [dart], count: 1 }], extras: [] },
				{ without: [{ alike: [dart, mouse], count: 1 }], extras: ["adapter card"] },
				{ without: [{ alike: olders, count: 2 }], extras: [] },
				{ without: [{ alike: olders, count: 1 }], extras: ["adapter card", "riser cable"] },
			]),
		).toEqual([
			"Without Dart all the rest fits.",
			"Without one of Dart and Mouse all the rest fits. That needs an adapter card besides.",
			"Without 2 of the 3 older drives all the rest fits.",
			"Without one of the 3 older drives all the rest fits. That needs an adapter card and a riser cable besides.",
		]);
		expect(
			told([
				{
					without: [
						{ alike: [dart], count: 1 },
						{ alike: [mouse], count: 1 },
					],
					extras: [],
				},
			]),
		).toEqual(["Without Dart and without Mouse all the rest fits."]);
		expect(told([{ without: [{ alike: [dart, mouse], count: 2 }], extras: [] }])).toEqual([
			"Without Dart and Mouse all the rest fits.",
		]);
		expect(
			told([
				{
					without: [
						{ alike: [dart, mouse], count: 1 },
						{ alike: olders, count: 2 },
					],
					extras: [],
				},
			]),
		).toEqual(["Without one of Dart and Mouse and without 2 of the 3 older drives all the rest fits."]);
	});

	const kindsOf = (count: number, of = 1) =>
		Array.from({ length: count }, (_, index) => ({ alike: [drive(index), dart, mouse].slice(0, of), count: of }));

	test("ways of more than two kinds are counted and not told", () => {
		const [short, long] = [
			{ without: kindsOf(2), extras: [] },
			{ without: kindsOf(3), extras: [] },
		];
		expect(told([short, long])).toEqual([
			"Without older drive 0 and without older drive 1 all the rest fits.",
			"There is 1 more way to make the rest fit.",
		]);
		expect(told([long, { without: kindsOf(4), extras: [] }])).toEqual([
			"At least 3 things would have to go so that the rest fits.",
		]);
		// Things are counted, not kinds.
		expect(told([{ without: kindsOf(3, 2), extras: [] }])).toEqual([
			"At least 6 things would have to go so that the rest fits.",
		]);
	});

	test("of many ways four are told, and the others counted", () => {
		const ways = (count: number) =>
			Array.from({ length: count }, (_, index) => ({ without: [{ alike: [drive(index)], count: 1 }], extras: [] }));
		expect(told(ways(4))).toHaveLength(4);
		expect(told(ways(5)).slice(3)).toEqual([
			"Without older drive 3 all the rest fits.",
			"There is 1 more way to make the rest fit.",
		]);
		expect(told(ways(7)).slice(4)).toEqual(["There are 3 more ways to make the rest fit."]);
	});

	test("plugs without a header stand there too", () => {
		const headers = { fans: [] };
		expect(missing({ headers }, { caseFans: 1 })).toEqual(["Case fan: the board has no fan header for it."]);
	});
});

describe("still free", () => {
	const free = (board: Partial<Board>, facts: Partial<BuildFacts> = {}) => under("Still free", board, facts);

	test("a line a kind, with runs folded", () => {
		expect(
			free({
				cardSlots: [slot("X16", 1, 16), slot("X4", 3, 4)],
				m2Sockets: [m2("M1"), m2("M2"), m2("M3")],
				drivePorts: ports(4),
			}),
		).toEqual(["Card slots: X16 and X4.", "M.2 sockets: M1 to M3.", "Drive ports: S1 to S4."]);
		expect(free({ drivePorts: ports(2) })).toEqual(["Drive ports: S1 and S2."]);
		expect(free({})).toEqual([]);
	});

	test("a slot of the old kind is told so", () => {
		const old = (nth: number) => slot(`PCI_${nth}`, nth + 1, 1, { bus: "PCI" });
		expect(free({ cardSlots: [slot("X16", 1, 16), old(1)] })).toEqual([
			"Card slots: X16 and PCI_1 (of the old kind, PCI).",
		]);
		// Each says so, and no run hides it.
		expect(free({ cardSlots: [old(1), old(2), old(3)] })).toEqual([
			"Card slots: PCI_1 (of the old kind, PCI), PCI_2 (of the old kind, PCI) and PCI_3 (of the old kind, PCI).",
		]);
	});

	test("a slot that would have fewer lanes than it is wired for says how many", () => {
		expect(
			free(
				{
					cardSlots: [slot("X16", 1, 16)],
					conditions: [{ when: { processorSeries: ["Lump"] }, connector: "X16", wiredLanes: 8 }],
				},
				piccolo("Lump"),
			),
		).toEqual(["Card slots: X16 (8 of 16 lanes)."]);
	});
});

describe("good to know", () => {
	const good = (board: Partial<Board>, facts: Partial<BuildFacts> = {}) => under("Good to know", board, facts);

	test("what would take lanes, and what is free but not all at once", () => {
		const board: Partial<Board> = {
			cardSlots: [slot("X16", 1, 16), slot("Y16", 5, 16)],
			sharing: [{ members: ["X16", "Y16"], modes: [{ on: { X16: 16 } }, { on: { X16: 8, Y16: 8 } }] }],
		};
		expect(good(board, { graphicsCard: thick })).toEqual(["Whatever goes into Y16 takes lanes from Carousel."]);
		const either: Partial<Board> = {
			m2Sockets: [m2("M2")],
			drivePorts: ports(4),
			sharing: [{ members: ["M2", "S2", "S3", "S4"], modes: [{ on: { M2: 4 } }, { on: { S2: 1, S3: 1, S4: 1 } }] }],
		};
		expect(good(either)).toEqual(["Free, but not all at once: either M2 or S2 to S4."]);
		expect(good(either, { drives: [stick("Dart")] })).toEqual([]);
	});

	test("a drive under a card is told with the card's name", () => {
		const board: Partial<Board> = {
			cardSlots: [slot("X16", 1, 16)],
			m2Sockets: [m2("M1", { row: 2, from: "processor" })],
		};
		expect(good(board, { graphicsCard: thick, drives: [stick("Dart")] })).toEqual([
			"Dart in M1 lies under Carousel. It works, only warmer; to reach it the card must come out.",
		]);
		expect(good(board, { drives: [stick("Dart")] })).toEqual([]);
	});

	describe("the chipset's link", () => {
		const board = (count: number, uplink?: Board["chipsetUplink"]): Partial<Board> => ({
			m2Sockets: Array.from({ length: count }, (_, index) => m2(`M${index + 1}`)),
			...(uplink ? { chipsetUplink: uplink } : {}),
		});
		const drives = (count: number) =>
			["Dart", "Mouse", "Owl"].slice(0, count).map((name) => stick(name, { readMBytesPerS: 3000 }));
		const said = (count: number, uplink?: Board["chipsetUplink"]) =>
			good(board(count, uplink), { drives: drives(count) });
		/** Neither its generation nor its speed is known. */
		const riddle = (name = "Riddle") => stick(name, { generation: undefined });

		test("nothing hangs on it", () => {
			expect(said(0, { lanes: 4, generation: 3 })).toEqual([]);
		});
		test("one thing is told of only where it is slowed", () => {
			expect(said(1, { lanes: 4, generation: 3 })).toEqual([]);
			expect(said(1)).toEqual([]);
			expect(good(board(1, { lanes: 2, generation: 3 }), { drives: [riddle()] })).toEqual([]);
			expect(good(board(1), { drives: [riddle()] })).toEqual([]);
			expect(said(1, { lanes: 2, generation: 3 })).toEqual([
				"M1 uses the chipset's link to the processor, 1.97 GB/s. It could move 3 GB/s, so it would be slowed.",
			]);
		});
		test("what nobody can rate counts as at least nothing", () => {
			const some = (of: readonly Drive[], uplink?: Board["chipsetUplink"]) =>
				good(board(of.length, uplink), { drives: of });
			const one = [...drives(1), riddle()];
			expect(some(one, { lanes: 4, generation: 3 })).toEqual([
				"M1 and M2 share the chipset's link to the processor, 3.94 GB/s. All at once they could move at least 3 GB/s.",
			]);
			expect(some(one, { lanes: 2, generation: 3 })).toEqual([
				"M1 and M2 share the chipset's link to the processor, 1.97 GB/s. All at once they could move at least 3 GB/s, so they would slow each other down.",
			]);
			expect(some(one)).toEqual([
				"M1 and M2 share the chipset's link to the processor. All at once they could move at least 3 GB/s; what the link carries is not known.",
			]);
			const none = [riddle(), riddle("Rebus")];
			expect(some(none, { lanes: 4, generation: 3 })).toEqual([
				"M1 and M2 share the chipset's link to the processor, 3.94 GB/s. How much they move is not known.",
			]);
			expect(some(none)).toEqual([
				"M1 and M2 share the chipset's link to the processor. How much they move is not known.",
			]);
		});
		test("many are counted, and a run is one name", () => {
			const slow = (names: readonly string[]) => names.map((name) => stick(name, { readMBytesPerS: 100 }));
			const sockets = (names: readonly string[]): Partial<Board> => ({
				m2Sockets: names.map((name) => m2(name)),
				drivePorts: ports(4),
				chipsetUplink: { lanes: 4, generation: 4 },
			});
			const four = ["M_A", "M_B", "M_C"];
			expect(good(sockets(four), { drives: slow(four), olderSataDrives: 4 })).toEqual([
				"M_A, M_B, M_C and S1 to S4 share the chipset's link to the processor, 7.88 GB/s. All at once they could move 1.42 GB/s, and the link carries that.",
			]);
			const five = [...four, "M_D"];
			expect(good(sockets(five), { drives: slow(five), olderSataDrives: 4 })).toEqual([
				"8 things on the chipset share the chipset's link to the processor, 7.88 GB/s. All at once they could move 1.52 GB/s, and the link carries that.",
			]);
		});
		test("several within it, above it, and where nobody knows what it carries", () => {
			expect(said(2, { lanes: 4, generation: 4 })).toEqual([
				"M1 and M2 share the chipset's link to the processor, 7.88 GB/s. All at once they could move 6 GB/s, and the link carries that.",
			]);
			expect(said(3, { lanes: 4, generation: 4 })).toEqual([
				"M1 to M3 share the chipset's link to the processor, 7.88 GB/s. All at once they could move 9 GB/s, so they would slow each other down.",
			]);
			expect(said(2)).toEqual([
				"M1 and M2 share the chipset's link to the processor. All at once they could move 6 GB/s; what the link carries is not known.",
			]);
		});
	});

	test.each([
		[0, 0, 0, []],
		[1, 1, 1, ["The one thing named for later finds a place."]],
		[1, 0, 0, ["The one thing named for later would find no place."]],
		[1, 0, 1, ["Whether the one thing named for later finds a place is not known."]],
		[3, 2, 2, ["Of 3 drives and cards named for later 2 would find a place."]],
		[3, 1, 2, ["Of 3 drives and cards named for later between 1 and 2 would find a place."]],
	])("of %i things for later from %i to %i", (wanted, fewest, most, says) => {
		const measure = { ...measured({}), later: { wanted, fewest, most, missing: [] } };
		expect(linesOf(measure, "Good to know")).toEqual(says);
	});
});

describe("not known", () => {
	test("things of which nobody knows whether they find a place, and where to look for shared lanes", () => {
		const { sharing, ...silent } = { ...nothing, m2Sockets: [m2("M1")], drivePorts: ports(1) };
		expect(sharing).toEqual([]);
		const measure = measurePlan(silent, { ...empty, drives: [stick("Dart")], olderSataDrives: 1 });
		expect(linesOf(measure, "Not known")).toEqual([
			"Whether there is a place is not known for: older drive. Look on the board's page for the footnotes about shared lanes.",
		]);
		const unlisted = measurePlan({ id: "a-board", name: "A board" }, { ...empty, drives: [stick("Dart")] });
		expect(linesOf(unlisted, "Not known")).toEqual(["Whether there is a place is not known for: Dart."]);
	});

	test("many things are counted, one of them named", () => {
		const unlisted = (olderSataDrives: number) =>
			linesOf(measurePlan({ id: "a-board", name: "A board" }, { ...empty, olderSataDrives }), "Not known");
		expect(unlisted(4)).toEqual(["Whether there is a place is not known for: older drives 1 to 4."]);
		const names = ["Ant", "Bee", "Cat", "Dog", "Eel"];
		const told = (count: number) => {
			const drives = names.slice(0, count).map((name) => stick(name));
			return linesOf(measurePlan({ id: "a-board", name: "A board" }, { ...empty, drives }), "Not known");
		};
		expect(told(4)).toEqual(["Whether there is a place is not known for: Ant, Bee, Cat and Dog."]);
		expect(told(5)).toEqual(["Whether all find a place is not known for 5 things, Ant among them."]);
	});

	test("headers that nobody knows stand there, by the fact that would tell", () => {
		const { headers, ...silent } = nothing;
		expect(headers).toEqual({ fans: [] });
		const measure = measurePlan(silent, { ...empty, caseFans: 3, lights: ["5 V three-pin"] });
		expect(linesOf(measure, "Not known")).toEqual([
			"Fan and pump headers, for: case fans 1 to 3.",
			"Lighting headers, for: 5 V lights.",
		]);
		expect(linesOf(measure, "On the headers")).toEqual([
			"Never plug 5 V lights (three pins) into a 12 V header (four pins), nor the other way round: it destroys them.",
		]);
	});

	test("nothing known of board and build: only what surely is there is asked about", () => {
		const words = planWords(measurePlan({ id: "a-board", name: "A board" }, emptyBuildFacts));
		expect(words.map(({ heading }) => heading)).toEqual(["Not known"]);
	});
});
