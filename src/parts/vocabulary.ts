/** Names of open standards and of the trade that more than one part uses. Each list is the whole choice. */
export const boardForms = [
	"Mini-ITX",
	"Mini-DTX",
	"DTX",
	"FlexATX",
	"microATX",
	"ATX",
	"E-ATX",
	"SSI CEB",
	"SSI EEB",
] as const;
export type BoardForm = (typeof boardForms)[number];

/** The mounting holes with a known place. There is no I; D and E belong to older boards, and their place was not read. */
export const holeLetters = ["A", "B", "C", "F", "G", "H", "J", "K", "L", "M", "R", "S"] as const;
export type HoleLetter = (typeof holeLetters)[number];

export const memoryTypes = ["DDR3", "DDR4", "DDR5"] as const;
export type MemoryType = (typeof memoryTypes)[number];

export const memoryForms = ["DIMM", "SO-DIMM", "CAMM2"] as const;

export const pictureSockets = ["HDMI", "DisplayPort", "USB-C", "DVI", "VGA"] as const;
export type PictureSocket = (typeof pictureSockets)[number];

/** 12 V plugs that feed the processor; "4+4" of a supply is an 8-pin that splits. */
export const processorPlugs = ["4-pin", "8-pin"] as const;
export type ProcessorPlug = (typeof processorPlugs)[number];

export const supplyForms = ["ATX", "SFX", "SFX-L", "TFX", "Flex ATX"] as const;

/** Places in a case where fans and radiators go. */
export const casePlaces = ["front", "top", "rear", "bottom", "side", "inside"] as const;

export const wirelessStandards = ["Wi-Fi 4", "Wi-Fi 5", "Wi-Fi 6", "Wi-Fi 6E", "Wi-Fi 7", "Wi-Fi 8"] as const;

/** PCI Express generations; 7 is the newest published when this was written. */
export const linkGenerations = { least: 1, most: 7 } as const;
