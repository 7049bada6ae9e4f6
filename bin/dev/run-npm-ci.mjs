import { spawn } from "node:child_process";
import { constants } from "node:os";
import { findNpm } from "./find-npm.mjs";

// Everything is compiled into the bundle, so the build needs the dev packages whatever the user's npm settings say;
// optional ones too, for esbuild's own program is one of them.
const npmArguments = ["ci", "--include=dev", "--include=optional", "--ignore-scripts", "--no-audit", "--no-fund"];

const passedOn = /** @type {const} */ (["SIGINT", "SIGTERM", "SIGHUP"]);

// Told to stop, npm first unpacks what it has begun, for ten seconds and more. What it leaves half done is no loss: the
// next install starts from nothing.
const timeToStopMs = 1000;

/**
 * Runs `npm ci` in the checkout, its words on our stderr. A signal is passed on to npm, and npm's end waited for.
 *
 * @param {string} root the checkout's folder
 * @param {{ onStart: (npmPid: number) => void }} hooks
 * @returns {Promise<{ exitCode: number, how: string, signal?: NodeJS.Signals }>} `exitCode` is never 0 after a signal or
 *   when npm could not be started; `how` is the end in words; `signal` is set where we were told to stop
 */
export async function runNpmCi(root, { onStart }) {
	const npm = findNpm();
	const child = spawn(npm.command, [...npm.firstArguments, ...npmArguments], {
		cwd: root,
		stdio: ["ignore", 2, 2],
		shell: npm.needsShell,
	});
	if (child.pid !== undefined) onStart(child.pid);

	/** @type {NodeJS.Signals | undefined} */
	let told;
	/** @type {NodeJS.Timeout | undefined} */
	let end;
	/** @param {NodeJS.Signals} signal */
	const passOn = (signal) => {
		told ??= signal;
		child.kill(signal);
		end ??= setTimeout(() => child.kill("SIGKILL"), timeToStopMs);
	};
	for (const signal of passedOn) process.on(signal, passOn);
	try {
		const ended = await endOf(child);
		return told ? { exitCode: 128 + constants.signals[told], how: `stopped by ${told}`, signal: told } : ended;
	} finally {
		clearTimeout(end);
		for (const signal of passedOn) process.off(signal, passOn);
	}
}

/**
 * @param {import("node:child_process").ChildProcess} child
 * @returns {Promise<{ exitCode: number, how: string }>}
 */
function endOf(child) {
	return new Promise((resolve) => {
		child.once("error", (error) => resolve({ exitCode: 1, how: `npm could not be started: ${error.message}` }));
		child.once("close", (code, signal) => {
			if (signal) resolve({ exitCode: 128 + constants.signals[signal], how: `npm was stopped by ${signal}` });
			else resolve({ exitCode: code ?? 1, how: `npm ended with code ${code}` });
		});
	});
}
