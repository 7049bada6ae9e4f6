import { copyFileSync, mkdirSync, readdirSync, readFileSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { walks } from "../../src/cli/walks-command.ts";
import { answersTemplate } from "../../src/parts/answers-in-html.ts";
import { scenarioFile } from "../e2e/program.ts";
import { walkOf } from "../walk/made-up-walks.ts";
import { commandRuns } from "./run-command.ts";

const folder = () => path("state", "boardwalk", "walks");
const { path, run, refusal } = commandRuns("walks", (args, streams) => walks(args, streams, "2026-11-28", folder()));

/** Puts an invented person's walk into the folder; the later ones count as written later. */
function keep(name: string, scenario = "quiet-desk", more: object = {}): string {
	mkdirSync(folder(), { recursive: true });
	const file = join(folder(), name);
	writeFileSync(file, JSON.stringify({ ...walkOf(scenario), ...more }));
	const minutes = readdirSync(folder()).length;
	utimesSync(file, minutes * 60, minutes * 60);
	return file;
}
const files = () => readdirSync(folder()).sort();
const nameIn = (file: string) => JSON.parse(readFileSync(join(folder(), file), "utf8")).name;

describe("boardwalk walks", () => {
	test("says where walks would lie while there are none", () => {
		expect(run().out).toBe(`No walk is kept yet. They would lie in ${folder()}.\n`);
	});

	test("lists each with its file, its name and how far it is, the last written first", () => {
		keep("walk-1.json");
		keep("walk-2.json", "first-guess", { name: "For\nOma" });
		expect(run().out.split("\n")).toEqual([
			`Walks in ${folder()}:`,
			expect.stringMatching(/^walk-2\.json, For Oma: \d+ of \d+ answered.*, 4 days ago$/),
			expect.stringMatching(/^walk-1\.json: \d+ of \d+ answered.*, 4 days ago$/),
			"",
		]);
		expect(JSON.parse(run("--json").out)).toMatchObject({
			schema: "boardwalk/walks@1",
			walks: [{ file: join(folder(), "walk-2.json"), name: "For Oma" }, { name: null }],
		});
	});

	test("tells what was set aside, and what a newer program wrote; that one stays", () => {
		const newer = keep("walk-1.json", "quiet-desk", { schema: "boardwalk/answers@3" });
		writeFileSync(join(folder(), "walk-2.json"), "{");
		const { err } = run();
		expect(err).toContain(`A damaged walk was set aside: ${join(folder(), "walk-2.json")}.damaged`);
		expect(err).toContain(`A newer boardwalk wrote this walk, so it is left as it is: ${newer}`);
		expect(files()).toEqual(["walk-1.json", "walk-2.json.damaged"]);
		expect(refusal("name", "walk-1", "Mine")).toMatchObject({
			code: 65,
			message: expect.stringMatching(/written by a newer boardwalk .*Nothing was changed\./),
		});
		expect(refusal("copy", "walk-1")).toMatchObject({ code: 65 });
	});
});

describe("one walk", () => {
	test("is named by its file, by its name, or by a path", () => {
		const file = keep("walk-1.json");
		for (const [how, name] of [
			["walk-1.json", "One"],
			["walk-1", "Two"],
			["two", "\u6f22".repeat(80)],
			[file, "CON"],
			["con", "../up"],
			["../up", "-"],
		] as const) {
			expect(run("name", how, name).out).toBe(`This walk is now called ${name}.\n`);
			expect(nameIn("walk-1.json")).toBe(name);
		}
		expect(files()).toEqual(["walk-1.json"]);
	});

	test.each([
		["", "A name has 1 to 80 letters, and this one has 0."],
		["\u202e\u0007", "A name has 1 to 80 letters, and this one has 0."],
		["a".repeat(81), "A name has 1 to 80 letters, and this one has 81."],
	])("is not called %j", (name, words) => {
		keep("walk-1.json");
		expect(refusal("name", "walk-1", name)).toMatchObject({ code: 64, message: words });
	});

	test("is copied with a name that tells it apart, cut between letters where it is long", () => {
		keep("walk-1.json", "quiet-desk", { name: "\u{1f468}\u200d\u{1f469}\u200d\u{1f467}".repeat(10) });
		expect(run("copy", "walk-1").out).toContain("walk-2026-11-28.json");
		expect(nameIn("walk-2026-11-28.json")).toBe(`${"\u{1f468}\u200d\u{1f469}\u200d\u{1f467}".repeat(9)} (copy)`);
		keep("walk-2.json");
		run("copy", "walk-2");
		expect(nameIn("walk-2026-11-28-2.json")).toBe("A walk of 2026-11-24 (copy)");
		for (const file of ["walk-2026-11-28-2", "walk-2026-11-28-3"]) run("copy", file);
		expect(nameIn("walk-2026-11-28-3.json")).toBe("A walk of 2026-11-24 (copy 2)");
		expect(nameIn("walk-2026-11-28-4.json")).toBe("A walk of 2026-11-24 (copy 3)");
	});

	test("is removed and brought back, with nothing lost", () => {
		const file = keep("walk-1.json", "quiet-desk", { name: "For Oma" });
		const text = readFileSync(file, "utf8");
		expect(run("remove", "For Oma").out).toBe(
			`Removed: For Oma. It now lies in ${file}.removed-1.\nTo bring it back: boardwalk walks undo\n`,
		);
		expect(run().out).toContain("No walk is kept yet");
		expect(run("undo").out).toBe(`Brought back: For Oma. It is kept in ${file}.\n`);
		expect(readFileSync(file, "utf8")).toBe(text);
		expect(refusal("undo")).toMatchObject({ code: 64, message: "Nothing was removed that could be brought back." });
	});

	test("that is open in another window is neither removed nor named", () => {
		const file = keep("walk-1.json");
		writeFileSync(`${file}.lock`, String(process.ppid));
		const words = expect.stringContaining(`open in another window (process ${process.ppid})`);
		expect(refusal("remove", "walk-1")).toMatchObject({ code: 73, message: words });
		expect(refusal("name", "walk-1", "Mine")).toMatchObject({ code: 73, message: words });
		expect(nameIn("walk-1.json")).toBeUndefined();
	});

	test("outside the folder is never removed, whatever leads there", () => {
		keep("walk-1.json");
		const outside = path("mine.json");
		copyFileSync(scenarioFile("quiet-desk"), outside);
		for (const named of [outside, join(folder(), "..", "..", "..", "mine.json")])
			expect(refusal("remove", named)).toMatchObject({
				code: 64,
				message: expect.stringContaining("is not among the kept walks, so it was not removed"),
			});
		expect(readFileSync(outside, "utf8")).toBe(readFileSync(scenarioFile("quiet-desk"), "utf8"));
	});

	test("of two that are called alike is asked for by file", () => {
		keep("walk-1.json", "quiet-desk", { name: "Oma" });
		keep("walk-2.json", "quiet-desk", { name: "oma" });
		expect(refusal("remove", "OMA")).toMatchObject({
			code: 64,
			message: expect.stringContaining("walk-2.json, walk-1.json"),
		});
		expect(files()).toEqual(["walk-1.json", "walk-2.json"]);
	});

	test("that is not there is told, with what was perhaps meant", () => {
		keep("walk-1.json", "quiet-desk", { name: "For Oma" });
		expect(refusal("remove", "For Opa")).toMatchObject({
			code: 66,
			message: expect.stringMatching(/^There is no walk "For Opa" in .*Did you mean For Oma/),
		});
		expect(refusal("remove", "\u001b]0;x\u0007zz").message).not.toContain("\u001b");
	});
});

describe("a friend's file", () => {
	test("is taken in as a copy, with its name, and stays as it is", () => {
		const given = path("mia.json");
		writeFileSync(given, JSON.stringify({ ...walkOf("first-guess"), schema: "boardwalk/answers@1" }));
		const text = readFileSync(given, "utf8");
		expect(run("take", given).out).toMatch(/^Taken in: a walk of 2026-11-24\. It is kept in .*walk-2026-11-28\.json;/);
		expect(readFileSync(given, "utf8")).toBe(text);
		expect(JSON.parse(readFileSync(join(folder(), "walk-2026-11-28.json"), "utf8"))).toEqual(walkOf("first-guess"));
	});

	test("may be a sheet", () => {
		const given = path("sheet.html");
		writeFileSync(given, `<!doctype html>${answersTemplate({ ...walkOf("quiet-desk"), name: "Mia" })}`);
		expect(run("take", given).out).toContain("Taken in: Mia.");
		expect(nameIn("walk-2026-11-28.json")).toBe("Mia");
		expect(refusal("name", given, "Other")).toMatchObject({
			code: 65,
			message: expect.stringContaining("is a sheet, and was not changed"),
		});
	});

	test.each([
		["rubbish", "{", 65],
		["a newer program's", '{"schema": "boardwalk/answers@7"}', 65],
		[
			"answers that cannot be",
			JSON.stringify({ ...walkOf("quiet-desk"), answers: { "fit/case": { status: "answered", value: 7 } } }),
			65,
		],
	])("of %s is refused, and nothing is kept", (_, text, code) => {
		writeFileSync(path("given.json"), text);
		expect(refusal("take", path("given.json"))).toMatchObject({ code });
		expect(refusal("take", path("nowhere.json"))).toMatchObject({ code: 66 });
		expect(run().out).toContain("No walk is kept yet");
	});

	test("into a folder that cannot be made says so", () => {
		writeFileSync(path("state"), "a file where the folder should be");
		expect(refusal("take", scenarioFile("quiet-desk"))).toMatchObject({ code: 73 });
	});
});

test.each([
	[["nmae"], 'There is no command "walks nmae". Did you mean name'],
	[["name", "walk-1"], "The command is: boardwalk walks name FILE NAME"],
	[["list", "all"], "The command is: boardwalk walks list"],
])("%j is refused with what was wrong", (argv, words) => {
	expect(refusal(...argv)).toMatchObject({ code: 64, message: expect.stringContaining(words) });
});
