import { ownershipOf } from "../choose/firmness.ts";
import type { Answers } from "../parts/answers-file.ts";
import type { BuildFacts } from "../parts/build.ts";
import { partWords } from "../parts/part-words.ts";
import { questionById } from "../questions/all-questions.ts";
import type { QuestionContext } from "../questions/define-question.ts";
import { partKindsOfBuild } from "../questions/owned-parts.ts";
import { capital } from "./listed.ts";
import { saidOf } from "./said-words.ts";

/** How firmly a part belongs to the build, as it stands behind its name; what is only planned says nothing. */
const firmWords: Readonly<Record<string, string>> = { bought: ", bought", returnable: ", can go back" };

/** Labels begin with a capital each; in one sentence only the first does. */
function inOneSentence(uses: string): string {
	return uses.replace(/, (\p{Lu})(?=\p{Ll})/gu, (_, letter: string) => `, ${letter.toLowerCase()}`);
}

/**
 * For whom the board is, what for, and around which parts, a line each with its label. What nobody has said is left out.
 *
 * @param name of the walk; null where it has none
 */
export function forWhomWords(
	name: string | null,
	facts: BuildFacts,
	answers: Answers,
	context: QuestionContext,
): readonly { readonly label: string; readonly text: string }[] {
	const said = (id: string) => {
		const question = questionById(id);
		return question ? saidOf(question, answers, context) : null;
	};
	const parts = partKindsOfBuild.flatMap((kind) => {
		const have = facts[kind];
		if (have.state !== "have") return [];
		const firm = firmWords[ownershipOf(facts, kind) ?? ""] ?? "";
		return [`${have.part.name} (${partWords[kind] ?? kind}${firm})`];
	});
	const uses = said("about/activities");
	return [
		...(name === null ? [] : [{ label: "For", text: name }]),
		...(uses === null ? [] : [{ label: "What for", text: `${capital(inOneSentence(uses))}.` }]),
		...(parts.length > 0 ? [{ label: "Built around", text: `${parts.join("; ")}.` }] : []),
	];
}
