import { oldThings } from "../../../src/parts/wants.ts";
import { forcedExtras } from "../../../src/rules/fit/forced-extras.ts";
import { testRule } from "../test-rule.ts";

const eur = (minor: number) => ({ minor, currency: "EUR" });
const wireless = { wishes: { "features/wireless": "must" } } as const;
const wired = { wireless: { builtIn: false } };
const ownPicture = { graphicsCard: "none", processor: { graphics: true } } as const;
const adapter = ["an adapter for wireless"];

testRule(forcedExtras, {
	fits: {
		"nothing to buy": [{ board: { ...wired, price: eur(10_000) }, priceCap: eur(10_000) }, "none"],
		"wireless that one would only like": [{ board: wired, wishes: { "features/wireless": "would-like" } }, "none"],
		"a card for wireless is planned": [
			{ board: wired, ...wireless, addInCards: [{ id: "airwave", name: "Airwave", use: "wireless network" }] },
			"none",
		],
		"a socket of its shape for each screen": [
			{ board: { pictureSockets: ["VGA", "HDMI"] }, ...ownPicture, screens: ["HDMI", "VGA"] },
			"none",
		],
		"a graphics card feeds the screens": [
			{ board: { pictureSockets: ["HDMI"] }, processor: { graphics: true }, graphicsCard: {}, screens: ["VGA"] },
			"none",
		],
		"a screen that no adapter helps: told elsewhere": [
			{ board: { pictureSockets: ["HDMI", "HDMI"] }, ...ownPicture, screens: ["VGA", "USB-C"] },
			"none",
		],
		"more screens than sockets: told elsewhere": [
			{ board: { pictureSockets: ["HDMI"] }, ...ownPicture, screens: ["VGA", "HDMI"] },
			"none",
		],
		"the picture sockets are not known": [
			{ board: { rearUsb: [{ plug: "C", count: 1, modes: ["picture"] }] }, ...ownPicture, screens: ["HDMI"] },
			"none",
		],
		"whether old things find sockets is not known": [{ board: {}, oldThings: ["IDE drive"] }, "none"],
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
	cautions: {
		"no limit": [
			{ board: { ...wired, price: eur(10_000) }, ...wireless },
			"good-to-know",
			"noLimit",
			{ extras: adapter },
		],
		"no price": [{ board: wired, priceCap: eur(10_000), ...wireless }, "good-to-know", "noLimit", { extras: adapter }],
		"over the limit anyhow": [
			{ board: { ...wired, price: eur(10_001) }, priceCap: eur(10_000), ...wireless },
			"good-to-know",
			"noLimit",
			{ extras: adapter },
		],
		"a limit in another currency": [
			{ board: { ...wired, price: eur(100) }, priceCap: { minor: 10_000, currency: "GBP" }, ...wireless },
			"good-to-know",
			"noLimit",
			{ extras: adapter },
		],
		"exactly a tenth of the price is left": [
			{ board: { ...wired, price: eur(10_000) }, priceCap: eur(11_000), ...wireless },
			"good-to-know",
			"covered",
			{ extras: adapter, price: "EUR 100.00", reserve: "EUR 10.00" },
		],
		"a socket for a wireless module": [
			{ board: { wireless: { builtIn: false, moduleSocket: "ordinary" } }, ...wireless },
			"good-to-know",
			"noLimit",
			{ extras: ["a module or an adapter for wireless"] },
		],
		"a socket for modules of one family": [
			{ board: { wireless: { builtIn: false, moduleSocket: "one-family-only" } }, ...wireless },
			"good-to-know",
			"noLimit",
			{ extras: adapter },
		],
		"adapters for the screens, of which VGA wants an active one": [
			{
				board: { pictureSockets: ["HDMI", "HDMI", "HDMI", "HDMI"] },
				...ownPicture,
				screens: ["DVI", "DVI", "VGA", "HDMI"],
			},
			"good-to-know",
			"noLimit",
			{ extras: ["2 x adapter from HDMI to DVI", "an active adapter from HDMI to VGA"] },
		],
		"old things without a socket": [
			{
				board: { rearOld: ["PS/2"], headers: { serial: 0 }, drivePorts: [], cardSlots: [] },
				oldThings: [...oldThings],
			},
			"good-to-know",
			"noLimit",
			{
				extras: [
					"a USB to serial adapter",
					"a USB to parallel cable",
					"a USB to IDE adapter with a supply of its own",
					"a newer card in place of your PCI card",
				],
			},
		],
		"old things count in the reserve": [
			{
				board: { rearOld: [], drivePorts: [], price: eur(10_000) },
				oldThings: ["PS/2 keyboard or mouse", "IDE drive"],
				priceCap: eur(12_000),
			},
			"good-to-know",
			"covered",
			{
				extras: ["an active PS/2 to USB adapter", "a USB to IDE adapter with a supply of its own"],
				price: "EUR 100.00",
				reserve: "EUR 20.00",
			},
		],
		"no header for the fans, and the case brings a hub": [
			{
				board: { headers: { fans: [] } },
				caseFans: 1,
				cooler: { headersUsed: { fan: 0 } },
				case: { hubUsesUsb2: true },
			},
			"good-to-know",
			"noLimit",
			{ extras: ["a hub for the fans (see first whether your case's hub takes them)"] },
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
