import { execFile } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Files to import from. Each exports a value `x` and a type `X`. */
const targets = [
	...["parts", "reference", "maths", "plan", "power", "rules", "criteria", "questions", "choose", "walk"],
	...["sheet", "screens", "ui", "plain", "reading", "files", "cli"],
].map((folder) => `src/${folder}/target.ts`);

/** Files of maths that a folder may import without the rest. */
const filesOfMaths = ["src/maths/kleene.ts", "src/maths/piecewise-linear.ts"];

const fakePackages = ["zod", "ink", "ink-select-input", "react", "conf", "fast-check"];

const importOf = (from: string) => `import { x } from "${from}"; export const y = x;`;

/** Importing file, what is in it, and the rule it breaks. */
const breaches: [string, string, string][] = [
	["src/parts/imports-reference.ts", importOf("../reference/target.ts"), "parts-imports-only-what-its-row-names"],
	["src/parts/imports-node.ts", importOf("node:crypto"), "parts-imports-only-what-its-row-names"],
	["src/parts/imports-node-old-way.ts", importOf("fs"), "parts-imports-only-what-its-row-names"],
	["src/parts/imports-a-package.ts", importOf("fast-check"), "parts-imports-only-what-its-row-names"],
	["src/parts/imports-an-unknown-package.ts", importOf("nowhere"), "parts-imports-only-what-its-row-names"],
	[
		"src/parts/imports-a-type.ts",
		'import type { X } from "../ui/target.ts"; export type Y = X;',
		"parts-imports-only-what-its-row-names",
	],
	["src/parts/re-exports.ts", 'export { x } from "../rules/target.ts";', "parts-imports-only-what-its-row-names"],
	[
		"src/parts/imports-later.ts",
		'export const y = () => import("../cli/target.ts");',
		"parts-imports-only-what-its-row-names",
	],
	["src/reference/imports-zod.ts", importOf("zod"), "reference-imports-only-what-its-row-names"],
	[
		"src/reference/imports-demo.ts",
		'import x from "../../data/demo/boards.json" with { type: "json" }; export const y = x;',
		"reference-imports-only-what-its-row-names",
	],
	["src/maths/imports-parts.ts", importOf("../parts/target.ts"), "maths-imports-only-what-its-row-names"],
	["src/plan/imports-power.ts", importOf("../power/target.ts"), "plan-imports-only-what-its-row-names"],
	["src/power/imports-plan.ts", importOf("../plan/target.ts"), "power-imports-only-what-its-row-names"],
	["src/rules/fit/imports-plan.ts", importOf("../../plan/target.ts"), "rules-imports-only-types-of-plan"],
	["src/rules/fit/imports-power.ts", importOf("../../power/target.ts"), "rules-imports-only-types-of-power"],
	["src/rules/fit/imports-maths.ts", importOf("../../maths/target.ts"), "rules-imports-only-what-its-row-names"],
	["src/rules/fit/imports-criteria.ts", importOf("../../criteria/target.ts"), "rules-imports-only-what-its-row-names"],
	["src/criteria/imports-plan.ts", importOf("../plan/target.ts"), "criteria-imports-only-types-of-plan"],
	["src/criteria/imports-power.ts", importOf("../power/target.ts"), "criteria-imports-only-types-of-power"],
	["src/criteria/imports-maths.ts", importOf("../maths/target.ts"), "criteria-imports-only-what-its-row-names"],
	["src/criteria/imports-rules.ts", importOf("../rules/target.ts"), "criteria-imports-only-what-its-row-names"],
	["src/questions/imports-maths.ts", importOf("../maths/target.ts"), "questions-imports-only-types-of-maths"],
	["src/questions/imports-rules.ts", importOf("../rules/target.ts"), "questions-imports-only-what-its-row-names"],
	["src/choose/imports-walk.ts", importOf("../walk/target.ts"), "choose-imports-only-what-its-row-names"],
	["src/walk/imports-sheet.ts", importOf("../sheet/target.ts"), "walk-imports-only-what-its-row-names"],
	["src/sheet/imports-screens.ts", importOf("../screens/target.ts"), "sheet-imports-only-what-its-row-names"],
	["src/screens/imports-ui.ts", importOf("../ui/target.ts"), "screens-imports-only-what-its-row-names"],
	["src/screens/imports-react.ts", importOf("react"), "screens-imports-only-what-its-row-names"],
	["src/ui/imports-walk.ts", importOf("../walk/target.ts"), "ui-imports-only-what-its-row-names"],
	["src/ui/imports-readline.ts", importOf("node:readline"), "ui-imports-only-what-its-row-names"],
	["src/plain/imports-walk.ts", importOf("../walk/target.ts"), "plain-imports-only-what-its-row-names"],
	["src/plain/imports-fs.ts", importOf("node:fs"), "plain-imports-only-what-its-row-names"],
	["src/reading/imports-choose.ts", importOf("../choose/target.ts"), "reading-imports-only-what-its-row-names"],
	["src/files/imports-the-walk.ts", importOf("../walk/target.ts"), "files-imports-only-what-its-row-names"],
	["src/cli/imports-ui.ts", importOf("../ui/target.ts"), "cli-imports-ui-only-dynamically"],
	["src/cli/imports-ink.ts", importOf("ink"), "cli-imports-only-what-its-row-names"],
	["src/cli/imports-fs.ts", importOf("node:fs/promises"), "cli-imports-only-what-its-row-names"],
	["src/cli/imports-conf.ts", importOf("conf"), "cli-imports-only-what-its-row-names"],
	["src/cli/imports-a-test.ts", importOf("../../test/sample.ts"), "cli-imports-only-what-its-row-names"],
	["src/cli/imports-bin.ts", importOf("../../bin/sample.js"), "cli-imports-only-what-its-row-names"],
	["src/helpers/imports-parts.ts", importOf("../parts/target.ts"), "every-folder-has-a-row"],
	["src/alone.ts", "export const y = 1;", "every-folder-has-a-row"],
	// A circle is reported at one of its files.
	["src/maths/circle.ts", 'export { b } from "./other-half.ts"; export const a = 1;', "no-circles"],
];

