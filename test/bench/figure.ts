/** What a bench has measured. */
export interface Figure {
	readonly name: string;
	readonly value: number;
	readonly unit: string;
	/** The same unit, in the same run. */
	readonly reference?: number;
	readonly referenceWork?: string;
	/** Of value and reference, the one way or the other. */
	readonly ratio?: number;
	/** How far the answers of the two lie apart at most. */
	readonly greatestGapInPoints?: number;
	/** The most that the value may be, or the ratio where it says so; null where none is set. */
	readonly limit: number | null;
	readonly limitIs?: "of ratio";
}

/** Prints a figure as one line of JSON, with whether it is within its limit; numbers have three digits that count. */
export function printFigure({ limit, ...measured }: Figure): void {
	const limited = measured.limitIs === "of ratio" ? (measured.ratio ?? Number.NaN) : measured.value;
	const met = limit === null ? null : limited <= limit;
	console.log(JSON.stringify({ ...measured, limit, met }, (_, given) => rounded(given)));
}

function rounded(given: unknown): unknown {
	return typeof given === "number" ? Number(given.toPrecision(3)) : given;
}
