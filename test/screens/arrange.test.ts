import { describe, expect, test } from "vitest";
import {
	type Arrangement,
	arrange,
	cutTo,
	isTooSmall,
	markWords,
	type ScreenSize,
	smallest,
} from "../../src/screens/arrange.ts";
import { blockLines } from "../../src/screens/block-lines.ts";
import { type Face, faceFor, inField, pressKey } from "../../src/screens/face.ts";
import { keymap } from "../../src/screens/keys.ts";
import type { Screen } from "../../src/screens/screen.ts";
import { typeInto } from "../../src/screens/text-field.ts";
import { frameRows } from "./frame-rows.ts";
import { frameSlips, measure } from "./frame-slips.ts";
import { bySize } from "./screen-sizes.ts";
import { allScreens, hardNames, type Shown, screensOfWalk } from "./screens-of-walks.ts";

const small = { columns: 40, rows: 12 };

const lay = (screen: Screen, face: Face, size: ScreenSize) => arrange(screen, face, size, measure);
const pageOf = ({ text, lastScroll }: Arrangement) => ({ textRows: text.lines.length, lastScroll });

/** Faces a screen can have: fresh, help open, last line marked, read to the end, something long and wide typed. */
function facesOf(screen: Screen): readonly (readonly [string, Face])[] {
	const fresh = faceFor(screen);
	const typed = (text: string): Face => ({ ...fresh, field: typeInto(fresh.field, text), row: inField });
	return [
		["fresh", fresh],
		["help", { ...fresh, helpOpen: true }],
		["help read to the end", { ...fresh, helpOpen: true, scroll: 10_000 }],
		["last line", { ...fresh, row: Math.max(0, screen.choices.length - 1) }],
		["read to the end", { ...fresh, scroll: 10_000 }],
		...(screen.typing
			? ([
					["wide letters typed", typed(hardNames.wide)],
					["more typed than fits", typed("x".repeat(200))],
				] as const)
			: []),
	];
}

describe("every screen of every walk", () => {
	test("there are enough of them to mean something", () => {
		const ids = new Set(allScreens.map(({ screen }) => screen.id.split(":")[0]));
		expect(ids.size).toBeGreaterThanOrEqual(13);
		expect(allScreens.length).toBeGreaterThan(200);
	});

	test.each(bySize)("at %s fits, with place, title, marked line, cursor and keys in sight", (_, size) => {
		const found = allScreens.flatMap(({ name, screen }) =>
			facesOf(screen).flatMap(([faceName, face]) =>
				frameSlips(screen, face, size).map((slip) => `${name} (${faceName}): ${slip}`),
			),
		);
		expect(found.slice(0, 10)).toEqual([]);
	});

	test.each(bySize.slice(0, 3))("at %s loses no line of text to Page Down, nor to Page Up", (_, size) => {
		const found = [
			...eachOnce(({ body, side, title }) => [body, side, title]).flatMap((shown) => unread(shown, size, false)),
			...eachOnce(({ help }) => help).flatMap((shown) => unread(shown, size, true)),
		];
		expect(found.slice(0, 10)).toEqual([]);
	});

	test.each(bySize.slice(0, 3))("at %s shows each line of a list once Down has reached it", (_, size) => {
		const found = eachOnce(({ choices }) => choices).flatMap((shown) => unreached(shown, size));
		expect(found.slice(0, 10)).toEqual([]);
	});

	test("has no sign outside ASCII in our own words and the demonstration's", () => {
		const plain = allScreens.filter(({ name }) => !name.startsWith("hard names"));
		const odd = plain.flatMap(({ name, screen }) =>
			facesOf(screen)
				.slice(0, 2)
				.flatMap(([, face]) => {
					const arranged = lay(screen, face, { columns: 80, rows: 24 });
					const words = [...frameRows(arranged, 80).map((row) => row.words), ...(arranged.side ?? [])];
					return words.filter((line) => /[^ -~]/.test(line)).map((line) => `${name}: ${line}`);
				}),
		);
		expect(odd.slice(0, 10)).toEqual([]);
	});

	test.each([[0], [1], [2], [5], [11]])("%s rows, or columns as few, never throw", (few) => {
		for (const { screen } of quiet)
			for (const size of [
				{ columns: 80, rows: few },
				{ columns: few, rows: 24 },
				{ columns: few, rows: few },
			]) {
				const { title, choices } = lay(screen, faceFor(screen), size);
				expect(title.length).toBeLessThanOrEqual(Math.max(0, size.rows - 2));
				expect(choices.lines).toEqual([]);
			}
	});
});

