import stringWidth from "string-width";
import { expect, test } from "vitest";
import type { AddInCard } from "../../src/parts/add-in-card.ts";
import type { Board } from "../../src/parts/board.ts";
import { headerPlanOf } from "../../src/plan/header-plan.ts";
import type { HeaderBuild } from "../../src/plan/header-wish.ts";
import { planFor } from "../../src/plan/plan.ts";
import { type BoardOfPlan, type BuildAround, problemOf } from "../../src/plan/problem.ts";
import { type DrawnConnector, endWords, planPicture } from "../../src/sheet/plan-picture.ts";
import { bareBuild, boardOfEveryState, card, m2, ports, slot, stick, withGraphics } from "../plan/made-up-problem.ts";

const noSlots: BoardOfPlan = { cardSlots: [], m2Sockets: [], drivePorts: [], conditions: [], sharing: [] };
const build: BuildAround = {
	...bareBuild,
	processor: { ...bareBuild.processor, state: "have" },
	graphicsCard: withGraphics({ thicknessMm: 55, lengthMm: 300 }),
	drives: [stick("Dart"), stick("Arrow")],
};
const pictureOf = (of: BoardOfPlan, around: BuildAround, shape = {}, width?: number) =>
	planPicture(planFor(problemOf(of, around, { leaning: "best" })), shape, width);
const lineWith = (lines: readonly string[], words: string) => lines.find((line) => line.includes(words)) ?? "";

test("each state shows beside its connector", () => {
	const lines = pictureOf(boardOfEveryState, build);
	expect(lineWith(lines, "X16 ")).toContain("Carousel");
	expect(lineWith(lines, "X1 ")).toContain("covered (Carousel)");
	expect(lineWith(lines, "X4 ")).toContain("dead");
	expect(lineWith(lines, " M1 ")).toMatch(/(Dart|Arrow), buried/);
	expect(lines.join("\n")).toContain("S1-4 free");
	expect(lines.join("\n")).toMatch(/S5-6 off \((Dart|Arrow)\)/);
});

test("a thick card fills its rows and no other", () => {
	const rows = pictureOf(boardOfEveryState, build).filter((line) => /^\| [ \d]\d /.test(line));
	expect(rows.map((line) => line.slice(2, 6))).toEqual([" 1 #", " 2 #", " 3 #", " 4  "]);
});

test("a slot of 16 lanes is drawn longer than one of 4, and that longer than one of 1", () => {
	const long = (name: string) => lineWith(pictureOf(boardOfEveryState, bareBuild), `${name} `).split("=").length;
	expect(long("X16")).toBeGreaterThan(long("X4"));
	expect(long("X4")).toBeGreaterThan(long("X1"));
});

test("the legend tells only of what is in the picture", () => {
	const lines = pictureOf({ ...noSlots, drivePorts: ports(2) }, bareBuild);
	expect(lines.slice(-1)).toEqual(["free = nothing goes in yet"]);
	expect(pictureOf(noSlots, bareBuild).at(-1)).toMatch(/^\+-+\+$/);
});

test("a shallow board is drawn narrower, but never by more than a tenth", () => {
	const wideOf = (depthMm: number | undefined) =>
		pictureOf(boardOfEveryState, build, depthMm === undefined ? {} : { depthMm })[0]?.length;
	expect([undefined, 330, 244, 230, 200, 170, 100].map(wideOf)).toEqual([60, 60, 60, 56, 54, 54, 54]);
});

