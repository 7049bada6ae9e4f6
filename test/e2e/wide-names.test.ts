import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import quietDesk from "../../data/scenarios/quiet-desk.json" with { type: "json" };
import { keys, pty, skipped } from "./real-terminal.ts";
import { terminalsOfATest } from "./terminals-of-a-test.ts";

const { home, start } = terminalsOfATest();
if (!pty) console.warn(skipped);

test.skipIf(!pty)("a name that the terminal draws wider than it is counted pushes nothing over", async () => {
	const name = "👩‍👩‍👧‍👦 👩🏽‍🚀 🏳️‍🌈 🇺🇳 ".repeat(5).trim();
	const file = join(home().desk, "mine.json");
	const answers = { ...quietDesk.answers, "fit/case": { status: "answered", value: { part: "own-case" } } };
	const parts = [{ kind: "case", part: { id: "own-case", name, boardForms: ["ATX"] } }];
	writeFileSync(file, JSON.stringify({ ...quietDesk, answers, parts }));
	const terminal = start({ words: ["--answers", file] });
	await terminal.waitFor("Go on");
	terminal.press(keys.down + keys.enter);
	await terminal.waitFor(/All your answers[\s\S]*Tab more/);
	const before = terminal.rows();
	expect(before[0]).toContain("boardwalk");
	expect(before.at(-2)).toContain("Tab more");
	expect(before.at(-1)).toBe("");
	terminal.press(keys.down.repeat(10));
	await terminal.waitFor((t) => t.marked()?.startsWith("Case: ") === true);
	expect(terminal.rows()[0]).toContain("boardwalk");
	expect(terminal.rows().filter((row) => row.includes("All your answers"))).toHaveLength(1);
	terminal.press(keys.interrupt);
	await terminal.ended();
	// The terminal is left as it was: it wraps again.
	expect(terminal.sent.lastIndexOf("\u001b[?7h")).toBeGreaterThan(terminal.sent.lastIndexOf("\u001b[?7l"));
});