/** One screen of those that are alike in something. */
function eachOnce(part: (screen: Screen) => unknown): readonly Shown[] {
	return [...new Map(allScreens.map((shown) => [JSON.stringify(part(shown.screen)), shown])).values()];
}

/** Lines of text that paging down and up again does not bring on screen. */
function unread({ name, screen }: Shown, size: ScreenSize, helpOpen: boolean): readonly string[] {
	let face: Face = { ...faceFor(screen), helpOpen };
	const seen = (key: "page-down" | "page-up"): ReadonlyMap<number, string> => {
		const lines = new Map<number, string>();
		for (let guard = 0; guard < 3000; guard++) {
			const arranged = lay(screen, face, size);
			arranged.text.lines.forEach((line, index) => {
				lines.set(arranged.text.first + index, line);
			});
			const after = pressKey(screen, face, { name: key }, pageOf(arranged)).face;
			if (after.scroll === face.scroll) break;
			face = after;
		}
		return lines;
	};
	const down = seen("page-down");
	const up = seen("page-up");
	const { mainColumns, between } = lay(screen, { ...face, scroll: 0 }, size);
	const wanted = blockLines(helpOpen ? screen.help : screen.body, mainColumns, measure);
	const read = Array.from({ length: down.size }, (_, index) => down.get(index));
	const isWhole = read.join("\n").includes(wanted.join("\n"));
	const firstScreen = lay(screen, { ...faceFor(screen), helpOpen }, size).text.lines.length;
	return [
		...(isWhole ? [] : [`${name}: only ${read.length} lines`]),
		...(up.size === down.size ? [] : [`${name}: ${up.size} of ${down.size} lines going up`]),
		...(firstScreen === down.size || between?.includes("Page Down")
			? []
			: [`${name}: nothing says that there is more`]),
	];
}

/** Lines of a list that are not whole on screen when the mark stands on them. */
function unreached({ name, screen }: Shown, size: ScreenSize): readonly string[] {
	let face = faceFor(screen);
	for (let row = screen.choices.length; row >= 0; row--) face = step(screen, face, "up", size);
	if (screen.typing?.kind === "value" || screen.typing?.kind === "page") face = step(screen, face, "down", size);
	return screen.choices.flatMap((choice, index) => {
		if (index > 0) face = step(screen, face, "down", size);
		const arranged = lay(screen, face, size);
		const marked = arranged.choices.lines.find((line) => line.marked);
		const { lines = [], headingLines = 0, labelLines = 0 } = marked ?? {};
		const words = lines.slice(headingLines, headingLines + labelLines).join("");
		const label = withoutSpaces(markWords(choice) + choice.label);
		const isWhole = withoutSpaces(words).startsWith(label);
		// On the smallest terminal a name of four lines is cut.
		const isCut = size.rows === small.rows && label.startsWith(withoutSpaces(words));
		const counted = arranged.choices.lines.length === screen.choices.length || arranged.between?.includes(" of ");
		return [
			...(face.row === index && words !== "" && (isWhole || isCut) ? [] : [`${name}: line ${index}: ${words}`]),
			...(counted ? [] : [`${name}: nothing says that the list is longer`]),
		];
	});
}

function step(screen: Screen, face: Face, name: "up" | "down", size: ScreenSize): Face {
	return pressKey(screen, face, { name }, pageOf(lay(screen, face, size))).face;
}

function withoutSpaces(text: string): string {
	return text.replaceAll(" ", "");
}

const quiet = screensOfWalk("quiet desk");
const menu = () => quiet.find(({ screen }) => screen.id === "menu")?.screen as Screen;
const question = (id: string) => quiet.find(({ screen }) => screen.id === `question:${id}`)?.screen as Screen;

describe("boards left", () => {
	const screen: Screen = {
		...question("features/rear-usb-c"),
		side: [
			{ kind: "text", text: "7 of 12 boards left." },
			{ kind: "list", items: Array.from({ length: 40 }, (_, index) => `Reason ${index}: some board`) },
		],
	};

	test.each([
		[75, false],
		[76, true],
		[200, true],
	])("at %s columns stand beside the question: %s", (columns, isBeside) => {
		const arranged = lay(screen, faceFor(screen), { columns, rows: 24 });
		expect(arranged.side !== null).toBe(isBeside);
		expect(arranged.text.lines.includes("7 of 12 boards left.")).toBe(!isBeside);
	});

	test("are cut to what fits, and say where the rest is", () => {
		const beside = lay(screen, faceFor(screen), { columns: 80, rows: 24 });
		expect(beside.side?.at(-1)).toBe("... more: Tab, Boards left");
		const above = lay(screen, faceFor(screen), { columns: 60, rows: 24 });
		expect(above.text.lines.slice(0, 4)).toEqual([
			"7 of 12 boards left.",
			"- Reason 0: some board",
			"- Reason 1: some board",
			"... more: Tab, Boards left",
		]);
	});

	test("give way to the help", () => {
		const arranged = lay(screen, { ...faceFor(screen), helpOpen: true }, { columns: 80, rows: 24 });
		expect(arranged.side).toBeNull();
		expect(arranged.mainColumns).toBe(80);
	});
});

