import { spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { isAlive } from "../../src/files/lock-holder.ts";
import { makeFolder } from "../../src/files/make-folder.ts";
import { newWalkFile, tidyWalks } from "../../src/files/saved-walks.ts";
import { openSettings } from "../../src/files/settings.ts";
import { removeStrays } from "../../src/files/stray-files.ts";
import { lockWalk, type WalkLock } from "../../src/files/walk-lock.ts";
import { writeFile } from "../../src/files/write-file.ts";
import { defaultSettings } from "../../src/walk/saved-settings.ts";
import { ownFolder } from "../files/own-folder.ts";

const { path, write } = ownFolder();

/** The number of a program that has ended. */
const dead = spawnSync(process.execPath, ["-e", ""]).pid;

describe("what a killed program leaves", () => {
	test("is removed when the same file is written next, and nothing else is", () => {
		write(`walk.json.${dead}-0a1b2c3d.tmp`, "{");
		write(`walk.json.${process.ppid}-0a1b2c3d.tmp`, "{");
		write(`walk.json.lock.${dead}`, String(dead));
		write(`other.json.${dead}-0a1b2c3d.tmp`, "{");
		write("walk.json.mine.tmp", "a person's own");
		writeFile(path("walk.json"), "{}", { replace: true });
		expect(readdirSync(path()).sort()).toEqual([
			`other.json.${dead}-0a1b2c3d.tmp`,
			"walk.json",
			`walk.json.${process.ppid}-0a1b2c3d.tmp`,
			"walk.json.mine.tmp",
		]);
		removeStrays(path());
		expect(existsSync(path(`other.json.${dead}-0a1b2c3d.tmp`))).toBe(false);
	});

	test("in the folder of walks goes at the next start: half-written files and locks, but no lock that is held", async () => {
		const other = spawn(process.execPath, ["-e", "process.stdin.resume()"], { stdio: ["pipe", "ignore", "ignore"] });
		await once(other, "spawn");
		write("walk-1.json", "{}");
		write("walk-1.json.lock", String(dead));
		write("walk-2.json.lock", String(other.pid));
		write(`walk-3.json.${dead}-0a1b2c3d.tmp`, "{");
		const mine = lockWalk(path("walk-4.json")) as WalkLock;
		tidyWalks(path());
		expect(readdirSync(path()).sort()).toEqual(["walk-1.json", "walk-2.json.lock", "walk-4.json.lock"]);
		mine.release();
		other.stdin?.end();
		await once(other, "exit");
	});

	test("of settings goes when they are kept next", () => {
		write("settings.json.tmp-1234567890abcdef", "{");
		write(`settings.json.lock.${dead}`, String(dead));
		expect(openSettings(path()).keep(defaultSettings)).toBeNull();
		expect(readdirSync(path())).toEqual(["settings.json"]);
	});
});

describe("a lock", () => {
	test.skipIf(process.platform !== "linux")("whose number another program has by now is left behind", () => {
		// Its number is taken: the first program of the machine is none of ours.
		const first = readFileSync("/proc/1/comm", "utf8").trim();
		expect(first).not.toMatch(/^node/);
		const shell = spawn("sleep", ["30"]);
		try {
			writeFileSync(path("walk.json.lock"), String(shell.pid));
			expect(lockWalk(path("walk.json"))).toEqual({ release: expect.any(Function) });
			expect(readFileSync(path("walk.json.lock"), "utf8")).toBe(String(process.pid));
		} finally {
			shell.kill();
		}
	});

	test("of this program counts, as any other that runs Node", () => {
		expect(isAlive(process.pid)).toBe(true);
		expect(isAlive(dead)).toBe(false);
	});

	test("that was left behind goes to exactly one of many programs that come upon it at once", async () => {
		const script = `
			import { lockWalk } from ${JSON.stringify(new URL("../../src/files/walk-lock.ts", import.meta.url).href)};
			const lock = lockWalk(process.argv[1]);
			console.log(typeof lock === "number" ? "no" : "yes");
			process.stdin.resume();`;
		const { buildSync } = await import("esbuild");
		const code = buildSync({
			stdin: { contents: script.replaceAll("file://", ""), resolveDir: path() },
			bundle: true,
			platform: "node",
			format: "esm",
			write: false,
		}).outputFiles[0]?.text;
		write("take.mjs", (code ?? "").replace("process.argv[1]", "process.argv[2]"));
		for (let round = 0; round < 6; round++) {
			writeFileSync(path("walk.json.lock"), String(dead));
			const takers = Array.from({ length: 5 }, () => spawn(process.execPath, [path("take.mjs"), path("walk.json")]));
			const said = await Promise.all(takers.map(async ({ stdout }) => String((await once(stdout, "data"))[0]).trim()));
			for (const taker of takers) taker.stdin.end();
			await Promise.all(takers.map((taker) => once(taker, "close")));
			expect(said.sort()).toEqual(["no", "no", "no", "no", "yes"]);
		}
	});

	test("keeps the name of a new walk, before anything is written to it", () => {
		const lock = lockWalk(path("walk-2026-11-28.json")) as WalkLock;
		expect(newWalkFile(path(), "2026-11-28")).toBe(path("walk-2026-11-28-2.json"));
		lock.release();
		expect(newWalkFile(path(), "2026-11-28")).toBe(path("walk-2026-11-28.json"));
	});
});

describe("making a folder", () => {
	test("below one that can hold none ends with the system's word", () => {
		expect(() => makeFolder("/dev/null/one/two", 0o700)).toThrow(/ENOTDIR/);
	});

	test.skipIf(process.platform !== "linux")("below /proc ends at once, where Node's own way never does", () => {
		expect(() => makeFolder("/proc/one/two", 0o700)).toThrow(/ENOENT/);
	});
});
