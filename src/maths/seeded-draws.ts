import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/**
 * So many draws are thrown away first. A small seed leaves most bits of the generator's state at 0: the first draw is
 * then close to 1 for every seed, and the second still falls into a pattern.
 */
const droppedDraws = 64;

/**
 * A generator of numbers from 0 to below 1, each as likely as any other. A seed gives the same numbers on every machine
 * (xoroshiro128+ in whole numbers, 53 bits a draw).
 *
 * @param seed a whole number from -2^31 to 2^32 - 1
 * @throws RangeError for any other seed, since it would quietly be taken for another one
 */
export function seededDraws(seed: number): () => number {
	if (!Number.isInteger(seed) || seed < -(2 ** 31) || seed >= 2 ** 32)
		throw new RangeError(`a seed must be a whole number of 32 bits, not ${seed}`);
	const generator = xoroshiro128plus(seed);
	const draw = () => uniformFloat64(generator);
	for (let dropped = 0; dropped < droppedDraws; dropped++) draw();
	return draw;
}
