import type { SchemaVersion } from "../parts/schema-version.ts";
import { BrokenJson } from "./read-json.ts";

/**
 * A file of a version that only a newer program knows. Who cannot use broken files cannot use it either; but it is sound,
 * and must be left as it is.
 */
export class NewerFile extends BrokenJson {
	constructor(path: string, { form, version }: SchemaVersion, known: number) {
		super(
			path,
			`it was written by a newer boardwalk (boardwalk/${form}@${version}, and this one knows ${form} up to @${known})`,
		);
	}
}
