import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	chipW,
	conductionHighW,
	conductionLowW,
	deadTimeW,
	diodeW,
	gateSwitchingSeconds,
	gateW,
	resistanceW,
	rmsSquared,
	switchingW,
} from "../../src/power/buck-losses.ts";

// The figures of data sheets are in test/published/buck-losses.test.ts.

const positive = fc.double({ min: 1e-3, max: 100, noNaN: true });
const duty = fc.double({ min: 0, max: 1, noNaN: true });

/** Whether two figures are the same but for so large a part of them. */
function agree(one: number, other: number, part = 1e-12): void {
	expect(Math.abs(one - other)).toBeLessThanOrEqual(part * Math.max(Math.abs(one), Math.abs(other)));
}

describe.each<[string, (one: number, two: number, three: number, four: number) => number, number]>([
	["switching", switchingW, 4],
	["dead time", deadTimeW, 4],
	["gates", gateW, 3],
	["chip", chipW, 2],
	["resistance", resistanceW, 2],
	["seconds of switching", gateSwitchingSeconds, 2],
])("%s", (_, loss, length) => {
	const values = fc.tuple(positive, positive, positive, positive);

	test("grows in proportion to each of its numbers", () => {
		fc.assert(
			fc.property(values, fc.nat(length - 1), fc.double({ min: 0.1, max: 10, noNaN: true }), (all, at, factor) => {
				const changed = all.with(at, (all[at] as number) * factor) as typeof all;
				agree(loss(...changed), factor * loss(...all));
			}),
		);
	});

	test("is nothing where any of them is nothing", () => {
		fc.assert(
			fc.property(values, fc.nat(length - 1), (all, at) => {
				expect(loss(...(all.with(at, 0) as typeof all))).toBe(0);
				expect(loss(...all)).toBeGreaterThan(0);
			}),
		);
	});
});

describe("conduction", () => {
	test("of both switches is that of one resistance all the time, if theirs are alike", () => {
		fc.assert(
			fc.property(positive, duty, positive, (ampsSquared, on, ohm) => {
				const both = conductionHighW(ampsSquared, on, ohm) + conductionLowW(ampsSquared, on, ohm);
				agree(both, resistanceW(ampsSquared, ohm));
			}),
		);
	});

	test("never on, no loss of the high switch; always on, none of the low switch or the diode", () => {
		expect(conductionHighW(400, 0, 0.005)).toBe(0);
		expect(conductionLowW(400, 0, 0.005)).toBe(2);
		expect(conductionHighW(400, 1, 0.005)).toBe(2);
		expect(conductionLowW(400, 1, 0.005)).toBe(0);
		expect(diodeW(0.5, 20, 1)).toBe(0);
		expect(diodeW(0.5, 20, 0)).toBe(10);
	});

	// The current is walked through one period: up while the high switch is on, down while the low one is.
	test("is the mean of current squared times resistance over one period", () => {
		const samples = 100_000;
		fc.assert(
			fc.property(
				fc.double({ min: 1, max: 60, noNaN: true }),
				fc.double({ min: 0, max: 30, noNaN: true }),
				fc.double({ min: 0.05, max: 0.95, noNaN: true }),
				(amps, ripple, on) => {
					let [high, low] = [0, 0];
					for (let index = 0; index < samples; index++) {
						const time = (index + 0.5) / samples;
						const rise = time < on ? time / on : (1 - time) / (1 - on);
						const squared = (amps + ripple * (rise - 0.5)) ** 2;
						if (time < on) high += squared / samples;
						else low += squared / samples;
					}
					agree(conductionHighW(rmsSquared(amps, ripple), on, 0.004), 0.004 * high, 2e-3);
					agree(conductionLowW(rmsSquared(amps, ripple), on, 0.007), 0.007 * low, 2e-3);
					agree(rmsSquared(amps, ripple), high + low, 1e-6);
				},
			),
			{ numRuns: 50 },
		);
	});
});

test("a current without ripple has its own square, a ripple alone a twelfth of its square", () => {
	expect(rmsSquared(15)).toBe(225);
	expect(rmsSquared(0, 6)).toBe(3);
	expect(rmsSquared(0)).toBe(0);
});