test.each([170, 200, 230])("a board %i mm deep keeps every state whole", (depthMm) => {
	const helter = { ...build, graphicsCard: withGraphics({ name: "Helter Skelter", thicknessMm: 55, lengthMm: 300 }) };
	const lines = pictureOf(boardOfEveryState, helter, { depthMm });
	expect(lineWith(lines, " X16 ")).toMatch(/ Helter Skelter +\|$/);
	expect(lineWith(lines, " X1 ")).toMatch(/ covered \(He[^)]*\.\.\) +\|$/);
	expect(lineWith(lines, " X4 ")).toMatch(/ dead +\|$/);
	expect(lineWith(lines, " M1 ")).toMatch(/ (Dart|Arrow), buried +\|$/);
	expect(lines.join("\n")).toMatch(/S5-6 off \((Dart|Arrow)\)/);
	expect(lines.join("\n")).toContain("S1-4 free");
	const halves: BoardOfPlan = {
		...noSlots,
		cardSlots: [slot("X16", 1, 16), slot("Y16", 5, 16)],
		sharing: [{ members: ["X16", "Y16"], modes: [{ on: { X16: 16 } }, { on: { X16: 8, Y16: 8 } }] }],
	};
	expect(lineWith(pictureOf(halves, helter, { depthMm }), " Y16 ")).toMatch(/ narrows \(He[^)]*\.\.\) +\|$/);
	expect(lineWith(pictureOf(halves, { ...helter, addInCards: [card("Gong")] }, { depthMm }), " X16 ")).toMatch(
		/ H[^|]*\.\., 8 of 16 lanes +\|$/,
	);
});

test("an M.2 drive on an adapter card says so; one in a socket does not", () => {
	const of: BoardOfPlan = { ...noSlots, cardSlots: [slot("X4", 2, 4)], m2Sockets: [m2("M1", { row: 1 })] };
	const two = { ...bareBuild, drives: [stick("Dart"), stick("Javelin of the very long name")] };
	const lines = planPicture(planFor(problemOf(of, two, { leaning: "best", mayAdapt: true })), {});
	expect(lineWith(lines, " M1 ")).toMatch(/ Dart +\|$/);
	// The name gives way to how it ends.
	expect(lineWith(lines, " X4 ")).toMatch(/ Javelin\S*( \S+)*\.\., on a card +\|$/);
	expect(lines.join("\n").match(/on a card/g)).toHaveLength(1);
});

const long = "a name that goes on and on, far beyond what any line of sixty columns holds";
const cards: readonly AddInCard[] = [card(`first ${long}`), card(`second ${long}`)];
const kinds: readonly (readonly [string, BoardOfPlan, BuildAround])[] = [
	["without anything", noSlots, bareBuild],
	["with every state", boardOfEveryState, build],
	[
		"with seven rows",
		{ ...noSlots, cardSlots: [1, 2, 3, 4, 5, 6, 7].map((row) => slot(`X${row}`, row, row === 1 ? 16 : 4)) },
		{ ...build, addInCards: cards },
	],
	[
		"with long names",
		{
			...noSlots,
			cardSlots: [slot(`slot ${long}`, 1, 16), slot(`other ${long}`, 4, 4)],
			m2Sockets: [m2(`socket ${long}`, { row: 1 }), m2(`loose ${long}`)],
			drivePorts: [{ name: `port ${long}`, kind: "SATA" }],
		},
		{ ...build, drives: [stick(`drive ${long}`), stick(`more ${long}`)], olderSataDrives: 1, addInCards: cards },
	],
];

test.each(kinds)("a board %s stays in its columns, in ASCII", (_, of, around) => {
	for (const depthMm of [150, 244, 330])
		for (const width of [60, 40, 24]) {
			const lines = pictureOf(of, around, { depthMm }, width);
			for (const line of lines) expect(line.length).toBeLessThanOrEqual(width);
			expect(lines.join("")).toMatch(/^[\x20-\x7e]*$/);
			const frame = lines.filter((line) => /^[|+]/.test(line));
			expect(new Set(frame.map((line) => line.length)).size).toBe(1);
		}
});

test("a name with a line break stays in its line, and keeps its letters", () => {
	const lines = pictureOf(boardOfEveryState, { ...build, drives: [stick("Flèche\n\u202eneuf")] });
	expect(lines.join("|")).toContain("Flèche neuf");
	expect(lines.join("")).not.toMatch(/[\n\u202e]/);
});

