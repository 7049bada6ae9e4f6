import type { Board } from "../../../src/parts/board.ts";
import type { Drive } from "../../../src/parts/drive.ts";
import { extraPower } from "../../../src/rules/fit/extra-power.ts";
import { testRule } from "../test-rule.ts";

type Extra = NonNullable<NonNullable<Board["power"]>["extraPlugs"]>;
const boardWith = (...extraPlugs: Extra) => ({ power: { extraPlugs } });
const forSlots = { plug: "6-pin graphics", for: "the card slots" } as const;
const forCharging = { plug: "SATA power", for: "fast charging at the front USB-C" } as const;
const [slots, charging] = [boardWith(forSlots), boardWith(forCharging)];
const slotsWords = "6-pin graphics plug (the card slots)";
const chargingWords = "SATA power plug (fast charging at the front USB-C)";

const usbC = { frontPlugs: [{ plug: "USB-C 20-pin" as const, count: 1 }] };
const noUsbC = { frontPlugs: [{ plug: "USB 19-pin" as const, count: 1 }] };
const card = (...powerPlugs: ("6-pin" | "8-pin" | "12V-2x6")[]) => ({ powerPlugs });
const drive = (link: Drive["link"], shape: Drive["shape"] = "3.5 inch"): Drive => ({
	id: "brick",
	name: "Brick",
	shape,
	...(link ? { link } : {}),
});
/** One drive on a cable and one stick, which the board feeds. */
const drives = [drive("SATA"), drive("SATA", "M.2")];
const wide = { board: slots, graphicsCard: { powerPlugs: ["12V-2x6" as const], watts: 300 } };

