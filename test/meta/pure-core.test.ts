import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { impurePlaces } from "./impure-places.ts";

const src = fileURLToPath(new URL("../../src", import.meta.url));
/** The folders that meet the outside world; every other one, also one yet to come, is pure. */
const shell = ["cli", "files", "plain", "ui"];

test("the pure folders reach for no clock, chance, process, console or later moment", () => {
	const files = readdirSync(src, { recursive: true, encoding: "utf8" })
		.filter((file) => /\.tsx?$/.test(file) && !shell.includes(file.split(/[\\/]/)[0] ?? ""))
		.sort();
	expect(files.length).toBeGreaterThan(0);
	const found = files.flatMap((file) =>
		impurePlaces(file, readFileSync(join(src, file), "utf8")).map(
			({ line, reachesFor }) => `src/${file}:${line} reaches for ${reachesFor}`,
		),
	);
	expect(found).toEqual([]);
});

describe("the scan itself", () => {
	test.each([
		["Math.random", "const x = 1;\nconst y = Math.random();"],
		["Math.random", "\nconst chance = Math.random;"],
		["Date.now", "\nDate.now();"],
		["the date of now", "\nnew Date();"],
		["the date of now", "\nnew Date;"],
		["the date of now", "\nDate();"],
		["process", "\nprocess.exit(1);"],
		["process", "\nconst step = { process };"],
		["console", "\nconsole.log(1);"],
		["async", "\nasync function f() {}"],
		["async", "\nexport const f = async () => 1;"],
		["await", "\nawait x;"],
		["await", "\nfor await (const x of y) {}"],
		["Promise", "\nlet later: Promise<number>;"],
		["performance", "\nperformance.now();"],
		["setTimeout", "\nsetTimeout(f, 1);"],
		["import()", '\nimport("./other.ts");'],
	])("finds %s", (reachesFor, text) => {
		expect(impurePlaces("sample.ts", text)).toEqual([{ line: 2, reachesFor }]);
	});

	test.each([
		["a comment", "// At the end of the process. await console.log and Math.random() there, new Date()"],
		["a string", 'const words = "process.exit, await new Date() and console.log";'],
		["a template's words", "const words = `await process.env`;"],
		["a date that is given", 'const day = new Date("2026-01-01"); const later = Date.UTC(2026, 1, 1);'],
		["the rest of Math", "const x = Math.max(1, 2);"],
		["a member of that name", "const step = { process: 1 }; const p = step.process;"],
		["a type's member of that name", "type Step = { process: string; console?: number };"],
	])("lets %s be", (_, text) => {
		expect(impurePlaces("sample.ts", text)).toEqual([]);
	});
});