describe("the help", () => {
	test("holds why we ask and the keys that count here, and hides the list", () => {
		const screen = question("fit/processor");
		const arranged = lay(screen, { ...faceFor(screen), helpOpen: true }, { columns: 120, rows: 60 });
		const words = arranged.text.lines.join("\n");
		expect(words).toContain("Why we ask");
		expect(words).toContain("Where to find it");
		for (const { keys, does } of keymap) expect(words).toContain(`- ${keys}: ${does}`);
		expect(arranged.choices.lines).toEqual([]);
		expect(arranged.field).toBeNull();
	});

	test("names no key of fields where nothing can be typed", () => {
		const words = lay(menu(), { ...faceFor(menu()), helpOpen: true }, { columns: 120, rows: 60 }).text.lines.join("\n");
		expect(words).not.toContain("Ctrl+W");
		expect(words).toContain("1 to 9");
	});
});

describe("the footer", () => {
	const footer = (screen: Screen, face: Face, size: ScreenSize) => lay(screen, face, size).footer;

	test("says what Enter does now", () => {
		const budget = question("about/budget");
		const wide = { columns: 120, rows: 40 };
		expect(footer(menu(), faceFor(menu()), wide)).toEqual([
			"Up/Down move   Enter choose   Esc back   ? help   Tab more",
		]);
		expect(footer(budget, faceFor(budget), wide)[0]).toContain("Enter keep your answer");
		const fresh = { ...budget, enter: null };
		// Below the field for the limit stand usual shares of the whole sum; below that for the sum only "not sure".
		expect(footer(fresh, faceFor(fresh), wide)[0]).toContain("Down pick a line   type, then Enter");
		const sum = { ...question("about/money-in-all"), enter: null };
		expect(footer(sum, faceFor(sum), wide)[0]).toContain("Down not sure   type, then Enter");
		const typed = { ...faceFor(budget), field: { text: "180", cursor: 3 } };
		expect(footer(budget, typed, wide)[0]).toContain("Enter take it");
		expect(footer(budget, { ...typed, row: 0 }, wide)[0]).toContain("Enter choose");
		expect(footer(question("fit/case"), faceFor(question("fit/case")), wide)[0]).toContain("type to find");
	});

	test("names no line that a search has put out of sight", () => {
		const screen = question("fit/case");
		const nothingFound = { ...faceFor(screen), row: -1, field: { text: "zither", cursor: 6 } };
		expect(footer(screen, nothingFound, { columns: 120, rows: 40 })[0]).toMatch(/^Up\/Down move {3}Enter take it/);
	});

	test("never breaks a line inside a piece", () => {
		expect(footer(question("fit/case"), faceFor(question("fit/case")), { columns: 60, rows: 20 })).toEqual([
			"Up/Down move   Enter choose   type to find   Esc back",
			"? help   Tab more   * words",
		]);
	});

	test("is one line on a low terminal", () => {
		expect(footer(question("fit/case"), faceFor(question("fit/case")), small)).toEqual([
			"Enter choose  Esc back  ? help  Tab more",
		]);
	});
});

