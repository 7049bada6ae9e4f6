import { type ChildProcessWithoutNullStreams, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));
/** The program as it is installed; the bundle it starts is built before all tests. */
export const program = join(root, "bin", "boardwalk.js");
export const scenarioFile = (name: string) => join(root, "data", "scenarios", `${name}.json`);

export interface Ended {
	readonly exitCode: number | null;
	readonly signal: NodeJS.Signals | null;
	readonly stdout: string;
	readonly stderr: string;
}

/** The program under way over pipes. */
export interface Running {
	readonly child: ChildProcessWithoutNullStreams;
	readonly said: { readonly stdout: string; readonly stderr: string };
	/** Writes one line to its standard input. */
	readonly type: (line: string) => void;
	/** Until standard output has this text, from the last time on that was waited for. */
	readonly waitFor: (text: string) => Promise<void>;
	readonly ended: Promise<Ended>;
}

/** A person's machine: a home and a desk of its own, so that no test meets another's walks. */
export class Machine {
	readonly folder = mkdtempSync(join(tmpdir(), "journey-"));
	readonly desk = join(this.folder, "desk");
	readonly walks = join(this.folder, "state", "boardwalk", "walks");

	constructor() {
		mkdirSync(this.desk);
	}

	remove(): void {
		rmSync(this.folder, { recursive: true, force: true });
	}

	/** Writes a file on the desk, and tells its path. */
	put(name: string, content: string | object): string {
		const path = join(this.desk, name);
		mkdirSync(dirname(path), { recursive: true });
		writeFileSync(path, typeof content === "string" ? content : JSON.stringify(content, null, "\t"));
		return path;
	}

	read(name: string): string {
		return readFileSync(join(this.desk, name), "utf8");
	}

	/** A copy of an invented person's answers on the desk. */
	putScenario(name: string): string {
		return this.put(`${name}.json`, readFileSync(scenarioFile(name), "utf8"));
	}

	/** Files of walks kept in the home, by name. */
	keptWalks(): readonly string[] {
		try {
			return readdirSync(this.walks).sort();
		} catch {
			return [];
		}
	}

	/** Everything on the desk, by name. */
	onDesk(): readonly string[] {
		return readdirSync(this.desk).sort();
	}

	environment(): NodeJS.ProcessEnv {
		const { folder } = this;
		return {
			PATH: process.env["PATH"],
			HOME: folder,
			XDG_STATE_HOME: join(folder, "state"),
			XDG_CONFIG_HOME: join(folder, "config"),
			LOCALAPPDATA: join(folder, "local"),
			TERM: "xterm",
		};
	}

	start(...args: readonly string[]): Running {
		const child = spawn(process.execPath, [program, ...args], { cwd: this.desk, env: this.environment() });
		const said = { stdout: "", stderr: "" };
		let seen = 0;
		child.stdout.setEncoding("utf8").on("data", (text) => {
			said.stdout += text;
		});
		child.stderr.setEncoding("utf8").on("data", (text) => {
			said.stderr += text;
		});
		// A program that ends early closes its input; that is not this test's fault.
		child.stdin.on("error", () => {});
		const ended = once(child, "close").then(([exitCode, signal]) => ({ exitCode, signal, ...said }));
		return {
			child,
			said,
			type: (line) => child.stdin.write(`${line}\n`),
			waitFor: async (text) => {
				while (!said.stdout.includes(text, seen)) {
					if (child.exitCode !== null) throw new Error(`ended without saying: ${text}\n${said.stdout}\n${said.stderr}`);
					await Promise.race([once(child.stdout, "data"), ended]);
				}
				seen = said.stdout.indexOf(text, seen) + text.length;
			},
			ended,
		};
	}

	/** Runs the program to its end. Lines go in all at once, and then the input ends. */
	run(args: readonly string[], lines: readonly string[] = []): Promise<Ended> {
		const { child, ended } = this.start(...args);
		child.stdin.end(lines.map((line) => `${line}\n`).join(""));
		return ended;
	}
}
