import type { Answers } from "../parts/answers-file.ts";
import type { Question } from "../questions/define-question.ts";

/**
 * How many of a hundred people can answer, by what has to be known for it (own convention: nobody has counted).
 * A first build is planned with a shop's page open, so a part in the hand or picked is told by nearly all; what only a
 * manual or a look into the case tells, by fewer.
 */
const chances = {
	/** What one likes, and how much something matters: known without looking anything up. */
	wish: 0.95,
	/** Money, use, and what stands on the desk. */
	life: 0.9,
	/** A part by its name: on its box, or on the order. */
	part: 0.85,
	/** A count that takes a look into the case or at a page. */
	count: 0.75,
	/** A detail of a page or manual. */
	detail: 0.6,
} as const;

const details: ReadonlySet<string> = new Set(["fit/case-front", "fit/front-plugs", "features/router"]);
const counts: ReadonlySet<string> = new Set([
	"fit/memory-size",
	"fit/older-drives",
	"fit/old-things",
	"fit/return-until",
	"fit/screens",
	"features/case-fans",
	"features/lighting",
]);

/** So many answers weigh as much as what is usual for anybody (own convention). */
const usualAnswers = 4;

/**
 * The chance that this person can answer, 0 to 1: by the kind of question, and less for who was not sure often.
 *
 * @param answers of this person so far
 */
export function chanceToAnswer(question: Question, answers: Answers): number {
	return chances[kindOf(question)] * shareAnswered(answers);
}

function kindOf({ id, tier, partKind, kind }: Question): keyof typeof chances {
	if (details.has(id)) return "detail";
	if (counts.has(id)) return "count";
	if (partKind) return "part";
	if (tier === "about" || kind === "many" || kind === "number") return "life";
	return "wish";
}

/** One for who has answered all so far; it falls with each "not sure". */
function shareAnswered(answers: Answers): number {
	const dealtWith = Object.values(answers).filter(({ status }) => status !== "skipped");
	const answered = dealtWith.filter(({ status }) => status === "answered");
	return (answered.length + usualAnswers) / (dealtWith.length + usualAnswers);
}
