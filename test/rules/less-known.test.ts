import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Board } from "../../src/parts/board.ts";
import type { BuildPartKind } from "../../src/parts/build.ts";
import { allRules } from "../../src/rules/all-rules.ts";
import type { Rule } from "../../src/rules/define-rule.ts";
import type { Verdict } from "../../src/rules/outcome.ts";
import { runRule } from "../../src/rules/run-rule.ts";
import { type GivenSubject, partNames, subjectOf } from "./rule-subject.ts";

/**
 * A verdict must not be turned round by finding out more: what fits with a fact missing may never come out as "does not
 * fit" once the fact is known, nor the other way round. Held for every rule over made-up facts, two or three values each.
 */
const valuesOf: Readonly<Record<string, readonly unknown[]>> = {
	"board.socket": ["Kettle 7", "Harbour 2"],
	"processor.socket": ["Kettle 7", "Harbour 2"],
	"processor.generation": ["Dinghy", "Schooner"],
	"board.chipset": ["Ladle 3"],
	"board.supportList.rows": [[], [{ processor: partNames.processor }], [{ processor: "Piccolo", fromVersion: "F9" }]],
	"board.supportList.partial": [true, false],
	"board.firmware.oldestInShops": ["F8", "F9"],
	"board.recovery.flashWithoutProcessor": [true, false],
	"platform.generations": [
		[{ generation: "Dinghy", served: "yes" }],
		[{ generation: "Dinghy", served: "no" }],
		[{ generation: "Dinghy", served: "from firmware", startsFrom: "F9", safeFrom: "F10" }],
	],
	"board.firmware.releases": [
		[{ version: "F9" }],
		[
			{ version: "F8", date: "2023-01-10" },
			{ version: "F12", date: "2026-01-10" },
		],
	],
	"platform.dropsOlderFrom": [[{ generation: "Dinghy", version: "F12" }]],
	"board.form": ["Mini-ITX", "ATX", "E-ATX"],
	"case.boardForms": [["ATX", "Mini-ITX"], ["Mini-ITX"], ["E-ATX", "ATX"]],
	"board.widthMm": [170, 305],
	"board.depthMm": [170, 244, 330],
	"case.boardMaxWidthMm": [200, 305],
	"case.boardMaxDepthMm": [170, 280],
	"board.connectorsOnBack": [true, false],
	"board.connectorsOnBackPattern": ["Backstitch A", "Backstitch B"],
	"board.name": ["Hidden Thing"],
	"case.backCutOuts": [true, false],
	"case.backCutOutPatterns": [[], ["Backstitch A"]],
	"board.holes": [
		["A", "C", "F", "G", "H", "J"],
		["C", "F", "H", "J"],
	],
	"case.standoffs": [
		["A", "C", "F", "G", "H", "J", "K", "L", "M"],
		["C", "F", "H", "J"],
	],
	"case.standoffsRemovable": [true, false],
	"case.deepBoardCovers": [[], ["cable openings"], ["front radiator"]],
	"board.memory.type": ["DDR4", "DDR5"],
	"memory.type": ["DDR4", "DDR5"],
	"board.memory.slots": [1, 2, 4],
	"memory.modules": [1, 2, 4],
	"board.memory.maxGb": [16, 64],
	"memory.gbPerModule": [16, 32, 48, 64],
	"board.memory.maxGbPerModule": [16, 48, 64],
	"processor.memory.types": [["DDR4"], ["DDR4", "DDR5"]],
	"board.memory.form": ["DIMM", "SO-DIMM"],
	"memory.form": ["DIMM", "SO-DIMM"],
	"board.memory.registered": [true, false],
	"memory.registered": [true, false],
	"memory.mtPerS": [4800, 6000],
	"memory.ranks": [1, 2],
	"board.memory.channels": [1, 2],
	"processor.memory.channels": [1, 2],
	"board.memory.rates": [[], [{ modulesPerChannel: 1, mtPerS: 5200 }]],
	"processor.memory.rates": [[], [{ modulesPerChannel: 1, mtPerS: 4800 }], [{ modulesPerChannel: 2, mtPerS: 3600 }]],
	"board.memory.highestMtPerS": [4400, 6400],
	"board.raises.memoryRate": [true, false],
	"board.power.processorPlugs": [[], ["4-pin"], ["8-pin"], ["8-pin", "8-pin"], ["4-pin", "8-pin"]],
	"supply.processorPlugs": [[], ["4-pin"], ["8-pin"], ["8-pin", "4-pin"], ["8-pin", "8-pin"]],
	"board.power.mainPlug": ["24-pin", "10-pin 12 V only"],
	"supply.mainPlug": ["24-pin", "20-pin", "10-pin 12 V only"],
	"processor.peakW": [100, 200, 300],
	"processor.graphics": [true, false],
	"board.pictureSockets": [[], ["HDMI"]],
	"board.price": [
		{ minor: 9000, currency: "EUR" },
		{ minor: 19_000, currency: "EUR" },
	],
	"board.rearUsb": [
		[],
		[{ plug: "A", count: 2 }],
		[{ plug: "C", count: 1 }],
		[{ plug: "C", count: 1, modes: ["picture"] }],
		[{ plug: "C", count: 1, modes: [] }],
	],
	"board.wireless.builtIn": [true, false],
	"board.wireless.standard": ["Wi-Fi 7"],
	"board.wireless.moduleSocket": ["ordinary", "none"],
	"graphicsCard.lengthMm": [200, 300],
	"case.cardMaxLengthMm": [250, 300],
	"processor.name": [partNames.processor],
	"graphicsCard.name": [partNames.graphicsCard],
	"case.name": [partNames.case],
	"board.m2Sockets": [
		[],
		[{ name: "M2_1", key: "M", lengthsMm: [80], wiredLanes: 4, sata: false, cooled: false }],
		[
			{ name: "M2_1", key: "M", lengthsMm: [80], wiredLanes: 4, sata: true },
			{ name: "M2_2", cooled: true },
		],
	],
	"board.cardSlots": [
		[],
		[{ name: "SLOT_1", bus: "PCI Express", row: 1, lengthLanes: 16, wiredLanes: 16, from: "processor" }],
		[
			{ name: "SLOT_1", bus: "PCI Express", row: 1, lengthLanes: 16, wiredLanes: 16, from: "processor" },
			{
				name: "SLOT_3",
				bus: "PCI Express",
				row: 3,
				lengthLanes: 16,
				wiredLanes: 8,
				from: "processor",
				reinforced: true,
			},
			{ name: "OLD_4", bus: "PCI", row: 4 },
		],
		[{ name: "SLOT_1", bus: "PCI Express", row: 1, lengthLanes: 4, wiredLanes: 4, from: "chipset" }],
	],
	"board.drivePorts": [
		[],
		[
			{ name: "SATA_1", kind: "SATA" },
			{ name: "SATA_2", kind: "SATA", upright: true, row: 2 },
		],
	],
	"board.sharing": [[], [{ members: ["M2_1", "SATA_1"], modes: [{ on: { M2_1: 4 } }, { on: { SATA_1: 1 } }] }]],
	"board.conditions": [
		[],
		[{ when: { processorSeries: ["Lump"] }, connector: "M2_1", dead: true }],
		[{ when: { processorGraphics: true }, connector: "SLOT_1", dead: true }],
	],
	"board.chipsetUplink": [{ lanes: 4, generation: 3 }],
	"processor.series": ["Lump", "Loaf"],
	"graphicsCard.lanes": [8, 16],
	"graphicsCard.leastLanes": [4, 8],
	"graphicsCard.thicknessMm": [20, 40, 60],
	"graphicsCard.generation": [3, 4],
	"case.uprightSlots": [0, 2],
	"graphicsCard.pictureSockets": [[], ["HDMI"], ["DVI", "VGA"], ["DisplayPort", "DisplayPort", "HDMI"]],
	"cooler.name": [partNames.cooler],
	"cooler.kits": [
		[],
		[{ socket: "kettle7", how: "in the box" }],
		[{ socket: "Kettle 7", how: "bought" }],
		[
			{ socket: "Harbour 2", how: "on request" },
			{ socket: "Kettle 7", how: "bought" },
		],
	],
	"cooler.needsBoardBackPlate": [true, false],
	"cooler.kind": ["liquid", "liquid", "air"],
	"cooler.fans": [1, 3, 6],
	"cooler.headersUsed.fan": [0, 2],
	"cooler.headersUsed.pump": [0, 1],
	"cooler.headersUsed.usb2": [0, 1],
	"cooler.headersUsed.lights5V": [0, 1],
	"cooler.headersUsed.lights12V": [0, 1],
	"board.layout.ownBackPlate": [true, false],
	"processor.memory.maxGb": [32, 128],
	"case.frontPlugs": [[], [{ plug: "USB 9-pin", count: 2 }], [{ plug: "USB-C 20-pin", count: 1, gbps: 10 }]],
	"case.hubUsesUsb2": [true, false],
	"board.headers.usb2": [0, 2],
	"board.headers.usb5": [0, 1],
	"board.headers.typeC": [[], [{ gbps: 5 }]],
	"board.headers.frontAudio": [true, false],
	"board.headers.fans": [
		[],
		[
			{ name: "FAN_1", use: "processor" },
			{ name: "FAN_2", use: "case", amps: 2, control: ["4-pin PWM"] },
		],
	],
	"board.headers.lights": [[], [{ name: "LIGHT_1", volts: 5 }], [{ name: "LIGHT_1", volts: 12 }]],
	"board.headers.serial": [0, 1],
	"board.rearOld": [[], ["PS/2", "serial"]],
	"board.listsPublished.processors": [true, false],
	"board.listsPublished.memory": [true, false],
	"board.offers": [
		[],
		[{ condition: "used", price: { minor: 5800, currency: "EUR" } }],
		[
			{ condition: "new", price: { minor: 9000, currency: "EUR" } },
			{ condition: "opened", price: { minor: 8000, currency: "EUR" } },
		],
	],
	"board.power.extraPlugs": [
		[],
		[{ plug: "6-pin graphics", for: "the card slots" }],
		[{ plug: "SATA power", for: "fast charging at the front" }, { plug: "4-pin drive" }],
	],
	"supply.drivePlugs": [0, 2],
	"board.wiredGbps": [[], [1], [1, 2.5]],
	"board.raises.processorClock": [true, false],
	"processor.unlocked": [true, false],
	"board.memory.errorCorrection": [true, false],
	"processor.memory.errorCorrection": [true, false],
	"memory.errorCorrection": ["none", "on-chip", "full"],
	"board.recovery.faultDisplay": ["none", "lights", "digits"],
	"board.recovery.resetAtBack": [true, false],
	"board.sound.channels": [2, 6, 8],
	"board.sound.rearSockets": [0, 3, 5],
	"board.sound.optical": [true, false],
	"board.colour": ["black", "white"],
	"board.warrantyYears": [2, 3],
	"board.powerDelivery.advertised": ["8+2", "17 phases"],
	"board.powerDelivery.coreStages": [4, 8, 16],
	"board.powerDelivery.stageKind": ["integrated", "separate switches"],
	"board.powerDelivery.stageRatingA": [15, 50, 90],
	"board.powerDelivery.efficiencyPercent": [88, 91],
	"board.powerDelivery.highSwitchMohm": [5],
	"board.powerDelivery.lowSwitchMohm": [3],
	"board.powerDelivery.lowSwitchesPerStage": [1, 2],
	"board.powerDelivery.switchingKhz": [300, 600],
	"board.powerDelivery.coilMohm": [0.3],
	"board.powerDelivery.coilNh": [220],
	"board.powerDelivery.heatSink": ["none", "both sides", "finned"],
	"board.powerDelivery.thermalResistanceKPerW": [1, 3],
	"board.powerDelivery.layers": [4, 8],
	"board.powerDelivery.copperOz": [1, 2],
	"board.powerDelivery.measurements": [[], [{ loadW: 150, airC: 22, stageC: 70 }]],
	"processor.averagingS": [28, 56],

	"graphicsCard.heightMm": [120, 150],
	"case.cardMaxHeightMm": [140, 170],
	"graphicsCard.powerPlugs": [[], ["8-pin"], ["12V-2x6"], ["8-pin", "12V-2x6"]],
	"case.cardMaxLengthWithRadiatorMm": [180, 250],
	"case.radiatorPlaces": [
		[{ place: "front", lengthsMm: [240, 360] }],
		[
			{ place: "front", lengthsMm: [240] },
			{ place: "top", lengthsMm: [240], maxThicknessMm: 55 },
		],
	],
	"cooler.radiatorMm": [240, 360],
	"cooler.radiatorThicknessMm": [52, 60],
	"graphicsCard.bracketSlots": [1, 3],
	"case.cardSlots": [0, 2, 4],
	"cooler.heightMm": [70, 160],
	"case.coolerMaxHeightMm": [70, 161, 180],
	"processor.coolerInBox": [true, false],
	"cooler.publishedW": [60, 120, 250],
	"processor.sustainedW": [90, 180],
	"processor.baseW": [45, 65],
	"processor.limitPolicy": ["fixed", "lifted-by-board"],
	"memory.heightMm": [35, 45],
	"cooler.memoryRoomMm": [40],
	"cooler.overMemoryMm": [40, 60],
	"cooler.overSlotMm": [50, 72],
	"cooler.weightG": [420, 1080],
	"board.layout.memoryFromSocketMm": [46, 53],
	"board.layout.firstSlotFromSocketMm": [62, 76, 96],
	"board.memory.slotOrder": [
		{},
		{ "1": ["A2"], "2": ["A2", "B2"], "4": ["A1", "A2", "B1", "B2"] },
		{ "1": ["A1"], "2": ["A1", "B1"] },
	],
	"graphicsCard.weightG": [900, 1950],
	"supply.watts": [350, 500, 850],
	"supply.twelveVoltA": [20, 70],
	"supply.bornIn": [2012, 2024],
	"graphicsCard.watts": [150, 320],
	"graphicsCard.supplyAdvisedW": [450, 750],
	"supply.graphics8Pin": [0, 2, 4],
	"supply.native12V2x6": [[], [{ watts: 300 }], [{ watts: 600 }]],
	"supply.form": ["ATX", "SFX", "SFX-L"],
	"case.supplyForms": [["ATX"], ["SFX"]],
	"supply.lengthMm": [100, 160],
	"case.supplyMaxLengthMm": [130, 180],
	"case.frontOpen": ["mesh", "solid"],
	"case.driveBays.inch35": [0, 2],
	"case.driveBays.inch25": [0, 2],
	"supply.sataPlugs": [1, 4],
};

