import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import headless from "@xterm/headless";
import { demoMarket } from "../../src/cli/demo-market.ts";
import { printFigure } from "./figure.ts";
import { pause } from "./stop-watch.ts";

/** A key held down: so many a second for so many seconds, in the program as it is built, in a real terminal. */
const [perSecond, seconds] = [30, 5];
const keys = perSecond * seconds;
const patienceMs = 120_000;
const enter = "\r";
/** From the start to the list of processors, on the short walk. */
const toTheList = [enter, enter, enter, " ", enter, "900", enter, "180", enter].join("");

const pty = createRequire(join(process.cwd(), "package.json"))("@lydell/node-pty") as typeof import("@lydell/node-pty");
const demo = demoMarket();

for (const boardCount of [100, 10_000]) {
	const reached = await hold(boardCount);
	printFigure({
		name: `keys lost of ${keys}, Down held at ${perSecond} a second in a list, 80x24, ${boardCount} boards`,
		value: keys - reached,
		unit: "keys",
		reference: keys,
		referenceWork: "keys sent",
		ratio: (keys - reached) / keys,
		limit: 0,
	});
}
process.exit();

/** Holds the key, and tells how many lines further the mark stands. */
async function hold(boardCount: number): Promise<number> {
	const home = mkdtempSync(join(tmpdir(), "held-key-"));
	const parts = join(home, "parts.json");
	const [processor] = demo.parts.processor;
	const boards = Array.from({ length: boardCount }, (_, index) => {
		const board = demo.parts.board[index % demo.parts.board.length];
		return { ...board, id: `board-${index + 1}`, name: `${board?.name} ${index + 1}` };
	});
	const processors = Array.from({ length: keys + 50 }, (_, index) => ({
		...processor,
		id: `line-${index + 1}`,
		name: `Line ${String(index + 1).padStart(3, "0")}`,
	}));
	writeFileSync(parts, JSON.stringify({ schema: "boardwalk/parts@1", boards, processors }));
	const screen = new headless.Terminal({ cols: 80, rows: 24, allowProposedApi: true });
	const child = pty.spawn(process.execPath, [join(process.cwd(), "bin/boardwalk.js"), "--parts", parts], {
		...{ name: "xterm-256color", cols: 80, rows: 24, cwd: home },
		env: { PATH: process.env["PATH"] ?? "", HOME: home, TERM: "xterm-256color", LANG: "C.UTF-8" },
	});
	child.onData((data) => screen.write(data));
	const rows = () =>
		Array.from({ length: 24 }, (_, row) => screen.buffer.active.getLine(row)?.translateToString(true) ?? "");
	const marked = () => Number(/^❯.*Line (\d{3})/.exec(rows().find((row) => row.startsWith("❯")) ?? "")?.[1] ?? 0);
	try {
		await until(() => rows().some((row) => row.startsWith("❯")), rows);
		child.write(toTheList);
		await until(() => marked() === 1, rows);
		for (let key = 0; key < keys; key++) {
			child.write("\u001b[B");
			await pause(1000 / perSecond);
		}
		// What comes later than that was not followed while the key was held, but it was not lost.
		for (let before = -1; before !== marked(); await pause(1000)) before = marked();
		return marked() - 1;
	} finally {
		child.kill("SIGKILL");
		rmSync(home, { recursive: true, force: true });
	}
}

async function until(holds: () => boolean, rows: () => readonly string[]): Promise<void> {
	const giveUpAt = performance.now() + patienceMs;
	while (!holds()) {
		if (performance.now() > giveUpAt) throw new Error(`it did not come:\n${rows().join("\n")}`);
		await pause(50);
	}
}
