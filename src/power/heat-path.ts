/** Heat whose source warms the more heat it gives: watts = `fixedW` + `wattsPerC` x temperature of the source. */
export interface WarmingHeat {
	readonly fixedW: number;
	readonly wattsPerC: number;
}

/**
 * The temperature at which heat and cooling are even: air + resistance x heat, where the heat itself grows with the
 * temperature.
 *
 * @param airC air, in degrees C
 * @param kelvinPerWatt thermal resistance from the source to that air
 * @returns degrees C; infinite where each kelvin brings more heat than it carries off
 */
export function steadyTemperature(airC: number, kelvinPerWatt: number, heat: WarmingHeat): number {
	const gain = kelvinPerWatt * heat.wattsPerC;
	return gain >= 1 ? Number.POSITIVE_INFINITY : (airC + kelvinPerWatt * heat.fixedW) / (1 - gain);
}

/** Watts of heat that bring a source to a temperature through a thermal resistance: (T - air) / R. */
export function heatToReach(temperatureC: number, airC: number, kelvinPerWatt: number): number {
	return (temperatureC - airC) / kelvinPerWatt;
}

/** Thermal resistance of two ways side by side, in K/W; a way that is not there is infinite. */
export function sideBySide(one: number, other: number): number {
	return 1 / (1 / one + 1 / other);
}

/** How far a body has warmed up, 0 to 1: 1 - exp(-t / tau), the step response of a first-order system. */
export function warmedUp(minutes: number, timeConstantMinutes: number): number {
	return 1 - Math.exp(-minutes / timeConstantMinutes);
}
