import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { keys, keysToFit, program, pty, type RealTerminal, type StartOptions, skipped } from "./real-terminal.ts";
import { terminalsOfATest } from "./terminals-of-a-test.ts";

if (!pty) console.warn(skipped);

const { home, start } = terminalsOfATest();

/** How the program is called in a shell. */
const call = `'${process.execPath}' '${program}'`;

/** Runs a line in a shell that has something on its screen already, as everybody's has. */
function startInShell(line: string, options: Omit<StartOptions, "home" | "command"> = {}): RealTerminal {
	return start({
		...options,
		command: ["/bin/sh", "-c", `i=0; while [ $i -lt 60 ]; do echo "line $i"; i=$((i+1)); done; ${line}`],
	});
}

/** Answers the short walk's questions about the person, and picks the first processor. */
async function answerSix(terminal: RealTerminal): Promise<void> {
	await terminal.waitFor("Start");
	terminal.press(keysToFit);
	await terminal.waitFor("Fit, question 6");
	terminal.press(keys.enter);
	// The whole screen, to its last line.
	await terminal.waitFor(/Fit, question 7[\s\S]*Tab more/);
}

/** Another question of Fit than the one about the case: which one hangs on what matters most then. */
const behindCase = (terminal: RealTerminal): boolean =>
	/^Fit\b/m.test(terminal.text()) && !/Which case|Which processor/.test(terminal.text());

const sixAnswers = [
	...["about/walk-length", "about/who", "about/activities", "about/money-in-all", "about/budget"],
	"fit/processor",
];

function expectSixAnswers(): void {
	expect(
		home()
			.keptWalks()
			.map(({ answers }) => Object.keys(answers)),
	).toEqual([sixAnswers]);
}

/** Every line that the shell had before, and nothing of the walk's screens. */
function expectScrollbackWhole(terminal: RealTerminal): void {
	const lines = terminal.history().split("\n");
	expect(lines.slice(0, 60)).toEqual(Array.from({ length: 60 }, (_, index) => `line ${index}`));
	expect(lines.join("\n")).not.toContain("Tab more");
	expect(terminal.sent).not.toContain("\u001b[3J");
}

describe.skipIf(!pty)("every way out", () => {
	test.each<[string, number, (terminal: RealTerminal) => void]>([
		["q", 1, (terminal) => terminal.press(`${keys.tab}q`)],
		["Save and leave", 1, (terminal) => terminal.press(keys.tab + keys.end + keys.enter)],
		["Ctrl+C", 130, (terminal) => terminal.press(keys.interrupt)],
		["Ctrl+C twice", 130, (terminal) => terminal.press(keys.interrupt + keys.interrupt)],
		["SIGINT", 130, (terminal) => terminal.signal("SIGINT")],
		["SIGTERM", 143, (terminal) => terminal.signal("SIGTERM")],
		["SIGHUP", 129, (terminal) => terminal.signal("SIGHUP")],
	])("%s ends with %i: the terminal as before, the answers kept, and where", async (_, code, leave) => {
		// The shell becomes the program, so that signals reach it.
		const terminal = startInShell(`exec ${call}`);
		await answerSix(terminal);
		expect(terminal.isAlternate()).toBe(true);
		expect(terminal.takesPaste()).toBe(true);
		leave(terminal);
		expect(await terminal.ended()).toBe(code);
		expect(terminal.isAlternate()).toBe(false);
		expect(terminal.takesPaste()).toBe(false);
		expect(terminal.showsCursor()).toBe(true);
		expectScrollbackWhole(terminal);
		expectSixAnswers();
		const walk = join(home().walks, readdirSync(home().walks).find((name) => name.endsWith(".json")) ?? "");
		const joined = terminal.history().replaceAll("\n", "");
		expect(joined).toContain(`Your answers are kept in ${walk}`);
		expect(joined).toContain(`--answers ${walk}`);
		// The lock is gone with the program.
		expect(readdirSync(home().walks)).toHaveLength(1);
	});

	test("a fault of ours ends with 70, its words on the normal screen, the answers kept", async () => {
		const fault = 'process.on("SIGUSR2", () => { setImmediate(() => { throw new Error("made on purpose"); }); })';
		const terminal = startInShell(`exec ${call}`, {
			environment: { NODE_OPTIONS: `--import=data:text/javascript,${encodeURIComponent(fault)}` },
		});
		await answerSix(terminal);
		terminal.signal("SIGUSR2");
		expect(await terminal.ended()).toBe(70);
		expect(terminal.isAlternate()).toBe(false);
		expect(terminal.showsCursor()).toBe(true);
		expect(terminal.history()).toContain("boardwalk stopped by a fault of its own: Error: made on purpose");
		expectScrollbackWhole(terminal);
		expectSixAnswers();
	});

	test("raw mode is off afterwards", async () => {
		const terminal = startInShell(`stty -a; ${call}; echo "code $?"; stty -a; echo done`);
		await terminal.waitFor("Start");
		terminal.press(keys.interrupt);
		await terminal.ended();
		const text = terminal.history();
		expect(text).toContain("code 130");
		const modes = [...text.matchAll(/[\s-](?:icanon|isig|echo|icrnl|opost)(?=\s)/g)].map(([mode]) => mode);
		expect(modes).toHaveLength(10);
		expect(modes.slice(5).map((mode) => mode.trim())).toEqual(modes.slice(0, 5).map((mode) => mode.trim()));
		expect(modes.filter((mode) => mode.startsWith("-"))).toEqual([]);
	});

	test("a window that is closed leaves the answers safe, and no program behind", async () => {
		const terminal = start();
		await answerSix(terminal);
		terminal.closeWindow();
		const isGone = () => {
			try {
				process.kill(terminal.pid, 0);
				return false;
			} catch {
				return true;
			}
		};
		const giveUpAt = Date.now() + 10_000;
		while (!isGone() && Date.now() < giveUpAt) await new Promise((resolve) => setTimeout(resolve, 10));
		expect(isGone()).toBe(true);
		expectSixAnswers();
	});
});

