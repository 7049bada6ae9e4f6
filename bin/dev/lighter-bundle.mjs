import { readFile } from "node:fs/promises";

/** What the settings' package (conf) uses for schemas and for migrations between versions; settings here have neither. */
const unusedByConf = /^(?:ajv\/dist\/2020\.js|ajv-formats|semver)$/;

/**
 * Leaves out what would only be read at every start: packages that nothing calls. Should something call one all the same,
 * it fails at once, since what stands there instead is no function.
 *
 * @type {import("esbuild").Plugin}
 */
export const withoutSchemaPackages = {
	name: "without-schema-packages",
	setup(build) {
		build.onResolve({ filter: unusedByConf }, ({ path, importer }) =>
			/[\\/]node_modules[\\/]conf[\\/]/.test(importer) ? { path, namespace: "never-called" } : undefined,
		);
		build.onLoad({ filter: /.*/, namespace: "never-called" }, () => ({
			contents: "export const Ajv2020 = null; export default {};",
			loader: /** @type {const} */ ("js"),
		}));
	},
};

/**
 * The demonstration's parts as one text that is read when the program starts: the runtime reads JSON about twice as fast as
 * the same lists written as code.
 *
 * @type {import("esbuild").Plugin}
 */
export const partsAsText = {
	name: "parts-as-text",
	setup(build) {
		build.onLoad({ filter: /[\\/]data[\\/]demo[\\/][^\\/]+\.json$/ }, async ({ path }) => ({
			contents: `export default JSON.parse(${JSON.stringify(JSON.stringify(JSON.parse(await readFile(path, "utf8"))))});`,
			loader: /** @type {const} */ ("js"),
		}));
	},
};
