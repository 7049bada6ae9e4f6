import { expect, test } from "vitest";
import { wishes as criterion } from "../../src/criteria/wishes.ts";
import { wishes } from "../../src/questions/features/wishes.ts";
import { smallWishes } from "../../src/questions/small-wishes.ts";
import { buildFacts, type GivenBuild } from "../rules/rule-subject.ts";

const each: readonly [string, GivenBuild][] = [
	["wireless", { wishes: { "features/wireless": "must" } }],
	["an optical cable for sound", { soundUses: ["optical"] }],
	["sockets for five speakers", { soundUses: ["surround"] }],
	["a light board", { colourTaste: "light" }],
	["error-correcting memory", { wishes: { "features/error-correction": "would-like" } }],
	["raising the processor's clock one day", { clockPlan: "maybe" }],
];

test.each(each)("%s is a small wish, and the only one", (words, given) => {
	expect(smallWishes(buildFacts(given))).toEqual([words]);
	expect(wishes.applies(buildFacts(given))).toBe(true);
	expect(wishes.shows?.(buildFacts(given))).toBe(`What you wished: ${words}.`);
	// The criterion counts it, and nothing else: of a board whose page is silent all stays open.
	const wishFacts = Object.fromEntries(
		Object.entries(given.wishes ?? {}).map(([id, strength]) => [`wish.${id}`, strength]),
	);
	expect(criterion.measure({ ...given, ...wishFacts })).toMatchObject({ low: 0, high: 1 });
});

test("what nobody wished, or does not mind, is none", () => {
	for (const given of [
		{},
		{ colourTaste: "plain", clockPlan: "done-before", soundUses: ["speakers"] },
		{ wishes: { "features/wireless": "dont-mind" } },
		// A network has its place among the connections, a must that takes boards out in its rule.
		{ routerGbps: 2.5 },
		{ wishes: { "features/error-correction": "must" } },
	] as const satisfies readonly GivenBuild[]) {
		expect(smallWishes(buildFacts(given))).toEqual([]);
		expect(wishes.applies(buildFacts(given))).toBe(false);
		expect(criterion.measure({ ...given })).toBeNull();
	}
});