/**
 * Facts that a rule takes for granted while nobody gives them, each for a reason. They stay as they are while others are
 * found out; that each is still taken for granted is tested too.
 */
const takenForGranted: Readonly<Record<string, Readonly<Record<string, string>>>> = {
	"fit/cooler-mount": { "cooler.needsBoardBackPlate": "most coolers bring their own back plate" },
	"fit/memory-size": {
		"board.memory.maxGb": "what all slots hold counts, where the page names no most",
		"board.memory.slots": "the page's own most counts",
		"board.memory.maxGbPerModule": "the page's own most counts",
	},
	"build/memory-with-processor": {
		"processor.memory.maxGb": "processors work with more than most people buy",
		"memory.modules": "processors work with more than most people buy",
		"memory.gbPerModule": "processors work with more than most people buy",
	},
	"fit/standoffs": {
		"case.standoffs": "a case has what the boards it lists need, and no more that stays",
		"case.standoffsRemovable": "in nearly all cases they come out",
	},
	"fit/m2-drives": { "board.conditions": "pages put it in footnotes where it is so" },
	"fit/card-slots": { "board.conditions": "pages put it in footnotes where it is so" },
	"features/second-card": {
		"board.conditions": "pages put it in footnotes where it is so",
	},

	"build/card-in-case": { "cooler.kind": "a cooler of which nobody says more has no radiator in front" },
	"build/card-slots-in-case": {
		"graphicsCard.bracketSlots": "a bracket takes no more openings than the card is thick",
	},
	"build/supply-watts": {
		"processor.peakW": "without it 1.35 to 3.5 times the label watts are counted",
		"supply.twelveVoltA": "supplies of today give nearly all their watts at 12 V",
	},
	"fit/generation": {
		"board.supportList.rows": "without a list the chipset's table decides, and a list decides against it",
		"board.supportList.partial": "a list is whole unless it is said to be noted in part",
	},
	"fit/price-cap": { "board.price": "where no new one is noted, a used one is what can be had" },
	"fit/back-plugs": { "board.connectorsOnBack": "pages say it loudly where it is so" },
	"fit/board-form": {
		"case.boardMaxWidthMm": "without figures the case's list decides",
		"case.boardMaxDepthMm": "without figures the case's list decides",
		"board.widthMm": "a board is no larger than its form",
		"board.depthMm": "a board is no larger than its form; asked where the form is no fixed size",
	},
	"fit/memory-modules": {
		"board.memory.maxGb": "boards take more than most people buy",
		"memory.gbPerModule": "boards take more than most people buy",
		"board.memory.maxGbPerModule": "boards take larger modules than most people buy",
		"board.memory.form": "a desktop board takes DIMM",
		"memory.form": "desktop modules are DIMM",
		"memory.registered": "ordinary modules are not",
		"board.memory.registered": "a board that takes them says so loudly",
	},
	"fit/power-plugs": {
		"supply.mainPlug": "most supplies have a 24-pin plug",
		"board.power.mainPlug": "a desktop board has a 24-pin plug (assumed, and marked so)",
	},
};

