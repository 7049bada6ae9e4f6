import { InstallLockError, takeInstallLock } from "./install-lock.mjs";
import { isInstalled, missingPackages, removeInstallMark, writeInstallMark } from "./install-mark.mjs";
import { runNpmCi } from "./run-npm-ci.mjs";

/**
 * Installs the packages where they are missing or out of date, then builds `dist`. Speaks on stderr only, and says
 * nothing when nothing had to be installed.
 *
 * @param {string} root the checkout's folder
 * @returns {Promise<number>} the exit code: 0 when ready, npm's own when the install failed, 130 and the like after a
 *   signal, 1 when something else failed
 */
export async function makeReady(root) {
	if (!isInstalled(root)) {
		const exitCode = await installInTurn(root);
		if (exitCode !== 0) return exitCode;
	}
	// Loaded only now: it imports esbuild, which the install may just have brought.
	const { buildOrSayWhy } = await import("./build-or-say-why.mjs");
	return buildOrSayWhy({ root });
}

/** @param {string} root */
async function installInTurn(root) {
	try {
		const lock = await takeInstallLock(root, { onWait: (words) => console.error(words) });
		try {
			// Whoever had the lock before may have done the work.
			return isInstalled(root) ? 0 : await install(root, lock);
		} finally {
			lock.release();
		}
	} catch (error) {
		if (error instanceof InstallLockError) console.error(error.message);
		else if (error instanceof Error && "syscall" in error) {
			console.error(`Installing needs to read and write in ${root}, and that failed: ${error.message}.`);
		} else throw error;
		return 1;
	}
}

/**
 * @param {string} root
 * @param {import("./install-lock.mjs").InstallLock} lock
 */
async function install(root, lock) {
	console.error("Installing the packages boardwalk is built from (only needed once; takes a minute or less) ...");
	removeInstallMark(root);
	const ended = await runNpmCi(root, { onStart: (npmPid) => lock.noteNpm(npmPid) });
	if (ended.signal) return ended.exitCode;
	if (ended.exitCode !== 0) {
		console.error(
			`Installing the packages failed (${ended.how}): check the network, the free disk space and that you may write` +
				` in ${root} (npm's own words are above), then run the same command again.`,
		);
		return ended.exitCode;
	}
	const missing = missingPackages(root);
	if (missing.length > 0) {
		console.error(
			`The install ended well but ${missing.join(", ")} is still missing: delete the folder node_modules, then run` +
				" the same command again.",
		);
		return 1;
	}
	writeInstallMark(root);
	return 0;
}
