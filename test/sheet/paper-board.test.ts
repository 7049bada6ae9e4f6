import { describe, expect, test } from "vitest";
import type { Board } from "../../src/parts/board.ts";
import { viewWalk } from "../../src/screens/walk-view.ts";
import { type PaperBoard, paperBoard } from "../../src/sheet/paper-board.ts";
import { paperBoardHtml } from "../../src/sheet/paper-board-html.ts";
import type { PaperShape } from "../../src/sheet/paper-board-shapes.ts";
import { paperBoardSvg } from "../../src/sheet/paper-board-svg.ts";
import { type Paper, papers, tilesOf } from "../../src/sheet/paper-board-tiles.ts";
import { card, slot, withGraphics } from "../plan/made-up-problem.ts";
import { demo, scenarios } from "../walk/walk-in-demo.ts";
import { bareFacts, drawn, drawnOrNot, statedBoards, thickCard, withCooler } from "./paper-boards.ts";

/** An inch is 25.4 mm by definition. */
const inches = (length: number) => length * 25.4;
const attribute = (tag: string, name: string) => new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1] ?? "";
const tagsOf = (svg: string, part: string) => svg.match(new RegExp(`<[a-z]+ class="${part}"[^>]*>`, "g")) ?? [];
const figuresOf = (tag: string, names: readonly string[]) => names.map((name) => Number(attribute(tag, name)));

interface Box {
	readonly left: number;
	readonly top: number;
	readonly width: number;
	readonly height: number;
}

/** The rectangle of a part, as the SVG has it. */
function boxIn(svg: string, part: string): Box {
	const [tag] = tagsOf(svg, part);
	if (!tag) throw new Error(`no ${part}`);
	const [left = 0, top = 0, width = 0, height = 0] = figuresOf(tag, ["x", "y", "width", "height"]);
	return { left, top, width, height };
}

/** The holes of an SVG by letter, in mm from the board's right and rear edge. */
function holesIn(svg: string): ReadonlyMap<string, { readonly right: number; readonly rear: number }> {
	const { left, top, width } = boxIn(svg, "outline");
	const pattern = /<circle class="hole"[^>]*>(?:\n<path class="cross"[^>]*>){2}\n<text[^>]*>([A-Z])<\/text>/g;
	return new Map(
		[...svg.matchAll(pattern)].map(([tag, letter = ""]) => {
			const [x = 0, y = 0] = figuresOf(tag, ["cx", "cy"]);
			return [letter, { right: left + width - x, rear: y - top }];
		}),
	);
}

const svgOf = (board: Partial<Board>, facts: Parameters<typeof drawn>[1] = {}) => paperBoardSvg(drawn(board, facts));
const linesOf = ({ sections }: PaperBoard, heading: string) =>
	sections.find((section) => section.heading.startsWith(heading))?.lines ?? [];
const toldOf = (paper: PaperBoard, heading: string) => linesOf(paper, heading).join(" ");
const partsOf = ({ shapes }: PaperBoard, part: string) => shapes.filter((shape) => shape.part === part);

