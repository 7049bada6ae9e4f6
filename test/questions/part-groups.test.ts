import { expect, test } from "vitest";
import type { AnyPart } from "../../src/parts/part-kinds.ts";
import { boardForms } from "../../src/parts/vocabulary.ts";
import type { Option } from "../../src/questions/define-question.ts";
import { byGroup, partGroup } from "../../src/questions/part-groups.ts";
import type { PickedKind } from "../../src/questions/part-summary.ts";

const named = (facts: object) => ({ id: "a-part", name: "A part", ...facts }) as AnyPart;

test.each<[PickedKind, object, string | undefined]>([
	["processor", { socket: "Kettle 7" }, "Socket Kettle 7"],
	["processor", {}, "Socket not known"],
	["case", { boardForms: ["ATX", "microATX", "Mini-ITX"] }, "Takes boards up to ATX"],
	["case", { boardForms: ["Mini-ITX"] }, "Takes boards up to Mini-ITX"],
	["case", { boardForms: ["E-ATX", "Mini-ITX"] }, "Takes boards up to E-ATX"],
	["case", {}, "Board sizes not known"],
	["memory", { type: "DDR5" }, "DDR5"],
	["memory", {}, "Type not known"],
	["cooler", { kind: "air" }, "Air: metal and a fan"],
	["cooler", { kind: "liquid" }, "Liquid: a pump and hoses"],
	["cooler", {}, "Kind not known"],
	["drive", { shape: "M.2" }, "Sticks (M.2)"],
	["drive", { shape: "3.5 inch" }, "Drives of 3.5 inch"],
	["drive", {}, "Shape not known"],
	["graphicsCard", { lengthMm: 300 }, undefined],
	["supply", { watts: 500 }, undefined],
	["addInCard", { use: "sound" }, undefined],
])("a %s with %o stands under %j", (kind, facts, heading) => {
	expect(partGroup(kind, named(facts))).toBe(heading);
});

test.each(boardForms)(
	"a case for %s and smaller boards stands under that size, in whatever order it lists them",
	(form) => {
		const upTo = boardForms.slice(0, boardForms.indexOf(form) + 1);
		for (const forms of [upTo, [...upTo].reverse()])
			expect(partGroup("case", named({ boardForms: forms }))).toBe(`Takes boards up to ${form}`);
	},
);

const line = (label: string, group?: string): Option => ({
	...{ value: label, label, explanation: "" },
	...(group ? { group } : {}),
});
test("lines of one heading come together, and neither headings nor lines change their order otherwise", () => {
	const lines = [line("a", "red"), line("b", "blue"), line("c", "red"), line("d"), line("e", "blue"), line("f")];
	expect(byGroup(lines).map(({ label }) => label)).toEqual(["a", "c", "b", "e", "d", "f"]);
	expect(byGroup([])).toEqual([]);
});
