import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/**
 * The notices that go out with the bundle: name, version, licence and licence text of each package of which a part
 * really is in it.
 *
 * @param {import("esbuild").Metafile} metafile
 * @param {string} root the folder that the metafile's paths start from
 * @returns {string}
 */
export function licenceNotices(metafile, root) {
	const notices = packageFolders(metafile).map((folder) => noticeOf(join(root, folder)));
	return [
		"boardwalk is built from its own source, under the licence in the file LICENSE, and from these packages.\n",
		...[...new Set(notices)].sort(),
	].join(`\n${"-".repeat(80)}\n\n`);
}

/**
 * The folders of the packages in a bundle, seen from where the metafile's paths start.
 *
 * @param {import("esbuild").Metafile} metafile
 * @returns {string[]} for instance `node_modules/zod`, sorted
 */
export function packageFolders(metafile) {
	const folders = new Set();
	for (const { inputs } of Object.values(metafile.outputs)) {
		for (const [input, { bytesInOutput }] of Object.entries(inputs)) {
			const folder = /^.*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(input)?.[0];
			if (folder && bytesInOutput > 0) folders.add(folder);
		}
	}
	return [...folders].sort();
}

/** @param {string} folder */
function noticeOf(folder) {
	const { name, version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
	const texts = readdirSync(folder)
		.filter((file) => /^(licen[cs]e|copying|notice)/i.test(file))
		.sort()
		.map((file) => readFileSync(join(folder, file), "utf8").trim());
	const text = texts.length > 0 ? texts.join("\n\n") : "(The package comes without a licence text.)";
	return `${name} ${version}\nLicence: ${license ?? "not stated"}\n\n${text}\n`;
}
