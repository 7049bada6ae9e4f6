import { readFileSync } from "node:fs";
import { beforeEach, describe, expect, test, vi } from "vitest";
import { priceLineOfWalk } from "../../src/cli/price-line-command.ts";
import { scenarioFile } from "../e2e/program.ts";
import { commandRuns, flat } from "./run-command.ts";

const { path, run, refusal } = commandRuns("price-line", priceLineOfWalk);
beforeEach(() => {
	vi.stubEnv("LC_ALL", "C.UTF-8");
});

const showpiece = ["--answers", scenarioFile("showpiece")];

const pictureOf = (out: string) => out.slice(out.indexOf("points\n"), out.indexOf("\n\nIn short"));

describe("boardwalk price-line", () => {
	test("draws price against points and says the same in words", () => {
		const { out, err } = run(...showpiece);
		expect(err).toBe("");
		expect(out).toMatch(/^What more money buys\n\npoints\n/);
		for (const heading of ["In short", "On the line, the cheapest first", "Can be passed over"])
			expect(out).toContain(`\n\n${heading}\n- `);
		expect(out).toMatch(/\n\nFor EUR [\d.]+ more: from /);
		for (const line of out.split("\n")) expect([...line].length, line).toBeLessThanOrEqual(78);
	});

	test("is as wide as asked, 60 columns if nothing is", () => {
		const widest = (out: string) =>
			Math.max(
				...pictureOf(out)
					.split("\n")
					.map((line) => [...line].length),
			);
		expect(widest(run(...showpiece).out)).toBe(60);
		expect(widest(run(...showpiece, "--width", "100").out)).toBe(100);
		for (const width of ["39", "201", "wide", "-5", "6e1"])
			expect(refusal(...showpiece, `--width=${width}`)).toMatchObject({
				code: 64,
				message: expect.stringContaining(width),
			});
	});

	test("draws with ASCII alone where that is asked for, or is all there is", () => {
		expect(run(...showpiece).out).toMatch(/[^\n -~]/);
		expect(run(...showpiece, "--ascii").out).toMatch(/^[\n -~]+$/);
		vi.stubEnv("LC_ALL", "C");
		expect(run(...showpiece).out).toMatch(/^[\n -~]+$/);
	});

	test("says it in words alone for whoever has it read out", () => {
		const [drawn, told] = [run(...showpiece), run(...showpiece, "--plain")];
		expect(told.out).toMatch(/^What more money buys\n\nIn short\n/);
		expect(drawn.out.slice(drawn.out.indexOf("In short"))).toBe(told.out.slice(told.out.indexOf("In short")));
	});

	test("tells other programs the same as JSON", () => {
		const json = JSON.parse(run(...showpiece, "--json").out);
		expect(json).toMatchObject({ schema: "boardwalk/price-line@1", currency: "EUR" });
		expect(json.line.length).toBeGreaterThan(1);
		const told = flat(run(...showpiece).out);
		for (const { lines } of json.words) expect(told).toContain(lines[0]);
	});

	test("writes a file in the form of its ending, and no other", () => {
		const to = (name: string) => ["--to", path(name)];
		const { out, err } = run(...showpiece, ...to("line.json"));
		expect([out, err]).toEqual(["", `Written: ${path("line.json")}\n`]);
		expect(JSON.parse(readFileSync(path("line.json"), "utf8")).schema).toBe("boardwalk/price-line@1");
		expect(refusal(...showpiece, ...to("line.svg"))).toMatchObject({ code: 64 });
	});

	test("needs answers", () => {
		expect(refusal()).toMatchObject({ code: 64, message: expect.stringContaining("--answers FILE") });
	});
});
