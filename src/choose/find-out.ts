import { unknownThreshold } from "../maths/unknown-threshold.ts";
import type { Answers } from "../parts/answers-file.ts";
import { partKindNames } from "../parts/part-kinds.ts";
import { askedQuestions } from "../questions/is-asked.ts";
import { allRules } from "../rules/all-rules.ts";
import { runRule } from "../rules/run-rule.ts";
import type { Advice } from "./advise.ts";
import { measuresOfBuild } from "./findings-of-market.ts";
import type { Judgement } from "./judge.ts";
import { type OvertakesIf, overtakesIf } from "./overtakes-if.ts";
import { candidatesOf, openFindings, type Ranked, rankBoards } from "./ranked-boards.ts";
import type { ScorePart } from "./score.ts";

/** Something still open, and what it could change. */
export interface FindOut {
	readonly about:
		| { readonly kind: "question"; readonly questionId: string }
		/** A fact of one board of the shortlist; the path begins with "board.". */
		| { readonly kind: "board fact"; readonly boardId: string; readonly path: string }
		/** A fact of a part of the person's own. */
		| { readonly kind: "part fact"; readonly path: string };
	/** Boards of the shortlist for which it decides whether they fit. */
	readonly decides: readonly string[];
	/** How a board would change places with the one it is held against; null where no value would, or none can be tried. */
	readonly overtakes: (OvertakesIf & { readonly otherId: string }) | null;
	/** What knowing it is worth, in points of 100: what is gained on average by choosing after it. Null: not worked out. */
	readonly worth: number | null;
}

/**
 * All that is still open and bears on the shortlist: what decides whether a board fits first, then by what it is worth,
 * then in the order of the questions and boards.
 *
 * @param worthOfQuestion points of 100 that an open question is worth, where somebody has worked it out
 */
export function findOut(
	judgement: Judgement,
	advice: Advice,
	answers: Answers,
	worthOfQuestion: (questionId: string) => number | null = () => null,
): readonly FindOut[] {
	const { build } = judgement;
	const listed = advice.shortlist.map(({ boardId }) => boardId);
	const ranked = rankBoards(judgement);
	const entries = listed.flatMap((id) => ranked.find(({ judged }) => judged.board.id === id) ?? []);
	const questions = askedQuestions(build)
		.filter(({ id }) => answers[id]?.status !== "answered")
		.map(
			({ id, partKind }): FindOut => ({
				about: { kind: "question", questionId: id },
				decides: entries.filter((entry) => hangsOn(entry, id, partKind)).map(({ judged }) => judged.board.id),
				overtakes: null,
				worth: worthOfQuestion(id),
			}),
		);
	const boardFacts = entries.flatMap((entry) => factsOf(judgement, entry, rivalOf(entry, entries, ranked)));
	const partFacts = partFactsOf(judgement, entries);
	const weight = ({ decides, worth, overtakes }: FindOut) =>
		(decides.length > 0 ? 1000 : 0) + (worth ?? 0) + (overtakes ? 0.01 : 0);
	// A stable sort: of what counts alike the first comes first.
	return [...questions, ...partFacts, ...boardFacts].sort((one, other) => weight(other) - weight(one));
}

/** Whether it hangs on this question, or on a part that it asks for, whether a board fits. */
function hangsOn({ judged }: Ranked, questionId: string, partKind: string | undefined): boolean {
	return (
		judged.dependsOn.includes(questionId) ||
		(partKind !== undefined && openFindings(judged).some(({ missing }) => missing.includes(partKind)))
	);
}

/** The board that each is held against: the first of the list, and that one against the next that may lead. */
function rivalOf(entry: Ranked, entries: readonly Ranked[], ranked: readonly Ranked[]): Ranked | undefined {
	const [first] = entries;
	return entry === first ? candidatesOf(ranked).find((other) => other !== entry) : first;
}

function factsOf(judgement: Judgement, entry: Ranked, rival: Ranked | undefined): readonly FindOut[] {
	const boardId = entry.judged.board.id;
	const deciding = openFindings(entry.judged).flatMap(({ missing }) => missing);
	const scored = entry.score.parts.flatMap((part) => part.measure.missing.map((path) => ({ path, part })));
	const paths = [...new Set([...deciding, ...scored.map(({ path }) => path)])].filter((path) =>
		path.startsWith("board."),
	);
	const turns = rival ? overtakesIf(judgement, entry, rival) : [];
	return paths.map((path): FindOut => {
		const part = scored.find((one) => one.path === path)?.part;
		const turn = turns.find((one) => one.path === path);
		return {
			about: { kind: "board fact", boardId, path },
			decides: deciding.includes(path) ? [boardId] : [],
			overtakes: turn && rival ? { ...turn, otherId: rival.judged.board.id } : null,
			// Several facts may be missing for one criterion: each is then worth at most what all together are.
			worth: part && rival ? 100 * worthOf(entry, part, rival) : null,
		};
	});
}

function worthOf(entry: Ranked, { weight, value }: ScorePart, rival: Ranked): number {
	const base = entry.score.mid / 100 - weight * value.mid;
	return unknownThreshold(rival.score.mid / 100, { base, weight, value }).worth;
}

/** Facts of the person's own parts that rules lack, of the build and of the boards listed. */
function partFactsOf({ build }: Judgement, entries: readonly Ranked[]): readonly FindOut[] {
	const isOwn = (path: string) => {
		const [root = "", ...keys] = path.split(".");
		return (
			keys.length > 0 && root !== "board" && root !== "platform" && (partKindNames as readonly string[]).includes(root)
		);
	};
	const ofBuild = allRules
		.filter(({ scope }) => scope === "build")
		.map((rule) => runRule(rule, { facts: build.facts, assumed: [], measures: measuresOfBuild }))
		.filter(({ verdict }) => verdict === "cannot-tell")
		.flatMap(({ missing }) => missing);
	const ofBoards = entries.flatMap(({ judged, score }) => [
		...openFindings(judged).flatMap(({ missing }) => missing),
		...score.parts.flatMap(({ measure }) => measure.missing),
	]);
	const paths = [...new Set([...ofBuild, ...ofBoards])].filter(isOwn);
	return paths.map((path) => ({
		about: { kind: "part fact", path },
		decides: entries
			.filter(({ judged }) => openFindings(judged).some(({ missing }) => missing.includes(path)))
			.map(({ judged }) => judged.board.id),
		overtakes: null,
		worth: null,
	}));
}
