import { cpSync, mkdirSync, readdirSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { replay } from "../../src/cli/replay-command.ts";
import { keptMapping } from "../../src/files/csv-mappings.ts";
import { partsIn } from "../../src/files/own-parts.ts";
import { readOwnParts } from "../../src/files/own-parts-file.ts";
import { readWalk } from "../../src/files/read-answers.ts";
import { openSettings } from "../../src/files/settings.ts";
import { questionById } from "../../src/questions/all-questions.ts";
import { commandRuns } from "../cli/run-command.ts";
import { sessionsAtHome, tell } from "../cli/sessions-at-home.ts";

const saved = (...names: readonly string[]) => join(fileURLToPath(new URL("../saved", import.meta.url)), ...names);
const inFolder = (folder: string) => readdirSync(saved(folder)).map((name) => `${folder}/${name}`);

/** What must come out of each walk that was ever written: answers, own parts, suggestions, and its money for the board. */
const walksThen: Readonly<
	Record<string, readonly [answers: number, parts: number, suggestions: number, money: unknown]>
> = {
	"answers-1/first-walk.json": [6, 0, 0, 20000],
	"answers-1/handed-down.json": [12, 0, 0, 9000],
	"answers-1/last-of-its-version.json": [47, 0, 0, 20000],
	"answers-1/left-early.json": [6, 0, 0, 17500],
	"answers-1/typed-in.json": [12, 3, 0, 21000],
	"answers-2/first-of-its-version.json": [47, 2, 0, 20000],
	"answers-2/told-and-merged.json": [47, 2, 2, undefined],
	"sheet-1/first-of-its-form.html": [47, 2, 0, 20000],
	"sheet-1/first-of-its-form.json": [47, 2, 0, 20000],
	"sheet-1/told-and-merged.html": [47, 2, 2, undefined],
	"sheet-1/told-and-merged.json": [47, 2, 2, undefined],
};

describe("a walk that an earlier version wrote", () => {
	const home = sessionsAtHome("2026-12-24");

	test("is named here, each of them", () => {
		const there = ["answers-1", "answers-2", "sheet-1"].flatMap(inFolder);
		expect(there.sort()).toEqual(Object.keys(walksThen).sort());
	});

	test.each(Object.entries(walksThen))(
		"opens with all that is in it: %s",
		(name, [answers, parts, suggestions, money]) => {
			const { checked, inSheet } = readWalk(saved(name));
			expect(checked.faults).toEqual([]);
			expect(inSheet).toBe(name.startsWith("sheet"));
			const walk = checked.value;
			expect(Object.keys(walk?.answers ?? {})).toHaveLength(answers);
			const renamed = Object.keys(walk?.answers ?? {}).filter((id) => (questionById(id)?.id ?? id) !== id);
			expect(renamed).toEqual([]);
			expect(walk?.parts).toHaveLength(parts);
			expect(walk?.suggestions ?? []).toHaveLength(suggestions);
			expect(walk?.answers["about/budget"]?.value).toEqual(money && { minor: money, currency: "EUR" });
		},
	);

	test.each(Object.keys(walksThen))("goes on in the walk, and is kept whole: %s", (name) => {
		const file = home.path(basename(name));
		cpSync(saved(name), file);
		const before = readWalk(file).checked.value;
		const session = home.start("--answers", file, "--with-demo");
		expect(session.screen()).not.toBeNull();
		expect(session.state().answers).toEqual(before?.answers);
		expect(session.state().notice ?? "").not.toMatch(/damaged|cannot be/);
		tell(session, { type: "shortlist" }, { type: "leave" });
		const after = readWalk(home.path(basename(name))).checked.value;
		expect(after?.answers).toEqual(before?.answers);
		expect(after?.suggestions).toEqual(before?.suggestions);
		expect(after?.parts.map(({ part }) => part.id)).toEqual(
			expect.arrayContaining(before?.parts.map(({ part }) => part.id) ?? []),
		);
	});

	test("keeps what the shop said, who proposes what, and its name", () => {
		const walk = readWalk(saved("answers-2/told-and-merged.json")).checked.value;
		expect(walk?.name).toBe("Quince's computer");
		expect(walk?.suggestions?.map(({ state, rival, value }) => [state, rival, value])).toEqual([
			["open", true, { minor: 20000, currency: "EUR" }],
			["open", true, { minor: 18000, currency: "EUR" }],
		]);
		expect(walk?.parts[0]?.part).toMatchObject({
			id: "tidewater-lantern",
			memory: { maxGb: 128 },
			evidence: { "memory.maxGb": { standing: "stated", by: "the corner shop" } },
		});
	});
});

describe("what else an earlier version wrote", () => {
	const { path, run } = commandRuns("replay", replay);

	/** A folder with a saved file in it, under the name it has at home. */
	function atHome(file: string, name: string): string {
		mkdirSync(path("home"), { recursive: true });
		cpSync(saved(file), path("home", name));
		return path("home");
	}

	test.each([
		["from-a-table", undefined],
		["told", 128],
	])("own parts open: %s", (name, maxGb) => {
		const { file, leftOut } = readOwnParts(atHome(`parts-1/${name}.json`, "parts.json"));
		expect(leftOut).toEqual([]);
		const [first, second] = partsIn(file);
		expect(first?.part).toMatchObject({ id: "tidewater-lantern", price: { minor: 12990, currency: "EUR" } });
		expect(first).toMatchObject({ part: { memory: maxGb === undefined ? { slots: 4 } : { slots: 4, maxGb } } });
		expect(second?.part).toMatchObject({ id: "tidewater-beacon", form: "ATX", memory: { type: "DDR5", slots: 4 } });
	});

	test("the reading of a table is known again, whatever the order of its columns", () => {
		const home = atHome("csv-mappings-1/one-table.json", "csv-mappings.json");
		const head = ["Price", "Memory slots", "Memory type", "Form factor", "Socket", "Maker", "Name"];
		expect(Object.fromEntries(keptMapping(home, "board", head) ?? [])).toMatchObject({
			Socket: "socket",
			Maker: "maker",
		});
	});

	test.each([
		["three-settings", "before there were lengths to set"],
		["four-settings", "with lengths"],
	])("settings hold: %s, %s", (name) => {
		const { settings, warning } = openSettings(atHome(`settings/${name}.json`, "settings.json"));
		expect(warning).toBeNull();
		expect(settings).toEqual({ colour: "never", characters: "ascii", face: "line-by-line", lengths: "mm" });
	});

	test("a recorded walk can be gone through, with all its answers", () => {
		const { out } = run(saved("events-1/long-walk.jsonl"), "--json", "--with-demo");
		const { answers } = readWalk(saved("answers-2/first-of-its-version.json")).checked.value ?? {};
		const said = JSON.parse(out);
		expect(JSON.stringify(said)).toContain("tallowfinch-deckhand");
		expect(Object.keys(answers ?? {}).filter((id) => !out.includes(`"${id}"`))).toEqual([]);
	});
});
