import type { SourceId } from "./sources.ts";

/** What is the same for every module of one memory generation. Modules of different generations never interchange. */
export type MemoryType = {
	readonly voltageV: number;
	readonly dimmContacts?: number;
	readonly soDimmContacts?: number;
	readonly source: SourceId;
	readonly contactsSource?: SourceId;
	readonly note?: string;
};

export type MemoryTypeName = "DDR3" | "DDR4" | "DDR5";

/** The memory generations of today's and yesterday's boards. A count of contacts that was read nowhere is absent. */
export const memoryTypes: Readonly<Record<MemoryTypeName, MemoryType>> = {
	DDR3: { voltageV: 1.5, source: "unsigned-secondary-text", note: "low-voltage modules: 1.35 V" },
	DDR4: {
		voltageV: 1.2,
		dimmContacts: 288,
		soDimmContacts: 260,
		source: "unsigned-secondary-text",
		contactsSource: "from-memory",
		note: "one secondary text gives 256 contacts for a SO-DIMM; 260 is in use",
	},
	DDR5: {
		voltageV: 1.1,
		dimmContacts: 288,
		soDimmContacts: 262,
		source: "jesd79-5",
		contactsSource: "from-memory",
		note: "a module has two independent 32-bit sub-channels, so some readers show two channels; it is one 64-bit channel. The 262 contacts of a SO-DIMM were read in a board manual.",
	},
};

/** Bytes one channel moves at a time: the data bus is 64 bits wide. */
const channelBytes = 8;

/**
 * The most a set of memory channels can carry, in GB/s (10^9 bytes): 8 bytes x MT/s x channels.
 * Source: a server's product guide, p. 175 ("8-byte primary data bus").
 */
export function memoryGBytesPerSecond(mtPerS: number, channels: number): number {
	return (channelBytes * mtPerS * channels) / 1000;
}
