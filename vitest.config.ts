import { defineConfig } from "vitest/config";

/** Tests of what meets the outside world: other programs, the disk, the terminal. */
const shellTests = ["cli", "e2e", "faults", "files", "meta", "plain", "ui"].map(
	(folder) => `test/${folder}/**/*.test.{ts,tsx}`,
);

/** Tests of pages in a real browser. */
const browserTests = "test/browser/**/*.test.ts";

export default defineConfig(({ mode }) => ({
	test: {
		globalSetup: "test/build-first.ts",
		// By default one of the processors is left idle, on a machine with two that is half of them.
		maxWorkers: "100%",
		projects: [
			{
				test: {
					name: "core",
					setupFiles: mode === "fuzz" ? [] : ["test/steady-seeds.ts"],
					include: ["test/**/*.test.ts"],
					exclude: [...shellTests, browserTests],
					// Pure functions keep no state that one file could leave to the next, so all may share a worker: with many
					// small files, starting one for each takes longer than the tests.
					pool: "threads",
					isolate: false,
					testTimeout: 60_000,
				},
			},
			{
				test: {
					name: "shell",
					setupFiles: mode === "fuzz" ? [] : ["test/steady-seeds.ts"],
					include: shellTests,
					// A thread has no standard streams and signals of its own.
					pool: "forks",
					// With CI set, Ink draws nothing until it ends, and its testing library loses the last frame.
					env: { CI: "false" },
					// These start programs of their own, which takes a while on a busy machine.
					testTimeout: 90_000,
					hookTimeout: 60_000,
				},
			},
			{
				test: {
					name: "browser",
					setupFiles: mode === "fuzz" ? [] : ["test/steady-seeds.ts"],
					include: [browserTests],
					pool: "forks",
					// One browser at a time, after all else: it takes most of a machine while it prints.
					maxWorkers: 1,
					sequence: { groupOrder: 1 },
					testTimeout: 60_000,
					hookTimeout: 60_000,
				},
			},
		],
	},
}));
