import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { openSettings } from "../../src/files/settings.ts";
import { defaultSettings } from "../../src/walk/saved-settings.ts";

let all = "";
let folder = "";
let file = "";
beforeEach(() => {
	all = mkdtempSync(join(tmpdir(), "settings-"));
	folder = join(all, "boardwalk");
	file = join(folder, "settings.json");
});
afterEach(() => rmSync(all, { recursive: true, force: true }));

function write(text: string): void {
	mkdirSync(folder, { recursive: true });
	writeFileSync(file, text);
}

const odd = { colour: "never", characters: "ascii", face: "line-by-line", lengths: "with-inches" } as const;

describe("settings", () => {
	test("are the usual ones at first, and nothing is written for looking", () => {
		expect(openSettings(folder)).toMatchObject({ settings: defaultSettings, warning: null });
		expect(existsSync(file)).toBe(false);
	});

	test("are the same again after they were kept, in a file for the owner only", () => {
		expect(openSettings(folder).keep(odd)).toBeNull();
		expect(openSettings(folder)).toMatchObject({ settings: odd, warning: null });
		expect(statSync(file).mode & 0o777).toBe(0o600);
		expect(openSettings(folder).keep(defaultSettings)).toBeNull();
		expect(openSettings(folder).settings).toEqual(defaultSettings);
	});

	test.each([
		["{", "cut short"],
		["", "empty"],
		["\u0000\u0000\u0000", "zeros after a power cut"],
	])("in a damaged file (%j: %s) are set aside with a word, and can be kept again", (text) => {
		write(text);
		const { settings, warning, keep } = openSettings(folder);
		expect(settings).toEqual(defaultSettings);
		expect(warning).toBe(`The settings were damaged; the file lies in ${file}.damaged, and the usual settings hold.`);
		expect(readFileSync(`${file}.damaged`, "utf8")).toBe(text);
		expect(keep(odd)).toBeNull();
		// Whoever opens them next, in the same program, can still tell.
		expect(openSettings(folder)).toMatchObject({ settings: odd, warning });
	});

	test.each([
		['{"colour": "purple", "characters": 7, "face": null, "extra": {"a": 1}}'],
		["[1, 2]"],
		['"words"'],
		["null"],
		['{"__proto__": {"colour": "never"}}'],
	])("that no setting can have count as the usual ones: %s", (text) => {
		write(text);
		expect(openSettings(folder).settings).toEqual(defaultSettings);
	});

	test("hold where there is no home, and say why they cannot be kept", () => {
		const { settings, warning, keep } = openSettings(null);
		expect({ settings, warning }).toEqual({ settings: defaultSettings, warning: null });
		expect(keep(odd)).toBe("there is no home folder to keep settings in");
	});

	test("hold where the folder cannot be made, and say why they cannot be kept", () => {
		writeFileSync(folder, "a file where the folder should be");
		const { settings, keep } = openSettings(folder);
		expect(settings).toEqual(defaultSettings);
		expect(keep(odd)).toMatch(/./);
		expect(readFileSync(folder, "utf8")).toBe("a file where the folder should be");
	});

	test.skipIf(process.getuid?.() === 0)("in a file that cannot be read hold as usual", () => {
		write(JSON.stringify(odd));
		chmodSync(file, 0o000);
		expect(openSettings(folder).settings).toEqual(defaultSettings);
	});
});
