import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { warmedUp } from "../../src/power/heat-path.ts";
import { sessionMinutes, warmUpMinutes } from "../../src/reference/activity-loads.ts";

describe("step response of a first-order system, 1 - exp(-t / tau) (from memory, any control textbook)", () => {
	describe.each([1, warmUpMinutes.low, 10, warmUpMinutes.high, 60])("tau %i minutes", (timeConstant) => {
		test.each([
			[0, 0],
			[1, 63.2],
			[2, 86.5],
			[3, 95.0],
			[4, 98.2],
			[5, 99.3],
		])("after %i tau: %f %%", (times, percent) => {
			expect(100 * warmedUp(times * timeConstant, timeConstant)).toBeCloseTo(percent, 1);
		});

		test("without end: all", () => {
			expect(warmedUp(Number.POSITIVE_INFINITY, timeConstant)).toBe(1);
		});
	});
});

// Worked out for this project from what a time constant means; no published source.
describe("a body that takes up heat, step by step (worked out)", () => {
	test("in each moment it goes the part of the rest that the moment is of its time constant", () => {
		for (const timeConstant of [warmUpMinutes.low, warmUpMinutes.high]) {
			const step = timeConstant / 10_000;
			let warm = 0;
			for (let count = 1; count <= 60_000; count++) {
				warm += (step / timeConstant) * (1 - warm);
				if (count % 5_000 === 0) expect(warmedUp(count * step, timeConstant)).toBeCloseTo(warm, 3);
			}
		}
	});

	test("what is still missing shrinks by the same factor in the same time, however warm it is", () => {
		const minutes = fc.double({ min: 0, max: 60, noNaN: true });
		fc.assert(
			fc.property(minutes, minutes, fc.double({ min: 1, max: 30, noNaN: true }), (first, then, timeConstant) => {
				const missing = (time: number) => 1 - warmedUp(time, timeConstant);
				expect(missing(first + then)).toBeCloseTo(missing(first) * missing(then), 12);
			}),
		);
	});
});

describe("how warm a board gets in a session, between its two time constants (worked out with the table above)", () => {
	test("some minutes: less than two of the quick one, less than one of the slow one", () => {
		expect(sessionMinutes.minutes).toBeLessThan(2 * warmUpMinutes.low);
		expect(100 * warmedUp(sessionMinutes.minutes, warmUpMinutes.low)).toBeLessThan(86.5);
		expect(100 * warmedUp(sessionMinutes.minutes, warmUpMinutes.high)).toBeLessThan(63.2);
	});

	test("an hour: four of the slow one, 98.2 %", () => {
		expect(100 * warmedUp(sessionMinutes["an-hour"], warmUpMinutes.high)).toBeCloseTo(98.2, 1);
	});

	test("all day: wholly, with either", () => {
		for (const timeConstant of [warmUpMinutes.low, warmUpMinutes.high])
			expect(warmedUp(sessionMinutes["all-day"], timeConstant)).toBe(1);
	});
});
