import { answersFileSchemaName } from "./answers-file.ts";
import { schemaVersion } from "./schema-version.ts";

type Plain = Readonly<Record<string, unknown>>;

/**
 * One step a version: the first makes answers@2 of answers@1, and so on. A step is never changed once its version was
 * out; files of every version lie in test/saved.
 */
const steps: readonly ((file: Plain) => Plain)[] = [
	// @2 knows the walk's name and suggestions; a file without them says the same in both.
	(file) => ({ ...file, schema: "boardwalk/answers@2" }),
];

/** The newest version of answers that this program knows. */
export const newestAnswersVersion: number = schemaVersion({ schema: answersFileSchemaName })?.version ?? 1;

/** A file of answers of an older version as one of the newest; anything else as it is. Nothing is changed in place. */
export function answersOfToday(json: unknown): unknown {
	const found = schemaVersion(json);
	if (found?.form !== "answers" || found.version >= newestAnswersVersion) return json;
	return steps.slice(found.version - 1).reduce((file, step) => step(file), json as Plain);
}
