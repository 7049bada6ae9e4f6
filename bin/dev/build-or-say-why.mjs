import { formatMessages } from "esbuild";
import { bundle } from "./bundle.mjs";

/**
 * Builds, and where that fails says so on stderr.
 *
 * @param {import("./bundle.mjs").BundleOptions} options
 * @returns {Promise<number>} the exit code: 0, or 1 when the build failed
 */
export async function buildOrSayWhy(options) {
	try {
		await bundle(options);
		return 0;
	} catch (error) {
		console.error("Building boardwalk failed; this is why:");
		console.error(await wordsOf(error));
		return 1;
	}
}

/** @param {unknown} error */
async function wordsOf(error) {
	if (!(error instanceof Error)) return String(error);
	if (!("errors" in error && Array.isArray(error.errors))) return error.message;
	const lines = await formatMessages(error.errors, { kind: "error", color: process.stderr.isTTY === true });
	return lines.join("").trimEnd();
}
