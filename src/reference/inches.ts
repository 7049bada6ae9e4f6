/** Inches in millimetres: 25.4 exactly, by definition. Rounded to a millionth to shed binary noise (4.9 in = 124.46). */
export function mmOfInches(inches: number): number {
	return Math.round(inches * 25.4 * 1e6) / 1e6;
}

/** Millimetres in inches, unrounded. */
export function inchesOfMm(mm: number): number {
	return mm / 25.4;
}