test("what has fewer lanes than it can use says how many", () => {
	const halved: BoardOfPlan = {
		...noSlots,
		cardSlots: [slot("X16", 1, 16), slot("Y16", 5, 16)],
		sharing: [{ members: ["X16", "Y16"], modes: [{ on: { X16: 16 } }, { on: { X16: 8, Y16: 8 } }] }],
	};
	const lines = pictureOf(halved, { ...build, addInCards: [card("Gong")] });
	expect(lineWith(lines, " X16 ")).toContain(" Carousel, 8 of 16 lanes ");
	expect(lineWith(lines, " Y16 ")).toMatch(/ Gong +\|$/);
	expect(lineWith(pictureOf(halved, build), " X16 ")).toMatch(/ Carousel +\|$/);
	const narrow: BoardOfPlan = {
		...noSlots,
		cardSlots: [slot("X16", 1, 16)],
		m2Sockets: [m2("M1", { row: 1, wiredLanes: 2 })],
	};
	// The name gives way to how it ends.
	expect(lineWith(pictureOf(narrow, { ...build, drives: [stick("Dart of the long name")] }), " M1 ")).toMatch(
		/ D\S*\.\., 2 of 4 lanes, buried \|$/,
	);
});

/** Columns for how a connector ends, in a picture of the usual width. */
const usualRoom = 25;
const ending = (state: DrawnConnector["state"], by: string, lack = ""): DrawnConnector => ({
	name: "X16",
	shape: "slot",
	sizeLanes: 16,
	state,
	by,
	lack,
});
test.each([
	["used", "Helter Skelter", "", "Helter Skelter"],
	["used", "Helter Skelter of the Fair by the Sea", "", "Helter Skelter of the F.."],
	["used", "Helter Skelter", "8 of 16 lanes", "Helter S.., 8 of 16 lanes"],
	["used", "Dart", "on a card", "Dart, on a card"],
	["buried", "Dart", "", "Dart, buried"],
	["buried", "Dart", "2 of 4 lanes", "D.., 2 of 4 lanes, buried"],
	["off", "Helter Skelter", "", "off (Helter Skelter)"],
	["off", "Helter Skelter, Carousel", "", "off (Helter Skelter, C..)"],
	["covered", "Helter Skelter", "", "covered (Helter Skelter)"],
	["covered", "Helter Skelter, Carousel", "", "covered (Helter Skelte..)"],
	["narrows", "Helter Skelter, Carousel", "", "narrows (Helter Skelte..)"],
	["dead", "", "", "dead"],
	["free", "", "", "free"],
] as const)("%s, %j, %j in the room of the usual picture", (state, by, lack, words) => {
	expect(endWords(ending(state, by, lack), usualRoom)).toBe(words);
	expect(endWords(ending(state, by, lack), usualRoom).length).toBeLessThanOrEqual(usualRoom);
});

test("in little room the name goes and the state stays", () => {
	expect(endWords(ending("covered", "Helter Skelter"), 13)).toBe("covered");
	expect(endWords(ending("off", "Helter Skelter"), 10)).toBe("off (He..)");
	expect(endWords(ending("narrows", "Helter Skelter"), 3)).toBe("narrows");
	expect(endWords(ending("buried", "Helter Skelter"), 13)).toBe("Hel.., buried");
});

test("a slot of the old kind is drawn otherwise, whatever its lanes, and explained", () => {
	const old: BoardOfPlan = { ...noSlots, cardSlots: [slot("X16", 1, 16), slot("PCI_2", 2, 1, { bus: "PCI" })] };
	const lines = pictureOf(old, bareBuild);
	expect(lineWith(lines, " PCI_2 ")).toContain(" [-----] ");
	expect(lineWith(lines, " X16 ")).toContain(" [==========] ");
	expect(lines.join("\n")).toContain("[==] = card slot; [--] = slot of the old kind");
	const only = pictureOf({ ...noSlots, cardSlots: [slot("PCI_1", 1, 1, { bus: "PCI" })] }, bareBuild).join("\n");
	expect(only).not.toContain("[==]");
	expect(only).toContain("[--] = slot of the old kind");
	expect(pictureOf(boardOfEveryState, build).join("\n")).not.toContain("[--]");
});

