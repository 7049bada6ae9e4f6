import { partKinds } from "../parts/part-kinds.ts";
import { allQuestions } from "../questions/all-questions.ts";
import type { QuestionContext } from "../questions/define-question.ts";
import type { PartMerge } from "../walk/merged-parts.ts";
import type { AnswerMerge, Side, WalksMerged } from "../walk/merged-walks.ts";
import { answerSaid, byWords, inOrderAsked, questionLabel } from "./answer-said.ts";
import type { WordsUnder } from "./what-if-words.ts";

/** What the two walks are called in sentences. */
export type SideNames = { readonly [side in Side]: string };

/**
 * What came of a merge, one sentence a line: what the person has to decide first.
 *
 * @param context with the own parts of the merged walk
 */
export function mergeWords(merged: WalksMerged, names: SideNames, context: QuestionContext): readonly WordsUnder[] {
	const asked = inOrderAsked(merged.answers, allQuestions);
	const both = ({ questionId, one, other }: AnswerMerge): string => {
		const [mine, theirs] = [one, other].map((answer) => answerSaid(questionId, answer, context) + byWords(answer));
		return `${questionLabel(questionId)}: ${mine} in ${names.one}, ${theirs} in ${names.other}.`;
	};
	const from = (side: Side) =>
		asked
			.filter((one) => one.how === "taken" && one.from === side)
			.map((one) => {
				const [counts, rest] = side === "one" ? [one.one, one.other] : [one.other, one.one];
				const said = `${questionLabel(one.questionId)}: ${answerSaid(one.questionId, counts, context)}${byWords(counts)}.`;
				return rest ? `${said} The other walk had: ${answerSaid(one.questionId, rest, context)}.` : said;
			});
	const all = (how: AnswerMerge["how"]) => asked.filter((one) => one.how === how);
	const sections: readonly WordsUnder[] = [
		{ heading: "In short", lines: inShort(merged, names) },
		{ heading: "For you to decide", lines: all("conflict").map(both) },
		{
			heading: "Still to be decided, from an earlier merge",
			lines: all("open").map((one) => `${questionLabel(one.questionId)}.`),
		},
		{ heading: `Taken from ${names.one}`, lines: from("one") },
		{ heading: `Taken from ${names.other}`, lines: from("other") },
		{
			heading: "Decided earlier, so it stays",
			lines: all("decided").map((one) => {
				const answer = one.from === "one" ? one.one : one.other;
				return `${questionLabel(one.questionId)}: ${answerSaid(one.questionId, answer, context)}${byWords(answer)}.`;
			}),
		},
		{ heading: "Parts of your own", lines: merged.parts.map((part) => partWords(part, names)) },
		{ heading: "Suggestions", lines: suggestionWords(merged, names) },
	];
	return sections.filter(({ lines }) => lines.length > 0);
}

function inShort(
	{ walk, answers, sides, names: called, marketsDiffer }: WalksMerged,
	names: SideNames,
): readonly string[] {
	const count = (how: AnswerMerge["how"], from?: Side) =>
		answers.filter((one) => one.how === how && (from === undefined || one.from === from)).length;
	const conflicts = count("conflict");
	const taken = [count("taken", "one"), count("taken", "other")];
	const same = Object.keys(walk.answers).length - answers.filter(({ how }) => how !== "open").length;
	return [
		`${numberOf(Math.max(0, same), "answer")} the same in both; ${taken[0]} taken from ${names.one}, ${taken[1]} from ${names.other}.`,
		conflicts === 0
			? "No two answers contradict each other."
			: `${numberOf(conflicts, "question")} answered in two ways. ${conflicts === 1 ? "It counts" : "Each counts"} as not sure until you decide; both answers are kept.`,
		...(called === null ? [] : [nameWords(called, walk.name ?? null, names)]),
		...(marketsDiffer
			? [
					`The two were made with other boards to choose from: ${sides.one.market.version} and ${sides.other.market.version}. Those of the later day are noted.`,
				]
			: []),
	];
}

function nameWords(
	called: { readonly one: string | null; readonly other: string | null },
	name: string | null,
	names: SideNames,
) {
	const of = (side: Side) => `${names[side]} ${called[side] === null ? "has no name" : `is called "${called[side]}"`}`;
	return `${of("one")}, and ${of("other")}; together they ${name === null ? "have none" : `are called "${name}"`}.`;
}

function partWords({ kind, id, name, how, newId, from }: PartMerge, names: SideNames): string {
	const what = `${name} (${partKinds[kind].noun}, ${id})`;
	if (how === "joined") return `${what}: each of the two walks knows something of it; all of that is kept.`;
	if (how === "changed") return `${what}: as ${names[from ?? "one"]} has changed it.`;
	return `${what}: the two walks contradict each other, so both are kept. That of ${names[from ?? "one"]} is now ${newId}.`;
}

function suggestionWords({ suggestions }: WalksMerged, names: SideNames): readonly string[] {
	return (["one", "other"] as const).flatMap((side) =>
		suggestions[side] > 0 ? [`${numberOf(suggestions[side], "suggestion")} taken from ${names[side]}.`] : [],
	);
}

/** "1 answer is", "3 answers are". */
function numberOf(count: number, noun: string): string {
	return count === 1 ? `1 ${noun} is` : `${count} ${noun}s are`;
}
