import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";
import { leftOut, slowLast, testsOf } from "./areas.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));

/** Quick files first: most changes are caught by the first of them. */
class QuickFirst extends BaseSequencer {
	override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
		const place = ({ moduleId }: TestSpecification) => slowLast.findIndex((name) => moduleId.endsWith(name));
		return [...files].sort((one, other) => place(one) - place(other) || one.moduleId.localeCompare(other.moduleId));
	}
}

// biome-ignore lint/style/noDefaultExport: vitest reads the default export
export default defineConfig({
	root,
	test: {
		setupFiles: ["test/mutation/setup.ts"],
		include: [...testsOf(process.env["MUTATED_FOLDER"] ?? "", root)],
		exclude: leftOut,
		// Each run gets a worker of its own, but its files share it: starting one for each takes longer than the tests.
		pool: "threads",
		isolate: false,
		sequence: { sequencer: QuickFirst },
		testTimeout: 60_000,
	},
});
