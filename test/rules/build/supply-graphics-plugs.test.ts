import { supplyGraphicsPlugs } from "../../../src/rules/build/supply-graphics-plugs.ts";
import { testRule } from "../test-rule.ts";

type Plug = "6-pin" | "8-pin" | "12V-2x6";

const card = (plugs: readonly Plug[], watts?: number) => ({
	powerPlugs: [...plugs],
	...(watts === undefined ? {} : { watts }),
});
const supply = (graphics8Pin: number, ...leadsW: number[]) => ({
	graphics8Pin,
	native12V2x6: leadsW.map((watts) => ({ watts })),
});
const fed = (...plugs: Plug[]) => ({ plugs });

// 75, 150 and 600 W: ATX 3.0 guide, doc. 336521, rev. 2.01, table 3-5; 75 W of the slot: CEM, read in a secondary text.
testRule(supplyGraphicsPlugs, {
	fits: {
		"no plug, whatever the supply": [{ graphicsCard: card([]) }, "noPlug"],
		"just as many plugs": [
			{ graphicsCard: card(["8-pin", "6-pin"], 300), supply: supply(2) },
			"fed",
			fed("8-pin", "6-pin"),
		],
		"wide leads of the supply do not matter to an 8-pin card": [
			{ graphicsCard: card(["8-pin"]), supply: { graphics8Pin: 1 } },
			"fed",
			fed("8-pin"),
		],
		"a lead for just the card's watts, 8-pin plugs not known": [
			{ graphicsCard: card(["12V-2x6"], 450), supply: { native12V2x6: [{ watts: 450 }] } },
			"fed",
			fed("12V-2x6"),
		],
		"a 600 W lead, the card's watts not known": [
			{ graphicsCard: card(["12V-2x6"]), supply: supply(0, 600) },
			"fed",
			fed("12V-2x6"),
		],
		"two leads that share the card's watts": [
			{ graphicsCard: card(["12V-2x6", "12V-2x6"], 600), supply: supply(0, 300, 600) },
			"fed",
			fed("12V-2x6", "12V-2x6"),
		],
		"to be bought to suit": [
			{ graphicsCard: card(["8-pin", "8-pin"]), supply: "open" },
			"noSupply",
			fed("8-pin", "8-pin"),
		],
		"no supply": [{ graphicsCard: card(["12V-2x6"]), supply: "none" }, "noSupply", fed("12V-2x6")],
		"no card": [{ graphicsCard: "none", supply: supply(0) }, "none", { part: "graphicsCard" }],
	},
	cautions: {
		"a watt more than slot and plugs are meant for": [
			{ graphicsCard: card(["8-pin", "6-pin"], 301), supply: supply(2) },
			"good-to-know",
			"doubtful",
			{ cardW: 301, budgetW: 300 },
		],
		"no lead, and the adapter's two plugs are there": [
			{ graphicsCard: card(["12V-2x6"], 300), supply: supply(2) },
			"plan-around",
			"adapter",
			{ plugs: 2, wide: 1 },
		],
		"no lead, a watt more, and the adapter's three plugs are there": [
			{ graphicsCard: card(["12V-2x6"], 301), supply: supply(3) },
			"plan-around",
			"adapter",
			{ plugs: 3, wide: 1 },
		],
		"no lead, the card's watts not known, and the largest adapter's four plugs are there": [
			{ graphicsCard: card(["12V-2x6"]), supply: supply(4) },
			"plan-around",
			"adapter",
			{ plugs: 4, wide: 1 },
		],
		"one lead for two sockets": [
			{ graphicsCard: card(["12V-2x6", "12V-2x6"], 600), supply: supply(2, 600) },
			"plan-around",
			"adapter",
			{ plugs: 2, wide: 1 },
		],
		"no lead for two sockets": [
			{ graphicsCard: card(["12V-2x6", "12V-2x6"], 600), supply: supply(4) },
			"plan-around",
			"adapter",
			{ plugs: 4, wide: 2 },
		],
		"a lead too weak by far, and the adapter's plugs are there": [
			{ graphicsCard: card(["12V-2x6"], 450), supply: supply(3, 300) },
			"plan-around",
			"adapter",
			{ plugs: 3, wide: 1 },
		],
		"a lead that is too weak by just what the slot adds": [
			{ graphicsCard: card(["12V-2x6"], 375), supply: supply(0, 300) },
			"plan-around",
			"leadTight",
			{ leadW: 300, plugW: 375 },
		],
	},
	fails: {
		"one plug too few": [
			{ graphicsCard: card(["8-pin", "8-pin"]), supply: supply(1, 600) },
			"tooFew",
			{ have: 1, need: 2 },
		],
		"no plug for a 6-pin": [{ graphicsCard: card(["6-pin"]), supply: supply(0) }, "tooFew", { have: 0, need: 1 }],
		"a lead too weak by a watt more than the slot adds": [
			{ graphicsCard: card(["12V-2x6"], 376), supply: supply(2, 300) },
			"leadWeak",
			{ leadW: 300, plugW: 376 },
		],
		"no lead, and one plug too few for the adapter": [
			{ graphicsCard: card(["12V-2x6"], 450), supply: supply(2) },
			"noLead",
			{ have: 2, need: 3 },
		],
		"no lead, no plug, the card's watts not known": [
			{ graphicsCard: card(["12V-2x6"]), supply: supply(0) },
			"noLead",
			{ have: 0, need: 2 },
		],
		"the 8-pin socket takes a plug that the adapter would need": [
			{ graphicsCard: card(["12V-2x6", "8-pin"], 300), supply: supply(2) },
			"noLead",
			{ have: 1, need: 2 },
		],
	},
	cannotTell: {
		"the card's plugs are not known": [{ graphicsCard: {}, supply: supply(2) }, ["graphicsCard.powerPlugs"]],
		"the supply's plugs are not known": [
			{ graphicsCard: card(["8-pin", "12V-2x6"]), supply: {} },
			["supply.graphics8Pin", "supply.native12V2x6"],
		],
		"no lead, and the 8-pin plugs are not known": [
			{ graphicsCard: card(["12V-2x6"], 300), supply: { native12V2x6: [] } },
			["supply.graphics8Pin"],
		],
		"no lead, enough plugs for the small adapter, the card's watts not known": [
			{ graphicsCard: card(["12V-2x6"]), supply: supply(3) },
			["graphicsCard.watts"],
		],
		"a small lead, and the card's watts not known": [
			{ graphicsCard: card(["12V-2x6"]), supply: supply(0, 450) },
			["graphicsCard.watts"],
		],
		"nobody has said which supply": [{ graphicsCard: card(["8-pin"]) }, ["supply"]],
	},
});
