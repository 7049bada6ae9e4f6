import stringWidth from "string-width";
import { expect, test } from "vitest";
import { arrange } from "../../src/screens/arrange.ts";
import { faceFor } from "../../src/screens/face.ts";
import { withWordsMarked } from "../../src/screens/marked-words.ts";
import type { Place } from "../../src/walk/walk-state.ts";
import { hardNamesBySort, walkWithNames } from "../screens/hard-names.ts";
import { screenAt } from "../screens/screen-words.ts";
import { demo } from "../walk/walk-in-demo.ts";
import { DrawnTerminal } from "./drawn-terminal.ts";

/**
 * Turns off that a terminal begins another line by itself where a row is too long for it. Many count the signs of a
 * joined emoji one by one, so that a row of the right width for us is too wide for them.
 */
const noWrap = "\u001b[?7l";

const places: readonly Place[] = [
	{ at: "question", id: "fit/case" },
	{ at: "review" },
	{ at: "shortlist" },
	{ at: "board", boardId: "own-board" },
	{ at: "board", boardId: "own-board", page: "plan" },
	{ at: "board", boardId: "own-board", page: "power" },
	{ at: "saved-walks" },
	{ at: "kept-walk", file: "/home/somebody/walk.json" },
];

test.each(Object.entries(hardNamesBySort))(
	"%s push no line off the screen, and the real cursor stands on the marked row",
	async (sort, name) => {
		const state = walkWithNames(name, demo);
		for (const size of [
			{ columns: 80, rows: 24 },
			{ columns: 60, rows: 20 },
		]) {
			for (const place of places) {
				const terminal = new DrawnTerminal(size);
				if (sort.startsWith("emoji")) terminal.write(noWrap);
				const screen = screenAt(demo, state, place);
				terminal.drawing.show(screen, faceFor(screen), false);
				const arranged = arrange(withWordsMarked(screen), faceFor(screen), size, stringWidth);
				const wanted = [...arranged.footer, ""];
				const rows = await terminal.settled(wanted, "end");
				const said = `${JSON.stringify(place)}\n${rows.join("\n")}`;
				expect(rows.slice(-wanted.length), said).toEqual(wanted);
				expect(rows[0]?.startsWith(arranged.place), said).toBe(true);
				expect(
					rows.flatMap((row, index) => (row.startsWith("❯ ") ? index : [])),
					said,
				).toEqual([arranged.cursor.y]);
				expect(terminal.cursor().y, said).toBe(arranged.cursor.y);
				expect(terminal.scrolledOut(), said).toBe(0);
				terminal.drawing.stop();
			}
		}
	},
);
