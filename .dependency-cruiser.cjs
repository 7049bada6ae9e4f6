// Who may import whom in src. DEVELOPERS.md tells what each folder is for; this file is what holds it so.

/**
 * A folder may import itself and what its row names, and nothing else.
 *
 * @typedef {object} Row
 * @property {string[]} [folders] folders of src
 * @property {string[]} [typesOf] folders of src of which it may import types, with `import type`
 * @property {string[]} [dynamically] folders of src that it may import with `import()`
 * @property {string[]} [files] single files or groups of them, as the beginning of a path
 * @property {string[]} [packages] npm packages
 * @property {string[] | "all" | "all but fs"} [node] Node's own modules
 */

const upToPower = ["parts", "reference", "maths"];
const upToChoose = [...upToPower, "plan", "power", "rules", "criteria", "questions"];

/** @type {Record<string, Row>} */
const mayImport = {
	parts: { packages: ["zod"] },
	reference: { folders: ["parts"], files: ["data/sources.json", "src/maths/kleene.ts"] },
	maths: { packages: ["pure-rand"] },
	plan: { folders: upToPower },
	power: { folders: upToPower },
	rules: { folders: ["parts", "reference"], files: ["src/maths/kleene.ts"], typesOf: ["plan", "power"] },
	criteria: {
		folders: ["parts", "reference"],
		files: ["src/maths/piecewise-linear.ts"],
		typesOf: ["plan", "power"],
	},
	questions: { folders: ["parts", "reference", "criteria", "power"], typesOf: ["maths"] },
	choose: { folders: upToChoose },
	walk: { folders: [...upToChoose, "choose", "reading"] },
	sheet: { folders: [...upToChoose, "choose", "walk"] },
	screens: { folders: [...upToChoose, "choose", "walk", "sheet", "reading"] },
	// ui never reads keys, so it needs nothing of Node's.
	ui: { folders: ["screens"], packages: ["ink", "ink-select-input", "react", "string-width"] },
	plain: { folders: ["screens"], node: ["readline", "readline/promises"] },
	reading: { folders: ["parts", "reference"], files: ["src/maths/once.ts"] },
	files: { folders: ["parts", "reading"], files: ["src/walk/saved-"], packages: ["conf", "csv-parse"], node: "all" },
	cli: {
		folders: [...upToChoose, "choose", "walk", "sheet", "screens", "plain", "reading", "files"],
		// Ink takes a fifth of a second to load, which --help and --json must not pay for.
		dynamically: ["ui"],
		files: ["data/demo/", "data/scenarios/", "package.json"],
		packages: ["zod"],
		// Only src/files touches the disk.
		node: "all but fs",
	},
};

/** @param {string} text */
const exactly = (text) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** @param {Row["node"]} node */
function nodeModules(node = []) {
	const names = require("node:module").builtinModules;
	if (node === "all") return names;
	if (node === "all but fs") return names.filter((name) => name.split("/")[0] !== "fs");
	return node;
}

/** @param {Row} row */
function allowedPaths({ folders = [], typesOf = [], dynamically = [], files = [], packages = [], node }) {
	return [
		...[...folders, ...typesOf, ...dynamically].map((folder) => `^src/${folder}/`),
		...files.map((start) => `^${exactly(start)}`),
		...packages.map((name) => `^node_modules/(@types/)?${exactly(name)}/`),
		...nodeModules(node).map((name) => `^(node:)?${exactly(name)}$`),
	];
}

const foldersWithRow = Object.keys(mayImport).map((folder) => `^src/${folder}/`);

const rulesOfFolders = Object.entries(mayImport).flatMap(([folder, row]) => {
	const from = { path: `^src/${folder}/` };
	return [
		{
			name: `${folder}-imports-only-what-its-row-names`,
			comment: "See the table in .dependency-cruiser.cjs.",
			from,
			to: { pathNot: [`^src/${folder}/`, ...allowedPaths(row)] },
		},
		...(row.typesOf ?? []).map((to) => ({
			name: `${folder}-imports-only-types-of-${to}`,
			comment: "It reads their results, and the runner hands them in: write `import type`.",
			from,
			to: { path: `^src/${to}/`, dependencyTypesNot: ["type-only"] },
		})),
		...(row.dynamically ?? []).map((to) => ({
			name: `${folder}-imports-${to}-only-dynamically`,
			comment: "Write `await import()`, so that it is loaded only where it is used.",
			from,
			to: { path: `^src/${to}/`, dynamic: false },
		})),
	];
});

module.exports = {
	forbidden: [
		{
			name: "no-circles",
			comment: "Two files that import each other are one idea in two places, or two ideas with a third to be found.",
			from: {},
			to: { circular: true },
		},
		{
			name: "every-folder-has-a-row",
			comment: "A file of src outside the folders of the table could import anything.",
			from: { path: "^src/", pathNot: foldersWithRow },
			to: {},
		},
		{
			name: "every-folder-has-a-row",
			comment: "The same for a file that imports nothing and is imported by nothing.",
			from: { orphan: true, path: "^src/", pathNot: foldersWithRow },
			to: {},
		},
		...rulesOfFolders,
	].map((rule) => ({ severity: "error", ...rule })),
	options: {
		tsConfig: { fileName: "tsconfig.json" },
		// Sees `import type` too, which the compiler leaves out.
		tsPreCompilationDeps: true,
		doNotFollow: { path: "^node_modules/" },
		enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["import", "node", "default"] },
	},
};
