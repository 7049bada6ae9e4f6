import { expect, test } from "vitest";
import type { AddInCard } from "../../src/parts/add-in-card.ts";
import { planFor } from "../../src/plan/plan.ts";
import { type BoardOfPlan, type BuildAround, problemOf } from "../../src/plan/problem.ts";
import { planPicture } from "../../src/sheet/plan-picture.ts";
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

test("a shallow board is drawn narrower", () => {
	expect(pictureOf(boardOfEveryState, build, { depthMm: 200 })[0]?.length).toBeLessThan(
		pictureOf(boardOfEveryState, build, { depthMm: 244 })[0]?.length ?? 0,
	);
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
