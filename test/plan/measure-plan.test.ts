import { expect, test } from "vitest";
import type { Board } from "../../src/parts/board.ts";
import { emptyBuildFacts } from "../../src/parts/build.ts";
import { measurePlan } from "../../src/plan/measure-plan.ts";
import { planJson } from "../../src/sheet/plan-json.ts";
import { planWords } from "../../src/sheet/plan-words.ts";
import { card, m2, ports, slot, stick, withGraphics } from "./made-up-problem.ts";

const board: Board = {
	id: "a-board",
	name: "A board",
	cardSlots: [slot("X16", 1, 16), slot("X1", 3, 1), slot("X4", 5, 4)],
	m2Sockets: [m2("M1", { from: "processor", row: 2 }), m2("M2")],
	drivePorts: ports(6),
	chipsetUplink: { lanes: 4, generation: 3 },
	conditions: [],
	sharing: [{ members: ["M2", "S5", "S6"], modes: [{ on: { M2: 4 } }, { on: { S5: 1, S6: 1 } }] }],
};
const facts = {
	...emptyBuildFacts,
	graphicsCard: withGraphics({ thicknessMm: 61, generation: 4 }),
	drives: [stick("Dart", { readMBytesPerS: 7000 }), stick("Mouse", { readMBytesPerS: 3500 })],
	olderSataDrives: 5,
	addInCards: [card("Chime", { lanes: 1 })],
	boughtLists: ["drives", "addInCards"] as const,
};
const said = (one: Board, build = facts) =>
	planWords(measurePlan(one, build)).flatMap(({ heading, lines }) => lines.map((line) => `${heading}: ${line}`));

test("what is off, covered and buried is told with its cause, and who would have to go", () => {
	expect(said(board)).toEqual([
		"What goes where: Carousel in X16: 16 lanes of PCI Express 4, 31.51 GB/s, all it can use.",
		"What goes where: Dart in M1: 4 lanes of PCI Express 4, 7 GB/s, all it can use.",
		"What goes where: Mouse in M2: 4 lanes of PCI Express 4, 3.5 GB/s, all it can use.",
		...[1, 2, 3, 4].map((nth) => `What goes where: Older drive ${nth} in S${nth}: 0.28 GB/s, all it can use.`),
		"What goes where: Chime in X4: 1 lane of PCI Express 3, 0.98 GB/s, all it can use.",
		"No place is left for: Older drive 5: 5 drives want such a port, and 4 can be used. S5 and S6 do not work while Mouse is in M2.",
		"No place is left for: Without Chime all the rest fits. That needs an adapter card besides.",
		"No place is left for: Without one of the 5 older drives all the rest fits.",
		"No place is left for: Without one of Dart and Mouse all the rest fits.",
		"No place is left for: Without Carousel all the rest fits. That needs an adapter card besides.",
		"Not known: Fan and pump headers, for: fan of the cooler.",
		"Cannot be used now: X1 is covered by Carousel.",
		"Cannot be used now: S5 and S6 do not work while Mouse is in M2.",
		"Good to know: Dart in M1 lies under Carousel. It works, only warmer; to reach it the card must come out.",
		"Good to know: M2, X4 and S1 to S4 share the chipset's link to the processor, 3.94 GB/s. All at once they could move 5.6 GB/s, so they would slow each other down.",
	]);
});

test("a group that only SATA drives share costs nothing while a faster drive is there", () => {
	const onlyWithSata = {
		...board,
		sharing: (board.sharing ?? []).map((group) => ({ ...group, onlyWithSata: ["M2"] })),
	};
	expect(measurePlan(onlyWithSata, facts).plan.unplaced).toEqual([]);
	expect(measurePlan(onlyWithSata, facts).plan.ends.filter(({ state }) => state === "off")).toEqual([]);
	// Two sticks that are SATA drives: one takes the processor's socket, so one is in M2.
	const withSata = {
		...facts,
		olderSataDrives: 6,
		drives: [stick("Old", { link: "SATA", key: "B+M" }), stick("Older", { link: "SATA", key: "B+M" })],
	};
	const takesBoth = {
		...onlyWithSata,
		m2Sockets: [m2("M1", { from: "processor", row: 2, sata: true }), m2("M2", { sata: true })],
	};
	expect(measurePlan(takesBoth, withSata).plan.unplaced).toHaveLength(1);
	expect(measurePlan({ ...takesBoth, sharing: [] }, withSata).plan.unplaced).toEqual([]);
});

test("what a SATA drive would switch off is told while both are free", () => {
	const onlyWithSata = {
		...board,
		sharing: (board.sharing ?? []).map((group) => ({ ...group, onlyWithSata: ["M2"] })),
	};
	const words = "Good to know: A SATA drive in M2 would switch S5 and S6 off; a faster one would not.";
	const bare = { ...facts, drives: [], olderSataDrives: 0, addInCards: [] };
	expect(said(onlyWithSata, bare)).toContain(words);
	expect(said(board, bare)).not.toContain(words);
	expect(said(onlyWithSata, facts)).not.toContain(words);
});

