import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import quietDesk from "../../data/scenarios/quiet-desk.json" with { type: "json" };
import { functionKeys, reports } from "../cli/hostile-keys.ts";
import { keys, keysToFit, pty, type RealTerminal, type StartOptions, skipped } from "./real-terminal.ts";
import { terminalsOfATest } from "./terminals-of-a-test.ts";

if (!pty) console.warn(skipped);

test("a pseudo-terminal is there, at least where it must be", () => {
	if (process.env["BOARDWALK_CI"] === "1") expect(pty).not.toBeNull();
});

type Wanted = Parameters<RealTerminal["waitFor"]>[0];

const { home, start } = terminalsOfATest();

/** The walk of a person who answered everything, opened on the screen with all answers. */
async function startInReview(): Promise<{ terminal: RealTerminal; file: string }> {
	const file = join(home().desk, "mine.json");
	writeFileSync(file, JSON.stringify(quietDesk));
	const terminal = start({ words: ["--answers", file], rows: 40 });
	await terminal.waitFor("Go on");
	terminal.press(keys.down + keys.enter);
	await terminal.waitFor("All your answers");
	return { terminal, file };
}

/** Goes from the start to the first question of Fit, where letters find a line. */
async function startInList(options: Omit<StartOptions, "home"> = {}): Promise<RealTerminal> {
	const terminal = start(options);
	await terminal.waitFor("Start");
	terminal.press(keysToFit);
	await terminal.waitFor("Fit, question 6");
	return terminal;
}

/** The line that is typed, without what stands beside it. */
const fieldLine = (terminal: RealTerminal) =>
	terminal
		.rows()
		.find((line) => line.startsWith("Find:"))
		?.slice(0, 50)
		.trim();

const down = (times: number) => (times < 0 ? keys.up.repeat(-times) : keys.down.repeat(times));

describe.skipIf(!pty)("from the start to a written sheet", () => {
	test("takes 60 key presses at most on the short walk through Fit, and each screen says what comes next", async () => {
		const terminal = start();
		let pressed = 0;
		const press = async (keysPressed: readonly string[], wanted: Wanted) => {
			for (const key of keysPressed) terminal.press(key);
			pressed += keysPressed.length;
			await terminal.waitFor(wanted);
		};
		/** The whole of another screen than the one with these words. */
		const behind = (words: string) => (t: RealTerminal) => !t.text().includes(words) && /Tab more/.test(t.text());
		await press([], "Find the right board");
		await press([keys.enter], "How much time do you have");
		await press([keys.enter], "Who gives the answers?");
		await press([keys.enter], "What will you do");
		await press([" ", keys.enter], "How much money is there");
		await press([..."900", keys.enter], "How much may the board cost");
		await press([..."200", keys.enter], "Which processor");
		await press([..."deck", keys.enter], "Which case");
		await press([..."barn", keys.enter], behind("Which case"));
		// Which parts are asked for next hangs on what they could change.
		const answers: Readonly<Record<string, readonly string[]>> = {
			"graphics card?": [..."no card", keys.enter],
			"Which memory": [keys.enter],
			"cooler will sit": [..."the one", keys.enter],
			"Which power supply": [keys.down, keys.down, keys.enter],
			"Which drives": [keys.enter, keys.enter],
			"other cards": [keys.enter, keys.enter],
		};
		for (let asked = 0; asked < 9 && !terminal.text().includes("Fit is done"); asked++) {
			const [words, keysPressed] = Object.entries(answers).find(([one]) => terminal.text().includes(one)) ?? [];
			if (!words || !keysPressed) throw new Error(`nothing to press here:\n${terminal.text()}`);
			await press(keysPressed, behind(words));
		}
		expect(terminal.text()).toContain("Fit is done");
		await press([keys.tab], "Where to?");
		await press([..."8", keys.enter], "The sheet for shop and bench");
		await press([keys.enter], "The sheet is written");
		expect(pressed).toBeLessThanOrEqual(60);
		const sheet = join(home().desk, "board-sheet.html");
		expect(readFileSync(sheet, "utf8")).toContain("Tallowfinch Deckhand");
		await press([keys.escape], "Fit is done");
		await press(["q"], (t) => t.exitCode !== null);
		expect(terminal.isAlternate()).toBe(false);
		const joined = terminal.history().replaceAll("\n", "");
		expect(joined).toContain(`The sheet: ${sheet}`);
		expect(joined).toContain(`Your answers are kept in ${join(home().walks, "walk-")}`);
		expect(Object.keys(home().keptWalks()[0]?.answers ?? {}).length).toBeGreaterThanOrEqual(8);
	});
});