describe("sizes", () => {
	test.each<[keyof typeof statedBoards, number, number, string]>([
		["ATX", 305, 244, "microATX Motherboard Interface Specification 1.2, table 3, p. 9"],
		["microATX", 244, 244, "microATX Motherboard Interface Specification 1.2, table 3, p. 9"],
		["Mini-ITX", 170, 170, "Mini-ITX Addendum 1.1 to microATX 1.2, table 1, p. 5"],
	])("%s is %d by %d mm (%s)", (form, widthMm, depthMm) => {
		for (const board of [statedBoards[form], { form }]) {
			expect(boxIn(svgOf(board), "outline")).toMatchObject({ width: widthMm, height: depthMm });
		}
	});

	test("solid where the board's page gives both figures, else dashed and told as the form's", () => {
		const isDashed = (board: Partial<Board>) => tagsOf(svgOf(board), "outline")[0]?.includes("stroke-dasharray");
		expect(isDashed(statedBoards.ATX)).toBe(false);
		expect(isDashed({ form: "ATX" })).toBe(true);
		expect(isDashed({ ...statedBoards.ATX, evidence: { depthMm: { standing: "assumed" } } })).toBe(true);
		expect(toldOf(drawn({ form: "ATX" }), "From standards")).toContain("the largest ATX board");
		expect(toldOf(drawn({ form: "Mini-ITX" }), "From standards")).toContain("it follows from the form Mini-ITX");
		expect(toldOf(drawn(statedBoards.ATX), "From standards")).not.toContain("The size");
	});

	test("the SVG is in true mm: its width and height are those of its viewBox", () => {
		const [tag = ""] = /<svg[^>]*>/.exec(svgOf(statedBoards.ATX, { graphicsCard: thickCard })) ?? [];
		const [width, height] = [attribute(tag, "width"), attribute(tag, "height")];
		expect(attribute(tag, "viewBox")).toBe(`0 0 ${width.replace("mm", "")} ${height.replace("mm", "")}`);
		expect([width, height].every((one) => /^[\d.]+mm$/.test(one))).toBe(true);
	});

	test.each<[string, Partial<Board>, string]>([
		["nothing known", {}, "how wide and how deep it is, is not known"],
		["no form, one figure", { widthMm: 305 }, "how deep it is, is not known"],
		["E-ATX without depth", { form: "E-ATX", widthMm: 305 }, "E-ATX is a name of the trade and no fixed size"],
	])("%s: a word and no picture", (_, board, words) => {
		const paper = drawnOrNot(board);
		expect("unknown" in paper ? paper.unknown : "").toContain(words);
		expect("unknown" in paper ? paper.unknown : "").toContain("The board maker's page");
		expect(paper).not.toHaveProperty("shapes");
	});
});

describe("holes", () => {
	// From the right and the rear edge, in inches: Tsolo, open-source file with hole letters, 2025; read in a secondary
	// text. They agree with SSI EEB 3.0, figure 1, which was read in the document. R is left out: its x is less sure.
	const standard: Readonly<Record<string, readonly [number, number]>> = {
		A: [11.35, 0.4],
		B: [8.25, 0.4],
		C: [6.45, 0.4],
		F: [0.25, 1.3],
		G: [11.35, 6.5],
		H: [6.45, 6.5],
		J: [0.25, 6.5],
		K: [11.35, 9.35],
		L: [6.45, 9.35],
		M: [0.25, 9.35],
		S: [8.25, 6.5],
	};
	test.each<[keyof typeof statedBoards, string, string]>([
		["ATX", "ACFGHJKLM", "microATX 1.2, fig. 2, p. 10"],
		["microATX", "BCFHJLMRS", "microATX 1.2, fig. 2, p. 10"],
		["Mini-ITX", "CFHJ", "Mini-ITX Addendum 1.1, table 1; ParametricCase"],
	])("of %s are %s (%s), where the standard has them", (form, letters) => {
		for (const board of [statedBoards[form], { form }]) {
			const holes = holesIn(svgOf(board));
			expect([...holes.keys()].sort().join("")).toBe(letters);
			for (const [letter, [right, rear]] of Object.entries(standard)) {
				const hole = holes.get(letter);
				if (!hole) continue;
				expect(hole.right).toBeCloseTo(inches(right), 2);
				expect(hole.rear).toBeCloseTo(inches(rear), 2);
			}
		}
	});

	test("of Mini-ITX lie 154.94, 157.48 and 22.86 mm apart (ParametricCase, motherboard.scad; read in a secondary text)", () => {
		const holes = holesIn(svgOf(statedBoards["Mini-ITX"]));
		const [c, f, h, j] = ["C", "F", "H", "J"].map((letter) => holes.get(letter) ?? { right: 0, rear: 0 });
		expect((h?.rear ?? 0) - (c?.rear ?? 0)).toBeCloseTo(154.94, 2);
		expect((h?.right ?? 0) - (j?.right ?? 0)).toBeCloseTo(157.48, 2);
		expect((f?.rear ?? 0) - (c?.rear ?? 0)).toBeCloseTo(22.86, 2);
	});

	test("are 3.96 mm wide (ParametricCase; read in a secondary text)", () => {
		for (const tag of tagsOf(svgOf(statedBoards.ATX), "hole")) expect(attribute(tag, "r")).toBe("1.98");
	});

	test("solid where named, dashed where the form alone tells of them", () => {
		const dashed = (board: Partial<Board>) =>
			tagsOf(svgOf(board), "hole").filter((tag) => tag.includes("stroke-dasharray")).length;
		expect(dashed(statedBoards.ATX)).toBe(0);
		expect(dashed({ ...statedBoards.ATX, holes: undefined })).toBe(9);
		expect(toldOf(drawn({ form: "microATX" }), "From standards")).toContain("Hole S is left to the board's maker");
	});

	test("none where nobody knows any", () => {
		for (const board of [{ form: "E-ATX", widthMm: 305, depthMm: 277 } as const, { form: "SSI EEB" } as const]) {
			expect(tagsOf(svgOf(board), "hole")).toEqual([]);
			expect(toldOf(drawn(board), "Not known")).toContain("Which screw holes the board has is not known");
		}
	});

	test("of a smaller board: those past its edge are not drawn", () => {
		const small = { form: "microATX", widthMm: 226, depthMm: 185 } as const;
		expect([...holesIn(svgOf(small)).keys()].sort().join("")).toBe("BCFHJS");
		// Named, but outside: that is a contradiction, and is told.
		const named = drawn({ ...small, holes: ["C", "F", "H", "J", "L", "M"] });
		expect(toldOf(named, "Not known")).toContain("Holes L and M: named on its page, but outside a board of this size");
	});

	test("a wider board grows to the left, away from the back sockets", () => {
		const wide = { ...statedBoards.ATX, widthMm: 330 };
		const holes = holesIn(svgOf(wide));
		expect(holes.get("F")?.right).toBeCloseTo(6.35, 2);
		expect(holes.get("A")?.right).toBeCloseTo(inches(11.35), 2);
		expect(boxIn(svgOf(wide), "outline").width).toBe(330);
	});
});

