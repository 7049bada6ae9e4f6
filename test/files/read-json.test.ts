import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BrokenJson, parseJson, readJson } from "../../src/files/read-json.ts";
import { UnreadableFile } from "../../src/files/read-text.ts";
import { ownFolder } from "./own-folder.ts";

const { path, write } = ownFolder();

function reasonFor(text: string): string {
	try {
		parseJson(text, "a.json");
	} catch (error) {
		if (error instanceof BrokenJson) {
			expect(error.path).toBe("a.json");
			return error.reason;
		}
		throw error;
	}
	throw new Error(`read: ${text}`);
}

describe("sound JSON", () => {
	test("is read, with and without a byte order mark, in UTF-8 and UTF-16", () => {
		const json = '{ "name": "Größe", "list": [1, 2.5, true, null] }\n';
		const value = { name: "Größe", list: [1, 2.5, true, null] };
		expect(readJson(write("a.json", json))).toEqual(value);
		expect(readJson(write("b.json", `\ufeff${json}`))).toEqual(value);
		expect(readJson(write("c.json", Buffer.from(`\ufeff${json}`, "utf16le")))).toEqual(value);
		expect(parseJson(`\ufeff${json}`, "d.json")).toEqual(value);
	});

	test("has escape codes, controls and turned text taken out of it", () => {
		const nasty = JSON.stringify({ "a\u001b[31m": "x\u001b]52;c;aGk=\u0007y\u202ez\r\nw", list: ["\u0007bell"] });
		expect(parseJson(nasty, "a.json")).toEqual({ a: "xyz\nw", list: ["bell"] });
	});

	test("cannot reach what every object inherits", () => {
		const value = parseJson('{ "__proto__": { "polluted": 1 }, "constructor": 2, "kept": 3 }', "a.json");
		expect(Object.keys(value as object)).toEqual([
			"__proto__ (a key that no file may have)",
			"constructor (a key that no file may have)",
			"kept",
		]);
		expect(Object.getPrototypeOf(value)).toBe(Object.prototype);
		expect(({} as { polluted?: number }).polluted).toBeUndefined();
	});

	test("is any that the runtime writes", () => {
		fc.assert(
			fc.property(fc.jsonValue({ maxDepth: 5 }), (value) => {
				expect(() => parseJson(JSON.stringify(value, null, "\t"), "a.json")).not.toThrow();
			}),
		);
	});
});

describe("no sound JSON", () => {
	test.each(["", " ", "\n\t\n", "\ufeff"])("%j is empty", (text) => {
		expect(reasonFor(text)).toBe("the file is empty, and JSON was expected");
	});

	test.each([
		"{",
		"[",
		'{"a"',
		'{"a":',
		'{"a": 1',
		'{"a": 1,',
		'{"a": "some wor',
		'{"a": "x\\',
		'{"a": "x\\u00',
		'{\n"a": [1, 2,\n',
		"tru",
		"-",
		"1.",
		"1e",
	])("%j stops in the middle", (text) => {
		expect(reasonFor(text)).toBe("this is no sound JSON: it stops in the middle");
	});

	test.each([
		['{"a":}', 1, 6],
		["{a: 1}", 1, 2],
		["{'a': 1}", 1, 2],
		["[1 2]", 1, 4],
		["[1,\n2,\n x]", 3, 2],
		['{\n\t"a": 1,\n}', 3, 1],
		['{\n"a": 1\n"b": 2\n}', 3, 1],
		['{"a": 1} x', 1, 10],
		['{"a": 01}', 1, 8],
		['"a\nb"', 1, 3],
		["nul x", 1, 4],
		["undefined", 1, 1],
		["<html>\n</html>", 1, 1],
		["\ufeff[x]", 1, 2],
		['{"a": 1, // a note\n"b": 2}', 1, 10],
	])("%j is told by line and column", (text, line, column) => {
		expect(reasonFor(text)).toBe(`this is no sound JSON, at line ${line}, column ${column}`);
	});

	test("cut off anywhere stops in the middle, and never throws anything else", () => {
		const whole = JSON.stringify({ a: [1, 2, { b: 'x\\"y\u00e9' }], c: -1.5e3, d: [true, false, null] }, null, "\t");
		for (let length = 1; length < whole.length; length++)
			expect(reasonFor(whole.slice(0, length))).toBe("this is no sound JSON: it stops in the middle");
	});

	test("spoilt anywhere is told at that place or behind it", () => {
		const whole = '{ "a": [1, 2, { "b": "x" }], "c": 5 }';
		for (let index = 0; index < whole.length; index++) {
			if (/["\w]/.test(whole[index] ?? "")) continue;
			const reason = reasonFor(`${whole.slice(0, index)}\u00a7${whole.slice(index + 1)}`);
			const column = Number(/line 1, column (\d+)$/.exec(reason)?.[1]);
			// A character too many is one where it stands; in its place the text before may still be sound.
			expect(column).toBe(index + 1);
		}
	});

	test("nested deeper than any sound file is refused, however deep", () => {
		for (const depth of [42, 10_000])
			for (const [open, close] of [
				["[", "]"],
				['{"a":', "}"],
			] as const)
				expect(reasonFor(`${open.repeat(depth)}1${close.repeat(depth)}`)).toMatch(/nested more than 40 deep/);
		expect(parseJson(`${"[".repeat(40)}1${"]".repeat(40)}`, "a.json")).toBeInstanceOf(Array);
	});
});

test("a file that cannot be read is another matter than one that is broken", () => {
	expect(() => readJson(path("missing.json"))).toThrow(UnreadableFile);
	expect(() => readJson(path())).toThrow(UnreadableFile);
	expect(() => readJson(write("a.json", "{"))).toThrow(BrokenJson);
	expect(() => readJson(write("b.json", Buffer.from([0xff, 0xd8, 0xff])))).toThrow(UnreadableFile);
	expect(() => readJson(write("c.json", "\u0000"))).toThrow(BrokenJson);
});
