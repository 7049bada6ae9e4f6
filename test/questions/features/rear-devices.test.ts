import { expect, test } from "vitest";
import { emptyBuildFacts } from "../../../src/parts/build.ts";
import { rearDevices } from "../../../src/questions/features/rear-devices.ts";
import { demoContext } from "../../choose/demo.ts";

test.each([
	["0", 0],
	["5", 5],
	[" 30 ", 30],
	["007", 7],
])("%j is read as %i", (text, value) => {
	expect(rearDevices.read?.(text, demoContext)).toEqual({ value });
	expect(rearDevices.expected(value, demoContext)).toBeNull();
	expect(rearDevices.sets(emptyBuildFacts, value, demoContext).rearDevices).toBe(value);
	expect(rearDevices.says(value, demoContext)).toBe(String(value));
});

test.each(["", "31", "-1", "2.5", "five", "5 things", "1e1"])("%j is not", (text) => {
	expect(rearDevices.read?.(text, demoContext)).toEqual({ problem: "Type how many, as a whole number from 0 to 30." });
});

test.each([31, -1, 2.5, Number.NaN, "5", ["5"]])("a file may not say %o", (value) => {
	expect(rearDevices.expected(value, demoContext)).toBe("a whole number from 0 to 30");
});
