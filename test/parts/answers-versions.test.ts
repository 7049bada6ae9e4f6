import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { answersFile, answersFileSchemaName } from "../../src/parts/answers-file.ts";
import { answersOfToday, newestAnswersVersion } from "../../src/parts/answers-versions.ts";
import { checkJson } from "../../src/parts/check-json.ts";
import { schemaVersion } from "../../src/parts/schema-version.ts";
import { deepFreeze } from "../walk/walk-in-demo.ts";

const folder = fileURLToPath(new URL("../saved", import.meta.url));
/** Walks of invented people as older programs wrote them. They are kept for ever and never changed. */
const older = readdirSync(folder)
	.filter((form) => form.startsWith("answers-"))
	.flatMap((version) =>
		readdirSync(`${folder}/${version}`).map((name) => ({
			name: `${version}/${name}`,
			json: JSON.parse(readFileSync(`${folder}/${version}/${name}`, "utf8")),
		})),
	);

describe("a walk that an older program wrote", () => {
	test("there is one of every version before today's", () => {
		const versions = new Set(older.map(({ json }) => schemaVersion(json)?.version));
		for (let version = 1; version < newestAnswersVersion; version++) expect(versions).toContain(version);
	});

	test.each(older)("$name opens with every answer, note and part in it", ({ json }) => {
		const { value, faults } = checkJson(answersFile, answersOfToday(deepFreeze(json)));
		expect(faults).toEqual([]);
		expect(value).toEqual({ ...json, schema: answersFileSchemaName });
	});
});

describe("a version", () => {
	test.each([
		["boardwalk/answers@1", { form: "answers", version: 1 }],
		["boardwalk/price-line@12", { form: "price-line", version: 12 }],
		["boardwalk/answers@0", null],
		["boardwalk/answers@01", null],
		["boardwalk/answers@1e3", null],
		["boardwalk/answers@9999999", null],
		["boardwalk/answers", null],
		["other/answers@1", null],
		["boardwalk/__proto__@1", null],
		[7, null],
	])("of schema %j is %j", (schema, expected) => {
		expect(schemaVersion({ schema })).toEqual(expected);
	});

	test("is told of nothing that is no object", () => {
		for (const json of [null, [], "boardwalk/answers@1", 1]) expect(schemaVersion(json)).toBeNull();
	});

	test("of today, or a newer one, or of something else, is left as it is", () => {
		for (const json of [
			{ schema: answersFileSchemaName },
			{ schema: `boardwalk/answers@${newestAnswersVersion + 1}` },
			{ schema: "boardwalk/parts@1" },
			null,
		])
			expect(answersOfToday(json)).toBe(json);
	});
});
