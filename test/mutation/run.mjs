// Changes the source a little, place by place, and counts how many of the changes the tests notice:
//   npm run mutate -- maths                 all of src/maths
//   npm run mutate -- plan rules=0.1        all of src/plan, and one in ten of the changes of src/rules
//   npm run mutate -- power/coil-ripple     one file
// A folder takes from half an hour to hours, so no run of the tests and no CI does this. The draw is the same in each run,
// and a larger share holds a smaller one. reports/mutation keeps what is known: the next run judges only what is new.
import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Stryker } from "@stryker-mutator/core";
import { Instrumenter } from "@stryker-mutator/instrumenter";

const seed = 20261128;
const folders = ["maths", "power", "plan", "rules"];
process.chdir(fileURLToPath(new URL("../../", import.meta.url)));

const asked = process.argv.slice(2).map((word) => {
	const [path = "", share = "1"] = word.split("=");
	return { folder: path.split("/")[0] ?? "", path, share: Number(share) };
});
const faulty = asked.filter(({ folder, share }) => !folders.includes(folder) || !(share > 0 && share <= 1));

if (asked.length === 0 || faulty.length > 0) {
	console.error(`Say which: FOLDER, FOLDER/FILE or FOLDER=SHARE, with a folder of ${folders.join(", ")}.`);
	process.exitCode = 2;
} else for (const each of asked) await mutate(each);

/** @param {{ folder: string, path: string, share: number }} asked */
async function mutate({ folder, path, share }) {
	const started = Date.now();
	process.env["MUTATED_FOLDER"] = folder;
	drawOnly(share);
	const results = await new Stryker({
		mutate: [existsSync(`src/${path}.ts`) ? `src/${path}.ts` : `src/${path}/**/*.ts`],
		testRunner: "vitest",
		plugins: ["@stryker-mutator/vitest-runner"],
		vitest: { configFile: "test/mutation/vitest.config.ts", related: false },
		coverageAnalysis: "perTest",
		// No single test covers what runs while a file is loaded: each such change would cost a run of all tests.
		ignoreStatic: true,
		concurrency: Number(process.env["MUTATION_CONCURRENCY"] ?? 1),
		// Long, since a busy machine must not count as a loop without end.
		timeoutMS: 10_000,
		timeoutFactor: 1.25,
		incremental: true,
		incrementalFile: reportOf(path),
		tempDirName: "reports/mutation/tmp",
		ignorePatterns: ["/dist", "/reports", "/test/golden", "/test/saved"],
		reporters: ["progress-append-only"],
		allowConsoleColors: false,
	}).runMutationTest();
	tell(path, share, results, (Date.now() - started) / 60_000);
}

/** @param {string} path */
function reportOf(path) {
	return `reports/mutation/${path.replaceAll("/", "-")}.json`;
}

/**
 * Marks all changes as left out but the drawn ones. Each change is drawn by itself, by its file, place and text.
 *
 * @param {number} share
 */
function drawOnly(share) {
	const { instrument } = Instrumenter.prototype;
	/** @type {typeof instrument} */
	Instrumenter.prototype.instrument = async function (files, options) {
		Instrumenter.prototype.instrument = instrument;
		const result = await instrument.call(this, files, options);
		for (const mutant of result.mutants) {
			if (share === 1 || mutant.status !== undefined) continue;
			const path = `/${sourceOf(mutant)}`;
			const key = JSON.stringify([seed, path, mutant.location, mutant.mutatorName, mutant.replacement]);
			const drawn = createHash("sha256").update(key).digest().readUInt32BE() / 2 ** 32;
			if (drawn >= share) Object.assign(mutant, { status: "Ignored", statusReason: "not drawn" });
		}
		return result;
	};
}

/** @param {{ fileName: string }} mutant */
function sourceOf({ fileName }) {
	return fileName.slice(fileName.lastIndexOf("/src/") + 1);
}

/**
 * Prints what was not noticed, and the count. What took too long counts as noticed, what no test runs as not noticed.
 *
 * @param {string} path
 * @param {number} share
 * @param {Awaited<ReturnType<Stryker["runMutationTest"]>>} results
 * @param {number} minutes
 */
function tell(path, share, results, minutes) {
	/** @param {string} status */
	const count = (status) => results.filter((mutant) => mutant.status === status).length;
	for (const mutant of results)
		if (mutant.status === "Survived" || mutant.status === "NoCoverage") console.log(wordsOf(mutant));
	const valid = ["Killed", "Timeout", "Survived", "NoCoverage"].map(count).reduce((sum, one) => sum + one, 0);
	const score = ((100 * (count("Killed") + count("Timeout"))) / valid).toFixed(1);
	console.log(
		`${path}: ${valid} changes (share ${share}, seed ${seed}), ${count("Killed")} killed, ${count("Timeout")} timeout, ` +
			`${count("Survived")} survived, ${count("NoCoverage")} no coverage, score ${score} %, ${minutes.toFixed(1)} min, ` +
			`kept in ${reportOf(path)}`,
	);
}

/** @param {Awaited<ReturnType<Stryker["runMutationTest"]>>[number]} mutant */
function wordsOf(mutant) {
	const { start, end } = mutant.location;
	const file = sourceOf(mutant);
	const lines = readFileSync(file, "utf8")
		.split("\n")
		.slice(start.line - 1, end.line);
	const first = lines[0] ?? "";
	const was =
		lines.length === 1 ? first.slice(start.column - 1, end.column - 1) : `${first.slice(start.column - 1)} ...`;
	const becomes = mutant.replacement?.replace(/\s+/g, " ").slice(0, 200);
	return `${file}:${start.line}:${start.column} ${mutant.status} ${mutant.mutatorName}: ${was} -> ${becomes}`;
}