const permitted: [string, string][] = [
	["src/parts/may-zod.ts", importOf("zod")],
	["src/parts/may-itself.ts", importOf("./target.ts")],
	[
		"src/reference/may-sources.ts",
		'import x from "../../data/sources.json" with { type: "json" }; export const y = x;',
	],
	["src/plan/may-maths.ts", importOf("../maths/target.ts")],
	["src/rules/fit/may-types-of-plan.ts", 'import type { X } from "../../plan/target.ts"; export type Y = X;'],
	["src/rules/fit/may-types-of-power.ts", 'import type { X } from "../../power/target.ts"; export type Y = X;'],
	["src/rules/fit/may-kleene.ts", importOf("../../maths/kleene.ts")],
	["src/criteria/may-types-of-plan.ts", 'import type { X } from "../plan/target.ts"; export type Y = X;'],
	["src/criteria/may-types-of-power.ts", 'import type { X } from "../power/target.ts"; export type Y = X;'],
	["src/criteria/may-piecewise-linear.ts", importOf("../maths/piecewise-linear.ts")],
	["src/questions/may-types-of-maths.ts", 'import type { X } from "../maths/target.ts"; export type Y = X;'],
	["src/questions/may-power.ts", importOf("../power/target.ts")],
	["src/questions/may-criteria.ts", importOf("../criteria/target.ts")],
	["src/choose/may-rules.ts", importOf("../rules/target.ts")],
	["src/screens/may-sheet.ts", importOf("../sheet/target.ts")],
	["src/ui/may-ink.ts", importOf("ink")],
	["src/ui/may-screens.ts", importOf("../screens/target.ts")],
	["src/plain/may-readline.ts", importOf("node:readline/promises")],
	["src/reading/may-reference.ts", importOf("../reference/target.ts")],
	["src/files/may-fs.ts", importOf("node:fs/promises")],
	["src/files/may-conf.ts", importOf("conf")],
	["src/files/may-saved-walk.ts", importOf("../walk/saved-walk.ts")],
	["src/cli/may-ui-later.ts", 'export const y = () => import("../ui/target.ts");'],
	["src/cli/may-demo.ts", 'import x from "../../data/demo/boards.json" with { type: "json" }; export const y = x;'],
	["src/cli/may-tty.ts", importOf("node:tty")],
	["src/cli/may-walk.ts", importOf("../walk/target.ts")],
];

type Violation = { from: string; rule: { name: string } };

let folder = "";
let violations: Violation[] = [];

beforeAll(async () => {
	folder = mkdtempSync(join(tmpdir(), "may-import-"));
	for (const config of [".dependency-cruiser.cjs", "tsconfig.json"]) cpSync(join(root, config), join(folder, config));
	const write = (file: string, text: string) => {
		mkdirSync(dirname(join(folder, file)), { recursive: true });
		writeFileSync(join(folder, file), text);
	};
	write("package.json", '{ "type": "module" }');
	write("data/sources.json", "[]");
	write("data/demo/boards.json", "[]");
	for (const name of fakePackages) {
		write(`node_modules/${name}/package.json`, JSON.stringify({ name, type: "module", exports: "./index.js" }));
		write(`node_modules/${name}/index.js`, "export const x = 1;");
	}
	for (const file of [...targets, "src/walk/saved-walk.ts", ...filesOfMaths, "test/sample.ts"]) {
		write(file, "export const x = 1; export type X = number;");
	}
	write("src/maths/other-half.ts", 'export { a } from "./circle.ts"; export const b = 1;');
	write("bin/sample.js", "export const x = 1;");
	for (const [file, text] of [...breaches, ...permitted]) write(file, text);
	violations = await cruise(folder);
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs dependency-cruiser as `npm run check` does. */
function cruise(cwd: string): Promise<Violation[]> {
	const program = join(root, "node_modules/dependency-cruiser/bin/dependency-cruise.mjs");
	const options = ["src", "--config", ".dependency-cruiser.cjs", "--output-type", "json"];
	return new Promise((resolve, reject) => {
		// It ends with the number of violations as its exit code, so that is no failure here.
		execFile(process.execPath, [program, ...options], { cwd, maxBuffer: 1 << 26 }, (error, stdout, stderr) => {
			if (stdout === "") reject(error ?? new Error(stderr));
			else resolve(JSON.parse(stdout).summary.violations);
		});
	});
}

const brokenBy = (file: string) => [
	...new Set(violations.filter(({ from }) => from === file).map(({ rule }) => rule.name)),
];

describe("is reported", () => {
	test.each(breaches)("%s", (file, _, rule) => {
		expect(brokenBy(file)).toEqual([rule]);
	});
});

describe("is let through", () => {
	test.each(permitted)("%s", (file) => {
		expect(brokenBy(file)).toEqual([]);
	});

	test("every target by itself", () => {
		expect(targets.flatMap(brokenBy)).toEqual([]);
	});
});