describe.skipIf(!pty)("killed in the middle", () => {
	test("the next start offers to go on, and holds all answers", async () => {
		const killed = start();
		await answerSix(killed);
		killed.signal("SIGKILL");
		await killed.ended();
		expectSixAnswers();
		const terminal = start();
		await terminal.waitFor(/❯ Go on with my walk: 6 of \d+ answered, next comes Fit, today/);
		terminal.press(keys.enter);
		await terminal.waitFor("Fit, question 7");
		expect(terminal.text()).toContain("Here you left off.");
		expect(terminal.text()).not.toContain("another window");
		terminal.press(`${keys.tab}${keys.down}${keys.enter}`);
		await terminal.waitFor("All your answers");
		terminal.press(keys.interrupt);
		expect(await terminal.ended()).toBe(130);
		expectSixAnswers();
	});
});

describe.skipIf(!pty)("put to sleep", () => {
	test("with Ctrl+Z under a shell, and woken with fg, everything is as it was, typed letters too", async () => {
		const terminal = start({ command: ["/bin/bash", "--norc", "--noprofile", "-i"], environment: { PS1: "shell> " } });
		await terminal.waitFor("shell>");
		terminal.press(`${call}\r`);
		await answerSix(terminal);
		terminal.press("bar");
		await terminal.waitFor(/Find: bar\b[\s\S]*Tab more/);
		const before = terminal.text();
		for (let round = 0; round < 2; round++) {
			terminal.press(keys.suspend);
			await terminal.waitFor((t) => !t.isAlternate() && /Stopped/.test(t.text()));
			// The shell hears its keys: raw mode is off.
			terminal.press(`echo awa''ke ${round}\r`);
			await terminal.waitFor(`awake ${round}`);
			terminal.press("fg\r");
			await terminal.waitFor((t) => t.isAlternate() && t.text() === before);
		}
		expect(terminal.takesPaste()).toBe(true);
		terminal.press("n");
		await terminal.waitFor("Find: barn");
		terminal.press(keys.enter);
		await terminal.waitFor(behindCase);
		terminal.press(keys.interrupt);
		await terminal.waitFor((t) => !t.isAlternate() && t.text().includes("To go on"));
		terminal.press('echo "ended with $?"\r');
		await terminal.waitFor("ended with 130");
		terminal.press("exit\r");
		await terminal.ended();
	});

	test("where no shell could wake it, Ctrl+Z does not end it", async () => {
		const terminal = start();
		await answerSix(terminal);
		const before = terminal.text();
		const length = terminal.sent.length;
		terminal.press(keys.suspend);
		await terminal.waitFor((t) => t.sent.slice(length).includes("\u001b[?1049h") && t.text() === before);
		terminal.press(keys.enter);
		await terminal.waitFor(behindCase);
	});

	test("from outside, and woken again, it takes its keys as before", async () => {
		const terminal = start();
		await answerSix(terminal);
		const before = terminal.text();
		terminal.signal("SIGSTOP");
		const length = terminal.sent.length;
		terminal.signal("SIGCONT");
		await terminal.waitFor((t) => t.sent.slice(length).includes("\u001b[?1049h") && t.text() === before);
		terminal.press(keys.enter);
		await terminal.waitFor(behindCase);
	});
});

