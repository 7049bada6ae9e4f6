import { describe, expect, test } from "vitest";
import { emptyBuildFacts } from "../../../src/parts/build.ts";
import { pcCase } from "../../../src/parts/case.ts";
import { frontPlugs } from "../../../src/questions/fit/front-plugs.ts";
import { buildFacts } from "../../rules/rule-subject.ts";
import { contextOf } from "../made-up-question.ts";

const context = contextOf();
const facts = buildFacts({ case: { boardForms: ["ATX"] } });
const plugsOf = (values: readonly string[]) => {
	const after = frontPlugs.sets(facts, [...values], context);
	return after.case.state === "have" ? after.case.part.frontPlugs : undefined;
};

test("is asked of a case whose plugs are not known, and of no other", () => {
	expect(frontPlugs.applies(facts)).toBe(true);
	expect(frontPlugs.applies(buildFacts({ case: { frontPlugs: [] } }))).toBe(false);
	for (const state of ["open", "unknown"] as const) expect(frontPlugs.applies(buildFacts({ case: state }))).toBe(false);
});

describe("what is marked becomes a fact of the case", () => {
	test.each<[string, readonly string[], object]>([
		["none: the case has no sockets", [], []],
		["one", ["sound"], [{ plug: "sound", count: 1 }]],
		[
			"two of a kind are counted",
			["USB 9-pin", "USB 9-pin", "USB-C 20-pin"],
			[
				{ plug: "USB 9-pin", count: 2 },
				{ plug: "USB-C 20-pin", count: 1 },
			],
		],
	])("%s", (_, values, plugs) => {
		expect(plugsOf(values)).toEqual(plugs);
		expect(pcCase.shape.frontPlugs.safeParse(plugsOf(values)).success).toBe(true);
	});

	test("and all else of it and of the build stays", () => {
		const after = frontPlugs.sets(facts, ["sound"], context);
		const part = facts.case.state === "have" ? facts.case.part : null;
		expect(after).toEqual({
			...facts,
			case: { ...facts.case, part: { ...part, frontPlugs: [{ plug: "sound", count: 1 }] } },
		});
		expect(part).not.toHaveProperty("frontPlugs");
	});

	test("nothing where there is no case", () => {
		expect(frontPlugs.sets(emptyBuildFacts, ["sound"], context)).toEqual(emptyBuildFacts);
	});
});

test("each line is a plug that a case can have, told in the recipe and in words", () => {
	const options = frontPlugs.options(context, facts);
	expect(options).toHaveLength(4);
	for (const { value, label } of options) {
		expect(plugsOf(value as string[])).toEqual([{ plug: (value as string[])[0], count: 1 }]);
		expect(frontPlugs.says(value, context)).toBe(label);
		expect(frontPlugs.recipe?.some((step) => step.startsWith(label.split(" plug")[0] ?? ""))).toBe(true);
	}
	expect(frontPlugs.says(["USB 19-pin", "USB 19-pin"], context)).toBe("2 x USB 19-pin");
	expect(frontPlugs.says([], context)).toBe("No such plugs");
});

test("a plug is marked twice at most, sound once", () => {
	expect(frontPlugs.expected(["USB 9-pin", "USB 9-pin"], context)).toBeNull();
	for (const value of [["USB 9-pin", "USB 9-pin", "USB 9-pin"], ["sound", "sound"], ["HDMI"]])
		expect(frontPlugs.expected(value, context)).toMatch(/^a list of /);
});
