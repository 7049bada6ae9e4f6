import quietDesk from "../../data/scenarios/quiet-desk.json" with { type: "json" };
import { demoMarket } from "../../src/cli/demo-market.ts";
import type { AnswersFile } from "../../src/parts/answers-file.ts";
import type { Market } from "../../src/parts/market.ts";
import type { ScreenSize } from "../../src/screens/arrange.ts";
import { type Face, faceFor, type PageSize, pressKey } from "../../src/screens/face.ts";
import type { Key } from "../../src/screens/keys.ts";
import type { Screen } from "../../src/screens/screen.ts";
import { screenOf } from "../../src/screens/screen-of.ts";
import { takeUpWalk } from "../../src/walk/saved-walk.ts";
import { DrawnTerminal } from "../ui/drawn-terminal.ts";
import { printFigure } from "./figure.ts";
import { median } from "./stop-watch.ts";

/** So many boards, and what one repaint may write at most at 80x24, in bytes. */
const boardCount = 100;
const limitBytes = 2500;
const sizes: readonly ScreenSize[] = [
	{ columns: 60, rows: 20 },
	{ columns: 80, rows: 24 },
	{ columns: 120, rows: 40 },
];
/** More than a frame takes at 60 frames a second, so that each key has one of its own; in ms. */
const frameMs = 25;

const file = quietDesk as unknown as AnswersFile;
const demo = demoMarket();
const market: Market = { ...demo, parts: { ...demo.parts, board: demo.parts.board.slice(0, boardCount) } };
if (market.parts.board.length !== boardCount) throw new Error(`only ${market.parts.board.length} boards`);
const context = { market, asOf: file.asOf };
const { state } = takeUpWalk(context, file);

const times = (count: number, name: "up" | "down"): Key[] => Array.from({ length: count }, () => ({ name }));
const text = (words: string): Key[] => [...words].map((letter) => ({ name: "text", text: letter }));
const read: readonly Key[] = [
	...text("?"),
	{ name: "page-down" },
	...times(2, "down"),
	{ name: "page-up" },
	...text("?"),
];
/** What one presses on a screen: up and down the list, digits, the help read on, text read on, letters in a field. */
const keysOf = {
	moves: [...times(12, "down"), ...times(6, "up"), { name: "end" }, { name: "home" }],
	digits: text("3715"),
	read,
	pages: [{ name: "page-down" }, { name: "page-down" }, { name: "page-up" }],
	letters: [...text("tallow"), { name: "backspace" }, { name: "delete-to-start" }],
} as const satisfies Record<string, readonly Key[]>;

const shown: readonly { readonly name: string; readonly screen: Screen; readonly keys: readonly Key[] }[] = [
	{
		name: "a question with a list and a field",
		screen: at({ at: "question", id: "fit/processor" }),
		keys: [...keysOf.moves, ...keysOf.read, ...keysOf.pages, ...keysOf.letters],
	},
	{
		name: "the shortlist",
		screen: at({ at: "shortlist" }),
		keys: [...keysOf.moves, ...keysOf.digits, ...keysOf.read, ...keysOf.pages],
	},
];

for (const size of sizes)
	for (const { name, screen, keys } of shown) {
		const { written, whole } = await press(screen, keys, size);
		if (written.length < 20) throw new Error(`only ${written.length} keys changed anything`);
		const words = `bytes a key press at ${size.columns}x${size.rows} on ${name}, ${boardCount} boards`;
		const isUsual = size.columns === 80;
		const referenceWork = "the same frame on an empty screen";
		for (const [which, value, reference, limit] of [
			["median", median(written), median(whole), null],
			["most", Math.max(...written), Math.max(...whole), isUsual ? limitBytes : null],
		] as const)
			printFigure({
				...{ name: `${words}, ${which} of ${written.length}`, value, unit: "bytes" },
				...{ reference, referenceWork, ratio: value / reference, limit },
			});
	}
process.exit();

function at(place: Parameters<typeof screenOf>[1]["place"]): Screen {
	const screen = screenOf(context, { ...state, place });
	if (!screen) throw new Error(`no screen at ${place.at}`);
	return screen;
}

/** What keys that change the screen write, one by one, and what the same frames take on an empty screen. */
async function press(
	screen: Screen,
	keys: readonly Key[],
	size: ScreenSize,
): Promise<{ readonly written: readonly number[]; readonly whole: readonly number[] }> {
	const [written, whole]: [number[], number[]] = [[], []];
	const terminal = new DrawnTerminal(size);
	let face = faceFor(screen);
	let page = await bytesOf(terminal, screen, face);
	for (const key of keys) {
		face = pressKey(screen, face, key, page.size).face;
		page = await bytesOf(terminal, screen, face);
		// At the end of a list Down changes nothing, and nothing is written.
		if (page.bytes === 0) continue;
		written.push(page.bytes);
		const empty = new DrawnTerminal(size);
		whole.push((await bytesOf(empty, screen, face)).bytes);
		empty.drawing.stop();
	}
	terminal.drawing.stop();
	return { written, whole };
}

/** Draws, waits until the frame is out, and tells how many bytes it took. */
async function bytesOf(
	terminal: DrawnTerminal,
	screen: Screen,
	face: Face,
): Promise<{ readonly bytes: number; readonly size: PageSize }> {
	const before = terminal.written.length;
	const size = terminal.drawing.show(screen, face, false);
	await new Promise((resolve) => setTimeout(resolve, frameMs));
	return { bytes: Buffer.byteLength(terminal.written.slice(before)), size };
}
