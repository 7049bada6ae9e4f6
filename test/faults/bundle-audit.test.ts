import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Metafile } from "esbuild";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { bundle } from "../../bin/dev/bundle.mjs";
import { auditOf } from "../../bin/dev/bundle-audit.mjs";
import allowed from "../../bin/dev/bundle-reasons.json" with { type: "json" };

const root = fileURLToPath(new URL("../..", import.meta.url));
let metafile: Metafile;
let outdir = "";
beforeAll(async () => {
	outdir = mkdtempSync(join(tmpdir(), "audit-"));
	({ metafile } = await bundle({ outdir, keepStaleMs: 0 }));
});
afterAll(() => rmSync(outdir, { recursive: true, force: true }));

describe("what is in the bundle", () => {
	test("has its reason, its licence and its bringer, each package; and no reason is left over", () => {
		const { packages, faults } = auditOf(metafile, root, allowed);
		expect(faults).toEqual([]);
		for (const { broughtBy } of packages) expect(broughtBy[0]).toMatch(/^src\//);
	});

	test("is told where nobody gave a reason, and where a reason is for nothing", () => {
		const { zod: _reason, ...others } = allowed.reasons;
		const { faults } = auditOf(metafile, root, { ...allowed, reasons: { ...others, "no-such-package": "none" } });
		expect(faults).toEqual([
			expect.stringMatching(/^zod \(brought by src\/\w+\) has no reason/),
			"no-such-package has a reason in bundle-reasons.json and is not in the bundle.",
		]);
	});

	test("stands in the table of DEVELOPERS.md, as far as our source imports it", () => {
		const table = /\| in the bundle \| why \|\n([\s\S]*?)\n\n/.exec(
			readFileSync(join(root, "DEVELOPERS.md"), "utf8"),
		)?.[1];
		const named = [...(table ?? "").matchAll(/^\| ([^|]+) \|/gm)].flatMap(([, cell = ""]) => cell.split(", "));
		const names = named.map((name) => name.replace(/ \d+$/, "")).filter((name) => !name.startsWith("---"));
		expect(names.sort()).toEqual(Object.keys(allowed.reasons).sort());
		const direct = auditOf(metafile, root, allowed).packages.filter(({ broughtBy }) => broughtBy.length === 1);
		expect(direct.map(({ name }) => name).filter((name) => !names.includes(name))).toEqual([]);
	});
});