describe.skipIf(!pty)("keys in one chunk", () => {
	test("Down and Enter pick the right line 200 times of 200", async () => {
		const { terminal, file } = await startInReview();
		const asked = ["quality/stage-load", "quality/rescue"] as const;
		const values = ["a-lot", "somewhat", "a-little", "not-at-all", null] as const;
		const answers = () => JSON.parse(readFileSync(file, "utf8")).answers;
		const rowOf = (id: string) => values.indexOf(answers()[id].value ?? null);
		// The mark stands on the first line of all answers, which are those of the file in the order asked.
		const rows = asked.map((id) => Object.keys(quietDesk.answers).indexOf(id));
		let row = 0;
		let right = 0;
		for (let round = 0; round < 200; round++) {
			const which = round % 3 === 0 ? 0 : 1;
			const id = asked[which];
			const before = rowOf(id);
			const wanted = (before + 1 + (round % 4)) % values.length;
			const reviewRow = rows[which] ?? 0;
			terminal.press(down(reviewRow - row) + keys.enter + down(wanted - before) + keys.enter);
			row = reviewRow;
			await terminal.waitFor(() => rowOf(id) === wanted);
			right++;
		}
		expect(right).toBe(200);
		await terminal.waitFor("All your answers");
	});

	test("three arrows move by three, fifty to the end, and Up back again", async () => {
		const terminal = start({ rows: 40 });
		await terminal.waitFor("Start");
		terminal.press(keys.tab);
		await terminal.waitFor("Where to?");
		terminal.press(keys.down.repeat(3));
		await terminal.waitFor((t) => t.marked() === "The shortlist so far");
		terminal.press(keys.down.repeat(50));
		await terminal.waitFor((t) => t.marked() === "Save and leave");
		terminal.press(keys.up.repeat(4));
		await terminal.waitFor((t) => t.marked() === "My walks");
	});

	test("the real cursor stands on the marked line", async () => {
		const terminal = start();
		await terminal.waitFor("Start");
		terminal.press(keys.down);
		await terminal.waitFor((t) => t.marked() === "Look at a made-up person's result first");
		await terminal.waitFor(
			(t) => t.rows()[t.cursor().y]?.startsWith("❯ Look at a made-up") === true && t.cursor().x === 0,
		);
	});

	test("Esc and the rest of an arrow 10 ms apart are an arrow", async () => {
		const terminal = await startInList();
		terminal.press(down(2));
		await terminal.waitFor((t) => t.marked()?.includes("Bosun") === true);
		terminal.press("\u001b");
		await new Promise((resolve) => setTimeout(resolve, 10));
		terminal.press("[A");
		await terminal.waitFor((t) => t.marked()?.includes("Helmswoman") === true);
		expect(terminal.text()).toContain("Fit, question 6");
		expect(fieldLine(terminal)).toBe("Find:");
		terminal.press(keys.escape);
		await terminal.waitFor("About you");
	});
});

/** To the question that is answered with a sum for the board. */
const keysToBudget = keysToFit.slice(0, -`180${keys.enter}`.length);

