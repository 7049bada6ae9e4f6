import { describe, expect, test } from "vitest";
import type { AnswerValue } from "../../../src/parts/answers-file.ts";
import { emptyBuildFacts } from "../../../src/parts/build.ts";
import { rearDevices } from "../../../src/questions/features/rear-devices.ts";
import { contextOf } from "../made-up-question.ts";

const context = contextOf();
const counted = (value: AnswerValue) => rearDevices.sets(emptyBuildFacts, value, context).rearDevices;

describe("things marked", () => {
	test.each<[readonly string[], number]>([
		[[], 0],
		[["keyboard"], 1],
		[["keyboard", "mouse", "hub"], 3],
		[["drive", "drive", "drive", "drive", "tablet", "tablet"], 6],
	])("%j are counted: %i", (value, count) => {
		expect(rearDevices.expected([...value], context)).toBeNull();
		expect(counted([...value])).toBe(count);
	});

	test("none is none, and not unknown", () => {
		expect(counted([])).toBe(0);
		expect(rearDevices.says([], context)).toBe("Nothing at all");
	});

	test.each<[string, AnswerValue]>([
		["a thing it has not", ["fridge"]],
		["more of one than a line can be", ["keyboard", "keyboard", "keyboard"]],
		["a word", "keyboard"],
		["a part", { part: "keyboard" }],
	])("a file may not hold %s", (_, value) => {
		expect(rearDevices.expected(value, context)).toMatch(/^a list of "keyboard", "mouse".*\[\] for none$/);
	});

	test("each line counts one, and as many as it can be marked", () => {
		for (const { value, most = 1 } of rearDevices.options(context, emptyBuildFacts)) {
			const all = Array<string>(most).fill((value as string[])[0] ?? "");
			expect(counted(value)).toBe(1);
			expect(counted(all)).toBe(most);
			expect(rearDevices.expected(all, context)).toBeNull();
			expect(rearDevices.expected([...all, ...(value as string[])], context)).not.toBeNull();
		}
	});
});

describe("a plain number, as older files hold it", () => {
	test.each([0, 5, 30])("%i", (value) => {
		expect(rearDevices.expected(value, context)).toBeNull();
		expect(counted(value)).toBe(value);
		expect(rearDevices.says(value, context)).toBe(String(value));
	});

	test.each([31, -1, 2.5, Number.NaN])("not %d", (value) => {
		expect(rearDevices.expected(value, context)).toBe("a whole number from 0 to 30");
	});
});
