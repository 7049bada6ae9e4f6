import { readdirSync, readFileSync } from "node:fs";

/** Rules that read what a folder measures. */
const rulesOn: Readonly<Record<string, readonly string[]>> = {
	plan: ["m2-drives", "card-slots", "drive-ports", "extra-power", "front-plugs", "cooler-headers"].map(
		(name) => `fit/${name}`,
	),
	power: ["build/supply-watts", "build/cooler-heat", "quality/steady-power", "fit/power-plugs"],
};

/** The tests that may catch a change of a folder of the source. */
export function testsOf(folder: string, root: string): readonly string[] {
	const published = readdirSync(`${root}test/published`)
		.filter((name) => name.endsWith(".test.ts"))
		.map((name) => `test/published/${name}`)
		.filter((path) => readFileSync(root + path, "utf8").includes(`/src/${folder}/`));
	return [
		`test/${folder}/**/*.test.ts`,
		...published,
		...(rulesOn[folder] ?? []).map((name) => `test/rules/${name}.test.ts`),
	];
}

/** Left out: minutes for each change that nothing else catches. What only they would catch counts as not caught. */
export const leftOut = ["test/plan/oracle.test.ts", "test/rules/less-known.test.ts"];

/** These run after all others, the slowest last, since the first test that fails ends the run. */
export const slowLast = [
	"test/published/sampler.test.ts",
	"test/plan/header-properties.test.ts",
	"test/maths/potential-optimality.test.ts",
	"test/plan/any-plan.test.ts",
	"test/maths/pairwise-share.test.ts",
	"test/power/steady-power.properties.test.ts",
];
