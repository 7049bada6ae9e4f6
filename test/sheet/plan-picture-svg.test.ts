import stringWidth from "string-width";
import { describe, expect, test } from "vitest";
import type { Board } from "../../src/parts/board.ts";
import { headerPlanOf } from "../../src/plan/header-plan.ts";
import type { HeaderBuild } from "../../src/plan/header-wish.ts";
import { planFor } from "../../src/plan/plan.ts";
import { type BoardOfPlan, type BuildAround, problemOf } from "../../src/plan/problem.ts";
import type { BesideConnectors } from "../../src/sheet/plan-picture.ts";
import { planPictureSvg } from "../../src/sheet/plan-picture-svg.ts";
import { bareBuild, boardOfEveryState, card, m2, ports, slot, stick, withGraphics } from "../plan/made-up-problem.ts";

const empty: BoardOfPlan = { cardSlots: [], m2Sockets: [], drivePorts: [], conditions: [], sharing: [] };
const svgOf = (of: BoardOfPlan, title: string) =>
	planPictureSvg(
		planFor(
			problemOf(
				of,
				{
					...bareBuild,
					processor: { ...bareBuild.processor, state: "have" },
					graphicsCard: withGraphics({ thicknessMm: 55, lengthMm: 300 }),
					drives: [stick('Dart & <b>"Sons"'), stick("Arrow\u0001\ud800")],
				},
				{ leaning: "best" },
			),
		),
		title,
	);

