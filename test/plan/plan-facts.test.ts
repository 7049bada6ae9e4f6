import { describe, expect, test } from "vitest";
import { isAllKnown } from "../../src/plan/all-known.ts";
import type { CardDevice } from "../../src/plan/device.ts";
import { driveDevice } from "../../src/plan/devices.ts";
import { isUseful } from "../../src/plan/goals.ts";
import { planFactsAround } from "../../src/plan/plan-facts.ts";
import { type BoardOfPlan, type BuildAround, caseLeaves, problemOf } from "../../src/plan/problem.ts";
import { secondSlotOf } from "../../src/plan/second-slot.ts";
import { bareBuild, card, m2, ports, slot, stick, withGraphics } from "./made-up-problem.ts";

const board: BoardOfPlan = {
	cardSlots: [slot("X16", 1, 16), slot("X4", 4, 4)],
	m2Sockets: [m2("M1", { from: "processor" })],
	drivePorts: ports(2),
	conditions: [],
	sharing: [],
};
const named = { id: "a-board", name: "A board" };
const lists = { boughtLists: ["drives", "addInCards"] as const };
const factsOf = (one: BoardOfPlan, build: Partial<BuildAround>) =>
	planFactsAround({ ...named, ...one }, { ...bareBuild, ...lists, ...build });
const devicesOf = (build: Partial<BuildAround>) =>
	problemOf(board, { ...bareBuild, ...lists, ...build }, { leaning: "worst" }).devices;

describe("each thing", () => {
	const placesOf = (one: BoardOfPlan, build: Partial<BuildAround>) =>
		factsOf(one, build).things.map(({ device, hasPlace, lacks }) => [device.name, hasPlace, lacks]);

	test("has a place, or lacks a connector that is free", () => {
		expect(placesOf(board, { drives: [stick("Dart"), stick("Mouse")] })).toEqual(
			expect.arrayContaining([
				["Dart", "yes", null],
				["Mouse", "yes", null],
			]),
		);
		const full = { ...board, cardSlots: [] };
		expect(placesOf(full, { drives: [stick("Dart"), stick("Mouse")] })).toEqual(
			expect.arrayContaining([["Mouse", "no", "free connector"]]),
		);
		expect(placesOf({ ...full, m2Sockets: [] }, { drives: [stick("Dart")] })).toEqual([["Dart", "no", "connector"]]);
	});

	test("that is a card lacks a slot of its bus, its length, its lanes, or one that is free", () => {
		const one = { ...board, cardSlots: [slot("X4", 1, 4)] };
		const lacking = (cards: Parameters<typeof card>[1][], of = one) =>
			placesOf(of, { addInCards: cards.map((more, index) => card(`Chime ${index + 1}`, more)) })
				.map(([, , lacks]) => lacks)
				.filter((lacks) => lacks !== null);
		expect(lacking([{ leastLanes: 4 }])).toEqual([]);
		expect(lacking([{ leastLanes: 4 }, { leastLanes: 4 }])).toEqual(["free connector"]);
		expect(lacking([{ bus: "PCI" }])).toEqual(["connector"]);
		expect(lacking([{ lanes: 8, leastLanes: 8 }])).toEqual(["length"]);
		const narrow = { ...board, cardSlots: [slot("X4", 1, 4, { wiredLanes: 1 })] };
		expect(lacking([{ leastLanes: 4 }], narrow)).toEqual(["lanes"]);
	});

	test("is in doubt where the slot does not tell its lanes, and the slots would settle it", () => {
		const { wiredLanes: _, ...silent } = slot("X4", 1, 4);
		const { things, missing } = factsOf(
			{ ...board, cardSlots: [silent] },
			{ addInCards: [card("Chime", { leastLanes: 4 })] },
		);
		expect(things.map(({ hasPlace }) => hasPlace)).toEqual(["unknown"]);
		expect(missing).toEqual(["board.cardSlots"]);
	});
});

describe("later", () => {
	const build = { laterThings: ["SATA drive"] as const, olderSataDrives: 1 };

	test("is counted at worst and at best, and what would settle it is named", () => {
		expect(factsOf(board, build).later).toEqual({ wanted: 1, fewest: 1, most: 1, missing: [] });
		expect(factsOf({ ...board, drivePorts: ports(1) }, build).later).toMatchObject({ fewest: 0, most: 0 });
		const { sharing: _, ...silent } = { ...board, cardSlots: [], m2Sockets: [m2("M1")], drivePorts: ports(3) };
		const later = factsOf(silent, { ...build, drives: [stick("Dart")] }).later;
		expect(later).toMatchObject({ wanted: 1, fewest: 0, most: 1, missing: ["board.sharing"] });
	});
});

