import { describe, expect, test } from "vitest";
import type { ProcessorOfLimits } from "../../src/reference/limit-holds.ts";
import { factsThatSettleLimits, withProcessorLimits } from "../../src/rules/processor-limits.ts";

const processor = (facts: Partial<ProcessorOfLimits> = {}): ProcessorOfLimits => ({
	state: "have",
	series: undefined,
	generation: undefined,
	graphics: undefined,
	...facts,
});
const sockets = [
	{ name: "M2_1", wiredLanes: 4 },
	{ name: "M2_2", wiredLanes: 4 },
];
const deadWithLumps = { when: { processorSeries: ["Lump", "Crumb"] }, connector: "M2_1", dead: true };
const fewerWithOldOnes = { when: { processorGenerations: ["Dinghy"] }, connector: "M2_2", wiredLanes: 2 };
const names = (left: readonly { name: string }[]) => left.map(({ name }) => name);

describe("connectors as they are with this processor", () => {
	test("one that is dead is gone, whatever the spelling", () => {
		expect(names(withProcessorLimits(sockets, [deadWithLumps], processor({ series: "LUMP" }), "best"))).toEqual([
			"M2_2",
		]);
	});

	test("another series changes nothing", () => {
		expect(withProcessorLimits(sockets, [deadWithLumps], processor({ series: "Loaf" }), "worst")).toEqual(sockets);
	});

	test("one with fewer lanes has fewer", () => {
		expect(withProcessorLimits(sockets, [fewerWithOldOnes], processor({ generation: "Dinghy" }), "best")).toEqual([
			{ name: "M2_1", wiredLanes: 4 },
			{ name: "M2_2", wiredLanes: 2 },
		]);
	});

	test("a processor not known is taken by the leaning", () => {
		const limits = [deadWithLumps, fewerWithOldOnes];
		expect(withProcessorLimits(sockets, limits, processor(), "best")).toEqual(sockets);
		expect(withProcessorLimits(sockets, limits, processor(), "worst")).toEqual([{ name: "M2_2", wiredLanes: 2 }]);
	});

	test("a limit that gives more lanes is the better way", () => {
		const more = { ...fewerWithOldOnes, connector: "M2_1", wiredLanes: 8 };
		expect(withProcessorLimits([{ name: "M2_1", wiredLanes: 4 }], [more], processor(), "best")).toEqual([
			{ name: "M2_1", wiredLanes: 8 },
		]);
		expect(withProcessorLimits([{ name: "M2_1", wiredLanes: 4 }], [more], processor(), "worst")).toEqual([
			{ name: "M2_1", wiredLanes: 4 },
		]);
	});

	test("one still to be bought is bought so that no limit holds", () => {
		expect(withProcessorLimits(sockets, [deadWithLumps], processor({ state: "open" }), "worst")).toEqual(sockets);
	});

	test("all that a limit names must hold", () => {
		const both = { when: { processorSeries: ["Lump"], processorGraphics: true }, connector: "M2_1", dead: true };
		const withGraphics = processor({ series: "Lump", graphics: true });
		expect(names(withProcessorLimits(sockets, [both], withGraphics, "best"))).toEqual(["M2_2"]);
		expect(withProcessorLimits(sockets, [both], { ...withGraphics, graphics: false }, "worst")).toEqual(sockets);
	});

	test("a limit that names nothing holds with every processor", () => {
		const always = { when: {}, connector: "M2_2", dead: true };
		expect(names(withProcessorLimits(sockets, [always], processor(), "best"))).toEqual(["M2_1"]);
	});
});

describe("what would settle the limits", () => {
	test.each<[string, Parameters<typeof factsThatSettleLimits>, readonly string[]]>([
		["nothing where there are none", [sockets, [], processor()], []],
		["nothing where nobody knows of any", [sockets, undefined, processor({ state: "unknown" })], []],
		[
			"the processor, where nobody has said",
			[sockets, [deadWithLumps], processor({ state: "unknown" })],
			["processor"],
		],
		[
			"each fact that is missing",
			[
				sockets,
				[deadWithLumps, fewerWithOldOnes, { when: { processorGraphics: false }, connector: "M2_2", dead: true }],
				processor(),
			],
			["processor.series", "processor.generation", "processor.graphics"],
		],
		["not a fact of another connector", [[{ name: "M2_2" }], [deadWithLumps], processor()], []],
		[
			"not a fact that can no longer matter",
			[
				sockets,
				[{ when: { processorSeries: ["Lump"], processorGraphics: true }, connector: "M2_1", dead: true }],
				processor({ series: "Loaf" }),
			],
			[],
		],
	])("%s", (_, given, expected) => {
		expect(factsThatSettleLimits(...given)).toEqual(expected);
	});
});
