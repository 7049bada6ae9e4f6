import { editDistance } from "./edit-distance.ts";

/**
 * The known words a mistyped one may have meant, nearest first, equals in the order given. Case does not count.
 * One slip is allowed for every three letters of the longer word, but always one and never more than three: beyond
 * that a suggestion puzzles more than it helps (this project's own convention).
 *
 * @param most how many to give back at the most
 */
export function nearestWords(word: string, candidates: readonly string[], most = 3): string[] {
	const typed = word.toLowerCase();
	if (typed === "") return [];
	return [...new Set(candidates)]
		.map((candidate) => ({ candidate, distance: editDistance(typed, candidate.toLowerCase()) }))
		.filter(({ candidate, distance }) => distance <= allowedSlips(typed, candidate))
		.sort((one, other) => one.distance - other.distance)
		.slice(0, most)
		.map(({ candidate }) => candidate);
}

function allowedSlips(typed: string, candidate: string): number {
	const letters = Math.max(typed.length, candidate.length);
	return Math.min(3, Math.max(1, Math.floor(letters / 3)));
}
