// Packs the program, installs the tarball into an empty folder with an empty home, and runs it on several versions of Node.
// Usage: node bin/dev/try-packed.mjs [20 22 24]. Prints one line of JSON for the tarball and one for each version; ends
// with 1 where something is wrong. Other versions of Node come from the npm registry, through npx.

import { execFileSync, spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { findNpm } from "./find-npm.mjs";

const root = fileURLToPath(new URL("../../", import.meta.url));
const versions = process.argv.length > 2 ? process.argv.slice(2) : ["20", "22", "24"];

/** What may be in the tarball: no source, tests, guides or source maps. */
const allowedFiles = [
	/^package\.json$/,
	/^README\.md$/,
	/^LICENSE$/,
	/^bin\/(boardwalk|old-node)\.js$/,
	/^dist\/(main|chunk-[A-Z0-9]+)\.js$/,
	/^dist\/NOTICES\.txt$/,
];

/** What is typed from the start to the shortlist on the short way; all others are not sure. */
const lines = [
	["Find the right board", "1"],
	["How much time do you have", "1"],
	["Who gives the answers?", "1"],
	["What will you do with this computer?", "1, 3"],
	["How much money is there", "900"],
	["How much may the board cost", "200"],
	["Which processor will you use?", "deckhand"],
	["Which case will the board go into?", "wardrobe"],
];

const place = mkdtempSync(join(tmpdir(), "packed-"));
try {
	const tarball = pack();
	console.log(JSON.stringify(tarball.said));
	const results = versions.map((version) => tryOn(version, install()));
	for (const result of results) console.log(JSON.stringify(result));
	process.exitCode = tarball.said.notWanted.length > 0 || results.some(({ isWell }) => !isWell) ? 1 : 0;

	function install() {
		const folder = mkdtempSync(join(place, "empty-"));
		// No cache and no network: the tarball must need nothing else. Without --prefix some versions of npm stop in an
		// empty folder, whatever they install.
		const npmWords = [
			"install",
			"--offline",
			"--no-audit",
			"--no-fund",
			"--prefix",
			folder,
			"--cache",
			join(folder, "cache"),
			tarball.path,
		];
		npm(npmWords, folder);
		return folder;
	}
} finally {
	rmSync(place, { recursive: true, force: true });
}

/** Packs a clean copy: what is committed, with the packages of this checkout to build with. */
function pack() {
	const copy = join(place, "copy");
	execFileSync("git", ["clone", "--quiet", "--no-hardlinks", root, copy], { stdio: "inherit" });
	symlinkSync(join(root, "node_modules"), join(copy, "node_modules"));
	const [packed] = JSON.parse(npm(["pack", "--json", "--pack-destination", place], copy).replace(/^[^[]*/, ""));
	/** @type {readonly string[]} */
	const files = packed.files.map((/** @type {{ path: string }} */ { path }) => path);
	const notWanted = files.filter((file) => !allowedFiles.some((allowed) => allowed.test(file)));
	const missing = ["bin/boardwalk.js", "dist/main.js", "dist/NOTICES.txt", "LICENSE"].filter(
		(one) => !files.includes(one),
	);
	return {
		path: join(place, packed.filename),
		said: {
			tarball: packed.filename,
			bytes: packed.size,
			unpackedBytes: packed.unpackedSize,
			files: files.length,
			notWanted: [...notWanted, ...missing.map((file) => `missing: ${file}`)],
		},
	};
}

/** @param {readonly string[]} words @param {string} cwd */
function npm(words, cwd) {
	const { command, firstArguments, needsShell } = findNpm();
	return execFileSync(command, [...firstArguments, ...words], {
		cwd,
		encoding: "utf8",
		stdio: ["ignore", "pipe", "inherit"],
		shell: needsShell,
	});
}

/** @param {string} version of Node @param {string} folder where the program is installed */
function tryOn(version, folder) {
	const home = join(folder, "home");
	mkdirSync(home);
	const node = pathOfNode(version);
	const program = join(folder, "node_modules", "boardwalk", "bin", "boardwalk.js");
	const answers = join(folder, "walk.json");
	const env = { PATH: process.env["PATH"] ?? "", HOME: home };
	/** @type {string[]} */
	const faults = [];
	/** @param {readonly string[]} words @param {string} input */
	const run = (words, input = "") => {
		const { status, stdout, stderr } = spawnSync(node, [program, ...words], {
			cwd: folder,
			env,
			input,
			encoding: "utf8",
		});
		if (status !== 0) faults.push(`${words.join(" ")} ended with ${status}: ${stderr.slice(-300)}`);
		if (/Warning/.test(stderr)) faults.push(`${words.join(" ")}: ${stderr.slice(0, 300)}`);
		return stdout;
	};
	const expect = (/** @type {boolean} */ holds, /** @type {string} */ words) => {
		if (!holds) faults.push(words);
	};
	expect(/^\d+\.\d+\.\d+\n$/.test(run(["--version"])), "no version");
	expect(run(["--help"]).includes("boardwalk shortlist"), "no help");
	expect(walkTo(run, answers), "the walk came to no shortlist");
	run(["sheet", "--answers", answers, "--to", "sheet.html"]);
	const html = readOr(join(folder, "sheet.html"));
	expect(html.startsWith("<!doctype html>") || html.startsWith("<!DOCTYPE html>"), "no sheet");
	expect(run(["shortlist", "--json", "--answers", answers]).includes('"boardwalk/advice@1"'), "no shortlist as JSON");
	expect(
		readOr(join(folder, "node_modules", ".package-lock.json")).split('"node_modules/').length === 2,
		"it brought packages",
	);
	const exact = spawnSync(node, ["--version"], { encoding: "utf8" }).stdout.trim();
	return { node: exact, faults, isWell: faults.length === 0 };
}

/**
 * Walks to the shortlist: each run types the lines known so far, and the screen it stops at gives the next.
 *
 * @param {(words: readonly string[], input: string) => string} run
 * @param {string} answers
 */
function walkTo(run, answers) {
	const typed = lines.map(([, line]) => line);
	// More lines than there are questions: where nothing can be answered, "not sure" is refused and Enter goes on.
	const rest = Array.from({ length: 24 }, () => ["not sure", ""]).flat();
	const said = run(["--plain", "--answers", answers], `${[...typed, ...rest, "s"].join("\n")}\n`);
	return said.includes("Your shortlist");
}

/** @param {string} path */
function readOr(path) {
	try {
		return readFileSync(path, "utf8");
	} catch {
		return "";
	}
}

/** The Node of a version, which npx gets. @param {string} version */
function pathOfNode(version) {
	if (process.versions.node.startsWith(`${version}.`)) return process.execPath;
	const words = ["exec", "--yes", `--package=node@${version}`, "--", "node", "-p", "process.execPath"];
	return npm(words, place).trim().split("\n").at(-1) ?? "";
}
