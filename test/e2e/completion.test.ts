import { execFileSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { commandNames } from "../../src/cli/command-table.ts";
import { Machine, program } from "./program.ts";
import { pty } from "./real-terminal.ts";
import { terminalsOfATest } from "./terminals-of-a-test.ts";

const bash = (() => {
	try {
		return execFileSync("bash", ["--version"], { encoding: "utf8" }).split("\n")[0] ?? "";
	} catch {
		return null;
	}
})();
if (bash === null) console.warn("No bash here: the tests of completion are skipped.");

const machine = new Machine();
let script = "";

beforeAll(async () => {
	const { stdout, stderr, exitCode } = await machine.run(["completion", "bash"]);
	expect([stderr, exitCode]).toEqual(["", 0]);
	script = stdout;
	machine.put("my walk.json", "{}");
	machine.put("my-walk.json", "{}");
	machine.put("page.txt", "");
	mkdirSync(join(machine.desk, "my shop"));
});
afterAll(() => machine.remove());

/** What bash would offer for the last of these words; words as bash cuts them, so that "=" stands alone. */
function offered(...words: readonly string[]): readonly string[] {
	const quoted = ["boardwalk", ...words].map((word) => `'${word.replaceAll("'", "'\\''")}'`).join(" ");
	const asked = `COMP_WORDS=(${quoted}); COMP_CWORD=${words.length}; _boardwalk; printf '%s\\0' "\${COMPREPLY[@]}"`;
	const given = execFileSync("bash", ["--norc", "--noprofile", "-c", `${script}\n${asked}`], {
		cwd: machine.desk,
		env: { PATH: process.env["PATH"], HOME: machine.folder },
		encoding: "utf8",
	});
	return given
		.split("\0")
		.filter((word) => word !== "")
		.sort();
}

describe.skipIf(bash === null)("completion in a real bash", () => {
	test.each<[string, string[], string[]]>([
		["commands", ["pl"], ["plan"]],
		["all commands", [""], [...commandNames].sort()],
		["a command behind a flag with a value", ["--answers", "a.json", "shor"], ["shortlist"]],
		["a command behind --flag=value", ["--answers", "=", "a.json", "shor"], ["shortlist"]],
		["words of own", ["own", "un"], ["undo", "unset"]],
		["words of walks", ["walks", "t"], ["take"]],
		["what can be read", ["read", ""], ["board", "case", "list", "processor"]],
		["ways of like", ["like", "a-board", "c"], ["cheaper", "cooler"]],
		["no ways in place of the board", ["like", ""], []],
		["kinds of schema", ["schema", "p"], ["parts", "platform", "processor"]],
		["kinds behind --kind", ["own", "import", "a.csv", "--kind", "me"], ["memory"]],
		["conditions", ["own", "offer", "a-board", "--condition", ""], ["new", "opened", "used"]],
		["paper behind =", ["sheet", "--paper", "=", "a"], ["a4"]],
		["languages, at the =", ["ask", "--language", "="], ["de", "en"]],
		["commands behind help", ["help", "doc"], ["doctor"]],
		["the shell", ["completion", ""], ["bash"]],
		["flags of one command", ["price-line", "--w"], ["--width", "--with-demo"]],
		["flags of a word", ["own", "offer", "--se"], ["--seen", "--seller"]],
		["no flag that it does not take", ["own", "show", "--se"], []],
		["flags of the walk", ["--r"], ["--record", "--replace"]],
		["nothing for an unknown command", ["dance", ""], []],
		["common flags for an unknown command", ["dance", "--pl"], ["--plain"]],
		["nothing behind a flag with words of one's own", ["own", "offer", "a", "--price", ""], []],
		["files behind --answers", ["shortlist", "--answers", "my"], ["my shop", "my walk.json", "my-walk.json"]],
		["files behind --to=", ["sheet", "--to", "=", "pa"], ["page.txt"]],
		["files behind a word", ["check", "pa"], ["page.txt"]],
		["files behind read board", ["read", "board", "pa"], ["page.txt"]],
		["a second file", ["merge", "page.txt", "my-"], ["my-walk.json"]],
		["no third", ["merge", "page.txt", "a", "my-"], []],
		["no flag behind --", ["check", "--", "--"], []],
	])("%s", (_, words, expected) => {
		expect(offered(...words)).toEqual(expected);
	});

	test("it is a sound script that says how to use it, prints nothing, and leaves bash's options alone", () => {
		expect(script).toMatch(
			/^# Completion of boardwalk for bash\. To use it in this bash:\n# {5}source <\(boardwalk completion bash\)\n/,
		);
		const run = (text: string) =>
			execFileSync("bash", ["--norc", "--noprofile", "-c", text], { cwd: machine.desk, encoding: "utf8" });
		const state = "set +o; shopt";
		expect(run(`${script}\n${state}`)).toBe(run(state));
		expect(run(`set -u\n${script}\ncomplete -p boardwalk`)).toBe("complete -F _boardwalk boardwalk\n");
	});

	test("works with unset names forbidden", () => {
		expect(() =>
			execFileSync("bash", [
				"--norc",
				"--noprofile",
				"-c",
				`set -u\n${script}\nCOMP_WORDS=(boardwalk own ""); COMP_CWORD=2; _boardwalk`,
			]),
		).not.toThrow();
	});
});

test("other shells are refused in clear words", async () => {
	expect(await machine.run(["completion", "zsh"])).toMatchObject({
		exitCode: 64,
		stderr: 'There is completion for bash only, and not for "zsh".\n',
	});
	expect(await machine.run(["completion"])).toMatchObject({ exitCode: 64, stderr: expect.stringMatching(/bash/) });
});

const { home, start } = terminalsOfATest();

describe.skipIf(bash === null || !pty)("the Tab key in a terminal", () => {
	test("completes a command, a word, and a file with a space in its name", async () => {
		writeFileSync(join(home().desk, "completion.sh"), script);
		writeFileSync(join(home().desk, "my walk.json"), "{}");
		const terminal = start({
			command: ["bash", "--norc", "--noprofile", "-i"],
			environment: { PS1: "ready> ", PROGRAM: program },
		});
		await terminal.waitFor("ready>");
		terminal.press("source completion.sh\r");
		await terminal.waitFor(/ready>[^>]*ready>/);
		terminal.press("boardwalk shor\t");
		await terminal.waitFor("boardwalk shortlist ");
		terminal.press("--ans\t");
		await terminal.waitFor("shortlist --answers ");
		terminal.press("my\t");
		await terminal.waitFor("--answers my\\ walk.json");
		writeFileSync(join(home().desk, "my-walk.json"), "{}");
		terminal.press("\u0015boardwalk check my\\ w\t");
		await terminal.waitFor("check my\\ walk.json");
		terminal.press("\u0015boardwalk check 'my w\t");
		await terminal.waitFor("check 'my walk.json'");
		terminal.press("\u0015exit\r");
		await terminal.ended();
	});
});
