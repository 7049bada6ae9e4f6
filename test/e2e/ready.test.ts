import { spawn } from "node:child_process";
import { once } from "node:events";
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { transform } from "esbuild";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { findNpm } from "../../bin/dev/find-npm.mjs";
import { InstallLockError, takeInstallLock } from "../../bin/dev/install-lock.mjs";
import { isInstalled, missingPackages, removeInstallMark, writeInstallMark } from "../../bin/dev/install-mark.mjs";
import { isRunning, runOf } from "../../bin/dev/process-run.mjs";
import { oldestNode, oldNodeSentence } from "../../bin/old-node.js";

const root = fileURLToPath(new URL("../..", import.meta.url));
const urlOf = (file: string) => JSON.stringify(pathToFileURL(join(root, file)).href);

let all = "";
let folder = "";
let count = 0;
beforeAll(() => {
	all = mkdtempSync(join(tmpdir(), "ready-"));
});
beforeEach(() => {
	folder = join(all, String(count++));
	mkdirSync(folder);
});
afterAll(() => rmSync(all, { recursive: true, force: true }));

function write(file: string, text: string): void {
	mkdirSync(dirname(join(folder, file)), { recursive: true });
	writeFileSync(join(folder, file), text);
}

/** Starts Node and gathers what it says. */
function startNode(words: string[], env: NodeJS.ProcessEnv = {}) {
	const child = spawn(process.execPath, words, { cwd: folder, env: { ...process.env, ...env } });
	const said = { stdout: "", stderr: "" };
	child.stdout.setEncoding("utf8").on("data", (text) => {
		said.stdout += text;
	});
	child.stderr.setEncoding("utf8").on("data", (text) => {
		said.stderr += text;
	});
	const ended = once(child, "close").then(([exitCode, signal]) => ({ exitCode, signal, ...said }));
	return { child, said, ended };
}

async function until(isSo: () => boolean): Promise<void> {
	const giveUpAt = Date.now() + 20_000;
	while (!isSo()) {
		if (Date.now() > giveUpAt) throw new Error(`Waited too long for: ${isSo}`);
		await new Promise((resolve) => setTimeout(resolve, 10));
	}
}

describe("on too old a Node", () => {
	test.each(["v12.22.12", "v18.20.8", "v20.18.3"])("%s gets one plain sentence", (version) => {
		expect(oldNodeSentence(version)).toBe(
			`boardwalk needs Node 20.19 or newer, and this is Node ${version}: install a newer Node and try again.`,
		);
	});

	test.each(["v20.19.0", "v20.20.2", "v21.0.0", "v22.1.0", "v100.0.0"])("%s gets none", (version) => {
		expect(oldNodeSentence(version)).toBeUndefined();
	});

	test("asks for what package.json asks for", () => {
		const { engines } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
		expect(engines.node).toBe(`>=${oldestNode.major}.${oldestNode.minor}`);
	});

	const oldFiles = ["bin/boardwalk.js", "bin/dev/ready.mjs"];

	test.each(oldFiles)("%s says so and stops", async (file) => {
		const pretend = 'data:text/javascript,Object.defineProperty(process, "version", { value: "v12.22.12" })';
		const { exitCode, stdout, stderr } = await startNode(["--import", pretend, join(root, file)]).ended;
		expect({ exitCode, stdout, stderr }).toEqual({
			exitCode: 78,
			stdout: "",
			stderr: `${oldNodeSentence("v12.22.12")}\n`,
		});
	});

	/** Whether Node 12 could read it: no syntax to be rewritten, and Node's modules named without `node:`. */
	async function isOldSyntax(text: string): Promise<boolean> {
		const [asNew, asOld] = await Promise.all(
			["esnext", "node12.20"].map(async (target) => (await transform(text, { target })).code),
		);
		return asNew === asOld && !text.includes('from "node:');
	}

	test.each([...oldFiles, "bin/old-node.js"])("%s can be read by it", async (file) => {
		expect(await isOldSyntax(readFileSync(join(root, file), "utf8"))).toBe(true);
	});

	test.each(["a?.b;", "a ?? b;", "a ||= b;", 'import { x } from "node:fs"; x();'])("%s could not", async (text) => {
		expect(await isOldSyntax(text)).toBe(false);
	});
});

