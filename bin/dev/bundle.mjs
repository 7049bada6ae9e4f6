import { relative, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { licenceNotices } from "./licence-notices.mjs";
import { partsAsText, withoutSchemaPackages } from "./lighter-bundle.mjs";
import { publishFiles } from "./publish-files.mjs";
import { withoutDevtools } from "./without-devtools.mjs";

const ourRoot = fileURLToPath(new URL("../../", import.meta.url));

/**
 * @typedef {object} BundleOptions
 * @property {string} [root] the checkout's folder
 * @property {string} [entry] seen from `root`; its bundle is `main.js` when it is called `main.ts`
 * @property {string} [outdir] where the bundle goes, seen from `root`
 * @property {number} [keepStaleMs] how long a file of an earlier build stays; see publish-files.mjs
 */

/**
 * Compiles the program and all it needs into `dist`: a small `main.js`, and chunks for what it imports dynamically.
 *
 * @param {BundleOptions} [options]
 * @returns {Promise<{ metafile: import("esbuild").Metafile, files: string[] }>} esbuild's account of what went where,
 *   and the names of the files of this build; rejects with esbuild's BuildFailure
 */
export async function bundle({ root = ourRoot, entry = "src/cli/main.ts", outdir = "dist", keepStaleMs } = {}) {
	const { outputFiles, metafile } = await build({
		absWorkingDir: root,
		entryPoints: [entry],
		outdir,
		entryNames: "[name]",
		chunkNames: "chunk-[hash]",
		bundle: true,
		splitting: true,
		format: "esm",
		platform: "node",
		target: "node20",
		// Development React is slower and keeps a record of every repaint for ever.
		define: { "process.env.NODE_ENV": '"production"' },
		plugins: [withoutDevtools, withoutSchemaPackages, partsAsText],
		// Some packages are CommonJS and call require for Node's own modules.
		banner: {
			js: 'import { createRequire as createRequireHere } from "node:module"; const require = createRequireHere(import.meta.url);',
		},
		// Names stay, so that a stack trace can be read.
		minifyWhitespace: true,
		minifySyntax: true,
		legalComments: "none",
		logLevel: "silent",
		metafile: true,
		write: false,
	});
	const folder = resolve(root, outdir);
	const files = outputFiles.map(({ path, contents }) => ({ name: relative(folder, path), contents }));
	const notices = { name: "NOTICES.txt", contents: Buffer.from(licenceNotices(metafile, root)) };
	publishFiles(folder, { files: [...files, notices], last: "main.js", keepStaleMs });
	return { metafile, files: [...files, notices].map(({ name }) => name) };
}
