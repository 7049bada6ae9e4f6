import { describe, expect, test } from "vitest";
import { faultLine, faultsMessage } from "../../src/cli/fault-words.ts";
import { checkParts } from "../../src/parts/check-parts.ts";

const parts = (board: object) => ({ schema: "boardwalk/parts@1", boards: [board] });
const lineFor = (json: unknown) => {
	const [fault] = checkParts(json).faults;
	if (!fault) throw new Error("no fault in it");
	return faultLine("a.json", fault);
};

describe("a fault as a line", () => {
	test.each<[string, object, string]>([
		["a wrong type", parts({ id: "a", name: "A", depthMm: "244" }), "a.json: boards[0].depthMm: expected a number."],
		[
			"a missing fact that must be there",
			parts({ id: "a" }),
			"a.json: boards[0].name: expected a text in quotes, but nothing stands there.",
		],
		[
			"a slip in a key",
			parts({ id: "a", name: "A", sokcet: "X" }),
			'a.json: boards[0].sokcet: there is no such key here. Did you mean "socket"?',
		],
		[
			"a slip in a list's name",
			{ schema: "boardwalk/parts@1", bords: [] },
			'a.json: bords: there is no such key here. Did you mean "boards"?',
		],
		[
			"a value that is none of a choice",
			parts({ id: "a", name: "A", form: "Large" }),
			"a.json: boards[0].form: expected one of ",
		],
		["no parts file at all", [], "a.json: expected a group in { }."],
		["another schema", { schema: "boardwalk/parts@9" }, 'a.json: schema: expected "boardwalk/parts@1".'],
	])("%s", (_, json, line) => {
		expect(lineFor(json)).toMatch(new RegExp(`^${line.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}`));
	});

	test("lists what is known, in part, where nothing is near", () => {
		const line = lineFor(parts({ id: "a", name: "A", zzzzzzzzzz: 1 }));
		expect(line).toMatch(/there is no such key here\. Known here: id, name, maker, .*\w, \.\.\.$/);
		expect(line.split(",").length).toBeLessThanOrEqual(14);
	});

	test("says what a key of a fixed kind should be, and what was perhaps meant", () => {
		const evidence = { "memory.tpye": { standing: "stated" } };
		const line = lineFor(parts({ id: "a", name: "A", evidence }));
		expect(line).toMatch(/evidence\.memory\.tpye: expected the path of a fact.* Did you mean "memory\.type"\?$/);
	});
});

describe("the message for a file", () => {
	const fault = { path: "boards[0].name", expected: "a text in quotes" };

	test("is the first fault in full, how many more, where to see them, and that nothing was changed", () => {
		expect(faultsMessage("a.json", [fault])).toBe(
			"a.json: boards[0].name: expected a text in quotes. Nothing was changed.",
		);
		expect(faultsMessage("a.json", [fault, fault, fault])).toBe(
			"a.json: boards[0].name: expected a text in quotes. (and 2 more: boardwalk check a.json) Nothing was changed.",
		);
	});

	test("is one line", () => {
		expect(faultsMessage("a.json", [fault, fault])).not.toContain("\n");
		expect(faultsMessage("a.json", [])).not.toContain("\n");
	});
});
