import { spawnSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { program, scenarioFile } from "../e2e/program.ts";
import { ownFolder } from "../files/own-folder.ts";

// A full disk without one: the shell allows no file to grow, which a write meets in the same place and with the same
// outcome, but for the word (EFBIG in place of ENOSPC). Who may mount gets a real one besides.

const { path, write } = ownFolder();
const noFileMayGrow = "ulimit -f 0";
const largeEnough = "ulimit -f 4";

function shell(script: string, input = "") {
	const { status, stdout, stderr } = spawnSync("bash", ["-c", script], {
		cwd: path(),
		env: {
			PATH: process.env["PATH"],
			HOME: path("home"),
			NODE: process.execPath,
			PROGRAM: program,
			// Without a listener the signal that comes with EFBIG would end the program before it hears of it.
			NODE_OPTIONS: "--import=data:text/javascript,process.on(%22SIGXFSZ%22,()=>{})",
		},
		input,
		encoding: "utf8",
		timeout: 60_000,
		killSignal: "SIGKILL",
	});
	return { status, said: `${stdout}${stderr}`.replace(/\s+/g, " ") };
}

const started = 'exec "$NODE" "$PROGRAM"';
const unkept = /Your answers cannot be kept \((\S+): (.+?)\)\. The walk goes on/;

describe.skipIf(process.platform === "win32")("a disk that is full", () => {
	test("a new walk goes on, says what is not kept, where and why, and leaves nothing half-written", () => {
		mkdirSync(path("home"));
		const { status, said } = shell(`${noFileMayGrow}; ${started} --plain --answers walk.json`, "1\n1\n1\n1\ns\n");
		expect(status).toBe(1);
		expect(unkept.exec(said)?.slice(1)).toEqual([path("walk.json"), "no file may be as large as this one would be"]);
		expect(said).toContain("How much money is there");
		expect(said).not.toContain("Your answers are kept in");
		expect(readdirSync(path()).sort()).toEqual(["home"]);
	});

	test("a walk that was kept stays whole, and the end tells that its last answers are not in it", () => {
		const file = write("walk.json", readFileSync(scenarioFile("quiet-desk"), "utf8"));
		const before = readFileSync(file, "utf8");
		expect(before.length).toBeGreaterThan(1);
		// The first answer still fits.
		const grown = `${largeEnough}; ${started} --plain --answers new.json`;
		const whole = shell(grown, `1\n${"1\n".repeat(3)}s\n`);
		expect(whole.said).toContain("Your answers are kept in");
		const { said } = shell(`${noFileMayGrow}; ${started} --plain --answers walk.json`, "b\nnot sure\ns\n");
		expect(readFileSync(file, "utf8")).toBe(before);
		expect(said).not.toMatch(/fault of its own/);
		expect(readdirSync(path()).filter((name) => /\.tmp$|\.lock/.test(name))).toEqual([]);
	});

	test("no settings, own parts or sheet are lost that were there; each says why nothing new is", () => {
		const table = write("t.csv", "Name,Maker,Socket\nTidewater Lantern,Tidewater,Harbour 2\n");
		const own = '"$NODE" "$PROGRAM" own';
		mkdirSync(path("home"));
		expect(shell(`${own} import ${table} --kind board --yes`).status).toBe(0);
		const parts = path("home", ".local", "share", "boardwalk", "parts.json");
		const before = readFileSync(parts, "utf8");
		const set = shell(`${noFileMayGrow}; exec ${own} set tidewater-lantern name Other`);
		expect(set).toEqual({
			status: 73,
			said: `${parts} cannot be written: no file may be as large as this one would be. `,
		});
		expect(readFileSync(parts, "utf8")).toBe(before);

		const old = write("sheet.html", "the old sheet");
		const words = `sheet --answers ${scenarioFile("quiet-desk")} --with-demo --to sheet.html --replace`;
		const sheet = shell(`${noFileMayGrow}; ${started} ${words}`);
		expect(sheet.status).toBe(73);
		expect(sheet.said).toContain(`${old} cannot be written: no file may be as large as this one would be.`);
		expect(readFileSync(old, "utf8")).toBe("the old sheet");

		shell('exec "$NODE" "$PROGRAM" --plain', "5\n1\n\n");
		const settings = path("home", ".config", "boardwalk", "settings.json");
		const settingsBefore = readFileSync(settings, "utf8");
		const turned = shell(`${noFileMayGrow}; ${started} --plain`, "5\n1\n\n");
		expect(turned.said).toContain(
			`The settings hold for now, but cannot be kept: ${settings}: no file may be as large`,
		);
		expect(readFileSync(settings, "utf8")).toBe(settingsBefore);
		expect(readdirSync(join(settings, ".."))).toEqual(["settings.json"]);
	});
});

/** A disk of some pages, for who may mount one; it is gone with the shell that made it. */
function onSmallDisk(script: string, input = "") {
	const mounted = 'mount -t tmpfs -o size=64k small "$HOME" &&';
	return shell(`unshare -m bash -c '${mounted} ${script}'`, input);
}
const canMount = spawnSync("unshare", ["-m", "mount", "-t", "tmpfs", "-o", "size=64k", "small", "/mnt"]).status === 0;

describe.skipIf(!canMount)("a small disk that is really full (skipped where this user may mount none)", () => {
	test("the walk goes on when the disk fills under it, and is kept again once there is room", () => {
		mkdirSync(path("home"));
		const said = path("said.txt");
		const until = (words: string, file: string) => `until grep -sq "${words}" ${file}; do sleep 0.1; done`;
		const steps = [
			"echo 1; echo 1",
			until("about/", "$HOME/walk.json"),
			"dd if=/dev/zero of=$HOME/big bs=1k 2>/dev/null",
			"echo 1",
			until("cannot be", said),
			"rm $HOME/big; echo 1; echo s",
		].join("; ");
		const { said: listed } = onSmallDisk(
			`({ ${steps}; } | "$NODE" "$PROGRAM" --plain --answers "$HOME/walk.json" >${said} 2>&1); cat "$HOME/walk.json"; ls "$HOME"`,
		);
		const told = readFileSync(said, "utf8").replace(/\s+/g, " ");
		expect(unkept.exec(told)?.[2]).toBe("the disk is full");
		expect(told).toContain("Your answers are kept in");
		expect(told).not.toContain("last answers are not kept");
		expect(listed.match(/"status"/g)).toHaveLength(3);
		expect(listed.slice(listed.lastIndexOf("}") + 1).trim()).toBe("walk.json");
		rmSync(path("home"), { recursive: true });
	});
});