describe("the mark of an install", () => {
	const machine = { nodeVersion: "v20.19.0", platform: "linux", arch: "x64" };

	beforeEach(() => {
		write("package.json", '{ "dependencies": { "zod": "1.0.0" }, "devDependencies": { "@scope/tool": "2.0.0" } }');
		write("package-lock.json", '{ "lockfileVersion": 3 }');
		write("node_modules/zod/package.json", "{}");
		write("node_modules/@scope/tool/package.json", "{}");
		writeInstallMark(folder, machine);
	});

	test("lets an install be skipped, also on another minor of Node", () => {
		expect(isInstalled(folder, machine)).toBe(true);
		expect(isInstalled(folder, { ...machine, nodeVersion: "v20.20.2" })).toBe(true);
	});

	test.each([
		["another Node", { nodeVersion: "v22.19.0" }],
		["another system", { platform: "darwin" }],
		["another kind of processor", { arch: "arm64" }],
	])("does not on %s", (_, other) => {
		expect(isInstalled(folder, { ...machine, ...other })).toBe(false);
	});

	test("does not once the lock file has changed", () => {
		write("package-lock.json", '{ "lockfileVersion": 3, "packages": {} }');
		expect(isInstalled(folder, machine)).toBe(false);
	});

	test("does not when a package is gone, which is named", () => {
		rmSync(join(folder, "node_modules/@scope/tool/package.json"));
		expect(missingPackages(folder)).toEqual(["@scope/tool"]);
		expect(isInstalled(folder, machine)).toBe(false);
	});

	test("does not when it was taken off, or nothing was ever installed", () => {
		removeInstallMark(folder);
		expect(isInstalled(folder, machine)).toBe(false);
		rmSync(join(folder, "node_modules"), { recursive: true });
		expect(isInstalled(folder, machine)).toBe(false);
	});
});

describe("the lock around an install", () => {
	const quick = { lookEveryMs: 10 };

	/** Starts a process that takes the lock, notes a helper as its npm, and then sits there. */
	async function startHolder() {
		const holder = startNode([
			"--input-type=module",
			"-e",
			`import { spawn } from "node:child_process";
			import { takeInstallLock } from ${urlOf("bin/dev/install-lock.mjs")};
			const lock = await takeInstallLock(${JSON.stringify(folder)}, { onWait() {} });
			const helper = spawn(process.execPath, ["-e", "setInterval(() => {}, 1000)"], { stdio: "ignore" });
			lock.noteNpm(helper.pid);
			console.log(helper.pid);
			setInterval(() => {}, 1000);`,
		]);
		await until(() => holder.said.stdout.endsWith("\n"));
		return { ...holder, npmPid: Number(holder.said.stdout) };
	}

	test("is had at once when nobody holds it, again and again", async () => {
		for (let turn = 0; turn < 3; turn++) {
			const waits: string[] = [];
			const lock = await takeInstallLock(folder, { ...quick, onWait: (words) => waits.push(words) });
			lock.release();
			expect(waits).toEqual([]);
		}
	});

	test("makes the second wait, with one word on whom for, until the first gives it back", async () => {
		const first = await takeInstallLock(folder, { onWait: () => {} });
		const waits: string[] = [];
		let hasSecond = false;
		const second = takeInstallLock(folder, { ...quick, onWait: (words) => waits.push(words) }).then((lock) => {
			hasSecond = true;
			return lock;
		});
		await new Promise((resolve) => setTimeout(resolve, 100));
		expect(hasSecond).toBe(false);
		expect(waits).toEqual([`Waiting for another install in this folder (process ${process.pid}) ...`]);
		first.release();
		(await second).release();
	});

	test("is given up on after a while, with a word on what to do, and then blocks nobody", async () => {
		const first = await takeInstallLock(folder, { onWait: () => {} });
		const late = takeInstallLock(folder, { ...quick, giveUpAfterMs: 50, onWait: () => {} });
		await expect(late).rejects.toThrow(InstallLockError);
		await expect(late).rejects.toThrow(/another install .*end it, or delete the folder .*\.install-lock/);
		first.release();
		(await takeInstallLock(folder, { ...quick, giveUpAfterMs: 0, onWait: () => {} })).release();
	});

	test("of a killed process is held on by its npm, and free when that has ended too", async () => {
		const holder = await startHolder();
		holder.child.kill("SIGKILL");
		await holder.ended;
		const waits: string[] = [];
		let hasIt = false;
		const next = takeInstallLock(folder, { ...quick, onWait: (words) => waits.push(words) }).then((lock) => {
			hasIt = true;
			return lock;
		});
		await new Promise((resolve) => setTimeout(resolve, 100));
		expect(hasIt).toBe(false);
		expect(waits[0]).toContain(`process ${holder.npmPid}, the npm of an install that was ended`);
		process.kill(holder.npmPid, "SIGKILL");
		(await next).release();
	});

	test("is taken by one at a time, however many come at once after a crash", async () => {
		const dead = startNode(["-e", ""]);
		await dead.ended;
		write(".install-lock/7", JSON.stringify({ ready: { pid: dead.child.pid } }));
		const taker = `
			import { appendFileSync } from "node:fs";
			import { takeInstallLock } from ${urlOf("bin/dev/install-lock.mjs")};
			for (let turn = 0; turn < 5; turn++) {
				const lock = await takeInstallLock(${JSON.stringify(folder)}, { lookEveryMs: 3, onWait() {} });
				appendFileSync("log", "in " + process.pid + "\\n");
				await new Promise((resolve) => setTimeout(resolve, 5));
				appendFileSync("log", "out " + process.pid + "\\n");
				lock.release();
			}`;
		const takers = [1, 2, 3, 4].map(() => startNode(["--input-type=module", "-e", taker]));
		for (const { ended } of takers) expect(await ended).toMatchObject({ exitCode: 0, stderr: "" });
		const log = readFileSync(join(folder, "log"), "utf8").trimEnd().split("\n");
		expect(log).toHaveLength(4 * 5 * 2);
		for (let line = 0; line < log.length; line += 2) {
			expect(log[line]).toMatch(/^in /);
			expect(log[line + 1]).toBe(log[line]?.replace("in", "out"));
		}
	});

	test("knows a process from another that got the same id", () => {
		const own = runOf(process.pid);
		expect(isRunning(own)).toBe(true);
		// Where the system does not tell a process's birth, the id is all there is to go by.
		expect(isRunning({ ...own, birth: "another boot 1" })).toBe(!existsSync("/proc/self/stat"));
	});
});

