/** What an alternative has of one criterion. `low` and `high` alike make it known. */
export interface SampledPart {
	readonly low: number;
	readonly high: number;
	/** A whole number, of which 32 bits count. Equal streams give equal draws: one unknown fact that several share. */
	readonly stream: number;
}

const betweenDraws = 0x9e3779b9;

/**
 * The weighted sum of one alternative's parts in each sample. A part that is not known is anywhere between its ends,
 * each place as likely, drawn as a pure function of its stream and the sample. The draw of sample s and that of sample
 * s + half the number of samples add up to 1, so that the draws' mean is exactly one half.
 *
 * @param weights one column a criterion
 * @param states one list of parts, one a criterion, for each state the world may be in; null where the alternative is
 *   out, which is worth 0
 * @param stateOfSample the index of each sample's state; null where there is one state
 * @throws RangeError if lengths do not agree, an interval runs backwards, or a sample has a state that is not listed
 */
export function sampledValues(
	weights: readonly Float64Array[],
	states: readonly (readonly SampledPart[] | null)[],
	stateOfSample: Uint8Array | null,
): Float64Array {
	throwUnlessAgreed(weights, states, stateOfSample);
	const values = new Float64Array(stateOfSample?.length ?? weights[0]?.length ?? 0);
	const present = states.filter((state) => state !== null);
	const known: Term[] = [];
	weights.forEach((column, criterion) => {
		const parts = present.map((state) => state[criterion] as SampledPart);
		const [first, ...others] = parts;
		if (!first) return;
		if (stateOfSample !== null && !others.every((part) => isSame(part, first)))
			addPartOfStates(
				values,
				column,
				states.map((state) => state?.[criterion] ?? null),
				stateOfSample,
			);
		else if (first.low === first.high) known.push({ column, value: first.low });
		else addRange(values, column, first);
	});
	for (let at = 0; at < known.length; at += 4) addTerms(values, known.slice(at, at + 4));
	if (stateOfSample !== null && present.length < states.length) {
		for (let sample = 0; sample < values.length; sample++)
			if (states[stateOfSample[sample] as number] === null) values[sample] = 0;
	}
	return values;
}

/** The same draws, whatever the stream, where the part is known. */
function isSame(one: SampledPart, other: SampledPart): boolean {
	return one.low === other.low && one.high === other.high && (one.low === one.high || one.stream === other.stream);
}

interface Term {
	readonly column: Float64Array;
	readonly value: number;
}

/** Four at a time, since most of the time goes into reading and writing the sums. */
function addTerms(values: Float64Array, terms: readonly Term[]): void {
	const nothing: Term = { column: terms[0]?.column ?? values, value: 0 };
	const { column: a, value: p } = terms[0] ?? nothing;
	const { column: b, value: q } = terms[1] ?? nothing;
	const { column: c, value: r } = terms[2] ?? nothing;
	const { column: d, value: s } = terms[3] ?? nothing;
	for (let at = 0; at < values.length; at++) {
		const sum = (values[at] as number) + p * (a[at] as number) + q * (b[at] as number);
		values[at] = sum + r * (c[at] as number) + s * (d[at] as number);
	}
}

function addRange(values: Float64Array, column: Float64Array, { low, high, stream }: SampledPart): void {
	const half = values.length >>> 1;
	const key = streamKey(stream);
	// The half is out of the draw and into the scale: low + span u is the middle + span (u - 1/2), and the draw that
	// belongs to it has the same distance to the other side. A draw has 32 bits, read as a whole number with sign.
	const [middle, step] = [(low + high) / 2, (high - low) / 2 ** 32];
	for (let at = 0; at < half; at++) {
		const away = (mixed(key + Math.imul(at, betweenDraws)) + 0.5) * step;
		values[at] = (values[at] as number) + (middle + away) * (column[at] as number);
		values[at + half] = (values[at + half] as number) + (middle - away) * (column[at + half] as number);
	}
	// Of an odd number, the last has none to belong to.
	for (let at = 2 * half; at < values.length; at++)
		values[at] = (values[at] as number) + middle * (column[at] as number);
}

function addPartOfStates(
	values: Float64Array,
	column: Float64Array,
	parts: readonly (SampledPart | null)[],
	stateOfSample: Uint8Array,
): void {
	const middles = Float64Array.from(parts, (part) => (part ? (part.low + part.high) / 2 : 0));
	const steps = Float64Array.from(parts, (part) => (part ? (part.high - part.low) / 2 ** 32 : 0));
	const keys = Int32Array.from(parts, (part) => (part ? streamKey(part.stream) : 0));
	const half = values.length >>> 1;
	for (let at = 0; at < values.length; at++) {
		const state = stateOfSample[at] as number;
		const step = steps[state] as number;
		let value = middles[state] as number;
		if (step > 0 && at < 2 * half) {
			const draw = at < half ? at : at - half;
			const away = (mixed((keys[state] as number) + Math.imul(draw, betweenDraws)) + 0.5) * step;
			value += at < half ? away : -away;
		}
		values[at] = (values[at] as number) + value * (column[at] as number);
	}
}

/** Far apart for neighbouring streams. */
function streamKey(stream: number): number {
	return mixed((stream | 0) ^ 0x5bd1e995);
}

/** Mixes 32 bits so that each bit given bears on each bit of the answer (finaliser of MurmurHash3, from memory). */
function mixed(bits: number): number {
	let hash = bits | 0;
	hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
	hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
	return hash ^ (hash >>> 16);
}

function throwUnlessAgreed(
	weights: readonly Float64Array[],
	states: readonly (readonly SampledPart[] | null)[],
	stateOfSample: Uint8Array | null,
): void {
	const samples = stateOfSample?.length ?? weights[0]?.length ?? 0;
	if (weights.some(({ length }) => length !== samples)) throw new RangeError("columns of different length");
	if (stateOfSample === null && states.length !== 1)
		throw new RangeError(`${states.length} states, and nothing says which sample is in which`);
	if (stateOfSample?.some((state) => state >= states.length))
		throw new RangeError(`a sample is in a state beyond the ${states.length} given`);
	for (const state of states) {
		if (state === null) continue;
		if (state.length !== weights.length) throw new RangeError(`${state.length} parts but ${weights.length} weights`);
		for (const { low, high } of state)
			if (!(low <= high)) throw new RangeError(`the interval runs backwards: ${low} to ${high}`);
	}
}
