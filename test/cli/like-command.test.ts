import { describe, expect, test } from "vitest";
import { likeDirections } from "../../src/choose/like-this-but.ts";
import { helpText } from "../../src/cli/help.ts";
import { like } from "../../src/cli/like-command.ts";
import { scenarioFile } from "../e2e/program.ts";
import { commandRuns, flat } from "./run-command.ts";

const { run, refusal } = commandRuns("like", like);

const [board, quiet] = ["pennywhistle-hornpipe", scenarioFile("quiet-desk")];

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
		[[board, "cooler", "--to", "a.svg"], "The result is written as .txt or .json; the file's name must end so."],
	])("%j is refused with what was wrong", (argv, words) => {
		expect(refusal(...argv, "--answers", quiet)).toMatchObject({ code: 64, message: expect.stringContaining(words) });
	});

	test("the help lists every way", () => {
		const [line = ""] = /^ {2}boardwalk like .*$/m.exec(helpText()) ?? [];
		for (const direction of likeDirections) expect(line).toContain(direction);
	});
});
