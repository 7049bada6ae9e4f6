import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { IPty } from "@lydell/node-pty";
import headless from "@xterm/headless";

/** The built program. */
export const program = fileURLToPath(new URL("../../bin/boardwalk.js", import.meta.url));

/** The pseudo-terminal's native module, or null on a machine where it cannot be loaded. */
export const pty = await import("@lydell/node-pty").catch(() => null);

/** Said where these tests are skipped. */
export const skipped = "No pseudo-terminal here (@lydell/node-pty does not load): the terminal tests are skipped.";

export const keys = {
	up: "\u001b[A",
	down: "\u001b[B",
	left: "\u001b[D",
	end: "\u001b[F",
	pageDown: "\u001b[6~",
	pageUp: "\u001b[5~",
	enter: "\r",
	escape: "\u001b",
	tab: "\t",
	interrupt: "\u0003",
	suspend: "\u001a",
	pasteStart: "\u001b[200~",
	pasteEnd: "\u001b[201~",
} as const;

/** From the start to the first question of Fit, on the short walk: alone, for writing, 900 in all, 180 for the board. */
export const keysToFit = [
	...[keys.enter, keys.enter, keys.enter],
	...[" ", keys.enter, "900", keys.enter, "180", keys.enter],
].join("");

/** A home folder of its own, so that no test meets another's walks or settings. */
export interface Home {
	readonly folder: string;
	/** Where the program writes sheets. */
	readonly desk: string;
	readonly walks: string;
	readonly settings: string;
	/** The walks kept in it, as parsed, in order of their names. */
	readonly keptWalks: () => readonly { readonly answers: Readonly<Record<string, { readonly value?: unknown }>> }[];
	readonly remove: () => void;
}

export function newHome(): Home {
	const folder = mkdtempSync(join(tmpdir(), "terminal-"));
	const desk = join(folder, "desk");
	mkdirSync(desk);
	const walks = join(folder, ".local", "state", "boardwalk", "walks");
	return {
		folder,
		desk,
		walks,
		settings: join(folder, ".config", "boardwalk", "settings.json"),
		keptWalks: () =>
			readdirSync(walks)
				.filter((name) => name.endsWith(".json"))
				.sort()
				.map((name) => JSON.parse(readFileSync(join(walks, name), "utf8"))),
		remove: () => rmSync(folder, { recursive: true, force: true }),
	};
}

export interface StartOptions {
	readonly home: Home;
	/** In place of the program: a command and its words. */
	readonly command?: readonly [string, ...string[]];
	readonly words?: readonly string[];
	readonly columns?: number;
	readonly rows?: number;
	/** On top of a small clean environment without CI. */
	readonly environment?: Readonly<Record<string, string>>;
}

/** How long anything may take before a test gives up on it, on a busy machine. */
const patienceMs = 15_000;

/** A program in a terminal as a person has it: a screen that obeys escape codes, and a keyboard. */
export class RealTerminal {
	/** Everything the program sent, as it was sent. */
	sent = "";
	/** How many characters of that are on screen by now. */
	shown = 0;
	/** Set once the program has ended. */
	exitCode: number | null = null;
	readonly pid: number;
	private readonly child: IPty;
	private readonly screen: InstanceType<typeof headless.Terminal>;
	private isClosed = false;
	private readonly watchers = new Set<() => void>();

	constructor({ home, command, words = [], columns = 80, rows = 24, environment = {} }: StartOptions) {
		if (!pty) throw new Error(skipped);
		const [file, ...args] = command ?? [process.execPath, program, ...words];
		this.screen = new headless.Terminal({ cols: columns, rows, allowProposedApi: true, scrollback: 1000 });
		this.child = pty.spawn(file, args, {
			name: environment["TERM"] ?? "xterm-256color",
			cols: columns,
			rows,
			cwd: home.desk,
			env: {
				PATH: process.env["PATH"] ?? "",
				HOME: home.folder,
				TERM: "xterm-256color",
				LANG: "C.UTF-8",
				...environment,
			},
		});
		this.pid = this.child.pid;
		this.child.onData((data) => {
			this.sent += data;
			this.screen.write(data, () => {
				this.shown += data.length;
				this.tell();
			});
		});
		this.child.onExit(({ exitCode }) => {
			// What is still on its way to the screen is shown first.
			this.screen.write("", () => {
				this.exitCode = exitCode;
				this.tell();
			});
		});
	}

