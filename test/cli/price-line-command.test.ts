import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { readArguments } from "../../src/cli/arguments.ts";
import { CommandError } from "../../src/cli/exit-codes.ts";
import { priceLineOfWalk } from "../../src/cli/price-line-command.ts";
import { scenarioFile } from "../e2e/program.ts";

let desk = "";
beforeEach(() => {
	desk = mkdtempSync(join(tmpdir(), "price-line-"));
	// Whoever runs the tests may have parts of their own.
	for (const name of ["XDG_DATA_HOME", "LOCALAPPDATA"]) vi.stubEnv(name, join(desk, "data"));
	vi.stubEnv("LC_ALL", "C.UTF-8");
});
afterEach(() => {
	vi.unstubAllEnvs();
	rmSync(desk, { recursive: true, force: true });
});

const showpiece = ["--answers", scenarioFile("showpiece")];

/** What the command prints for these words behind its name. */
function run(...argv: readonly string[]): { readonly out: string; readonly err: string } {
	let [out, err] = ["", ""];
	priceLineOfWalk(readArguments(["price-line", ...argv]), {
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
		const told = run(...showpiece).out.replace(/\s+/g, " ");
		for (const { lines } of json.words) expect(told).toContain(lines[0]);
	});

	test("writes a file in the form of its ending, and no other", () => {
		const to = (name: string) => ["--to", join(desk, name)];
		const { out, err } = run(...showpiece, ...to("line.json"));
		expect([out, err]).toEqual(["", `Written: ${join(desk, "line.json")}\n`]);
		expect(JSON.parse(readFileSync(join(desk, "line.json"), "utf8")).schema).toBe("boardwalk/price-line@1");
		expect(refusal(...showpiece, ...to("line.svg"))).toMatchObject({ code: 64 });
	});

	test("needs answers", () => {
		expect(refusal()).toMatchObject({ code: 64, message: expect.stringContaining("--answers FILE") });
	});
});
