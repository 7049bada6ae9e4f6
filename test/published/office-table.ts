/**
 * The office choice of Goodwin & Wright, "Decision Analysis for Management Judgment", ch. 3, for several tests.
 * Columns: closeness, visibility, image, size, comfort, car parking, already from the most important to the least.
 * Read in the document: the weights and column A. The other cells are from memory; they agree with every figure read.
 */
export const officeWeights = [32, 26, 23, 10, 6, 3] as const;

export const offices = {
	A: [100, 60, 100, 75, 0, 90],
	B: [20, 80, 10, 30, 100, 30],
	C: [80, 70, 0, 0, 10, 100],
	D: [70, 50, 30, 55, 30, 90],
	E: [40, 60, 90, 100, 60, 70],
	F: [0, 0, 70, 0, 80, 0],
	G: [60, 100, 20, 50, 50, 80],
} as const;

export type Office = keyof typeof offices;