describe("the front edge", () => {
	test("is marked where it reaches far past the last screws", () => {
		const free = drawn({ form: "ATX", widthMm: 305, depthMm: 211, holes: ["A", "C", "F", "G", "H", "J"] });
		// The middle row lies 6.5 in, 165.1 mm, from the rear edge: 211 - 165.1.
		expect(toldOf(free, "Mind")).toContain("The front edge reaches 45.9 mm past the last screws.");
		expect(partsOf(free, "free-edge")).toHaveLength(1);
		// 9.35 in: 244 - 237.49.
		expect(partsOf(drawn(statedBoards.ATX), "free-edge")).toEqual([]);
	});
});

describe("standoffs of the case", () => {
	const cased = (standoffs: NonNullable<Board["holes"]>) => ({
		case: { state: "have", ownership: "bought", part: { id: "crate", name: "Crate", standoffs } } as const,
	});
	const marked = (board: Partial<Board>, standoffs: NonNullable<Board["holes"]>) =>
		partsOf(drawn(board, cased(standoffs)), "standoff").length / 2;

	test("are marked where they would touch the board and it has no hole", () => {
		expect(marked(statedBoards.ATX, ["A", "B", "C", "S"])).toBe(2);
		expect(marked(statedBoards["Mini-ITX"], ["A", "C", "L"])).toBe(0);
		expect(toldOf(drawn(statedBoards.ATX, cased(["B"])), "Mind")).toContain("marked with an X: B. They must come out");
	});

	test("nothing is said of one that the board's maker may have used", () => {
		expect(marked({ ...statedBoards.microATX, holes: ["B", "C", "F", "H", "J", "L", "M", "R"] }, ["S"])).toBe(0);
	});
});

