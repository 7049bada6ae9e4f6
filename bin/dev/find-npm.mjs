import { existsSync } from "node:fs";
import { dirname, join } from "node:path";

/**
 * How to start npm: `command firstArguments... ci ...`.
 *
 * @typedef {{ command: string, firstArguments: string[], needsShell: boolean }} NpmCommand
 */

/**
 * Finds npm, best the one that started us, so that the install runs under the same Node and the same npm.
 *
 * @param {{ execPath: string, npmExecPath: string | undefined, platform: string, exists: (file: string) => boolean }} [surroundings]
 * @returns {NpmCommand}
 */
export function findNpm(surroundings = ourSurroundings()) {
	const { execPath, npmExecPath, platform, exists } = surroundings;
	const nodeFolder = dirname(execPath);
	const script = [
		// Other package managers set npm_execpath too, but know no `npm ci`.
		...(npmExecPath && /npm-cli\.[cm]?js$/.test(npmExecPath) ? [npmExecPath] : []),
		join(nodeFolder, "node_modules", "npm", "bin", "npm-cli.js"),
		join(nodeFolder, "..", "lib", "node_modules", "npm", "bin", "npm-cli.js"),
		join(nodeFolder, "..", "share", "nodejs", "npm", "bin", "npm-cli.js"),
	].find((file) => exists(file));
	if (script) return { command: execPath, firstArguments: [script], needsShell: false };
	// On Windows `npm` is a command file, which only a shell can start.
	return { command: "npm", firstArguments: [], needsShell: platform === "win32" };
}

function ourSurroundings() {
	const { execPath, platform } = process;
	return { execPath, platform, npmExecPath: process.env["npm_execpath"], exists: existsSync };
}
