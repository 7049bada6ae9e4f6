import { spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { lockWalk, type WalkLock } from "../../src/files/walk-lock.ts";

let folder = "";
let file = "";
beforeEach(() => {
	folder = mkdtempSync(join(tmpdir(), "lock-"));
	file = join(folder, "walk.json");
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe("a walk's lock", () => {
	test("lies beside the file with this program's number, until it is let go of", () => {
		const lock = lockWalk(file) as WalkLock;
		expect(readFileSync(`${file}.lock`, "utf8")).toBe(String(process.pid));
		lock.release();
		expect(existsSync(`${file}.lock`)).toBe(false);
		expect(() => lock.release()).not.toThrow();
	});

	test("of a living program is told by its number, and stays", async () => {
		const other = spawn(process.execPath, ["-e", "process.stdin.resume()"], { stdio: ["pipe", "ignore", "ignore"] });
		await once(other, "spawn");
		writeFileSync(`${file}.lock`, String(other.pid));
		expect(lockWalk(file)).toBe(other.pid);
		expect(readFileSync(`${file}.lock`, "utf8")).toBe(String(other.pid));
		other.stdin?.end();
		await once(other, "exit");
		expect(lockWalk(file)).toEqual({ release: expect.any(Function) });
	});

	test.each(["", "no number", "-5", "0", "1.5", "999999999"])("with %j in it is left over, and taken", (text) => {
		writeFileSync(`${file}.lock`, text);
		const lock = lockWalk(file) as WalkLock;
		expect(readFileSync(`${file}.lock`, "utf8")).toBe(String(process.pid));
		lock.release();
		expect(existsSync(`${file}.lock`)).toBe(false);
	});

	test("of this program itself is no hindrance", () => {
		lockWalk(file);
		expect(lockWalk(file)).toEqual({ release: expect.any(Function) });
	});

	test("makes the folder of a first walk, for the owner only", () => {
		const first = join(folder, "boardwalk", "walks", "walk.json");
		lockWalk(first);
		expect(readFileSync(`${first}.lock`, "utf8")).toBe(String(process.pid));
		expect(statSync(join(folder, "boardwalk")).mode & 0o777).toBe(0o700);
	});

	test("is not missed where none can be made", () => {
		writeFileSync(join(folder, "boardwalk"), "a file where the folder should be");
		const lock = lockWalk(join(folder, "boardwalk", "walks", "walk.json")) as WalkLock;
		expect(() => lock.release()).not.toThrow();
	});

	test("let go of by one is not another's: a lock that was taken over stays", () => {
		const lock = lockWalk(file) as WalkLock;
		writeFileSync(`${file}.lock`, String(process.ppid));
		lock.release();
		expect(readFileSync(`${file}.lock`, "utf8")).toBe(String(process.ppid));
	});
});
