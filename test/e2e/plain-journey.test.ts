import { spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync, mkdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { test as base, describe, expect } from "vitest";
import packageFacts from "../../package.json" with { type: "json" };
import { linesToShortlist } from "../plain/lines-to-shortlist.ts";
import { Machine, program, type Running, scenarioFile } from "./program.ts";

/** Each test has a machine to itself, so that they can run side by side. */
const test = base.extend<{ machine: Machine }>({
	machine: async ({ task: _task }, use) => {
		const machine = new Machine();
		await use(machine);
		machine.remove();
	},
});

const unprintable =
	// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not be there
	/[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]/;

/** Lines until the case has been named; the next question is about the graphics card. */
const untilCard = linesToShortlist.indexOf("wardrobe") + 1;

/** What is typed at questions of the short walk; all others are not sure. */
const shortAnswers: Readonly<Record<string, string>> = {
	"How much time do you have": "1",
	"Who gives the answers?": "1",
	"What will you do with this computer?": "1, 3",
	"How much money is there": "900",
	"How much may the board cost": "200",
	"Which processor will you use?": "deckhand",
	"Which case will the board go into?": "wardrobe",
};

/**
 * Goes on from wherever the walk stands to the shortlist, by what each screen asks: which questions come on the short way
 * hangs on the answers. Gives back the title of each screen but the last.
 */
async function toShortlist(walk: Running): Promise<readonly string[]> {
	const screens: string[] = [];
	for (let from = 0; screens.length < 40; ) {
		await walk.waitFor("\n> ");
		const screen = walk.said.stdout.slice(from);
		from = walk.said.stdout.length;
		if (screen.includes("Your shortlist")) return screens;
		screens.push(screen);
		const asked = Object.keys(shortAnswers).find((words) => screen.includes(words));
		// Where nothing is asked, Enter goes on: at the end of a tier, and where parts disagree.
		walk.type(
			asked
				? (shortAnswers[asked] ?? "")
				: screen.includes("Not sure\n")
					? "not sure"
					: screens.length === 1
						? "1"
						: "",
		);
	}
	throw new Error(`no shortlist after ${screens.length} screens:\n${walk.said.stdout}`);
}

const flat = (text: string) => text.replace(/\s+/g, " ");

/** A board of which every fact asked is told, from its name to its price. */
const boardTold = [
	"Wobblestone Harvest",
	"Harbour 2",
	"yes, I read it there",
	"microATX",
	"DDR5",
	"4",
	"128",
	"one 8-pin",
	"HDMI, DisplayPort",
	"6",
	"1",
	"2",
	"4",
	"yes",
	"99",
];

describe.concurrent("a walk line by line", () => {
	test("leads to a shortlist and a written sheet, in well under sixty answers, and ends with 0", async ({
		machine,
	}) => {
		const lines = [...linesToShortlist, "1", "my sheet.md", "s"];
		expect(lines.length).toBeLessThanOrEqual(60);
		const { exitCode, stdout, stderr } = await machine.run(["--plain"], lines);
		expect(exitCode).toBe(0);
		expect(stdout).toContain("Closest to your answers: ");
		expect(stdout).not.toMatch(/No line has|There is no line|\nType /);
		const sheet = machine.read("my sheet.md");
		expect(sheet).toMatch(/^# What to look for in a board\n/);
		expect(sheet).toContain("Tallowfinch Deckhand");
		expect(flat(stdout)).toContain("The sheet is written: ");
		expect(stderr).toContain(join(machine.desk, "my sheet.md"));
		expect(machine.keptWalks()).toEqual([expect.stringMatching(/^walk-\d{4}-\d\d-\d\d\.json$/)]);
		expect(stderr).toContain(join(machine.walks, machine.keptWalks()[0] ?? "-"));
		if (process.platform !== "win32")
			expect(statSync(join(machine.walks, machine.keptWalks()[0] ?? "-")).mode & 0o777).toBe(0o600);
	});

	test("left early ends with 1, keeps the answers, and can be gone on with", async ({ machine }) => {
		const early = await machine.run(["--plain"], [...linesToShortlist.slice(0, untilCard), "s"]);
		expect(early.exitCode).toBe(1);
		const [, file = ""] = /Your answers are kept in (.*)\n/.exec(early.stderr) ?? [];
		const given = Object.keys(JSON.parse(readFileSync(file, "utf8")).answers);
		expect([given.length, ...given.slice(-2)]).toEqual([untilCard - 1, "fit/processor", "fit/case"]);
		const later = await machine.run(["--plain", "--answers", file], ["1", ...linesToShortlist.slice(untilCard), "s"]);
		expect(later.exitCode).toBe(0);
		expect(flat(later.stdout)).toMatch(new RegExp(`${untilCard - 1} of \\d+ questions are answered already\\.`));
		expect(later.stdout).not.toContain("Which case will the board go into?");
		const atOnce = await machine.run(["--plain", "--answers", "at-once.json"], [...linesToShortlist, "s"]);
		expect(atOnce.exitCode).toBe(0);
		expect(JSON.parse(readFileSync(file, "utf8"))).toEqual(JSON.parse(machine.read("at-once.json")));
	});

	test("offers to go on with a walk kept before", async ({ machine }) => {
		await machine.run(["--plain"], [...linesToShortlist.slice(0, untilCard), "s"]);
		const { exitCode, stdout } = await machine.run(["--plain"], ["1", ...linesToShortlist.slice(untilCard), "s"]);
		expect(flat(stdout)).toMatch(new RegExp(`Go on with my walk: ${untilCard - 1} of \\d+ answered`));
		expect(exitCode).toBe(0);
		expect(machine.keptWalks()).toHaveLength(1);
	});

	test("left at once leaves nothing behind", async ({ machine }) => {
		const { exitCode, stderr } = await machine.run(["--plain"], ["s"]);
		expect([exitCode, stderr, machine.keptWalks(), machine.onDesk()]).toEqual([1, "", [], []]);
	});

	test("ends where its input ends, with everything kept", async ({ machine }) => {
		const { exitCode } = await machine.run(["--plain", "--answers", "my.json"], linesToShortlist.slice(0, 3));
		expect(exitCode).toBe(1);
		expect(Object.keys(JSON.parse(machine.read("my.json")).answers)).toEqual(["about/walk-length", "about/who"]);
	});

	test("says the same, byte for byte, each time", async ({ machine }) => {
		const lines = ["?", ...linesToShortlist, "boards left, and boards taken out", "b", "1", "sheet.txt", "s"];
		const other = new Machine();
		try {
			const [one, two] = await Promise.all([machine.run(["--plain"], lines), other.run(["--plain"], lines)]);
			const nameless = (text: string, { folder }: Machine) => text.replaceAll(folder, "HOME");
			expect(nameless(two.stdout, other)).toBe(nameless(one.stdout, machine));
			expect(nameless(two.stderr, other)).toBe(nameless(one.stderr, machine));
			expect(other.read("sheet.txt")).toBe(machine.read("sheet.txt"));
			expect(readFileSync(join(other.walks, other.keptWalks()[0] ?? "-"), "utf8")).toBe(
				readFileSync(join(machine.walks, machine.keptWalks()[0] ?? "-"), "utf8"),
			);
		} finally {
			other.remove();
		}
	});

	test("killed in the middle has kept every answer given before, and goes on in the same file", async ({ machine }) => {
		const walk = machine.start("--plain", "--answers", "my.json");
		for (const [line, asks] of [
			["1", "How much time do you have"],
			["1", "Who gives the answers?"],
			["1", "What will you do with this computer?"],
			["1, 3", "How much money is there"],
		] as const) {
			walk.type(line);
			await walk.waitFor(asks);
		}
		walk.child.kill("SIGKILL");
		expect((await walk.ended).signal).toBe("SIGKILL");
		expect(Object.keys(JSON.parse(machine.read("my.json")).answers)).toEqual([
			"about/walk-length",
			"about/who",
			"about/activities",
		]);
		const later = machine.start("--plain", "--answers", "my.json");
		const screens = await toShortlist(later);
		later.type("s");
		expect((await later.ended).exitCode).toBe(0);
		expect(later.said.stdout).not.toContain("open in another window");
		const questions = screens.filter((screen) => screen.includes("Not sure\n"));
		expect(questions.length).toBeGreaterThan(4);
		expect(Object.keys(JSON.parse(machine.read("my.json")).answers)).toHaveLength(3 + questions.length);
		expect(machine.onDesk()).toEqual(["my.json"]);
	});
});

describe.concurrent("the short walk line by line", () => {
	test("ends with why it asks no more, a shortlist and a sheet, in at most eighteen answers", async ({ machine }) => {
		const walk = machine.start("--plain", "--answers", "my.json");
		await toShortlist(walk);
		const told = flat(walk.said.stdout);
		expect(told).toContain("The short walk ends here");
		expect(told).toMatch(/\d+ questions were not asked\. The long walk asks them\./);
		walk.type("make the sheet for the shop");
		await walk.waitFor("\n> ");
		walk.type("my sheet.md");
		await walk.waitFor("The sheet is written");
		walk.type("s");
		expect((await walk.ended).exitCode).toBe(0);
		expect(machine.read("my sheet.md")).toMatch(/^# What to look for in a board\n/);
		const { answers } = JSON.parse(machine.read("my.json"));
		expect(answers["about/walk-length"].value).toBe("short");
		expect(Object.keys(answers).length).toBeLessThanOrEqual(18);
		expect(told).not.toMatch(/No line has|There is no line/);
	});
});

describe.concurrent("a board typed in from its page", () => {
	test("is judged beside the others, stands on the shortlist and in the sheet", async ({ machine }) => {
		const answers = machine.putScenario("quiet-desk");
		expect(boardTold.length).toBeLessThanOrEqual(15);
		const lines = ["1", "type in a board", ...boardTold, "1", "1", "sheet.txt", "s"];
		const { exitCode, stdout } = await machine.run(["--plain", "--answers", answers], lines);
		expect(exitCode).toBe(0);
		expect(stdout).toMatch(/: Wobblestone Harvest\n/);
		expect(flat(stdout)).toMatch(/of 113 boards left/);
		expect(flat(machine.read("sheet.txt"))).toMatch(/: Wobblestone Harvest - Fit: Fits .*? - Price: EUR 99\.00/);
		const shortlist = await machine.run(["shortlist", "--answers", answers, "--json"]);
		const found = JSON.parse(shortlist.stdout).shortlist.find(
			({ boardId }: { boardId: string }) => boardId === "wobblestone-harvest",
		);
		expect(found).toMatchObject({ verdict: "fits", priceMinor: 9900, currency: "EUR" });
	});

	test("travels in the answers file: on another machine the result is the same", async ({ machine }) => {
		const answers = machine.putScenario("quiet-desk");
		await machine.run(["--plain", "--answers", answers], ["1", "type in a board", ...boardTold, "s"]);
		const other = new Machine();
		try {
			other.put("from-a-friend.json", readFileSync(answers, "utf8"));
			for (const command of [["shortlist", "--json"], ["sheet"], ["why", "wobblestone-harvest"]]) {
				const [here, there] = await Promise.all([
					machine.run([...command, "--answers", answers]),
					other.run([...command, "--answers", "from-a-friend.json"]),
				]);
				expect(there).toEqual(here);
				expect(here.stdout).toMatch(/[Ww]obblestone.[Hh]arvest/);
				expect([here.exitCode, here.stderr]).toEqual([0, ""]);
			}
		} finally {
			other.remove();
		}
	});

	test("that does not fit is said not to, with what stops it first", async ({ machine }) => {
		const answers = machine.putScenario("quiet-desk");
		const wrong = boardTold.map((line) => (line === "Harbour 2" ? "Kettle 7" : line));
		const { stdout } = await machine.run(["--plain", "--answers", answers], ["1", "type in a board", ...wrong, "s"]);
		const [, checked = ""] = /What was checked\n([\s\S]*)/.exec(stdout) ?? [];
		expect(flat(checked)).toMatch(
			/^- Stops it - Socket: The board has socket Kettle 7; the processor needs Harbour 2\./,
		);
		const { stdout: shortlist } = await machine.run(["shortlist", "--answers", answers]);
		expect(shortlist).not.toContain("Wobblestone Harvest");
	});

	test("of which little is on the page is neither good nor bad for it", async ({ machine }) => {
		const answers = machine.putScenario("quiet-desk");
		const bare = ["Wobblestone Riddle", ...boardTold.slice(1).map(() => "not on the page")];
		await machine.run(["--plain", "--answers", answers], ["1", "type in a board", ...bare, "s"]);
		const { stdout } = await machine.run(["why", "wobblestone-riddle", "--answers", answers]);
		expect(stdout).toMatch(/^Wobblestone Riddle\n\nCan't tell/);
		expect(stdout).not.toContain("Stops it");
	});

	test("with parts of one's own, and no market part at all, gives the walk its board", async ({ machine }) => {
		const { exitCode, stdout } = await machine.run(["sheet", "--answers", scenarioFile("typed-in")]);
		expect(exitCode).toBe(0);
		expect(stdout).toContain("Copperbeech Bench");
	});
});

describe.concurrent("results for other programs", () => {
	test.for(["quiet-desk", "first-guess", "handed-down"])(
		"shortlist --json of %s says what its text says",
		async (name, { machine }) => {
			const args = ["shortlist", "--answers", scenarioFile(name)];
			const [text, json] = await Promise.all([machine.run(args), machine.run([...args, "--json"])]);
			expect([text.exitCode, json.exitCode, text.stderr, json.stderr]).toEqual([0, 0, "", ""]);
			const advice = JSON.parse(json.stdout);
			expect(advice.schema).toBe("boardwalk/advice@1");
			const said = flat(text.stdout);
			for (const { score, priceMinor, currency, for: good, against, unknown } of advice.shortlist) {
				expect(said).toContain(`Score: ${score.mid} points of 100`);
				if (priceMinor !== null) expect(said).toContain(`Price: ${currency} ${(priceMinor / 100).toFixed(2)}`);
				for (const reason of [...good, ...against, ...unknown]) expect(said).toContain(flat(reason.text));
			}
			expect(said.match(/Score: /g)?.length ?? 0).toBe(advice.shortlist.length);
			// What only wants a thought stands in the sheet; what does not go together stands here too.
			for (const { verdict, text: words } of advice.buildFindings)
				if (verdict === "does-not-fit") expect(said).toContain(flat(words));
		},
	);

	test("commands change nothing and leave nothing behind", async ({ machine }) => {
		const answers = machine.putScenario("first-guess");
		const before = machine.read("first-guess.json");
		for (const command of ["shortlist", "sheet"]) await machine.run([command, "--answers", answers]);
		expect(machine.read("first-guess.json")).toBe(before);
		expect([machine.onDesk(), machine.keptWalks()]).toEqual([["first-guess.json"], []]);
	});
});

describe.concurrent("a market of one's own", () => {
	test("without any part gives what to look for", async ({ machine }) => {
		mkdirSync(join(machine.desk, "empty"));
		const parts = ["--parts", "empty"];
		const shortlist = await machine.run(["shortlist", "--answers", scenarioFile("before-any-board"), ...parts]);
		expect(shortlist.exitCode).toBe(0);
		expect(shortlist.stdout).toMatch(/^What to look for\n/);
		expect(shortlist.stderr).toContain("there is no .json file in this folder");
		const sheet = await machine.run(["sheet", "--answers", scenarioFile("before-any-board"), ...parts]);
		expect(flat(sheet.stdout)).toContain("what to look for in any board");
		expect(sheet.stdout).toContain("THE BOARD MUST HAVE");
		expect(sheet.stdout).not.toContain("SHORTLIST");
	});

	test("without any part can be walked from start to sheet", async ({ machine }) => {
		mkdirSync(join(machine.desk, "empty"));
		const unsure = (count: number) => Array.from({ length: count }, () => "not sure");
		const lines = ["1", "1", ...unsure(4), ...unsure(8), "", ...unsure(4), "", ...unsure(3), "", "1", "what.md", "s"];
		const { exitCode, stdout } = await machine.run(["--plain", "--parts", "empty"], lines);
		expect(exitCode).toBe(0);
		expect(stdout).toContain("There are no boards to choose from here.");
		expect(machine.read("what.md")).toContain("what to look for in any board");
	});

	test("takes the place of the demonstration, or stands beside it", async ({ machine }) => {
		machine.put("shop/boards.json", {
			schema: "boardwalk/parts@1",
			boards: [{ id: "one", name: "Wobblestone One", socket: "Harbour 2" }],
		});
		const count = async (...flags: string[]) => {
			const args = ["shortlist", "--json", "--answers", scenarioFile("quiet-desk"), "--parts", "shop", ...flags];
			return JSON.parse((await machine.run(args)).stdout).counts.all;
		};
		expect([await count(), await count("--with-demo")]).toEqual([1, 113]);
	});

	test("with a slip in it ends with 65 and one line: file, path, what was expected", async ({ machine }) => {
		const board = { id: "one", name: "Wobblestone One", memory: { slots: "four" } };
		machine.put("shop/b.json", { schema: "boardwalk/parts@1", boards: [board] });
		const { exitCode, stdout, stderr } = await machine.run([
			"shortlist",
			"--answers",
			scenarioFile("quiet-desk"),
			"--parts",
			"shop",
		]);
		expect([exitCode, stdout]).toEqual([65, ""]);
		expect(stderr).toBe(
			`${join("shop", "b.json")}: boards[0].memory.slots: expected a number. Nothing was changed. Mend it, or add --sound-only to go on with its sound parts.\n`,
		);
	});

	test("that is no JSON ends with 65, by line and column", async ({ machine }) => {
		machine.put("shop/b.json", '{\n\t"schema": "boardwalk/parts@1",\n\t"boards": [,]\n}\n');
		const { exitCode, stderr } = await machine.run(["--plain", "--parts", "shop"], ["s"]);
		expect([exitCode, stderr]).toEqual([
			65,
			`${join("shop", "b.json")}: this is no sound JSON, at line 3, column 13. Nothing was changed.\n`,
		]);
	});

	test("cannot send anything to the terminal by its names", async ({ machine }) => {
		const nasty = "\u001b]52;c;c3RvbGVu\u0007Wobble\u001b[2J\u202estone\u009b31m \u0007Rook\u0000\r\nSecond line";
		machine.put("shop/b.json", {
			schema: "boardwalk/parts@1",
			boards: [
				{
					id: "rook",
					name: nasty,
					maker: nasty,
					socket: "Harbour 2",
					evidence: { form: { standing: "stated", quote: nasty } },
				},
			],
			processors: [{ id: "nasty", name: nasty, socket: "Harbour 2" }],
		});
		const parts = ["--parts", "shop"];
		const answers = ["--answers", scenarioFile("quiet-desk")];
		const runs = await Promise.all([
			machine.run(["shortlist", ...answers, ...parts]),
			machine.run(["shortlist", "--json", ...answers, ...parts]),
			machine.run(["sheet", ...answers, ...parts]),
			machine.run(["why", "rook", ...parts]),
			machine.run(["check", "shop/b.json"]),
			machine.run(["--plain", ...parts], ["1", "200", "1", "not sure", "m", "3", "1", "s"]),
		]);
		for (const { stdout, stderr } of runs) expect(stdout + stderr).not.toMatch(unprintable);
		expect(runs[0]?.stdout).toContain("Rook");
		expect(runs[5]?.stdout).toContain("Rook");
		expect(runs.map(({ stdout }) => stdout).join("")).not.toContain("c3RvbGVu");
	});
});

describe.concurrent("a file of answers", () => {
	test.for<[string, (sound: string) => string, RegExp]>([
		[
			"cut off",
			(sound) => sound.slice(0, -40),
			/my\.json: this is no sound JSON: it stops in the middle\. Nothing was changed\.\n$/,
		],
		["empty", () => "", /my\.json: the file is empty, and JSON was expected\. Nothing was changed\.\n$/],
		[
			"of another schema",
			(sound) => sound.replace("answers@1", "answers@7"),
			/my\.json: it was written by a newer boardwalk/,
		],
		[
			"with a value that cannot be",
			(sound) => sound.replace('"a-lot"', '"lots"'),
			/my\.json: answers\.about\/quiet\.value: expected one of a-lot/,
		],
	])("that is %s ends with 65 and stays as it is, to the byte", async ([, spoil, words], { machine }) => {
		const file = machine.putScenario("quiet-desk");
		const spoilt = spoil(readFileSync(file, "utf8"));
		machine.put("my.json", spoilt);
		for (const args of [["shortlist"], ["--plain"]]) {
			const { exitCode, stdout, stderr } = await machine.run([...args, "--answers", "my.json"], ["1", "200", "s"]);
			expect([exitCode, stdout]).toEqual([65, ""]);
			expect(stderr).toMatch(words);
			expect(stderr.trimEnd()).not.toContain("\n");
		}
		expect(machine.read("my.json")).toBe(spoilt);
		expect(machine.onDesk()).toEqual(["my.json", "quiet-desk.json"]);
	});

	test("is looked through for every mistake, also for values that a question cannot have", async ({ machine }) => {
		const file = machine.putScenario("quiet-desk");
		machine.put("my.json", readFileSync(file, "utf8").replace('"a-lot"', '"lots"').replace('"a-little"', '"none"'));
		const { exitCode, stdout, stderr } = await machine.run(["check", "my.json"]);
		expect([exitCode, stdout]).toEqual([65, ""]);
		expect(stderr.split("\n")).toEqual([
			expect.stringContaining("my.json: answers.about/quiet.value: expected one of"),
			expect.stringContaining("my.json: answers.features/full-speed.value: expected one of"),
			"2 mistakes in all.",
			"",
		]);
	});

	test("with a part that is not there is told, and counts as not sure", async ({ machine }) => {
		const file = machine.putScenario("quiet-desk");
		machine.put("my.json", readFileSync(file, "utf8").replace("larkspur-wardrobe", "larkspur-bathtub"));
		const { exitCode, stdout, stderr } = await machine.run(["shortlist", "--answers", "my.json"]);
		expect(exitCode).toBe(0);
		expect(stderr).toBe('my.json: Case: there is no part "larkspur-bathtub" here, so this counts as not sure.\n');
		expect(stdout).toMatch(/^Your shortlist\n/);
		expect((await machine.run(["check", "my.json"])).exitCode).toBe(0);
	});

	test("given with other boards to choose from is told", async ({ machine }) => {
		machine.put("shop/a.json", { schema: "boardwalk/parts@1" });
		const { exitCode, stderr } = await machine.run([
			"shortlist",
			"--answers",
			scenarioFile("before-any-board"),
			"--parts",
			"shop",
		]);
		expect(exitCode).toBe(0);
		expect(stderr).toContain("given with other boards to choose from");
	});

	test("that is missing or a folder ends with 66", async ({ machine }) => {
		const missing = await machine.run(["shortlist", "--answers", "gone.json"]);
		expect(missing).toMatchObject({
			exitCode: 66,
			stdout: "",
			stderr: "gone.json: there is no such file or folder.\n",
		});
		expect(await machine.run(["sheet", "--answers", "."])).toMatchObject({ exitCode: 66, stdout: "" });
		expect(await machine.run(["shortlist", "--answers", scenarioFile("quiet-desk"), "--parts", "gone"])).toMatchObject({
			exitCode: 66,
			stderr: "gone: there is no such file or folder.\n",
		});
	});
});

describe.concurrent("the sheet", () => {
	const args = ["sheet", "--answers", scenarioFile("quiet-desk")];

	test("is written in the form that the name says, each with the same boards", async ({ machine }) => {
		for (const ending of ["md", "txt", "json"]) {
			const { exitCode, stdout, stderr } = await machine.run([...args, "--to", `sheet.${ending}`]);
			expect([exitCode, stdout]).toEqual([0, ""]);
			expect(stderr).toContain(join(machine.desk, `sheet.${ending}`));
			expect(machine.read(`sheet.${ending}`)).toContain("Pennywhistle Hornpipe");
		}
		const names = JSON.parse(machine.read("sheet.json")).shortlist.map(({ name }: { name: string }) => name);
		for (const ending of ["md", "txt"]) {
			const said = machine.read(`sheet.${ending}`);
			const places = names.map((name: string) => said.indexOf(`: ${name} (invented)`));
			expect(Math.min(...places)).toBeGreaterThan(0);
		}
	});

	test("goes to standard output where no file is named, as a file would hold it", async ({ machine }) => {
		await machine.run([...args, "--to", "sheet.txt"]);
		const { stdout, stderr } = await machine.run(args);
		expect(stdout).toBe(machine.read("sheet.txt"));
		expect(stderr).toBe("");
		expect((await machine.run([...args, "--to", "-"])).stdout).toBe(stdout);
	});

	test("does not take the place of a file, ends with 73, unless that is asked for", async ({ machine }) => {
		machine.put("sheet.md", "something dear");
		const kept = await machine.run([...args, "--to", "sheet.md"]);
		expect([kept.exitCode, kept.stdout]).toEqual([73, ""]);
		expect(kept.stderr).toMatch(/sheet\.md is there already and was kept\. .*--replace/);
		expect(machine.read("sheet.md")).toBe("something dear");
		const replaced = await machine.run([...args, "--to", "sheet.md", "--replace"]);
		expect(replaced.exitCode).toBe(0);
		expect(machine.read("sheet.md")).toMatch(/^# /);
		expect(machine.onDesk()).toEqual(["sheet.md"]);
	});

	test("that cannot be written says why: no such folder, below a file, no such form", async ({ machine }) => {
		machine.put("a.txt", "a file");
		const refused = async (to: string) => {
			const { exitCode, stderr } = await machine.run([...args, "--to", to]);
			expect(stderr.trimEnd()).not.toContain("\n");
			return [exitCode, stderr];
		};
		expect(await refused("gone/sheet.md")).toEqual([73, expect.stringContaining("there is no such file or folder")]);
		expect(await refused("a.txt/sheet.md")).toEqual([73, expect.stringContaining("is a file, not a folder")]);
		expect(await refused("sheet.pdf")).toEqual([64, expect.stringContaining(".md, .txt, .json")]);
		expect(await refused("sheet")).toEqual([64, expect.stringContaining(".md, .txt, .json")]);
		expect(machine.onDesk()).toEqual(["a.txt"]);
	});

	test("inside a walk is told where it went, or why not, and the walk goes on", async ({ machine }) => {
		machine.put("sheet.md", "something dear");
		const answers = machine.putScenario("quiet-desk");
		const { exitCode, stdout } = await machine.run(
			["--plain", "--answers", answers],
			["1", "1", "sheet.md", "sheet.pdf", "other.md", "2", "2", "s"],
		);
		expect(exitCode).toBe(0);
		expect(flat(stdout)).toContain("sheet.md is there already");
		expect(flat(stdout)).toContain(".md, .txt, .json");
		expect(machine.read("sheet.md")).toBe("something dear");
		// The line for a usual name takes the next free one.
		expect(machine.onDesk()).toEqual(["board-sheet-2.md", "board-sheet.md", "other.md", "quiet-desk.json", "sheet.md"]);
		expect(machine.read("board-sheet-2.md")).toBe(machine.read("other.md"));
	});
});

describe.concurrent("the command line", () => {
	test.for<[string[], RegExp]>([
		[["shortlst"], /^There is no command "shortlst"\. Did you mean shortlist\?\n$/],
		[["--answer", "a.json"], /^There is no flag --answer\. Did you mean --answers\?\n$/],
		[["shortlist"], /^This needs --answers FILE/],
		[["why", "fit/sockt"], /^There is no rule, criterion or board "fit\/sockt"\. Did you mean fit\/socket/],
		[["schema", "bord"], /^There is no schema "bord"\. Did you mean board/],
		[["check"], /^Which file\?/],
	])("%j ends with 64, says what is meant, and nothing on standard output", async ([args, words], { machine }) => {
		const { exitCode, stdout, stderr } = await machine.run(args);
		expect([exitCode, stdout]).toEqual([64, ""]);
		expect(stderr).toMatch(words);
	});

	test.for([["--help"], ["shortlst", "-h"]])("%s gives help on standard output", async (args, { machine }) => {
		const { exitCode, stdout, stderr } = await machine.run(args);
		expect([exitCode, stderr]).toEqual([0, ""]);
		expect(stdout).toMatch(/^boardwalk helps you choose the mainboard/);
		expect(stdout).toContain("--answers FILE");
	});

	test.for(["--version", "-V"])("%s gives the version alone", async (flag, { machine }) => {
		expect(await machine.run([flag])).toMatchObject({ exitCode: 0, stdout: `${packageFacts.version}\n`, stderr: "" });
	});

	test("without a terminal and without a command it shows a made-up person's shortlist, and asks nothing", async ({
		machine,
	}) => {
		const { exitCode, stdout, stderr } = await machine.run([]);
		expect([exitCode, stderr]).toEqual([0, ""]);
		expect(stdout).toContain("made-up person");
		const [, shown = ""] = /\n\n([\s\S]*)\n\n.*--plain/.exec(stdout) ?? [];
		const { stdout: shortlist } = await machine.run(["shortlist", "--answers", scenarioFile("quiet-desk")]);
		expect(shown).toContain(shortlist.trim());
		expect([machine.onDesk(), machine.keptWalks()]).toEqual([[], []]);
	});

	test("a reader that has had enough ends it quietly", async ({ machine }) => {
		const node = `"${process.execPath}" "${program}"`;
		// More than a pipe holds, so that the program writes to a pipe that nobody reads.
		for (const command of ["schema parts", "sources", `sheet --answers "${scenarioFile("quiet-desk")}"`, "--plain"]) {
			const shell = spawn("sh", ["-c", `{ ${node} ${command}; echo "ended with $?" >&2; } </dev/null | head -1`], {
				cwd: machine.desk,
				env: machine.environment(),
			});
			let [stdout, stderr] = ["", ""];
			shell.stdout.on("data", (text) => {
				stdout += text;
			});
			shell.stderr.on("data", (text) => {
				stderr += text;
			});
			await once(shell, "close");
			expect(stdout.split("\n")).toHaveLength(2);
			expect(stderr, command).toMatch(/^(?:Your answers.*\n.*\n)?ended with [01]\n$/);
		}
	});

	test("every command that reads or tells something ends with 0 and keeps quiet on standard error", async ({
		machine,
	}) => {
		const runs = await Promise.all([
			machine.run(["why", "fit/socket"]),
			machine.run(["why", "rescue"]),
			machine.run(["why", "pennywhistle-polka", "--answers", scenarioFile("quiet-desk")]),
			machine.run(["schema", "board"]),
			machine.run(["schema", "answers"]),
			machine.run(["sources"]),
			machine.run(["sources", "--json"]),
			machine.run(["check", scenarioFile("quiet-desk")]),
		]);
		for (const { exitCode, stderr, stdout } of runs) {
			expect([exitCode, stderr]).toEqual([0, ""]);
			expect(stdout).toMatch(/\S\n$/);
			expect(stdout).not.toMatch(/undefined|NaN|\[object/);
		}
		expect(JSON.parse(runs[3]?.stdout ?? "").type).toBe("object");
		expect(JSON.parse(runs[6]?.stdout ?? "").length).toBeGreaterThan(5);
	});

	test("two walks in one file do not write over each other", async ({ machine }) => {
		const first = machine.start("--plain", "--answers", "my.json");
		first.type("1");
		await first.waitFor("How much time do you have");
		first.type("1");
		await first.waitFor("Who gives the answers?");
		const second = await machine.run(["--plain", "--answers", "my.json"], ["1", "1", "s"]);
		expect(flat(second.stdout)).toContain("This walk is open in another window");
		first.type("s");
		first.child.stdin.end();
		await first.ended;
		expect(Object.keys(JSON.parse(machine.read("my.json")).answers)).toEqual(["about/walk-length"]);
		expect(machine.keptWalks().filter((name) => name.endsWith(".json"))).toHaveLength(1);
		expect(existsSync(join(machine.desk, "my.json.lock"))).toBe(false);
	});
});