describe("rows and slots", () => {
	const rowsIn = (svg: string) =>
		tagsOf(svg, "row").map((tag) => Number(/M([-\d.]+) /.exec(attribute(tag, "d"))?.[1] ?? "0"));

	test.each([
		["ATX", 7],
		["microATX", 4],
		["Mini-ITX", 1],
	] as const)("%s has %d rows, 0.800 in apart (SSI EEB 3.0, figure 1)", (form, count) => {
		const rows = rowsIn(svgOf(statedBoards[form]));
		expect(rows).toHaveLength(count);
		rows.slice(1).forEach((x, index) => {
			expect((rows[index] ?? 0) - x).toBeCloseTo(inches(0.8), 2);
		});
		// ParametricCase: 1.57 mm to the right of hole C, which is 6.45 in from the right edge.
		const { left, width } = boxIn(svgOf(statedBoards[form]), "outline");
		expect(left + width - (rows[0] ?? 0)).toBeCloseTo(inches(6.45) - 1.57, 2);
	});

	test("a slot lies in its row, as long as its lanes", () => {
		const svg = svgOf(statedBoards.ATX);
		const rows = rowsIn(svg);
		const slots = tagsOf(svg, "slot").map((tag) => figuresOf(tag, ["x", "width", "height"]));
		expect(slots.map(([, , height]) => height)).toEqual([89, 39, 25]);
		expect(slots.map(([x = 0, width = 0]) => x + width / 2)).toEqual(
			[0, 4, 6].map((row) => expect.closeTo(rows[row] ?? 0, 2)),
		);
	});

	test.each<[string, Board["cardSlots"], string]>([
		["no list", undefined, "Which rows have a slot is not known"],
		["no row", [{ name: "X16" }], "X16: in which row it lies is not known"],
		["a row beside the board", [slot("X16", 3, 16)], "X16: its row would lie beside a board of this size"],
		["a slot of the old kind", [slot("OLD", 1, 1, { bus: "PCI" })], "OLD: a slot of the old kind (PCI)"],
	])("%s: told, and no slot is drawn", (_, cardSlots, words) => {
		const paper = drawn({ ...statedBoards["Mini-ITX"], cardSlots });
		expect(toldOf(paper, "Not known")).toContain(words);
		expect(partsOf(paper, "slot")).toEqual([]);
	});

	test("the opening is 158.75 by 44.45 mm (microATX 1.2, fig. 4, p. 14), 7.52 mm from hole C (ParametricCase)", () => {
		for (const board of Object.values(statedBoards)) {
			const svg = svgOf(board);
			const [opening, outline] = [boxIn(svg, "opening"), boxIn(svg, "outline")];
			expect(opening).toMatchObject({ width: 158.75, height: 44.45, top: outline.top });
			expect(outline.left + outline.width - opening.left).toBeCloseTo(inches(6.45) - 7.52, 2);
		}
	});

	test("without a form and without holes nothing is put on the board", () => {
		const paper = drawn({ widthMm: 200, depthMm: 180 }, { graphicsCard: thickCard });
		expect(new Set(paper.shapes.map(({ part }) => part))).toEqual(new Set(["outline", "words"]));
		expect(toldOf(paper, "Not known")).toContain("Which form this board has is not known");
	});
});

