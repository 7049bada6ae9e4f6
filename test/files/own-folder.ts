import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach } from "vitest";

/** A folder for each test of the file that calls this, made before it and removed after. */
export function ownFolder(): {
	readonly path: (...names: string[]) => string;
	/** Writes a file, and the folders above it. */
	readonly write: (name: string, content: string | Uint8Array) => string;
} {
	let folder = "";
	beforeEach(() => {
		folder = mkdtempSync(join(tmpdir(), "files-"));
	});
	afterEach(() => rmSync(folder, { recursive: true, force: true }));
	const path = (...names: string[]) => join(folder, ...names);
	return {
		path,
		write: (name, content) => {
			const file = path(name);
			mkdirSync(dirname(file), { recursive: true });
			writeFileSync(file, content);
			return file;
		},
	};
}
