import { expect, test } from "vitest";
import { activities, sessionLengths, summerRooms } from "../../src/parts/wants.ts";
import {
	activityLoad,
	caseRiseK,
	roomC,
	sessionMinutes,
	stageLimitC,
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
	expect(warmUpMinutes).toBeGreaterThanOrEqual(5);
	expect(warmUpMinutes).toBeLessThanOrEqual(15);
});

test("rooms are as warm as their answers say: about 25, 30 and 35 degrees C", () => {
	expect(summerRooms.map((room) => roomC[room])).toEqual([25, 30, 35]);
});

test("the more closed the front, the warmer inside; the stages' limit stays far above any air", () => {
	expect(caseRiseK.mesh).toBeGreaterThan(0);
	expect(caseRiseK.slits).toBeGreaterThan(caseRiseK.mesh);
	expect(caseRiseK.solid).toBeGreaterThan(caseRiseK.slits);
	expect(stageLimitC).toBeGreaterThanOrEqual(105);
	expect(stageLimitC).toBeLessThanOrEqual(110);
	expect(roomC["fan-on"] + caseRiseK.solid).toBeLessThan(stageLimitC - 40);
});
