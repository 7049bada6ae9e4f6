import type { PcCase } from "../parts/case.ts";

export type RadiatorPlace = NonNullable<PcCase["radiatorPlaces"]>[number];

/** Widths in mm of the fans radiators are built from: a 240 mm radiator is two of 120 mm, a 280 mm one two of 140 mm. */
const fanWidthsMm = [120, 140, 92, 80] as const;

/**
 * The places of a case that take a radiator of this length: those that list it, and those that list only a longer one
 * for fans of the same width, since the screw slots are the same (common practice, no source). Thickness is not looked at.
 */
export function radiatorPlacesFor(places: readonly RadiatorPlace[], radiatorMm: number): readonly RadiatorPlace[] {
	const family = fanWidthMm(radiatorMm);
	return places.filter(({ lengthsMm }) =>
		lengthsMm.some(
			(listedMm) => listedMm === radiatorMm || (listedMm > radiatorMm && family && fanWidthMm(listedMm) === family),
		),
	);
}

/** Whether the place names this very length, not only a longer one. */
export function listsLength({ lengthsMm }: RadiatorPlace, radiatorMm: number): boolean {
	return lengthsMm.includes(radiatorMm);
}

/** Whether radiator and fans together are thin enough; undefined where the radiator's thickness must be known first. */
export function isThinEnough({ maxThicknessMm }: RadiatorPlace, thicknessMm: number | undefined): boolean | undefined {
	// A place that names lengths but no thickness takes radiators of the usual kind.
	if (maxThicknessMm === undefined) return true;
	return thicknessMm === undefined ? undefined : thicknessMm <= maxThicknessMm;
}

function fanWidthMm(lengthMm: number): number | undefined {
	return fanWidthsMm.find((widthMm) => lengthMm % widthMm === 0);
}
