import quietDesk from "../../data/scenarios/quiet-desk.json" with { type: "json" };
import type { AnswersFile } from "../../src/parts/answers-file.ts";
import type { Market } from "../../src/parts/market.ts";
import { allRules } from "../../src/rules/all-rules.ts";
import { type Face, faceFor, pressKey } from "../../src/screens/face.ts";
import type { Key } from "../../src/screens/keys.ts";
import type { Screen } from "../../src/screens/screen.ts";
import { screenOf } from "../../src/screens/screen-of.ts";
import { takeUpWalk } from "../../src/walk/saved-walk.ts";
import { update } from "../../src/walk/update.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import type { WalkState } from "../../src/walk/walk-state.ts";
import { DrawnTerminal } from "../ui/drawn-terminal.ts";
import { printFigure } from "./figure.ts";
import { marketOfMany } from "./many-boards.ts";
import { heapMb, median, pause, percentile } from "./stop-watch.ts";

const size = { columns: 80, rows: 24 };
const limits = { medianMs: 16, highMs: 33, grownMb: 25 };
const repaints = 10_000;
/** Longer than a frame takes at 60 frames a second, so that each key has one of its own. */
const frameMs = 20;
/** A key that has written nothing by then changes nothing: all before that is drawn at once. */
const nothingMs = 4 * frameMs;

/** A walk as the program drives it, with nothing but the disk left out. */
class Drawn {
	state: WalkState;
	private face: Face | null = null;
	private readonly terminal = new DrawnTerminal(size);
	private page = { textRows: 1, lastScroll: 0 };
	private shown: { readonly state: WalkState; readonly screen: Screen } | null = null;

	private readonly market: Market;

	constructor(market: Market, file: AnswersFile) {
		this.market = market;
		this.state = takeUpWalk({ market, asOf: file.asOf }, file).state;
		this.ask("fit/processor");
	}

	private get context() {
		return known(this.market);
	}

	screen(): Screen {
		if (this.shown?.state !== this.state) {
			const screen = screenOf(this.context, this.state);
			if (!screen) throw new Error("the walk was left");
			this.shown = { state: this.state, screen };
		}
		return this.shown.screen;
	}

	go(event: WalkEvent): void {
		this.state = update(this.context, this.state, event)[0];
		this.face = null;
	}

	/** Goes to a question as the walk does that comes to it: its answer leads to the next question. */
	ask(id: string): void {
		this.state = { ...this.state, place: { at: "question", id } };
		this.face = null;
		this.draw();
	}

	/** Presses a key and draws; whether it changed more than what is marked or typed. */
	press(key: Key): boolean {
		const screen = this.screen();
		const pressed = pressKey(screen, this.face ?? faceFor(screen), key, this.page);
		this.face = pressed.face;
		if (pressed.event) this.go(pressed.event);
		this.draw();
		return pressed.event !== null;
	}

	draw(): void {
		const screen = this.screen();
		this.face ??= faceFor(screen);
		this.page = this.terminal.drawing.show(screen, this.face, false);
	}

	get written(): number {
		return this.terminal.written.length;
	}

	forget(): void {
		this.terminal.written = "";
	}

	stop(): void {
		this.terminal.drawing.stop();
	}
}

const contexts = new Map<Market, { readonly market: Market; readonly asOf: string }>();
function known(market: Market) {
	const context = contexts.get(market) ?? { market, asOf: file.asOf };
	contexts.set(market, context);
	return context;
}

const file = quietDesk as unknown as AnswersFile;
const [down, up, enter]: readonly Key[] = [{ name: "down" }, { name: "up" }, { name: "enter" }];
const text = (words: string): Key[] => [...words].map((letter) => ({ name: "text", text: letter }));
const moves = [...Array(8).fill(down), ...Array(4).fill(up), { name: "end" }, { name: "home" }] as readonly Key[];
/** What one does on a question without answering it: up and down the list, letters to find a name, the help. */
const looking: readonly Key[] = [
	...moves,
	...text("tallow"),
	{ name: "delete-to-start" },
	...text("?"),
	{ name: "page-down" },
	{ name: "page-up" },
	...text("?"),
];
/** Questions whose answers are given anew, one line further down each time. */
const answered = ["fit/processor", "fit/case", "features/wireless", "features/rear-usb-c", "about/summer-room"];

