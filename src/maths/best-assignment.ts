/** Gains in order of weight: the first that differs decides, however much the later ones differ. */
export type Gains = readonly number[];

/** Above zero where `one` is worth more, below where `other` is, 0 where they are worth the same. */
export function compareGains(one: Gains, other: Gains): number {
	for (let index = 0; index < Math.max(one.length, other.length); index++) {
		const difference = (one[index] ?? 0) - (other[index] ?? 0);
		if (difference !== 0) return difference;
	}
	return 0;
}

/** The gains of both together. */
export function addGains(one: Gains, other: Gains): Gains {
	const sum: number[] = [];
	for (let at = 0; at < Math.max(one.length, other.length); at++) sum.push((one[at] ?? 0) + (other[at] ?? 0));
	return sum;
}

/** What nothing at all gains. */
export const noGains: Gains = [];

export interface Assignment {
	/** For each thing the index of its place, or null where it goes nowhere. */
	readonly placeOf: readonly (number | null)[];
	readonly gains: Gains;
}

/**
 * Gives things places, no place twice, so that the sum of all gains is the largest there is. A thing may also go
 * nowhere, which gains nothing.
 *
 * @param gains `gains[thing][place]`; null where the thing does not go there. All rows have the same length.
 *
 * Hungarian method with potentials and shortest augmenting paths (from memory: Kuhn 1955, Munkres 1957). It only adds,
 * subtracts and compares, and lists of numbers compared by their first difference add up and keep their order like
 * numbers do, so it is exact for them too. Time: things squared x places.
 */
export function bestAssignment(gains: readonly (readonly (Gains | null)[])[]): Assignment {
	const things = gains.length;
	const places = gains[0]?.length ?? 0;
	const columns = places + things;
	const deciding = decidingGoals(gains);
	const size = deciding.length + 1;
	const costs = costsOf(gains, deciding, columns);
	const thingPotential = vectors(things + 1, size);
	const placePotential = vectors(columns + 1, size);
	const least = vectors(columns + 1, size);
	const thingAt = new Array<number>(columns + 1).fill(0);
	const cameFrom = new Array<number>(columns + 1).fill(0);
	const step = new Float64Array(size);
	for (let thing = 1; thing <= things; thing++) {
		thingAt[0] = thing;
		const isReached = new Array<boolean>(columns + 1).fill(false);
		const isSeen = new Array<boolean>(columns + 1).fill(false);
		let column = 0;
		do {
			isReached[column] = true;
			const holder = thingAt[column] as number;
			let next = 0;
			for (let other = 1; other <= columns; other++) {
				if (isReached[other]) continue;
				const known = least[other] as Float64Array;
				const [ofThing, ofPlace] = [thingPotential[holder] as Float64Array, placePotential[other] as Float64Array];
				const from = ((holder - 1) * columns + other - 1) * size;
				let order = isSeen[other] ? 0 : -1;
				for (let at = 0; at < size; at++) {
					const now = (costs[from + at] as number) - (ofThing[at] as number) - (ofPlace[at] as number);
					if (order === 0) order = now - (known[at] as number);
					if (order > 0) break;
					if (order < 0) {
						// Whatever stood in front was equal, so only the rest is written.
						known[at] = now;
					}
				}
				if (order < 0) {
					isSeen[other] = true;
					cameFrom[other] = column;
				}
				if (next === 0 || isLess(known, least[next] as Float64Array)) next = other;
			}
			step.set(least[next] as Float64Array);
			for (let other = 0; other <= columns; other++) {
				if (isReached[other]) {
					addTo(thingPotential[thingAt[other] as number] as Float64Array, step, 1);
					addTo(placePotential[other] as Float64Array, step, -1);
				} else if (isSeen[other]) addTo(least[other] as Float64Array, step, -1);
			}
			column = next;
		} while (thingAt[column] !== 0);
		while (column !== 0) {
			const before = cameFrom[column] as number;
			thingAt[column] = thingAt[before] as number;
			column = before;
		}
	}
	const placeOf = new Array<number | null>(things).fill(null);
	for (let place = 0; place < places; place++) {
		const thing = (thingAt[place + 1] as number) - 1;
		if (thing >= 0 && gains[thing]?.[place]) placeOf[thing] = place;
	}
	const total = placeOf.reduce<Gains>(
		(sum, place, thing) => (place === null ? sum : addGains(sum, gains[thing]?.[place] ?? noGains)),
		noGains,
	);
	return { placeOf, gains: total };
}

/** The places in the lists of gains that are not 0 for all. */
function decidingGoals(gains: readonly (readonly (Gains | null)[])[]): readonly number[] {
	const isDeciding: boolean[] = [];
	for (const row of gains)
		for (const one of row)
			one?.forEach((gain, at) => {
				if (gain !== 0) isDeciding[at] = true;
			});
	return [...isDeciding.keys()].filter((at) => isDeciding[at]);
}

/**
 * Gains turned round, thing by thing and place by place, those of going nowhere behind. In front of each list stands
 * whether the way is barred, which outweighs everything.
 */
function costsOf(
	gains: readonly (readonly (Gains | null)[])[],
	deciding: readonly number[],
	columns: number,
): Float64Array {
	const size = deciding.length + 1;
	const costs = new Float64Array(gains.length * columns * size);
	gains.forEach((row, thing) => {
		row.forEach((one, place) => {
			const from = (thing * columns + place) * size;
			if (!one) costs[from] = 1;
			else
				deciding.forEach((goal, at) => {
					costs[from + at + 1] = -(one[goal] ?? 0);
				});
		});
	});
	return costs;
}

function vectors(count: number, size: number): readonly Float64Array[] {
	return Array.from({ length: count }, () => new Float64Array(size));
}

function isLess(one: Float64Array, other: Float64Array): boolean {
	for (let at = 0; at < one.length; at++) {
		const difference = (one[at] as number) - (other[at] as number);
		if (difference !== 0) return difference < 0;
	}
	return false;
}

function addTo(vector: Float64Array, step: Float64Array, factor: 1 | -1): void {
	for (let at = 0; at < vector.length; at++) vector[at] = (vector[at] as number) + factor * (step[at] as number);
}