describe.skipIf(!pty)("typing", () => {
	test("a paste of two lines is one line of text, and its Enter answers nothing", async () => {
		const terminal = start();
		await terminal.waitFor("Start");
		terminal.press(keysToBudget);
		await terminal.waitFor("How much may the board");
		expect(terminal.takesPaste()).toBe(true);
		terminal.press(`${keys.pasteStart}18\r0 and\nmore\u0003${keys.pasteEnd}`);
		await terminal.waitFor("Type: 18 0 and more");
		expect(terminal.text()).toContain("How much may the board cost");
		terminal.press(`${keys.escape}`);
		await terminal.waitFor(/Type:\s*\n/);
		terminal.press(`190${keys.enter}`);
		await terminal.waitFor("Fit, question 6");
		expect(home().keptWalks()[0]?.answers["about/budget"]?.value).toEqual({ minor: 19000, currency: "EUR" });
	});

	test("what was not understood stays in the field for mending, with the reason", async () => {
		const terminal = start();
		await terminal.waitFor("Start");
		terminal.press(`${keysToBudget}two hundred${keys.enter}`);
		await terminal.waitFor((t) => t.rows().some((line) => line.includes("Type: two hundred")) && t.rows().length > 0);
		await terminal.waitFor(/Type the sum as a number/);
		expect(home().keptWalks()[0]?.answers).not.toHaveProperty("about/budget");
		terminal.press(`\u0015${"180"}${keys.enter}`);
		await terminal.waitFor("Fit, question 6");
	});
});

/** Bytes by a seeded generator (a multiplicative congruence modulo 2^31 - 1), without those that may end the walk. */
function randomBytes(seed: number, count: number): string {
	const left = new Set(["\u0003", "\u001a", "\r", "\n", "q", "Q", "s", "S"]);
	let state = seed;
	let bytes = "";
	while (bytes.length < count) {
		state = (state * 48_271) % 2_147_483_647;
		const byte = String.fromCharCode(state % 256);
		if (!left.has(byte)) bytes += byte;
	}
	return bytes;
}

describe.skipIf(!pty)("hostile keys", () => {
	test("function keys with Ctrl, Alt and Shift, and reports of all kinds, type nothing and end nothing", async () => {
		const terminal = await startInList();
		for (const sequence of functionKeys()) terminal.press(sequence);
		for (const [, bytes] of reports.slice(0, -1)) terminal.press(bytes);
		terminal.press("x");
		await terminal.waitFor("Find: x");
		expect(terminal.text()).toContain("Fit, question 6");
		expect(fieldLine(terminal)).toBe("Find: x");
		// Where letters are commands, a letter that leaked could leave the walk.
		terminal.press(keys.tab);
		await terminal.waitFor("Where to?");
		for (const [, bytes] of reports.slice(0, -1)) terminal.press(bytes);
		terminal.press(keys.down);
		await terminal.waitFor((t) => t.marked() === "All my answers");
		expect(terminal.exitCode).toBeNull();
	});

	test("random bytes end nothing, and Ctrl+C is heard after them", async () => {
		const terminal = await startInList();
		for (let seed = 1; seed <= 8; seed++) terminal.press(randomBytes(seed, 150));
		// Bytes may have begun a paste, which swallows keys for a second.
		const length = terminal.sent.length;
		while (!terminal.sent.slice(length).includes("\u001b[2J")) {
			terminal.press("\f");
			await terminal.waitFor(/Tab more|Esc close/);
			await new Promise((resolve) => setTimeout(resolve, 20));
		}
		expect(terminal.exitCode).toBeNull();
		terminal.press(keys.interrupt);
		expect(await terminal.ended()).toBe(130);
		expect(terminal.isAlternate()).toBe(false);
	});
});