describe("a second slot for a heavy card", () => {
	const halves: BoardOfPlan = {
		...board,
		cardSlots: [slot("X16", 1, 16), slot("Y16", 4, 16)],
		sharing: [{ members: ["X16", "Y16"], modes: [{ on: { X16: 16 } }, { on: { X16: 8, Y16: 8 } }] }],
	};
	const wish = (importance: "must" | "would-like" | "not-needed") =>
		factsOf(halves, { wishes: { "features/second-card": importance } as BuildAround["wishes"] }).secondSlot;

	test("is looked for only where it is wished", () => {
		for (const importance of ["must", "would-like"] as const)
			expect(wish(importance)).toEqual({ has: "yes", slots: ["X16", "Y16"], missing: [] });
		expect(wish("not-needed")).toEqual({ has: "unknown", slots: [], missing: [] });
	});

	test("is none where the chipset feeds it, where a thick card covers it, and on a board with one", () => {
		const chipset = {
			...halves,
			cardSlots: [slot("X16", 1, 16), slot("Y16", 4, 16, { from: "chipset" })],
			sharing: [],
		};
		expect(secondSlotOf(chipset, bareBuild).has).toBe("no");
		expect(secondSlotOf(board, bareBuild).has).toBe("no");
		expect(secondSlotOf(halves, { ...bareBuild, graphicsCard: withGraphics({}) }).has).toBe("yes");
		// Nothing is left below the last slot, and above it the card covers the other.
		const near = { ...halves, cardSlots: [slot("X16", 1, 16), slot("Y16", 2, 16)] };
		expect(secondSlotOf(near, { ...bareBuild, graphicsCard: withGraphics({ thicknessMm: 40 }) }).has).toBe("no");
	});

	test("is not known where nobody tells the slots, or who feeds them", () => {
		expect(secondSlotOf({ ...board, cardSlots: undefined } as never, bareBuild)).toEqual({
			has: "unknown",
			slots: [],
			missing: ["board.cardSlots"],
		});
		const { from: _, ...silent } = slot("Y16", 4, 16);
		expect(secondSlotOf({ ...halves, cardSlots: [slot("X16", 1, 16), silent] }, bareBuild)).toEqual({
			has: "unknown",
			slots: ["X16", "Y16"],
			missing: ["board.cardSlots"],
		});
	});
});

describe("what is known of a problem", () => {
	const { row: _, ...nowhere } = slot("X4", 4, 4);
	const both = (cardSlots: NonNullable<BoardOfPlan["cardSlots"]>, build: Partial<BuildAround>) => {
		const whole = { ...bareBuild, ...lists, ...build };
		const [best, worst] = (["best", "worst"] as const).map((leaning) =>
			problemOf({ ...board, cardSlots }, whole, { leaning }),
		);
		if (!best || !worst) throw new Error("Two problems were made.");
		return isAllKnown(best, worst);
	};

	test("is all, but for a slot without its row beside a card of several rows", () => {
		const flat = { addInCards: [card("Chime", { heightMm: 120 })] };
		const thick = { addInCards: [card("Chime", { thicknessMm: 38, heightMm: 120 })] };
		expect(both([slot("X16", 1, 16), nowhere], flat)).toBe(true);
		expect(both([slot("X16", 1, 16), slot("X4", 4, 4)], thick)).toBe(true);
		expect(both([slot("X16", 1, 16), nowhere], thick)).toBe(false);
		// Where sockets and ports are is no question of rows.
		expect(both([slot("X16", 1, 16)], thick)).toBe(true);
	});
});

describe("a device", () => {
	test("that is a graphics card of which nothing is known may reach the edge; one still to be bought is chosen", () => {
		expect(devicesOf({ graphicsCard: { state: "unknown" } })[0]).toMatchObject({ reachesEdge: true });
		expect(devicesOf({ graphicsCard: { state: "open" } })[0]).toMatchObject({ reachesEdge: false });
	});

	test("that is a U.2 drive has four lanes and a generation, a SATA drive neither", () => {
		const drive = { id: "a-drive", name: "A drive", shape: "2.5 inch", generation: 4 } as const;
		expect(driveDevice({ ...drive, link: "U.2" }, "one", "planned")).toMatchObject({ lanes: 4, generation: 4 });
		expect(driveDevice({ ...drive, link: "SATA" }, "one", "planned")).toMatchObject({ lanes: null, generation: null });
	});
});

describe("a connector", () => {
	const connectorsOf = (one: BoardOfPlan, linkGeneration?: number) => {
		const build = { ...bareBuild, processor: { ...bareBuild.processor, state: "have" as const, linkGeneration } };
		return problemOf(one, build as BuildAround, { leaning: "best" }).connectors;
	};

	test("is no socket for a wireless card", () => {
		const names = connectorsOf({ ...board, m2Sockets: [m2("M1"), m2("WIFI", { key: "E" })] }).map(({ name }) => name);
		expect(names).toContain("M1");
		expect(names).not.toContain("WIFI");
	});

	test("of the processor is no faster than the processor's links; of the chipset it is as the page says", () => {
		const generations = (linkGeneration: number | undefined) =>
			connectorsOf(board, linkGeneration)
				.filter(({ kind }) => kind === "card slot")
				.map(({ generation }) => generation);
		expect([undefined, 3, 5].map(generations)).toEqual([
			[4, 4],
			[3, 4],
			[4, 4],
		]);
	});

	test("is useful to a drive that moves half of what it can there, and not with less", () => {
		const [socket] = connectorsOf({ ...board, cardSlots: [], m2Sockets: [m2("M1", { generation: 4 })] });
		if (!socket) throw new Error("The socket is a connector.");
		const device = driveDevice(stick("Dart", { readMBytesPerS: 7000 }), "one", "later");
		expect([4, 2, 1].map((lanes) => isUseful(device, socket, lanes))).toEqual([true, true, false]);
	});
});

test("a card may be too thick for the case's last opening by less than a row, no more", () => {
	const problem = { ...problemOf(board, bareBuild, { leaning: "best" }), caseRows: 3 };
	const thick = (exactRows: number | null, rows: number) =>
		caseLeaves(problem, { bracketRows: 2, exactRows, rows } as CardDevice, 2);
	expect(thick(2.9, 3)).toBe(true);
	expect(thick(3, 3)).toBe(false);
	expect(thick(null, 2)).toBe(true);
	expect(thick(null, 3)).toBe(false);
});
