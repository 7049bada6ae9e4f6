import { describe, expect, test } from "vitest";
import type { BuildPartKind } from "../../src/parts/build.ts";
import { partSummary, plugsInWords } from "../../src/questions/part-summary.ts";

const part = (facts: object) => ({ id: "a", name: "A", ...facts }) as never;

test.each<[BuildPartKind, object, string]>([
	[
		"processor",
		{ socket: "Kettle 7", baseW: 65, graphics: true },
		"socket Kettle 7, 65 W on the label, makes a picture by itself",
	],
	["processor", { graphics: false }, "needs a graphics card"],
	["processor", { socket: "Kettle 7" }, "socket Kettle 7"],
	["case", { boardForms: ["ATX", "Mini-ITX"], cardMaxLengthMm: 300 }, "takes ATX, Mini-ITX, cards up to 300 mm"],
	["graphicsCard", { lengthMm: 300, watts: 200 }, "300 mm long, 200 W"],
	["memory", { type: "DDR5", modules: 2, gbPerModule: 16, mtPerS: 5600 }, "DDR5, 2 x 16 GB, 5600 MT/s"],
	["memory", { type: "DDR5", modules: 2 }, "DDR5"],
	["supply", { watts: 550, processorPlugs: ["8-pin", "8-pin"] }, "550 W, processor plugs: two 8-pin"],
	["supply", { processorPlugs: [] }, "processor plugs: none"],
])("a %s with %o", (kind, facts, summary) => {
	expect(partSummary(kind, part(facts))).toBe(summary);
});

test.each(["processor", "case", "graphicsCard", "memory", "supply"] as const)(
	"a %s of which nothing is known",
	(kind) => {
		expect(partSummary(kind, part({}))).toBe("");
	},
);

describe("plugs in words", () => {
	test.each([
		[[], "none"],
		[["4-pin"], "one 4-pin"],
		[["8-pin", "4-pin"], "one 8-pin and one 4-pin"],
		[["8-pin", "8-pin", "8-pin"], "three 8-pin"],
		[["8-pin", "8-pin", "8-pin", "8-pin"], "4 8-pin"],
	])("%o", (plugs, words) => {
		expect(plugsInWords(plugs)).toBe(words);
	});
});