describe.skipIf(!pty)("what the environment wishes", () => {
	test("CI set does not blank a real terminal, and the mark has its colour all the same", async () => {
		const terminal = start({ environment: { CI: "1", CONTINUOUS_INTEGRATION: "1" } });
		await terminal.waitFor("❯ Start");
		expect(terminal.colourCodes()).toContain("36");
	});

	test("colours are named ones only", async () => {
		const terminal = await startInList({ environment: { COLORTERM: "truecolor" } });
		const used = new Set(terminal.colourCodes());
		expect(used.size).toBeGreaterThan(2);
		for (const code of used) expect(code).toMatch(/^(0|1|2|4|22|24|3[0-79]|9[0-7])?$/);
	});

	test.each<[string, Omit<StartOptions, "home">]>([
		["NO_COLOR", { environment: { NO_COLOR: "1" } }],
		["NO_COLOR where colour is forced", { environment: { NO_COLOR: "1", FORCE_COLOR: "3" } }],
		["--no-color", { words: ["--no-color"] }],
	])("%s sends no colour", async (_, options) => {
		const terminal = await startInList(options);
		expect(terminal.colourCodes()).toEqual([]);
		expect(terminal.marked()).not.toBeNull();
	});

	test.each<[string, Omit<StartOptions, "home">]>([
		["--ascii", { words: ["--ascii"] }],
		["LANG=C", { environment: { LANG: "C" } }],
		["LC_ALL before LANG", { environment: { LC_ALL: "POSIX" } }],
	])("%s sends ASCII only", async (_, options) => {
		const terminal = await startInList(options);
		terminal.press(keys.tab);
		await terminal.waitFor("> Back to where I was");
		expect([...terminal.sent].filter((sign) => sign > "~")).toEqual([]);
	});

	test("a dumb terminal, and one of no known size, are asked line by line", async () => {
		for (const options of [{ environment: { TERM: "dumb" } }, { columns: 39 }, { rows: 11 }]) {
			const terminal = start(options);
			await terminal.waitFor(/\n> *$/m);
			expect(terminal.isAlternate()).toBe(false);
			terminal.press("q\r");
			expect(await terminal.ended()).toBe(1);
		}
	});
});

describe.skipIf(!pty)("the size of the terminal", () => {
	test("may change at any time, and leaves no ghost", async () => {
		const terminal = await startInList();
		terminal.press(down(1));
		await terminal.waitFor((t) => t.marked()?.includes("Helmswoman") === true);
		const sizes = [
			[60, 20],
			[120, 40],
			[40, 12],
			[39, 12],
			[40, 11],
			[20, 4],
			[80, 24],
			[100, 18],
		] as const;
		for (const [columns, rows] of sizes) {
			const drawnAgain = (length: number) => (t: RealTerminal) => t.sent.slice(length).includes("\u001b[2J");
			const sentBefore = terminal.sent.length;
			terminal.resize(columns, rows);
			await terminal.waitFor(drawnAgain(sentBefore));
			if (columns < 40 || rows < 12) {
				await terminal.waitFor(/This\s+window\s+is\s+too\s+small/);
				// Keys rest where nobody sees what they do; Ctrl+L tells when they have been heard.
				const sentSoFar = terminal.sent.length;
				terminal.press(`${down(1)}${keys.enter}\f`);
				await terminal.waitFor(drawnAgain(sentSoFar));
				continue;
			}
			const once = (t: RealTerminal, pattern: RegExp) => t.rows().filter((line) => pattern.test(line)).length === 1;
			await terminal.waitFor(
				(t) =>
					t.rows()[rows - 2]?.includes("Tab more") === true &&
					t.rows()[rows - 1] === "" &&
					[/Which processor/, /Tab more/, /Find:/, /^❯ /].every((pattern) => once(t, pattern)),
			);
			expect(terminal.marked()).toContain("Helmswoman");
			expect(terminal.text()).not.toContain("too small");
		}
		terminal.press(keys.enter);
		await terminal.waitFor("Which case");
		expect(home().keptWalks()[0]?.answers["fit/processor"]?.value).toEqual({ part: "tallowfinch-helmswoman" });
	});

	test("a frame never reaches the last row: nothing wipes the terminal after the first drawing", async () => {
		const { terminal } = await startInReview();
		terminal.press(`${keys.down}${keys.pageDown}?${keys.pageDown}`);
		await terminal.waitFor("Esc close");
		terminal.press(`?${keys.down}${keys.tab}`);
		await terminal.waitFor("Where to?");
		terminal.press(keys.escape);
		await terminal.waitFor("All your answers");
		terminal.press(keys.end);
		terminal.press(keys.enter);
		await terminal.waitFor("Build quality, question");
		expect(terminal.sent).not.toContain("\u001b[3J");
		expect(terminal.sent.split("\u001b[2J")).toHaveLength(2);
	});

	test("Ctrl+L draws all of it again", async () => {
		const terminal = start();
		await terminal.waitFor(/Start[\s\S]*Tab more/);
		const before = terminal.text();
		const length = terminal.sent.length;
		terminal.press("\f");
		await terminal.waitFor((t) => t.sent.slice(length).includes("Find the right") && t.text() === before);
	});
});
