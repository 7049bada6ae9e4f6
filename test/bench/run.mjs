// Compiles the bench as the program itself is compiled, and runs it: node test/bench/run.mjs. No test run picks it up.
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const root = fileURLToPath(new URL("../../", import.meta.url));
const { outputFiles } = await build({
	absWorkingDir: root,
	entryPoints: ["test/bench/plan-against-solver.ts"],
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
process.exitCode = status ?? 1;
