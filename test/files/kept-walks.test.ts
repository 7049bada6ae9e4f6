import {
	existsSync,
	mkdirSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	rmSync,
	symlinkSync,
	utimesSync,
	writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { keptWalks, newWalkFile } from "../../src/files/saved-walks.ts";
import type { AnswersFile } from "../../src/parts/answers-file.ts";

const today = "2026-11-25";
const wordsOf = ({ asOf, answers }: AnswersFile) => `${Object.keys(answers).length} of ${asOf}`;
let folder = "";
beforeEach(() => {
	folder = mkdtempSync(join(tmpdir(), "kept-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const sound = (asOf: string, answers: object = {}) =>
	JSON.stringify({
		schema: "boardwalk/answers@1",
		asOf,
		market: { version: "demo", fingerprint: "abc" },
		answers,
		parts: [],
	});

/** Writes a file that was last changed some minutes ago. */
function write(name: string, text: string, minutesAgo = 0): string {
	const file = join(folder, name);
	writeFileSync(file, text);
	const then = new Date(Date.UTC(2026, 10, 25, 12, 0) - minutesAgo * 60_000);
	utimesSync(file, then, then);
	return file;
}

describe("a new walk's name", () => {
	test("is the day, with a number where it is taken", () => {
		expect(newWalkFile(folder, today)).toBe(join(folder, "walk-2026-11-25.json"));
		write("walk-2026-11-25.json", "");
		expect(newWalkFile(folder, today)).toBe(join(folder, "walk-2026-11-25-2.json"));
		write("walk-2026-11-25-2.json", "");
		write("walk-2026-11-25-4.json", "");
		expect(newWalkFile(folder, today)).toBe(join(folder, "walk-2026-11-25-3.json"));
	});
});

describe("walks in a folder", () => {
	test("are listed with the last written first, in words", () => {
		const older = write("walk-2026-11-24.json", sound("2026-11-24", { "about/budget": { status: "not-sure" } }), 60);
		const newer = write("walk-2026-11-01.json", sound("2026-11-01"), 5);
		const { walks, setAside } = keptWalks(folder, wordsOf);
		expect(setAside).toEqual([]);
		expect(walks.map(({ file }) => file)).toEqual([newer, older]);
		expect(walks.map(({ words }) => words)).toEqual(["0 of 2026-11-01", "1 of 2026-11-24"]);
	});

	test("are none where there is no folder", () => {
		expect(keptWalks(join(folder, "none"), wordsOf)).toEqual({ walks: [], setAside: [], newer: [] });
	});

	test("have the names that people gave them, on one line and without what turns text", () => {
		write("walk-1.json", JSON.stringify({ ...JSON.parse(sound(today)), name: "For\n\u202eOma\u001b[31m" }));
		write("walk-2.json", sound(today), 5);
		expect(keptWalks(folder, wordsOf).walks.map(({ name }) => name)).toEqual(["For Oma", null]);
	});

	test("that a newer program wrote are told, and stay as they are", () => {
		const file = write("walk-1.json", '{"schema": "boardwalk/answers@3", "shape": "nobody knows"}');
		const good = write("walk-2.json", sound(today));
		const { walks, setAside, newer } = keptWalks(folder, wordsOf);
		expect({ files: walks.map((walk) => walk.file), setAside, newer }).toEqual({
			files: [good],
			setAside: [],
			newer: [file],
		});
		expect(readFileSync(file, "utf8")).toContain("nobody knows");
	});

	test("sheets that lie between them are no walks, and stay", () => {
		write("sheet.json", JSON.stringify({ schema: "boardwalk/sheet@1", answersFile: JSON.parse(sound(today)) }));
		expect(keptWalks(folder, wordsOf)).toEqual({ walks: [], setAside: [], newer: [] });
		expect(readdirSync(folder)).toEqual(["sheet.json"]);
	});

	test("are twenty at most", () => {
		for (let index = 0; index < 25; index++) write(`walk-${index}.json`, sound("2026-11-20"), index);
		const { walks } = keptWalks(folder, wordsOf);
		expect(walks).toHaveLength(20);
		expect(walks[0]?.file).toBe(join(folder, "walk-0.json"));
	});

	test("locks and half-written files beside them are passed over", () => {
		write("walk-1.json.lock", "123");
		write("walk-1.json.0123456789ab.tmp", "{");
		write("notes.txt", "mine");
		expect(keptWalks(folder, wordsOf)).toEqual({ walks: [], setAside: [], newer: [] });
		expect(readdirSync(folder)).toHaveLength(3);
	});

	test.each([
		["cut short", sound(today).slice(0, 60)],
		["empty", ""],
		["of another kind", '{"schema": "something/else"}'],
		["with a value that cannot be", sound("yesterday")],
		["not even text", "\u0000\u0001\ufffd"],
		["a list", "[]"],
	])("a damaged one (%s) is set aside, whole, and told", (_, text) => {
		const file = write("walk-1.json", text);
		const good = write("walk-2.json", sound(today));
		const { walks, setAside } = keptWalks(folder, wordsOf);
		expect(setAside).toEqual([`${file}.damaged`]);
		expect(readFileSync(`${file}.damaged`, "utf8")).toBe(text);
		expect(existsSync(file)).toBe(false);
		expect(walks.map((walk) => walk.file)).toEqual([good]);
	});

	test("a second damaged one of the same name replaces no first one", () => {
		write("walk-1.json.damaged", "first");
		const file = write("walk-1.json", "second");
		expect(keptWalks(folder, wordsOf).setAside).toEqual([`${file}.damaged-2`]);
		expect(readFileSync(`${file}.damaged`, "utf8")).toBe("first");
		expect(readFileSync(`${file}.damaged-2`, "utf8")).toBe("second");
	});

	test("what cannot be read at all stays where it is", () => {
		mkdirSync(join(folder, "folder.json"));
		symlinkSync(join(folder, "nowhere"), join(folder, "gone.json"));
		expect(keptWalks(folder, wordsOf)).toEqual({ walks: [], setAside: [], newer: [] });
		expect(readdirSync(folder).sort()).toEqual(["folder.json", "gone.json"]);
	});
});
