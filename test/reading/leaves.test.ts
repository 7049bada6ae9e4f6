import { describe, expect, test } from "vitest";
import { readBoard } from "../../src/reading/read-board.ts";
import { flatFacts } from "../measure/flat-facts.ts";
import { held } from "../measure/leaves.ts";

const figures = (read: object, expected: object) => {
	const { right, read: told, expected: asked } = held(read as never, expected as never);
	return [right, told, asked];
};

describe("single facts", () => {
	test.each([
		["right", { socket: "KT7" }, { socket: "KT7" }, [1, 1, 1]],
		["wrong", { socket: "KT7" }, { socket: "KT9" }, [0, 1, 1]],
		["missing", {}, { socket: "KT9" }, [0, 0, 1]],
		["more than asked counts as wrong", { socket: "KT7", chipset: "K1" }, { socket: "KT7" }, [1, 2, 1]],
		["letters' case", { socket: "kt7" }, { socket: "KT7" }, [1, 1, 1]],
		["a figure is no word", { cores: 8 }, { cores: "8" }, [0, 1, 1]],
		["thin", { formFactor: "Mini-ITX" }, { formFactor: "Thin Mini-ITX" }, [1, 1, 1]],
		["kind and notes", { kind: "board" }, { kind: "case", _notes: ["a"] }, [0, 0, 0]],
	])("%s", (_, read, expected, result) => {
		expect(figures(read, expected)).toEqual(result);
	});
});

describe("lists", () => {
	test.each([
		["in another order", [1, 2], [2, 1], [2, 2, 2]],
		["one too many", [1, 1, 2], [1, 2], [2, 3, 2]],
		["one too few", [1], [1, 1], [1, 1, 2]],
		["both empty", [], [], [1, 1, 1]],
		["read as none", [], [1], [0, 1, 1]],
		["none not found", undefined, [], [0, 0, 1]],
		["one value for a list of one", 2.5, [2.5], [1, 1, 1]],
	])("%s", (_, read, expected, result) => {
		expect(figures({ list: read }, { list: expected })).toEqual(result);
	});

	test("entries are paired by best match, leaf by leaf", () => {
		const read = [
			{ gen: 4, lanes: 4 },
			{ gen: 5, lanes: 4, sata: true },
		];
		const expected = [
			{ gen: 5, lanes: 4 },
			{ gen: 4, lanes: 2 },
		];
		const result = held({ m2Slots: read }, { m2Slots: expected });
		expect([result.right, result.read, result.expected]).toEqual([3, 5, 4]);
		expect(result.misses.map(({ told, expected: its }) => [told, its])).toEqual([
			[true, undefined],
			[4, 2],
		]);
	});

	test("an entry that nothing matches counts with every leaf", () => {
		expect(figures({ m2Slots: [{ gen: 3, lanes: 2 }] }, { m2Slots: [{ gen: 4, lanes: 4 }] })).toEqual([0, 2, 2]);
	});
});

describe("sides", () => {
	test.each([
		["swapped", { widthMm: 244, depthMm: 305 }, { widthMm: 305, depthMm: 244 }, [2, 2, 2]],
		["one wrong", { widthMm: 244, depthMm: 300 }, { widthMm: 305, depthMm: 244 }, [1, 2, 2]],
		["one twice", { widthMm: 244, depthMm: 244 }, { widthMm: 305, depthMm: 244 }, [1, 2, 2]],
		["one missing", { widthMm: 305 }, { widthMm: 305, depthMm: 244 }, [1, 1, 2]],
	])("%s", (_, read, expected, result) => {
		expect(figures(read, expected)).toEqual(result);
	});
});

test("a sentence about sharing is found by the connectors it names", () => {
	const one = (read: string, expected: string) => figures({ laneSharing: [read] }, { laneSharing: [expected] });
	expect(one("M2_2 and SATA_5 share", "SATA_5 is off when M2_2 is used")).toEqual([1, 1, 1]);
	expect(one("M2_1 and SATA_6 share", "SATA_5 is off when M2_2 is used")).toEqual([0, 1, 1]);
	expect(one("they share", "they share")).toEqual([0, 1, 1]);
});

describe("flat facts of a board", () => {
	test("what is assumed is only there where asked for", () => {
		const reading = readBoard("4 x USB 3.2 Gen 1 (2 rear, 2 front)");
		expect(flatFacts(reading, { assumed: false })).toEqual({
			usbRear: [{ gbps: 5, count: 2 }],
		});
		expect(flatFacts(reading, { assumed: true })).toEqual({
			usbRear: [{ gbps: 5, connector: "A", count: 2 }],
			usbHeaders: [{ gbps: 5, ports: 2 }],
		});
	});
	test("a list that the text gives as empty is told apart from one it does not give", () => {
		expect(flatFacts(readBoard("Graphics outputs: none"), { assumed: false })).toEqual({ videoOutputs: [] });
		expect(flatFacts(readBoard("Socket: KT7"), { assumed: false })).toEqual({ socket: "KT7" });
	});
});