testRule(extraPower, {
	fits: {
		"the board has none": [{ board: boardWith() }, "none"],
		"the page names none": [{ board: {}, supply: {} }, "notNamed"],
		"the supply is still to come, and the board wants a plug": [
			{ board: slots, graphicsCard: card(), supply: "open" },
			"noSupply",
			{ plugs: [slotsWords] },
		],
		"there is no supply": [
			{ board: boardWith({ plug: "4-pin drive" }), supply: "none" },
			"noSupply",
			{ plugs: ["4-pin drive plug"] },
		],
		"just one plug more than the card takes": [
			{ board: slots, graphicsCard: card("8-pin", "6-pin"), supply: { graphics8Pin: 3 } },
			"fed",
			{ plugs: [slotsWords] },
		],
		"an 8-pin plug takes one of the same plugs": [
			{ board: boardWith({ plug: "8-pin graphics" }), graphicsCard: "none", supply: { graphics8Pin: 1 } },
			"fed",
			{ plugs: ["8-pin graphics plug"] },
		],
		"just one SATA plug more than the drives take": [
			{ board: charging, case: usbC, drives, olderSataDrives: 2, supply: { sataPlugs: 4 } },
			"fed",
			{ plugs: [chargingWords] },
		],
		"just one drive plug more than the old drives take": [
			{ board: boardWith({ plug: "4-pin drive" }), drives: [drive("IDE")], supply: { drivePlugs: 2 } },
			"fed",
			{ plugs: ["4-pin drive plug"] },
		],
		"an old drive that is named twice over is one": [
			{
				board: boardWith({ plug: "4-pin drive" }),
				drives: [drive("IDE")],
				oldThings: ["IDE drive"],
				supply: { drivePlugs: 2 },
			},
			"fed",
			{ plugs: ["4-pin drive plug"] },
		],
		"the card's own lead leaves all plugs": [
			{ ...wide, supply: { graphics8Pin: 1, native12V2x6: [{ watts: 300 }] } },
			"fed",
			{ plugs: [slotsWords] },
		],
		"a lead that is a slot's 75 W too weak is no reason for an adapter": [
			{ ...wide, supply: { graphics8Pin: 1, native12V2x6: [{ watts: 225 }] } },
			"fed",
			{ plugs: [slotsWords] },
		],
		"its adapter for 300 W takes two of three": [
			{ ...wide, supply: { graphics8Pin: 3, native12V2x6: [] } },
			"fed",
			{ plugs: [slotsWords] },
		],
		"the card's watts are not known, and the largest adapter leaves one": [
			{ board: slots, graphicsCard: card("12V-2x6"), supply: { graphics8Pin: 5, native12V2x6: [] } },
			"fed",
			{ plugs: [slotsWords] },
		],
		"fast charging, and a case without front USB-C": [
			{ board: charging, case: noUsbC, drives, olderSataDrives: 0, supply: { sataPlugs: 1 } },
			"notNeeded",
			{ plugs: [chargingWords] },
		],
		"for the slots, and there will be no card": [
			{ board: slots, graphicsCard: "none", addInCards: [], supply: { graphics8Pin: 0 } },
			"notNeeded",
			{ plugs: [slotsWords] },
		],
		"what is not needed leaves the plug to what is": [
			{
				board: boardWith({ plug: "6-pin graphics", for: "front charging" }, forSlots),
				case: noUsbC,
				graphicsCard: card("8-pin"),
				supply: { graphics8Pin: 2 },
			},
			"fed",
			{ plugs: [slotsWords] },
		],
	},
	cautions: {
		"the card takes all": [
			{ board: slots, graphicsCard: card("8-pin", "6-pin"), supply: { graphics8Pin: 2 } },
			"plan-around",
			"unfed",
			{ plugs: [slotsWords] },
		],
		"the card wants more than there are": [
			{ board: slots, graphicsCard: card("8-pin", "8-pin"), supply: { graphics8Pin: 1 } },
			"plan-around",
			"unfed",
			{ plugs: [slotsWords] },
		],
		"no graphics card, but another in a slot": [
			{
				board: slots,
				graphicsCard: "none",
				addInCards: [{ id: "fiddle", name: "Fiddle" }],
				supply: { graphics8Pin: 0 },
			},
			"plan-around",
			"unfed",
			{ plugs: [slotsWords] },
		],
		"its adapter takes both": [
			{ ...wide, supply: { graphics8Pin: 2, native12V2x6: [] } },
			"plan-around",
			"unfed",
			{ plugs: [slotsWords] },
		],
		"a lead that is weaker still wants the adapter": [
			{ ...wide, supply: { graphics8Pin: 2, native12V2x6: [{ watts: 224 }] } },
			"plan-around",
			"unfed",
			{ plugs: [slotsWords] },
		],
		"the card's watts are not known, and the smallest adapter takes both": [
			{ board: slots, graphicsCard: card("12V-2x6"), supply: { graphics8Pin: 2, native12V2x6: [] } },
			"plan-around",
			"unfed",
			{ plugs: [slotsWords] },
		],
		"the drives take all SATA plugs": [
			{ board: charging, case: usbC, drives, olderSataDrives: 2, supply: { sataPlugs: 3 } },
			"plan-around",
			"unfed",
			{ plugs: [chargingWords] },
		],
		"an old drive takes the only drive plug": [
			{
				board: boardWith({ plug: "4-pin drive" }),
				drives: [],
				oldThings: ["IDE drive"],
				supply: { drivePlugs: 1 },
			},
			"plan-around",
			"unfed",
			{ plugs: ["4-pin drive plug"] },
		],
		"two plugs of the board, and one left": [
			{
				board: boardWith(forSlots, { plug: "8-pin graphics" }),
				graphicsCard: card("8-pin"),
				supply: { graphics8Pin: 2 },
			},
			"plan-around",
			"unfed",
			{ plugs: ["8-pin graphics plug"] },
		],
		"plugs of two kinds, and one kind is short": [
			{
				board: boardWith(forSlots, forCharging),
				case: usbC,
				graphicsCard: card(),
				drives: [],
				olderSataDrives: 0,
				supply: { graphics8Pin: 0, sataPlugs: 1 },
			},
			"plan-around",
			"unfed",
			{ plugs: [slotsWords] },
		],
		"fast charging unfed, and nobody knows the case": [
			{ board: charging, drives: [], olderSataDrives: 0, supply: { sataPlugs: 0 } },
			"good-to-know",
			"unfed",
			{ plugs: [chargingWords] },
		],
		"for the slots, and nobody has said whether a card comes": [
			{ board: slots, graphicsCard: "none", supply: { graphics8Pin: 0 } },
			"good-to-know",
			"unfed",
			{ plugs: [slotsWords] },
		],
		"a card still to be bought may take the last": [
			{ board: slots, graphicsCard: "open", supply: { graphics8Pin: 2 } },
			"good-to-know",
			"keep",
			{ plugs: [slotsWords] },
		],
	},
	cannotTell: {
		"nobody has said which supply": [{ board: slots, graphicsCard: card() }, ["supply"]],
		"the supply's page is silent": [
			{ board: slots, graphicsCard: card(), supply: {} },
			["supply.graphics8Pin"],
			"unsure",
			{ plugs: [slotsWords] },
		],
		"the card's plugs are not known": [
			{ board: slots, graphicsCard: {}, supply: { graphics8Pin: 2 } },
			["graphicsCard.powerPlugs"],
			"unsure",
			{ plugs: [slotsWords] },
		],
		"nobody has said whether there will be a graphics card": [
			{ board: boardWith({ plug: "6-pin graphics" }), supply: { graphics8Pin: 2 } },
			["graphicsCard"],
			"unsure",
			{ plugs: ["6-pin graphics plug"] },
		],
		"whether the supply has a lead of its own is not known": [
			{ ...wide, supply: { graphics8Pin: 2 } },
			["supply.native12V2x6"],
			"unsure",
			{ plugs: [slotsWords] },
		],
		"the card's watts decide how large its adapter is": [
			{ board: slots, graphicsCard: card("12V-2x6"), supply: { graphics8Pin: 4, native12V2x6: [] } },
			["graphicsCard.watts"],
			"unsure",
			{ plugs: [slotsWords] },
		],
		"nobody has named the drives": [
			{ board: charging, case: usbC, supply: { sataPlugs: 2 } },
			["drives", "olderSataDrives"],
			"unsure",
			{ plugs: [chargingWords] },
		],
		"nobody has named the old drives": [
			{ board: boardWith({ plug: "4-pin drive" }), supply: { drivePlugs: 2 } },
			["drives"],
			"unsure",
			{ plugs: ["4-pin drive plug"] },
		],
	},
});