/** Names of the tags left open at the end; throws at one that closes another. */
function leftOpen(svg: string): readonly string[] {
	const open: string[] = [];
	for (const [, close, name, self] of svg.matchAll(/<(\/?)([a-z]+)(?:\s[a-zA-Z-]+="[^"<]*")*(\/?)>/g)) {
		if (close) expect(open.pop()).toBe(name);
		else if (!self) open.push(name ?? "");
	}
	return open;
}

test.each([
	["a full board", boardOfEveryState],
	["an empty one", empty],
])("%s: tags balance, and nothing is left that is not text", (_, of) => {
	const svg = svgOf(of, 'Board "A" & <B>');
	expect(leftOpen(svg)).toEqual([]);
	const text = svg.replace(/<\/?[a-z]+(?:\s[a-zA-Z-]+="[^"<]*")*\/?>/g, "");
	expect(text).not.toMatch(/[<>"]|&(?!#\d+;)/);
	expect(svg.replaceAll("\n", "")).not.toMatch(/[\p{Cc}\p{Cs}]/u);
	expect(svg).toContain("<title>Board &#34;A&#34; &#38; &#60;B&#62;</title>");
	expect(svg).toMatch(/^<svg [^>]*viewBox="0 0 \d+ \d+" role="img"/);
	expect(svg.replace("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:|<script|href/);
});

test("the description tells the plan", () => {
	const words = /<desc>(.*)<\/desc>/s.exec(svgOf(boardOfEveryState, "Board"))?.[1];
	for (const part of ["X16: Carousel", "X1: covered (Carousel)", "X4: dead", ", buried", "S5-6: off", "S1-4: free"])
		expect(words).toContain(part);
	expect(words).toContain("Dart &#38; &#60;b&#62;&#34;Sons&#34;");
	expect(words).toContain("Row 3, filled by Carousel.");
});

const thick: BuildAround = {
	...bareBuild,
	processor: { ...bareBuild.processor, state: "have" },
	graphicsCard: withGraphics({ thicknessMm: 55, lengthMm: 300 }),
	drives: [stick("Dart"), stick("Arrow")],
};
const drawn = (of: BoardOfPlan, build: BuildAround = thick, beside: BesideConnectors = {}) =>
	planPictureSvg(planFor(problemOf(of, build, { leaning: "best" })), "Board", beside);

interface Box {
	readonly left: number;
	readonly top: number;
	readonly right: number;
	readonly bottom: number;
}

/** Units a character takes and rises over its line, at most: a font of 12 is 0.6 wide in monospace (own convention). */
const [characterWide, characterHigh, below] = [7.5, 12, 4];
const plain = (text: string) => text.replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code)));

function textsIn(svg: string): readonly (Box & { readonly words: string })[] {
	return [...svg.matchAll(/<text x="([\d.]+)" y="([\d.]+)"[^>]*>([^<]*)<\/text>/g)].map(([, x, y, text = ""]) => {
		const [left, line, words] = [Number(x), Number(y), plain(text)];
		const right = left + stringWidth(words) * characterWide;
		return { left, top: line - characterHigh, right, bottom: line + below, words };
	});
}

/** The first is the frame. */
function boxesIn(svg: string): readonly (Box & { readonly isDashed: boolean; readonly isFilled: boolean })[] {
	const pattern = /<rect x="([\d.]+)" y="([\d.]+)" width="([\d.]+)" height="([\d.]+)"([^>]*)\/>/g;
	return [...svg.matchAll(pattern)].map(([, x, y, wide, high, rest = ""]) => ({
		left: Number(x),
		top: Number(y),
		right: Number(x) + Number(wide),
		bottom: Number(y) + Number(high),
		isDashed: rest.includes("stroke-dasharray"),
		isFilled: rest.includes("fill-opacity"),
	}));
}

const overlap = (one: Box, other: Box) =>
	one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
const isWithin = (inner: Box, outer: Box) =>
	inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top && inner.bottom <= outer.bottom;

const long = "a name that goes on and on, far beyond what any line of a picture holds, and further still";
const wide = "\u6247\u982d".repeat(40);
const headers: NonNullable<Board["headers"]> = {
	usb2: 3,
	usb5: 1,
	typeC: [{ gbps: 10 }, {}],
	frontAudio: true,
	fans: [
		{ name: "CPU_FAN", use: "processor" },
		{ name: 'FAN\n"<1>"\u202e & h\u00e9lice', use: "case" },
		...[2, 3, 4].map((nth) => ({ name: `FAN_${nth}`, use: "case" as const })),
		{ name: long, use: "case" },
		{ name: wide, use: "case" },
	],
	lights: [{ name: "L5", volts: 5, amps: 3 }],
};
const plugs: HeaderBuild = {
	case: { state: "unknown" },
	cooler: { state: "have", ownership: "bought", part: { id: "slab", name: long } },
	addInCards: null,
	lights: ["5 V three-pin", "5 V three-pin", "5 V three-pin", "5 V three-pin"],
	caseFans: 2,
	laterThings: null,
};
const beside: BesideConnectors = {
	headerPlan: headerPlanOf({ headers }, plugs),
	memorySlots: { fill: ["A2", "B2"], empty: ["A1", "B1"] },
};
const tenRows: BoardOfPlan = {
	...empty,
	cardSlots: Array.from({ length: 10 }, (_, index) => slot(`X${index + 1}`, index + 1, index === 0 ? 16 : 4)),
};
const longNames: BoardOfPlan = {
	...empty,
	cardSlots: [slot(`slot ${long}`, 1, 16), slot(`${wide}`, 4, 4)],
	m2Sockets: [m2(`socket ${long}`, { row: 1, wiredLanes: 2 }), m2(`loose ${long}`)],
	drivePorts: [{ name: `port ${long}`, kind: "SATA" }, ...ports(3)],
};
const longBuild: BuildAround = {
	...thick,
	graphicsCard: withGraphics({ name: `card ${wide}`, thicknessMm: 55, lengthMm: 300 }),
	drives: [stick(`drive ${long}`), stick(`other ${wide}`)],
	olderSataDrives: 1,
	addInCards: [card(`card ${long}`)],
};
const pictures: readonly (readonly [string, string])[] = [
	["without anything", drawn(empty, bareBuild)],
	["with every state", drawn(boardOfEveryState)],
	["with every state, headers and memory", drawn(boardOfEveryState, thick, beside)],
	["with ten rows", drawn(tenRows, { ...thick, addInCards: [card("Gong")] })],
	["with long and wide names", drawn(longNames, longBuild, beside)],
	[
		"with many long names of memory slots",
		drawn(empty, bareBuild, { memorySlots: { fill: [long, "A1"], empty: [wide] } }),
	],
];

describe.each(pictures)("the layout %s", (_, svg) => {
	const [, width, height] = /viewBox="0 0 (\d+) (\d+)"/.exec(svg) ?? [];
	const view: Box = { left: 0, top: 0, right: Number(width), bottom: Number(height) };
	const texts = textsIn(svg);
	const [frame, ...boxes] = boxesIn(svg);
	if (!frame) throw new Error("there is no frame");

	test("everything lies inside the view, and no text is lost on the way", () => {
		expect(texts).toHaveLength(svg.split("<text ").length - 1);
		expect(boxes).toHaveLength(svg.split("<rect ").length - 2);
		expect([...texts, frame, ...boxes].filter((one) => !isWithin(one, view))).toEqual([]);
		expect(boxes.filter((one) => !isWithin(one, frame))).toEqual([]);
	});

	test("no text lies on another, on a box or on the frame's lines", () => {
		const clashes = texts.flatMap((one, index) => [
			...texts.slice(index + 1).filter((other) => overlap(one, other)),
			...boxes.filter((box) => overlap(one, box)),
		]);
		expect(clashes).toEqual([]);
		expect(texts.filter((one) => overlap(one, frame) && !isWithin(one, frame))).toEqual([]);
	});

	test("no box lies on another", () => {
		const clashes = boxes.filter((one, index) => boxes.slice(index + 1).some((other) => overlap(one, other)));
		expect(clashes).toEqual([]);
	});

	test("tags balance, and controls are gone", () => {
		expect(leftOpen(svg)).toEqual([]);
		expect(svg.replaceAll("\n", "")).not.toMatch(/[\p{Cc}\p{Cs}\u202e]/u);
	});
});

/** What is written below the frame. */
function legendOf(svg: string): readonly string[] {
	const [frame] = boxesIn(svg);
	return textsIn(svg)
		.filter(({ top }) => top > (frame?.bottom ?? 0))
		.flatMap(({ words }) => words.split("; "));
}

test("the legend stands below the frame and tells only of what is drawn", () => {
	expect(legendOf(drawn(boardOfEveryState))).toEqual([
		"long box = card slot, as long as its edge",
		"round box = M.2 socket",
		"grey bar = rows that one thick card fills",
		"off = does not work while what is named is in",
		"covered = a card lies over it",
		"buried = works, but a card must come out to reach it",
		"free = nothing goes in yet",
		"dead = of no use with this processor",
		"dashed = nothing can go in",
	]);
	expect(legendOf(drawn({ ...empty, drivePorts: ports(2) }, bareBuild))).toEqual(["free = nothing goes in yet"]);
	const pci: BoardOfPlan = { ...empty, cardSlots: [slot("PCI_1", 2, 1, { bus: "PCI" })] };
	const oldSlot = "half-long box = slot of the old kind (PCI)";
	expect(legendOf(drawn(pci, bareBuild))).toEqual([oldSlot, "free = nothing goes in yet"]);
	expect(legendOf(drawn({ ...pci, cardSlots: [slot("X16", 1, 16), ...(pci.cardSlots ?? [])] }, bareBuild))).toEqual([
		"long box = card slot, as long as its edge",
		oldSlot,
		"free = nothing goes in yet",
	]);
	expect(legendOf(drawn(empty, bareBuild))).toEqual([]);
});

test.each([
	["free, used, buried and narrowed", { ...empty, m2Sockets: [m2("M1", { row: 2 })] }, false],
	["dead", { ...empty, conditions: [{ connector: "X4", when: {}, dead: true }] }, true],
	["covered", { ...empty, cardSlots: [slot("X1", 2, 1)] }, true],
	["off", { ...empty, sharing: [{ members: ["X16", "X4"], modes: [{ on: { X16: 16 } }, { on: { X4: 4 } }] }] }, true],
	// Ports are written and have no box that could be dashed.
	[
		"off, and a port",
		{
			...empty,
			m2Sockets: [m2("M1", { row: 2 })],
			drivePorts: ports(1),
			sharing: [{ members: ["M1", "S1"], modes: [{ on: { M1: 4 } }, { on: { S1: 1 } }] }],
		},
		false,
	],
] satisfies readonly (readonly [string, BoardOfPlan, boolean])[])("dashes and their word: %s", (_, of, isDashed) => {
	const cardSlots = [slot("X16", 1, 16), slot("X4", 5, 4), ...(of.cardSlots ?? [])];
	const svg = drawn({ ...of, cardSlots }, { ...thick, drives: [stick("Dart")] });
	expect(boxesIn(svg).some((box) => box.isDashed)).toBe(isDashed);
	expect(legendOf(svg).includes("dashed = nothing can go in")).toBe(isDashed);
});

test("an M.2 drive on an adapter card says so, written and read out", () => {
	const mayAdapt = planFor(
		problemOf(
			{ ...empty, cardSlots: [slot("X4", 2, 4)] },
			{ ...bareBuild, drives: [stick("Dart")] },
			{
				leaning: "best",
				mayAdapt: true,
			},
		),
	);
	const svg = planPictureSvg(mayAdapt, "Board");
	const written = textsIn(svg).map(({ words }) => words);
	expect(written[written.indexOf("X4") + 1]).toBe("Dart, on a card");
	expect(/<desc>([^<]*)</.exec(svg)?.[1]).toContain("Row 2: X4: Dart, on a card.");
});

test("slots are as long as their edges; dashed is only where nothing can go in", () => {
	const svg = drawn(boardOfEveryState);
	const [, ...boxes] = boxesIn(svg);
	const beside = (name: string) => {
		const label = textsIn(svg).find(({ words }) => words === name);
		const box = boxes.find(
			(one) => !one.isFilled && one.top >= (label?.top ?? 0) - 3 && one.top < (label?.bottom ?? 0),
		);
		return { long: (box?.right ?? 0) - (box?.left ?? 0), isDashed: box?.isDashed };
	};
	expect(beside("X16").long).toBeGreaterThan(beside("X4").long);
	expect(beside("X4").long).toBeGreaterThan(beside("X1").long);
	expect(["X16", "X1", "X4", "M1"].map((name) => beside(name).isDashed)).toEqual([false, true, true, false]);
	expect(boxes.filter(({ isFilled }) => isFilled)).toHaveLength(1);
});

test("a slot of the old kind is half as long as one of sixteen lanes, whatever its lanes", () => {
	const longOf = (lanes: number) => {
		const cardSlots = [slot("X16", 1, 16), slot("PCI_2", 2, lanes, { bus: "PCI" })];
		const [, x16, old] = boxesIn(drawn({ ...empty, cardSlots }, bareBuild));
		return [(x16?.right ?? 0) - (x16?.left ?? 0), (old?.right ?? 0) - (old?.left ?? 0)];
	};
	const [full = 0, half] = longOf(1);
	expect(half).toBe(full / 2);
	expect(longOf(4)).toEqual([full, half]);
});

test("lanes that are lacking, memory and headers are written, and read out", () => {
	const halved: BoardOfPlan = {
		...empty,
		cardSlots: [slot("X16", 1, 16), slot("Y16", 5, 16)],
		sharing: [{ members: ["X16", "Y16"], modes: [{ on: { X16: 16 } }, { on: { X16: 8, Y16: 8 } }] }],
	};
	const svg = drawn(halved, { ...thick, addInCards: [card("Gong")] }, beside);
	const lines = textsIn(svg).map(({ words }) => words);
	expect(lines[0]).toBe("processor, memory: A2, B2 filled; A1, B1 empty");
	const written = lines.flatMap((line) => line.split("; "));
	expect(written[written.indexOf("X16") + 1]).toBe("Carousel, 8 of 16 lanes");
	expect(written).toContain("FAN_3-4: free");
	expect(written.filter((words) => words.startsWith("L5: 5 V lights 1, 5 V lights 2"))).toHaveLength(1);
	expect(written.filter((words) => /^FAN "<1>" +& h\u00e9lice: /.test(words))).toHaveLength(1);
	const heard = plain(/<desc>([^<]*)</.exec(svg)?.[1] ?? "");
	expect(heard).toContain("Beside it memory: A2, B2 filled; A1, B1 empty.");
	expect(heard).toContain("X16: Carousel, 8 of 16 lanes.");
	// Who hears it is told all that shares a header, though no line has the room.
	expect(heard).toContain("L5: 5 V lights 1, 5 V lights 2, 5 V lights 3, 5 V lights 4");
	const bare = textsIn(drawn(empty, bareBuild)).map(({ words }) => words);
	expect(bare).toEqual(["processor"]);
});
