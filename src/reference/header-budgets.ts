import type { SourceId } from "./sources.ts";

/** What a fan header gives where the manual is silent, in A. Manuals that were read say 1.5 to 3 A. */
export const silentFanHeader = { amps: 1, source: "common-practice" } as const satisfies {
	amps: number;
	source: SourceId;
};

/** What a usual case fan takes, in A. */
export const usualFan = { leastAmps: 0.1, mostAmps: 0.3, source: "from-memory" } as const satisfies {
	leastAmps: number;
	mostAmps: number;
	source: SourceId;
};

/** The most a 4-wire fan may take, in A: steady, and for one second at its start. */
export const anyFan = { steadyAmps: 1.5, startAmps: 2.2, source: "pwm-fans" } as const satisfies {
	steadyAmps: number;
	startAmps: number;
	source: SourceId;
};

/** How many fans one header feeds at a time. */
export interface FansFed {
	/** Whatever fans they are, as long as they keep to the 4-wire specification. */
	readonly surely: number;
	/** Usual case fans that take the most such fans do. */
	readonly usually: number;
	/** Usual case fans that take the least. */
	readonly atMost: number;
}

/** @param headerAmps what the header gives, in A */
export function fansFed(headerAmps: number): FansFed {
	return {
		surely: wholeIn(headerAmps, anyFan.steadyAmps),
		usually: wholeIn(headerAmps, usualFan.mostAmps),
		atMost: wholeIn(headerAmps, usualFan.leastAmps),
	};
}

/** What one single 5 V light takes at full white, in A: 20 mA a colour. */
export const whiteLight = { amps: 0.06, source: "unsigned-secondary-text" } as const satisfies {
	amps: number;
	source: SourceId;
};

/** How many single 5 V lights so many amperes feed at full white. */
export function lightsAtFullWhite(headerAmps: number): number {
	return wholeIn(headerAmps, whiteLight.amps);
}

/** What so many single 5 V lights take at full white, in A. */
export function whiteLightAmps(lights: number): number {
	return lights * whiteLight.amps;
}

/** How often one current goes into another. Counted in mA: in A, 0.1 goes into 0.3 only twice. */
function wholeIn(amps: number, each: number): number {
	return Math.floor(Math.round(amps * 1000) / Math.round(each * 1000));
}