describe("cards", () => {
	const boxOf = (shape: PaperShape | undefined): Box => {
		if (shape?.kind === "rectangle") return shape.box;
		if (shape?.kind !== "path") throw new Error("no such shape");
		const [xs, ys] = [shape.points.map(({ x }) => x), shape.points.map(({ y }) => y)];
		const [left, top] = [Math.min(...xs), Math.min(...ys)];
		return { left, top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
	};

	test("as thick and as long as their pages say, dashed past the front edge", () => {
		const paper = drawn(statedBoards.ATX, { graphicsCard: thickCard });
		const [on, beyond] = ["card", "card-beyond"].map((part) => boxOf(partsOf(paper, part)[0]));
		expect(on).toMatchObject({ width: expect.closeTo(55, 6), height: expect.closeTo(244, 6) });
		expect(beyond).toMatchObject({ width: expect.closeTo(55, 6), height: expect.closeTo(56, 6) });
		expect(toldOf(paper, "What is drawn")).toContain("Carousel in X16: 55 mm thick, fills rows 1 to 3; 300 mm long.");
		expect(toldOf(paper, "What is drawn")).toContain("Carousel reaches 56 mm past the board's front edge");
		expect(tagsOf(paperBoardSvg(paper), "card-beyond")[0]).toContain("stroke-dasharray");
		expect(tagsOf(paperBoardSvg(paper), "card")[0]).not.toContain("stroke-dasharray");
	});

	test("a short one ends on the board; a small one stands in its own slot", () => {
		const paper = drawn(statedBoards.ATX, {
			graphicsCard: withGraphics({ lengthMm: 180, thicknessMm: 40 }),
			addInCards: [card("Gong", { lengthMm: 100, thicknessMm: 18 })],
		});
		expect(partsOf(paper, "card-beyond")).toEqual([]);
		expect(partsOf(paper, "card").map((shape) => boxOf(shape).height)).toEqual([180, 100]);
		// Row 5 is four rows from row 1, in which the graphics card is; both begin as far from their slots.
		const [first, second] = partsOf(paper, "card").map(boxOf);
		const right = ({ left, width }: Box) => left + width;
		expect(first && second && right(first) - right(second)).toBeCloseTo(4 * inches(0.8), 2);
	});

	test.each([
		[
			"its thickness is not known",
			withGraphics({ lengthMm: 300, thicknessMm: undefined }),
			"how thick it is, is not known",
		],
		["none is named", { state: "open" } as const, "No graphics card is named"],
		["nobody knows whether there is one", { state: "unknown" } as const, "No graphics card is named"],
	])("none is drawn where %s", (_, graphicsCard, words) => {
		const paper = drawn(statedBoards.ATX, { graphicsCard });
		expect(partsOf(paper, "card")).toEqual([]);
		expect(toldOf(paper, "Not known")).toContain(words);
	});

	test("one of unknown length is left open at its end", () => {
		const paper = drawn(statedBoards.ATX, { graphicsCard: withGraphics({ thicknessMm: 40, lengthMm: undefined }) });
		expect(partsOf(paper, "card")[0]).toMatchObject({ kind: "path" });
		expect(toldOf(paper, "Not known")).toContain("Carousel: how long it is, is not known");
	});

	test("one whose slot has no row, or for which there is none, is told", () => {
		const at = (cardSlots: Board["cardSlots"]) =>
			toldOf(drawn({ ...statedBoards.ATX, cardSlots }, { graphicsCard: thickCard }), "Not known");
		expect(at([{ name: "X16", lengthLanes: 16 }])).toContain("Carousel: the row of its slot is not known");
		expect(at([])).toContain("Carousel: it finds no slot on this board");
	});

	test("one that hangs over the left edge is told", () => {
		const low = { ...statedBoards["Mini-ITX"], cardSlots: [slot("X16", 1, 16)] };
		// The slot lies 7.92 mm from the edge, and the card's other side 55 - 3.47 mm beyond it.
		const told = toldOf(drawn(low, { graphicsCard: thickCard }), "What is drawn");
		expect(told).toContain("Carousel reaches 43.8 mm past the board's left edge.");
	});

	test("what the case takes is told beside", () => {
		const pcCase = {
			state: "have",
			ownership: "bought",
			part: { id: "crate", name: "Crate", cardMaxLengthMm: 310 },
		} as const;
		expect(toldOf(drawn(statedBoards.ATX, { graphicsCard: thickCard, case: pcCase }), "Mind")).toContain(
			"Your case takes cards of up to 310 mm by its page; your longest card has 300 mm.",
		);
	});
});

describe("the processor and its cooler", () => {
	const layout = { memoryFromSocketMm: 52, firstSlotFromSocketMm: 76 };
	const xOf = (paper: PaperBoard, part: string) => {
		const [shape] = partsOf(paper, part);
		if (shape?.kind !== "path") throw new Error(`no ${part}`);
		return shape.points[0]?.x ?? 0;
	};

	test("where the board's page says how far the first slot is, a line tells how far right the processor sits", () => {
		const paper = drawn({ ...statedBoards.ATX, layout }, withCooler({ overSlotMm: 63, overMemoryMm: 38 }));
		expect(xOf(paper, "processor-line") - xOf(paper, "row")).toBeCloseTo(76, 6);
		expect(xOf(paper, "processor-line") - xOf(paper, "cooler-reach")).toBeCloseTo(63, 6);
		expect(toldOf(paper, "Not known")).toContain("How far down that line the processor sits is not known");
	});

	test("counted from the first slot of the board, not from row 1", () => {
		const second = { ...statedBoards.ATX, layout, cardSlots: [slot("X16", 2, 16), slot("X1", 4, 1)] };
		const paper = drawn(second);
		expect(xOf(paper, "processor-line") - xOf(paper, "row")).toBeCloseTo(76 - inches(0.8), 6);
	});

	test.each<[string, Partial<Board>]>([
		["without that figure", {}],
		["where a slot's row is not known", { layout, cardSlots: [slot("X16", 2, 16), { name: "X1" }] }],
	])("no line %s, and the paper says why", (_, board) => {
		const paper = drawn({ ...statedBoards.ATX, ...board }, withCooler({ overSlotMm: 63 }));
		expect(partsOf(paper, "processor-line")).toEqual([]);
		expect(partsOf(paper, "cooler-reach")).toEqual([]);
		expect(toldOf(paper, "Not known")).toContain("Where the processor sits is not the same on all boards");
	});

	test("the loose piece has the sides that are known, and no other", () => {
		const looseParts = (board: Partial<Board>, facts = {}) =>
			new Set(drawn({ ...statedBoards.ATX, ...board }, facts).loose?.map(({ part }) => part));
		const both = withCooler({ overSlotMm: 63, overMemoryMm: 38 });
		expect(looseParts({ layout }, both)).toEqual(
			new Set(["socket", "words", "cooler-left", "cooler-front", "memory", "first-slot"]),
		);
		expect(looseParts({}, withCooler({ overMemoryMm: 38 }))).toEqual(new Set(["socket", "words", "cooler-front"]));
		expect(looseParts({}, withCooler({ overSlotMm: 63 }))).toEqual(new Set(["socket", "words", "cooler-left"]));
		expect(drawn(statedBoards.ATX, withCooler({})).loose).toBeNull();
		const told = toldOf(drawn(statedBoards.ATX, withCooler({ overSlotMm: 63 })), "Not known");
		expect(told).toContain("How far Chimney reaches towards the memory is not known.");
		expect(told).toContain("How far Chimney reaches to its other sides is not known");
	});

	test("the loose piece is at true size round the processor's middle", () => {
		const paper = drawn({ ...statedBoards.ATX, layout }, withCooler({ overSlotMm: 63, overMemoryMm: 38 }));
		const points = (part: string) => {
			const shape = paper.loose?.find((one) => one.part === part);
			return shape?.kind === "path" ? shape.points : [];
		};
		expect(points("cooler-left").map(({ x }) => x)).toEqual([-63, -63]);
		expect(points("cooler-front").map(({ y }) => y)).toEqual([38, 38]);
		expect(points("memory").map(({ y }) => y)).toEqual([52, 52]);
		expect(points("first-slot").map(({ x }) => x)).toEqual([-76, -76]);
	});
});

describe("words", () => {
	const papersToRead = [
		drawn(statedBoards.ATX, { graphicsCard: thickCard, ...withCooler({ overSlotMm: 63 }) }),
		drawn({ form: "microATX" }, { graphicsCard: { state: "unknown" } }),
		drawn({ form: "E-ATX", widthMm: 305, depthMm: 277 }),
		drawn({ widthMm: 200, depthMm: 180 }),
	];

	test("every paper says what it is for, what not, and to pull the plug", () => {
		for (const paper of papersToRead) {
			const mind = toldOf(paper, "Mind");
			expect(mind).toContain("for checking only. It is no drilling guide");
			expect(mind).toContain("Pull the supply's plug from the wall");
			expect(mind).toContain("Standoffs belong only where the board has holes");
			expect(linesOf(paper, "Grounds").length).toBeGreaterThan(0);
		}
	});

	test("no sentence has more than 25 words", () => {
		for (const { sections } of papersToRead)
			for (const { heading, lines } of sections.filter((section) => section.heading !== "Grounds"))
				for (const sentence of lines.flatMap((line) => line.split(/(?<=[.:;]) /)))
					expect(`${heading}: ${sentence}`.split(" ").length).toBeLessThanOrEqual(25 + heading.split(" ").length);
	});

	test("the picture tells all its words to whoever hears it", () => {
		for (const paper of papersToRead) {
			const description = /<desc>([^<]*)<\/desc>/.exec(paperBoardSvg(paper))?.[1] ?? "";
			for (const { lines } of paper.sections)
				for (const line of lines) expect(description.replaceAll("&#39;", "'")).toContain(line);
		}
	});

	test("a board that does not fit says so first", () => {
		const board: Board = { id: "a-board", name: "A board", ...statedBoards.ATX, holes: [...statedBoards.ATX.holes] };
		const paper = paperBoard({ board, assumed: [] }, bareFacts, ["socket", "memory type"]);
		expect("sections" in paper && paper.sections[0]).toEqual({
			heading: "This board does not fit",
			lines: ["It is stopped by: socket and memory type. The paper shows only its size."],
		});
	});
});

describe("sheets", () => {
	const names = (board: Partial<Board>, on: Paper, facts = {}) =>
		tilesOf(drawn(board, facts).shapes, on).map(({ name }) => name);

	test("as few as it takes", () => {
		expect(names(statedBoards["Mini-ITX"], "a4")).toEqual(["Sheet 1 of 1: the whole board"]);
		expect(names(statedBoards["Mini-ITX"], "letter")).toEqual(["Sheet 1 of 1: the whole board"]);
		expect(names(statedBoards.ATX, "a4")).toEqual(["Sheet 1 of 2: left", "Sheet 2 of 2: right"]);
		expect(names(statedBoards.ATX, "letter")).toEqual([
			"Sheet 1 of 4: top left",
			"Sheet 2 of 4: top right",
			"Sheet 3 of 4: bottom left",
			"Sheet 4 of 4: bottom right",
		]);
	});

	test("one on which nothing would stand is left out", () => {
		expect(names(statedBoards.ATX, "a4", { graphicsCard: thickCard })).toEqual([
			"Sheet 1 of 3: top left",
			"Sheet 2 of 3: top right",
			"Sheet 3 of 3: bottom left",
		]);
	});

	test.each(Object.keys(papers) as Paper[])("on %s every line is on a sheet, and neighbours share 8 mm", (on) => {
		const { shapes } = drawn({ widthMm: 500, depthMm: 500, form: "E-ATX", holes: ["A", "M"] });
		const tiles = tilesOf(shapes, on);
		expect(tiles.length).toBeGreaterThanOrEqual(6);
		expect(tiles[0]?.name).toContain("row 1, column 1");
		for (const { row, column, box } of tiles) {
			const right = tiles.find((one) => one.row === row && one.column === column + 1);
			const below = tiles.find((one) => one.row === row + 1 && one.column === column);
			if (right) expect(box.left + box.width - right.box.left).toBeCloseTo(8, 6);
			if (below) expect(box.top + box.height - below.box.top).toBeCloseTo(8, 6);
			// White of 10 mm all round, and room for name and bar.
			expect(box.width).toBeLessThanOrEqual(papers[on].widthMm - 20);
			expect(box.height).toBeLessThanOrEqual(papers[on].heightMm - 20 - 24);
		}
		const points = shapes.flatMap((shape) => (shape.kind === "circle" ? [shape.at] : []));
		expect(points.length).toBeGreaterThan(0);
		for (const { x, y } of points)
			expect(
				tiles.some(
					({ box: { left, top, width, height } }) => left < x && x < left + width && top < y && y < top + height,
				),
			).toBe(true);
	});

	test.each(Object.keys(papers) as Paper[])("on %s each has its name, the bar of 100 mm and what it is for", (on) => {
		const paper = drawn(statedBoards.ATX, { graphicsCard: thickCard, ...withCooler({ overSlotMm: 63 }) });
		const html = paperBoardHtml(paper, on);
		const sheets = html.split('<section class="sheet"').slice(1);
		// And the loose piece.
		expect(sheets).toHaveLength(tilesOf(paper.shapes, on).length + 1);
		for (const sheet of sheets) {
			const [bar = ""] = tagsOf(sheet, "bar");
			expect(attribute(bar, "d")).toMatch(/^M0 (\d+)L100 \1$/);
			expect(sheet).toContain("Measure this first: 100 mm. If it is not, print at 100 % (no fit to page).");
		}
		tilesOf(paper.shapes, on).forEach(({ name }, index) => {
			expect(sheets[index]).toContain(`>${name}</text>`);
		});
		expect(html).toContain(`@page{size:${on === "a4" ? "A4" : "letter"} portrait;margin:10mm}`);
	});

	test("the SVG has the bar too, once", () => {
		const [bar = "", ...others] = tagsOf(svgOf(statedBoards.ATX), "bar");
		expect(others).toEqual([]);
		const [, from, to] = /^M([\d.]+) [\d.]+L([\d.]+) /.exec(attribute(bar, "d")) ?? [];
		expect(Number(to) - Number(from)).toBe(100);
	});
});

describe("the demonstration", () => {
	test("every board is drawn for every person, or told why not", () => {
		let drawnCount = 0;
		for (const { state } of scenarios) {
			const { build, boards } = viewWalk(demo, state).judgement();
			for (const { subject, board } of boards) {
				const paper = paperBoard({ board: subject.board ?? board, assumed: subject.assumed }, build.facts);
				if ("unknown" in paper) {
					expect(paper.unknown).toContain(board.name);
					continue;
				}
				drawnCount += 1;
				expect(tilesOf(paper.shapes, "a4").length).toBeLessThanOrEqual(6);
				for (const { heading, lines } of paper.sections)
					for (const sentence of heading === "Grounds" ? [] : lines.flatMap((line) => line.split(/(?<=[.:;]) /)))
						expect(sentence.split(" ").length).toBeLessThanOrEqual(25);
			}
		}
		expect(drawnCount).toBeGreaterThan(100);
	});
});

describe("hostile names", () => {
	const nasty = `</title><script>alert(1)</script>"'&\u0000\u001b[31m\u202e\ud800 <img src=x onerror=y> =1+1`;
	const paper = drawn(
		{ ...statedBoards.ATX, name: nasty, layout: { firstSlotFromSocketMm: 76 }, cardSlots: [slot(nasty, 1, 16)] },
		{
			graphicsCard: withGraphics({ name: nasty, thicknessMm: 40, lengthMm: 300 }),
			...withCooler({ name: nasty, overSlotMm: 60 }),
		},
	);
	const forms: readonly (readonly [string, string])[] = [
		["SVG", paperBoardSvg(paper)],
		["HTML for A4", paperBoardHtml(paper, "a4")],
		["HTML for Letter", paperBoardHtml(paper, "letter")],
	];

	test.each(forms)("%s: are text, and nothing else", (_, written) => {
		expect(written).not.toMatch(/<script|<img|<\/title><script/i);
		expect(written.replaceAll("\n", "")).not.toMatch(/[\p{Cc}\p{Cs}\u202e]/u);
		expect(written.replaceAll("http://www.w3.org/2000/svg", "")).not.toMatch(
			/https?:|\/\/|href|url\(|@import|\son\w+=/i,
		);
		expect(written).toContain("&#60;/title&#62;&#60;script&#62;");
	});

	test.each(forms)("%s: every tag that opens is closed", (_, written) => {
		const open: string[] = [];
		const empty = new Set(["meta", "!doctype"]);
		for (const [, close, name = "", self] of written.matchAll(/<(\/?)([!a-zA-Z0-9]+)(?:\s[^<>]*?)?(\/?)>/g)) {
			if (empty.has(name) || self) continue;
			if (close) expect(open.pop()).toBe(name);
			else open.push(name);
		}
		expect(open).toEqual([]);
	});

	test("very long names do not push the picture about", () => {
		const long = drawn({ ...statedBoards.ATX, name: "\u6247\u982d".repeat(400) });
		const [tag = ""] = /<svg[^>]*>/.exec(paperBoardSvg(long)) ?? [];
		const [plain = ""] = /<svg[^>]*>/.exec(svgOf(statedBoards.ATX)) ?? [];
		expect(attribute(tag, "viewBox")).toBe(attribute(plain, "viewBox"));
	});
});