describe("npm is found", () => {
	const find = (npmExecPath: string | undefined, present: string[], platform = "linux") =>
		findNpm({
			execPath: "/opt/node/bin/node",
			npmExecPath,
			platform,
			exists: (file) => present.includes(file.replaceAll("\\", "/")),
		});
	const besideNode = "/opt/node/lib/node_modules/npm/bin/npm-cli.js";
	const byScript = (script: string) => ({ command: "/opt/node/bin/node", firstArguments: [script], needsShell: false });

	test.each([
		["as the one that started us", "/home/ada/npm/bin/npm-cli.js", ["/home/ada/npm/bin/npm-cli.js", besideNode]],
		["beside Node, when nothing says who started us", undefined, [besideNode]],
		[
			"beside Node, when another package manager started us",
			"/usr/lib/other/other.cjs",
			["/usr/lib/other/other.cjs", besideNode],
		],
		["beside Node, when npm is no script", "/usr/bin/npm", ["/usr/bin/npm", besideNode]],
		["beside Node, when what started us is gone", "/gone/npm-cli.js", [besideNode]],
	])("%s", (_, npmExecPath, present) => {
		const found = find(npmExecPath, present);
		expect(found).toEqual(byScript(npmExecPath?.startsWith("/home") ? npmExecPath : besideNode));
	});

	test("on the path, when it is nowhere else", () => {
		expect(find(undefined, [])).toEqual({ command: "npm", firstArguments: [], needsShell: false });
		expect(find(undefined, [], "win32").needsShell).toBe(true);
	});
});

