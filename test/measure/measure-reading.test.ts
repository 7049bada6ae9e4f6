import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, expect, test } from "vitest";

const runner = fileURLToPath(new URL("run.mjs", import.meta.url));
const place = mkdtempSync(join(tmpdir(), "measure-"));
afterAll(() => rmSync(place, { recursive: true, force: true }));

/** The measure over a folder with these files. */
function measure(name: string, files: Readonly<Record<string, string>> | undefined) {
	const folder = join(place, name);
	if (files) mkdirSync(folder);
	for (const [file, text] of Object.entries(files ?? {})) writeFileSync(join(folder, file), text);
	const { status, stdout, stderr } = spawnSync(process.execPath, [runner, folder], { encoding: "utf8" });
	return { status, stdout: stdout.trim().split("\n"), stderr: stderr.trim().split("\n") };
}

test.each([
	["a folder that is not there", undefined, "There is no folder"],
	["a folder without facts", { "01.txt": "Socket: KT7" }, "has no facts read by hand"],
	["facts without a text", { "01.json": '{"kind":"board"}' }, "has no text 01.txt beside it"],
	["a kind that is unknown", { "01.json": '{"kind":"constructor"}', "01.txt": "x" }, "has no kind that can be read"],
	["facts that are no JSON", { "01.json": "{", "01.txt": "x" }, "is not valid JSON"],
])("%s: one line and exit code 2", (name, files, words) => {
	const { status, stderr } = measure(name, files);
	expect([status, stderr.length]).toEqual([2, 1]);
	expect(stderr[0]).toContain(words);
});

test("every miss is printed, and the counts on the last line", () => {
	const { status, stdout } = measure("sound", {
		"01.json": '{"kind":"board","socket":"KT7","chipset":"K720","memorySlots":2}',
		"01.txt": "Socket: KT7\nChipset: K700\n",
	});
	expect(status).toBe(0);
	expect(stdout.slice(1)).toEqual([
		'  wrong   chipset: read "K700", expected "K720"',
		'  missed  chipset: "K720", read "K700"',
		"  missed  memorySlots: 2",
		"precision 0.500 recall 0.333 (1 of 2 stated leaves right, 1 of 3 leaves found, 0 doubts)",
	]);
});
