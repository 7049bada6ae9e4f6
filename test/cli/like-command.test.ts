import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { likeDirections } from "../../src/choose/like-this-but.ts";
import { readArguments } from "../../src/cli/arguments.ts";
import { CommandError } from "../../src/cli/exit-codes.ts";
import { helpText } from "../../src/cli/help.ts";
import { like } from "../../src/cli/like-command.ts";
import { scenarioFile } from "../e2e/program.ts";

let desk = "";
beforeEach(() => {
	desk = mkdtempSync(join(tmpdir(), "like-"));
	// Whoever runs the tests may have parts of their own.
	for (const name of ["XDG_DATA_HOME", "LOCALAPPDATA"]) vi.stubEnv(name, join(desk, "data"));
});
afterEach(() => {
	vi.unstubAllEnvs();
	rmSync(desk, { recursive: true, force: true });
});

/** What the command prints for these words behind its name. */
function run(...argv: readonly string[]): { readonly out: string; readonly err: string } {
	let [out, err] = ["", ""];
	like(readArguments(["like", ...argv]), {
		out: (text) => {
			out += text;
		},
		err: (text) => {
			err += text;
		},
	});
	return { out, err };
}

function refusal(...argv: readonly string[]): CommandError {
	try {
		run(...argv);
	} catch (error) {
		if (error instanceof CommandError) return error;
		throw error;
	}
	throw new Error(`${argv.join(" ")} was taken`);
}

const [board, quiet] = ["pennywhistle-hornpipe", scenarioFile("quiet-desk")];
const flat = (text: string) => text.replace(/\s+/g, " ");

describe("boardwalk like", () => {
	test.each(likeDirections)("finds what is %s, within the width of a page", (direction) => {
		const { out, err } = run(board, direction, "--answers", quiet);
		expect(err).toBe("");
		expect(out).toMatch(/^Like Pennywhistle Hornpipe, but [a-zU ]+(USB sockets)?\n\nIn short\n- /);
		for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(78);
	});

	test("tells other programs the same as JSON", () => {
		const json = JSON.parse(run(board, "cheaper", "--answers", quiet, "--json").out);
		expect(json).toMatchObject({
			schema: "boardwalk/like@1",
			boardId: board,
			direction: "cheaper",
			isLeft: true,
			isKnown: true,
			nearestFallen: null,
		});
		expect(json.found.length).toBeGreaterThan(0);
		for (const { from, to, points, byCriterion } of json.found) {
			expect(to.priceMinor).toBeLessThan(from.priceMinor);
			const sum = byCriterion.reduce((total: number, one: { points: number }) => total + one.points, 0);
			expect(sum).toBeCloseTo(points, 9);
		}
		expect(flat(run(board, "cheaper", "--answers", quiet).out)).toContain(json.words[1].lines[0]);
	});

	test("without answers little can be compared, and it says so", () => {
		expect(run(board, "cheaper").err).toBe(
			"Without --answers FILE nothing about your build is known, so little can be compared.\n",
		);
	});

	test.each([
		[[], "Like which board, and how better? Such as: boardwalk like BOARD cheaper --answers my.json."],
		[[board], "Ways: cheaper, cooler, smaller, more-ports."],
		[
			[board, "coller"],
			'There is no way "coller". Did you mean cooler? It takes cheaper, cooler, smaller, more-ports.',
		],
		[["pennywhistle-hornpip", "cooler"], `There is no board "pennywhistle-hornpip". Did you mean ${board}`],
		[[board, "cooler", "--to", "a.svg"], "This is written as .txt or .json; the file's name must end so."],
	])("%j is refused with what was wrong", (argv, words) => {
		expect(refusal(...argv, "--answers", quiet)).toMatchObject({ code: 64, message: expect.stringContaining(words) });
	});

	test("the help lists every way", () => {
		const [line = ""] = /^ {2}boardwalk like .*$/m.exec(helpText()) ?? [];
		for (const direction of likeDirections) expect(line).toContain(direction);
	});
});
