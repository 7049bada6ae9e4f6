import { describe, expect, test } from "vitest";
import type { SessionLength } from "../../src/parts/wants.ts";
import { countedWatts } from "../../src/power/counted-watts.ts";
import { sessionMinutes, warmUpMinutes } from "../../src/reference/activity-loads.ts";

/** How far a board is warm after a session, in percent: what is counted of 100 W at full load. */
const warmPercent = (sessionLength: SessionLength) =>
	countedWatts({ sustainedW: 100, activities: ["building"], sessionLength })?.high ?? Number.NaN;

describe("step response of a first-order system, 1 - exp(-t / tau) (from memory, any control textbook)", () => {
	describe.each(["minutes", "an-hour"] as const)("reckoned from how warm a session of %s makes it", (length) => {
		const timeConstants = sessionMinutes[length] / warmUpMinutes;
		// What is still missing shrinks by the same factor in the same time, however long that is.
		const missing = 1 - warmPercent(length) / 100;

		test.each([
			[1, 63.2],
			[2, 86.5],
			[3, 95.0],
			[4, 98.2],
			[5, 99.3],
		])("after %i tau: %f %%", (wanted, percent) => {
			expect(100 * (1 - missing ** (wanted / timeConstants))).toBeCloseTo(percent, 1);
		});
	});

	test("less than one tau is less than 63.2 %, more than five is more than 99.3 %, without end is all", () => {
		expect(sessionMinutes.minutes).toBeLessThan(warmUpMinutes);
		expect(warmPercent("minutes")).toBeLessThan(63.2);
		expect(sessionMinutes["an-hour"]).toBeGreaterThan(5 * warmUpMinutes);
		expect(warmPercent("an-hour")).toBeGreaterThan(99.3);
		expect(warmPercent("all-day")).toBe(100);
	});
});
