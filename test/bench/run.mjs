// Compiles the benches as the program itself is compiled, and runs them one after another: node test/bench/run.mjs, or
// one of them by its file's name: node test/bench/run.mjs plan-against-solver. No test run picks them up.
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const root = fileURLToPath(new URL("../../", import.meta.url));
const benches = ["plan-against-solver", "rules-on-many-boards", "scores-of-many-boards", "next-question"];
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
		write: false,
	});
	const { status } = spawnSync(process.execPath, ["--input-type=module"], {
		cwd: root,
		input: outputFiles[0]?.contents ?? "",
		stdio: ["pipe", "inherit", "inherit"],
	});
	if (status !== 0) process.exitCode = status ?? 1;
}