describe.skipIf(!pty)("two programs on one walk", () => {
	test("the second is told, and writes into a file of its own", async () => {
		const first = start();
		await answerSix(first);
		const second = start();
		await second.waitFor("Go on with my walk");
		second.press(keys.enter);
		await second.waitFor(`open in another window (process ${first.pid})`);
		second.press(keys.enter);
		await second.waitFor("Fit, question 8");
		expect(
			home()
				.keptWalks()
				.map(({ answers }) => Object.keys(answers).length)
				.sort(),
		).toEqual([6, 7]);
		first.press(keys.enter);
		await first.waitFor("Fit, question 8");
		expect(
			home()
				.keptWalks()
				.map(({ answers }) => Object.keys(answers).length),
		).toEqual([7, 7]);
	});
});

describe.skipIf(!pty)("damaged files", () => {
	test("a walk is set aside with a word, and does not stand in the way", async () => {
		mkdirSync(home().walks, { recursive: true });
		const damaged = join(home().walks, "walk-2026-01-01.json");
		writeFileSync(damaged, '{"schema": "boardwalk/answers@1", "answ');
		const terminal = start();
		await terminal.waitFor("A damaged walk was set aside:");
		expect(terminal.text()).not.toContain("Go on with my walk");
		expect(existsSync(`${damaged}.damaged`)).toBe(true);
		terminal.press(keys.enter);
		await terminal.waitFor("How much");
	});

	test("settings are set aside with a word, and the usual ones hold", async () => {
		mkdirSync(dirname(home().settings), { recursive: true });
		writeFileSync(home().settings, "{");
		const terminal = start();
		await terminal.waitFor("The settings were damaged");
		expect(readFileSync(`${home().settings}.damaged`, "utf8")).toBe("{");
		terminal.press(keys.enter);
		await terminal.waitFor("How much");
	});
});

describe.skipIf(!pty)("settings", () => {
	test("ASCII holds at once, and from the next start on; line by line from the next start", async () => {
		const terminal = start();
		await terminal.waitFor("❯ Start");
		terminal.press(keys.down.repeat(4) + keys.enter);
		await terminal.waitFor("❯ Colour");
		terminal.press(keys.down + keys.enter);
		await terminal.waitFor("> Characters: plain ASCII only");
		terminal.press(keys.down + keys.enter);
		await terminal.waitFor("> Way of asking: line by line");
		terminal.press(keys.interrupt);
		await terminal.ended();
		const next = start();
		await next.waitFor(/1 {2}Start/);
		expect(next.isAlternate()).toBe(false);
	});
});

describe.skipIf(!pty)("where the result goes elsewhere", () => {
	test("into a file, the walk is drawn on standard error, and the file holds no escape code", async () => {
		const terminal = startInShell(`${call} > '${home().desk}/out.txt'; echo "code $?"`);
		await answerSix(terminal);
		terminal.press(`${keys.tab}4${keys.enter}`);
		await terminal.waitFor("hortlist");
		terminal.press(keys.interrupt);
		await terminal.ended();
		expect(terminal.history()).toMatch(/code 130/);
		expectScrollbackWhole(terminal);
		const out = readFileSync(join(home().desk, "out.txt"), "utf8");
		expect(out).not.toContain("\u001b");
		expect(out).not.toContain("Tab more");
	});

	test("into a file, a finished walk leaves its result there", async () => {
		const terminal = startInShell(`${call} > '${home().desk}/out.txt'; echo "code $?"`);
		await answerSix(terminal);
		terminal.press(`${keys.tab}4${keys.enter}`);
		await terminal.waitFor(/Your shortlist|What to look for/);
		terminal.press("q");
		await terminal.ended();
		expect(terminal.history()).toMatch(/code 0/);
		const out = readFileSync(join(home().desk, "out.txt"), "utf8");
		expect(out.trim()).not.toBe("");
		expect(out).not.toContain("\u001b");
	});

	test("into a reader that goes away, it ends quietly", async () => {
		const terminal = startInShell(`${call} | true; echo "end of it"`);
		await answerSix(terminal);
		terminal.press(`${keys.tab}4${keys.enter}`);
		await terminal.waitFor(/Your shortlist|What to look for/);
		terminal.press("q");
		await terminal.ended();
		expect(terminal.history()).toContain("end of it");
		expect(terminal.history()).not.toMatch(/EPIPE|fault|Error/);
		expect(terminal.isAlternate()).toBe(false);
		expectSixAnswers();
	});
});
