import { expect, test } from "vitest";
import { DrawnTerminal } from "./drawn-terminal.ts";

test("cells tell what a frame looks like: weight, colour, and how wide a sign is", async () => {
	const terminal = new DrawnTerminal({ columns: 8, rows: 2 });
	terminal.write("\u001b[1;36m>\u001b[0m箱\u001b[2md\u001b[22;4mu\u001b[0m");
	const [first = [], second = []] = await terminal.cells();
	const none = { columns: 1, bold: false, dim: false, underline: false, colour: null };
	expect(first.slice(0, 5)).toEqual([
		{ ...none, sign: ">", bold: true, colour: 6 },
		{ ...none, sign: "箱", columns: 2 },
		{ ...none, sign: "d", dim: true },
		{ ...none, sign: "u", underline: true },
		{ ...none, sign: " " },
	]);
	expect([first, second].map((row) => row.reduce((sum, { columns }) => sum + columns, 0))).toEqual([8, 8]);
	terminal.drawing.stop();
});
