import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { addPart, noParts, partsIn } from "../../src/files/own-parts.ts";
import {
	changeOwnParts,
	FaultyParts,
	ownPartsPath,
	readOwnParts,
	removeOwnPart,
	takeBack,
} from "../../src/files/own-parts-file.ts";
import { BrokenJson } from "../../src/files/read-json.ts";
import { UnwritableFile } from "../../src/files/write-file.ts";
import type { OwnPart } from "../../src/parts/answers-file.ts";
import type { PartsFile } from "../../src/parts/market.ts";
import { ownFolder } from "./own-folder.ts";

const { path, write } = ownFolder();

const board = (id: string) => ({ kind: "board", part: { id, name: `Board ${id}` } }) as OwnPart;
const adding = (id: string) => (parts: PartsFile) => {
	const { file, added } = addPart(parts, board(id));
	return { file, result: added.part.id };
};
const ids = () => partsIn(readOwnParts(path("data")).file).map(({ part }) => part.id);
const filesThere = () => readdirSync(path("data")).sort();
const faulty = JSON.stringify({ schema: "boardwalk/parts@1", boards: [{ id: "a", name: "A" }, { id: "B" }] });

describe("own parts", () => {
	test("are none where there is no file yet", () => {
		expect(readOwnParts(path("data"))).toEqual({ path: path("data/parts.json"), file: noParts, leftOut: [] });
	});

	test("are kept in one file, for the owner only, with nothing left beside it", () => {
		expect(changeOwnParts(path("data"), adding("a"))).toEqual({ result: "a", setAside: null });
		changeOwnParts(path("data"), adding("b"));
		expect(ids()).toEqual(["a", "b"]);
		expect(filesThere()).toEqual(["parts.json"]);
		if (process.platform !== "win32") {
			expect(statSync(path("data/parts.json")).mode & 0o777).toBe(0o600);
			expect(statSync(path("data")).mode & 0o777).toBe(0o700);
		}
	});

	test("that something else changes meanwhile are read again, so that neither change is lost", () => {
		changeOwnParts(path("data"), adding("a"));
		let turns = 0;
		changeOwnParts(path("data"), (parts) => {
			turns++;
			if (turns === 1) writeFileSync(ownPartsPath(path("data")), JSON.stringify(addPart(parts, board("other")).file));
			return adding("mine")(parts);
		});
		expect(turns).toBe(2);
		expect(ids()).toEqual(["a", "other", "mine"]);
	});

	test("that something else never stops changing are left to it", () => {
		let turns = 0;
		const change = () =>
			changeOwnParts(path("data"), (parts) => {
				write("data/parts.json", JSON.stringify({ ...parts, note: `turn ${++turns}` }));
				return adding("mine")(parts);
			});
		expect(change).toThrow(UnwritableFile);
		expect(ids()).toEqual([]);
	});

	test("are not written by a change that gives them something they cannot have", () => {
		changeOwnParts(path("data"), adding("a"));
		const before = readFileSync(path("data/parts.json"), "utf8");
		const wrong = { ...noParts, boards: [{ id: "a", name: "A", widthMm: "wide" }] } as unknown as PartsFile;
		expect(() => changeOwnParts(path("data"), () => ({ file: wrong, result: null }))).toThrow(FaultyParts);
		expect(readFileSync(path("data/parts.json"), "utf8")).toBe(before);
	});

	test("whose lock a killed program left behind can be changed", () => {
		write("data/parts.json.lock", "2147483646");
		changeOwnParts(path("data"), adding("a"));
		expect(filesThere()).toEqual(["parts.json"]);
	});
});

describe("a damaged file", () => {
	test.each([
		["no JSON", '{ "schema": ', BrokenJson],
		["empty", "", BrokenJson],
		["no text", "\u0000\u0001", Error],
		["of a later version", '{"schema": "boardwalk/parts@2"}', FaultyParts],
		["faulty", faulty, FaultyParts],
	])("(%s) is neither used nor written over", (_, content, error) => {
		write("data/parts.json", content);
		expect(() => readOwnParts(path("data"))).toThrow(error);
		expect(() => changeOwnParts(path("data"), adding("x"))).toThrow(error);
		expect(() => removeOwnPart(path("data"), board("a"))).toThrow(error);
		expect(readFileSync(path("data/parts.json"), "utf8")).toBe(content);
		expect(filesThere()).toEqual(["parts.json"]);
	});

	test("gives its sound parts where they are asked for, and is set aside before anything is written", () => {
		write("data/parts.json", faulty);
		const read = readOwnParts(path("data"), { soundOnly: true });
		expect(partsIn(read.file).map(({ part }) => part.id)).toEqual(["a"]);
		expect(read.leftOut.map((fault) => fault.path)).toContain("boards[1].name");
		const { setAside } = changeOwnParts(path("data"), adding("x"), { soundOnly: true });
		expect(setAside).toBe(path("data/parts.json.damaged"));
		expect(readFileSync(path("data/parts.json.damaged"), "utf8")).toBe(faulty);
		expect(ids()).toEqual(["a", "x"]);
	});

	test("without any sound part is set aside too, beside an earlier one", () => {
		write("data/parts.json", "{");
		write("data/parts.json.damaged", "earlier");
		expect(changeOwnParts(path("data"), adding("x"), { soundOnly: true }).setAside).toBe(
			path("data/parts.json.damaged-2"),
		);
		expect(readFileSync(path("data/parts.json.damaged"), "utf8")).toBe("earlier");
		expect(ids()).toEqual(["x"]);
	});
});

describe("the part removed last", () => {
	test("comes back once", () => {
		for (const id of ["a", "b", "c"]) changeOwnParts(path("data"), adding(id));
		removeOwnPart(path("data"), board("a"));
		removeOwnPart(path("data"), board("b"));
		expect(ids()).toEqual(["c"]);
		expect(takeBack(path("data"))?.part.id).toBe("b");
		expect(ids()).toEqual(["c", "b"]);
		expect(takeBack(path("data"))).toBeNull();
	});

	test("comes back under a new id where its own is taken", () => {
		changeOwnParts(path("data"), adding("a"));
		removeOwnPart(path("data"), board("a"));
		changeOwnParts(path("data"), adding("a"));
		expect(takeBack(path("data"))?.part.id).toBe("a-2");
	});

	test("does not change when a part is to be removed that is not there", () => {
		changeOwnParts(path("data"), adding("a"));
		removeOwnPart(path("data"), board("a"));
		removeOwnPart(path("data"), board("gone"));
		expect(takeBack(path("data"))?.part.id).toBe("a");
	});

	test("is kept though the file of removed parts is damaged", () => {
		changeOwnParts(path("data"), adding("a"));
		write("data/removed-parts.json", "{");
		removeOwnPart(path("data"), board("a"));
		expect(existsSync(path("data/removed-parts.json.damaged"))).toBe(true);
		expect(takeBack(path("data"))?.part.id).toBe("a");
	});
});
