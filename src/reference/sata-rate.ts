import type { SourceId } from "./sources.ts";

/**
 * Serial ATA: the line rate, and what its 8b/10b code leaves for data (the code is from memory).
 * A module socket may carry it too, but only if it is wired for it: that is a fact of the board.
 */
export const sataRate = {
	lineGbitsPerSecond: 6,
	payloadMBytesPerSecond: (6e9 * 0.8) / 8 / 1e6,
	source: "unsigned-secondary-text",
	payloadSource: "from-memory",
} as const satisfies {
	lineGbitsPerSecond: number;
	payloadMBytesPerSecond: number;
	source: SourceId;
	payloadSource: SourceId;
};