describe("ready, with an npm of the test's own in a checkout of the test's own", () => {
	beforeEach(() => {
		cpSync(join(root, "bin"), join(folder, "bin"), { recursive: true });
		for (const file of ["package.json", "package-lock.json", "tsconfig.json"])
			cpSync(join(root, file), join(folder, file));
		write("src/cli/main.ts", 'export async function main(): Promise<void> { console.log("started"); }');
	});

	const ready = (npm: string) => {
		write("npm-cli.js", `import { appendFileSync, mkdirSync, readFileSync, symlinkSync } from "node:fs";\n${npm}`);
		return startNode(["bin/dev/ready.mjs"], { npm_execpath: join(folder, "npm-cli.js") });
	};
	/** Does what an install does, by links to the packages that are here. */
	const installs = `
		console.log("npm talks");
		appendFileSync("npm-ran", process.argv.slice(2).join(" ") + "\\n");
		const { devDependencies } = JSON.parse(readFileSync("package.json", "utf8"));
		for (const name of Object.keys(devDependencies)) {
			mkdirSync("node_modules/" + name.replace(/[^/]*$/, ""), { recursive: true });
			symlinkSync(${JSON.stringify(join(root, "node_modules"))} + "/" + name, "node_modules/" + name);
		}`;

	test("installs once, builds, and keeps stdout for the program", async () => {
		const first = await ready(installs).ended;
		expect(first).toMatchObject({ exitCode: 0, stdout: "" });
		expect(first.stderr).toContain("npm talks");
		expect(readFileSync(join(folder, "npm-ran"), "utf8")).toBe(
			"ci --include=dev --include=optional --ignore-scripts --no-audit --no-fund\n",
		);
		expect(await startNode(["bin/boardwalk.js"]).ended).toMatchObject({ exitCode: 0, stdout: "started\n" });

		write("src/cli/main.ts", 'export async function main(): Promise<void> { console.log("started anew"); }');
		expect(await ready(installs).ended).toMatchObject({ exitCode: 0, stdout: "", stderr: "" });
		expect(await startNode(["bin/boardwalk.js"]).ended).toMatchObject({ exitCode: 0, stdout: "started anew\n" });
	});

	test("hands on npm's exit code, says what to look at, and leaves no mark", async () => {
		const { exitCode, stdout, stderr } = await ready(`mkdirSync("node_modules"); process.exit(3);`).ended;
		expect({ exitCode, stdout }).toEqual({ exitCode: 3, stdout: "" });
		expect(stderr).toMatch(/Installing the packages failed \(npm ended with code 3\): check the network.*\n$/);
		expect(isInstalled(folder)).toBe(false);
	});

	test("does not take an install for whole that left a package out", async () => {
		const { exitCode, stderr } = await ready(`mkdirSync("node_modules");`).ended;
		expect(exitCode).toBe(1);
		expect(stderr).toMatch(/The install ended well but .*zod is still missing/);
		expect(existsSync(join(folder, "node_modules/.boardwalk-installed"))).toBe(false);
	});

	test("says in one sentence that it may not write there", async () => {
		write(".install-lock", "a file where a folder is needed");
		const { exitCode, stdout, stderr } = await ready(installs).ended;
		expect({ exitCode, stdout }).toEqual({ exitCode: 1, stdout: "" });
		expect(stderr).toMatch(/^Installing needs to read and write in .*: EEXIST.*\n$/);
		expect(existsSync(join(folder, "npm-ran"))).toBe(false);
	});

	test.each([
		["SIGINT", 130],
		["SIGTERM", 143],
	] as const)("passes %s on to npm, and ends with %i", async (signal, exitCode) => {
		const run = ready(`
			setInterval(() => {}, 1000);
			process.on(${JSON.stringify(signal)}, () => { console.log("npm was told"); process.exit(1); });
			console.log("npm waits");`);
		await until(() => run.said.stderr.includes("npm waits"));
		run.child.kill(signal);
		const ended = await run.ended;
		expect(ended).toMatchObject({ exitCode, stdout: "" });
		expect(ended.stderr).toContain("npm was told");
	});

	test("ends an npm that goes on working when told to stop", async () => {
		const run = ready(`
			setInterval(() => {}, 1000);
			process.on("SIGINT", () => console.log("npm was told"));
			console.log("npm waits " + process.pid + ".");`);
		await until(() => run.said.stderr.includes("npm waits"));
		run.child.kill("SIGINT");
		expect(await run.ended).toMatchObject({ exitCode: 130 });
		expect(isRunning({ pid: Number(/npm waits (\d+)/.exec(run.said.stderr)?.[1]) })).toBe(false);
	});

	test("says in one sentence that the build failed, and then why", async () => {
		write("src/cli/main.ts", "export const x: = 1;");
		const { exitCode, stdout, stderr } = await ready(installs).ended;
		expect({ exitCode, stdout }).toEqual({ exitCode: 1, stdout: "" });
		expect(stderr).toContain('Building boardwalk failed; this is why:\n✘ [ERROR] Unexpected "="');
		expect(stderr).toContain("src/cli/main.ts:1:16");
	});

	test("the program itself says what to run when it is not built", async () => {
		const { exitCode, stdout, stderr } = await startNode(["bin/boardwalk.js"]).ended;
		expect({ exitCode, stdout }).toEqual({ exitCode: 78, stdout: "" });
		expect(stderr).toMatch(/^boardwalk is not built yet: run `npm start`.*\n$/);
	});
});
