import type { Answers } from "../parts/answers-file.ts";
import { type Build, type BuildFacts, emptyBuildFacts, mostWorlds, type World } from "../parts/build.ts";
import { allQuestions } from "./all-questions.ts";
import type { Possibility, QuestionContext } from "./define-question.ts";
import { withPlannedMoney } from "./planned-money.ts";

/**
 * Folds answers into a build. An answer that is not sure, skipped, not given, or no longer one the question can have
 * sets nothing; where all ways it may turn out can be listed, each becomes a possible world, up to 64 in all. A question
 * that would exceed that stays simply unknown.
 */
export function foldAnswers(answers: Answers, context: QuestionContext): Build {
	let facts = emptyBuildFacts;
	const open: OpenQuestion[] = [];
	const reached: string[] = [];
	for (const question of allQuestions) {
		if (!question.applies(facts)) continue;
		reached.push(question.id);
		const answer = answers[question.id];
		if (
			answer?.status === "answered" &&
			answer.value !== undefined &&
			question.expected(answer.value, context) === null
		) {
			facts = question.sets(facts, answer.value, context);
			open.push({ id: question.id, possibilities: question.alternatives?.(answer.value, context) ?? [] });
		} else open.push({ id: question.id, possibilities: question.possibilities?.(context) ?? [] });
	}
	facts = { ...facts, asOf: context.asOf };
	const planned = withPlannedMoney(facts, answers);
	// In a world with one of several candidates that one has to be paid as well. What is the same stays one object, since
	// results are remembered by it.
	const worlds = worldsOf(facts, open).map((world) => ({
		...world,
		facts: world.facts === facts ? planned : withPlannedMoney(world.facts, answers),
	}));
	return { facts: planned, worlds, reached };
}

/** A question with more than one way to turn out. */
interface OpenQuestion {
	readonly id: string;
	readonly possibilities: readonly Possibility[];
}

function worldsOf(facts: BuildFacts, open: readonly OpenQuestion[]): readonly World[] {
	let worlds: readonly World[] = [{ facts, choices: [] }];
	for (const { id, possibilities } of open) {
		if (possibilities.length < 2 || worlds.length * possibilities.length > mostWorlds) continue;
		worlds = worlds.flatMap((world) =>
			possibilities.map(({ label, sets }) => ({
				facts: sets(world.facts),
				choices: [...world.choices, { questionId: id, label }],
			})),
		);
	}
	return worlds;
}
