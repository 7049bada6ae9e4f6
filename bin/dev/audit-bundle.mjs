// Tells what is in the bundle: each package with its version, licence, size and who brings it. Ends with 1 where a
// package is in it that nobody gave a reason for, or that has no licence we may pass on.
// Usage: node bin/dev/audit-bundle.mjs [--json]

import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { bundle } from "./bundle.mjs";
import { auditOf } from "./bundle-audit.mjs";

const root = fileURLToPath(new URL("../../", import.meta.url));
const outdir = mkdtempSync(join(tmpdir(), "audit-"));
try {
	const { metafile } = await bundle({ outdir, keepStaleMs: 0 });
	const reasons = JSON.parse(readFileSync(new URL("bundle-reasons.json", import.meta.url), "utf8"));
	const { packages, ownBytes, faults } = auditOf(metafile, root, reasons);
	if (process.argv.includes("--json")) console.log(JSON.stringify({ ownBytes, packages, faults }));
	else {
		for (const { name, version, licence, bytes, broughtBy, reason } of packages)
			console.log(
				`${name} ${version}, ${licence}, ${bytes} bytes, brought by ${broughtBy.join(" > ")}: ${reason ?? "no reason"}`,
			);
		console.log(`our own source and data: ${ownBytes} bytes`);
		for (const words of faults) console.error(words);
	}
	process.exitCode = faults.length > 0 ? 1 : 0;
} finally {
	rmSync(outdir, { recursive: true, force: true });
}
