import { describe, expect, test } from "vitest";
import { channelsOf, perChannelOf, tableOf } from "../../src/rules/memory-tables.ts";

const by = "the board";

describe("channels", () => {
	test("of board and processor the fewer count", () => {
		expect(channelsOf({ "board.memory.channels": 4, "processor.memory.channels": 2 })).toBe(2);
		expect(channelsOf({ "board.memory.channels": 1, "processor.memory.channels": 2 })).toBe(1);
	});

	test("one of them is enough, and without both nobody can tell", () => {
		expect(channelsOf({ "processor.memory.channels": 2 })).toBe(2);
		expect(channelsOf({})).toBeUndefined();
	});
});

describe("modules a channel", () => {
	test.each([
		[1, 1],
		[2, 1],
		[3, 2],
		[4, 2],
		[5, 3],
	])("%i modules on two channels are %i", (modules, perChannel) => {
		expect(perChannelOf({ "memory.modules": modules, "board.memory.channels": 2 })).toBe(perChannel);
	});

	test("one module is alone, whatever the channels; of two nobody can tell", () => {
		expect(perChannelOf({ "memory.modules": 1 })).toBe(1);
		expect(perChannelOf({ "memory.modules": 2 })).toBeUndefined();
		expect(perChannelOf({ "board.memory.channels": 2 })).toBeUndefined();
	});
});

describe("rows of a table", () => {
	const rows = [
		{ type: "DDR5", modulesPerChannel: 1, mtPerS: 5600 },
		{ type: "DDR5", modulesPerChannel: 2, ranks: 1, mtPerS: 4400 },
		{ type: "DDR5", modulesPerChannel: 2, ranks: 2, mtPerS: 3600 },
	] as const;
	const four = { "memory.type": "DDR5", "memory.modules": 4, "board.memory.channels": 2 } as const;

	test("the one for these modules holds", () => {
		expect(tableOf([...rows], { ...four, "memory.ranks": 2 }, by)).toEqual({
			by,
			least: 3600,
			most: 3600,
			missing: [],
		});
	});

	test("with a fact missing it is a range, and the fact is named", () => {
		expect(tableOf([...rows], four, by)).toEqual({ by, least: 3600, most: 4400, missing: ["memory.ranks"] });
		const { "memory.modules": _, ...uncounted } = four;
		expect(tableOf([...rows], { ...uncounted, "memory.ranks": 1 }, by)).toEqual({
			by,
			least: 4400,
			most: 5600,
			missing: ["memory.modules"],
		});
	});

	test("no row, no answer", () => {
		expect(tableOf([...rows], { ...four, "memory.type": "DDR4" }, by)).toBeNull();
		expect(tableOf([], four, by)).toBeNull();
		expect(tableOf(undefined, four, by)).toBeNull();
	});
});
