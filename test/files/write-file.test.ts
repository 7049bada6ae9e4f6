import {
	chmodSync,
	existsSync,
	lstatSync,
	mkdirSync,
	readdirSync,
	readFileSync,
	readlinkSync,
	statSync,
	symlinkSync,
} from "node:fs";
import { isAbsolute, relative } from "node:path";
import { afterEach, describe, expect, test, vi } from "vitest";
import { UnwritableFile, type WriteOptions, writeFile } from "../../src/files/write-file.ts";
import { ownFolder } from "./own-folder.ts";

/** Set to have the system refuse links, as on a USB stick. */
const links = vi.hoisted(() => ({ refusedWith: null as string | null }));
vi.mock("node:fs", async (importOriginal) => {
	const fs = await importOriginal<typeof import("node:fs")>();
	return {
		...fs,
		linkSync: (from: string, to: string) => {
			if (links.refusedWith) throw Object.assign(new Error("refused"), { code: links.refusedWith });
			fs.linkSync(from, to);
		},
	};
});
afterEach(() => {
	links.refusedWith = null;
});

const { path, write } = ownFolder();
const fresh: WriteOptions = { replace: false };
const over: WriteOptions = { replace: true };

function refusal(file: string, options: WriteOptions): UnwritableFile {
	try {
		writeFile(file, "new", options);
	} catch (error) {
		if (error instanceof UnwritableFile) return error;
		throw error;
	}
	throw new Error(`${file} was written`);
}

describe("a new file", () => {
	test.each([fresh, over])("is written whole, with its full path told, and nothing beside it (%j)", (options) => {
		const text = `Größe 木 🧩\n${"x".repeat(300_000)}`;
		const told = writeFile(relative(process.cwd(), path("note.md")), text, options);
		expect(isAbsolute(told)).toBe(true);
		expect(told).toBe(path("note.md"));
		expect(readFileSync(path("note.md"), "utf8")).toBe(text);
		expect(readdirSync(path())).toEqual(["note.md"]);
	});

	test("may be empty", () => {
		writeFile(path("note.md"), "", fresh);
		expect(readFileSync(path("note.md"), "utf8")).toBe("");
	});

	test.skipIf(process.platform === "win32")("is for its owner only where that is asked for", () => {
		writeFile(path("a.json"), "new", { ...over, ownerOnly: true });
		expect(statSync(path("a.json")).mode & 0o777).toBe(0o600);
		writeFile(path("kept/deep/b.json"), "new", { ...over, ownerOnly: true, makeFolder: true });
		expect(statSync(path("kept/deep")).mode & 0o777).toBe(0o700);
		writeFile(path("c.md"), "new", fresh);
		expect(statSync(path("c.md")).mode & 0o777).toBe(0o666 & ~process.umask());
	});

	test("in a folder that is not there needs leave to make it", () => {
		expect(refusal(path("gone/note.md"), fresh)).toMatchObject({
			path: path("gone/note.md"),
			reason: "there is no such file or folder",
			exists: false,
		});
		expect(existsSync(path("gone"))).toBe(false);
		writeFile(path("gone/deep/note.md"), "new", { ...fresh, makeFolder: true });
		expect(readFileSync(path("gone/deep/note.md"), "utf8")).toBe("new");
	});
});

