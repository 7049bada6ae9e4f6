import { describe, expect, test } from "vitest";
import { checkParts } from "../../src/parts/check-parts.ts";
import { factsOf } from "../../src/parts/fact-list.ts";

const file = (lists: object) => ({ schema: "boardwalk/parts@1", ...lists });
const board = (id: string, facts: object = {}) => ({ id, name: `Board ${id}`, ...facts });

test("a sound file comes back", () => {
	const sound = file({
		note: "Typed from pages.",
		boards: [
			board("a", {
				memory: { type: "DDR5" },
				price: { minor: 18_900, currency: "EUR" },
				evidence: {
					"memory.type": { standing: "stated", quote: "DDR5", date: "2026-11-24" },
					memory: { standing: "assumed" },
				},
			}),
		],
	});
	expect(checkParts(sound)).toEqual({ value: sound, faults: [] });
	expect(checkParts(file({}))).toEqual({ value: file({}), faults: [] });
});

describe("ids", () => {
	test("used twice in one kind: the later is told, with where the first is", () => {
		expect(checkParts(file({ boards: [board("a"), board("b"), board("a"), board("a")] })).faults).toEqual([
			{ path: "boards[2].id", expected: 'an id of its own; boards[0] has "a" already' },
			{ path: "boards[3].id", expected: 'an id of its own; boards[0] has "a" already' },
		]);
	});

	test("used twice beside other faults: all are told at once", () => {
		const { faults } = checkParts(file({ boards: [board("a"), board("a"), board("b", { checkedOn: "soon" }), 7, 7] }));
		expect(faults.map(({ path }) => path)).toEqual(["boards[2].checkedOn", "boards[3]", "boards[4]", "boards[1].id"]);
	});

	test("one id for two kinds is no fault", () => {
		expect(checkParts(file({ boards: [board("a")], processors: [board("a")] })).faults).toEqual([]);
	});

	test.each(["", "A", "my board", "-a", "é", "a".repeat(81)])("%j is none", (id) => {
		expect(checkParts(file({ boards: [board(id)] })).faults.map(({ path }) => path)).toEqual(["boards[0].id"]);
	});

	test.each(["a", "0", "my-board_1.2", "a".repeat(80)])("%j is one", (id) => {
		expect(checkParts(file({ boards: [board(id)] })).faults).toEqual([]);
	});
});

describe("evidence", () => {
	test.each(["memory.typ", "rearUsb[0].gbps", "", "constructor", "type"])("for no fact: %j", (path) => {
		expect(
			checkParts(file({ boards: [board("z"), board("a", { evidence: { [path || " "]: { standing: "stated" } } })] }))
				.faults,
		).toEqual([expect.objectContaining({ path: expect.stringMatching(/^boards\[1\]\.evidence/) })]);
	});

	test("tells the facts there are", () => {
		const { faults } = checkParts(
			file({ cases: [{ id: "a", name: "A", evidence: { boardForm: { standing: "stated" } } }] }),
		);
		expect(faults).toEqual([
			{
				path: "cases[0].evidence.boardForm",
				expected: "the path of a fact, such as memory.type",
				unknownKey: "boardForm",
				knownKeys: factsOf("case").map(({ path }) => path),
			},
		]);
	});

	test.each([
		[{ standing: "guessed" }, "standing"],
		[{ standing: "stated", date: "yesterday" }, "date"],
		[{ quote: "DDR5" }, "standing"],
	])("of a wrong kind: %o", (evidence, key) => {
		const { faults } = checkParts(file({ boards: [board("a", { evidence: { socket: evidence } })] }));
		expect(faults.map(({ path }) => path)).toEqual([`boards[0].evidence.socket.${key}`]);
	});
});

test.each([
	["no file at all", null, [""]],
	["a list", [], [""]],
	["no schema", {}, ["schema"]],
	["a newer schema", { schema: "boardwalk/parts@2" }, ["schema"]],
	["a list of another name", file({ board: [] }), ["board"]],
	["facts of another kind", file({ processors: [board("a", { form: "ATX" })] }), ["processors[0].form"]],
	["a board that is a text", file({ boards: ["a"] }), ["boards[0]"]],
	[
		"evil keys",
		JSON.parse('{"schema":"boardwalk/parts@1","boards":[{"id":"a","name":"A","toString":1}]}'),
		["boards[0].toString"],
	],
])("%s", (_, json, paths) => {
	expect(checkParts(json).faults.map(({ path }) => path)).toEqual(paths);
	expect(checkParts(json).value).toBeNull();
});