describe("a list longer than its window", () => {
	const long: Screen = {
		...menu(),
		body: [],
		choices: Array.from({ length: 40 }, (_, index) => ({ label: `Line ${index + 1}`, event: { type: "next" } })),
	};

	test("is shown around the mark, and counted", () => {
		const arranged = lay(long, { ...faceFor(long), row: 20 }, { columns: 80, rows: 24 });
		const labels = arranged.choices.lines.map(({ lines }) => lines[0]);
		expect(labels).toContain("Line 21");
		expect(labels.indexOf("Line 21")).toBeGreaterThan(4);
		expect(labels.length - labels.indexOf("Line 21")).toBeGreaterThan(4);
		expect(arranged.between).toBe(
			`choices ${arranged.choices.first + 1}-${arranged.choices.first + labels.length} of 40`,
		);
		expect(arranged.choices).toMatchObject({ above: true, below: true });
	});

	test("is counted in fewer words where the row is narrow", () => {
		const screen: Screen = {
			...long,
			body: Array.from({ length: 40 }, (_, index) => ({ kind: "text", text: `Piece ${index}` })),
			choices: Array.from({ length: 112 }, (_, index) => ({ label: `Line ${index + 1}`, event: { type: "next" } })),
		};
		const face = { ...faceFor(screen), row: 100, scroll: 5 };
		expect(lay(screen, face, small).between).toMatch(/^\.{3} Page Up\/Down {3}\d+-\d+ of 112$/);
		const wide = lay(screen, face, { columns: 60, rows: 12 }).between;
		expect(wide).toMatch(/^\.{3} more: Page Up\/Down {3}choices \d+-\d+ of 112$/);
	});

	test("shows its first and last lines whole at its ends", () => {
		const size = { columns: 80, rows: 24 };
		expect(lay(long, { ...faceFor(long), row: 0 }, size).choices).toMatchObject({
			first: 0,
			above: false,
			below: true,
		});
		const end = lay(long, { ...faceFor(long), row: 39 }, size).choices;
		expect(end).toMatchObject({ above: true, below: false });
		expect(end.lines.at(-1)).toMatchObject({ lines: ["Line 40"], marked: true });
	});

	test("keeps the mark where the list grew shorter meanwhile", () => {
		const arranged = lay({ ...long, choices: long.choices.slice(0, 3) }, { ...faceFor(long), row: 30 }, small);
		expect(arranged.choices.lines.map(({ marked }) => marked)).toEqual([false, false, true]);
	});
});

describe("a field", () => {
	const budget = question("about/budget");
	const fieldWith = (text: string, cursor: number, columns = 60) =>
		lay(budget, { ...faceFor(budget), field: { text, cursor } }, { columns, rows: 20 });

	test("shows what is typed, with the cursor behind its prompt", () => {
		expect(fieldWith("", 0)).toMatchObject({ field: { prompt: "Type: ", text: "", cursorColumn: 6 } });
		expect(fieldWith("180", 1).cursor.x).toBe(7);
	});

	test("counts cells, not letters", () => {
		expect(fieldWith("矢車菊", 2).cursor.x).toBe(10);
		expect(fieldWith("e\u0301e\u0301", 1).cursor.x).toBe(7);
	});

	test.each([0, 50, 100, 200])("longer than its line keeps the cursor in sight at %s", (cursor) => {
		const text = Array.from({ length: 200 }, (_, index) => String(index % 10)).join("");
		const { field } = fieldWith(text, cursor);
		expect(measure(`${field?.prompt}${field?.text}`)).toBeLessThanOrEqual(60);
		expect(field?.cursorColumn).toBeGreaterThanOrEqual(6);
		expect(field?.cursorColumn).toBeLessThanOrEqual(59);
		// What stands before the cursor is what was typed before it.
		const before = field?.text.slice(0, (field?.cursorColumn ?? 0) - 6);
		expect(text.slice(0, cursor).endsWith(before ?? "-")).toBe(true);
	});
});

describe("a terminal too small", () => {
	test.each([
		[{ columns: 39, rows: 12 }, true],
		[{ columns: 40, rows: 11 }, true],
		[smallest, false],
		[{ columns: 0, rows: 0 }, true],
	])("%o: %s", (size, expected) => expect(isTooSmall(size)).toBe(expected));

	test("says so, what is needed, and that nothing is lost", () => {
		const arranged = lay(menu(), faceFor(menu()), { columns: 39, rows: 11 });
		expect([arranged.place, ...arranged.title].join(" ")).toBe(
			"This window is too small: at least 40 columns and 12 rows are needed. Nothing is lost. Make it larger to go on, or press Ctrl+C to leave.",
		);
		for (const line of [arranged.place, ...arranged.title]) expect(line.length).toBeLessThanOrEqual(39);
	});
});

describe("cutTo", () => {
	test("cuts by cells, and never through a letter", () => {
		expect(cutTo("矢車菊", 5, measure)).toBe("矢車");
		expect(cutTo("ab", 5, measure)).toBe("ab");
		expect(cutTo("xe\u0301\u0301y", 2, measure)).toBe("xe\u0301\u0301");
		expect(cutTo("a👩‍👩‍👧‍👦b", 2, measure)).toBe("a");
		expect(cutTo("abc", 0, measure)).toBe("");
	});
});
