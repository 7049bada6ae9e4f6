// Compiles the measure as the program itself is compiled, and runs it: npm run measure:reading -- FOLDER
import { spawnSync } from "node:child_process";
import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const root = fileURLToPath(new URL("../../", import.meta.url));
const { outputFiles } = await build({
	absWorkingDir: root,
	entryPoints: ["test/measure/measure-reading.ts"],
	bundle: true,
	format: "esm",
	platform: "node",
	target: "node20",
	write: false,
});
// A path is meant from where the person stands, not from the project's folder.
const folders = process.argv.slice(2).map((folder) => resolve(process.env["INIT_CWD"] ?? process.cwd(), folder));
const { status } = spawnSync(process.execPath, ["--input-type=module", "-", ...folders], {
	input: outputFiles[0]?.contents ?? "",
	stdio: ["pipe", "inherit", "inherit"],
});
process.exitCode = status ?? 1;