test("memory slots stand below the processor, where they are known", () => {
	const shown = (memorySlots: Parameters<typeof planPicture>[1]["memorySlots"]) =>
		pictureOf(noSlots, bareBuild, { memorySlots }).slice(1, -1);
	const line = (words: string) => `| ${words.padEnd(56)} |`;
	const processor = line("[ processor ]");
	expect(shown({ fill: ["A2", "B2"], empty: ["A1", "B1"] })).toEqual([
		processor,
		line("memory: A2, B2 filled; A1, B1 empty"),
	]);
	expect(shown({ fill: ["A2"], empty: [] })).toEqual([processor, line("memory: A2 filled")]);
	expect(shown({ fill: ["A2"], empty: null })).toEqual([processor, line("memory: A2 filled")]);
	expect(shown(null)).toEqual([processor]);
	const names = Array.from({ length: 8 }, (_, index) => `DIMM_${index + 1}`);
	const long = shown({ fill: names.slice(0, 4), empty: names.slice(4) });
	expect(long).toHaveLength(3);
	expect(long[2]).toBe(line("DIMM_5, DIMM_6, DIMM_7, DIMM_8 empty"));
});

const odd = 'FAN\n"<2>"\u202e & h\u00e9lice';
const headers: NonNullable<Board["headers"]> = {
	usb2: 2,
	typeC: [],
	fans: [
		{ name: "CPU_FAN", use: "processor" },
		{ name: "FAN_1", use: "case" },
		...[3, 4, 5].map((nth) => ({ name: `FAN_${nth}`, use: "case" as const })),
		{ name: odd, use: "case" },
	],
	lights: [{ name: "L5", volts: 5 }],
};
const plugs: HeaderBuild = {
	case: { state: "unknown" },
	cooler: { state: "none" },
	addInCards: null,
	lights: ["5 V three-pin", "5 V three-pin"],
	caseFans: 1,
	laterThings: null,
};
const withHeaders = (build: Partial<HeaderBuild>, of: Board["headers"] = headers, width?: number) =>
	pictureOf(noSlots, bareBuild, { headerPlan: headerPlanOf(of ? { headers: of } : {}, { ...plugs, ...build }) }, width);
const itemsOf = (lines: readonly string[]) =>
	lines.filter((line) => line.startsWith("|")).flatMap((line) => line.slice(2, -2).trim().split("; "));

test("headers in use come with all that goes on them, then the free ones, folded where they are numbered on", () => {
	const items = itemsOf(withHeaders({})).slice(1);
	expect(items.slice(0, 3)).toEqual([
		"CPU_FAN: fan of the cooler in the processor's box",
		"FAN_1: case fan",
		"L5: 5 V lights 1, 5 V lights 2",
	]);
	const free = items.slice(3).map((item) => item.replace(/ +/g, " "));
	expect(free.every((item) => item.endsWith(" free"))).toBe(true);
	expect(free).toContain("9-pin USB header 1-2 free");
	expect(free).toContain("FAN_3-5 free");
	expect(withHeaders({}).at(-1)).toBe("free = nothing goes in yet");
});

test("a header that waits for a later fan is free, and a board of which no header is known shows none", () => {
	const later = withHeaders(
		{ caseFans: null, lights: null, laterThings: ["fan"] },
		{ fans: headers.fans?.slice(0, 2) },
	);
	expect(itemsOf(later).slice(1)).toEqual(["CPU_FAN: fan of the cooler in the processor's box", "FAN_1 free"]);
	expect(itemsOf(pictureOf(noSlots, bareBuild, { headerPlan: headerPlanOf({}, plugs) }))).toEqual(["[ processor ]"]);
	expect(itemsOf(pictureOf(noSlots, bareBuild))).toEqual(["[ processor ]"]);
});

test("headers with long or odd names stay in their columns and lines", () => {
	const named = (name: string): Board["headers"] => ({ fans: [{ name, use: "case" }], lights: [{ name, volts: 5 }] });
	for (const name of [odd, long, "\u6247\u982d\u6247\u982d".repeat(9)])
		for (const width of [60, 40, 24]) {
			const lines = withHeaders({ caseFans: 3 }, named(name), width);
			for (const line of lines) expect(stringWidth(line)).toBeLessThanOrEqual(width);
			expect(new Set(lines.filter((line) => /^[|+]/.test(line)).map((line) => stringWidth(line))).size).toBe(1);
			expect(lines.join("")).not.toMatch(/[\n\u202e]/);
		}
	expect(withHeaders({}, named(odd)).join("\n")).toMatch(/^\| FAN "<2>" +& h\u00e9lice: fan of the cooler/m);
});
