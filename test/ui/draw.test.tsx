import stringWidth from "string-width";
import { describe, expect, test } from "vitest";
import { type Arrangement, arrange, type ScreenSize } from "../../src/screens/arrange.ts";
import { type Face, faceFor, type PageSize, pressKey } from "../../src/screens/face.ts";
import { withWordsMarked } from "../../src/screens/marked-words.ts";
import type { Screen } from "../../src/screens/screen.ts";
import { frameRows } from "../screens/frame-rows.ts";
import { bySize } from "../screens/screen-sizes.ts";
import { screensOfWalk } from "../screens/screens-of-walks.ts";
import { DrawnTerminal } from "./drawn-terminal.ts";

const quiet = screensOfWalk("quiet desk");

/** The rows that an arrangement is to be drawn as, each as a terminal shows it, and one left empty at the bottom. */
function wantedRows(arranged: Arrangement, { columns }: ScreenSize, mark: string): string[] {
	const { title, message, air, text, between, field } = arranged;
	const above = 1 + title.length + message.length + air + text.lines.length;
	const listAt = above + (between === null ? 0 : 1) + (field ? 1 : 0);
	const rows = frameRows(arranged, columns).map(({ words, isMarked, isHeading }, row) => {
		const isInList = row >= listAt && row < listAt + listRows(arranged);
		const own = isInList && !isHeading ? `${isMarked ? mark : " "} ${words}` : words;
		const beside = arranged.side?.[row];
		const padding = " ".repeat(Math.max(0, arranged.mainColumns + 2 - stringWidth(own)));
		return (beside === undefined ? own : own + padding + beside).trimEnd();
	});
	return [...rows, ""];
}

function listRows({ choices }: Arrangement): number {
	return choices.lines.reduce((sum, { lines }) => sum + lines.length, 0);
}

const lay = (screen: Screen, face: Face, size: ScreenSize) => arrange(withWordsMarked(screen), face, size, stringWidth);

describe("what is drawn", () => {
	test.each(bySize)("at %s is what was arranged, row by row, for every place of a walk", async (_, size) => {
		const places = new Map(quiet.map((shown) => [shown.screen.id.split(":")[0], shown]));
		// A list with headings and marks, and one with words above it.
		const chosen = [
			...places.values(),
			...quiet.filter(({ screen }) => screen.problem !== null || screen.id === "question:fit/drives"),
		];
		const terminal = new DrawnTerminal(size);
		for (const { name, screen } of chosen)
			for (const face of [faceFor(screen), { ...faceFor(screen), helpOpen: true }, lastMarked(screen)]) {
				terminal.drawing.show(screen, face, false);
				const wanted = wantedRows(lay(screen, face, size), size, "❯");
				expect(await terminal.settled(wanted), name).toEqual(wanted);
			}
		terminal.drawing.stop();
		expect(terminal.scrolledOut()).toBe(0);
		// A frame as high as the terminal would wipe it, scrolled lines and all.
		expect(terminal.written).not.toContain("\u001b[2J");
		expect(terminal.written).not.toContain("\u001b[3J");
	});

	test("while a long step is worked out a word stands in place of the keys, and nothing moves", async () => {
		const size = { columns: 60, rows: 20 };
		const terminal = new DrawnTerminal(size);
		const screen = quiet.find((shown) => shown.screen.id === "question:fit/case")?.screen as Screen;
		const before = lay(screen, faceFor(screen), size);
		expect(before.footer.length).toBe(2);
		terminal.drawing.show(screen, faceFor(screen), false, "Working it out ...");
		const busy = wantedRows({ ...before, footer: ["Working it out ...", ""] }, size, "❯");
		expect(await terminal.settled(busy)).toEqual(busy);
		terminal.drawing.show(screen, faceFor(screen), false);
		const after = wantedRows(before, size, "❯");
		expect(await terminal.settled(after)).toEqual(after);
		terminal.drawing.stop();
	});

	test("the real cursor stands on the marked line, or in the field", async () => {
		const size = { columns: 80, rows: 24 };
		const terminal = new DrawnTerminal(size);
		for (const id of ["menu", "question:fit/case", "question:about/budget", "settings"]) {
			const screen = quiet.find((shown) => shown.screen.id === id)?.screen as Screen;
			const face = { ...faceFor(screen), field: { text: screen.typing ? "ab" : "", cursor: screen.typing ? 1 : 0 } };
			terminal.drawing.show(screen, face, true);
			const arranged = lay(screen, face, size);
			await terminal.settled(wantedRows(arranged, size, ">"));
			expect(terminal.cursor()).toEqual(arranged.cursor);
		}
		terminal.drawing.stop();
	});

	test("wide letters, marks and emoji stand in their own cells and push nothing over", async () => {
		const size = { columns: 60, rows: 20 };
		const terminal = new DrawnTerminal(size);
		const hard = screensOfWalk("hard names").filter(({ screen }) => /question:fit|review|shortlist/.test(screen.id));
		for (const { screen } of hard) {
			const face = faceFor(screen);
			terminal.drawing.show(screen, face, false);
			// What a terminal makes of emoji differs; where the keys stand must not.
			const wanted = [...lay(screen, face, size).footer, ""];
			const rows = await terminal.settled(wanted, "end");
			expect(rows.slice(-wanted.length)).toEqual(wanted);
		}
		terminal.drawing.stop();
		expect(terminal.scrolledOut()).toBe(0);
	});

	test("nothing outside ASCII is drawn where only ASCII is wanted", async () => {
		const terminal = new DrawnTerminal({ columns: 80, rows: 24 });
		for (const { screen } of quiet.slice(0, 40)) {
			terminal.drawing.show(screen, faceFor(screen), true);
			const wanted = wantedRows(
				lay(screen, faceFor(screen), { columns: 80, rows: 24 }),
				{ columns: 80, rows: 24 },
				">",
			);
			expect(await terminal.settled(wanted)).toEqual(wanted);
		}
		terminal.drawing.stop();
		expect([...terminal.written].filter((sign) => sign > "~")).toEqual([]);
	});

	test("tells how far page keys go on what is on screen", () => {
		const size = { columns: 80, rows: 24 };
		const terminal = new DrawnTerminal(size);
		const board = quiet.find(({ screen }) => screen.id.startsWith("board:"))?.screen as Screen;
		const page: PageSize = terminal.drawing.show(board, faceFor(board), false);
		terminal.drawing.stop();
		const arranged = lay(board, faceFor(board), size);
		const { text, lastScroll, sourcesFrom } = arranged;
		expect(page).toEqual({ textRows: text.lines.length, lastScroll, sourcesFrom });
		expect(pressKey(board, faceFor(board), { name: "page-down" }, page).face.scroll).toBeGreaterThan(0);
	});

	test("draws everything anew after it was stopped and started", async () => {
		const size = { columns: 60, rows: 20 };
		const [first, second] = [new DrawnTerminal(size), new DrawnTerminal(size)];
		const { screen } = quiet.find((shown) => shown.screen.id === "menu") ?? { screen: null as never };
		first.drawing.show(screen, faceFor(screen), false);
		first.drawing.stop();
		second.drawing.show(screen, faceFor(screen), false);
		const wanted = wantedRows(lay(screen, faceFor(screen), size), size, "❯");
		expect(await second.settled(wanted)).toEqual(wanted);
		second.drawing.stop();
	});
});

function lastMarked(screen: Screen): Face {
	return { ...faceFor(screen), row: Math.max(0, screen.choices.length - 1) };
}
