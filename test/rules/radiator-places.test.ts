import { describe, expect, test } from "vitest";
import { isThinEnough, listsLength, type RadiatorPlace, radiatorPlacesFor } from "../../src/rules/radiator-places.ts";

const front: RadiatorPlace = { place: "front", lengthsMm: [280, 360], maxThicknessMm: 60 };
const top: RadiatorPlace = { place: "top", lengthsMm: [240] };
const placesFor = (radiatorMm: number) => radiatorPlacesFor([front, top], radiatorMm).map(({ place }) => place);

describe("places for a length", () => {
	test("the very length listed", () => {
		expect(placesFor(360)).toEqual(["front"]);
		expect(placesFor(280)).toEqual(["front"]);
	});

	test("a longer one for fans of the same width is listed", () => {
		expect(placesFor(240)).toEqual(["front", "top"]);
		expect(placesFor(140)).toEqual(["front"]);
		expect(placesFor(120)).toEqual(["front", "top"]);
	});

	test("a longer one for other fans says nothing", () => {
		expect(radiatorPlacesFor([{ place: "top", lengthsMm: [280] }], 240)).toEqual([]);
		expect(radiatorPlacesFor([{ place: "top", lengthsMm: [360] }], 280)).toEqual([]);
	});

	test("a shorter one, or a length of no usual fan, is not enough", () => {
		expect(placesFor(480)).toEqual([]);
		expect(placesFor(250)).toEqual([]);
		expect(radiatorPlacesFor([{ place: "side", lengthsMm: [250] }], 250)).toHaveLength(1);
	});
});

test("a place names this very length, or only a longer one", () => {
	expect(listsLength(front, 360)).toBe(true);
	expect(listsLength(front, 240)).toBe(false);
});

test("thin enough up to what the place takes; unknown is not yes", () => {
	expect([60, 60.5, undefined].map((thicknessMm) => isThinEnough(front, thicknessMm))).toEqual([
		true,
		false,
		undefined,
	]);
	expect([80, undefined].map((thicknessMm) => isThinEnough(top, thicknessMm))).toEqual([true, true]);
});
