import { existsSync, renameSync } from "node:fs";
import { reasonOf } from "./read-text.ts";
import { UnwritableFile } from "./write-file.ts";

/**
 * Renames a damaged file, so that it is kept and does not stand in the way.
 *
 * @returns where it now lies
 * @throws UnwritableFile where it cannot be renamed
 */
export function setAside(file: string): string {
	const aside = asideName(file);
	try {
		renameSync(file, aside);
		return aside;
	} catch (error) {
		throw new UnwritableFile(file, reasonOf(error));
	}
}

function asideName(file: string): string {
	for (let number = 1; ; number++) {
		const aside = `${file}.damaged${number > 1 ? `-${number}` : ""}`;
		if (!existsSync(aside)) return aside;
	}
}
