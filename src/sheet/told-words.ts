import type { Outcome } from "../choose/what-if.ts";
import type { Board } from "../parts/board.ts";
import { type Evidence, valueIn } from "../parts/form-draft.ts";
import { fieldAt } from "../parts/form-fields.ts";
import { toldOf, toldWords } from "../parts/told-evidence.ts";
import { ruleById } from "../rules/all-rules.ts";
import { findingWords } from "../rules/finding-words.ts";
import { toldValue } from "../walk/told-fact.ts";
import { sentence, verdictWords } from "./reason-words.ts";

/** What somebody told of a board: "Memory slots: 4 (told by Ada on 2026-11-28)". */
export function toldLines(board: Board): readonly string[] {
	const evidence = (board.evidence ?? {}) as Readonly<Record<string, Evidence>>;
	return Object.entries(evidence).flatMap(([path, one]) => {
		const told = toldOf(one);
		const field = fieldAt("board", path.split("."));
		const value = valueIn(board, path.split("."));
		if (!told || !field || value === undefined) return [];
		return [`${field.title}: ${toldValue(path, value)} (${toldWords(told)})`];
	});
}

/** What a told fact changed for its board and for the shortlist, in sentences; never empty. */
export function toldChanges(before: Outcome, after: Outcome, boardId: string): readonly string[] {
	const [was, is] = [judgedIn(before, boardId), judgedIn(after, boardId)];
	if (!was || !is) return [];
	const { name } = is.board;
	const [first, now] = [leaderOf(before), leaderOf(after)];
	const [points, pointsNow] = [pointsOf(before, boardId), pointsOf(after, boardId)];
	const changes = [
		...(was.verdict === is.verdict ? [] : [verdictSentence(is)]),
		...(first !== now && now !== null
			? [
					`${nameIn(after, now)} leads your shortlist now${first === null ? "" : `, in place of ${nameIn(before, first)}`}.`,
				]
			: []),
		...(first !== null && now === null ? ["No board is left on your shortlist."] : []),
		...(points !== null && pointsNow !== null && points !== pointsNow
			? [`${name} has ${pointsNow} points instead of ${points}.`]
			: []),
		...(points === null && pointsNow !== null ? [`${name} is on your shortlist now.`] : []),
		...(points !== null && pointsNow === null && is.verdict !== "does-not-fit"
			? [`${name} is no longer on your shortlist: others stand before it.`]
			: []),
	];
	return changes.length > 0 ? changes : ["Nothing else changes: the shortlist stays as it is."];
}

type Judged = Outcome["judgement"]["boards"][number];

function verdictSentence({ board, verdict, dependsOn, findings }: Judged): string {
	if (verdict === "fits") return `${board.name} surely fits now.`;
	if (verdict === "cannot-tell") return `${board.name}: ${sentence(verdictWords({ verdict, dependsOn }))}`;
	const stops = findings.find((finding) => finding.verdict === "does-not-fit");
	const why = stops ? ` ${ruleById(stops.ruleId)?.label ?? stops.ruleId}: ${findingWords(stops)}` : "";
	return `${board.name} does not fit.${why}`;
}

function judgedIn({ judgement }: Outcome, boardId: string): Judged | undefined {
	return judgement.boards.find(({ board }) => board.id === boardId);
}

function leaderOf({ advice }: Outcome): string | null {
	return advice.shortlist[0]?.boardId ?? null;
}

/** Whole points of a board of the shortlist; null where it is not on it. */
function pointsOf({ advice }: Outcome, boardId: string): number | null {
	const entry = advice.shortlist.find((one) => one.boardId === boardId);
	return entry ? Math.round(entry.score.mid) : null;
}

function nameIn(outcome: Outcome, boardId: string): string {
	return judgedIn(outcome, boardId)?.board.name ?? boardId;
}