for (const boardCount of [100, 10_000]) {
	const walk = new Drawn(marketOfMany(boardCount), file);
	const reference = await emptyRepaints();
	for (let round = 0; round < 2; round++) for (const key of looking) await timed(walk, key);
	const plain: number[] = [];
	for (let round = 0; round < 5; round++)
		for (const key of looking) {
			const took = await timed(walk, key);
			if (took !== null) plain.push(took);
		}
	print(`key to repaint at 80x24, ${boardCount} boards, keys that move, type and read`, plain, reference);
	const answers: number[] = [];
	const checks = countChecks();
	for (let round = 0; round < (boardCount > 1000 ? 1 : 3); round++)
		for (const questionId of answered) {
			walk.ask(questionId);
			await pause(frameMs);
			walk.press(down as Key);
			await pause(frameMs);
			const took = await timed(walk, enter as Key);
			if (took === null || walk.state.place.at === "shortlist") throw new Error(`${questionId} led nowhere`);
			answers.push(took);
		}
	const run = checks();
	print(`key to repaint at 80x24, ${boardCount} boards, Enter that answers a question`, answers, reference);
	const whole = checksFromNothing(walk.state, marketOfMany(boardCount));
	const value = run / answers.length;
	printFigure({
		...{ name: `rules run after an answer, a board each, ${boardCount} boards`, value, unit: "rule checks" },
		...{
			reference: whole,
			referenceWork: "the same screen with nothing remembered",
			ratio: value / whole,
			limit: null,
		},
	});
	walk.stop();
}
await growth();
process.exit();

/** Time from the key to the bytes of its frame, in ms; null for one that changes nothing on screen. */
async function timed(walk: Drawn, key: Key): Promise<number | null> {
	walk.forget();
	const begun = performance.now();
	walk.press(key);
	while (walk.written === 0 && performance.now() - begun < nothingMs) await turn();
	const took = walk.written > 0 ? performance.now() - begun : null;
	await pause(frameMs);
	return took;
}

/** The same terminal with one word changed: what Ink and the terminal take without us. */
async function emptyRepaints(): Promise<number> {
	const { render, Text } = await import("ink");
	const { createElement } = await import("react");
	const { EventEmitter } = await import("node:events");
	let written = 0;
	const stream = Object.assign(new EventEmitter(), {
		...{ columns: size.columns, rows: size.rows, isTTY: true },
		write: (words: string) => {
			written += words.length;
			return true;
		},
	}) as unknown as NodeJS.WriteStream;
	const instance = render(createElement(Text, null, "0"), { stdout: stream, patchConsole: false, maxFps: 60 });
	const took: number[] = [];
	for (let round = 1; round <= 100; round++) {
		written = 0;
		const begun = performance.now();
		instance.rerender(createElement(Text, null, String(round)));
		while (written === 0 && performance.now() - begun < 1000) await turn();
		took.push(performance.now() - begun);
		await pause(frameMs);
	}
	instance.unmount();
	return median(took);
}

function print(name: string, values: readonly number[], reference: number): void {
	const referenceWork = "Ink drawing one word anew, median";
	for (const [which, value, limit] of [
		["median", median(values), limits.medianMs],
		["95th percentile", percentile(values, 0.95), limits.highMs],
	] as const)
		printFigure({
			...{ name: `${name}, ${which} of ${values.length}`, value, unit: "ms", reference, referenceWork },
			...{ ratio: value / reference, limit },
		});
}

/** Counts how often rules are checked from now on; gives the count when called. */
function countChecks(): () => number {
	let count = 0;
	const undo = allRules.map((rule) => {
		const own = rule as { check: typeof rule.check };
		const { check } = own;
		own.check = (facts) => {
			count++;
			return check(facts);
		};
		return () => {
			own.check = check;
		};
	});
	return () => {
		for (const back of undo) back();
		return count;
	};
}

function checksFromNothing(state: WalkState, market: Market): number {
	const checks = countChecks();
	screenOf(known(market), state);
	return checks();
}

/** How much memory holds on to after many repaints, once it is tidied up. */
async function growth(): Promise<void> {
	const walk = new Drawn(marketOfMany(100), file);
	const repaint = async (count: number) => {
		for (let done = 0; done < count; done++) {
			walk.press((done % 2 === 0 ? down : up) as Key);
			walk.forget();
			await turn();
		}
		await pause(5 * frameMs);
	};
	await repaint(1000);
	const before = heapMb();
	await repaint(repaints);
	const value = heapMb() - before;
	printFigure({
		...{ name: `memory grown over ${repaints} repaints at 80x24, 100 boards`, value, unit: "MB" },
		...{ reference: before, referenceWork: "the heap before them", ratio: value / before, limit: limits.grownMb },
	});
	walk.stop();
}

function turn(): Promise<void> {
	return new Promise((resolve) => setImmediate(resolve));
}
