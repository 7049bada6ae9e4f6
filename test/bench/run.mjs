// Compiles the benches as the program itself is compiled, and runs them one after another: node test/bench/run.mjs, or
// one of them by its file's name: node test/bench/run.mjs plan-against-solver. No test run picks them up.
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { partsAsText, withoutSchemaPackages } from "../../bin/dev/lighter-bundle.mjs";
import { withoutDevtools } from "../../bin/dev/without-devtools.mjs";

const root = fileURLToPath(new URL("../../", import.meta.url));
const benches = [
	"launch",
	"plan-against-solver",
	"rules-on-many-boards",
	"scores-of-many-boards",
	"next-question",
	"advise-on-many-boards",
	"key-to-repaint",
	"held-key",
	"files-and-forms",
	"bytes-per-key",
];
const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !benches.includes(name));

if (unknown.length > 0) {
	console.error(`No such bench: ${unknown.join(", ")}. There are: ${benches.join(", ")}.`);
	process.exitCode = 2;
} else for (const name of asked.length > 0 ? asked : benches) await run(name);

/** @param {string} name */
async function run(name) {
	const { outputFiles } = await build({
		absWorkingDir: root,
		entryPoints: [`test/bench/${name}.ts`],
		bundle: true,
		format: "esm",
		platform: "node",
		target: "node20",
		// As in bin/dev/bundle.mjs: for what is drawn.
		define: { "process.env.NODE_ENV": '"production"' },
		plugins: [withoutDevtools, withoutSchemaPackages, partsAsText],
		banner: {
			js: 'import { createRequire as createRequireHere } from "node:module"; const require = createRequireHere(import.meta.url);',
		},
		write: false,
	});
	const { status } = spawnSync(process.execPath, ["--expose-gc", "--input-type=module"], {
		cwd: root,
		input: outputFiles[0]?.contents ?? "",
		stdio: ["pipe", "inherit", "inherit"],
		// Drawn in colour wherever the figures go; with CI set Ink would draw nothing.
		env: { ...process.env, CI: "false", FORCE_COLOR: "1" },
	});
	if (status !== 0) process.exitCode = status ?? 1;
}
