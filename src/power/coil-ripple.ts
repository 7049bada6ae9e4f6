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
