import { expect, test } from "vitest";
import { sataRate } from "../../src/reference/sata-rate.ts";

// The code's share, eight bits of ten, is from memory.
test("eight bits of ten are data: 600 MB/s of the line's 750", () => {
	expect(sataRate.payloadMBytesPerSecond).toBe(600);
	expect(sataRate.payloadMBytesPerSecond / ((sataRate.lineGbitsPerSecond * 1000) / 8)).toBeCloseTo(0.8, 12);
});