/** Wishes and limits are the person's own: one that is not given asks for nothing. */
const settings = [
	{},
	{
		asOf: "2026-11-28",
		memoryGb: 64,
		drives: [
			{ id: "pebble", name: "Pebble", shape: "M.2", link: "PCI Express", lengthMm: 80 },
			{ id: "slate", name: "Slate", shape: "M.2", link: "SATA", lengthMm: 80, ownCooler: true, system: true },
			{ id: "brick", name: "Brick", shape: "3.5 inch", link: "SATA" },
		],
		olderSataDrives: 1,
		addInCards: [{ id: "fiddle", name: "Fiddle", lanes: 1, usesUsb2: true }],
		clockPlan: "done-before",
		rescueMusts: ["fault-display", "flash-without-processor", "reset-at-back"],
		oldThings: ["serial device", "IDE drive", "PCI card"],
		screens: ["HDMI", "DVI"],
		routerGbps: 2.5,
		caseFans: 2,
		laterThings: ["fan", "memory"],
		lights: ["5 V three-pin", "maker's own"],
		soundUses: ["headphones", "surround", "optical"],
		colourTaste: "dark",
		moneyInAll: { minor: 20_000, currency: "EUR" },
		moneySpent: { minor: 8_000, currency: "EUR" },
		wishes: {
			"features/second-card": "must",
			"features/error-correction": "must",
			"quality/warranty": "must",
			"quality/tested": "must",
		},
	},
	{
		memoryGb: 32,
		drives: [{ id: "pebble", name: "Pebble", shape: "M.2", link: "PCI Express", lengthMm: 80 }],
		addInCards: [{ id: "horn", name: "Old Horn", bus: "PCI" }],
		clockPlan: "maybe",
		wishes: { "features/second-card": "would-like", "quality/warranty": "would-like" },
	},
	{ screens: ["HDMI", "VGA"], drives: [{ id: "a-drive", name: "Pickle", shape: "3.5 inch" }], olderSataDrives: 1 },

	{
		priceCap: { minor: 18_000, currency: "EUR" },
		wishes: { "features/rear-usb-c": "must", "features/wireless": "must" },
	},
	{ wishes: { "features/rear-usb-c": "would-like", "features/wireless": "dont-mind" } },
] as const satisfies readonly GivenSubject[];

