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
		const told = writeFile(relative(process.cwd(), path("a.md")), text, options);
		expect(isAbsolute(told)).toBe(true);
		expect(told).toBe(path("a.md"));
		expect(readFileSync(path("a.md"), "utf8")).toBe(text);
		expect(readdirSync(path())).toEqual(["a.md"]);
	});

	test("may be empty", () => {
		writeFile(path("a.md"), "", fresh);
		expect(readFileSync(path("a.md"), "utf8")).toBe("");
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
		expect(refusal(path("gone/a.md"), fresh)).toMatchObject({
			path: path("gone/a.md"),
			reason: "there is no such file or folder",
			exists: false,
		});
		expect(existsSync(path("gone"))).toBe(false);
		writeFile(path("gone/deep/a.md"), "new", { ...fresh, makeFolder: true });
		expect(readFileSync(path("gone/deep/a.md"), "utf8")).toBe("new");
	});
});

describe("a file that is there", () => {
	test("is kept without replace, to the byte, and nothing is left beside it", () => {
		write("a.md", "old");
		expect(refusal(path("a.md"), fresh)).toMatchObject({ exists: true, reason: "it exists already" });
		expect(readFileSync(path("a.md"), "utf8")).toBe("old");
		expect(readdirSync(path())).toEqual(["a.md"]);
	});

	test("is replaced whole, also a longer one by a shorter one", () => {
		write("a.md", "a much longer text that was here before");
		writeFile(path("a.md"), "new", over);
		expect(readFileSync(path("a.md"), "utf8")).toBe("new");
		expect(readdirSync(path())).toEqual(["a.md"]);
	});

	test("and is a folder is kept in any case", () => {
		mkdirSync(path("a.md"));
		write("a.md/inside.txt", "old");
		expect(refusal(path("a.md"), fresh).exists).toBe(true);
		expect(refusal(path("a.md"), over).reason).toMatch(/folder/);
		expect(readdirSync(path())).toEqual(["a.md"]);
		expect(readFileSync(path("a.md/inside.txt"), "utf8")).toBe("old");
	});

	test("below a file cannot be", () => {
		write("a.md", "old");
		expect(refusal(path("a.md/b.md"), over).reason).toBe("part of the path is a file, not a folder");
	});

	test.skipIf(process.getuid?.() === 0)("in a folder that can only be read is kept", () => {
		write("locked/a.md", "old");
		chmodSync(path("locked"), 0o500);
		expect(refusal(path("locked/a.md"), over).reason).toBe("this user is not allowed to");
		chmodSync(path("locked"), 0o700);
		expect(readFileSync(path("locked/a.md"), "utf8")).toBe("old");
	});
});

describe("a link", () => {
	test("is itself replaced; what it leads to, perhaps elsewhere, is never written", () => {
		write("elsewhere/precious.txt", "precious");
		symlinkSync(path("elsewhere/precious.txt"), path("a.md"));
		writeFile(path("a.md"), "new", over);
		expect(readFileSync(path("elsewhere/precious.txt"), "utf8")).toBe("precious");
		expect(lstatSync(path("a.md")).isSymbolicLink()).toBe(false);
		expect(readFileSync(path("a.md"), "utf8")).toBe("new");
	});

	test("counts as there, even if it leads nowhere", () => {
		symlinkSync(path("nowhere.txt"), path("a.md"));
		expect(refusal(path("a.md"), fresh).exists).toBe(true);
		expect(readlinkSync(path("a.md"))).toBe(path("nowhere.txt"));
		expect(existsSync(path("nowhere.txt"))).toBe(false);
	});

	test("to a folder on the way is followed", () => {
		mkdirSync(path("real"));
		symlinkSync(path("real"), path("alias"));
		writeFile(path("alias/a.md"), "new", fresh);
		expect(readFileSync(path("real/a.md"), "utf8")).toBe("new");
	});
});

describe("where the file system knows no links, such as on a USB stick", () => {
	test.each(["EPERM", "ENOTSUP", "EOPNOTSUPP", "ENOSYS"])("a new file is written all the same (%s)", (code) => {
		links.refusedWith = code;
		writeFile(path("a.md"), "new", fresh);
		expect(readFileSync(path("a.md"), "utf8")).toBe("new");
		expect(readdirSync(path())).toEqual(["a.md"]);
	});

	test("a file that is there is kept all the same", () => {
		links.refusedWith = "EPERM";
		write("a.md", "old");
		expect(refusal(path("a.md"), fresh)).toMatchObject({ exists: true });
		expect(readFileSync(path("a.md"), "utf8")).toBe("old");
		expect(readdirSync(path())).toEqual(["a.md"]);
	});

	test("any other refusal is told", () => {
		links.refusedWith = "ENOSPC";
		expect(refusal(path("a.md"), fresh)).toMatchObject({ exists: false, reason: "the disk is full" });
		expect(readdirSync(path())).toEqual([]);
	});
});
