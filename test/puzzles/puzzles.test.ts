import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { checkParts } from "../../src/parts/check-parts.ts";
import { answerTo, type Puzzle, type PuzzleFile, partsFileOf, puzzleParts } from "./puzzle-build.ts";

const file = JSON.parse(readFileSync(new URL("puzzles.json", import.meta.url), "utf8")) as PuzzleFile;
const { puzzles } = file;

/** By rule and message: what decides. Chosen by reading the words, so that no puzzle is right for a wrong reason. */
const decides: Readonly<Record<string, string>> = {
	"socket-next-number": "fit/socket: other",
	"same-socket-chipset-not-served": "fit/generation: notListed",
	"board-245-in-244": "fit/board-form: tooDeep",
	"back-plugs-plain-case": "fit/back-plugs: noCutOuts",
	"ddr4-in-ddr5": "fit/memory-modules: otherType",
	"so-dimm-in-dimm": "fit/memory-modules: otherForm",
	"registered-on-unbuffered": "fit/memory-modules: registered",
	"module-64-where-48": "fit/memory-modules: moduleTooLarge",
	"processor-memory-limit": "build/memory-with-processor: tooMuch",
	"three-slot-bracket-two-openings": "build/card-slots-in-case: bracketTooWide",
	"no-picture-at-all": "build/picture-at-all: none",
	"graphics-but-no-socket": "fit/picture: noSocket",
	"cooler-161-in-160": "build/cooler-height: tooHigh",
	"twelve-volt-only-supply": "fit/power-plugs: otherMain",
	"fixed-standoffs-under-atx": "fit/standoffs: fixed",
	"e-atx-depth-not-said": "fit/board-form: caseDepthUnknown",
	"cooler-room-not-said": "build/cooler-height: missing",
	"card-unknown-no-graphics": "build/picture-at-all: unknown",
	"graphics-of-processor-unknown": "build/picture-at-all: unknown",
	"partial-list-not-named": "fit/generation: listPartial",
	"used-ecc-module-maybe-registered": "fit/memory-modules: maybeRegistered",
	"supply-processor-plugs-unknown": "fit/power-plugs: missing",
	"back-openings-not-said": "fit/back-plugs: cutOutsUnknown",
	"price-in-other-currency": "fit/price-cap: otherCurrency",
};

/** By rule and message: what tells the drawback, in its words or in its advice. */
const tells: Readonly<Record<string, readonly string[]>> = {
	"six-hole-atx-deep-case": ["fit/free-edge: hangs"],
	"e-atx-covers-openings": ["fit/deep-board: openings"],
	"four-modules-slower": ["features/memory-rate: crowded"],
	"three-modules": ["build/memory-pairs: uneven", "features/memory-rate: crowded"],
	"ecc-unbuffered-no-checking": ["fit/memory-modules: checksUnused"],
	"gen5-drive-in-gen4": ["features/drive-speed: slower"],
	"two-m2-two-sata-shared": ["fit/m2-drives: switchesOff"],
	"old-20-pin-supply": ["fit/power-plugs: shortMain"],
	"new-firmware-with-button": ["fit/generation: updatesAlone"],
	"front-usb-c-no-header": ["fit/front-plugs: dead"],
	"five-volt-strip-twelve-volt-header": ["features/lighting: lacks"],
	"slot-eight-lanes-with-series": ["features/graphics-lanes: narrow"],
	"ps2-keyboard-no-socket": ["features/old-connectors: lacks"],
};

const said = ({ findings }: ReturnType<typeof answerTo>, isMeant: (finding: (typeof findings)[number]) => boolean) =>
	findings.filter(isMeant).map(({ ruleId, messageId }) => `${ruleId}: ${messageId}`);

function expectAgreement(puzzle: Puzzle): void {
	const answer = answerTo(puzzleParts(file, puzzle));
	const { id, verdict } = puzzle;
	expect(answer.verdict).toBe(verdict === "fits-with-drawback" ? "fits" : verdict);
	if (verdict === "fits-with-drawback") {
		expect(tells[id]?.length).toBeGreaterThan(0);
		expect(said(answer, ({ severity }) => severity !== null)).toEqual(expect.arrayContaining([...(tells[id] ?? [])]));
	} else if (verdict !== "fits") expect(said(answer, (finding) => finding.verdict === verdict)).toContain(decides[id]);
	if (puzzle.switchesOff) expect(answer.off).toEqual(puzzle.switchesOff.split(" and "));
}

function expectDifference(puzzle: Puzzle, { says, told, off }: NonNullable<Puzzle["differs"]>): void {
	const answer = answerTo(puzzleParts(file, puzzle));
	expect(says).not.toBe(puzzle.verdict);
	expect(answer.verdict).toBe(says);
	// What the program is right to call a fit is told of all the same.
	expect(said(answer, ({ severity, verdict }) => severity !== null || verdict !== "fits")).toEqual(
		expect.arrayContaining([...told]),
	);
	if (off) expect(answer.off).toEqual(off);
}

test.each(["base", "baseSmall"] as const)("nothing speaks against %s, so what a puzzle changes decides", (base) => {
	const { verdict, findings, off } = answerTo(file[base]);
	expect({ verdict, off }).toEqual({ verdict: "fits", off: [] });
	expect(findings.filter(({ severity }) => severity !== null)).toEqual([]);
});

test("every puzzle is made of sound parts", () => {
	const faults = puzzles.flatMap((puzzle) => {
		const checked = checkParts(partsFileOf(puzzleParts(file, puzzle)));
		return checked.value ? [] : [{ id: puzzle.id, faults: checked.faults }];
	});
	expect(faults).toEqual([]);
});

test("sixty, with as many of each verdict as the author gave, and the figures that the README gives", () => {
	const count = (verdict: Puzzle["verdict"]) => puzzles.filter((puzzle) => puzzle.verdict === verdict).length;
	expect(new Set(puzzles.map(({ id }) => id)).size).toBe(60);
	expect([count("does-not-fit"), count("fits"), count("cannot-tell"), count("fits-with-drawback")]).toEqual([
		21, 13, 12, 14,
	]);
	expect(puzzles.filter(({ differs }) => differs)).toHaveLength(10);
	expect(puzzles.filter(({ amended }) => amended)).toHaveLength(0);
	const named = [...Object.keys(decides), ...Object.keys(tells)];
	const needed = puzzles.filter(({ verdict, differs }) => verdict !== "fits" && !differs).map(({ id }) => id);
	expect(named.sort()).toEqual(needed.sort());
});

describe("the author's verdict", () => {
	test.each(puzzles.filter(({ differs }) => !differs).map((puzzle) => [puzzle.id, puzzle] as const))(
		"%s",
		(_, puzzle) => expectAgreement(puzzle),
	);
});

describe("does not agree, with the reason noted", () => {
	test.each(puzzles.flatMap((puzzle) => (puzzle.differs ? [[puzzle.id, puzzle, puzzle.differs] as const] : [])))(
		"%s",
		(_, puzzle, differs) => expectDifference(puzzle, differs),
	);
});
