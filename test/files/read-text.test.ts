import { chmodSync, closeSync, ftruncateSync, openSync, symlinkSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { decodeText, NoText, readForeignText, readText, reasonOf, UnreadableFile } from "../../src/files/read-text.ts";
import { ownFolder } from "./own-folder.ts";

const { path, write } = ownFolder();

function refusal(file: string): UnreadableFile {
	try {
		readText(file);
	} catch (error) {
		if (error instanceof UnreadableFile) return error;
		throw error;
	}
	throw new Error(`${file} was read`);
}

function sparseFile(name: string, bytes: number): string {
	const file = openSync(path(name), "w");
	ftruncateSync(file, bytes);
	closeSync(file);
	return path(name);
}

describe("reads", () => {
	const text = 'Größe: 244 mm, "naïve" 木 🧩\n';

	test.each<[string, Uint8Array]>([
		["UTF-8", Buffer.from(text)],
		["UTF-8 with a byte order mark", Buffer.from(`\ufeff${text}`)],
		["UTF-16, little end first, with a byte order mark", Buffer.from(`\ufeff${text}`, "utf16le")],
		["UTF-16, big end first, with a byte order mark", Buffer.from(`\ufeff${text}`, "utf16le").swap16()],
		["UTF-16, little end first, without a mark", Buffer.from(text, "utf16le")],
		["UTF-16, big end first, without a mark", Buffer.from(text, "utf16le").swap16()],
	])("%s", (_, bytes) => {
		expect(readText(write("a.txt", bytes))).toBe(text);
	});

	test("an empty file as no text", () => {
		expect(readText(write("a.txt", ""))).toBe("");
	});

	test("through a link", () => {
		symlinkSync(write("a.txt", text), path("b.txt"));
		expect(readText(path("b.txt"))).toBe(text);
	});
});

describe("refuses, with the path and why,", () => {
	test("what is not there", () => {
		const { path: told, reason } = refusal(path("missing.txt"));
		expect([told, reason]).toEqual([path("missing.txt"), "there is no such file or folder"]);
	});

	test("a path through a file", () => {
		expect(refusal(`${write("a.txt", "x")}/b.txt`).reason).toBe("part of the path is a file, not a folder");
	});

	test("a folder", () => {
		expect(refusal(path()).reason).toBe("this is a folder, and a file was expected");
	});

	test("a link to nothing, and links in a circle", () => {
		symlinkSync(path("gone.txt"), path("a.txt"));
		expect(refusal(path("a.txt")).reason).toBe("there is no such file or folder");
		symlinkSync(path("c.txt"), path("b.txt"));
		symlinkSync(path("b.txt"), path("c.txt"));
		expect(refusal(path("b.txt")).reason).toBe("the links lead in a circle");
	});

	test("a file past 64 MB without reading it; at 64 MB it is read", () => {
		expect(refusal(sparseFile("large.txt", 64 * 1024 * 1024 + 1)).reason).toContain("larger than 64 MB");
		expect(readText(write("at-most.txt", Buffer.alloc(64 * 1024 * 1024, " ")))).toHaveLength(64 * 1024 * 1024);
	});

	test.each<[string, Uint8Array]>([
		["Latin-1", Buffer.from("Größe", "latin1")],
		["UTF-16 with half a letter", Buffer.from([0xff, 0xfe, 0x7b, 0x00, 0x00, 0xd8])],
		["UTF-8 cut in a letter", Buffer.from("木").subarray(0, 2)],
		["a picture", Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])],
	])("%s", (_, bytes) => {
		expect(refusal(write("a.txt", bytes)).reason).toBe("this is no text in UTF-8");
	});

	test.each<[string, Uint8Array]>([
		["zero bytes", Buffer.from("name\0width")],
		["a packed file", Buffer.from([0x50, 0x4b, 0x03, 0x04, 0x14, 0x00, 0x06, 0x00])],
		["many control characters", Buffer.from("\u0001\u0002abc")],
		["a PDF", Buffer.from("%PDF-1.7\n")],
	])("%s, which are no text", (_, bytes) => {
		const refused = refusal(write("a.txt", bytes));
		expect(refused).toBeInstanceOf(NoText);
		expect(refused.reason).toMatch(/^this is no text \(.*\); save it as text or CSV first$/);
	});

	test.skipIf(process.platform === "win32")("what never ends", () => {
		expect(refusal("/dev/zero").reason).toContain("larger than 64 MB");
	});

	test.skipIf(process.getuid?.() === 0)("what this user may not read", () => {
		chmodSync(write("a.txt", "x"), 0o000);
		expect(refusal(path("a.txt")).reason).toBe("this user is not allowed to");
	});
});

describe("a page or a table of an older program", () => {
	test("is read in Windows-1252, which holds Latin-1", () => {
		const file = write("a.txt", Buffer.from([0x47, 0x72, 0xf6, 0xdf, 0x65, 0x20, 0x80, 0x20, 0x96, 0x99]));
		expect(readForeignText(file)).toBe("Größe € –™");
		expect(() => readText(file)).toThrow(UnreadableFile);
	});

	test("is read in UTF wherever it is sound UTF", () => {
		for (const bytes of [Buffer.from("Größe"), Buffer.from("\ufeffGröße", "utf16le")])
			expect(readForeignText(write("a.txt", bytes))).toBe("Größe");
	});

	test.each<[string, Uint8Array]>([
		["a picture", Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])],
		["zero bytes among letters of no UTF", Buffer.from([0xe4, 0x00, 0xf6])],
		["UTF-16 cut in a letter", Buffer.from([0xff, 0xfe, 0x7b, 0x00, 0x00, 0xd8])],
	])("that is %s is no text", (_, bytes) => {
		expect(() => readForeignText(write("a.txt", bytes))).toThrow(NoText);
	});

	test.each(["", " \n\t", "\ufeff"])("that is %j is empty", (text) => {
		expect(() => readForeignText(write("a.txt", text))).toThrow("the file is empty");
	});

	test("is text or refused, whatever its bytes", () => {
		fc.assert(
			fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
				try {
					expect(decodeText(bytes, "a.txt", { fallback: "windows-1252" })).not.toContain("\0");
				} catch (error) {
					expect(error).toBeInstanceOf(NoText);
				}
			}),
		);
	});
});

describe("a reason", () => {
	test("is in words for what systems say most", () => {
		for (const code of ["EACCES", "EPERM", "EROFS", "ENOSPC", "EEXIST", "ENAMETOOLONG"]) {
			const words = reasonOf(Object.assign(new Error(`${code}: system text`), { code }));
			expect(words).toMatch(/^(?:this|the|it) /);
			expect(words).not.toContain("system text");
		}
	});

	test("is the system's own for anything else", () => {
		expect(reasonOf(Object.assign(new Error("EIO: i/o error"), { code: "EIO" }))).toBe("EIO: i/o error");
		expect(reasonOf("a word")).toBe("a word");
		expect(reasonOf(null)).toBe("null");
	});
});
