// Old Nodes must be able to read this file, so it uses nothing newer than Node 12 knows.

/** The oldest Node that runs boardwalk; a test holds it equal to "engines" in package.json. */
export const oldestNode = { major: 20, minor: 19 };

/**
 * One plain sentence when the running Node is too old, and nothing when it will do.
 *
 * @param {string} version as `process.version` writes it, such as "v20.19.0"
 * @returns {string | undefined}
 */
export function oldNodeSentence(version) {
	const [major = 0, minor = 0] = version.replace(/^v/, "").split(".").map(Number);
	const isNewEnough = major > oldestNode.major || (major === oldestNode.major && minor >= oldestNode.minor);
	if (isNewEnough) return undefined;
	const wanted = `${oldestNode.major}.${oldestNode.minor}`;
	return `boardwalk needs Node ${wanted} or newer, and this is Node ${version}: install a newer Node and try again.`;
}
