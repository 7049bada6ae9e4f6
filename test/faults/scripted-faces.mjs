// The program under way, over a pipe or in a terminal, seen as one screen after another.

import { spawn } from "node:child_process";
import headless from "@xterm/headless";

/** The pseudo-terminal's native module, or null on a machine where it cannot be loaded. */
export const pty = await import("@lydell/node-pty").catch(() => null);

/**
 * @typedef {object} Start
 * @property {string} program
 * @property {string} home
 * @property {readonly string[]} words
 *
 * @typedef {object} Face a program that runs
 * @property {() => Promise<string | null>} next the next screen as text; null once the program has ended
 * @property {(text: string) => void} send
 * @property {() => Promise<void>} kill with SIGKILL; done once it is gone
 * @property {() => Promise<string>} ended waits for its own end, and tells all that was said
 */

/** @param {string} home */
const environment = (home) => ({
	PATH: process.env["PATH"] ?? "",
	HOME: home,
	TERM: "xterm-256color",
	LANG: "C.UTF-8",
});

/**
 * @param {Start} start
 * @returns {Face}
 */
export function overPipe({ program, home, words }) {
	const child = spawn(process.execPath, [program, ...words], { cwd: home, env: environment(home) });
	let said = "";
	let seen = 0;
	let isOver = false;
	let tell = () => {};
	const over = new Promise((resolve) => child.once("close", resolve)).then(() => {
		isOver = true;
		tell();
	});
	for (const stream of [child.stdout, child.stderr])
		stream.setEncoding("utf8").on("data", (text) => {
			said += text;
			tell();
		});
	child.stdin.on("error", () => {});
	return {
		next: async () => {
			for (;;) {
				const end = said.indexOf("\n> ", seen);
				if (end >= 0) {
					const screen = said.slice(seen, end);
					seen = end + 3;
					return screen;
				}
				if (isOver) return null;
				await new Promise((resolve) => {
					tell = () => resolve(null);
				});
			}
		},
		send: (text) => child.stdin.write(`${text}\n`),
		kill: async () => {
			child.kill("SIGKILL");
			await over;
		},
		ended: async () => {
			child.stdin.end();
			await over;
			return said;
		},
	};
}

/**
 * @param {Start & { titles: readonly string[] }} start `titles` tell one screen from the next
 * @returns {Face}
 */
export function inTerminal({ program, home, words, titles }) {
	if (!pty) throw new Error("No pseudo-terminal here: @lydell/node-pty does not load.");
	const screen = new headless.Terminal({ cols: 80, rows: 30, allowProposedApi: true });
	const child = pty.spawn(process.execPath, [program, ...words], {
		cols: 80,
		rows: 30,
		cwd: home,
		env: environment(home),
	});
	let isOver = false;
	let tell = () => {};
	/** @type {string | undefined} */
	let last;
	let said = "";
	child.onData((data) => {
		said += data;
		screen.write(data, () => tell());
	});
	const over = new Promise((resolve) => child.onExit(resolve)).then(() => {
		isOver = true;
		tell();
	});
	const text = () => {
		const { active } = screen.buffer;
		return Array.from({ length: 30 }, (_, row) => active.getLine(row)?.translateToString(true) ?? "").join("\n");
	};
	return {
		next: async () => {
			for (;;) {
				const now = text();
				const title = titles.find((one) => now.includes(one));
				if (title !== undefined && title !== last) {
					last = title;
					return now;
				}
				if (isOver) return null;
				await new Promise((resolve) => {
					tell = () => resolve(null);
				});
			}
		},
		send: (keys) => child.write(keys),
		kill: async () => {
			try {
				process.kill(child.pid, "SIGKILL");
			} catch {
				// It ended by itself.
			}
			await over;
		},
		ended: async () => {
			await over;
			return said;
		},
	};
}
