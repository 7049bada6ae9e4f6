import { createHash } from "node:crypto";
import { existsSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/**
 * What an install depends on besides the checkout: native parts are picked for these.
 *
 * @typedef {{ nodeVersion: string, platform: string, arch: string }} Machine
 */

/** @type {Machine} */
const thisMachine = { nodeVersion: process.version, platform: process.platform, arch: process.arch };

/**
 * Whether `node_modules` is what `package-lock.json` asks for on this machine, so that an install may be skipped.
 *
 * @param {string} root the checkout's folder
 * @param {Machine} [machine]
 */
export function isInstalled(root, machine = thisMachine) {
	return readOrNothing(markFile(root)) === markText(root, machine) && missingPackages(root).length === 0;
}

/**
 * Says that the install is whole. To be written last, since an install that was cut short must not carry it.
 *
 * @param {string} root the checkout's folder
 * @param {Machine} [machine]
 */
export function writeInstallMark(root, machine = thisMachine) {
	writeFileSync(markFile(root), markText(root, machine));
}

/** @param {string} root the checkout's folder */
export function removeInstallMark(root) {
	rmSync(markFile(root), { force: true });
}

/**
 * The direct dependencies that `node_modules` does not hold.
 *
 * @param {string} root the checkout's folder
 * @returns {string[]} their names
 */
export function missingPackages(root) {
	const { dependencies, devDependencies } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
	return Object.keys({ ...dependencies, ...devDependencies }).filter(
		(name) => !existsSync(join(root, "node_modules", name, "package.json")),
	);
}

/** @param {string} root */
function markFile(root) {
	return join(root, "node_modules", ".boardwalk-installed");
}

/**
 * @param {string} root
 * @param {Machine} machine
 */
function markText(root, { nodeVersion, platform, arch }) {
	const lockHash = createHash("sha256")
		.update(readFileSync(join(root, "package-lock.json")))
		.digest("hex");
	const nodeMajor = nodeVersion.replace(/^v/, "").split(".")[0];
	return `package-lock.json sha256 ${lockHash}\nnode ${nodeMajor} ${platform} ${arch}\n`;
}

/** @param {string} file */
function readOrNothing(file) {
	try {
		return readFileSync(file, "utf8");
	} catch {
		return undefined;
	}
}
