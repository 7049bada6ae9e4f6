import { expect, test } from "vitest";
import { activities, sessionLengths, summerRooms } from "../../src/parts/wants.ts";
import {
	activityLoad,
	ampleK,
	caseRiseK,
	clockRaise,
	comfortableC,
	holdingBackC,
	idleW,
	labelHeldAfterBoost,
	leastOfPeakHeld,
	peakOverBase,
	roomC,
	sessionMinutes,
	usualAveragingS,
	warmUpMinutes,
} from "../../src/reference/activity-loads.ts";

// From memory and common practice: no published source was found for these, so only what must hold of them is held.

test("every activity takes a share of full load, computing all of it, and none less than writing", () => {
	expect(Object.keys(activityLoad).sort()).toEqual([...activities].sort());
	for (const activity of activities) {
		expect(activityLoad[activity]).toBeGreaterThanOrEqual(activityLoad.writing);
		expect(activityLoad[activity]).toBeLessThanOrEqual(activityLoad.building);
	}
	expect(activityLoad.building).toBe(1);
	expect(activityLoad.writing).toBeGreaterThan(0);
	expect(activityLoad.games).toBeGreaterThan(0.5);
	expect(activityLoad.pictures).toBeGreaterThan(activityLoad.games);
});

test("sessions get longer in the order they are asked, and all day has no end", () => {
	const minutes = sessionLengths.map((length) => sessionMinutes[length]);
	expect([...new Set(minutes)].sort((one, other) => one - other)).toEqual(minutes);
	expect(sessionMinutes["all-day"]).toBe(Number.POSITIVE_INFINITY);
	expect(warmUpMinutes).toEqual({ low: 5, high: 15 });
	// A few minutes end while the board still warms up; after an hour next to nothing is left of it.
	expect(sessionMinutes.minutes).toBeLessThan(warmUpMinutes.high);
	expect(Math.exp(-sessionMinutes["an-hour"] / warmUpMinutes.high)).toBeLessThan(0.02);
});

test("rooms are as warm as their answers say: about 25, 30 and 35 degrees C", () => {
	expect(summerRooms.map((room) => roomC[room])).toEqual([25, 30, 35]);
});

test("the more closed the front, the warmer inside", () => {
	expect(caseRiseK.mesh).toBeGreaterThan(0);
	expect(caseRiseK.slits).toBeGreaterThan(caseRiseK.mesh);
	expect(caseRiseK.solid).toBeGreaterThan(caseRiseK.slits);
});

test("the lines stand in their order, far above any air", () => {
	expect(comfortableC).toBe(90);
	expect(holdingBackC).toBe(105);
	expect(holdingBackC).toBeGreaterThan(comfortableC);
	expect(ampleK).toBeGreaterThan(0);
	expect(roomC["fan-on"] + caseRiseK.solid).toBeLessThan(comfortableC - ampleK - 20);
});

test("limits of a processor: what is guessed goes up, what is held stays below the peak", () => {
	expect(peakOverBase.low).toBeGreaterThan(1);
	expect(peakOverBase.high).toBeGreaterThan(peakOverBase.low);
	expect(leastOfPeakHeld).toBeGreaterThan(0.5);
	expect(leastOfPeakHeld).toBeLessThan(1);
	// A tenth more than the label is less than the least peak over it.
	expect(labelHeldAfterBoost).toBeGreaterThan(1);
	expect(labelHeldAfterBoost).toBeLessThan(peakOverBase.low);
	expect(usualAveragingS).toEqual({ low: 28, high: 56 });
	expect(idleW).toBeGreaterThan(0);
	expect(clockRaise.low).toBeGreaterThan(1);
	expect(clockRaise.high).toBeGreaterThan(clockRaise.low);
});
