import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";

// A program may be starting from the folder, or running and about to load a chunk, while a build writes it. Swapping
// the whole folder would need a moment without one, and take a running program's chunks away. So each file is swapped
// on its own, by a rename: chunks carry a hash of what they hold and so never change, the file that names them comes
// last, and files of earlier builds stay for a while. Two builds at once write the same bytes, or different chunks.

const hourMs = 3_600_000;
// When each file of an earlier build was first found to be one.
const staleList = ".stale.json";

/**
 * Puts the files of a build in place, so that at any moment the folder holds a whole build, and removes what earlier
 * builds left.
 *
 * @param {string} folder created if missing
 * @param {object} build
 * @param {{ name: string, contents: Uint8Array }[]} build.files
 * @param {string} build.last the file that leads to the others
 * @param {number | undefined} [build.keepStaleMs] how long a file of an earlier build stays, an hour if not given; 0 only
 *   when nothing else can be building or running
 * @returns {void}
 */
export function publishFiles(folder, { files, last, keepStaleMs = hourMs }) {
	mkdirSync(folder, { recursive: true });
	const inOrder = [...files.filter(({ name }) => name !== last), ...files.filter(({ name }) => name === last)];
	for (const { name, contents } of inOrder) swapIn(folder, name, contents);
	removeStale(folder, new Set(files.map(({ name }) => name)), keepStaleMs);
}

/**
 * @param {string} folder
 * @param {string} name
 * @param {Uint8Array} contents
 */
function swapIn(folder, name, contents) {
	const file = join(folder, name);
	if (readOrNothing(file)?.equals(contents)) return;
	const unfinished = `${file}.${process.pid}.new`;
	writeFileSync(unfinished, contents);
	renameSync(unfinished, file);
}

/**
 * @param {string} folder
 * @param {Set<string>} current
 * @param {number} keepStaleMs
 */
function removeStale(folder, current, keepStaleMs) {
	const now = Date.now();
	const known = parseStaleList(readOrNothing(join(folder, staleList)));
	/** @type {Record<string, number>} */
	const kept = {};
	for (const name of readdirSync(folder)) {
		if (current.has(name) || name === staleList) continue;
		const since = known[name] ?? now;
		if (now - since >= keepStaleMs) rmSync(join(folder, name), { recursive: true, force: true });
		else kept[name] = since;
	}
	if (Object.keys(kept).length > 0) swapIn(folder, staleList, Buffer.from(JSON.stringify(kept)));
	else rmSync(join(folder, staleList), { force: true });
}

/**
 * @param {Buffer | undefined} text
 * @returns {Record<string, number>}
 */
function parseStaleList(text) {
	try {
		return JSON.parse(String(text));
	} catch {
		// None, or one that was cut short: every stale file counts from now.
		return {};
	}
}

/** @param {string} file */
function readOrNothing(file) {
	try {
		return readFileSync(file);
	} catch {
		return undefined;
	}
}
