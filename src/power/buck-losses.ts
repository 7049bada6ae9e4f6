/**
 * The losses of a step-down converter, term by term, as data sheets and application notes of such converters give them.
 * All in SI units: volts, amperes, ohms, seconds, hertz, coulombs, farads; every result in watts. Nothing is checked:
 * the numbers are those of a stage, and a stage has no negative ones.
 */

/** The square of a current's root mean square: its mean squared, and a triangular ripple's peak-to-peak squared / 12. */
export function rmsSquared(amps: number, rippleAmps = 0): number {
	return amps * amps + (rippleAmps * rippleAmps) / 12;
}

/** The high switch conducts for the part of the time that output is of input voltage (its duty). */
export function conductionHighW(ampsSquared: number, duty: number, ohm: number): number {
	return ampsSquared * ohm * duty;
}

/** The low switch conducts for the rest of the time. */
export function conductionLowW(ampsSquared: number, duty: number, ohm: number): number {
	return ampsSquared * ohm * (1 - duty);
}

/** While the high switch goes on and off it has voltage across it and current through it. `seconds`: rise and fall. */
export function switchingW(volts: number, amps: number, seconds: number, hertz: number): number {
	return 0.5 * volts * amps * seconds * hertz;
}

/** Seconds of rise and fall of a switch whose gate of so many farads is driven through so many ohms. */
export function gateSwitchingSeconds(gateOhm: number, gateFarad: number): number {
	return 4 * gateOhm * gateFarad;
}

/** While neither switch is on the current goes through a diode. `seconds`: both dead times of a cycle together. */
export function deadTimeW(diodeVolts: number, amps: number, seconds: number, hertz: number): number {
	return diodeVolts * amps * seconds * hertz;
}

/** Charging the gates once a cycle. `coulombs`: of all switches together. */
export function gateW(coulombs: number, driveVolts: number, hertz: number): number {
	return coulombs * driveVolts * hertz;
}

/** A diode in place of the low switch conducts for the rest of the time. */
export function diodeW(diodeVolts: number, amps: number, duty: number): number {
	return diodeVolts * amps * (1 - duty);
}

/** What a chip takes for itself. */
export function chipW(volts: number, amps: number): number {
	return volts * amps;
}

/** What a resistance turns into heat: a coil's wire, a capacitor's series resistance, a sense resistor. */
export function resistanceW(ampsSquared: number, ohm: number): number {
	return ampsSquared * ohm;
}

/** What the input capacitors carry, in A root mean square: the high switch takes the output current in pulses. */
export function inputRippleAmps(amps: number, duty: number): number {
	return amps * Math.sqrt(duty * (1 - duty));
}
