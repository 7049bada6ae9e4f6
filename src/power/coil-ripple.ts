/**
 * Peak-to-peak ripple of the current in one coil of a step-down converter.
 *
 * @returns amperes
 */
export function coilRippleAmps(converter: {
	readonly inputVolts: number;
	readonly outputVolts: number;
	readonly henry: number;
	readonly hertz: number;
}): number {
	const { inputVolts, outputVolts, henry, hertz } = converter;
	return (outputVolts * (1 - outputVolts / inputVolts)) / (henry * hertz);
}

/** Steps in which the voltage of the cores is gone through; ripple at the output has a low between every two phases. */
const dutySteps = 200;

/**
 * The least and the most of one coil's ripple that is left at the output, over a range of duties. See outputRippleShare.
 *
 * @param low @param high duties between 0 and 1
 */
export function outputRippleShares(phases: number, low: number, high: number): { low: number; high: number } {
	const shares = Array.from({ length: dutySteps + 1 }, (_, step) =>
		Math.max(0, outputRippleShare(phases, low + ((high - low) * step) / dutySteps)),
	);
	return { low: Math.min(...shares), high: Math.max(...shares) };
}

/**
 * How much of one coil's ripple is left at the output when phases take turns, 0 to 1. All of it cancels where the duty
 * times the number of phases is whole. Phases of the controller count: paired stages switch together.
 *
 * @param duty output over input voltage, between 0 and 1
 */
export function outputRippleShare(phases: number, duty: number): number {
	const whole = Math.floor(phases * duty);
	return (phases * (duty - whole / phases) * ((whole + 1) / phases - duty)) / (duty * (1 - duty));
}
