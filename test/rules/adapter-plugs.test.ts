import { expect, test } from "vitest";
import { adapterPlugs } from "../../src/rules/adapter-plugs.ts";
import { supplyGraphicsPlugs } from "../../src/rules/build/supply-graphics-plugs.ts";
import { extraPower } from "../../src/rules/fit/extra-power.ts";
import { runRule } from "../../src/rules/run-rule.ts";
import { subjectOf } from "./rule-subject.ts";

test.each([
	["no lead at all", 1, [], 300, { sockets: 1, least: 2, most: 2 }],
	["a lead of its own", 1, [600], 450, { sockets: 0, least: 0, most: 0 }],
	["a lead that the slot helps", 1, [375], 450, { sockets: 0, isTight: true, most: 0 }],
	["one watt below that", 1, [374], 450, { sockets: 1, isTight: false, least: 3, most: 3 }],
	["one lead for two sockets", 2, [600], 900, { sockets: 1, least: 3, most: 3 }],
	["watts not known, a lead that may do", 1, [450], undefined, { sockets: 1, least: 0, most: 4 }],
	["watts not known, no lead", 1, [], undefined, { sockets: 1, least: 2, most: 4 }],
])("%s", (_, wide, leadsW, cardW, expected) => {
	expect(adapterPlugs(wide, leadsW, cardW)).toMatchObject(expected);
});

// 400 W is too little for 450 W, and the slot can help one lead only: both sockets want an adapter.
test("what the card's rule says an adapter takes is gone for the board's extra plug too", () => {
	const graphicsCard = { powerPlugs: ["12V-2x6", "12V-2x6"] as ("12V-2x6" | "8-pin")[], watts: 900 };
	const leads = [{ watts: 400 }];
	const board = { power: { extraPlugs: [{ plug: "6-pin" as const, for: "card slots" }] } };
	const given = (graphics8Pin: number) =>
		subjectOf({ board, graphicsCard, supply: { graphics8Pin, native12V2x6: leads } } as never);
	expect(runRule(supplyGraphicsPlugs, given(6)).data).toMatchObject({ plugs: 6, wide: 2 });
	expect(runRule(extraPower, given(6)).messageId).toBe("unfed");
	expect(runRule(extraPower, given(7)).messageId).toBe("fed");
});
