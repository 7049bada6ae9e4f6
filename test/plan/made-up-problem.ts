import type { AddInCard } from "../../src/parts/add-in-card.ts";
import type { Board } from "../../src/parts/board.ts";
import type { Have } from "../../src/parts/build.ts";
import type { Drive } from "../../src/parts/drive.ts";
import type { GraphicsCard } from "../../src/parts/graphics-card.ts";
import type { BoardOfPlan, BuildAround } from "../../src/plan/problem.ts";

/** A build of which nothing is known but that there is no graphics card. */
export const bareBuild: BuildAround = {
	processor: {
		state: "open",
		series: undefined,
		generation: undefined,
		graphics: undefined,
		graphicsLanes: undefined,
		linkGeneration: undefined,
	},
	case: null,
	graphicsCard: { state: "none" },
	drives: null,
	olderSataDrives: null,
	addInCards: null,
	boughtLists: null,
	laterThings: null,
	wishes: {},
};

export const withGraphics = (part: Partial<GraphicsCard>): Have<GraphicsCard> => ({
	state: "have",
	ownership: "bought",
	part: { id: "carousel", name: "Carousel", lanes: 16, thicknessMm: 20, ...part },
});

export const stick = (name: string, more: Partial<Drive> = {}): Drive => ({
	id: name,
	name,
	shape: "M.2",
	link: "PCI Express",
	lengthMm: 80,
	key: "M",
	lanes: 4,
	generation: 4,
	...more,
});

export const card = (name: string, more: Partial<AddInCard> = {}): AddInCard => ({
	id: name,
	name,
	bus: "PCI Express",
	lanes: 4,
	leastLanes: 1,
	generation: 3,
	thicknessMm: 18,
	lengthMm: 100,
	...more,
});

type M2 = NonNullable<Board["m2Sockets"]>[number];
export const m2 = (name: string, more: Partial<M2> = {}): M2 => ({
	name,
	key: "M",
	lengthsMm: [80],
	wiredLanes: 4,
	generation: 4,
	sata: false,
	from: "chipset",
	...more,
});

type Slot = NonNullable<Board["cardSlots"]>[number];
export const slot = (name: string, row: number, lanes: number, more: Partial<Slot> = {}): Slot => ({
	name,
	bus: "PCI Express",
	row,
	lengthLanes: lanes,
	wiredLanes: lanes,
	generation: 4,
	from: lanes === 16 ? "processor" : "chipset",
	...more,
});

export const ports = (count: number) =>
	Array.from({ length: count }, (_, index) => ({ name: `S${index + 1}`, kind: "SATA" as const }));

/** A thick card in X16 lies over X1 and M1; M2 in use turns S5 and S6 off; X4 does not work with any processor. */
export const boardOfEveryState: BoardOfPlan = {
	cardSlots: [slot("X16", 1, 16), slot("X1", 2, 1), slot("X4", 4, 4)],
	m2Sockets: [m2("M1", { row: 2 }), m2("M2")],
	drivePorts: ports(6),
	conditions: [{ connector: "X4", when: {}, dead: true }],
	sharing: [{ members: ["M2", "S5", "S6"], modes: [{ on: { M2: 4 } }, { on: { S5: 1, S6: 1 } }] }],
};
