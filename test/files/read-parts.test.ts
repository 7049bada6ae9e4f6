import { mkdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { BrokenJson } from "../../src/files/read-json.ts";
import { readParts } from "../../src/files/read-parts.ts";
import { UnreadableFile } from "../../src/files/read-text.ts";
import { answersFile } from "../../src/parts/answers-file.ts";
import { partKindNames } from "../../src/parts/part-kinds.ts";
import { savedWalk } from "../../src/walk/saved-walk.ts";
import { startWalk } from "../../src/walk/walk-state.ts";
import { ownFolder } from "./own-folder.ts";

const { path, write } = ownFolder();

const boards = (...ids: string[]) =>
	JSON.stringify({ schema: "boardwalk/parts@1", boards: ids.map((id) => ({ id, name: `Board ${id}` })) });
const idsOf = ({ market }: ReturnType<typeof readParts>) => market.parts.board.map(({ id }) => id);

describe("a folder", () => {
	test("is read in the order of names, .json files only, not what lies deeper", () => {
		write("shop/b.json", boards("second"));
		write("shop/a.json", boards("first", "also-first"));
		write("shop/notes.txt", "no parts");
		write("shop/a.json.bak", "{");
		write("shop/deeper/c.json", boards("deep"));
		const read = readParts(path("shop"));
		expect(idsOf(read)).toEqual(["first", "also-first", "second"]);
		expect({ faulty: read.faulty, warnings: read.warnings }).toEqual({ faulty: [], warnings: [] });
	});

	test("gives the same market, and the same fingerprint, each time", () => {
		write("shop/a.json", boards("one"));
		const [first, again] = [readParts(path("shop")).market, readParts(path("shop")).market];
		expect(again).toEqual(first);
		write("shop/a.json", boards("one", "two"));
		expect(readParts(path("shop")).market.fingerprint).not.toBe(first.fingerprint);
	});

	test("without a .json file is an empty market, and says so", () => {
		mkdirSync(path("empty"));
		const { market, faulty, warnings } = readParts(path("empty"));
		for (const kind of partKindNames) expect(market.parts[kind]).toEqual([]);
		expect(faulty).toEqual([]);
		expect(warnings).toEqual([expect.stringContaining("there is no .json file in this folder")]);
		expect(warnings[0]).toContain(path("empty"));
	});

	test("keeps the first of two parts of one id and kind, and tells", () => {
		write("shop/a.json", boards("one"));
		write(
			"shop/b.json",
			JSON.stringify({
				schema: "boardwalk/parts@1",
				boards: [{ id: "one", name: "Another" }],
				cases: [{ id: "one", name: "A case" }],
			}),
		);
		const { market, warnings } = readParts(path("shop"));
		expect(market.parts.board.map(({ name }) => name)).toEqual(["Board one"]);
		expect(market.parts.case.map(({ name }) => name)).toEqual(["A case"]);
		expect(warnings).toEqual(['board "one" is given twice; the first one counts.']);
	});

	test("tells every faulty file with its faults, and keeps the sound ones", () => {
		write("shop/a.json", boards("one"));
		write("shop/b.json", boards("NOT AN ID"));
		write("shop/c.json", JSON.stringify({ schema: "boardwalk/parts@1", bords: [] }));
		const { market, faulty } = readParts(path("shop"));
		expect(market.parts.board.map(({ id }) => id)).toEqual(["one"]);
		expect(faulty.map(({ file, faults }) => [file, faults.map(({ path: at }) => at)])).toEqual([
			[path("shop/b.json"), ["boards[0].id"]],
			[path("shop/c.json"), ["bords"]],
		]);
	});

	test("with a file that is no JSON is refused, naming it", () => {
		write("shop/a.json", boards("one"));
		write("shop/b.json", "{ oh no");
		expect(() => readParts(path("shop"))).toThrow(BrokenJson);
		expect(() => readParts(path("shop"))).toThrow(path("shop/b.json"));
	});
});

describe("with sound parts only", () => {
	test("the sound parts of a faulty file count, and the faults of the others are told as they are in the file", () => {
		const file = write("shop/a.json", boards("one", "NOT AN ID", "two", "one"));
		const read = readParts(file, [], true);
		expect(idsOf(read)).toEqual(["one", "two"]);
		expect(read.faulty).toEqual([
			{
				file,
				faults: [
					expect.objectContaining({ path: "boards[1].id" }),
					{ path: "boards[3].id", expected: 'an id of its own; boards[0] has "one" already' },
				],
			},
		]);
	});

	test("a file of a folder that is no JSON is left out whole, and told", () => {
		write("shop/a.json", boards("one"));
		write("shop/b.json", "{ oh no");
		const read = readParts(path("shop"), [], true);
		expect(idsOf(read)).toEqual(["one"]);
		expect(read.faulty).toEqual([
			{ file: path("shop/b.json"), faults: [{ path: "", expected: expect.stringContaining("sound JSON") }] },
		]);
	});

	test("a single file that is no JSON is refused", () => {
		expect(() => readParts(write("b.json", "{ oh no"), [], true)).toThrow(BrokenJson);
	});
});

describe("a single file", () => {
	test("is a market too, whatever its name ends in", () => {
		expect(idsOf(readParts(write("my-boards.txt", boards("one"))))).toEqual(["one"]);
	});

	test("that is not there is refused, naming it", () => {
		expect(() => readParts(path("missing"))).toThrow(UnreadableFile);
		expect(() => readParts(path("missing"))).toThrow(path("missing"));
	});
});

test("more parts come behind those read, and give way to them", () => {
	write("shop/a.json", boards("one"));
	const more = JSON.parse(boards("one", "two"));
	more.boards[0].name = "Of the others";
	const { market, warnings } = readParts(path("shop"), [more]);
	expect(market.parts.board.map(({ name }) => name)).toEqual(["Board one", "Board two"]);
	expect(warnings).toHaveLength(1);
});

test("a market is called by its folder's name, so that a walk made with it can be kept however long the path", () => {
	const long = Array.from({ length: 12 }, () => "a-folder-with-a-long-name").join("/");
	write(`${long}/my-shop/a.json`, boards("one"));
	const { market } = readParts(path(long, "my-shop"));
	expect(market.version).toBe("my-shop");
	expect(readParts(path(long, "my-shop/")).market.version).toBe("my-shop");
	const saved = savedWalk({ market, asOf: "2026-11-24" }, startWalk());
	expect(answersFile.safeParse(saved).success).toBe(true);
});

test.skipIf(process.platform === "win32")("a folder's name is made harmless before the market is called by it", () => {
	write("my\u001b[31m\nshop/a.json", boards("one"));
	const { market } = readParts(path("my\u001b[31m\nshop"));
	expect(market.version).toBe("my shop");
	const saved = savedWalk({ market, asOf: "2026-11-24" }, startWalk());
	expect(answersFile.safeParse(saved).success).toBe(true);
});