test("where the page says nothing of shared lanes, both cases are planned and the footnotes named", () => {
	const { sharing, ...silent } = board;
	expect(sharing).toBeDefined();
	const measure = measurePlan(silent, facts);
	expect(measure.plan.unplaced).toEqual([]);
	expect(measure.mayLackPlace.map(({ name }) => name)).toEqual(["older drive 5"]);
	expect(measure.missing).toEqual(["board.sharing"]);
	expect(said(silent)).toContain(
		"Not known: Whether there is a place is not known for: older drive 5. Look on the board's page for the footnotes about shared lanes.",
	);
});

test("a later drive takes the place that is left, and no more", () => {
	const later = { ...facts, olderSataDrives: 3, laterThings: ["SATA drive", "SATA drive"] as const };
	expect(measurePlan(board, later).later).toMatchObject({ wanted: 2, fewest: 1, most: 1 });
});

test("a card in a halved slot is told so", () => {
	const halved: Board = {
		...board,
		cardSlots: [slot("X16", 1, 16), slot("Y16", 5, 16)],
		sharing: [{ members: ["X16", "Y16"], modes: [{ on: { X16: 16 } }, { on: { X16: 8, Y16: 8 } }] }],
	};
	expect(said(halved)).toContain(
		"What goes where: Carousel in X16: 8 of its 16 lanes of PCI Express 4, 15.75 of the 31.51 GB/s it can use. Chime takes the other lanes.",
	);
	expect(said(halved, { ...facts, addInCards: [] })).toContain(
		"Good to know: Whatever goes into Y16 takes lanes from Carousel.",
	);
	expect(said(halved, { ...facts, addInCards: [] })).toContain(
		"What goes where: Carousel in X16: 16 lanes of PCI Express 4, 31.51 GB/s, all it can use.",
	);
});

test("what does not work with the processor is told so", () => {
	const limits: Board = {
		...board,
		conditions: [{ when: { processorSeries: ["Lump"] }, connector: "M1", dead: true }],
	};
	const processor = {
		state: "have" as const,
		ownership: "bought" as const,
		part: { id: "piccolo", name: "Piccolo", series: "Lump" },
	};
	expect(said(limits, { ...facts, processor } as never)).toContain(
		"Cannot be used now: M1 does not work with Piccolo.",
	);
});

test("the JSON names every connector with what became of it", () => {
	const json = planJson("a-board", measurePlan(board, facts)) as { connectors: { name: string; state: string }[] };
	expect(Object.fromEntries(json.connectors.map(({ name, state }) => [name, state]))).toMatchObject({
		X16: "used",
		X1: "covered",
		S5: "off",
		M1: "used",
	});
});

test("of two slots that are as fast the graphics card takes the one nearest the processor", () => {
	const two: Board = {
		...board,
		cardSlots: [slot("LOW", 4, 16), slot("HIGH", 1, 16)],
		m2Sockets: [m2("M1", { row: 1 })],
	};
	const { placed } = measurePlan(two, { ...facts, addInCards: [] }).plan;
	expect(placed.find(({ device }) => device.kind === "graphics card")?.connector.name).toBe("HIGH");
});

test("connectors that are free, but not all at once, are told so", () => {
	const little = { ...emptyBuildFacts, graphicsCard: { state: "none" as const } };
	expect(planWords(measurePlan(board, little)).find(({ heading }) => heading === "Good to know")?.lines).toEqual([
		"Free, but not all at once: either M2 or S5 and S6.",
	]);
});

test("the processor's name, the memory's slots and the headers are measured where they are known", () => {
	const memory = { state: "have" as const, ownership: "bought" as const, part: { id: "quilt", name: "Quilt" } };
	const slotted: Board = { ...board, memory: { slots: 2, slotOrder: { "1": ["A2"], "2": ["A1", "A2"] } } };
	expect(measurePlan(board, emptyBuildFacts)).toMatchObject({ processorName: null, memory: null });
	// A kit of which the number of modules is not known says nothing about slots.
	expect(measurePlan(slotted, { ...emptyBuildFacts, memory }).memory).toBeNull();
	const single = { ...memory, part: { ...memory.part, modules: 1 } };
	expect(measurePlan(slotted, { ...emptyBuildFacts, memory: single }).memory).toEqual({
		modules: 1,
		slots: { fill: ["A2"], empty: ["A1"] },
	});
	expect(measurePlan(board, { ...emptyBuildFacts, memory: single }).memory).toEqual({ modules: 1, slots: null });
	const fans: Board = { ...board, headers: { fans: [{ name: "CPU_FAN", use: "processor" }] } };
	expect(measurePlan(fans, emptyBuildFacts).headers.placed.map(({ header }) => header)).toEqual(["CPU_FAN"]);
});
