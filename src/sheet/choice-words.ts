import type { Comparison, Lead } from "../choose/comparison.ts";
import type { Sureness } from "../choose/how-sure.ts";
import type { Score } from "../choose/score.ts";
import { criterionById } from "../criteria/all-criteria.ts";
import { wholeParts } from "../maths/whole-parts.ts";
import { listed } from "./listed.ts";

const nameOf = (criterionId: string): string => criterionById(criterionId)?.name ?? criterionId;

/** So many sums stand in one sentence. */
const sumsASentence = 2;

/** Where the points of a board come from, in whole points that add up: "28 of 33 for steady power for hours, ...". */
export function pointsWords({ parts }: Pick<Score, "parts">): string {
	const most = wholeParts(parts.map(({ weight }) => 100 * weight));
	const exact = parts.map(({ weight, value }) => 100 * weight * value.mid);
	const got = wholeParts(exact, Math.round(exact.reduce((sum, points) => sum + points, 0)), most);
	const sums = parts
		.map(({ criterionId, weight }, index) => ({
			weight,
			words: `${got[index]} of ${most[index]} for ${nameOf(criterionId)}`,
		}))
		.sort((one, other) => other.weight - one.weight)
		.map(({ words }) => words);
	return sums
		.flatMap((_, index) => (index % sumsASentence === 0 ? [sums.slice(index, index + sumsASentence).join(", ")] : []))
		.join(". ");
}

const surenessWords: Readonly<Record<Exclude<Sureness, "too-close">, string>> = {
	clearly: "clearly ahead of",
	likely: "likely ahead of",
	slightly: "slightly ahead of",
};

/** Whole hundredths; never "100 of 100" or "0 of 100" where some draws turn out otherwise. */
export function ofHundred(share: number): number {
	return share >= 1 || share <= 0 ? Math.round(share * 100) : Math.min(99, Math.max(1, Math.round(share * 100)));
}

/**
 * How sure the lead is, and why: the word with its share, the fewest reasons that outweigh all against it, the largest
 * against it, what would turn it, and what it rests on. One sentence each.
 *
 * @param boardName of a board by its id
 */
export function leadWords(
	{ boardId, nearest, anyOf, restsOn }: Lead,
	boardName: (id: string) => string,
): readonly string[] {
	const name = boardName(boardId);
	if (!nearest) return [`${name} is the only board to compare, so there is nothing to be ahead of.`];
	const group = anyOf.map(boardName);
	const first =
		group.length > 1
			? [
					`Too close to call between ${few(group)}: by points alone any of these will do.`,
					`${name} stands first because it costs least of them. Before you choose, look at which processor and parts each of them suits.`,
				]
			: [standingWords(nearest, boardName)];
	return [...first, ...reasonsWords(nearest, boardName), ...turnWords(nearest, boardName), ...restsOnWords(restsOn)];
}

/** At most four names, and how many more there are. */
function few(names: readonly string[]): string {
	return names.length > 5 ? `${names.slice(0, 4).join(", ")} and ${names.length - 4} more` : listed(names);
}

/** "X is likely ahead of Y, the next. It has more points in 84 of 100 ways the open things can turn out." */
function standingWords({ boardId, otherId, ahead, sureness }: Comparison, boardName: (id: string) => string): string {
	const [name, other] = [boardName(boardId), boardName(otherId)];
	if (!ahead || sureness === "too-close") return `${name} and ${other} are too close to call.`;
	const often = ahead.share >= 1 ? "all" : `${ofHundred(ahead.share)} of 100`;
	return `${name} is ${surenessWords[sureness]} ${other}, the next. It has more points in ${often} tries with weights and unknown facts drawn by lot.`;
}

/** Why the one with more points has them, with whole points that add up to the gap. */
export function reasonsWords(
	{ boardId, otherId, gap, shownGap, contributions, enough, worst }: Comparison,
	boardName: (id: string) => string,
): readonly string[] {
	const [ahead, behind] = gap < 0 ? [otherId, boardId] : [boardId, otherId];
	const signed = contributions.map(({ points }) => (gap < 0 ? -points : points));
	// The two scores stand beside it, so it is their difference that is told.
	const total = Math.abs(shownGap);
	const whole = wholeParts(signed, total);
	const at = (id: string) => contributions.findIndex(({ criterionId }) => criterionId === id);
	const pluses = enough.filter((id) => (whole[at(id)] ?? 0) > 0);
	const minus = worst !== null && (whole[at(worst)] ?? 0) < 0 ? worst : null;
	if (total === 0 || pluses.length === 0)
		return [`${boardName(ahead)} and ${boardName(behind)} have about the same points.`];
	const told = new Set([...pluses, ...(minus ? [minus] : [])]);
	const rest = total - [...told].reduce((sum, id) => sum + (whole[at(id)] ?? 0), 0);
	const plus = listed(pluses.map((id) => `${nameOf(id)} (${whole[at(id)]} more)`));
	return [
		`${boardName(ahead)} has ${total} ${total === 1 ? "point" : "points"} more than ${boardName(behind)}, mainly for ${plus}.`,
		...(minus ? [`For ${nameOf(minus)} it has ${-(whole[at(minus)] ?? 0)} fewer.`] : []),
		...(rest === 0 ? [] : [`All else together makes ${Math.abs(rest)} ${rest > 0 ? "more" : "fewer"}.`]),
	];
}

/** Of a board that no allowed weights put first. */
export const neverFirst = "However you weigh what matters to you, another board has more points.";

/** The change of one importance that would turn the two round, where a person might have said so. */
function turnWords({ boardId, otherId, gap, turns }: Comparison, boardName: (id: string) => string): readonly string[] {
	if (!turns) return ["No change in how much one thing counts would turn the order of these two."];
	const other = boardName(gap < 0 ? boardId : otherId);
	const [now, at] = [Math.round(100 * turns.now), Math.round(100 * turns.at)];
	// A change too small to say in whole points is told by the word "too close" already.
	if (now === at) return [];
	return [
		`${other} would have more if ${nameOf(turns.criterionId)} counted for ${at > now ? "more" : "less"} than ${at} of 100; now that is ${now}.`,
	];
}

function restsOnWords({ placed, free }: Lead["restsOn"]): readonly string[] {
	if (placed.length === 0) return ["You have not said yet what matters to you, so every weight was tried."];
	if (free.length === 0) return ["This rests on what you said matters to you."];
	return [
		"This rests on what you said matters to you.",
		`Not weighed by you yet: ${free.length > 4 ? `${free.slice(0, 3).map(nameOf).join(", ")} and ${free.length - 3} more` : listed(free.map(nameOf))}.`,
	];
}
