import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { isRunning, runOf } from "./process-run.mjs";

// Two installs into one node_modules spoil each other, and a killed `npm start` leaves its npm working on. So the lock
// belongs to two processes, ours and npm's, and is free only when both are gone.
//
// It is a folder of numbered tickets, as at a counter. Each process takes the next number and waits until no lower
// ticket is held. Taking over from the dead by deleting one lock file would let two waiters do so at once; here a
// number is given out once, by creating its file. What makes that safe:
// - The highest ticket is never deleted, so whoever took an old number by a late look sees a higher one and goes back.
// - A ticket is in place before its owner looks for others, so of two owners at least one sees the other.

/**
 * @typedef {import("./process-run.mjs").ProcessRun} ProcessRun
 * @typedef {{ ready: ProcessRun, npm?: ProcessRun, isDone?: boolean }} Ticket
 * @typedef {{ noteNpm: (npmPid: number) => void, release: () => void }} InstallLock
 */

/** The lock was not to be had; the message is meant for the person. */
export class InstallLockError extends Error {}

// A ticket is created and then filled; one that stays empty for longer belongs to a process that died in between.
const fillingMs = 5000;

/**
 * Waits for our turn to install, and takes it.
 *
 * @param {string} root the checkout's folder
 * @param {object} options
 * @param {(words: string) => void} options.onWait told once, when there is someone to wait for
 * @param {number} [options.giveUpAfterMs]
 * @param {number} [options.lookEveryMs]
 * @returns {Promise<InstallLock>} rejects with an InstallLockError when the wait is too long, and with the file
 *   system's own error when the folder cannot be written
 */
export async function takeInstallLock(root, { onWait, giveUpAfterMs = 600_000, lookEveryMs = 200 }) {
	const folder = join(root, ".install-lock");
	mkdirSync(folder, { recursive: true });
	/** @type {Ticket} */
	const ticket = { ready: runOf(process.pid) };
	const number = await takeNumber(folder, ticket);

	const giveUpAt = Date.now() + giveUpAfterMs;
	let hasSaid = false;
	for (;;) {
		const holder = firstHolder(folder, number);
		if (!holder) break;
		if (!hasSaid) onWait(`Waiting for another install in this folder (${holder}) ...`);
		hasSaid = true;
		if (Date.now() >= giveUpAt) {
			rewrite(folder, number, { ...ticket, isDone: true });
			throw new InstallLockError(
				`Gave up after waiting ${Math.round(giveUpAfterMs / 60_000)} minutes for another install in this folder` +
					` (${holder}): if it is stuck, end it, or delete the folder ${folder}, then run the same command again.`,
			);
		}
		await sleep(lookEveryMs);
	}
	for (const lower of numbersIn(folder).filter((taken) => taken < number)) {
		for (const file of [`${lower}`, `${lower}.new`]) rmSync(join(folder, file), { force: true });
	}

	return {
		// Between npm's start and this note lies a fraction of a millisecond in which we must not be killed outright.
		noteNpm: (npmPid) => rewrite(folder, number, { ...ticket, npm: runOf(npmPid) }),
		release: () => rewrite(folder, number, { ...ticket, isDone: true }),
	};
}

/**
 * @param {string} folder
 * @param {Ticket} ticket
 */
async function takeNumber(folder, ticket) {
	for (;;) {
		const number = Math.max(0, ...numbersIn(folder)) + 1;
		try {
			writeFileSync(join(folder, String(number)), JSON.stringify(ticket), { flag: "wx" });
			if (Math.max(...numbersIn(folder)) === number) return number;
			rmSync(join(folder, String(number)));
		} catch (error) {
			if (!isCode(error, "EEXIST")) throw error;
		}
		await sleep(Math.random() * 50);
	}
}

/**
 * @param {string} folder
 * @param {number} number
 * @returns {string | undefined} in words, who holds a lower ticket
 */
function firstHolder(folder, number) {
	for (const lower of numbersIn(folder)) {
		if (lower >= number) continue;
		const holder = holderOf(join(folder, String(lower)));
		if (holder) return holder;
	}
	return undefined;
}

/** @param {string} file */
function holderOf(file) {
	try {
		const ticket = parseTicket(readFileSync(file, "utf8"));
		if (!ticket) return Date.now() - statSync(file).mtimeMs < fillingMs ? "one just starting" : undefined;
		const { ready, npm, isDone } = ticket;
		if (isDone) return undefined;
		if (isRunning(ready)) return `process ${ready.pid}`;
		if (npm && isRunning(npm)) return `process ${npm.pid}, the npm of an install that was ended`;
		return undefined;
	} catch (error) {
		if (isCode(error, "ENOENT")) return undefined;
		throw error;
	}
}

/**
 * @param {string} text
 * @returns {Ticket | undefined} nothing while the ticket is being filled in
 */
function parseTicket(text) {
	try {
		return JSON.parse(text);
	} catch {
		return undefined;
	}
}

/** @param {string} folder */
function numbersIn(folder) {
	return readdirSync(folder)
		.filter((name) => /^\d+$/.test(name))
		.map(Number)
		.sort((a, b) => a - b);
}

/**
 * @param {string} folder
 * @param {number} number
 * @param {Ticket} ticket
 */
function rewrite(folder, number, ticket) {
	const file = join(folder, String(number));
	// The person may have deleted the folder, as the words of giving up tell them to.
	mkdirSync(folder, { recursive: true });
	writeFileSync(`${file}.new`, JSON.stringify(ticket));
	renameSync(`${file}.new`, file);
}

/**
 * @param {unknown} error
 * @param {string} code
 */
function isCode(error, code) {
	return error instanceof Error && "code" in error && error.code === code;
}
