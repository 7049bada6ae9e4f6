import { isTooSmall, smallest } from "../screens/arrange.ts";
import { type Face, faceFor, type PageSize, pressKey } from "../screens/face.ts";
import type { Screen } from "../screens/screen.ts";
import type { WalkEvent } from "../walk/walk-event.ts";
import type { Arguments } from "./arguments.ts";
import { type ExitCode, exitCodes } from "./exit-codes.ts";
import { type Keyboard, openKeyboard, type Pressed } from "./keyboard.ts";
import type { Streams } from "./streams.ts";
import { type Helper, openSession, type WalkSession } from "./walk-session.ts";

/**
 * Rows are laid out here, so that the terminal breaks none: one that counts joined signs one by one would push the top row away.
 */
const enterScreen = "\u001b[?1049h\u001b[2J\u001b[H\u001b[?2004h\u001b[?7l";
/** After this long it is clear that the program was not put to sleep, or that it is awake again. */
const notStoppedMs = 100;
const leaveScreen = "\u001b[?7h\u001b[?2004l\u001b[?25h\u001b[?1049l";
/** A wait that is noticed as one (own convention). */
const noticeableMs = 250;

/**
 * The walk, drawn. Keys go in, screens come out; the terminal is put back on every way out: left, Ctrl-C, signals, a
 * closed window, a fault of ours.
 */
export async function drawnWalk(
	args: Arguments,
	streams: Streams,
	today: string,
	terminal: { readonly stream: NodeJS.WriteStream; readonly ascii: boolean },
	helper: Helper | null = null,
): Promise<ExitCode> {
	const session = openSession(args, streams, today, helper);
	const { startDrawing } = await import("../ui/draw.tsx");
	const code = await new Stage(session, terminal, startDrawing).run();
	// On the normal screen, where lines break at words.
	streams.out(session.result(Math.min(78, terminal.stream.columns || 78)));
	streams.err(session.farewell());
	return code;
}

type StartDrawing = typeof import("../ui/draw.tsx").startDrawing;
type Drawing = ReturnType<StartDrawing>;

/** The terminal while the walk is drawn on it. */
class Stage {
	private face: Face | null = null;
	private page: PageSize = { textRows: 1, lastScroll: 0 };
	/** The screen whose problem has been read: it is not said again while it stays. */
	private saidOnce: ReturnType<WalkSession["screen"]> = null;
	/** How long the last step took to work out, in ms. */
	private lastStepMs = 0;
	private keyboard: Keyboard | null = null;
	private drawing: Drawing | null = null;
	private onScreen = false;
	private isOver = false;
	private notStopped: NodeJS.Timeout | undefined;
	/** Where the mark stood in lists that one looks into and comes back to. */
	private readonly leftAt = new Map<string, Face>();
	private finish: (code: ExitCode) => void = () => {};
	private fail: (error: unknown) => void = () => {};
	private readonly session: WalkSession;
	private readonly stream: NodeJS.WriteStream;
	private readonly ascii: boolean;
	private readonly startDrawing: StartDrawing;

	constructor(
		session: WalkSession,
		{ stream, ascii }: { readonly stream: NodeJS.WriteStream; readonly ascii: boolean },
		startDrawing: StartDrawing,
	) {
		this.session = session;
		this.stream = stream;
		this.ascii = ascii;
		this.startDrawing = startDrawing;
	}

	async run(): Promise<ExitCode> {
		const done = new Promise<ExitCode>((resolve, reject) => {
			this.finish = resolve;
			this.fail = reject;
		});
		const undo = this.listen();
		try {
			this.enter();
			this.draw();
			return await done;
		} finally {
			this.isOver = true;
			undo();
			this.leave();
			this.session.close();
		}
	}

	/** Everything from outside that can happen; returns how to stop listening. */
	private listen(): () => void {
		const signals = { SIGINT: exitCodes.interrupted, SIGTERM: exitCodes.terminated, SIGHUP: exitCodes.hungUp } as const;
		const onResize = () => this.redraw();
		// Stopped from outside, the shell may have set the terminal's modes back.
		const onContinue = () => {
			this.leave();
			this.enter(true);
		};
		const onEnd = () => this.stop(exitCodes.hungUp);
		const onExit = () => this.leave();
		// Signals and faults are heard until the end: Ctrl+C pressed twice, or a signal that a library sends once more
		// after its own clean-up, must not cut off the last words.
		for (const [signal, code] of Object.entries(signals)) process.on(signal, () => this.stop(code));
		process.on("SIGCONT", onContinue);
		process.on("exit", onExit);
		process.on("uncaughtException", this.fail);
		process.on("unhandledRejection", this.fail);
		process.stdin.on("end", onEnd);
		process.stdin.on("error", onEnd);
		this.stream.on("resize", onResize);
		return () => {
			process.off("SIGCONT", onContinue);
			process.off("exit", onExit);
			process.stdin.off("end", onEnd);
			process.stdin.off("error", onEnd);
			this.stream.off("resize", onResize);
		};
	}

