import type { PartKind } from "./part-kinds.ts";

/** Facts that the program keeps for itself. */
export const leftOutOfForms: ReadonlySet<string> = new Set(["id", "invented", "evidence"]);

/** Lists in which the same thing may stand twice: two plugs of a kind are two plugs. */
export const mayRepeat: ReadonlySet<string> = new Set([
	"processorPlugs",
	"powerPlugs",
	"pictureSockets",
	"sockets",
	"rearOld",
]);

/** Names of the few facts inside groups that have none of their own. */
export const extraTitles: Readonly<Record<string, string>> = {
	on: "What is on then, with how many lanes",
	processorSeries: "Processor series",
	processorGenerations: "Processor generations",
	processorGraphics: "Processors with graphics of their own",
};

/** The facts of each kind that decide most, in the order they are asked. */
export const leadingFacts: Readonly<Record<PartKind, readonly string[]>> = {
	board: [
		"name",
		"socket",
		"chipset",
		"form",
		"memory.type",
		"memory.slots",
		"memory.maxGb",
		"power.processorPlugs",
		"cardSlots",
		"m2Sockets",
		"drivePorts",
		"rearUsb",
		"pictureSockets",
		"wireless",
		"headers.fans",
		"headers.usb5",
		"headers.typeC",
		"recovery.flashWithoutProcessor",
		"price",
	],
	processor: [
		"name",
		"socket",
		"generation",
		"graphics",
		"baseW",
		"peakW",
		"memory.types",
		"lanes.graphics",
		"coolerInBox",
		"price",
	],
	case: [
		"name",
		"boardForms",
		"cardMaxLengthMm",
		"coolerMaxHeightMm",
		"cardSlots",
		"supplyForms",
		"supplyMaxLengthMm",
		"frontPlugs",
		"fanPlaces",
		"radiatorPlaces",
		"driveBays.inch35",
		"driveBays.inch25",
		"price",
	],
	graphicsCard: [
		"name",
		"lengthMm",
		"thicknessMm",
		"bracketSlots",
		"heightMm",
		"lanes",
		"powerPlugs",
		"watts",
		"pictureSockets",
		"price",
	],
	memory: ["name", "type", "form", "modules", "gbPerModule", "mtPerS", "heightMm", "errorCorrection", "price"],
	drive: ["name", "shape", "link", "lengthMm", "key", "lanes", "generation", "gb", "price"],
	addInCard: ["name", "use", "bus", "lanes", "leastLanes", "bracketSlots", "lengthMm", "usesUsb2", "price"],
	cooler: ["name", "kind", "kits", "heightMm", "radiatorMm", "publishedW", "fans", "price"],
	supply: ["name", "watts", "form", "mainPlug", "processorPlugs", "graphics8Pin", "sataPlugs", "drivePlugs", "price"],
	fans: ["name", "sizeMm", "count", "plug", "amps", "lightVolts", "price"],
	lighting: ["name", "volts", "plug", "lights", "amps", "price"],
	monitor: ["name", "sockets", "columns", "lines", "hz"],
	platform: ["name", "socket", "chipset", "generations"],
};