type Known = Readonly<Record<string, unknown>>;
const partKinds = Object.keys(partNames) as BuildPartKind[];

/** Facts by path as a subject; a part of which nothing is known is one nobody has spoken of. */
function subjectFrom(known: Known, states: Readonly<Record<string, "open" | "none" | "have">>, given: GivenSubject) {
	const under = (root: string) => {
		const entries = Object.entries(known).filter(([path]) => path.startsWith(`${root}.`));
		return entries.reduce<object>((into, [path, value]) => putAt(into, path.split(".").slice(1), value), {});
	};
	const parts = Object.entries(states).map(([kind, state]) => [kind, state === "have" ? under(kind) : state] as const);
	const generations = known["platform.generations"];
	return subjectOf({
		...given,
		...Object.fromEntries(parts),
		board: under("board") as Partial<Board>,
		...(generations ? { platform: { generations } as GivenSubject["platform"] & object } : {}),
	});
}

function putAt(into: object, [key = "", ...rest]: readonly string[], value: unknown): object {
	const inner = ((into as Known)[key] ?? {}) as object;
	return { ...into, [key]: rest.length === 0 ? value : putAt(inner, rest, value) };
}

/** What a plan is made from. */
const planReads = [
	"board.cardSlots",
	"board.m2Sockets",
	"board.drivePorts",
	"board.sharing",
	"board.conditions",
	"board.chipsetUplink",
	"processor.series",
	"processor.generation",
	"processor.graphics",
	"graphicsCard.lanes",
	"graphicsCard.leastLanes",
	"graphicsCard.thicknessMm",
	"graphicsCard.lengthMm",
	"graphicsCard.bracketSlots",
	"graphicsCard.generation",
	"case.cardSlots",
	"case.uprightSlots",
];
/** What plugs in on headers is made from. */
const headersRead = [
	"board.headers.usb2",
	"board.headers.usb5",
	"board.headers.typeC",
	"board.headers.frontAudio",
	"board.headers.fans",
	"board.headers.lights",
	"case.frontPlugs",
	"case.hubUsesUsb2",
	"cooler.kind",
	"cooler.headersUsed.fan",
	"cooler.headersUsed.pump",
	"cooler.headersUsed.usb2",
	"cooler.headersUsed.lights5V",
	"cooler.headersUsed.lights12V",
];
/** What a processor takes. */
const loadReads = [
	"processor.sustainedW",
	"processor.baseW",
	"processor.peakW",
	"processor.averagingS",
	"processor.limitPolicy",
	"processor.unlocked",
];
/** Power and heat of a board. */
const powerReads = [
	...loadReads,
	"board.powerDelivery.advertised",
	"board.powerDelivery.coreStages",
	"board.powerDelivery.stageKind",
	"board.powerDelivery.stageRatingA",
	"board.powerDelivery.efficiencyPercent",
	"board.powerDelivery.highSwitchMohm",
	"board.powerDelivery.lowSwitchMohm",
	"board.powerDelivery.lowSwitchesPerStage",
	"board.powerDelivery.switchingKhz",
	"board.powerDelivery.coilMohm",
	"board.powerDelivery.coilNh",
	"board.powerDelivery.heatSink",
	"board.powerDelivery.thermalResistanceKPerW",
	"board.powerDelivery.layers",
	"board.powerDelivery.copperOz",
	"board.powerDelivery.measurements",
	"case.frontOpen",
	"cooler.kind",
];
const measuredFrom: Readonly<Record<string, readonly string[]>> = {
	plan: planReads,
	headers: headersRead,
	power: powerReads,
	load: loadReads,
};
const madeFrom = (path: string) => measuredFrom[path.split(".")[0] ?? ""] ?? [path];
const readBy = (rule: Rule) =>
	[...new Set([...rule.reads, ...rule.mayRead].flatMap(madeFrom))].filter(
		(path) => path.includes(".") && !path.startsWith("wish."),
	);

