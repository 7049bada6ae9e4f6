import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { keys, keysToFit, pty, type RealTerminal, skipped } from "./real-terminal.ts";
import { terminalsOfATest } from "./terminals-of-a-test.ts";

if (!pty) console.warn(skipped);

const { home, start } = terminalsOfATest();

const usual = [80, 24] as const;
const tooSmall = [30, 8] as const;
/** From the usual size to a small one, a very large one, one on which nothing can be shown, and back. */
const journey = [[60, 20], [200, 60], tooSmall, usual] as const;

const answered = () =>
	home()
		.keptWalks()
		.map(({ answers }) => JSON.stringify(answers));
/** Whether the screen was emptied since so much had been sent, and what came then is there to be seen. */
const isDrawnAgain = (length: number) => (t: RealTerminal) => t.sent.slice(length, t.shown).includes("\u001b[2J");

/** In the middle of the first list of Fit, on its fourth line. */
async function inTheMiddle(): Promise<RealTerminal> {
	const terminal = start();
	await terminal.waitFor("Start");
	terminal.press(keysToFit);
	await terminal.waitFor("Fit, question 6");
	terminal.press(keys.down.repeat(3));
	await terminal.waitFor((t) => t.marked()?.startsWith("Tallowfinch Stowaway") === true && isWhole(t));
	return terminal;
}

/** The last row but one holds the end of the footer, and the last one nothing. */
function isWhole(terminal: RealTerminal): boolean {
	const rows = terminal.rows();
	return /Tab more|read on/.test(rows.at(-2) ?? "") && rows.at(-1) === "";
}

/** Resizes, and gives the screen once all of it is drawn. */
async function resized(terminal: RealTerminal, [columns, rows]: readonly [number, number]): Promise<string> {
	const length = terminal.sent.length;
	terminal.resize(columns, rows);
	await terminal.waitFor(isDrawnAgain(length));
	const isSmall = columns === tooSmall[0];
	await terminal.waitFor((t) => (isSmall ? /too small[\s\S]*to leave/.test(joined(t)) : isWhole(t)));
	return terminal.text();
}

/** The screen as one line, where words may be cut over two rows. */
const joined = (terminal: RealTerminal) => terminal.rows().join(" ").replaceAll(/\s+/g, " ");

/** Whatever stands on screen is the same when it is drawn once more, on an emptied screen. Keys before it were heard. */
async function holdsNoGhost(terminal: RealTerminal, shown: string, pressedBefore = ""): Promise<void> {
	const length = terminal.sent.length;
	terminal.press(`${pressedBefore}\f`);
	await terminal.waitFor((t) => isDrawnAgain(length)(t) && t.text() === shown);
}

describe.skipIf(!pty)("resized while running", () => {
	test("in the middle of a list: no ghost row, the mark kept, nothing answered", async () => {
		const terminal = await inTheMiddle();
		const [before, kept] = [terminal.text(), answered()];
		for (const size of journey) {
			const shown = await resized(terminal, size);
			await holdsNoGhost(terminal, shown);
			if (size === tooSmall) {
				expect(shown).not.toMatch(/Tallowfinch|Tab more|Find:/);
				// Unseen, these would have answered two questions, gone back, typed and opened the menu.
				await holdsNoGhost(terminal, shown, `${keys.down}${keys.enter}${keys.enter}x1${keys.tab}?`);
				continue;
			}
			expect(terminal.marked(), String(size)).toContain("Tallowfinch Stowaway");
			expect(terminal.rows()[terminal.cursor().y], String(size)).toMatch(/^❯ Tallowfinch Stowaway/);
		}
		expect(terminal.text()).toBe(before);
		expect(answered()).toEqual(kept);
		terminal.press(keys.enter);
		await terminal.waitFor("Which case");
		expect(home().keptWalks()[0]?.answers["fit/processor"]?.value).toEqual({ part: "tallowfinch-stowaway" });
	});

	test("with help open: it stays open and is laid out anew, and the list under it stays as it was", async () => {
		const terminal = await inTheMiddle();
		const [before, kept] = [terminal.text(), answered()];
		terminal.press("?");
		await terminal.waitFor((t) => /Why we ask[\s\S]*read on/.test(t.text()) && isWhole(t));
		const help = terminal.text();
		for (const size of journey) {
			const shown = await resized(terminal, size);
			await holdsNoGhost(terminal, shown);
			if (size === tooSmall) {
				expect(shown).not.toMatch(/Why we ask|read on/);
				terminal.press(keys.escape);
				// A lone Esc is told from the start of an arrow by waiting.
				await new Promise((resolve) => setTimeout(resolve, 100));
				await holdsNoGhost(terminal, shown, `?${keys.enter}${keys.down}`);
				continue;
			}
			expect(shown, String(size)).toContain("Why we ask");
			expect(shown, String(size)).not.toContain("❯");
		}
		expect(terminal.text()).toBe(help);
		terminal.press(keys.escape);
		await terminal.waitFor((t) => t.text() === before);
		expect(answered()).toEqual(kept);
	});
});

/** Colour and weight codes of a whole journey with a problem, help, a menu and a list, on a terminal as told. */
async function codesOn(environment: Readonly<Record<string, string>>): Promise<RealTerminal> {
	const terminal = start({ environment });
	await terminal.waitFor("Start");
	terminal.press(keysToFit.slice(0, -`180${keys.enter}`.length));
	await terminal.waitFor("How much may the board");
	terminal.press(`lots${keys.enter}`);
	await terminal.waitFor("Type the sum as a number");
	terminal.press("\u0015180\r");
	await terminal.waitFor("Fit, question 6");
	terminal.press("?");
	await terminal.waitFor("Why we ask");
	terminal.press(`?${keys.down}`);
	await terminal.waitFor((t) => t.marked() !== null);
	terminal.press(keys.tab);
	await terminal.waitFor("Where to?");
	return terminal;
}

describe.skipIf(!pty)("on a light and on a dark ground", () => {
	test("the same codes are sent: the sixteen named colours in front, none behind, and no question asked", async () => {
		const sets: string[][] = [];
		for (const COLORFGBG of ["0;15", "15;0"]) {
			// Each begins a walk of its own.
			const XDG_STATE_HOME = join(home().folder, COLORFGBG);
			const terminal = await codesOn({ COLORFGBG, COLORTERM: "truecolor", XDG_STATE_HOME });
			const codes = terminal.colourCodes().flatMap((code) => code.split(";"));
			for (const code of codes) expect(code).toMatch(/^(?:|0|1|2|4|22|24|3[0-79]|9[0-7])$/);
			sets.push([...new Set(terminal.colourCodes())].sort());
			// Neither set colours nor ask for them (OSC), nor ask for anything else that a terminal would answer.
			const asking = terminal.sent.split("\u001b").filter((code) => /^\]|^\[\??[\d;]*[cnx]|^\[\?\d+\$p/.test(code));
			expect(asking).toEqual([]);
		}
		expect(sets[0]).toEqual(sets[1]);
		// Bold, dim, the mark, what was wrong.
		expect(sets[0]).toEqual(expect.arrayContaining(["1", "2", "33", "36"]));
	});
});