describe("a file that is there", () => {
	test("is kept without replace, to the byte, and nothing is left beside it", () => {
		write("note.md", "old");
		expect(refusal(path("note.md"), fresh)).toMatchObject({ exists: true, reason: "it exists already" });
		expect(readFileSync(path("note.md"), "utf8")).toBe("old");
		expect(readdirSync(path())).toEqual(["note.md"]);
	});

	test("is replaced whole, also a longer one by a shorter one", () => {
		write("note.md", "a much longer text that was here before");
		writeFile(path("note.md"), "new", over);
		expect(readFileSync(path("note.md"), "utf8")).toBe("new");
		expect(readdirSync(path())).toEqual(["note.md"]);
	});

	test.skipIf(process.platform === "win32").each([0o644, 0o664, 0o600])("keeps who may read it (mode %i)", (mode) => {
		write("note.json", "old");
		chmodSync(path("note.json"), mode);
		writeFile(path("note.json"), "new", { ...over, ownerOnly: true });
		expect(statSync(path("note.json")).mode & 0o777).toBe(mode);
		expect(readFileSync(path("note.json"), "utf8")).toBe("new");
	});

	test("and is protected against writing is kept, to the byte, also for whom nothing is forbidden", () => {
		write("note.md", "old");
		chmodSync(path("note.md"), 0o444);
		expect(refusal(path("note.md"), over)).toMatchObject({ exists: false, reason: "it is protected against writing" });
		expect(readFileSync(path("note.md"), "utf8")).toBe("old");
		expect(readdirSync(path())).toEqual(["note.md"]);
	});

	test("and is a folder is kept in any case", () => {
		mkdirSync(path("note.md"));
		write("note.md/inside.txt", "old");
		expect(refusal(path("note.md"), fresh).exists).toBe(true);
		expect(refusal(path("note.md"), over).reason).toMatch(/folder/);
		expect(readdirSync(path())).toEqual(["note.md"]);
		expect(readFileSync(path("note.md/inside.txt"), "utf8")).toBe("old");
	});

	test("below a file cannot be", () => {
		write("note.md", "old");
		expect(refusal(path("note.md/b.md"), over).reason).toBe("part of the path is a file, not a folder");
	});

	test.skipIf(process.getuid?.() === 0)("in a folder that can only be read is kept", () => {
		write("locked/note.md", "old");
		chmodSync(path("locked"), 0o500);
		expect(refusal(path("locked/note.md"), over).reason).toBe("this user is not allowed to");
		chmodSync(path("locked"), 0o700);
		expect(readFileSync(path("locked/note.md"), "utf8")).toBe("old");
	});
});

describe("a link", () => {
	test("is itself replaced; what it leads to, perhaps elsewhere, is never written", () => {
		write("elsewhere/precious.txt", "precious");
		symlinkSync(path("elsewhere/precious.txt"), path("note.md"));
		writeFile(path("note.md"), "new", over);
		expect(readFileSync(path("elsewhere/precious.txt"), "utf8")).toBe("precious");
		expect(lstatSync(path("note.md")).isSymbolicLink()).toBe(false);
		expect(readFileSync(path("note.md"), "utf8")).toBe("new");
	});

	test("counts as there, even if it leads nowhere", () => {
		symlinkSync(path("nowhere.txt"), path("note.md"));
		expect(refusal(path("note.md"), fresh).exists).toBe(true);
		expect(readlinkSync(path("note.md"))).toBe(path("nowhere.txt"));
		expect(existsSync(path("nowhere.txt"))).toBe(false);
	});

	test("to a folder on the way is followed", () => {
		mkdirSync(path("real"));
		symlinkSync(path("real"), path("alias"));
		writeFile(path("alias/note.md"), "new", fresh);
		expect(readFileSync(path("real/note.md"), "utf8")).toBe("new");
	});
});

describe("where the file system knows no links, such as on a USB stick", () => {
	test.each(["EPERM", "ENOTSUP", "EOPNOTSUPP", "ENOSYS"])("a new file is written all the same (%s)", (code) => {
		links.refusedWith = code;
		writeFile(path("note.md"), "new", fresh);
		expect(readFileSync(path("note.md"), "utf8")).toBe("new");
		expect(readdirSync(path())).toEqual(["note.md"]);
	});

	test("a file that is there is kept all the same", () => {
		links.refusedWith = "EPERM";
		write("note.md", "old");
		expect(refusal(path("note.md"), fresh)).toMatchObject({ exists: true });
		expect(readFileSync(path("note.md"), "utf8")).toBe("old");
		expect(readdirSync(path())).toEqual(["note.md"]);
	});

	test("any other refusal is told", () => {
		links.refusedWith = "ENOSPC";
		expect(refusal(path("note.md"), fresh)).toMatchObject({ exists: false, reason: "the disk is full" });
		expect(readdirSync(path())).toEqual([]);
	});
});