function verdictOf(rule: Rule, known: Known, states: Parameters<typeof subjectFrom>[1], given: GivenSubject): Verdict {
	return runRule(rule, subjectFrom(known, states, given)).verdict;
}

/** More and less of the same facts; a part may be had in both, or in neither as nobody has said. */
const knowledgeFor = (rule: Rule, held: readonly string[]) =>
	fc
		.record({
			all: fc.record(
				Object.fromEntries(
					readBy(rule).map((path) => [path, fc.constantFrom(...(valuesOf[path] as readonly unknown[]))]),
				),
			),
			more: fc.record(Object.fromEntries(readBy(rule).map((path) => [path, fc.boolean()]))),
			less: fc.record(Object.fromEntries(readBy(rule).map((path) => [path, fc.boolean()]))),
			states: fc.record(
				Object.fromEntries(partKinds.map((kind) => [kind, fc.constantFrom("have", "have", "have", "open", "none")])),
			),
			unsaid: fc.subarray(partKinds),
			given: fc.constantFrom(...settings),
		})
		.map(({ all, more, less, states, unsaid, given }) => {
			const only = (keep: (path: string) => boolean) =>
				Object.fromEntries(Object.entries(all).filter(([path]) => keep(path))) as Known;
			const isMore = (path: string) => more[path] === true;
			const isUnsaid = (path: string) => unsaid.some((kind) => path.startsWith(`${kind}.`));
			return {
				given: given as GivenSubject,
				more: only(isMore),
				less: only((path) => isMore(path) && (held.includes(path) || (less[path] === true && !isUnsaid(path)))),
				statesMore: states as Record<string, "have">,
				// A part that is to be held as it is cannot be unsaid.
				statesLess: Object.fromEntries(
					Object.entries(states).filter(
						([kind]) => !unsaid.includes(kind as BuildPartKind) || held.some((path) => path.startsWith(`${kind}.`)),
					),
				) as Record<string, "have">,
			};
		});

