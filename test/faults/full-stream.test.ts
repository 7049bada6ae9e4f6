import { spawnSync } from "node:child_process";
import { existsSync, readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { program, scenarioFile } from "../e2e/program.ts";
import { ownFolder } from "../files/own-folder.ts";

const { path } = ownFolder();

function run(words: string, input = "") {
	const { status, stdout, stderr } = spawnSync("bash", ["-c", `exec "${process.execPath}" "${program}" ${words}`], {
		cwd: path(),
		env: { PATH: process.env["PATH"], HOME: path() },
		input,
		encoding: "utf8",
	});
	return { status, stdout, stderr };
}

describe.skipIf(!existsSync("/dev/full"))("a stream behind which the disk is full", () => {
	test.each([
		"--version",
		"--help",
		"--plain",
		`sheet --to - --answers ${scenarioFile("quiet-desk")}`,
		`shortlist --json --answers ${scenarioFile("quiet-desk")}`,
	])("ends %s with 74 and one line", (words) => {
		expect(run(`${words} > /dev/full`, "1\n1\n")).toEqual({
			status: 74,
			stdout: "",
			stderr: "Standard output cannot be written: the disk is full.\n",
		});
	});

	test("for messages ends with 74 too, and the answers given so far are kept", () => {
		expect(run("nonsense 2> /dev/full").status).toBe(74);
		expect(run("--plain 2> /dev/full", "1\n1\n1\ns\n").status).toBe(74);
		expect(
			readdirSync(path(".local", "state", "boardwalk", "walks")).filter((name) => name.endsWith(".json")),
		).toHaveLength(1);
	});
});
