import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { questionById } from "../../src/questions/all-questions.ts";
import { printFigure } from "./figure.ts";
import { median } from "./stop-watch.ts";

/** Launches of each; theirs and ours take turns, so that noise meets both alike. */
const rounds = 15;
/** Nothing here takes longer on the busiest machine. */
const patienceMs = 30_000;

const { spawn: spawnInTerminal } = createRequire(join(process.cwd(), "package.json"))(
	"@lydell/node-pty",
) as typeof import("@lydell/node-pty");
const program = join(process.cwd(), "bin/boardwalk.js");
const smallest = join(process.cwd(), "test/bench/smallest-ink.mjs");
const person = join(process.cwd(), "data/scenarios/workbench.json");
const firstQuestion = questionById("about/walk-length")?.ask ?? "";
if (firstQuestion === "") throw new Error("the walk begins with another question");

/** What a program has to show before it counts as there. */
interface Launch {
	readonly words: readonly string[];
	readonly typed?: string;
	readonly shows: string;
}

await measure("launch to the first question drawn at 80x24, the first screen left by a key pressed at once", {
	ours: () => msUntilDrawn({ words: [program], typed: "\r", shows: firstQuestion }),
	theirs: () => msUntilDrawn({ words: [smallest, "Here it is."], shows: "Here it is." }),
	referenceWork: "a program of one line drawn with Ink, unbundled, NODE_ENV=production",
	limit: 0.6,
});
const nothing = { theirs: () => msToEnd(["-e", "0"]), referenceWork: "node -e 0" };
await measure("boardwalk --help", { ours: () => msToEnd([program, "--help"]), ...nothing, limit: 2 });
await measure("launch to the first question of the walk line by line, over a pipe", {
	ours: () => msUntilSaid({ words: [program, "--plain"], typed: "\n", shows: firstQuestion }),
	...nothing,
	limit: 3,
});
await measure("boardwalk shortlist --json of one person, the demonstration's boards", {
	ours: () => msToEnd([program, "shortlist", "--json", "--answers", person]),
	...nothing,
	limit: 8,
});

interface Measured {
	readonly ours: () => Promise<number>;
	readonly theirs: () => Promise<number>;
	readonly referenceWork: string;
	/** Of the two. */
	readonly limit: number;
}

async function measure(name: string, { ours, theirs, referenceWork, limit }: Measured): Promise<void> {
	const [mine, other]: [number[], number[]] = [[], []];
	// The first of each fills the machine's memory with what is read.
	await theirs();
	await ours();
	for (let round = 0; round < rounds; round++) {
		other.push(await theirs());
		mine.push(await ours());
	}
	const [value, reference] = [median(mine), median(other)];
	printFigure({
		...{ name, value, unit: "ms", reference, referenceWork, ratio: value / reference },
		...{ limit, limitIs: "of ratio" },
	});
}

/** A home of its own for one launch: a walk kept by the one before would change what comes first. */
async function withHome<T>(work: (environment: Record<string, string>) => Promise<T>): Promise<T> {
	const home = mkdtempSync(join(tmpdir(), "launch-"));
	try {
		return await work({ PATH: process.env["PATH"] ?? "", HOME: home, TERM: "xterm-256color", LANG: "C.UTF-8" });
	} finally {
		rmSync(home, { recursive: true, force: true });
	}
}

function msUntilDrawn({ words, typed = "", shows }: Launch): Promise<number> {
	return withHome(
		(environment) =>
			new Promise((resolve, reject) => {
				const begun = performance.now();
				let sent = "";
				const child = spawnInTerminal(process.execPath, [...words], {
					...{ name: "xterm-256color", cols: 80, rows: 24 },
					env: { ...environment, NODE_ENV: "production" },
				});
				const late = setTimeout(() => reject(new Error(`not drawn: ${shows}\n${sent}`)), patienceMs);
				let took: number | null = null;
				child.onData((data) => {
					sent += data;
					if (took !== null || !sent.includes(shows)) return;
					took = performance.now() - begun;
					child.kill("SIGKILL");
				});
				child.onExit(() => {
					clearTimeout(late);
					if (took === null) reject(new Error(`it ended before it drew: ${shows}\n${sent}`));
					else resolve(took);
				});
				child.write(typed);
			}),
	);
}

function msUntilSaid({ words, typed = "", shows }: Launch): Promise<number> {
	return withHome(
		(env) =>
			new Promise((resolve, reject) => {
				const begun = performance.now();
				let said = "";
				let took: number | null = null;
				const child = spawn(process.execPath, words, { env, stdio: ["pipe", "pipe", "ignore"] });
				const late = setTimeout(() => child.kill("SIGKILL"), patienceMs);
				child.stdout.on("data", (data: Buffer) => {
					said += data.toString();
					if (took !== null || !said.includes(shows)) return;
					took = performance.now() - begun;
					child.kill("SIGKILL");
				});
				child.on("close", () => {
					clearTimeout(late);
					if (took === null) reject(new Error(`it ended before it said: ${shows}\n${said}`));
					else resolve(took);
				});
				child.stdin.write(typed);
			}),
	);
}

function msToEnd(words: readonly string[]): Promise<number> {
	return withHome(
		(env) =>
			new Promise((resolve, reject) => {
				const begun = performance.now();
				const child = spawn(process.execPath, words, { env, stdio: ["ignore", "pipe", "inherit"] });
				child.stdout.resume();
				child.on("close", (code) => {
					const took = performance.now() - begun;
					if (code === 0) resolve(took);
					else reject(new Error(`${words.join(" ")} ended with ${code}`));
				});
			}),
	);
}