const opposite = (one: Verdict, other: Verdict) =>
	(one === "fits" && other === "does-not-fit") || (one === "does-not-fit" && other === "fits");

test("every fact that a rule reads has values here", () => {
	const unlisted = allRules.flatMap(readBy).filter((path) => !Object.hasOwn(valuesOf, path));
	expect(unlisted).toEqual([]);
	expect(Object.keys(valuesOf).filter((path) => !allRules.some((rule) => readBy(rule).includes(path)))).toEqual([]);
});

describe.each(allRules)("$id", (rule) => {
	const granted = Object.keys(takenForGranted[rule.id] ?? {});

	test("finding out more turns no verdict round", () => {
		fc.assert(
			fc.property(knowledgeFor(rule, granted), ({ more, less, statesMore, statesLess, given }) => {
				const verdicts = [verdictOf(rule, less, statesLess, given), verdictOf(rule, more, statesMore, given)] as const;
				expect(opposite(...verdicts), verdicts.join(", then ")).toBe(false);
			}),
			{ numRuns: Number(process.env["RUNS"] ?? 250) },
		);
	});

	test.each(granted)("%s is taken for granted indeed", (path) => {
		const turned = fc
			.sample(knowledgeFor(rule, []), { numRuns: 20_000, seed: 1 })
			.some(({ more, statesMore, given }) => {
				const { [path]: dropped, ...less } = more;
				if (dropped === undefined) return false;
				return opposite(verdictOf(rule, less, statesMore, given), verdictOf(rule, more, statesMore, given));
			});
		expect(turned).toBe(true);
	});
});
