import { expect, test } from "vitest";
import { noWants, wantNames, wantTitles } from "../../src/parts/wants.ts";

test("every want has a title of its own, small and without a full stop, as it stands in a list", () => {
	expect(Object.keys(wantTitles).sort()).toEqual([...wantNames].sort());
	expect(new Set(Object.values(wantTitles)).size).toBe(wantNames.length);
	for (const title of Object.values(wantTitles)) expect(title).toMatch(/^(?:[a-z]|USB )[^.]*$/);
});

test("before anybody has said anything, nothing is wanted", () => {
	expect(new Set(Object.values(noWants))).toEqual(new Set([null]));
});
