import { forcedExtras } from "../../../src/rules/fit/forced-extras.ts";
import { testRule } from "../test-rule.ts";

const eur = (minor: number) => ({ minor, currency: "EUR" });
const wireless = { wishes: { "features/wireless": "must" } } as const;
const wired = { wireless: { builtIn: false } };
const adapter = ["an adapter for wireless"];

testRule(forcedExtras, {
	fits: {
		"nothing to buy": [{ board: { ...wired, price: eur(10_000) }, priceCap: eur(10_000) }, "none"],
		"wireless that one would only like": [{ board: wired, wishes: { "features/wireless": "would-like" } }, "none"],
		"no limit": [{ board: { ...wired, price: eur(10_000) }, ...wireless }, "noLimit", { extras: adapter }],
		"no price": [{ board: wired, priceCap: eur(10_000), ...wireless }, "noLimit", { extras: adapter }],
		"over the limit anyhow": [
			{ board: { ...wired, price: eur(10_001) }, priceCap: eur(10_000), ...wireless },
			"noLimit",
			{ extras: adapter },
		],
		"a limit in another currency": [
			{ board: { ...wired, price: eur(100) }, priceCap: { minor: 10_000, currency: "GBP" }, ...wireless },
			"noLimit",
			{ extras: adapter },
		],
		"exactly a tenth of the price is left": [
			{ board: { ...wired, price: eur(10_000) }, priceCap: eur(11_000), ...wireless },
			"covered",
			{ extras: adapter, price: "EUR 100.00", reserve: "EUR 10.00" },
		],
		"a kit for this socket in the box": [
			{
				board: { socket: "Kettle 7" },
				cooler: {
					kits: [
						{ socket: "Kettle 7", how: "bought" },
						{ socket: "kettle 7", how: "in the box" },
					],
				},
			},
			"none",
		],
	},
	fails: {
		"a cent less is left": [
			{ board: { ...wired, price: eur(10_000) }, priceCap: eur(10_999), ...wireless },
			"tight",
			{ extras: adapter, price: "EUR 100.00", reserve: "EUR 9.99" },
		],
		"the money left is less than the limit": [
			{
				board: { ...wired, price: eur(10_000) },
				priceCap: eur(20_000),
				moneyInAll: eur(50_000),
				moneySpent: eur(39_500),
				...wireless,
			},
			"tight",
			{ extras: adapter, price: "EUR 100.00", reserve: "EUR 5.00" },
		],
		"headers that are not there, and a kit": [
			{
				board: {
					price: eur(10_000),
					socket: "Kettle 7",
					headers: { usb2: 0, usb5: 0, typeC: [], fans: [], lights: [] },
				},
				case: { frontPlugs: [{ plug: "USB 9-pin", count: 1 }] },
				cooler: { kind: "liquid", kits: [{ socket: "Kettle 7", how: "bought" }] },
				caseFans: 1,
				lights: ["5 V three-pin"],
				priceCap: eur(13_999),
			},
			"tight",
			{
				extras: [
					"a hub for USB inside",
					"a hub for the fans",
					"a controller for the lights",
					"the cooler's mounting kit",
				],
				price: "EUR 100.00",
				reserve: "EUR 39.99",
			},
		],
		"a drive that goes on a card": [
			{
				board: {
					price: eur(10_000),
					m2Sockets: [],
					cardSlots: [{ name: "SLOT_2", bus: "PCI Express", row: 2, lengthLanes: 4, wiredLanes: 4, from: "chipset" }],
				},
				graphicsCard: "none",
				drives: [{ id: "pebble", name: "Pebble", shape: "M.2", link: "PCI Express", lengthMm: 80, key: "M" }],
				priceCap: eur(10_000),
			},
			"tight",
			{ extras: ["an adapter card"], price: "EUR 100.00", reserve: "EUR 0.00" },
		],
	},
	without: { cannotTell: "what is not known makes nobody buy anything; the rules about each thing say so" },
});
