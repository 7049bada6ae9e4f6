import { chmodSync, existsSync, readdirSync, readFileSync, statSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { changeWalk, keepCopy, keepWalkAt, liesIn, removeWalk, takeWalkBack } from "../../src/files/walk-copies.ts";
import { UnwritableFile } from "../../src/files/write-file.ts";
import type { AnswersFile } from "../../src/parts/answers-file.ts";
import { ownFolder } from "./own-folder.ts";

const { path, write } = ownFolder();
const today = "2026-11-28";
const walk: AnswersFile = {
	schema: "boardwalk/answers@2",
	asOf: "2026-11-24",
	market: { version: "demo", fingerprint: "abc" },
	answers: {},
	parts: [],
};
const names = () => readdirSync(path()).sort();
const textOf = (name: string) => readFileSync(path(name), "utf8");
const isRoot = process.getuid?.() === 0;

/** Does something while another, living program has the walk open. */
function whileOpenElsewhere(file: string, work: () => void): void {
	writeFileSync(`${file}.lock`, String(process.ppid));
	work();
	expect(readFileSync(`${file}.lock`, "utf8")).toBe(String(process.ppid));
}

describe("a copy", () => {
	test("gets the day's next free name, for the owner only, in a folder that may not be there yet", () => {
		const folder = path("new", "walks");
		const files = [keepCopy(folder, walk, today), keepCopy(folder, { ...walk, name: "CON" }, today)];
		expect(files).toEqual([join(folder, "walk-2026-11-28.json"), join(folder, "walk-2026-11-28-2.json")]);
		expect(JSON.parse(readFileSync(files[1] ?? "", "utf8"))).toEqual({ ...walk, name: "CON" });
		expect(statSync(files[0] ?? "").mode & 0o777).toBe(0o600);
	});
});

describe("a change", () => {
	test("takes the file's place, whole", () => {
		const file = write("a.json", "before");
		changeWalk(file, () => ({ ...walk, name: "For Oma" }));
		expect(JSON.parse(textOf("a.json"))).toEqual({ ...walk, name: "For Oma" });
		expect(names()).toEqual(["a.json"]);
	});

	test("is refused while another program has the walk open", () => {
		const file = write("a.json", "before");
		whileOpenElsewhere(file, () => expect(() => changeWalk(file, () => walk)).toThrow(/open in another window/));
		expect(textOf("a.json")).toBe("before");
	});
});

describe("a walk that is removed", () => {
	test("lies beside, and comes back as it was", () => {
		const file = write("a.json", "mine");
		expect(removeWalk(file)).toBe(`${file}.removed-1`);
		expect(names()).toEqual(["a.json.removed-1"]);
		expect(takeWalkBack(path())).toBe(file);
		expect([names(), textOf("a.json")]).toEqual([["a.json"], "mine"]);
		expect(takeWalkBack(path())).toBeNull();
	});

	test("last comes back first, whatever the walks are called", () => {
		for (const name of ["b.json", "a.json", "c.json"]) removeWalk(write(name, name));
		expect([takeWalkBack(path()), takeWalkBack(path())]).toEqual([path("c.json"), path("a.json")]);
		removeWalk(path("a.json"));
		expect(takeWalkBack(path())).toBe(path("a.json"));
		expect(takeWalkBack(path())).toBe(path("b.json"));
		expect(names()).toEqual(["a.json", "b.json", "c.json"]);
	});

	test("whose name was taken meanwhile comes back under another, and neither is lost", () => {
		removeWalk(write("a.json", "first"));
		removeWalk(write("a.json", "second"));
		write("a.json", "third");
		expect(takeWalkBack(path())).toBe(path("a-2.json"));
		expect(takeWalkBack(path())).toBe(path("a-3.json"));
		expect(["a.json", "a-2.json", "a-3.json"].map(textOf)).toEqual(["third", "second", "first"]);
	});

	test("is not, while another program has it open", () => {
		const file = write("a.json", "mine");
		whileOpenElsewhere(file, () => expect(() => removeWalk(file)).toThrow(/open in another window \(process \d+\)/));
		expect(textOf("a.json")).toBe("mine");
		expect(names()).toEqual(["a.json", "a.json.lock"]);
	});

	test("leaves nothing but itself, also where it was gone already", () => {
		expect(() => removeWalk(path("gone.json"))).toThrow(UnwritableFile);
		expect(names()).toEqual([]);
		expect(takeWalkBack(path("no-folder"))).toBeNull();
	});

	test("is not fooled by names that only look alike", () => {
		for (const name of [
			"a.json.removed-0",
			"a.json.removed-x",
			".json.removed-1",
			"a.removed-1",
			"a.json.removed-1.lock",
		])
			write(name, "");
		expect(takeWalkBack(path())).toBeNull();
	});

	test.skipIf(isRoot)("in a folder that can only be read says so and stays", () => {
		const file = write("a.json", "mine");
		chmodSync(path(), 0o500);
		try {
			expect(() => removeWalk(file)).toThrow(/not allowed/);
			expect(() => keepCopy(path(), walk, today)).toThrow(/not allowed/);
			expect(() => changeWalk(file, () => walk)).toThrow(/not allowed/);
			expect(textOf("a.json")).toBe("mine");
		} finally {
			chmodSync(path(), 0o700);
		}
	});
});

describe("where a person said", () => {
	test("a walk is written, and never over another file unless told to", () => {
		const file = path("both.json");
		expect(keepWalkAt(file, walk, false)).toBe(file);
		write("both.json", "older");
		expect(keepWalkAt(file, walk, false)).toBeNull();
		expect(textOf("both.json")).toBe("older");
		expect(keepWalkAt(file, walk, true)).toBe(file);
		expect(JSON.parse(textOf("both.json"))).toEqual(walk);
	});

	test("no folder is made for it", () => {
		expect(() => keepWalkAt(path("nowhere", "both.json"), walk, false)).toThrow(UnwritableFile);
		expect(existsSync(path("nowhere"))).toBe(false);
	});

	test("it is not replaced while another program has it open", () => {
		const file = write("both.json", "older");
		whileOpenElsewhere(file, () => expect(() => keepWalkAt(file, walk, true)).toThrow(/open in another window/));
		expect(textOf("both.json")).toBe("older");
	});
});

test("what lies in a folder is told by where it really lies", () => {
	const file = write("walks/a.json", "");
	symlinkSync(path("walks"), path("link"));
	expect(liesIn(path("walks"), file)).toBe(true);
	expect(liesIn(path("link"), file)).toBe(true);
	expect(liesIn(path("walks"), path("walks", "..", "a.json"))).toBe(false);
	expect(liesIn(path("walks"), path("a.json"))).toBe(false);
	expect(liesIn(path("nowhere"), file)).toBe(false);
});