	private tell(): void {
		for (const watcher of [...this.watchers]) watcher();
	}

	/** The rows now on screen, without what trails on the right. */
	rows(): string[] {
		const { active } = this.screen.buffer;
		return Array.from(
			{ length: this.screen.rows },
			(_, row) => active.getLine(active.viewportY + row)?.translateToString(true) ?? "",
		);
	}

	/** The screen as one text. */
	text(): string {
		return this.rows().join("\n");
	}

	/** The normal screen with everything that was scrolled out of it. */
	history(): string {
		const { normal } = this.screen.buffer;
		return Array.from({ length: normal.length }, (_, row) => normal.getLine(row)?.translateToString(true) ?? "").join(
			"\n",
		);
	}

	isAlternate(): boolean {
		return this.screen.buffer.active.type === "alternate";
	}

	/** Row and column of the real cursor, from 0. */
	cursor(): { readonly x: number; readonly y: number } {
		return { x: this.screen.buffer.active.cursorX, y: this.screen.buffer.active.cursorY };
	}

	/** Whether bracketed paste is on. */
	takesPaste(): boolean {
		return this.screen.modes.bracketedPasteMode;
	}

	/** The codes of colour and weight that were sent, such as "1" for bold. */
	colourCodes(): string[] {
		return this.sent.split("\u001b[").flatMap((piece) => /^([\d;]*)m/.exec(piece)?.[1] ?? []);
	}

	/** Whether the program left the cursor shown. */
	showsCursor(): boolean {
		return this.sent.lastIndexOf("\u001b[?25h") >= this.sent.lastIndexOf("\u001b[?25l");
	}

	/** The row the mark stands on, without the mark, or null. */
	marked(): string | null {
		const row = this.rows().find((line) => /^[❯>] /.test(line));
		return row === undefined ? null : row.slice(2);
	}

	press(bytes: string): void {
		this.child.write(bytes);
	}

	resize(columns: number, rows: number): void {
		this.screen.resize(columns, rows);
		this.child.resize(columns, rows);
	}

	signal(name: NodeJS.Signals): void {
		process.kill(this.pid, name);
	}

	/** Closes the window: the terminal goes away under the program, whose end is then no longer heard of. */
	closeWindow(): void {
		this.isClosed = true;
		(this.child as unknown as { destroy(): void }).destroy();
	}

	/** Waits for words or a state of the screen. */
	async waitFor(wanted: string | RegExp | ((terminal: RealTerminal) => boolean)): Promise<void> {
		const holds = () =>
			typeof wanted === "string"
				? this.text().includes(wanted)
				: wanted instanceof RegExp
					? wanted.test(this.text())
					: wanted(this);
		await this.wait(holds, String(wanted));
	}

	/** Waits until the program has ended; gives its exit code. */
	async ended(): Promise<number> {
		await this.wait(() => this.exitCode !== null, "the end of the program");
		return this.exitCode ?? -1;
	}

	private wait(holds: () => boolean, words: string): Promise<void> {
		return new Promise((resolve, reject) => {
			const stop = () => {
				clearTimeout(timer);
				clearInterval(poll);
				this.watchers.delete(look);
			};
			const look = () => {
				if (!holds()) return;
				stop();
				resolve();
			};
			const timer = setTimeout(() => {
				stop();
				const tail = JSON.stringify(this.sent.slice(-600));
				reject(new Error(`Waited in vain for ${words}.\nOn screen:\n${this.text()}\nLast bytes: ${tail}`));
			}, patienceMs);
			// What holds may lie outside the screen, such as in a file.
			const poll = setInterval(look, 20);
			this.watchers.add(look);
			look();
		});
	}

	/** Ends the program if it still runs, and waits until it has, so that it writes nothing any more. */
	async kill(): Promise<void> {
		if (this.exitCode !== null || this.isClosed) return;
		try {
			process.kill(this.pid, "SIGKILL");
		} catch {
			// It ended by itself.
		}
		await this.ended();
	}
}
