import type { ScreenSize } from "../../src/screens/arrange.ts";

/** From the smallest that is drawn on to very large ones; 80x24 is what screens are designed for. */
const screenSizes: readonly ScreenSize[] = [
	{ columns: 40, rows: 12 },
	{ columns: 60, rows: 20 },
	{ columns: 80, rows: 24 },
	{ columns: 120, rows: 40 },
	{ columns: 200, rows: 60 },
];

/** Each with its name, such as 80x24, for tables of tests. */
export const bySize = screenSizes.map((size) => [`${size.columns}x${size.rows}`, size] as const);
