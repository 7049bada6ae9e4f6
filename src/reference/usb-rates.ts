import type { SourceId } from "./sources.ts";

/** A USB speed under the name it carries today. */
export type UsbRate = {
	readonly gbitsPerSecond: number;
	/** Names the same speed went by, or goes by. */
	readonly otherNames: readonly string[];
	/** True where the speed takes two lanes, and so a Type-C socket. */
	readonly needsTypeC: boolean;
	readonly source: SourceId;
	readonly note?: string;
};

export type UsbRateName =
	| "USB 1.1"
	| "USB 2.0"
	| "USB 5Gbps"
	| "USB 10Gbps"
	| "USB 20Gbps"
	| "USB 40Gbps"
	| "USB 80Gbps";

/** Slowest first. The rate is that of the line; what is left for data is less. */
export const usbRates: Readonly<Record<UsbRateName, UsbRate>> = {
	"USB 1.1": { gbitsPerSecond: 0.012, otherNames: [], needsTypeC: false, source: "usb-naming-guides" },
	"USB 2.0": { gbitsPerSecond: 0.48, otherNames: [], needsTypeC: false, source: "usb-naming-guides" },
	"USB 5Gbps": {
		gbitsPerSecond: 5,
		otherNames: ["USB 3.0", "USB 3.1 Gen 1", "USB 3.2 Gen 1", "USB 3.2 Gen 1x1"],
		needsTypeC: false,
		source: "usb-naming-guides",
		note: "8b/10b code leaves 500 MB/s for data (code from memory)",
	},
	"USB 10Gbps": {
		gbitsPerSecond: 10,
		otherNames: ["USB 3.2 Gen 2x1", "USB 3.2 Gen 2", "USB 3.1 Gen 2"],
		needsTypeC: false,
		source: "usb-naming-guides",
		note: "128b/132b code leaves 1212 MB/s for data (code from memory); the names without x1 are from memory",
	},
	"USB 20Gbps": {
		gbitsPerSecond: 20,
		otherNames: ["USB 3.2 Gen 2x2"],
		needsTypeC: true,
		source: "usb-cheat-sheet",
		note: "a drive of this speed on a 40Gbps socket may run at 10 (from memory): go by the modes both list",
	},
	"USB 40Gbps": { gbitsPerSecond: 40, otherNames: ["USB4"], needsTypeC: true, source: "usb-naming-guides" },
	"USB 80Gbps": {
		gbitsPerSecond: 80,
		otherNames: ["USB4 v2"],
		needsTypeC: true,
		source: "from-memory",
	},
};
