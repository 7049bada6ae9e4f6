// Compiles the fuzzer as the program itself is compiled, and runs it: node test/fuzz/run.mjs [--seconds 60] [--seed 1]
// [--runs N] [--growth] [--keep] [NAME ...]. It prints one line of JSON a parser; exit code 1 where a fault was found.
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const root = fileURLToPath(new URL("../../", import.meta.url));
const { outputFiles } = await build({
	absWorkingDir: root,
	entryPoints: ["test/fuzz/fuzz.ts"],
	bundle: true,
	format: "esm",
	platform: "node",
	target: "node20",
	banner: {
		js: 'import { createRequire as createRequireHere } from "node:module"; const require = createRequireHere(import.meta.url);',
	},
	write: false,
});
const { status, error } = spawnSync(process.execPath, ["--input-type=module", "-", ...process.argv.slice(2)], {
	cwd: root,
	input: outputFiles[0]?.contents ?? "",
	stdio: ["pipe", "inherit", "inherit"],
	// A pattern that never ends hears no other signal.
	timeout: 1000 * (2 * secondsAsked() + 120),
	killSignal: "SIGKILL",
});
if (error)
	console.error(
		`The fuzzer hung and was ended: ${error.message}. The parser after the last one printed hung; run it alone.`,
	);
process.exitCode = status ?? 1;

function secondsAsked() {
	const at = process.argv.indexOf("--seconds");
	return Number(process.argv[at + 1]) > 0 && at > 0 ? Number(process.argv[at + 1]) : 60;
}
