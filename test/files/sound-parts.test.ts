import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseJson } from "../../src/files/read-json.ts";
import { soundParts } from "../../src/files/sound-parts.ts";
import { checkParts } from "../../src/parts/check-parts.ts";

const schema = "boardwalk/parts@1";
const board = (id: string, facts: object = {}) => ({ id, name: `Board ${id}`, ...facts });
const idsOf = (json: object) => soundParts({ schema, ...json }).file?.boards?.map(({ id }) => id);
const pathsOf = (json: object) => soundParts({ schema, ...json }).faults.map(({ path }) => path);

describe("sound parts", () => {
	test("are all of a sound file", () => {
		const json = { schema, boards: [board("a"), board("b", { widthMm: 244 })] };
		expect(soundParts(json)).toEqual({ file: json, faults: [] });
	});

	test("are those without a fault of the schema, then those without any other", () => {
		const json = {
			boards: [
				board("a", { widthMm: "wide" }),
				board("b"),
				board("c", { evidence: { nothing: { standing: "stated" } } }),
				board("b"),
				board("d", { bus: 1 }),
			],
			cases: [board("a")],
		};
		expect(idsOf(json)).toEqual(["b"]);
		expect(pathsOf(json).sort()).toEqual([
			"boards[0].widthMm",
			"boards[2].evidence.nothing",
			"boards[3].id",
			"boards[4].bus",
		]);
		expect(soundParts({ schema, ...json }).file?.cases).toHaveLength(1);
	});

	test("are there beside a list that is none, and one that nobody knows", () => {
		const json = { boards: [board("a")], cases: {}, bords: [board("b")], "odd[1]": 1 };
		expect(idsOf(json)).toEqual(["a"]);
		expect(pathsOf(json).sort()).toEqual(["bords", "cases", "odd[1]"]);
	});

	test.each([null, [], 1, "text", {}, { schema: "boardwalk/parts@2", boards: [board("a")] }, { schema: "other" }])(
		"of %j are none",
		(json) => {
			const { file, faults } = soundParts(json);
			expect(file).toBeNull();
			expect(faults.length).toBeGreaterThan(0);
		},
	);

	test("a figure beyond all figures has its path; prototype keys reach nothing and are told", () => {
		const json = parseJson(
			`{"schema":"${schema}","boards":[{"id":"a","name":"A","widthMm":1e309},{"id":"b","name":"B","__proto__":{"x":1},"constructor":2}]}`,
			"a.json",
		);
		expect(soundParts(json).faults.map(({ path, expected }) => [path, expected])).toEqual([
			["boards[0].widthMm", "a number"],
			["boards[1].__proto__ (a key that no file may have)", "no such fact"],
			["boards[1].constructor (a key that no file may have)", "no such fact"],
		]);
	});

	test("are always a sound file, whatever the JSON is", () => {
		const anything = fc.oneof(fc.jsonValue(), fc.array(fc.oneof(fc.jsonValue(), fc.constant(board("a")))));
		fc.assert(
			fc.property(fc.dictionary(fc.constantFrom("boards", "cases", "note", "x", "__proto__"), anything), (lists) => {
				const { file, faults } = soundParts({ ...lists, schema });
				if (file) expect(checkParts(file).faults).toEqual([]);
				else expect(faults.length).toBeGreaterThan(0);
			}),
		);
	});
});