	private enter(again = false): void {
		if (this.isOver || (again && this.onScreen)) return;
		this.onScreen = true;
		clearTimeout(this.notStopped);
		this.stream.write(enterScreen);
		this.keyboard = openKeyboard(process.stdin, (key) => this.press(key));
		this.drawing = this.startDrawing({ stream: this.stream, size: () => this.size() });
		if (again) this.draw();
	}

	private leave(): void {
		if (!this.onScreen) return;
		this.onScreen = false;
		this.drawing?.stop();
		this.drawing = null;
		this.keyboard?.close();
		this.keyboard = null;
		this.stream.write(leaveScreen);
	}

	private stop(code: ExitCode): void {
		this.session.dispatch({ type: "leave" });
		this.finish(code);
	}

	private size() {
		return { columns: this.stream.columns || smallest.columns, rows: this.stream.rows || smallest.rows };
	}

	private press(key: Pressed): void {
		switch (key.name) {
			case "interrupt":
				this.stop(exitCodes.interrupted);
				return;
			case "suspend":
				this.suspend();
				return;
			case "redraw":
				this.redraw();
				return;
		}
		const screen = this.session.screen();
		if (!screen || isTooSmall(this.size())) return;
		const { face, event } = pressKey(screen, this.faceOn(screen), key, this.page);
		// What was wrong with the last thing typed need not be read any more once one types again.
		if (face !== this.face) this.saidOnce = screen;
		this.face = face;
		if (event) {
			if (isLookedInto(screen.id)) this.leftAt.set(screen.id, face);
			const next = this.screenAfter(event, screen);
			if (!next) {
				this.finish(this.session.exitCode());
				return;
			}
			// What was typed stays for mending when it was not understood; else the field is done with.
			if (event.type !== "show-sources" && (next.id !== face.screenId || !next.problem))
				this.face = next.id === face.screenId ? keepRow(next, face) : null;
		}
		this.draw();
		if (event?.type === "show-sources") this.readSources();
	}

	/**
	 * The screen after an event. Where the step before took long, this one will too: then it is said before the work begins,
	 * since nothing can be drawn while it goes on.
	 */
	private screenAfter(event: WalkEvent, screen: Screen): Screen | null {
		if (this.lastStepMs > noticeableMs && this.face)
			this.drawing?.show(screen, this.face, this.usesAscii(), "Working it out ...");
		const begun = performance.now();
		this.session.dispatch(event);
		const next = this.session.screen();
		this.lastStepMs = performance.now() - begun;
		return next;
	}

	private usesAscii(): boolean {
		return this.ascii || this.session.state().settings.characters === "ascii";
	}

	private faceOn(screen: NonNullable<ReturnType<WalkSession["screen"]>>): Face {
		if (this.face?.screenId === screen.id) return this.face;
		const before = this.leftAt.get(screen.id);
		return before ? { ...faceFor(screen), row: before.row, scroll: before.scroll } : faceFor(screen);
	}

	/** Numbers and sources that were asked for just now are in sight at once, be they below the text. */
	private readSources(): void {
		const from = this.page.sourcesFrom ?? null;
		if (from === null || !this.face) return;
		this.face = { ...this.face, scroll: Math.min(from, this.page.lastScroll) };
		this.draw();
	}

	private draw(): void {
		const screen = this.session.screen();
		if (!screen || !this.drawing) return;
		this.face = this.faceOn(screen);
		const fresh = this.saidOnce === screen ? { ...screen, problem: null } : screen;
		this.page = this.drawing.show(fresh, this.face, this.usesAscii());
	}

	/** Draws all anew: what stood there before may have been broken up by the terminal. */
	private redraw(): void {
		if (!this.onScreen) return;
		this.drawing?.stop();
		this.stream.write("\u001b[2J\u001b[H");
		this.drawing = this.startDrawing({ stream: this.stream, size: () => this.size() });
		this.draw();
	}

	/** Stops all that runs in the foreground, as the key does where nobody reads it; else what started us would wait. */
	private suspend(): void {
		this.leave();
		process.kill(0, "SIGTSTP");
		// Where no shell can wake the program again, it is not put to sleep at all, and goes on.
		this.notStopped = setTimeout(() => this.enter(true), notStoppedMs);
	}
}

function isLookedInto(screenId: string): boolean {
	return /^(?:review|shortlist|fell-out|own-parts|part-form(?:-all)?:.*)$/.test(screenId);
}

function keepRow(screen: NonNullable<ReturnType<WalkSession["screen"]>>, face: Face): Face {
	return { ...faceFor(screen), row: face.row };
}
